#include "ui/compare/compare_marks.h"

#include <QPolygonF>

#include <algorithm>

namespace pipwright::ui {

namespace {

constexpr double kMarkContrast = 3.0;
constexpr double kLeastBar = 3.0;

} // namespace

void drawScore(QPainter& painter, const QPointF& at, Sight sight, bool fair, const Theme& theme) {
    const QColor colour =
        withContrast(fair ? theme.leaf : theme.secondInk, theme.surface, kMarkContrast);
    painter.setPen(QPen(colour, 1.2));
    painter.setBrush(fair ? QBrush(colour) : QBrush(theme.surface));
    switch (sight) {
    case Sight::blind:
        painter.drawEllipse(at, kScoreDot, kScoreDot);
        break;
    case Sight::sighted: {
        const double r = kScoreDot + 0.8;
        painter.drawPolygon(QPolygonF{at + QPointF(0, -r), at + QPointF(r, 0), at + QPointF(0, r),
                                      at + QPointF(-r, 0)});
        break;
    }
    case Sight::unknown:
        painter.drawRect(QRectF(at.x() - kScoreDot + 0.5, at.y() - kScoreDot + 0.5,
                                2 * kScoreDot - 1, 2 * kScoreDot - 1));
        break;
    }
}

void drawMean(QPainter& painter, double left, double mean, double right, double base,
              const Theme& theme) {
    painter.setPen(QPen(withContrast(theme.russet, theme.surface, kMarkContrast), 2.5));
    painter.drawLine(QPointF(left, base + 1), QPointF(right, base + 1));
    painter.drawLine(QPointF(mean, base - 3), QPointF(mean, base + 2));
}

void drawYear(QPainter& painter, double first, double last, double y, bool endSeen,
              const Theme& theme) {
    const QColor leaf = withContrast(theme.leaf, theme.surface, kMarkContrast);
    painter.setPen(QPen(leaf, 1.2, endSeen ? Qt::SolidLine : Qt::DotLine));
    painter.drawLine(QPointF(first, y), QPointF(last, y));
    painter.setPen(Qt::NoPen);
    painter.setBrush(leaf);
    painter.drawEllipse(QPointF(first, y), 1.6, 1.6);
}

void drawUsual(QPainter& painter, const QRectF& bar, const Theme& theme) {
    painter.setPen(Qt::NoPen);
    painter.setBrush(withContrast(theme.leaf, theme.surface, kMarkContrast));
    painter.drawRoundedRect(
        QRectF(bar.left(), bar.top(), std::max(kLeastBar, bar.width()), bar.height()), 2, 2);
}

} // namespace pipwright::ui
