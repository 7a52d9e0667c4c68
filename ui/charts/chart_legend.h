#pragma once

#include "core/statistics/chart_spec.h"

#include <QToolButton>
#include <QWidget>

#include <optional>
#include <vector>

namespace pipwright::ui {

class LegendButton;

/// One button a series: pointing at it or reaching it by Tab highlights the series, pressing it
/// hides the series or shows it again.
class ChartLegend : public QWidget {
    Q_OBJECT

  public:
    explicit ChartLegend(QWidget* parent = nullptr);

    void setSpec(const ChartSpec& spec);
    [[nodiscard]] std::vector<bool> shown() const;
    /// The button of a series.
    [[nodiscard]] QToolButton* button(std::size_t series) const;

  Q_SIGNALS:
    void shownChanged();
    void highlightWanted(std::optional<std::size_t> series);

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    std::vector<LegendButton*> m_buttons;
};

} // namespace pipwright::ui
