// The fixed parts around the cells: headings of the sites, names of the rows, the ruler.
#include "ui/rows/map_painter.h"
#include "ui/rows/map_pixels.h"

#include <QCoreApplication>
#include <QFontMetrics>
#include <QLocale>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace pipwright::ui {

namespace {

struct MapMargins {
    Q_DECLARE_TR_FUNCTIONS(pipwright::ui::MapMargins)
};

/// Logical pixels.
constexpr double kLeastRowNames = 34;
constexpr double kMostRowNames = 110;

int wholePixel(double value) {
    return static_cast<int>(std::lround(value));
}

/// The smallest of 1, 2, 5, 10, 20 ... that is at least `least`.
double roundedUp(double least) {
    double step = 1;
    for (int turn = 0; step < least; ++turn) {
        step *= turn % 3 == 1 ? 2.5 : 2;
    }
    return step;
}

} // namespace

void MapPainter::measureMargins() {
    const QFontMetricsF metrics(m_stamps.codeFont());
    double widest = 0;
    for (const MapRow& row : m_layout.scene().rows()) {
        widest = std::max(widest, metrics.horizontalAdvance(QString::fromStdString(row.name)));
    }
    m_rowNamesWidth = std::ceil(std::clamp(widest / m_ratio + 20, kLeastRowNames, kMostRowNames));
    m_rulerHeight = std::ceil(QFontMetricsF(m_stamps.smallFont()).height() / m_ratio) + 6;
}

void MapPainter::paintHeadings(QPainter& painter, const MapPixels& pixels, const MapFrame& frame) {
    const auto sites = m_layout.scene().sites();
    QFont strong = m_stamps.codeFont();
    strong.setWeight(QFont::DemiBold);
    const QFontMetrics strongMetrics(strong);
    for (std::uint32_t site = 0; site < sites.size(); ++site) {
        const double top = m_layout.headingTop(site, frame.scale);
        const QRect band(0, pixels.y(top), wholePixel(frame.size.width() * pixels.ratio),
                         pixels.y(top + frame.scale.heading) - pixels.y(top));
        if (!band.intersects(pixels.clip)) {
            continue;
        }
        // Headings stay at the left however far the rows are moved.
        const int margin = wholePixel(12 * pixels.ratio);
        const QRect words = band.adjusted(margin, 0, -margin, -wholePixel(5 * pixels.ratio));
        const QString name = strongMetrics.elidedText(QString::fromStdString(sites[site].name),
                                                      Qt::ElideRight, words.width());
        painter.setFont(strong);
        painter.setPen(theme().ink);
        painter.drawText(words, Qt::AlignLeft | Qt::AlignBottom, name);
        const int after = strongMetrics.horizontalAdvance(name) + wholePixel(10 * pixels.ratio);
        painter.setFont(m_stamps.smallFont());
        painter.setPen(theme().secondInk);
        painter.drawText(
            words.adjusted(after, 0, 0, 0), Qt::AlignLeft | Qt::AlignBottom,
            sites[site].rowCount == 1
                ? MapMargins::tr("1 row")
                : MapMargins::tr("%n rows", nullptr, static_cast<int>(sites[site].rowCount)));
    }
}

void MapPainter::paintRowNames(QPainter& painter, const MapPixels& pixels, const MapFrame& frame,
                               std::optional<std::uint32_t> current) {
    painter.fillRect(0, pixels.clip.top(), pixels.left - wholePixel(2 * pixels.ratio),
                     pixels.clip.height(), theme().paper);
    const auto rows = m_layout.scene().rows();
    const QFontMetrics metrics(m_stamps.codeFont());
    const int least = wholePixel(metrics.ascent() * 1.15);
    const QRectF area = pixels.content();
    auto [first, end] = m_layout.rowsBetween(area.top(), area.bottom(), frame.scale);
    // Which names are left out must not depend on the part that is repainted.
    const int every =
        std::max(1, static_cast<int>(std::ceil(least / (frame.scale.rowPitch * pixels.ratio))));
    first =
        first > static_cast<std::uint32_t>(every) ? first - static_cast<std::uint32_t>(every) : 0;
    for (std::uint32_t row = first; row < end; ++row) {
        const int top = pixels.y(m_layout.rowTop(row, frame.scale));
        const int bottom = pixels.y(m_layout.rowTop(row, frame.scale) + frame.scale.rowPitch);
        const std::uint32_t within = row - m_layout.scene().sites()[rows[row].site].firstRow;
        const bool isCurrent = current == row;
        const bool isNear = current && !isCurrent &&
                            std::abs(static_cast<int>(row) - static_cast<int>(*current)) < every;
        if ((within % static_cast<std::uint32_t>(roundedUp(every)) != 0 || isNear) && !isCurrent) {
            continue;
        }
        const int tall = std::max(bottom - top, least);
        const QRect box(0, (top + bottom - tall) / 2, pixels.left, tall);
        QFont font = m_stamps.codeFont();
        font.setWeight(isCurrent ? QFont::DemiBold : QFont::Normal);
        painter.setFont(font);
        painter.setPen(isCurrent ? theme().ink : theme().secondInk);
        const QRect words =
            box.adjusted(wholePixel(6 * pixels.ratio), 0, -wholePixel(8 * pixels.ratio), 0);
        painter.drawText(words, Qt::AlignRight | Qt::AlignVCenter,
                         metrics.elidedText(QString::fromStdString(rows[row].name), Qt::ElideMiddle,
                                            words.width()));
    }
}

void MapPainter::paintRuler(QPainter& painter, const MapPixels& pixels, const MapFrame& frame,
                            std::optional<CellIndex> cursor) {
    const QRect band(0, 0, wholePixel(frame.size.width() * pixels.ratio), pixels.top);
    if (!band.intersects(pixels.clip)) {
        return;
    }
    painter.fillRect(band, theme().paper);
    const int hair = m_stamps.hair();
    painter.fillRect(band.x(), band.bottom() + 1 - hair, band.width(), hair, theme().line);
    const QFontMetrics metrics(m_stamps.smallFont());
    painter.setFont(m_stamps.smallFont());
    const bool byTape = m_layout.metresPerPlace() > 0;
    // Places are counted from one; metres from the zero stake.
    const double perUnit =
        byTape ? frame.scale.cellWidth / m_layout.metresPerPlace() : frame.scale.cellWidth;
    const double step =
        roundedUp(metrics.horizontalAdvance(QStringLiteral("00000")) / (perUnit * pixels.ratio));
    const double last =
        byTape ? m_layout.columns() * m_layout.metresPerPlace() : m_layout.columns();
    for (double unit = byTape ? 0 : step; unit <= last; unit += step) {
        const int middle = pixels.x((byTape ? unit : unit - 0.5) * perUnit);
        if (middle < pixels.left + 2 * hair || middle > band.right()) {
            continue;
        }
        const QString text = byTape ? MapMargins::tr("%1 m").arg(unit) : QString::number(unit);
        const int half = metrics.horizontalAdvance(text) / 2;
        painter.setPen(theme().secondInk);
        painter.drawText(
            QRect(middle - half - hair, 0, 2 * half + 2 * hair, band.height() - 4 * hair),
            Qt::AlignCenter | Qt::TextDontClip, text);
        painter.fillRect(middle, band.bottom() + 1 - 4 * hair, hair, 3 * hair, theme().secondInk);
    }
    if (cursor && *cursor < m_layout.scene().cells().size()) {
        const MapLayout::Slot& slot = m_layout.slot(*cursor);
        const int from = pixels.x(static_cast<double>(slot.left) * frame.scale.cellWidth);
        const int to =
            pixels.x(static_cast<double>(slot.left + slot.width) * frame.scale.cellWidth);
        if (to > pixels.left) {
            painter.fillRect(std::max(from, pixels.left), band.bottom() + 1 - 2 * hair,
                             std::max(2 * hair, to - std::max(from, pixels.left)), 2 * hair,
                             theme().sky);
        }
    }
    painter.fillRect(0, 0, pixels.left, pixels.top - hair, theme().paper);
}

} // namespace pipwright::ui
