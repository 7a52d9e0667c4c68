#include "ui/charts/chart_marks.h"

#include "ui/charts/chart_style.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace pipwright::ui {

namespace {

constexpr double kRadius = 4.5;
constexpr double kColumnWidth = 0.7; // of the room of one
constexpr std::size_t kMostLabels = 200;
constexpr int kShadeAlpha = 40;
constexpr double kHatchStep = 9;

/// Thin slanting lines, so that a shade is seen without colour. Not a pattern brush: an SVG file
/// written by Qt loses those.
void hatch(QPainter& painter, const QRectF& area, QColor colour) {
    painter.save();
    painter.setClipRect(area);
    painter.setRenderHint(QPainter::Antialiasing);
    colour.setAlpha(2 * kShadeAlpha);
    painter.setPen(QPen(colour, 1));
    const int lines = static_cast<int>((area.width() + area.height()) / kHatchStep) + 1;
    for (int i = 0; i < lines; ++i) {
        const double x = area.left() - area.height() + i * kHatchStep;
        painter.drawLine(QPointF(x, area.bottom()), QPointF(x + area.height(), area.top()));
    }
    painter.restore();
}

} // namespace

double ChartPlaces::placeX(double value) const {
    return plot.left() + (value - x.low) / (x.high - x.low) * plot.width();
}

double ChartPlaces::placeY(double value) const {
    return plot.bottom() - (value - y.low) / (y.high - y.low) * plot.height();
}

double ChartPlaces::laneMiddle(double lane) const {
    return lanes.top() + (lane + 0.5) * laneHeight;
}

std::vector<std::size_t> pointShapes(const ChartSpec& spec) {
    std::vector<std::size_t> shapes;
    std::size_t next = 0;
    for (const auto& series : spec.series) {
        shapes.push_back(series.kind == SeriesKind::points ? next++ : 0);
    }
    return shapes;
}

ChartMarks::ChartMarks(const ChartSpec& spec, const std::vector<bool>& shown,
                       const ChartPlaces& places, const Theme& theme)
    : m_spec(spec), m_shown(shown), m_places(places), m_theme(theme), m_shapes(pointShapes(spec)) {
    place();
    placeLabels();
}

void ChartMarks::place() {
    for (std::size_t s = 0; s < m_spec.series.size(); ++s) {
        const ChartSeries& series = m_spec.series[s];
        if (!m_shown[s]) {
            continue;
        }
        for (std::size_t i = 0; i < series.marks.size(); ++i) {
            const ChartMark& mark = series.marks[i];
            QRectF area;
            if (series.kind == SeriesKind::points) {
                const QPointF centre(m_places.placeX(mark.x), m_places.placeY(mark.y));
                area = QRectF(centre - QPointF(kRadius, kRadius), QSizeF(2 * kRadius, 2 * kRadius));
            } else if (series.kind == SeriesKind::spans) {
                area = spanArea(mark);
            } else if (series.kind == SeriesKind::columns) {
                area = columnArea(mark);
            }
            if (area.isValid() && std::isfinite(area.center().x()) &&
                std::isfinite(area.center().y())) {
                m_placed.push_back({s, i, area, area.center()});
            }
        }
    }
    std::stable_sort(
        m_placed.begin(), m_placed.end(),
        [](const PlacedMark& a, const PlacedMark& b) { return a.point.x() < b.point.x(); });
}

bool ChartMarks::isFree(const QRectF& area) const {
    const QRectF room = m_places.plot.united(m_places.lanes);
    const auto meets = [&area](const auto& other) { return other.area.intersects(area); };
    return room.contains(area) && std::none_of(m_labels.begin(), m_labels.end(), meets) &&
           std::none_of(m_placed.begin(), m_placed.end(), meets);
}

void ChartMarks::placeLabels() {
    // A label that finds no free place is left out; its words are in the tooltip and the table.
    const QFontMetricsF metrics(m_theme.smallFont());
    for (const PlacedMark& placed : m_placed) {
        const ChartSeries& series = m_spec.series[placed.series];
        const QString text = QString::fromStdString(series.marks[placed.mark].label);
        if (text.isEmpty() || m_labels.size() >= kMostLabels) {
            continue;
        }
        const QSizeF size(metrics.horizontalAdvance(text) + 2, metrics.height());
        const QRectF& area = placed.area;
        const std::array<QPointF, 4> corners{
            QPointF(area.right() + 3, area.center().y() - size.height() / 2),
            QPointF(area.left() - 3 - size.width(), area.center().y() - size.height() / 2),
            QPointF(area.center().x() - size.width() / 2, area.top() - size.height() - 1),
            QPointF(area.center().x() - size.width() / 2, area.bottom() + 1)};
        for (const QPointF& corner : corners) {
            if (isFree(QRectF(corner, size))) {
                m_labels.push_back({QRectF(corner, size), text, placed.series});
                break;
            }
        }
    }
}

QRectF ChartMarks::spanArea(const ChartMark& mark) const {
    if (!mark.xInterval) {
        return {};
    }
    const double half = std::min(5.0, m_places.laneHeight * 0.3);
    const double from = m_places.placeX(mark.xInterval->low);
    const double to = std::max(from + 2, m_places.placeX(mark.xInterval->high));
    return {from, m_places.laneMiddle(mark.y) - half, to - from, 2 * half};
}

QRectF ChartMarks::columnArea(const ChartMark& mark) const {
    const double unit = m_places.placeX(m_places.x.low + 1) - m_places.plot.left();
    const double step = m_spec.xAxis.kind == AxisKind::week ? 7 * unit : unit;
    const double width = std::max(1.0, kColumnWidth * step);
    const double zero = m_places.placeY(std::clamp(0.0, m_places.y.low, m_places.y.high));
    return QRectF(QPointF(m_places.placeX(mark.x) - width / 2, zero),
                  QPointF(m_places.placeX(mark.x) + width / 2, m_places.placeY(mark.y)))
        .normalized();
}

void ChartMarks::paintBehind(QPainter& painter) const {
    for (std::size_t s = 0; s < m_spec.series.size(); ++s) {
        const ChartSeries& series = m_spec.series[s];
        if (!m_shown[s] || series.kind != SeriesKind::shade) {
            continue;
        }
        QColor veil = colourOf(series.colour, m_theme).fill;
        veil.setAlpha(kShadeAlpha);
        for (const auto& mark : series.marks) {
            if (mark.xInterval) {
                const double from = m_places.placeX(mark.xInterval->low);
                const double to = m_places.placeX(mark.xInterval->high);
                const QRectF area(from, m_places.plot.top(), to - from, m_places.plot.height());
                painter.fillRect(area & m_places.plot, veil);
                hatch(painter, area & m_places.plot, veil);
            }
        }
    }
}

void ChartMarks::paint(QPainter& painter, std::optional<std::size_t> highlighted) const {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setClipRect(m_places.plot.united(m_places.lanes).adjusted(-1, -1, 1, 1));
    for (std::size_t s = 0; s < m_spec.series.size(); ++s) {
        if (m_shown[s]) {
            paintSeries(painter, s, !highlighted || *highlighted == s ? 1.0 : kStepBack);
        }
    }
    if (highlighted && *highlighted < m_shown.size() && m_shown[*highlighted]) {
        paintSeries(painter, *highlighted, 1.0);
    }
    painter.setFont(m_theme.smallFont());
    for (const Label& label : m_labels) {
        painter.setOpacity(!highlighted || *highlighted == label.series ? 1.0 : kStepBack);
        painter.setPen(m_theme.ink);
        painter.drawText(label.area, Qt::AlignCenter, label.text);
    }
    painter.restore();
}

void ChartMarks::paintSeries(QPainter& painter, std::size_t index, double strength) const {
    painter.setOpacity(strength);
    const ChartSeries& series = m_spec.series[index];
    for (const auto& mark : series.marks) {
        switch (series.kind) {
        case SeriesKind::points:
            paintPoint(painter, mark, index);
            break;
        case SeriesKind::spans:
            paintSpan(painter, mark, index);
            break;
        case SeriesKind::columns:
            paintColumn(painter, mark, index);
            break;
        case SeriesKind::horizontalRule:
        case SeriesKind::verticalRule:
            paintRule(painter, mark, index);
            break;
        case SeriesKind::line:
        case SeriesKind::band:
        case SeriesKind::shade:
            break;
        }
    }
    painter.setOpacity(1);
}

void ChartMarks::paintPoint(QPainter& painter, const ChartMark& mark, std::size_t index) const {
    const MarkColour colour = colourOf(m_spec.series[index].colour, m_theme);
    const QPointF centre(m_places.placeX(mark.x), m_places.placeY(mark.y));
    painter.setPen(QPen(colour.outline, mark.uncertain ? 1.0 : 1.6));
    if (mark.yInterval) {
        painter.drawLine(QPointF(centre.x(), m_places.placeY(mark.yInterval->low)),
                         QPointF(centre.x(), m_places.placeY(mark.yInterval->high)));
    }
    if (mark.xInterval) {
        painter.drawLine(QPointF(m_places.placeX(mark.xInterval->low), centre.y()),
                         QPointF(m_places.placeX(mark.xInterval->high), centre.y()));
    }
    painter.setPen(QPen(colour.outline, 1.4));
    painter.setBrush(mark.uncertain ? m_theme.surface : colour.fill);
    painter.drawPath(pointShape(m_shapes[index], centre, kRadius - 0.5));
}

void ChartMarks::paintSpan(QPainter& painter, const ChartMark& mark, std::size_t index) const {
    const QRectF area = spanArea(mark);
    if (!area.isValid()) {
        return;
    }
    const MarkColour colour = colourOf(m_spec.series[index].colour, m_theme);
    QColor pale = colour.fill;
    pale.setAlpha(mark.uncertain ? 0 : mark.core ? 90 : 160);
    painter.setPen(QPen(colour.outline, 1, mark.uncertain ? Qt::DashLine : Qt::SolidLine));
    painter.setBrush(pale);
    painter.drawRoundedRect(area, 2, 2);
    if (mark.core) {
        const double from = m_places.placeX(mark.core->low);
        const double to = m_places.placeX(mark.core->high);
        painter.fillRect(QRectF(from, area.top(), to - from, area.height()),
                         mark.uncertain ? pale : colour.fill);
    }
}

void ChartMarks::paintColumn(QPainter& painter, const ChartMark& mark, std::size_t index) const {
    const MarkColour colour = colourOf(m_spec.series[index].colour, m_theme);
    painter.setPen(QPen(colour.outline, 1));
    painter.setBrush(mark.uncertain ? m_theme.surface : colour.fill);
    painter.drawRect(columnArea(mark));
    if (mark.yInterval) {
        const double x = m_places.placeX(mark.x);
        painter.setPen(QPen(m_theme.ink, 1.2));
        painter.drawLine(QPointF(x, m_places.placeY(mark.yInterval->low)),
                         QPointF(x, m_places.placeY(mark.yInterval->high)));
    }
}

void ChartMarks::paintRule(QPainter& painter, const ChartMark& mark, std::size_t index) const {
    const ChartSeries& series = m_spec.series[index];
    const MarkColour colour = colourOf(series.colour, m_theme);
    painter.setPen(QPen(colour.outline, 1, series.dashed ? Qt::DashLine : Qt::SolidLine));
    painter.setFont(m_theme.smallFont());
    const QString text = QString::fromStdString(mark.label);
    const double textHeight = painter.fontMetrics().height();
    if (series.kind == SeriesKind::horizontalRule) {
        const double y = m_places.placeY(mark.y);
        painter.drawLine(QPointF(m_places.plot.left(), y), QPointF(m_places.plot.right(), y));
        painter.setPen(m_theme.secondInk);
        painter.drawText(
            QRectF(m_places.plot.left() + 4, y - textHeight, m_places.plot.width() - 8, textHeight),
            Qt::AlignRight | Qt::AlignVCenter, text);
        return;
    }
    const double x = m_places.placeX(mark.x);
    const double top = std::min(
        m_places.plot.top(), m_places.lanes.isValid() ? m_places.lanes.top() : m_places.plot.top());
    painter.drawLine(QPointF(x, top), QPointF(x, m_places.plot.bottom()));
    painter.setPen(m_theme.secondInk);
    const double width = painter.fontMetrics().horizontalAdvance(text) + 4;
    const bool fits = x + width < m_places.plot.right();
    painter.drawText(QRectF(fits ? x + 4 : x - 4 - width, m_places.plot.bottom() - textHeight,
                            width, textHeight),
                     (fits ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter, text);
}

} // namespace pipwright::ui
