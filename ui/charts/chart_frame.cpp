#include "ui/charts/chart_frame.h"

#include "ui/widgets/number_text.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace pipwright::ui {

namespace {

constexpr double kAir = 8;
constexpr double kTick = 4;
constexpr double kRowsApart = 2.2;  // lines of text between two numbers up the axis
constexpr double kTitleLines = 1.6; // above the plot: the topmost number reaches half a line up
constexpr double kLaneHeight = 18;
constexpr double kWidestWords = 0.28; // of the width, for words left of the plot

/// The translator's place for the words of this file.
class ChartWords {
    Q_DECLARE_TR_FUNCTIONS(ChartWords)
};

QString titleOf(const ChartAxis& axis) {
    QString title = QString::fromStdString(axis.title);
    const QString unit = QString::fromStdString(axis.unit);
    if (unit.isEmpty()) {
        return title;
    }
    return title.isEmpty() ? unit : QStringLiteral("%1 (%2)").arg(title, unit);
}

/// As many decimals as the steps need: 0.25 needs two.
int decimalsOf(const std::vector<double>& ticks) {
    if (ticks.size() < 2) {
        return 1;
    }
    const double step = ticks[1] - ticks[0];
    return std::clamp(static_cast<int>(std::ceil(-std::log10(step) - 1e-9)), 0, 6);
}

} // namespace

ChartFrame::ChartFrame(const ChartSpec& spec, QSizeF size, const Theme& theme)
    : m_spec(spec), m_size(size), m_theme(theme) {
    const QFontMetricsF metrics(theme.smallFont());
    m_lineHeight = metrics.height();
    m_places.x = rangeOfX(spec);
    m_places.y = rangeOfY(spec);
    m_places.laneHeight = std::max(kLaneHeight, m_lineHeight + 3);
    const double lanes = m_places.laneHeight * static_cast<double>(spec.lanes.size());
    const double rowsBelow = spec.xAxis.kind == AxisKind::week ? 2 : 1;
    const double below = kTick + rowsBelow * m_lineHeight +
                         (titleOf(spec.xAxis).isEmpty() ? 0 : m_lineHeight) + kAir / 2;
    const double yTitle = titleOf(spec.yAxis).isEmpty() ? 0 : kTitleLines * m_lineHeight;
    const double top = kAir + lanes + yTitle;
    const double height = std::max(20.0, size.height() - top - below);
    const int most = std::max(2, static_cast<int>(height / (kRowsApart * m_lineHeight)));
    m_yTicks = axisTicks(m_places.y, most);
    if (spec.yAxis.kind == AxisKind::category) {
        m_yTicks.clear();
        for (std::size_t i = 0; i < spec.yAxis.categories.size(); ++i) {
            m_yTicks.push_back(static_cast<double>(i));
        }
    }
    double words = 0;
    for (const double tick : m_yTicks) {
        words = std::max(words, metrics.horizontalAdvance(yWord(tick)));
    }
    for (const auto& lane : spec.lanes) {
        words = std::max(words, metrics.horizontalAdvance(QString::fromStdString(lane)));
    }
    words = std::min(words, kWidestWords * size.width());
    const double left = std::ceil(words + kTick + kAir);
    const double width = std::max(20.0, size.width() - left - 2 * kAir);
    m_places.plot = QRectF(left, std::round(top), width, std::floor(height));
    if (!spec.lanes.empty()) {
        m_places.lanes = QRectF(left, kAir, width, lanes);
    }
}

QString ChartFrame::yWord(double value) const {
    return m_spec.yAxis.kind == AxisKind::category
               ? QString::fromStdString(axisValueText(m_spec.yAxis, value))
               : numberText(value, decimalsOf(m_yTicks));
}

void ChartFrame::paint(QPainter& painter) const {
    painter.save();
    painter.setFont(m_theme.smallFont());
    painter.setRenderHint(QPainter::Antialiasing, false);
    switch (m_spec.xAxis.kind) {
    case AxisKind::week:
        paintWeeks(painter);
        break;
    case AxisKind::category:
        paintCategoriesX(painter);
        break;
    case AxisKind::numeric:
        paintNumbersX(painter);
        break;
    }
    paintWordsY(painter);
    paintLanes(painter);
    paintTitles(painter);
    painter.restore();
}

void ChartFrame::paintNumbersX(QPainter& painter) const {
    const QFontMetricsF metrics(m_theme.smallFont());
    const double widest = metrics.horizontalAdvance(QStringLiteral("00000.0"));
    const auto ticks = axisTicks(m_places.x, std::max(2, int(m_places.plot.width() / widest)));
    const int decimals = decimalsOf(ticks);
    for (const double tick : ticks) {
        const double x = m_places.placeX(tick);
        const double bottom = m_places.plot.bottom();
        painter.setPen(m_theme.secondInk);
        painter.drawLine(QPointF(x, bottom), QPointF(x, bottom + kTick));
        painter.drawText(QRectF(x - widest, bottom + kTick, 2 * widest, m_lineHeight),
                         Qt::AlignCenter, numberText(tick, decimals));
    }
}

void ChartFrame::paintCategoriesX(QPainter& painter) const {
    painter.setPen(m_theme.secondInk);
    const QFontMetricsF metrics(m_theme.smallFont());
    const double room = m_places.placeX(1) - m_places.placeX(0) - 4;
    for (std::size_t i = 0; i < m_spec.xAxis.categories.size(); ++i) {
        const double x = m_places.placeX(static_cast<double>(i));
        const QString word = QString::fromStdString(m_spec.xAxis.categories[i]);
        painter.drawText(QRectF(x - room / 2, m_places.plot.bottom() + kTick, room, m_lineHeight),
                         Qt::AlignCenter, metrics.elidedText(word, Qt::ElideRight, room));
    }
}

void ChartFrame::paintWeeks(QPainter& painter) const {
    const auto weeks = pipwright::weeksBetween(m_places.x.low, m_places.x.high);
    const QFontMetricsF metrics(m_theme.smallFont());
    const double weekWidth = m_places.placeX(m_places.x.low + 7) - m_places.plot.left();
    const double wordWidth = metrics.horizontalAdvance(QStringLiteral("00")) + 6;
    // Every week, or every 2nd, 4th ... where there is no room for all.
    int every = 1;
    while (every * weekWidth < wordWidth && every < 64) {
        every *= 2;
    }
    const QRectF& plot = m_places.plot;
    for (const auto& week : weeks) {
        const double x = m_places.placeX(week.monday);
        painter.setPen(m_theme.secondInk);
        if (x >= plot.left() - 0.5 && weekWidth >= 3) {
            painter.drawLine(QPointF(x, plot.bottom()), QPointF(x, plot.bottom() + kTick));
        }
        const double middle = x + weekWidth / 2;
        const QRectF word(middle - wordWidth / 2, plot.bottom() + kTick, wordWidth, m_lineHeight);
        const bool inside = middle >= plot.left() && middle <= plot.right();
        if (inside && (every == 1 || week.week % every == 0)) {
            painter.drawText(word, Qt::AlignCenter, QString::number(week.week));
        }
    }
    paintMonths(painter, plot.bottom() + kTick + m_lineHeight);
}

void ChartFrame::paintMonths(QPainter& painter, double top) const {
    const auto months = monthsBetween(m_places.x.low, m_places.x.high);
    const QFontMetricsF metrics(m_theme.smallFont());
    for (std::size_t i = 0; i < months.size(); ++i) {
        const double start = std::max(m_places.x.low, months[i].firstDay);
        const double end = i + 1 < months.size() ? std::min(m_places.x.high, months[i + 1].firstDay)
                                                 : m_places.x.high;
        const double from = m_places.placeX(start);
        const double to = m_places.placeX(end);
        painter.setPen(m_theme.line);
        if (i > 0) {
            painter.drawLine(QPointF(from, m_places.plot.top()),
                             QPointF(from, m_places.plot.bottom() - 1));
            painter.drawLine(QPointF(from, top + 2), QPointF(from, top + m_lineHeight - 2));
        }
        // The year once at the start and again at New Year, since a southern season crosses it.
        QString word = monthText(months[i].month);
        const QString withYear = word + QLatin1Char(' ') + QString::number(months[i].year);
        const bool telling = i == 0 || months[i].month == 1;
        if (telling && metrics.horizontalAdvance(withYear) + 8 < to - from) {
            word = withYear;
        }
        if (metrics.horizontalAdvance(word) + 4 < to - from) {
            painter.setPen(m_theme.ink);
            painter.drawText(QRectF(from, top, to - from, m_lineHeight), Qt::AlignCenter, word);
        }
    }
}

void ChartFrame::paintWordsY(QPainter& painter) const {
    const QFontMetricsF metrics(m_theme.smallFont());
    const double room = m_places.plot.left() - kTick - 2;
    painter.setPen(m_theme.secondInk);
    for (const double tick : m_yTicks) {
        const double y = m_places.placeY(tick);
        painter.drawText(QRectF(0, y - m_lineHeight / 2, room, m_lineHeight),
                         Qt::AlignRight | Qt::AlignVCenter,
                         metrics.elidedText(yWord(tick), Qt::ElideRight, room));
    }
}

void ChartFrame::paintLanes(QPainter& painter) const {
    const QFontMetricsF metrics(m_theme.smallFont());
    const double room = m_places.plot.left() - kTick - 2;
    for (std::size_t i = 0; i < m_spec.lanes.size(); ++i) {
        const double middle = m_places.laneMiddle(static_cast<double>(i));
        painter.setPen(m_theme.line);
        painter.drawLine(QPointF(m_places.plot.left(), middle),
                         QPointF(m_places.plot.right(), middle));
        painter.setPen(m_theme.ink);
        painter.drawText(
            QRectF(0, middle - m_lineHeight / 2, room, m_lineHeight),
            Qt::AlignRight | Qt::AlignVCenter,
            metrics.elidedText(QString::fromStdString(m_spec.lanes[i]), Qt::ElideRight, room));
    }
}

void ChartFrame::paintTitles(QPainter& painter) const {
    painter.setPen(m_theme.secondInk);
    const QString x = titleOf(m_spec.xAxis);
    const double bottom = m_size.height() - kAir / 2;
    painter.drawText(QRectF(0, bottom - m_lineHeight, m_places.plot.right(), m_lineHeight),
                     Qt::AlignRight | Qt::AlignVCenter,
                     m_spec.xAxis.kind == AxisKind::week && x.isEmpty() ? ChartWords::tr("week")
                                                                        : x);
    painter.drawText(QRectF(kAir / 2, m_places.plot.top() - kTitleLines * m_lineHeight,
                            m_size.width() - kAir, m_lineHeight),
                     Qt::AlignLeft | Qt::AlignVCenter, titleOf(m_spec.yAxis));
}

} // namespace pipwright::ui
