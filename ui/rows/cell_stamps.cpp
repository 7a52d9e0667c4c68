#include "ui/rows/cell_stamps.h"

#include "ui/widgets/palettes.h"

#include <QFontMetrics>
#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace pipwright::ui {

namespace {

bool isYoung(Stage stage) {
    return stage == Stage::planned || stage == Stage::seed || stage == Stage::nursery ||
           stage == Stage::juvenile;
}

bool isGone(PlantState state) {
    return state == PlantState::dead || state == PlantState::lost || state == PlantState::removed;
}

/// Is anything drawn in the middle, beside fill and outline?
bool hasShape(const CellLook& look) {
    switch (look.stage) {
    case Stage::watched:
    case Stage::advanced:
    case Stage::named:
    case Stage::released:
    case Stage::parent:
        return true;
    case Stage::selection:
        return !look.byStage || isGone(look.state);
    default:
        return isGone(look.state) || (isYoung(look.stage) && look.fill && !look.byStage);
    }
}

QFont inPixels(QFont font, double ratio) {
    // 96 logical pixels an inch: the size does not depend on what a screen claims of itself.
    font.setPixelSize(
        std::max(1, static_cast<int>(std::lround(font.pointSizeF() / 72 * 96 * ratio))));
    return font;
}

QPainterPath leafPath(const QRectF& box) {
    QPainterPath leaf;
    leaf.moveTo(box.bottomLeft());
    leaf.quadTo(box.topLeft(), box.topRight());
    leaf.quadTo(box.bottomRight(), box.bottomLeft());
    return leaf;
}

} // namespace

CellStamps::CellStamps() {
    prepare(lightTheme(), 1, {});
}

void CellStamps::prepare(const Theme& theme, double devicePixelRatio,
                         std::vector<QString> letters) {
    m_theme = theme;
    m_ratio = devicePixelRatio;
    m_hair = std::max(1, static_cast<int>(std::lround(devicePixelRatio)));
    m_codeFont = inPixels(theme.bodyFont(), devicePixelRatio);
    m_smallFont = inPixels(theme.smallFont(), devicePixelRatio);
    // Codes are figures and capitals: their height, not the line's, decides what fits.
    m_codeHeight = QFontMetrics(m_codeFont).capHeight();
    m_smallHeight = QFontMetrics(m_smallFont).capHeight();
    m_codeAscent = QFontMetricsF(m_codeFont).ascent();
    m_smallAscent = QFontMetricsF(m_smallFont).ascent();
    m_letters = std::move(letters);
    m_stamps.clear();
    m_bytes = 0;
}

CellStamps::Key CellStamps::keyOf(const CellLook& look) {
    const auto bit = [](bool set, int place) { return static_cast<quint64>(set) << place; };
    Key key;
    key.one = static_cast<quint64>(look.fill.value_or(0) & 0xffffffU) |
              static_cast<quint64>(look.width & 0xffff) << 24U |
              static_cast<quint64>(look.height & 0xffff) << 40U |
              static_cast<quint64>(look.fullness & 0xf) << 56U;
    key.two = static_cast<quint64>(look.letter) | static_cast<quint64>(look.marks) << 16U |
              static_cast<quint64>(look.stage) << 24U | static_cast<quint64>(look.state) << 32U |
              bit(look.fill.has_value(), 40) | bit(look.gap, 41) | bit(look.unsure, 42) |
              bit(look.selected, 43) | bit(look.dimmed, 44) | bit(look.byStage, 45) |
              bit(look.withText, 46);
    return key;
}

const QImage& CellStamps::stamp(const CellLook& look, std::optional<CellIndex> cell,
                                const Writer& write) {
    Key key = keyOf(look);
    key.cell = cell ? quint64{*cell} + 1 : 0;
    const auto known = m_stamps.constFind(key);
    if (known != m_stamps.constEnd()) {
        return *known;
    }
    QImage image = cell ? stamp(look).copy() : draw(look);
    if (write) {
        QPainter painter(&image);
        write(painter);
    }
    if (m_bytes > m_room) {
        m_stamps.clear();
        m_bytes = 0;
    }
    m_bytes += image.sizeInBytes();
    return *m_stamps.insert(key, std::move(image));
}

int CellStamps::pixels(double logical) const {
    return static_cast<int>(std::lround(logical * m_ratio));
}

QString CellStamps::lettersOf(const CellLook& look) const {
    QString letters = look.letter < m_letters.size() ? m_letters[look.letter] : QString();
    return look.unsure ? letters + QLatin1Char('?') : letters;
}

/// With the code: shape, marks and letter in a band above it, place and tape below it.
std::optional<CellBoxes> CellStamps::boxesWithCode(const CellLook& look) const {
    const int pad = pixels(3);
    const int width = look.width;
    const int height = look.height;
    if (!look.withText || height < m_codeHeight + pixels(3) || width < pixels(24)) {
        return std::nullopt;
    }
    CellBoxes boxes;
    const QRect line(pixels(1), 0, width - pixels(2), m_codeHeight);
    if (height < m_codeHeight + pixels(13)) {
        boxes.code = line.translated(0, (height - m_codeHeight) / 2);
        return boxes;
    }
    const bool twoLines =
        height >= m_codeHeight + m_smallHeight + pixels(24) && width >= pixels(56);
    const int band = std::min(height - m_codeHeight - pixels(5), pixels(16));
    const int below = twoLines ? m_smallHeight + pixels(4) : 0;
    // What is left over goes above and below the words in equal parts.
    const int spare = std::max(pixels(4), (height - band - m_codeHeight - below) / 2);
    boxes.code = line.translated(0, height - spare - below - m_codeHeight);
    if (twoLines) {
        boxes.place =
            QRect(pixels(1), height - spare - m_smallHeight, width - pixels(2), m_smallHeight);
    }
    const int side = std::max(band - pad - pixels(1), pixels(5));
    boxes.shape = QRect(pad, pad, side, side);
    boxes.letter = QRect(width / 2, pixels(1), width - width / 2 - pixels(3), band);
    boxes.marks = QRect(pad + (hasShape(look) ? side + pixels(2) : 0), pad, width / 2, side);
    return boxes;
}

CellBoxes CellStamps::boxes(const CellLook& look) const {
    if (const auto withCode = boxesWithCode(look)) {
        return *withCode;
    }
    CellBoxes boxes;
    const int width = look.width;
    const int height = look.height;
    const auto square = [](const QRect& within, int side) {
        return QRect(within.x() + (within.width() - side) / 2,
                     within.y() + (within.height() - side) / 2, side, side);
    };
    const QRect whole(0, 0, width, height);
    const bool letters = !lettersOf(look).isEmpty();
    const bool isTall = height >= pixels(19) && width >= pixels(9);
    const bool isWide = width >= pixels(22) && height >= pixels(9);
    if (hasShape(look) && letters && isTall) {
        boxes.shape =
            square({0, 0, width, height / 2 + pixels(1)}, std::min(width, height / 2) * 2 / 3);
        boxes.letter = QRect(0, height / 2 - pixels(1), width, height - height / 2);
    } else if (hasShape(look) && letters && isWide) {
        boxes.shape = square({0, 0, width / 2, height}, std::min(width / 2, height) * 2 / 3);
        boxes.letter = QRect(width / 2, 0, width - width / 2, height);
    } else if (letters && (look.unsure || !hasShape(look)) && height >= m_smallHeight &&
               width >= pixels(8)) {
        boxes.letter = whole;
    } else {
        boxes.shape = square(whole, std::min(width, height) * 5 / 8);
    }
    return boxes;
}

QColor CellStamps::shaded(const QColor& colour, const CellLook& look) const {
    if (!look.dimmed) {
        return colour;
    }
    QColor faint = colour;
    faint.setAlphaF(0.22F);
    return blended(faint, m_theme.paper);
}

QColor CellStamps::markColourOn(const CellLook& look) const {
    const bool onFill = look.fill && !isYoung(look.stage) && !isGone(look.state) &&
                        look.stage != Stage::culled && look.fullness >= 5;
    return shaded(onFill ? markColour(QColor(*look.fill), m_theme).text : m_theme.ink, look);
}

QColor CellStamps::codeColour(const CellLook& look) const {
    if (look.dimmed) {
        QColor faint = m_theme.secondInk;
        faint.setAlphaF(0.6F);
        return blended(faint, m_theme.paper);
    }
    const bool whole = look.byStage || (!isYoung(look.stage) && !isGone(look.state) &&
                                        look.stage != Stage::culled && look.fullness >= 8);
    return look.fill && whole ? QColor(look.text) : m_theme.ink;
}

QImage CellStamps::draw(const CellLook& look) const {
    QImage image(look.width, look.height, QImage::Format_RGB32);
    image.fill(m_theme.paper);
    QPainter painter(&image);
    if (look.gap) {
        const int dot = std::min({2 * m_hair, look.width, look.height});
        painter.fillRect((look.width - dot) / 2, (look.height - dot) / 2, dot, dot,
                         shaded(m_theme.secondInk, look));
    } else {
        const CellBoxes where = boxes(look);
        drawGround(painter, look);
        if (isGone(look.state)) {
            drawState(painter, look, where.shape);
        } else {
            drawStage(painter, look, where.shape);
        }
        drawMarks(painter, look, where);
        drawLetters(painter, look, where);
    }
    if (look.selected) {
        drawSelected(painter, look);
    }
    return image;
}

void CellStamps::frame(QPainter& painter, const QRect& box, const QColor& colour, int thick) const {
    painter.fillRect(box.x(), box.y(), box.width(), thick, colour);
    painter.fillRect(box.x(), box.y() + box.height() - thick, box.width(), thick, colour);
    painter.fillRect(box.x(), box.y(), thick, box.height(), colour);
    painter.fillRect(box.x() + box.width() - thick, box.y(), thick, box.height(), colour);
}

void CellStamps::dottedFrame(QPainter& painter, const QRect& box, const QColor& colour) const {
    const int dot = m_hair;
    for (int x = box.left(); x + dot <= box.right() + 1; x += 3 * dot) {
        painter.fillRect(x, box.top(), dot, dot, colour);
        painter.fillRect(x, box.bottom() + 1 - dot, dot, dot, colour);
    }
    for (int y = box.top(); y + dot <= box.bottom() + 1; y += 3 * dot) {
        painter.fillRect(box.left(), y, dot, dot, colour);
        painter.fillRect(box.right() + 1 - dot, y, dot, dot, colour);
    }
}

void CellStamps::drawGround(QPainter& painter, const CellLook& look) const {
    const QRect box(0, 0, look.width, look.height);
    const bool partly = isYoung(look.stage) || isGone(look.state) || look.stage == Stage::culled;
    const QColor edge = withContrast(m_theme.secondInk, m_theme.paper, 3.0);
    const bool isFaint = look.stage == Stage::culled || isGone(look.state);
    const QColor outline =
        isFaint ? blended(QColor(edge.red(), edge.green(), edge.blue(), 110), m_theme.paper) : edge;
    if (look.fill && (look.byStage || !partly)) {
        const QColor fill(*look.fill);
        painter.fillRect(box, shaded(m_theme.surface, look));
        const int filled = look.height * look.fullness / 8;
        painter.fillRect(0, look.height - filled, look.width, filled, shaded(fill, look));
        frame(painter, box, shaded(markColour(fill, m_theme).outline, look), m_hair);
        return;
    }
    painter.fillRect(box, shaded(m_theme.surface, look));
    if (look.fill && isYoung(look.stage) && !isGone(look.state)) {
        // What does not bear yet shows its colour as a small square: less of it, the same colour.
        const QRect where = boxes(look).shape;
        painter.fillRect(where, shaded(QColor(*look.fill), look));
    }
    if (look.stage == Stage::culled && !isGone(look.state)) {
        const int step = 5 * m_hair;
        for (int start = -look.height; start < look.width; start += step) {
            painter.setPen(QPen(shaded(outline, look), m_hair));
            painter.drawLine(start, look.height, start + look.height, 0);
        }
    }
    if (isYoung(look.stage) && look.stage != Stage::juvenile) {
        dottedFrame(painter, box, shaded(edge, look));
    } else {
        frame(painter, box, shaded(outline, look), m_hair);
    }
}

void CellStamps::drawStage(QPainter& painter, const CellLook& look, const QRect& box) const {
    const int side = box.width();
    if (side < 3 * m_hair) {
        return;
    }
    const QColor mark = markColourOn(look);
    const double thick = std::max(static_cast<double>(m_hair), side / 7.0);
    const QRectF round = QRectF(box).adjusted(thick / 2, thick / 2, -thick / 2, -thick / 2);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing, side >= 5 * m_hair);
    painter.setPen(QPen(mark, thick));
    switch (look.stage) {
    case Stage::watched:
        painter.drawEllipse(round);
        break;
    case Stage::selection:
        if (!look.byStage) {
            painter.setBrush(mark);
            painter.setPen(Qt::NoPen);
            painter.drawEllipse(QRectF(box));
        }
        break;
    case Stage::advanced: {
        const int bar = std::max(2 * m_hair, side / 3);
        painter.fillRect(box.x(), box.y() + (side - bar) / 2, side, bar, mark);
        break;
    }
    case Stage::named:
        painter.fillPath(leafPath(QRectF(box)), mark);
        break;
    case Stage::released: {
        painter.drawEllipse(round);
        const double inset = side * 0.28;
        painter.fillPath(leafPath(QRectF(box).adjusted(inset, inset, -inset, -inset)), mark);
        break;
    }
    case Stage::parent: {
        const int arm = std::max(m_hair, side / 5);
        painter.fillRect(box.x(), box.y() + (side - arm) / 2, side, arm, mark);
        painter.fillRect(box.x() + (side - arm) / 2, box.y(), arm, side, mark);
        break;
    }
    default:
        break;
    }
    painter.restore();
}

void CellStamps::drawState(QPainter& painter, const CellLook& look, const QRect& box) const {
    const QColor mark = shaded(m_theme.ink, look);
    const int side = std::max(3 * m_hair, std::min(box.width(), 8 * m_hair));
    const QRect cross(box.center().x() - side / 2, box.center().y() - side / 2, side, side);
    if (look.state == PlantState::removed) {
        painter.fillRect(cross.x(), cross.center().y(), side, m_hair, mark);
        return;
    }
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing, side >= 5 * m_hair);
    painter.setPen(QPen(mark, 1.3 * m_hair));
    const QRectF arms = QRectF(cross).adjusted(0.5, 0.5, -0.5, -0.5);
    painter.drawLine(arms.topLeft(), arms.bottomRight());
    painter.drawLine(arms.topRight(), arms.bottomLeft());
    painter.restore();
}

void CellStamps::drawMarks(QPainter& painter, const CellLook& look, const CellBoxes& where) const {
    const int room = std::min(look.width, look.height);
    if (room < 9 * m_hair || look.marks == 0) {
        return;
    }
    const int size = std::clamp(room / 4, 3 * m_hair, 6 * m_hair);
    const auto has = [&look](CellMark mark) {
        return (look.marks & static_cast<std::uint8_t>(mark)) != 0;
    };
    const QColor ink = markColourOn(look);
    painter.save();
    if (has(CellMark::noteToday)) {
        const QPolygon corner(
            {{look.width - size - m_hair, 0}, {look.width, 0}, {look.width, size + m_hair}});
        painter.setPen(Qt::NoPen);
        painter.setBrush(shaded(m_theme.surface, look));
        painter.drawPolygon(corner.translated(-m_hair, m_hair));
        painter.setBrush(shaded(m_theme.russet, look));
        painter.drawPolygon(corner);
    }
    // Beside the shape where there is a code, else in the lower corners.
    const bool inBand = !where.marks.isEmpty();
    const int bottom = inBand ? where.marks.bottom() + 1 : look.height - 2 * m_hair;
    int next = where.marks.x();
    const auto cornerFor = [&](int wide, int elsewhere) {
        const int x = inBand ? next : elsewhere;
        next += wide + 2 * m_hair;
        return x;
    };
    if (has(CellMark::photo)) {
        const int side = std::max(2 * m_hair, size * 2 / 3);
        painter.fillRect(cornerFor(side, 2 * m_hair), bottom - side, side, side, ink);
    }
    if (has(CellMark::graftWish)) {
        painter.setPen(QPen(ink, 1.3 * m_hair));
        painter.setRenderHint(QPainter::Antialiasing);
        const int x = cornerFor(size, look.width - size - 2 * m_hair);
        const QPointF tip(x + size / 2.0, bottom - size);
        painter.drawLine(QPointF(x, bottom - size / 2.0), tip);
        painter.drawLine(tip, QPointF(x + size, bottom - size / 2.0));
    }
    if (has(CellMark::earlierPlants)) {
        const int length = std::max(3 * m_hair, inBand ? size : look.width / 4);
        const int x = cornerFor(length, (look.width - length) / 2);
        painter.fillRect(x, bottom - m_hair + (inBand ? 0 : m_hair), length, m_hair, ink);
        painter.fillRect(x, bottom - 3 * m_hair + (inBand ? 0 : m_hair), length, m_hair, ink);
    }
    painter.restore();
}

void CellStamps::drawLetters(QPainter& painter, const CellLook& look,
                             const CellBoxes& where) const {
    const QString letters = lettersOf(look);
    if (letters.isEmpty() || where.letter.isEmpty()) {
        return;
    }
    const bool isQuiet = isYoung(look.stage) || isGone(look.state) || look.stage == Stage::culled;
    QFont font = m_smallFont;
    font.setWeight(isQuiet && !look.unsure ? QFont::Normal : QFont::DemiBold);
    painter.setFont(font);
    painter.setPen(isQuiet && !look.unsure ? shaded(m_theme.secondInk, look) : markColourOn(look));
    const int align = where.code.isEmpty() ? Qt::AlignCenter : Qt::AlignRight | Qt::AlignVCenter;
    painter.drawText(where.letter, align | Qt::TextDontClip, letters);
}

void CellStamps::drawSelected(QPainter& painter, const CellLook& look) const {
    const QRect box(0, 0, look.width, look.height);
    const int thick = std::min(2 * m_hair, std::max(1, std::min(look.width, look.height) / 4));
    frame(painter, box.adjusted(thick, thick, -thick, -thick), m_theme.surface, m_hair);
    frame(painter, box, m_theme.sky, thick);
}

} // namespace pipwright::ui
