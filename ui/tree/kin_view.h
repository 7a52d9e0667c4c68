#pragma once

#include "core/evaluation/orchard_view.h"

#include <QWidget>

class QVBoxLayout;

namespace pipwright::ui {

class AncestryView;
class FlowText;
struct TreeFacts;

/// Where a tree comes from and who its nearest are: the drawn ancestry, the Purdy line, the
/// coefficient of inbreeding, full and half sibs and offspring.
class KinView : public QWidget {
    Q_OBJECT

  public:
    explicit KinView(QWidget* parent = nullptr);

    void show(const TreeFacts& facts);
    using QWidget::show;
    [[nodiscard]] AncestryView* ancestry() const { return m_ancestry; }
    [[nodiscard]] QString inbreedingWords() const;

  Q_SIGNALS:
    void genotypeWanted(pipwright::Index genotype);

  private:
    void addList(const QString& title, const std::vector<int>& kin, const TreeFacts& facts);

    AncestryView* m_ancestry;
    FlowText* m_purdy;
    FlowText* m_inbreeding;
    QVBoxLayout* m_lists;
};

} // namespace pipwright::ui
