#include "ui/charts/chart_style.h"

#include <QChart>
#include <QGraphicsLayout>
#include <QPainter>

#include <algorithm>

namespace pipwright::ui {

namespace {

constexpr std::size_t kShapes = 6;

void drawPointSwatch(QPainter& painter, const QRectF& area, std::size_t shape,
                     const MarkColour& colour) {
    painter.setPen(QPen(colour.outline, 1.2));
    painter.setBrush(colour.fill);
    painter.drawPath(pointShape(shape, area.center(), 4));
}

} // namespace

MarkColour colourOf(const ChartColour& colour, const Theme& theme) {
    switch (colour.role) {
    case ColourRole::categorical:
        return categoricalColour(colour.index, theme);
    case ColourRole::ink:
        return markColour(theme.ink, theme);
    case ColourRole::secondInk:
        return markColour(theme.secondInk, theme);
    case ColourRole::action:
        return markColour(theme.leaf, theme);
    case ColourRole::attention:
        return markColour(theme.russet, theme);
    case ColourRole::link:
        return markColour(theme.sky, theme);
    case ColourRole::fault:
        return markColour(theme.blood, theme);
    }
    return markColour(theme.ink, theme);
}

QPainterPath pointShape(std::size_t index, QPointF centre, double radius) {
    QPainterPath path;
    const auto polygon = [&](std::initializer_list<QPointF> corners) {
        QPolygonF points;
        for (const QPointF& corner : corners) {
            points.append(centre + radius * corner);
        }
        points.append(points.first());
        path.addPolygon(points);
    };
    switch (index % kShapes) {
    case 1:
        polygon({{-0.85, -0.85}, {0.85, -0.85}, {0.85, 0.85}, {-0.85, 0.85}});
        break;
    case 2:
        polygon({{0, -1.2}, {1.2, 0}, {0, 1.2}, {-1.2, 0}});
        break;
    case 3:
        polygon({{0, -1.15}, {1.1, 0.8}, {-1.1, 0.8}});
        break;
    case 4:
        polygon({{0, 1.15}, {1.1, -0.8}, {-1.1, -0.8}});
        break;
    case 5:
        polygon({{-0.5, -1.2}, {0.5, -1.2}, {0.5, 1.2}, {-0.5, 1.2}});
        break;
    default:
        path.addEllipse(centre, radius, radius);
    }
    return path;
}

void drawSwatch(QPainter& painter, const QRectF& area, const ChartSeries& series, std::size_t shape,
                const Theme& theme) {
    const MarkColour colour = colourOf(series.colour, theme);
    const double middle = area.center().y();
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    QColor veil = colour.fill;
    veil.setAlpha(kBandAlpha);
    switch (series.kind) {
    case SeriesKind::points:
        drawPointSwatch(painter, area, shape, colour);
        break;
    case SeriesKind::line:
    case SeriesKind::horizontalRule:
    case SeriesKind::verticalRule:
        painter.setPen(QPen(colour.outline, series.kind == SeriesKind::line ? 2 : 1,
                            series.dashed ? Qt::DashLine : Qt::SolidLine));
        painter.drawLine(QPointF(area.left(), middle), QPointF(area.right(), middle));
        break;
    case SeriesKind::spans:
        painter.fillRect(QRectF(area.left(), middle - 3, area.width(), 6), colour.fill);
        painter.setPen(QPen(colour.outline, 1));
        painter.drawRect(QRectF(area.left(), middle - 3, area.width(), 6));
        break;
    case SeriesKind::band:
    case SeriesKind::shade:
    case SeriesKind::columns:
        painter.setPen(QPen(colour.outline, 1));
        painter.setBrush(series.kind == SeriesKind::columns ? colour.fill : veil);
        painter.drawRect(area.adjusted(2, 2, -2, -2));
        break;
    }
    painter.restore();
}

void dressChart(QChart& chart, const Theme& theme) {
    chart.setAnimationOptions(QChart::NoAnimation);
    chart.setBackgroundRoundness(0);
    chart.setBackgroundBrush(theme.surface);
    chart.setBackgroundPen(Qt::NoPen);
    chart.setPlotAreaBackgroundVisible(false);
    chart.setMargins(QMargins(0, 0, 0, 0));
    chart.layout()->setContentsMargins(0, 0, 0, 0);
    chart.setFont(theme.smallFont());
    chart.legend()->hide();
}

} // namespace pipwright::ui
