#include "ui/charts/chart_drawing.h"

#include "ui/charts/chart_frame.h"
#include "ui/charts/chart_marks.h"
#include "ui/charts/chart_style.h"

#include <QAreaSeries>
#include <QChart>
#include <QGraphicsLayout>
#include <QGraphicsScene>
#include <QLineSeries>
#include <QPainter>
#include <QValueAxis>

#include <algorithm>
#include <cmath>

namespace pipwright::ui {

namespace {

constexpr double kReach = 6; // pixels around a mark that still mean it

/// What nothing is said about is shown.
std::vector<bool> forEverySeries(std::vector<bool> shown, const ChartSpec& spec) {
    shown.resize(spec.series.size(), true);
    return shown;
}

/// The finite points in runs: a gap in the numbers is a gap in the line.
std::vector<QList<QPointF>> runsOf(const ChartSeries& series) {
    std::vector<QList<QPointF>> runs(1);
    for (const auto& mark : series.marks) {
        if (std::isfinite(mark.x) && std::isfinite(mark.y)) {
            runs.back().append(QPointF(mark.x, mark.y));
        } else if (!runs.back().isEmpty()) {
            runs.emplace_back();
        }
    }
    return runs;
}

} // namespace

/// The Qt Charts side: axes, lines and bands live in a scene that no view ever shows, so that the
/// panel paints a kept picture instead of every item at every move of the pointer.
class ChartDrawing::Scene {
  public:
    Scene(const ChartSpec& spec, const std::vector<bool>& shown, QSizeF size, const Theme& theme)
        : m_spec(spec), m_shown(forEverySeries(shown, spec)), m_size(size), m_theme(theme),
          m_frame(m_spec, size, theme), m_marks(m_spec, m_shown, m_frame.places(), theme),
          m_chart(new QChart) {
        m_scene.addItem(m_chart);
        m_scene.setSceneRect(QRectF(QPointF(0, 0), size));
        dressChart(*m_chart, theme);
        m_chart->setBackgroundVisible(false);
        m_chart->resize(size);
        m_chart->setPlotArea(m_frame.places().plot);
        addAxes();
        addSeries();
        m_chart->layout()->activate();
    }

    void paint(QPainter& painter, std::optional<std::size_t> highlighted) {
        painter.save();
        painter.fillRect(QRectF(QPointF(0, 0), m_size), m_theme.surface);
        m_marks.paintBehind(painter);
        for (const auto& [index, series] : m_drawn) {
            series->setOpacity(!highlighted || *highlighted == index ? 1.0 : kStepBack);
        }
        painter.setRenderHint(QPainter::Antialiasing);
        const QRectF all(QPointF(0, 0), m_size);
        m_scene.render(&painter, all, all, Qt::IgnoreAspectRatio);
        m_frame.paint(painter);
        m_marks.paint(painter, highlighted);
        painter.restore();
    }

    [[nodiscard]] QRectF plot() const { return m_frame.places().plot; }
    [[nodiscard]] const std::vector<PlacedMark>& placed() const { return m_marks.placed(); }

  private:
    void addAxes() {
        for (const bool vertical : {false, true}) {
            const ChartInterval range = vertical ? m_frame.places().y : m_frame.places().x;
            // The words along the axes are ours; the axis gives place and hairlines.
            auto* axis = new QValueAxis;
            axis->setRange(range.low, range.high);
            axis->setLabelsVisible(false);
            axis->setLinePen(QPen(m_theme.secondInk, 1));
            axis->setGridLinePen(QPen(m_theme.line, 1));
            axis->setGridLineVisible(vertical && m_spec.yAxis.kind == AxisKind::numeric);
            if (vertical) {
                const std::vector<double>& ticks = m_frame.yTicks();
                axis->setTickType(QValueAxis::TicksDynamic);
                axis->setTickAnchor(ticks.empty() ? range.low : ticks.front());
                axis->setTickInterval(ticks.size() > 1 ? ticks[1] - ticks[0]
                                                       : range.high - range.low);
            } else {
                axis->setTickCount(2);
            }
            m_chart->addAxis(axis, vertical ? Qt::AlignLeft : Qt::AlignBottom);
            (vertical ? m_yAxis : m_xAxis) = axis;
        }
    }

    void addSeries() {
        for (std::size_t i = 0; i < m_spec.series.size(); ++i) {
            const ChartSeries& series = m_spec.series[i];
            if (!m_shown[i]) {
                continue;
            }
            if (series.kind == SeriesKind::line) {
                addLine(series, i);
            } else if (series.kind == SeriesKind::band) {
                addBand(series, i);
            }
        }
    }

    void addLine(const ChartSeries& series, std::size_t index) {
        const MarkColour colour = colourOf(series.colour, m_theme);
        for (const QList<QPointF>& run : runsOf(series)) {
            auto* line = new QLineSeries;
            line->replace(run); // never point by point: that is quadratic
            line->setPen(QPen(colour.outline, 2, series.dashed ? Qt::DashLine : Qt::SolidLine));
            add(line, index);
        }
    }

    void addBand(const ChartSeries& series, std::size_t index) {
        QList<QPointF> lower;
        QList<QPointF> upper;
        for (const auto& mark : series.marks) {
            if (mark.yInterval && std::isfinite(mark.x)) {
                lower.append(QPointF(mark.x, mark.yInterval->low));
                upper.append(QPointF(mark.x, mark.yInterval->high));
            }
        }
        auto* top = new QLineSeries(m_chart);
        auto* bottom = new QLineSeries(m_chart);
        top->replace(upper);
        bottom->replace(lower);
        auto* band = new QAreaSeries(top, bottom);
        const MarkColour colour = colourOf(series.colour, m_theme);
        QColor veil = colour.fill;
        veil.setAlpha(kBandAlpha);
        band->setBrush(veil);
        band->setPen(QPen(colour.outline, 1));
        add(band, index);
    }

    void add(QAbstractSeries* series, std::size_t index) {
        m_chart->addSeries(series);
        series->attachAxis(m_xAxis);
        series->attachAxis(m_yAxis);
        m_drawn.emplace_back(index, series);
    }

    const ChartSpec m_spec; ///< a copy: the drawing may outlive what it was made from
    std::vector<bool> m_shown;
    QSizeF m_size;
    const Theme& m_theme;
    ChartFrame m_frame;
    ChartMarks m_marks;
    QGraphicsScene m_scene;
    QChart* m_chart; ///< owned by the scene
    QValueAxis* m_xAxis = nullptr;
    QValueAxis* m_yAxis = nullptr;
    std::vector<std::pair<std::size_t, QAbstractSeries*>> m_drawn;
};

ChartDrawing::ChartDrawing(const ChartSpec& spec, const std::vector<bool>& shown, QSizeF size,
                           const Theme& theme)
    : m_scene(std::make_unique<Scene>(spec, shown, size, theme)) {}

ChartDrawing::~ChartDrawing() = default;

void ChartDrawing::paint(QPainter& painter, std::optional<std::size_t> highlighted) const {
    m_scene->paint(painter, highlighted);
}

QRectF ChartDrawing::plotArea() const {
    return m_scene->plot();
}
const std::vector<PlacedMark>& ChartDrawing::marks() const {
    return m_scene->placed();
}

std::optional<std::size_t> ChartDrawing::markAt(QPointF place) const {
    std::optional<std::size_t> nearest;
    double best = kReach;
    for (std::size_t i = 0; i < marks().size(); ++i) {
        const QRectF& area = marks()[i].area;
        const double dx = std::max({area.left() - place.x(), place.x() - area.right(), 0.0});
        const double dy = std::max({area.top() - place.y(), place.y() - area.bottom(), 0.0});
        const double distance = std::hypot(dx, dy);
        // Of two that lie over each other the upper one, drawn later, is meant.
        if (distance <= best) {
            best = distance;
            nearest = i;
        }
    }
    return nearest;
}

} // namespace pipwright::ui
