#pragma once

#include "core/statistics/chart_spec.h"
#include "ui/widgets/palettes.h"

#include <QColor>
#include <QPainterPath>
#include <QPointF>
#include <QRectF>

class QChart;

namespace pipwright::ui {

/// The opacity of what steps back behind what is highlighted.
inline constexpr double kStepBack = 0.35;
/// The opacity of a band, of 255.
inline constexpr int kBandAlpha = 70;

/// The colour of a series in a theme.
MarkColour colourOf(const ChartColour& colour, const Theme& theme);

/// The outline of a point: circle, square, diamond, triangle up, triangle down, bar, by the index
/// of the series, so that colour is never alone.
QPainterPath pointShape(std::size_t index, QPointF centre, double radius);

/// A small sample of the series for the legend.
void drawSwatch(QPainter& painter, const QRectF& area, const ChartSeries& series, std::size_t shape,
                const Theme& theme);

/// How every chart of ours looks: thin axes, our type, no decoration.
void dressChart(QChart& chart, const Theme& theme);

} // namespace pipwright::ui
