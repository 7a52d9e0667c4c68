#include "ui/rows/map_painter.h"

#include "ui/rows/map_pixels.h"
#include "ui/rows/map_words.h"
#include "ui/widgets/palettes.h"

#include <QFontMetrics>
#include <QLocale>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace pipwright::ui {

namespace {

/// Tones of a ramp that are told apart; more could not be seen.
constexpr int kTones = 64;
/// Texts kept ready at most.
constexpr qsizetype kMostTexts = 20000;

/// `part` of 256 of `over` on the rest of `under`.
QRgb share(QRgb over, QRgb under, int part) {
    const auto mix = [part](int above, int below) {
        return (above * part + below * (256 - part) + 128) / 256;
    };
    return qRgb(mix(qRed(over), qRed(under)), mix(qGreen(over), qGreen(under)),
                mix(qBlue(over), qBlue(under)));
}

} // namespace

MapDetail MapFrame::detail() const {
    // A split place needs twice the height; the limits are those of an unsplit one.
    if (std::min(scale.cellWidth, scale.rowPitch) < 6) {
        return MapDetail::overview;
    }
    return scale.cellWidth < 28 ? MapDetail::cells : MapDetail::codes;
}

MapPainter::MapPainter() {
    setTheme(lightTheme(), 1);
}

void MapPainter::setLayout(const MapLayout& layout) {
    m_layout = layout;
    m_selection = {};
    m_selected.assign(layout.scene().cells().size(), false);
    m_shown.clear();
    m_texts.clear();
    measureMargins();
    if (m_colouring.entryOf.size() != layout.scene().cells().size()) {
        m_colouring = colourByStage(layout.scene());
    }
    setColouring(std::move(m_colouring));
}

void MapPainter::setColouring(CellColouring colouring) {
    m_colouring = std::move(colouring);
    std::vector<QString> letters;
    for (const LegendEntry& entry : m_colouring.legend) {
        letters.push_back(entry.letter);
    }
    m_stamps.prepare(Theme(m_stamps.theme()), m_ratio, std::move(letters));
    tint();
}

void MapPainter::setShown(CellSet shown) {
    m_shown = std::move(shown);
    tint();
}

void MapPainter::setSelection(MapSelection selection) {
    std::vector<bool> selected(m_layout.scene().cells().size(), false);
    selection.forEach([&selected](CellIndex cell) { selected[cell] = true; });
    std::vector<CellIndex> changed;
    const auto note = [&](CellIndex cell) {
        if (selected[cell] != m_selected[cell]) {
            changed.push_back(cell);
        }
    };
    m_selection.forEach(note);
    selection.forEach(note);
    m_selection = std::move(selection);
    m_selected = std::move(selected);
    if (!m_overviewIsStale) {
        m_overview.patch(m_layout, changed, [this](CellIndex c) { return overviewColour(c); });
    }
}

void MapPainter::setTheme(const Theme& theme, double devicePixelRatio) {
    m_ratio = devicePixelRatio;
    m_stamps.prepare(theme, devicePixelRatio, {});
    m_texts.clear();
    measureMargins();
    setColouring(std::move(m_colouring));
}

void MapPainter::tint() {
    const auto cells = m_layout.scene().cells();
    // Contrasts are dear to compute: once a colour, not once a cell.
    std::vector<std::optional<MarkColour>> fills;
    for (std::size_t entry = 0; entry < m_colouring.legend.size(); ++entry) {
        const auto fill = m_colouring.entryFill(entry, theme());
        fills.push_back(fill ? std::optional(markColour(*fill, theme())) : std::nullopt);
    }
    std::vector<MarkColour> tones;
    for (int tone = 0; tone < kTones && !m_colouring.toneOf.empty(); ++tone) {
        const double place = static_cast<double>(tone) / (kTones - 1);
        tones.push_back(m_colouring.scale == ColourScale::twoEnded
                            ? balanceColour(2 * place - 1, theme())
                            : rampColour(place, theme()));
    }
    m_tints.assign(cells.size(), Tint{});
    for (CellIndex cell = 0; cell < cells.size(); ++cell) {
        Tint& tint = m_tints[cell];
        tint.dimmed = !isShown(cell);
        const auto entry = m_colouring.entry(cell);
        if (!entry || *entry >= fills.size() || !fills[*entry]) {
            continue;
        }
        tint.filled = true;
        const MarkColour* colour = &*fills[*entry];
        if (cell < m_colouring.toneOf.size() && !tones.empty()) {
            const float tone = std::clamp(m_colouring.toneOf[cell], 0.0F, 1.0F);
            colour = &tones[static_cast<std::size_t>(std::lround(tone * (kTones - 1)))];
        }
        tint.fill = colour->fill.rgb();
        tint.text = colour->text.rgb();
        if (cell < m_colouring.fullnessOf.size()) {
            const float full = std::clamp(m_colouring.fullnessOf[cell], 0.0F, 1.0F);
            tint.fullness = static_cast<std::uint8_t>(std::lround(full * 8));
        }
    }
    m_overviewIsStale = true;
}

QRgb MapPainter::overviewColour(CellIndex cell) const {
    const MapCell& facts = m_layout.scene().cells()[cell];
    const Tint& tint = m_tints[cell];
    const QRgb paper = theme().paper.rgb();
    if (facts.isGap()) {
        return paper;
    }
    QRgb colour = tint.fill;
    const bool isGone = facts.state != PlantState::growing && facts.state != PlantState::unknown;
    if (!tint.filled) {
        const bool faint = isGone || facts.stage == Stage::culled;
        colour = share(theme().secondInk.rgb(), paper, faint ? 36 : 77);
    } else if (isGone) {
        colour = share(colour, paper, 90);
    } else if (tint.fullness < 8) {
        colour = share(colour, paper, 51 + 26 * tint.fullness);
    }
    if (tint.dimmed) {
        colour = share(colour, paper, 56);
    }
    return m_selected[cell] ? share(theme().sky.rgb(), colour, 205) : colour;
}

CellLook MapPainter::lookOf(CellIndex cell, int width, int height, bool withText) const {
    const MapCell& facts = m_layout.scene().cells()[cell];
    const Tint& tint = m_tints[cell];
    CellLook look;
    look.width = width;
    look.height = height;
    look.selected = m_selected[cell];
    look.dimmed = tint.dimmed;
    look.gap = facts.isGap();
    if (look.gap) {
        return look;
    }
    if (tint.filled) {
        look.fill = tint.fill;
        look.text = tint.text;
    }
    look.fullness = tint.fullness;
    look.stage = facts.stage;
    look.state = facts.state;
    look.unsure = facts.identity != Confidence::sure;
    look.byStage = m_colouring.scale == ColourScale::stages;
    look.withText = withText;
    look.marks = facts.marks;
    const std::uint16_t entry =
        cell < m_colouring.entryOf.size() ? m_colouring.entryOf[cell] : CellLook::kNoLetter;
    look.letter = look.byStage ? CellLook::kNoLetter : entry;
    return look;
}

void MapPainter::paint(QPainter& painter, const MapFrame& frame, const QRect& clip,
                       std::optional<CellIndex> cursor) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.setRenderHint(QPainter::SmoothPixmapTransform, false);
    painter.scale(1 / frame.ratio, 1 / frame.ratio);
    // A widget may begin between two pixels of the screen; the drawing may not.
    const QTransform device = painter.deviceTransform();
    painter.translate(std::round(device.dx()) - device.dx(), std::round(device.dy()) - device.dy());

    const MapPixels pixels(frame, clip);
    const MapDetail detail = frame.detail();
    if (detail == MapDetail::overview) {
        paintOverview(painter, pixels, frame);
    } else {
        painter.fillRect(pixels.clip, theme().paper);
        paintCells(painter, pixels, frame, detail);
    }
    if (frame.rowNames > 0) {
        std::optional<std::uint32_t> row;
        if (cursor) {
            row = m_layout.scene().rowOf(*cursor);
        }
        paintRowNames(painter, pixels, frame, row);
    }
    paintHeadings(painter, pixels, frame);
    if (frame.ruler > 0) {
        paintRuler(painter, pixels, frame, cursor);
    }
    painter.restore();
}

void MapPainter::paintOverview(QPainter& painter, const MapPixels& pixels, const MapFrame& frame) {
    if (m_overviewIsStale) {
        m_overview.rebuild(m_layout, theme().paper.rgb(),
                           [this](CellIndex cell) { return overviewColour(cell); });
        m_overviewIsStale = false;
    }
    const QSize size = (QSizeF(frame.size) * frame.ratio).toSize();
    const QImage& picture = m_overview.enlarged(m_layout, frame.scale, pixels,
                                                size.expandedTo(QSize(1, 1)), theme().paper.rgb());
    painter.drawImage(pixels.clip.topLeft(), picture, pixels.clip);
}

void MapPainter::paintCells(QPainter& painter, const MapPixels& pixels, const MapFrame& frame,
                            MapDetail detail) {
    // Two and a half screens of cells: what is seen, and what was seen a moment ago.
    m_stamps.setRoom(static_cast<qsizetype>(10 * frame.ratio * frame.ratio * frame.size.width() *
                                            frame.size.height()));
    const QRectF area = pixels.content();
    const auto [first, end] = m_layout.rowsBetween(area.top(), area.bottom(), frame.scale);
    for (std::uint32_t row = first; row < end; ++row) {
        paintRow(painter, pixels, frame, row, detail == MapDetail::codes);
    }
}

void MapPainter::paintRow(QPainter& painter, const MapPixels& pixels, const MapFrame& frame,
                          std::uint32_t row, bool withText) {
    const QRectF area = pixels.content();
    const MapScale& scale = frame.scale;
    const int hair = m_stamps.hair();
    const int gap = scale.cellWidth < 10 ? 1 : (scale.cellWidth < 24 ? hair : 2 * hair);
    const double rowTop = m_layout.rowTop(row, scale);
    const int top = pixels.y(rowTop);
    const int bottom = pixels.y(rowTop + scale.rowPitch);
    const int alley = std::clamp((bottom - top) / 6, gap, 5 * hair);
    const auto [first, end] =
        m_layout.cellsBetween(row, area.left() / scale.cellWidth, area.right() / scale.cellWidth);
    for (CellIndex cell = first; cell < end; ++cell) {
        const MapLayout::Slot& slot = m_layout.slot(cell);
        const double left = static_cast<double>(slot.left);
        const int x = pixels.x(left * scale.cellWidth);
        const int right =
            pixels.x((left + static_cast<double>(slot.width)) * scale.cellWidth) - gap;
        const int whole = bottom - alley - top;
        const int y = top + whole * slot.part / slot.parts;
        const int below =
            top + whole * (slot.part + 1) / slot.parts - (slot.part + 1 < slot.parts ? gap : 0);
        const CellLook look =
            lookOf(cell, std::max(1, right - x), std::max(1, below - y), withText);
        if (look.gap && slot.parts > 1) {
            continue;
        }
        if (!withText || look.gap) {
            painter.drawImage(QPoint(x, y), m_stamps.stamp(look));
            continue;
        }
        // Words are dearer than cells: each cell is written once and kept as a picture.
        painter.drawImage(QPoint(x, y), m_stamps.stamp(look, cell, [&](QPainter& words) {
            paintCode(words, cell, look);
            paintPlace(words, cell, look);
        }));
    }
}

void MapPainter::paintWords(QPainter& painter, const QStaticText& words, const QRect& box,
                            const CellLook& look, double ascent) {
    painter.setPen(m_stamps.codeColour(look));
    const double free = std::max(0.0, (box.width() - words.size().width()) / 2);
    painter.drawStaticText(QPoint(box.x() + static_cast<int>(free),
                                  box.y() + box.height() - static_cast<int>(std::lround(ascent))),
                           words);
}

void MapPainter::paintCode(QPainter& painter, CellIndex cell, const CellLook& look) {
    const QRect box = m_stamps.boxes(look).code;
    if (box.isEmpty()) {
        return;
    }
    const MapScene& scene = m_layout.scene();
    const MapCell& facts = scene.cells()[cell];
    // The whole code where there is room for it, else the short one; both are cut if need be.
    const bool wide = box.width() > 7 * box.height();
    const TextRange range = wide || facts.shortCode.length == 0 ? facts.code : facts.shortCode;
    const std::uint64_t key = (static_cast<std::uint64_t>(range.offset) << 20U) |
                              (static_cast<std::uint64_t>(box.width() & 0xffff) << 4U);
    const QStaticText& words = prepared(key, m_stamps.codeFont(), box.width(), [&] {
        const std::string_view code = scene.text(range);
        return QString::fromUtf8(code.data(), static_cast<qsizetype>(code.size()));
    });
    painter.setFont(m_stamps.codeFont());
    paintWords(painter, words, box, look, m_stamps.codeAscent());
}

void MapPainter::paintPlace(QPainter& painter, CellIndex cell, const CellLook& look) {
    const QRect box = m_stamps.boxes(look).place;
    if (box.isEmpty()) {
        return;
    }
    const std::uint64_t key = (static_cast<std::uint64_t>(cell) << 20U) |
                              (static_cast<std::uint64_t>(box.width() & 0xffff) << 4U) | 1U;
    const QStaticText& words = prepared(key, m_stamps.smallFont(), box.width(), [&] {
        const MapCell& facts = m_layout.scene().cells()[cell];
        if (!facts.tapeMetres) {
            return QString::number(facts.ordinal);
        }
        return QStringLiteral("%1 · %2 m")
            .arg(facts.ordinal)
            .arg(QLocale().toString(static_cast<double>(*facts.tapeMetres), 'f', 1));
    });
    painter.setFont(m_stamps.smallFont());
    paintWords(painter, words, box, look, m_stamps.smallAscent());
}

const QStaticText& MapPainter::prepared(std::uint64_t key, const QFont& font, int width,
                                        const std::function<QString()>& text) {
    const auto known = m_texts.constFind(key);
    if (known != m_texts.constEnd()) {
        return *known;
    }
    if (m_texts.size() > kMostTexts) {
        m_texts.clear();
    }
    QStaticText ready(QFontMetrics(font).elidedText(text(), Qt::ElideMiddle, width));
    ready.setTextFormat(Qt::PlainText);
    ready.setPerformanceHint(QStaticText::AggressiveCaching);
    ready.prepare({}, font);
    return *m_texts.insert(key, ready);
}

} // namespace pipwright::ui
