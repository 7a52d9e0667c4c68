#include "ui/compare/compare_delegate.h"

#include "ui/compare/compare_model.h"
#include "ui/widgets/number_text.h"
#include "ui/widgets/score_mark.h"
#include "ui/widgets/theme.h"

#include <QApplication>
#include <QPainter>
#include <QWidget>

#include <algorithm>

namespace pipwright::ui {

namespace {

constexpr int kPad = 6;
constexpr int kWindowHeight = 34;
constexpr int kScoresHeight = 40;
constexpr int kScaleHeight = 18;
constexpr int kPhotoHeight = 96;
constexpr int kFirstDay = 152; // 1 June of the crop year
constexpr int kLastDay = 335;  // 1 December

double dayOf(const LifeYear& year, Date date) {
    const auto newYear = Date::of(year.cropYear, 1, 1);
    return newYear ? daysBetween(*newYear, date) + 1 : 0;
}

/// Where a day of the crop year lies across the area. A southern season runs past New Year: its
/// days are moved back by half a year.
double acrossOf(double day, const QRectF& area) {
    const double share = (day - kFirstDay) / (kLastDay - kFirstDay);
    return area.left() + std::clamp(share, 0.0, 1.0) * area.width();
}

} // namespace

CompareDelegate::CompareDelegate(const CompareModel& model, PhotoBytes photoBytes, QObject* parent)
    : QStyledItemDelegate(parent), m_model(model), m_photoBytes(std::move(photoBytes)) {}

void CompareDelegate::drawWindow(QPainter& painter, const QRect& area, int column,
                                 const QWidget* widget) const {
    const Theme& theme = themeOf(widget);
    const auto& years = m_model.column(column).season.years;
    const QRectF axis = QRectF(area).adjusted(kPad, 2, -kPad, -14);
    painter.setFont(theme.smallFont());
    const bool south = std::any_of(years.begin(), years.end(), [](const LifeYear& year) {
        return year.window.firstRipe && year.window.firstRipe->year() > year.cropYear;
    });
    const int shift = south ? 181 : 0;
    for (int month = 6; month <= 12; ++month) {
        const double x =
            acrossOf(Date::of(2025, static_cast<unsigned>(month), 1)->dayOfYear(), axis);
        painter.setPen(theme.line);
        painter.drawLine(QPointF(x, axis.top()), QPointF(x, axis.bottom() + 2));
        if (month < 12) {
            painter.setPen(theme.secondInk);
            const int named = (month - 1 + (south ? 6 : 0)) % 12 + 1;
            painter.drawText(QPointF(x + 2, area.bottom() - 2), monthText(named));
        }
    }
    double y = axis.top() + 2;
    const double step = years.empty() ? 0 : std::min(5.0, axis.height() / double(years.size()));
    for (const LifeYear& year : years) {
        const ObservedWindow& window = year.window;
        if (window.firstRipe) {
            const double from = acrossOf(dayOf(year, *window.firstRipe) - shift, axis);
            const Date end = window.over.value_or(window.lastRipe.value_or(*window.firstRipe));
            const double to = std::max(from + 3, acrossOf(dayOf(year, end) - shift, axis));
            painter.fillRect(QRectF(from, y, to - from, std::max(2.0, step - 1.5)), theme.leaf);
            if (!window.over) { // the end was not seen
                painter.setPen(theme.leaf);
                painter.drawLine(QPointF(to + 2, y), QPointF(to + 6, y));
            }
        }
        y += step;
    }
}

void CompareDelegate::drawScores(QPainter& painter, const QRect& area, int column,
                                 const QWidget* widget) const {
    const Theme& theme = themeOf(widget);
    const QRectF axis = QRectF(area).adjusted(kPad + 4, 4, -kPad - 4, -14);
    painter.setFont(theme.smallFont());
    for (int tick = 1; tick <= 9; ++tick) {
        const double x = axis.left() + (tick - 1) / 8.0 * axis.width();
        painter.setPen(theme.line);
        painter.drawLine(QPointF(x, axis.top()), QPointF(x, axis.bottom()));
        if (tick % 2 == 1) {
            painter.setPen(theme.secondInk);
            painter.drawText(QRectF(x - 8, axis.bottom(), 16, 14), Qt::AlignCenter,
                             QString::number(tick));
        }
    }
    painter.setRenderHint(QPainter::Antialiasing);
    std::map<double, int> stacked; // scores of the same liking stand on each other
    for (const ComparedScore& score : m_model.column(column).scores) {
        const double x = axis.left() + (score.liking - 1) / 8.0 * axis.width();
        const int level = stacked[score.liking]++;
        const double y = std::max(axis.top() + 3, axis.bottom() - 5 - 5.0 * level);
        painter.setPen(QPen(theme.leaf, 1.3));
        painter.setBrush(score.fair ? QBrush(theme.leaf) : QBrush(Qt::NoBrush));
        if (score.sight == Sight::blind) {
            painter.drawRect(QRectF(x - 2.5, y - 2.5, 5, 5));
        } else {
            painter.drawEllipse(QPointF(x, y), 2.8, 2.8);
        }
    }
    painter.setRenderHint(QPainter::Antialiasing, false);
}

void CompareDelegate::drawScale(QPainter& painter, const QRect& area, const QModelIndex& index,
                                const QWidget* widget) const {
    const Theme& theme = themeOf(widget);
    const CompareLine& line = m_model.lineAt(index.row());
    const bool liking = line.aspect == CompareAspect::fairLiking;
    const ComparedGenotype& column = m_model.column(index.column());
    const ComparedTrait* trait = liking ? (column.fairLiking ? &*column.fairLiking : nullptr)
                                        : m_model.traitIn(index.column(), line.trait);
    if (trait == nullptr) {
        return;
    }
    const auto [low, high] = liking ? std::pair(1.0, 9.0) : m_model.scaleOf(line.trait);
    IntervalDot dot;
    dot.value = trait->mean;
    if (trait->standardError) {
        dot.low = trait->mean - 2 * *trait->standardError;
        dot.high = trait->mean + 2 * *trait->standardError;
    }
    dot.scaleLow = low;
    dot.scaleHigh = high;
    dot.uncertain = trait->count < 2;
    if (m_model.beyondDoubt(index.row(), index.column()) != 0) {
        dot.colour = theme.russet;
    }
    drawIntervalDot(painter, QRectF(area).adjusted(kPad, 0, -kPad, 0), dot, theme);
}

void CompareDelegate::drawPhoto(QPainter& painter, const QRect& area, int column) const {
    const auto& photos = m_model.column(column).life.photos;
    if (photos.empty()) {
        return;
    }
    const std::string& hash = photos.back().sha256;
    auto found = m_photos.find(hash);
    if (found == m_photos.end()) {
        const std::string bytes = m_photoBytes(hash);
        QPixmap picture;
        picture.loadFromData(reinterpret_cast<const uchar*>(bytes.data()),
                             static_cast<uint>(bytes.size()));
        found = m_photos.emplace(hash, picture).first;
    }
    if (found->second.isNull()) {
        return;
    }
    const QSize room = area.adjusted(kPad, kPad, -kPad, -kPad).size();
    const QSize size = found->second.size().scaled(room, Qt::KeepAspectRatio);
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    painter.drawPixmap(QRect(area.topLeft() + QPoint(kPad, kPad), size), found->second);
}

QSize CompareDelegate::sizeHint(const QStyleOptionViewItem& option,
                                const QModelIndex& index) const {
    const QFontMetrics metrics(option.font);
    const int lines = 1 + static_cast<int>(index.data().toString().count(QLatin1Char('\n')));
    const int textHeight = lines * metrics.lineSpacing() + 2 * kPad;
    switch (m_model.lineAt(index.row()).aspect) {
    case CompareAspect::photos:
        return {0, kPhotoHeight};
    case CompareAspect::window:
        return {0, kWindowHeight + metrics.lineSpacing() + kPad};
    case CompareAspect::allLiking:
        return {0, kScoresHeight + kPad};
    case CompareAspect::fairLiking:
    case CompareAspect::trait:
        return {0, textHeight + kScaleHeight};
    default:
        return {0, textHeight};
    }
}

void CompareDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                            const QModelIndex& index) const {
    QStyleOptionViewItem styled(option);
    initStyleOption(&styled, index);
    const QString words = styled.text;
    styled.text.clear();
    QApplication::style()->drawControl(QStyle::CE_ItemViewItem, &styled, painter, styled.widget);
    painter->save();
    painter->setClipRect(option.rect);
    QRect textArea = option.rect.adjusted(kPad, kPad, -kPad, -kPad / 2);
    const CompareAspect aspect = m_model.lineAt(index.row()).aspect;
    QString shown = words;
    switch (aspect) {
    case CompareAspect::photos:
        drawPhoto(*painter, option.rect, index.column());
        shown = words == QStringLiteral("–") ? words : QString();
        break;
    case CompareAspect::window:
        drawWindow(*painter,
                   QRect(option.rect.left(), option.rect.bottom() - kWindowHeight,
                         option.rect.width(), kWindowHeight),
                   index.column(), option.widget);
        shown = words.section(QLatin1Char('\n'), 0, 0);
        break;
    case CompareAspect::allLiking:
        drawScores(*painter, option.rect, index.column(), option.widget);
        shown = m_model.column(index.column()).scores.empty() ? words : QString();
        break;
    case CompareAspect::fairLiking:
    case CompareAspect::trait:
        drawScale(*painter,
                  QRect(option.rect.left(), option.rect.bottom() - kScaleHeight,
                        option.rect.width(), kScaleHeight),
                  index, option.widget);
        break;
    default:
        break;
    }
    painter->setFont(option.font);
    painter->setPen(option.palette.color(QPalette::Text));
    painter->drawText(textArea, Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, shown);
    painter->restore();
}

} // namespace pipwright::ui
