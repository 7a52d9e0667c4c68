#include "ui/compare/compare_cells.h"

#include "core/evaluation/usual_ripening.h"
#include "core/season/iso_week.h"
#include "ui/compare/compare_marks.h"
#include "ui/compare/compare_words.h"
#include "ui/compare/scales.h"
#include "ui/compare/score_stack.h"
#include "ui/widgets/icons.h"
#include "ui/widgets/score_mark.h"

#include <QApplication>
#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPainter>
#include <QStyle>

#include <algorithm>
#include <cmath>

namespace pipwright::ui {

namespace {

constexpr double kAcross = 10; ///< air at the left and right of a cell
constexpr double kDown = 5;
constexpr int kClose = 20; ///< side of the button that takes a column out
constexpr double kDot = kScoreDot;
constexpr double kYearLine = 4; ///< height of one thin crop year
constexpr int kWrapped = Qt::TextWordWrap | Qt::AlignLeft | Qt::AlignTop;

double textHeight(const QFont& font, const QString& words, double width) {
    return words.isEmpty()
               ? 0
               : std::ceil(QFontMetricsF(font)
                               .boundingRect(QRectF(0, 0, width, 10000), kWrapped, words)
                               .height());
}

} // namespace

CompareCells::CompareCells(const CompareModel& model, QObject* parent)
    : QStyledItemDelegate(parent), m_model(model) {}

double CompareCells::wordsHeight(const QModelIndex& index, double width) const {
    const CompareRow& row = m_model.row(index.row());
    const Theme& theme = currentTheme();
    const QString& words = m_model.cell(index.row(), index.column()).words;
    switch (row.kind) {
    case CompareKind::section:
        return QFontMetricsF(theme.strongFont()).height() + 2 * kDown;
    case CompareKind::photos:
        return 0;
    case CompareKind::head:
        return std::max<double>(
            kClose,
            textHeight(theme.bodyFont(), words.section(QLatin1Char('\n'), 1), width - kClose));
    default:
        return textHeight(theme.bodyFont(), words, width);
    }
}

double CompareCells::drawingHeight(const QModelIndex& index) const {
    const CompareRow& row = m_model.row(index.row());
    switch (row.kind) {
    case CompareKind::photos:
        return kPhotoSide;
    case CompareKind::window:
        return m_model.lastDay() > m_model.firstDay() ? 44 + kYearLine * m_model.mostYears() : 0;
    case CompareKind::liking:
        return 62;
    case CompareKind::keeping:
        return m_model.longestDays() > 0 ? 66 : 0;
    case CompareKind::trait:
        return row.drawn ? 14 : 0;
    default:
        return 0;
    }
}

CompareCells::Parts CompareCells::partsOf(const QModelIndex& index, const QRectF& cell) const {
    const CompareCell& shown = m_model.cell(index.row(), index.column());
    const auto row = static_cast<std::size_t>(index.row());
    const QRectF room = cell.adjusted(kAcross, kDown, -kAcross, -kDown);
    const double words = row < m_wordsHeight.size() ? m_wordsHeight[row] : 0;
    const double drawing = drawingHeight(index);
    Parts parts;
    parts.words = QRectF(room.left(), room.top(), room.width(), words);
    parts.drawing = QRectF(room.left(), parts.words.bottom() + (drawing > 0 && words > 0 ? 3 : 0),
                           room.width(), drawing);
    parts.difference = QRectF(
        room.left(), parts.drawing.bottom() + (shown.difference.isEmpty() ? 0 : 2), room.width(),
        textHeight(currentTheme().strongFont(), shown.difference, room.width()));
    return parts;
}

int CompareCells::measureRow(int row, int width) {
    m_wordsHeight.resize(static_cast<std::size_t>(m_model.rowCount()));
    double& words = m_wordsHeight[static_cast<std::size_t>(row)];
    words = 0;
    for (int column = 0; column < m_model.columnCount(); ++column) {
        words = std::max(words, wordsHeight(m_model.index(row, column), width - 2 * kAcross));
    }
    double bottom = 0;
    for (int column = 0; column < m_model.columnCount(); ++column) {
        const Parts parts = partsOf(m_model.index(row, column), QRectF(0, 0, width, 0));
        bottom = std::max(bottom, parts.difference.bottom());
    }
    return static_cast<int>(std::ceil(bottom + kDown));
}

QRect CompareCells::closeArea(const QRect& cell) {
    return {cell.right() - kClose - 2, cell.top() + 4, kClose, kClose};
}

QSize CompareCells::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const Parts parts = partsOf(index, QRectF(0, 0, option.rect.width(), 0));
    return {option.rect.width(), static_cast<int>(std::ceil(parts.difference.bottom() + kDown))};
}

void CompareCells::paint(QPainter* painter, const QStyleOptionViewItem& option,
                         const QModelIndex& index) const {
    const Theme& theme = themeOf(option.widget);
    const CompareRow& row = m_model.row(index.row());
    const QRectF cell = option.rect;
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    painter->setClipRect(cell);
    if (row.kind == CompareKind::section) {
        painter->fillRect(cell, theme.raised);
        painter->setFont(theme.strongFont());
        painter->setPen(theme.ink);
        painter->drawText(cell.adjusted(kAcross, kDown, 0, 0), Qt::AlignVCenter | Qt::AlignLeft,
                          row.title);
        painter->restore();
        return;
    }
    const bool selected = option.state.testFlag(QStyle::State_Selected);
    painter->fillRect(cell, selected ? theme.wash : theme.surface);
    const Parts parts = partsOf(index, cell);
    const CompareCell& shown = m_model.cell(index.row(), index.column());
    painter->setPen(theme.ink);
    painter->setFont(theme.bodyFont());
    if (row.kind == CompareKind::head) {
        drawHead(*painter, option.rect, parts.words, shown.words);
    } else if (row.kind != CompareKind::photos) {
        painter->drawText(parts.words, kWrapped, shown.words);
    }
    if (row.kind == CompareKind::photos) {
        drawPhotos(*painter, parts.drawing, index.column());
    } else if (row.kind == CompareKind::window) {
        drawWindow(*painter, parts.drawing, index.column(), theme);
    } else if (row.kind == CompareKind::liking) {
        drawLiking(*painter, parts.drawing, index.column(), theme);
    } else if (row.kind == CompareKind::keeping && m_model.longestDays() > 0) {
        drawKeeping(*painter, parts.drawing, index.column(), theme);
    } else if (row.kind == CompareKind::trait && row.drawn) {
        drawTrait(*painter, parts.drawing, index, theme);
    }
    painter->setFont(theme.strongFont());
    painter->setPen(theme.ink);
    painter->drawText(parts.difference, kWrapped, shown.difference);
    painter->setRenderHint(QPainter::Antialiasing, false);
    painter->setPen(theme.line);
    painter->drawLine(option.rect.bottomLeft(), option.rect.bottomRight());
    painter->drawLine(option.rect.topRight(), option.rect.bottomRight());
    if (option.state.testFlag(QStyle::State_HasFocus)) {
        painter->setPen(QPen(theme.sky, 2));
        painter->drawRect(option.rect.adjusted(1, 1, -2, -2));
    }
    painter->restore();
}

void CompareCells::drawHead(QPainter& painter, const QRect& cell, const QRectF& area,
                            const QString& words) {
    // The name stands in the heading, which stays in sight.
    painter.drawText(area.adjusted(0, 0, -kClose, 0), kWrapped,
                     words.section(QLatin1Char('\n'), 1));
    icon(IconName::close).paint(&painter, closeArea(cell).adjusted(2, 2, -2, -2));
}

void CompareCells::drawPhotos(QPainter& painter, const QRectF& area, int column) const {
    double left = area.left();
    for (const QImage& photo : m_model.photos(column)) {
        const QSizeF size = QSizeF(photo.size()).scaled(area.size(), Qt::KeepAspectRatio);
        if (photo.isNull() || left + size.width() > area.right() + 1) {
            continue;
        }
        painter.setRenderHint(QPainter::SmoothPixmapTransform);
        painter.drawImage(QRectF(QPointF(left, area.top()), size), photo);
        left += size.width() + 4;
    }
}

void CompareCells::drawWeeks(QPainter& painter, const QRectF& area, const Theme& theme) const {
    const double days = m_model.lastDay() - m_model.firstDay();
    const double perDay = area.width() / days;
    painter.setFont(theme.smallFont());
    const QFontMetricsF metrics(theme.smallFont());
    const double base = area.bottom() - metrics.height() - 5;
    painter.setPen(QPen(theme.secondInk, 1));
    painter.drawLine(QPointF(area.left(), base), QPointF(area.right(), base));
    double free = area.left();
    for (int day = m_model.firstDay(); day <= m_model.lastDay(); ++day) {
        const Date date = dateInCalendar(day, m_model.calendarYear());
        const double x = area.left() + (day - m_model.firstDay()) * perDay;
        if (firstDay(isoWeekOf(date)) != date) {
            continue;
        }
        const QString week = QString::number(isoWeekOf(date).week);
        const double half = metrics.horizontalAdvance(week) / 2;
        const double middle = x + perDay * kDaysOfAWeek / 2;
        painter.setPen(QPen(theme.secondInk, 1));
        painter.drawLine(QPointF(x, base), QPointF(x, base + 3));
        if (middle - half >= free && middle + half <= area.right()) {
            painter.drawText(QPointF(middle - half, area.bottom() - metrics.descent()), week);
            free = middle + half + 6;
        }
    }
}

void CompareCells::drawWindow(QPainter& painter, const QRectF& area, int column,
                              const Theme& theme) const {
    const ComparedSeason& season = m_model.compared(column).season;
    if (m_model.lastDay() <= m_model.firstDay() || !season.usualFirst) {
        return;
    }
    drawWeeks(painter, area, theme);
    const double perDay = area.width() / (m_model.lastDay() - m_model.firstDay());
    const auto place = [&](int day) {
        return std::clamp(area.left() + (day - m_model.firstDay()) * perDay, area.left(),
                          area.right());
    };
    double y = area.top() + 3;
    for (const ComparedWindow& window : season.windows) {
        if (window.firstRipe) {
            const int last = window.over.value_or(window.lastRipe.value_or(*window.firstRipe) + 1);
            drawYear(painter, place(*window.firstRipe), place(last), y, window.over.has_value(),
                     theme);
        }
        y += kYearLine;
    }
    const double left = place(*season.usualFirst);
    const double right = place(season.usualLast.value_or(*season.usualFirst) + 1);
    drawUsual(painter, QRectF(left, y + 2, right - left, 8), theme);
}

void CompareCells::drawLiking(QPainter& painter, const QRectF& area, int column,
                              const Theme& theme) const {
    const ComparedGenotype& shown = m_model.compared(column);
    const QRectF room = area.adjusted(6, 0, -6, 0);
    const auto place = [&room](double liking) {
        return room.left() +
               (liking - kLowestLiking) / (kHighestLiking - kLowestLiking) * room.width();
    };
    painter.setFont(theme.smallFont());
    const QFontMetricsF metrics(theme.smallFont());
    const double base = area.bottom() - metrics.height() - 4;
    for (int mark = 1; mark <= 9; ++mark) {
        painter.setPen(QPen(theme.line, 1));
        painter.drawLine(QPointF(place(mark), area.top()), QPointF(place(mark), base));
        if (mark % 2 == 1) {
            const QString word = QString::number(mark);
            painter.setPen(theme.secondInk);
            painter.drawText(QPointF(place(mark) - metrics.horizontalAdvance(word) / 2,
                                     area.bottom() - metrics.descent()),
                             word);
        }
    }
    painter.setPen(QPen(theme.secondInk, 1));
    painter.drawLine(QPointF(room.left(), base), QPointF(room.right(), base));
    // Equal scores stand on one another, closer the more there are.
    const ScoreStack stack(shown.scores);
    const double step = std::min(2 * kDot + 1, (base - area.top() - 2 * kDot) / stack.highest);
    for (std::size_t i = 0; i < shown.scores.size(); ++i) {
        const ComparedScore& score = shown.scores[i];
        drawScore(painter, {place(score.liking), base - kDot - 1 - stack.levels[i] * step},
                  score.sight, score.fair, theme);
    }
    if (shown.fairLiking) {
        const ComparedTrait& mean = *shown.fairLiking;
        const double error = mean.standardError.value_or(0);
        drawMean(painter, place(std::max(kLowestLiking, mean.mean - error)), place(mean.mean),
                 place(std::min(kHighestLiking, mean.mean + error)), base, theme);
    }
}

void CompareCells::drawKeeping(QPainter& painter, const QRectF& area, int column,
                               const Theme& theme) const {
    painter.setFont(theme.smallFont());
    const QFontMetricsF metrics(theme.smallFont());
    const double base = area.bottom() - metrics.height() - 4;
    const double names = metrics.horizontalAdvance(QLatin1Char('9')) + 6;
    const QRectF room(QPointF(area.left() + names, area.top() + 4),
                      QPointF(area.right() - kDot - 1, base - 4));
    const double longest = m_model.longestDays();
    const auto across = [&](double days) { return room.left() + days / longest * room.width(); };
    const auto up = [&room](double liking) {
        return room.bottom() -
               (liking - kLowestLiking) / (kHighestLiking - kLowestLiking) * room.height();
    };
    for (const double mark : {kLowestLiking, 5.0, kHighestLiking}) {
        painter.setPen(QPen(theme.line, 1));
        painter.drawLine(QPointF(room.left(), up(mark)), QPointF(area.right(), up(mark)));
        painter.setPen(theme.secondInk);
        painter.drawText(QPointF(area.left(), up(mark) + metrics.capHeight() / 2),
                         QString::number(mark));
    }
    painter.setPen(QPen(theme.secondInk, 1));
    painter.drawLine(QPointF(room.left() - 3, base), QPointF(area.right(), base));
    const QString end = QCoreApplication::translate("pipwright::ui::CompareCells", "%1 d", "days")
                            .arg(m_model.longestDays());
    const double foot = area.bottom() - metrics.descent();
    painter.drawText(QPointF(room.left() - 2, foot), QStringLiteral("0"));
    painter.drawText(QPointF(area.right() - metrics.horizontalAdvance(end), foot), end);
    for (const ComparedScore& score : m_model.compared(column).scores) {
        if (score.daysOff && *score.daysOff <= m_model.longestDays()) {
            drawScore(painter, {across(*score.daysOff), up(score.liking)}, score.sight, score.fair,
                      theme);
        }
    }
}

void CompareCells::drawTrait(QPainter& painter, const QRectF& area, const QModelIndex& index,
                             const Theme& theme) const {
    const CompareRow& row = m_model.row(index.row());
    const ComparedTrait* one = traitOf(m_model.compared(index.column()), row.trait);
    if (one == nullptr) {
        return;
    }
    IntervalDot dot;
    dot.value = one->mean;
    dot.scaleLow = row.low;
    dot.scaleHigh = row.high;
    dot.uncertain = !one->standardError;
    if (one->count > 1) {
        dot.low = one->lowest;
        dot.high = one->highest;
    }
    drawIntervalDot(painter, area, dot, theme);
}

} // namespace pipwright::ui
