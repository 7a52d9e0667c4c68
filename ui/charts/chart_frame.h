#pragma once

#include "ui/charts/chart_marks.h"

#include <vector>

class QPainter;

namespace pipwright::ui {

/// Where plot, lanes and words go, and the words along the axes: weeks with the months below,
/// categories, numbers.
class ChartFrame {
  public:
    ChartFrame(const ChartSpec& spec, QSizeF size, const Theme& theme);

    [[nodiscard]] const ChartPlaces& places() const { return m_places; }
    [[nodiscard]] const std::vector<double>& yTicks() const { return m_yTicks; }
    void paint(QPainter& painter) const;

  private:
    [[nodiscard]] QString yWord(double value) const;
    void paintNumbersX(QPainter& painter) const;
    void paintCategoriesX(QPainter& painter) const;
    void paintWeeks(QPainter& painter) const;
    void paintMonths(QPainter& painter, double top) const;
    void paintWordsY(QPainter& painter) const;
    void paintLanes(QPainter& painter) const;
    void paintTitles(QPainter& painter) const;

    const ChartSpec& m_spec;
    QSizeF m_size;
    const Theme& m_theme;
    double m_lineHeight = 0;
    std::vector<double> m_yTicks;
    ChartPlaces m_places;
};

} // namespace pipwright::ui
