#pragma once

#include "core/evaluation/orchard_view.h"

#include <QWidget>

#include <vector>

class QAbstractButton;

namespace pipwright::ui {

struct TreeFacts;

/// Parents, grandparents and great-grandparents drawn as a branching, seed parent above. Each known
/// one is a button.
class AncestryView : public QWidget {
    Q_OBJECT

  public:
    explicit AncestryView(QWidget* parent = nullptr);

    void show(const TreeFacts& facts);
    using QWidget::show;
    [[nodiscard]] const std::vector<QAbstractButton*>& ancestors() const { return m_buttons; }
    [[nodiscard]] QSize sizeHint() const override;

  Q_SIGNALS:
    void genotypeWanted(pipwright::Index genotype);

  protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    struct Place {
        int generation = 1; ///< 1 to 3
        int number = 0;     ///< within the generation, from the top
        QAbstractButton* button = nullptr;
        QString unknown; ///< what stands there when nobody is known
    };

    [[nodiscard]] QRect rectOf(const Place& place) const;
    void arrange();

    std::vector<Place> m_places;
    std::vector<QAbstractButton*> m_buttons;
    int m_depth = 1; ///< generations in which anybody is known, one more for the gaps
};

} // namespace pipwright::ui
