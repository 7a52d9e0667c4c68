#include "ui/tree/life_line.h"

#include "ui/tree/life_painting.h"
#include "ui/tree/tree_facts.h"
#include "ui/widgets/flow_text.h"
#include "ui/widgets/number_text.h"
#include "ui/widgets/theme.h"

#include <QAccessible>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

namespace pipwright::ui {

namespace {

constexpr int kGutter = 68;
constexpr int kRight = 12;
constexpr int kAxisHeight = 18;
constexpr int kLaneHeight = 76;
constexpr int kWordMarks = 10;   ///< what was decided, grafted, noted: above the likings
constexpr int kScaleTop = 24;    ///< liking 9
constexpr int kScaleBottom = 52; ///< liking 1
constexpr int kWindowTop = 57;
constexpr int kWindowHeight = 6;
constexpr int kSmallMarks = 69;
constexpr double kNear = 9;
constexpr double kApart = 11; ///< of two word marks, so that none covers the other

bool isWordMark(LifeMark::Shape shape) {
    return shape == LifeMark::Shape::decision || shape == LifeMark::Shape::graft ||
           shape == LifeMark::Shape::note;
}

int dayOfCrop(int cropYear, Date date) {
    return daysBetween(*Date::of(cropYear, 1, 1), date);
}

double heightOfLiking(double liking) {
    return kScaleBottom - (std::clamp(liking, 1.0, 9.0) - 1) / 8 * (kScaleBottom - kScaleTop);
}

} // namespace

LifeDrawing::LifeDrawing(QWidget* parent) : QWidget(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    setAccessibleName(tr("Life by crop year"));
}

void LifeDrawing::setLanes(std::vector<LifeLane> lanes) {
    m_lanes = std::move(lanes);
    m_current.reset();
    int first = 90;
    int last = 300;
    for (const LifeLane& lane : m_lanes) {
        const auto hold = [&](const std::optional<Date>& date) {
            if (date) {
                const int day = dayOfCrop(lane.cropYear, *date);
                first = std::min(first, day);
                last = std::max(last, day);
            }
        };
        for (const LifeMark& mark : lane.marks) {
            hold(mark.date);
        }
        hold(lane.window.stillGreen);
        hold(lane.window.firstRipe);
        hold(lane.window.over);
    }
    // A record put into a far year by hand must not squeeze all others.
    m_firstDay = std::max(first, -120) - 6;
    m_lastDay = std::min(last, 730) + 6;
    updateGeometry();
    update();
}

QSize LifeDrawing::sizeHint() const {
    return {340, kAxisHeight + static_cast<int>(m_lanes.size()) * kLaneHeight};
}

QString LifeDrawing::currentWords() const {
    if (!m_current) {
        return {};
    }
    const LifeLane& lane = m_lanes[m_current->lane];
    const QString year = tr("Crop %1. ").arg(lane.cropYear);
    return year + (m_current->mark < lane.marks.size() ? lane.marks[m_current->mark].words
                                                       : lane.windowWords);
}

int LifeDrawing::marksOf(std::size_t lane) const {
    return static_cast<int>(m_lanes[lane].marks.size()) + (m_lanes[lane].window.empty() ? 0 : 1);
}

double LifeDrawing::xOf(int cropYear, Date date) const {
    const double span = std::max(1, m_lastDay - m_firstDay);
    const double share = (dayOfCrop(cropYear, date) - m_firstDay) / span;
    return kGutter + std::clamp(share, 0.0, 1.0) * (width() - kGutter - kRight);
}

QRectF LifeDrawing::laneRect(std::size_t lane) const {
    return {0.0, kAxisHeight + static_cast<double>(lane) * kLaneHeight,
            static_cast<double>(width()), static_cast<double>(kLaneHeight)};
}

double LifeDrawing::wordMarkX(const LifeLane& lane, std::size_t mark) const {
    double x = 0;
    for (std::size_t earlier = 0; earlier <= mark; ++earlier) {
        if (isWordMark(lane.marks[earlier].shape)) {
            x = std::max(xOf(lane.cropYear, lane.marks[earlier].date), x + kApart);
        }
    }
    return std::min(x, static_cast<double>(width() - kRight / 2));
}

QPointF LifeDrawing::pointOf(std::size_t lane, std::size_t mark) const {
    const LifeLane& one = m_lanes[lane];
    const double top = laneRect(lane).top();
    if (mark >= one.marks.size()) {
        return windowRect(lane).center();
    }
    const LifeMark& at = one.marks[mark];
    const double x = xOf(one.cropYear, at.date);
    switch (at.shape) {
    case LifeMark::Shape::fair:
    case LifeMark::Shape::unfair:
    case LifeMark::Shape::unclear:
        return {x, top + heightOfLiking(at.liking.value_or(1))};
    case LifeMark::Shape::decision:
    case LifeMark::Shape::graft:
    case LifeMark::Shape::note:
        return {wordMarkX(one, mark), top + kWordMarks};
    case LifeMark::Shape::bloom:
        return {x, top + kWindowTop + kWindowHeight / 2.0};
    case LifeMark::Shape::drop:
    case LifeMark::Shape::disease:
        break;
    }
    return {x, top + kSmallMarks};
}

QRectF LifeDrawing::windowRect(std::size_t lane) const {
    const LifeLane& one = m_lanes[lane];
    const auto first = one.window.firstRipe    ? one.window.firstRipe
                       : one.window.stillGreen ? one.window.stillGreen
                                               : one.window.over;
    const auto last = one.window.lastRipe ? one.window.lastRipe : first;
    if (!first) {
        return {};
    }
    const double left = xOf(one.cropYear, *first);
    return QRectF(left - 3, laneRect(lane).top() + kWindowTop,
                  std::max(6.0, xOf(one.cropYear, *last) - left + 6), kWindowHeight);
}

std::optional<LifeDrawing::Spot> LifeDrawing::spotAt(QPointF point) const {
    std::optional<Spot> best;
    double nearest = kNear;
    for (std::size_t lane = 0; lane < m_lanes.size(); ++lane) {
        if (!laneRect(lane).contains(point)) {
            continue;
        }
        for (std::size_t mark = 0; mark < m_lanes[lane].marks.size(); ++mark) {
            const QPointF away = pointOf(lane, mark) - point;
            const double distance = std::hypot(away.x(), away.y());
            if (distance < nearest) {
                nearest = distance;
                best = Spot{lane, mark};
            }
        }
        if (!best && !m_lanes[lane].window.empty() &&
            windowRect(lane).adjusted(-8, -4, 8, 4).contains(point)) {
            best = Spot{lane, m_lanes[lane].marks.size()};
        }
    }
    return best;
}

void LifeDrawing::setCurrent(std::optional<Spot> spot) {
    if (spot == m_current) {
        return;
    }
    m_current = spot;
    const QString words = currentWords();
    setAccessibleDescription(words);
    QAccessibleEvent event(this, QAccessible::DescriptionChanged);
    QAccessible::updateAccessibility(&event);
    Q_EMIT currentWordsChanged(words);
    update();
}

void LifeDrawing::keyPressEvent(QKeyEvent* event) {
    if (m_lanes.empty()) {
        QWidget::keyPressEvent(event);
        return;
    }
    Spot spot = m_current.value_or(Spot{});
    const auto lanes = static_cast<int>(m_lanes.size());
    int lane = static_cast<int>(spot.lane);
    int mark = static_cast<int>(spot.mark);
    switch (event->key()) {
    case Qt::Key_Left:
        --mark;
        break;
    case Qt::Key_Right:
        ++mark;
        break;
    case Qt::Key_Up:
        --lane;
        break;
    case Qt::Key_Down:
        ++lane;
        break;
    case Qt::Key_Home:
        mark = 0;
        break;
    case Qt::Key_End:
        mark = marksOf(spot.lane);
        break;
    default:
        QWidget::keyPressEvent(event);
        return;
    }
    spot.lane = static_cast<std::size_t>(std::clamp(lane, 0, lanes - 1));
    spot.mark = static_cast<std::size_t>(std::clamp(mark, 0, std::max(0, marksOf(spot.lane) - 1)));
    setCurrent(spot);
}

void LifeDrawing::focusInEvent(QFocusEvent* event) {
    QWidget::focusInEvent(event);
    if (!m_current && !m_lanes.empty() && event->reason() != Qt::MouseFocusReason) {
        setCurrent(Spot{0, 0});
    }
}

void LifeDrawing::mouseMoveEvent(QMouseEvent* event) {
    if (const auto spot = spotAt(event->position())) {
        setCurrent(spot);
        setToolTip(currentWords());
    } else {
        setToolTip({});
        if (!hasFocus()) {
            setCurrent(std::nullopt);
        }
    }
}

void LifeDrawing::mousePressEvent(QMouseEvent* event) {
    if (const auto spot = spotAt(event->position())) {
        setCurrent(spot);
    }
}

void LifeDrawing::leaveEvent(QEvent*) {
    if (!hasFocus()) {
        setCurrent(std::nullopt);
    }
}

void LifeDrawing::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    paintAxis(painter);
    for (std::size_t lane = 0; lane < m_lanes.size(); ++lane) {
        paintLane(painter, lane);
    }
    const Theme& theme = themeOf(this);
    if (hasFocus()) {
        painter.setPen(QPen(theme.sky, 2));
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), theme.radius, theme.radius);
    }
}

void LifeDrawing::paintAxis(QPainter& painter) const {
    const Theme& theme = themeOf(this);
    painter.setFont(theme.smallFont());
    // Months of a common year: the lanes of leap years are a day off after February, no more.
    constexpr int kCommonYear = 2023;
    double written = 0;
    for (int month = -11; month <= 24; ++month) {
        const int year = kCommonYear + (month - 1 < 0 ? -1 : (month - 1) / 12);
        const int number = ((month - 1) % 12 + 12) % 12 + 1;
        const Date day = *Date::of(year, static_cast<unsigned>(number), 1);
        const int at = dayOfCrop(kCommonYear, day);
        if (at < m_firstDay || at > m_lastDay - 10) {
            continue;
        }
        const double x = xOf(kCommonYear, day);
        painter.setPen(QPen(theme.line, 1));
        painter.drawLine(QPointF(x, kAxisHeight), QPointF(x, height()));
        const QString text = monthText(number);
        const double wide = painter.fontMetrics().horizontalAdvance(text);
        if (x > written && x + wide < width()) {
            painter.setPen(theme.secondInk);
            painter.drawText(QPointF(x + 2, kAxisHeight - 5), text);
            written = x + wide + 3;
        }
    }
}

void LifeDrawing::paintLane(QPainter& painter, std::size_t lane) const {
    const Theme& theme = themeOf(this);
    const LifeLane& one = m_lanes[lane];
    const QRectF room = laneRect(lane);
    painter.setPen(QPen(theme.line, 1));
    painter.drawLine(QPointF(0, std::floor(room.bottom()) - 0.5),
                     QPointF(width(), std::floor(room.bottom()) - 0.5));
    painter.setPen(theme.ink);
    painter.setFont(theme.strongFont());
    painter.drawText(QRectF(4, room.top() + 4, kGutter - 6, 18), Qt::AlignLeft | Qt::AlignVCenter,
                     QString::number(one.cropYear));
    painter.setFont(theme.smallFont());
    painter.setPen(theme.secondInk);
    if (!one.cropLoad.isEmpty()) {
        painter.drawText(QRectF(4, room.top() + 22, kGutter - 20, 30),
                         Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap,
                         tr("crop %1").arg(one.cropLoad));
    }
    const bool tasted = std::any_of(one.marks.begin(), one.marks.end(),
                                    [](const LifeMark& mark) { return mark.liking.has_value(); });
    if (tasted) {
        painter.setPen(QPen(theme.line, 1, Qt::DotLine));
        for (const double liking : {1.0, 5.0, 9.0}) {
            const double y = room.top() + heightOfLiking(liking);
            painter.drawLine(QPointF(kGutter, y), QPointF(width() - kRight, y));
            painter.setPen(theme.secondInk);
            painter.drawText(QRectF(kGutter - 13, y - 7, 9, 14), Qt::AlignRight | Qt::AlignVCenter,
                             QString::number(static_cast<int>(liking)));
            painter.setPen(QPen(theme.line, 1, Qt::DotLine));
        }
    }
    paintWindow(painter, lane);
    for (std::size_t mark = 0; mark < one.marks.size(); ++mark) {
        const LifeMark& at = one.marks[mark];
        if (at.lowest && *at.lowest != *at.highest) { // tasters who did not agree
            const QPointF point = pointOf(lane, mark);
            painter.setPen(QPen(lifeMarkInk(at.shape, theme), 1.5));
            painter.drawLine(QPointF(point.x(), room.top() + heightOfLiking(*at.lowest)),
                             QPointF(point.x(), room.top() + heightOfLiking(*at.highest)));
        }
        paintLifeMark(painter, at.shape, pointOf(lane, mark), theme);
    }
    if (m_current && m_current->lane == lane) {
        painter.setPen(QPen(theme.sky, 2));
        painter.setBrush(Qt::NoBrush);
        if (m_current->mark < one.marks.size()) {
            painter.drawEllipse(pointOf(lane, m_current->mark), 8, 8);
        } else {
            painter.drawRoundedRect(windowRect(lane).adjusted(-3, -3, 3, 3), 3, 3);
        }
    }
}

void LifeDrawing::paintWindow(QPainter& painter, std::size_t lane) const {
    const LifeLane& one = m_lanes[lane];
    const ObservedWindow& window = one.window;
    if (window.empty()) {
        return;
    }
    const Theme& theme = themeOf(this);
    const QRectF bar = windowRect(lane);
    const double middle = bar.center().y();
    const QColor pale = withContrast(theme.line, theme.surface, 3.0);
    painter.setPen(QPen(pale, 1.5));
    if (window.stillGreen) {
        const double x = xOf(one.cropYear, *window.stillGreen);
        painter.drawLine(QPointF(x, middle - 4), QPointF(x, middle + 4));
        painter.drawLine(QPointF(x, middle), QPointF(bar.left(), middle));
    } else if (window.firstRipe) {
        painter.setPen(QPen(pale, 1.5, Qt::DotLine));
        painter.drawLine(QPointF(bar.left() - 14, middle), QPointF(bar.left(), middle));
    }
    painter.setPen(QPen(pale, 1.5));
    if (window.over) {
        const double x = xOf(one.cropYear, *window.over);
        painter.drawLine(QPointF(bar.right(), middle), QPointF(x, middle));
        painter.drawLine(QPointF(x - 3, middle - 3), QPointF(x + 3, middle + 3));
        painter.drawLine(QPointF(x - 3, middle + 3), QPointF(x + 3, middle - 3));
    } else if (window.firstRipe) {
        painter.setPen(QPen(pale, 1.5, Qt::DotLine));
        painter.drawLine(QPointF(bar.right(), middle), QPointF(bar.right() + 14, middle));
    }
    if (window.firstRipe) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(withContrast(theme.leaf, theme.surface, 3.0));
        painter.drawRoundedRect(bar, 2, 2);
    }
}

LifeLine::LifeLine(QWidget* parent)
    : QWidget(parent), m_legend(new LifeLegend(this)), m_drawing(new LifeDrawing(this)),
      m_words(new FlowText({}, FlowText::Weight::small, this)) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(8, 0, 4, 4);
    layout->setSpacing(4);
    layout->addWidget(m_legend);
    layout->addWidget(m_drawing);
    layout->addWidget(m_words);
    connect(m_drawing, &LifeDrawing::currentWordsChanged, this,
            [this](const QString& words) { m_words->setText(words.isEmpty() ? m_hint : words); });
}

void LifeLine::show(const TreeFacts& facts) {
    auto lanes = lifeLanes(facts);
    const bool any = !lanes.empty();
    m_hint = any ? tr("Point at a mark, or go along with the arrow keys, to read it.")
                 : tr("Bloom, walk marks, tastings, notes and decisions will draw its years here.");
    m_legend->setLanes(lanes);
    m_legend->setVisible(any);
    m_drawing->setLanes(std::move(lanes));
    m_drawing->setVisible(any);
    m_words->setText(m_hint);
}

} // namespace pipwright::ui
