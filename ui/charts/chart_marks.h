#pragma once

#include "ui/charts/chart_drawing.h"

#include <QPainter>

#include <optional>
#include <vector>

namespace pipwright::ui {

/// From the numbers of the axes to the pixels of a drawing.
struct ChartPlaces {
    QRectF plot;
    QRectF lanes; ///< the strips above the plot; empty without lanes
    ChartInterval x;
    ChartInterval y;
    double laneHeight = 0;

    [[nodiscard]] double placeX(double value) const;
    [[nodiscard]] double placeY(double value) const;
    [[nodiscard]] double laneMiddle(double lane) const;
};

/// Points, spans, columns and hairlines: what is drawn mark by mark over the axes, lines and bands.
class ChartMarks {
  public:
    ChartMarks(const ChartSpec& spec, const std::vector<bool>& shown, const ChartPlaces& places,
               const Theme& theme);

    /// Shades: they go below everything.
    void paintBehind(QPainter& painter) const;
    void paint(QPainter& painter, std::optional<std::size_t> highlighted) const;
    [[nodiscard]] const std::vector<PlacedMark>& placed() const { return m_placed; }

  private:
    struct Label {
        QRectF area;
        QString text;
        std::size_t series = 0;
    };

    void place();
    void placeLabels();
    bool isFree(const QRectF& area) const;
    void paintSeries(QPainter& painter, std::size_t index, double strength) const;
    void paintPoint(QPainter& painter, const ChartMark& mark, std::size_t index) const;
    void paintSpan(QPainter& painter, const ChartMark& mark, std::size_t index) const;
    void paintColumn(QPainter& painter, const ChartMark& mark, std::size_t index) const;
    void paintRule(QPainter& painter, const ChartMark& mark, std::size_t index) const;
    [[nodiscard]] QRectF spanArea(const ChartMark& mark) const;
    [[nodiscard]] QRectF columnArea(const ChartMark& mark) const;

    const ChartSpec& m_spec;
    std::vector<bool> m_shown;
    ChartPlaces m_places;
    const Theme& m_theme;
    std::vector<std::size_t> m_shapes; ///< of each series: which shape its points have
    std::vector<PlacedMark> m_placed;
    std::vector<Label> m_labels;
};

/// The shape of each series' points: counted over the series of points only.
std::vector<std::size_t> pointShapes(const ChartSpec& spec);

} // namespace pipwright::ui
