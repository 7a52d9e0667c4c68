#include "ui/grafting/frame_tree_view.h"

#include "ui/grafting/graft_words.h"
#include "ui/widgets/number_text.h"
#include "ui/widgets/theme.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace pipwright::ui {

namespace {

constexpr double kMargin = 34;       ///< logical pixels around each drawing, for the words
constexpr double kNearEnough = 14;   ///< of a click to a limb's end
constexpr double kLeastHeight = 250; ///< centimetres the side drawing shows at least
constexpr double kStep = 50;         ///< centimetres between two height lines
constexpr double kPi = 3.14159265358979323846;

/// The colour of a mark named in words; invalid when it is none we know.
QColor markColour(const std::string& mark) {
    return QColor(QString::fromStdString(mark).trimmed().toLower());
}

} // namespace

FrameTreeView::FrameTreeView(QWidget* parent) : QWidget(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Frame tree drawn limb by limb"));
}

void FrameTreeView::setLimbs(const QString& treeName, std::vector<FrameLimb> limbs) {
    m_name = treeName;
    m_limbs = std::move(limbs);
    m_chosen.reset();
    setAccessibleDescription(tr("%1, %n limb(s); the list beside it has them in words.", nullptr,
                                static_cast<int>(m_limbs.size()))
                                 .arg(m_name));
    update();
}

void FrameTreeView::setChosen(std::optional<int> limb) {
    m_chosen = limb;
    update();
}

QPointF FrameTreeView::centre() const {
    return {width() / 4.0, height() / 2.0};
}

double FrameTreeView::reach() const {
    return std::max(20.0, std::min(width() / 4.0, height() / 2.0) - kMargin);
}

QPointF FrameTreeView::endFromAbove(int limb) const {
    const double angle = limbAt(limb).bearing.value_or(0) * kPi / 180;
    // Limbs further out on the branch are drawn longer.
    const auto order =
        static_cast<double>(std::clamp<std::int64_t>(limbAt(limb).order.value_or(1), 1, 3));
    const double length = reach() * (0.7 + 0.1 * order);
    return centre() + QPointF(std::sin(angle), -std::cos(angle)) * length;
}

double FrameTreeView::sideOf(double height) const {
    double tallest = kLeastHeight;
    for (const FrameLimb& limb : m_limbs) {
        tallest = std::max(tallest, limb.height.value_or(0) + kStep);
    }
    const double foot = this->height() - kMargin / 2;
    return foot - height / tallest * (foot - kMargin / 2);
}

QPointF FrameTreeView::endFromSide(int limb) const {
    const double angle = limbAt(limb).bearing.value_or(90) * kPi / 180;
    const double side = std::sin(angle) < 0 ? -1 : 1; // west on the left, seen from the south
    const double length = 0.25 + 0.75 * std::abs(std::sin(angle));
    const double room = width() / 4.0 - 2.6 * kMargin;
    return {0.75 * width() + side * std::max(24.0, room) * length,
            sideOf(limbAt(limb).height.value_or(0)) - 12};
}

void FrameTreeView::drawLimb(QPainter& painter, int limb, const QPointF& from, const QPointF& to,
                             bool labelled) const {
    const Theme& theme = themeOf(this);
    const FrameLimb& one = limbAt(limb);
    const bool growing = one.state == PlantState::growing;
    const bool here = m_chosen == limb;
    painter.setPen(QPen(here      ? theme.sky
                        : growing ? theme.ink
                                  : theme.secondInk,
                        here ? 3 : 1.5, growing && one.bearing ? Qt::SolidLine : Qt::DashLine,
                        Qt::RoundCap));
    painter.drawLine(from, to);
    const QColor mark = markColour(one.mark);
    painter.setPen(QPen(here ? theme.sky : theme.ink, here ? 2 : 1));
    painter.setBrush(mark.isValid() ? mark : theme.surface);
    painter.drawEllipse(to, 5, 5);
    if (!labelled) {
        return;
    }
    const QString code = QString::fromStdString(one.code);
    painter.setFont(here ? theme.strongFont() : theme.smallFont());
    painter.setPen(theme.ink);
    const QFontMetricsF metrics(painter.font());
    const bool left = to.x() < from.x();
    QRectF box(0, 0, metrics.horizontalAdvance(code) + 2, metrics.height());
    box.moveTop(to.y() - box.height() / 2);
    box.moveLeft(left ? to.x() - 9 - box.width() : to.x() + 9);
    box.moveLeft(std::clamp(box.left(), width() / 2.0 + 2,
                            std::max(width() / 2.0 + 2, width() - box.width() - 2)));
    painter.drawText(box, Qt::AlignLeft | Qt::AlignVCenter, code);
}

void FrameTreeView::drawFromAbove(QPainter& painter) const {
    const Theme& theme = themeOf(this);
    painter.setPen(QPen(theme.line, 1));
    painter.setBrush(Qt::NoBrush);
    painter.drawEllipse(centre(), reach(), reach());
    painter.setFont(theme.smallFont());
    painter.setPen(theme.secondInk);
    for (const double bearing : {0.0, 90.0, 180.0, 270.0}) {
        const double angle = bearing * kPi / 180;
        const QPointF at =
            centre() + QPointF(std::sin(angle), -std::cos(angle)) * (reach() + kMargin / 2 - 4);
        painter.drawText(QRectF(at.x() - 20, at.y() - 10, 40, 20), Qt::AlignCenter,
                         compassWord(bearing));
    }
    for (int limb = 0; limb < static_cast<int>(m_limbs.size()); ++limb) {
        drawLimb(painter, limb, centre(), endFromAbove(limb), false);
        painter.setFont(theme.smallFont());
        painter.setPen(theme.ink);
        // Beside the limb, clear of its line.
        const QPointF out = endFromAbove(limb) - centre();
        const QPointF aside = QPointF(-out.y(), out.x()) / std::hypot(out.x(), out.y()) * 11;
        const QPointF at = centre() + out * 0.7 + aside;
        painter.drawText(QRectF(at.x() - 12, at.y() - 9, 24, 18), Qt::AlignCenter,
                         QString::number(limb + 1));
    }
    painter.setPen(QPen(theme.ink, 1));
    painter.setBrush(theme.raised);
    painter.drawEllipse(centre(), 7, 7);
}

void FrameTreeView::drawFromSide(QPainter& painter) const {
    const Theme& theme = themeOf(this);
    const double left = width() / 2.0 + 2;
    painter.setFont(theme.smallFont());
    for (double height = 0; sideOf(height) > kMargin / 2 - 1; height += kStep) {
        const double y = std::round(sideOf(height)) + 0.5;
        painter.setPen(QPen(theme.line, 1));
        painter.drawLine(QPointF(left, y), QPointF(width(), y));
        painter.setPen(theme.secondInk);
        if (static_cast<int>(height) % 100 == 0) {
            painter.drawText(QPointF(left, y - 2), tr("%1 cm").arg(numberText(height, 0)));
        }
    }
    const double trunk = 0.75 * width();
    painter.setPen(QPen(theme.ink, 4, Qt::SolidLine, Qt::RoundCap));
    painter.drawLine(QPointF(trunk, sideOf(0)), QPointF(trunk, kMargin / 2));
    for (int limb = 0; limb < static_cast<int>(m_limbs.size()); ++limb) {
        drawLimb(painter, limb, {trunk, sideOf(limbAt(limb).height.value_or(0))}, endFromSide(limb),
                 true);
    }
}

void FrameTreeView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const Theme& theme = themeOf(this);
    painter.fillRect(rect(), theme.surface);
    painter.setRenderHint(QPainter::Antialiasing);
    if (m_limbs.empty()) {
        painter.setFont(theme.bodyFont());
        painter.setPen(theme.secondInk);
        painter.drawText(rect(), Qt::AlignCenter | Qt::TextWordWrap,
                         tr("No limb is worked on this tree."));
    } else {
        drawFromAbove(painter);
        drawFromSide(painter);
    }
    if (hasFocus()) {
        painter.setPen(QPen(theme.sky, 2));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(QRectF(rect()).adjusted(1, 1, -1, -1));
    }
}

void FrameTreeView::mousePressEvent(QMouseEvent* event) {
    std::optional<int> nearest;
    double best = kNearEnough;
    for (int limb = 0; limb < static_cast<int>(m_limbs.size()); ++limb) {
        for (const QPointF& end : {endFromAbove(limb), endFromSide(limb)}) {
            const QPointF away = end - event->position();
            const double distance = std::hypot(away.x(), away.y());
            if (distance < best) {
                best = distance;
                nearest = limb;
            }
        }
    }
    if (nearest) {
        setChosen(nearest);
        Q_EMIT limbChosen(*nearest);
    }
}

void FrameTreeView::keyPressEvent(QKeyEvent* event) {
    const int total = static_cast<int>(m_limbs.size());
    const bool on = event->key() == Qt::Key_Right || event->key() == Qt::Key_Down;
    const bool back = event->key() == Qt::Key_Left || event->key() == Qt::Key_Up;
    if (total == 0 || (!on && !back)) {
        QWidget::keyPressEvent(event);
        return;
    }
    const int next = std::clamp(m_chosen.value_or(on ? -1 : total) + (on ? 1 : -1), 0, total - 1);
    setChosen(next);
    Q_EMIT limbChosen(next);
}

} // namespace pipwright::ui
