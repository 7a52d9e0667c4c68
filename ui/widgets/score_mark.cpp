#include "ui/widgets/score_mark.h"

#include <QPainter>

#include <algorithm>

namespace pipwright::ui {

namespace {

constexpr double kRadius = 4.5;
constexpr int kScaleWidth = 120;

void drawArrow(QPainter& painter, const QPointF& tip, double direction) {
    painter.drawLine(tip, tip + QPointF(-4 * direction, -3));
    painter.drawLine(tip, tip + QPointF(-4 * direction, 3));
}

} // namespace

void drawIntervalDot(QPainter& painter, const QRectF& area, const IntervalDot& dot,
                     const Theme& theme) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF room = area.adjusted(kRadius + 1, 0, -kRadius - 1, 0);
    const double middle = area.center().y();
    const double span = std::max(1e-12, dot.scaleHigh - dot.scaleLow);
    const auto place = [&](double value) {
        const double share = std::clamp((value - dot.scaleLow) / span, 0.0, 1.0);
        return room.left() + share * room.width();
    };
    painter.setPen(QPen(theme.line, 1));
    painter.drawLine(QPointF(room.left(), middle), QPointF(room.right(), middle));
    for (const double end : {room.left(), room.center().x(), room.right()}) {
        painter.drawLine(QPointF(end, middle - 3), QPointF(end, middle + 3));
    }
    const QColor base = dot.colour.isValid() ? dot.colour : theme.leaf;
    const QColor colour = withContrast(base, theme.surface, 3.0);
    if (dot.low && dot.high) {
        painter.setPen(QPen(colour, dot.uncertain ? 1.2 : 2));
        painter.drawLine(QPointF(place(*dot.low), middle), QPointF(place(*dot.high), middle));
        if (*dot.low < dot.scaleLow) {
            drawArrow(painter, QPointF(room.left(), middle), -1);
        }
        if (*dot.high > dot.scaleHigh) {
            drawArrow(painter, QPointF(room.right(), middle), 1);
        }
    }
    painter.setPen(QPen(colour, 1.5));
    painter.setBrush(dot.uncertain ? theme.surface : base);
    painter.drawEllipse(QPointF(place(dot.value), middle), kRadius - 0.75, kRadius - 0.75);
    painter.restore();
}

ScoreMark::ScoreMark(QWidget* parent) : QWidget(parent) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void ScoreMark::setScore(const IntervalDot& dot, const QString& text, const QString& evidence) {
    m_dot = dot;
    m_text = text;
    m_evidence = evidence;
    describe();
}

void ScoreMark::setNone(const QString& evidence) {
    m_dot.reset();
    m_text.clear();
    m_evidence = evidence;
    describe();
}

QSize ScoreMark::sizeHint() const {
    const Theme& theme = themeOf(this);
    const QFontMetrics strong(theme.strongFont());
    const QFontMetrics body(theme.smallFont());
    return {kScaleWidth + 2 * theme.space + strong.horizontalAdvance(m_text) +
                body.horizontalAdvance(m_evidence),
            strong.height() + theme.gap};
}

QSize ScoreMark::minimumSizeHint() const {
    return {kScaleWidth, sizeHint().height()};
}

void ScoreMark::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const Theme& theme = themeOf(this);
    QRect room = rect();
    if (m_dot) {
        drawIntervalDot(painter, QRectF(0, 0, kScaleWidth, height()), *m_dot, theme);
        room.setLeft(kScaleWidth + theme.space);
        painter.setFont(theme.strongFont());
        painter.setPen(theme.ink);
        painter.drawText(room, Qt::AlignLeft | Qt::AlignVCenter, m_text);
        room.setLeft(room.left() + painter.fontMetrics().horizontalAdvance(m_text) + theme.space);
    }
    painter.setFont(theme.smallFont());
    painter.setPen(theme.secondInk);
    painter.drawText(room, Qt::AlignLeft | Qt::AlignVCenter,
                     painter.fontMetrics().elidedText(m_evidence, Qt::ElideRight, room.width()));
}

void ScoreMark::describe() {
    const QString separator =
        m_text.isEmpty() || m_evidence.isEmpty() ? QString() : QStringLiteral(", ");
    setAccessibleName(m_text + separator + m_evidence);
    setToolTip(m_evidence);
    updateGeometry();
    update();
}

} // namespace pipwright::ui
