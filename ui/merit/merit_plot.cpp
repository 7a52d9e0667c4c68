#include "ui/merit/merit_plot.h"

#include "ui/widgets/theme.h"

#include <QApplication>
#include <QPainter>

#include <algorithm>
#include <array>
#include <cmath>

namespace pipwright::ui {

namespace {

constexpr int kPlotWidth = 190;
constexpr double kDot = 3.5;

enum class RungLine { floor, best, famous };

/// Told apart by their strokes as well as by their colours.
QPen penOf(RungLine line, const Theme& theme) {
    switch (line) {
    case RungLine::floor:
        return {theme.secondInk, 1.5, Qt::DotLine};
    case RungLine::best:
        return {theme.leaf, 2, Qt::SolidLine};
    case RungLine::famous:
        break;
    }
    return {theme.russet, 1.5, Qt::DashLine};
}

void paintDot(QPainter& painter, const QPointF& at, bool open, const QColor& ink,
              const QColor& surface) {
    painter.setPen(QPen(ink, 1.5));
    painter.setBrush(open ? surface : ink);
    painter.drawEllipse(at, kDot, kDot);
}

void paintSpan(QPainter& painter, double from, double to, double y, double width,
               const QColor& ink) {
    painter.setPen(QPen(ink, width, Qt::SolidLine, Qt::FlatCap));
    painter.drawLine(QPointF(from, y), QPointF(to, y));
}

} // namespace

void paintMeritPlot(QPainter& painter, const QRectF& area, const MeritPlot& plot,
                    const QWidget* widget) {
    const Theme& theme = themeOf(widget);
    const auto at = [&](double value) {
        const double share = (value - plot.low) / std::max(1e-9, plot.high - plot.low);
        return area.left() + std::clamp(share, 0.0, 1.0) * area.width();
    };
    const double y = area.center().y();
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.setPen(QPen(theme.line, 1));
    for (double tick = std::ceil(plot.low); tick <= plot.high + 1e-9; tick += 1) {
        const double x = std::round(at(tick));
        painter.drawLine(QPointF(x, area.bottom() - 3), QPointF(x, area.bottom()));
    }
    painter.setRenderHint(QPainter::Antialiasing);
    const std::array rungs = {std::pair{RungLine::floor, plot.floor},
                              std::pair{RungLine::famous, plot.famous},
                              std::pair{RungLine::best, plot.best}};
    for (const auto& [line, value] : rungs) {
        if (value) {
            painter.setPen(penOf(line, theme));
            painter.drawLine(QPointF(at(*value), area.top()), QPointF(at(*value), area.bottom()));
        }
    }
    if (plot.value) {
        const QColor ink =
            plot.pale ? withContrast(theme.secondInk, theme.surface, 3.0) : theme.ink;
        paintSpan(painter, at(plot.widestLow), at(plot.widestHigh), y, 1, ink);
        paintSpan(painter, at(plot.eightyLow), at(plot.eightyHigh), y, plot.pale ? 2.5 : 4, ink);
        paintDot(painter, {at(*plot.value), y}, plot.pale, ink, theme.surface);
    }
    painter.restore();
}

void MeritPlotCells::paint(QPainter* painter, const QStyleOptionViewItem& option,
                           const QModelIndex& index) const {
    QStyleOptionViewItem cell = option;
    initStyleOption(&cell, index);
    cell.text.clear();
    const QStyle* style = cell.widget != nullptr ? cell.widget->style() : QApplication::style();
    style->drawControl(QStyle::CE_ItemViewItem, &cell, painter, cell.widget);
    const QVariant plot = index.data(kPlotRole);
    if (plot.canConvert<MeritPlot>()) {
        if (option.state.testFlag(QStyle::State_Selected)) { // marks are made for this ground
            painter->fillRect(option.rect.adjusted(4, 1, -4, -1), themeOf(option.widget).surface);
        }
        paintMeritPlot(*painter, QRectF(option.rect).adjusted(10, 3, -10, -3),
                       plot.value<MeritPlot>(), option.widget);
    }
}

QSize MeritPlotCells::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    return {kPlotWidth, PaddedCells::sizeHint(option, index).height()};
}

MeritLegend::MeritLegend(QWidget* parent) : QWidget(parent) {
    setAccessibleName(tr("Dot: merit; thick bar: 80 %; thin bar: 95 %; open and pale: no fair "
                         "lot yet. Lines: floor dotted, best solid, famous name dashed."));
    setToolTip(accessibleName());
}

QSize MeritLegend::sizeHint() const {
    return {540, fontMetrics().height() + 4};
}

QSize MeritLegend::minimumSizeHint() const {
    return {200, fontMetrics().height() + 4};
}

void MeritLegend::paintEvent(QPaintEvent*) {
    const Theme& theme = themeOf(this);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setFont(theme.smallFont());
    const double y = height() / 2.0;
    double x = 8;
    const auto say = [&](const QString& words, double mark) {
        painter.setPen(theme.secondInk);
        x += mark + 5;
        painter.drawText(QPointF(x, y + painter.fontMetrics().ascent() / 2.0 - 1), words);
        x += painter.fontMetrics().horizontalAdvance(words) + 14;
    };
    paintSpan(painter, x, x + 34, y, 1, theme.ink);
    paintSpan(painter, x + 8, x + 26, y, 4, theme.ink);
    paintDot(painter, {x + 17, y}, false, theme.ink, theme.surface);
    say(tr("merit, thick 80 %, thin 95 %"), 34);
    paintDot(painter, {x + 5, y}, true, withContrast(theme.secondInk, theme.surface, 3.0),
             theme.surface);
    say(tr("no fair lot yet"), 10);
    const std::array lines = {std::pair{RungLine::floor, tr("floor")},
                              std::pair{RungLine::best, tr("best")},
                              std::pair{RungLine::famous, tr("famous name")}};
    for (const auto& [line, words] : lines) {
        painter.setPen(penOf(line, theme));
        painter.drawLine(QPointF(x + 2, 2), QPointF(x + 2, height() - 2));
        say(words, 4);
    }
}

} // namespace pipwright::ui
