#pragma once

#include "core/evaluation/orchard_view.h"

#include <QWidget>

#include <optional>

class QPushButton;

namespace pipwright::ui {

class FlowText;
class MeritDesk;

/// The verdict on the selected tree in two lines: merit and chance against the best of its slot,
/// then what is suggested and what it rests on; and the way to the place "Merit".
class VerdictCard : public QWidget {
    Q_OBJECT

  public:
    explicit VerdictCard(QWidget* parent = nullptr);

    /// The desk must outlive the card. Null: nothing is said.
    void setDesk(const MeritDesk* desk);
    /// Hidden for genotypes there is no verdict on: benchmarks, trees that never fruited.
    void show(std::optional<Index> genotype);
    using QWidget::show;
    [[nodiscard]] QString verdict() const;
    [[nodiscard]] QString evidence() const;
    [[nodiscard]] QPushButton* link() const { return m_link; }

  Q_SIGNALS:
    void meritWanted();

  private:
    void present();

    const MeritDesk* m_desk = nullptr;
    std::optional<Index> m_genotype;
    FlowText* m_verdict;
    FlowText* m_evidence;
    QPushButton* m_link;
};

} // namespace pipwright::ui
