#include "ui/rows/row_map.h"

#include "ui/rows/map_words.h"
#include "ui/rows/row_map_accessible.h"

#include <QEvent>
#include <QGestureEvent>
#include <QPaintEvent>
#include <QPainter>
#include <QScrollBar>

#include <algorithm>
#include <cmath>

namespace pipwright::ui {

namespace {

/// Logical pixels of one place.
constexpr double kLeastWidth = 0.25;
constexpr double kMostWidth = 180;
constexpr double kMostFittedWidth = 40;
constexpr double kHeading = 34;

int rounded(double value) {
    return static_cast<int>(std::lround(value));
}

} // namespace

RowMap::RowMap(QWidget* parent) : QAbstractScrollArea(parent), m_card(new MapHoverCard(this)) {
    installRowMapAccessibility();
    setObjectName(QStringLiteral("rowMap"));
    setAccessibleName(tr("Map of the rows"));
    setAccessibleDescription(
        tr("Arrow keys move along and across the rows; type a digit or / to find a tree."));
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::StrongFocus);
    viewport()->setMouseTracking(true);
    viewport()->setAttribute(Qt::WA_OpaquePaintEvent);
    viewport()->grabGesture(Qt::PinchGesture);
    horizontalScrollBar()->setAccessibleName(tr("Along the rows"));
    verticalScrollBar()->setAccessibleName(tr("Across the rows"));
    m_card->hide();
    m_cardTimer.setSingleShot(true);
    connect(&m_cardTimer, &QTimer::timeout, this, &RowMap::showCard);
    m_dragScroll.setInterval(30);
    connect(&m_dragScroll, &QTimer::timeout, this, [this] { dragTo(m_dragAt); });
    adoptTheme();
}

RowMap::~RowMap() {
    forgetAccessibleCells(this);
}

void RowMap::adoptTheme() {
    m_painter.setTheme(themeOf(this), devicePixelRatioF());
    updateScrollBars();
    viewport()->update();
}

void RowMap::setScene(ScenePointer scene) {
    hideCard();
    endDrag();
    forgetAccessibleCells(this);
    const std::optional<Uuid> current = currentTree();
    const std::vector<Uuid> selected = selectedTrees();
    const PlaceSpacing spacing = layoutOfMap().spacing();
    const std::optional<CellIndex> oldCursor = m_cursor;
    m_painter.setLayout(MapLayout(std::move(scene), spacing));
    m_hovered.reset();
    m_anchor.reset();
    m_cursor = current ? this->scene().find(*current) : std::nullopt;
    const auto count = static_cast<CellIndex>(this->scene().cells().size());
    if (!m_cursor && count > 0) {
        // A screen reader needs a current cell at all times: where the cursor was, else a tree.
        CellIndex cell = std::min(oldCursor.value_or(0), count - 1);
        while (!oldCursor && cell + 1 < count && this->scene().cells()[cell].isGap()) {
            ++cell;
        }
        m_cursor = cell;
    }
    if (m_fitted) {
        zoomToFit();
    } else {
        updateScrollBars();
    }
    const MapSelection kept = selectionOf(selected, this->scene());
    m_painter.setSelection(kept);
    viewport()->update();
    // Where the cursor of a fresh map stands nobody has chosen: a bite must not go there unasked.
    if (oldCursor && currentTree() != current && currentTree()) {
        Q_EMIT currentTreeChanged(*currentTree());
    }
    if (kept.count() != selected.size()) {
        Q_EMIT selectionChanged();
    }
}

void RowMap::setSpacing(PlaceSpacing spacing) {
    if (spacing == layoutOfMap().spacing()) {
        return;
    }
    CellSet shown = m_painter.shown();
    const MapSelection selected = selection();
    m_painter.setLayout(MapLayout(layoutOfMap().scenePointer(), spacing));
    m_painter.setShown(std::move(shown));
    m_painter.setSelection(selected);
    m_fitted ? zoomToFit() : updateScrollBars();
    if (m_cursor) {
        ensureVisible(*m_cursor);
    }
    viewport()->update();
}

void RowMap::setColouring(CellColouring colouring) {
    if (colouring.entryOf.size() != scene().cells().size()) {
        return;
    }
    m_painter.setColouring(std::move(colouring));
    viewport()->update();
}

void RowMap::setShown(CellSet shown) {
    if (!shown.empty() && shown.size() != scene().cells().size()) {
        return;
    }
    m_painter.setShown(std::move(shown));
    viewport()->update();
}

std::optional<Uuid> RowMap::currentTree() const {
    if (!m_cursor || scene().cells()[*m_cursor].isGap()) {
        return std::nullopt;
    }
    return scene().cells()[*m_cursor].plant;
}

MapFrame RowMap::frame() const {
    MapFrame frame;
    frame.scale.cellWidth = snapped(m_zoom);
    frame.scale.rowPitch = snapped(pitchFor(frame.scale.cellWidth));
    frame.scale.heading = kHeading;
    frame.size = viewport()->size();
    frame.ratio = devicePixelRatioF();
    frame.rowNames = m_painter.rowNamesWidth();
    frame.ruler = m_painter.rulerHeight();
    frame.scroll = QPointF(horizontalScrollBar()->value(), verticalScrollBar()->value());
    return frame;
}

/// Cells of equal size are calmer than cells of the exact size.
double RowMap::snapped(double logical) const {
    const double ratio = devicePixelRatioF();
    return logical * ratio < 3 ? logical : std::floor(logical * ratio + 1e-6) / ratio;
}

/// Few rows may be taller than wide; with the code in them, cells become wider than tall.
double RowMap::pitchFor(double cellWidth) const {
    const double withCode = 33 + (cellWidth - 28) * 0.5;
    const double least = cellWidth <= 16   ? 0.6 * cellWidth
                         : cellWidth <= 28 ? 9.6 + (cellWidth - 16) * 1.95
                                           : withCode;
    const double most = cellWidth <= 16 ? 24 : 24 + (cellWidth - 16) * 0.6;
    return std::clamp(m_aspect * cellWidth, least, std::max(least, most));
}

void RowMap::zoomToFit() {
    const MapFrame now = frame();
    const QSize whole = maximumViewportSize();
    const double width = whole.width() - now.rowNames - 4;
    const double headings = static_cast<double>(scene().sites().size()) * kHeading;
    const double height = whole.height() - now.ruler - headings;
    const double columns = std::max(1.0, layoutOfMap().columns());
    const double rows = std::max<double>(1, static_cast<double>(scene().rows().size()));
    const double rowRoom = std::max(1.0, height / rows);
    m_zoom = std::clamp(std::min(width / columns, rowRoom / 0.6), kLeastWidth, kMostFittedWidth);
    m_aspect = std::max(0.6, rowRoom / m_zoom);
    // Cells with room for the code ask for more height than their width alone says.
    while (m_zoom > 6 && pitchFor(m_zoom) > rowRoom) {
        m_zoom -= 1;
    }
    updateScrollBars();
    scrollTo({0, 0});
    m_fitted = true;
    hideCard();
    viewport()->update();
    Q_EMIT zoomChanged(cellWidth());
}

void RowMap::zoomBy(double factor) {
    const QRect middle = m_cursor ? rectOf(*m_cursor) : QRect();
    const bool inView = m_cursor && viewport()->rect().intersects(middle);
    zoomBy(factor, inView ? QPointF(middle.center()) : QPointF(viewport()->rect().center()));
}

void RowMap::zoomBy(double factor, QPointF about) {
    const double before = cellWidth();
    double wished = m_zoom * factor;
    // A step that snapping would swallow goes to the next pixel instead.
    if (snapped(wished) == before && before * devicePixelRatioF() >= 3) {
        wished = before + (factor > 1 ? 1.001 : -0.999) / devicePixelRatioF();
    }
    setCellWidth(wished, about);
}

void RowMap::setCellWidth(double width, QPointF about) {
    const MapFrame before = frame();
    const QPointF point = before.toContent(about);
    const double place = point.x() / before.scale.cellWidth;
    const auto rows = layoutOfMap().rowsBetween(point.y(), point.y() + 1, before.scale);
    const bool hasRow = rows.first < scene().rows().size();
    const double within = hasRow ? (point.y() - layoutOfMap().rowTop(rows.first, before.scale)) /
                                       before.scale.rowPitch
                                 : 0;
    m_zoom = std::clamp(width, kLeastWidth, kMostWidth);
    m_fitted = false;
    hideCard();
    updateScrollBars();
    const MapFrame after = frame();
    const double y =
        hasRow ? layoutOfMap().rowTop(rows.first, after.scale) + within * after.scale.rowPitch
               : point.y();
    scrollTo(QPointF(place * after.scale.cellWidth, y) -
             (about - QPointF(after.rowNames, after.ruler)));
    viewport()->update();
    Q_EMIT zoomChanged(cellWidth());
}

void RowMap::updateScrollBars() {
    const MapFrame now = frame();
    const QSizeF content = layoutOfMap().contentSize(now.scale);
    const double wide = content.width() + now.rowNames + 4;
    const double tall = content.height() + now.ruler + 4;
    const QSize whole = maximumViewportSize();
    // Bars change the viewport, which would change the bars: decide from the whole room.
    const int bar = verticalScrollBar()->sizeHint().width();
    bool across = wide > whole.width();
    const bool down = tall > whole.height() - (across ? bar : 0);
    across = wide > whole.width() - (down ? bar : 0);
    const int pageWidth = whole.width() - (down ? bar : 0);
    const int pageHeight = whole.height() - (across ? bar : 0);
    horizontalScrollBar()->setRange(0, std::max(0, static_cast<int>(std::ceil(wide)) - pageWidth));
    horizontalScrollBar()->setPageStep(pageWidth);
    horizontalScrollBar()->setSingleStep(std::max(10, rounded(now.scale.cellWidth)));
    verticalScrollBar()->setRange(0, std::max(0, static_cast<int>(std::ceil(tall)) - pageHeight));
    verticalScrollBar()->setPageStep(pageHeight);
    verticalScrollBar()->setSingleStep(std::max(10, rounded(now.scale.rowPitch)));
}

void RowMap::scrollTo(QPointF content) {
    horizontalScrollBar()->setValue(rounded(content.x()));
    verticalScrollBar()->setValue(rounded(content.y()));
}

void RowMap::ensureVisible(CellIndex cell) {
    const MapFrame now = frame();
    const QRectF box = layoutOfMap().cellRect(cell, now.scale);
    const double roomX = now.size.width() - now.rowNames;
    const double roomY = now.size.height() - now.ruler;
    const auto shifted = [](double scroll, double low, double high, double room, double margin) {
        const double space = std::min(margin, std::max(0.0, (room - (high - low)) / 2));
        if (low - space < scroll) {
            return low - space;
        }
        return high + space > scroll + room ? high + space - room : scroll;
    };
    scrollTo({shifted(now.scroll.x(), box.left(), box.right(), roomX, 2 * now.scale.cellWidth),
              shifted(now.scroll.y(), box.top(), box.bottom(), roomY, now.scale.rowPitch)});
}

bool RowMap::goTo(const Uuid& tree) {
    const auto cell = scene().find(tree);
    if (!cell) {
        return false;
    }
    m_wishedPlace.reset();
    m_anchor = *cell;
    setCursorCell(*cell);
    changeSelection(MapSelection::of(*cell));
    return true;
}

std::optional<CellIndex> RowMap::cellAt(QPoint point) const {
    const MapFrame now = frame();
    if (point.x() < now.rowNames || point.y() < now.ruler) {
        return std::nullopt;
    }
    return layoutOfMap().cellAt(now.toContent(QPointF(point) + QPointF(0.5, 0.5)), now.scale);
}

QRect RowMap::rectOf(CellIndex cell) const {
    const MapFrame now = frame();
    return now.toViewport(layoutOfMap().cellRect(cell, now.scale)).toAlignedRect();
}

void RowMap::paintEvent(QPaintEvent* event) {
    if (m_painter.theme().dark != themeOf(this).dark ||
        m_painter.devicePixelRatio() != devicePixelRatioF()) {
        m_painter.setTheme(themeOf(this), devicePixelRatioF());
    }
    QPainter painter(viewport());
    m_painter.paint(painter, frame(), event->rect(), m_cursor);
    paintCursor(painter);
    paintDrag(painter);
}

void RowMap::paintCursor(QPainter& painter) const {
    if (!m_cursor) {
        return;
    }
    const MapFrame now = frame();
    const QRectF box = now.toViewport(layoutOfMap().cellRect(*m_cursor, now.scale));
    const double grow = std::max(1.0, (9 - std::min(box.width(), box.height())) / 2);
    const double alley = std::clamp(now.scale.rowPitch / 6, 1.0, 5.0);
    QRectF ring = box.adjusted(-grow, -grow, grow - 1, grow - std::min(alley, box.height() / 3));
    const QRectF room(now.rowNames, now.ruler, now.size.width() - now.rowNames,
                      now.size.height() - now.ruler);
    painter.save();
    painter.setClipRect(room.adjusted(-2, -2, 0, 0));
    const bool focused = hasFocus();
    const double thick = focused ? 2 : 1;
    painter.setPen(Qt::NoPen);
    const QColor halo = m_painter.theme().paper;
    const QColor colour = focused ? m_painter.theme().ink : m_painter.theme().secondInk;
    const auto drawFrame = [&painter](const QRectF& outer, double pen, const QColor& ink) {
        const QRectF inner = outer.adjusted(pen, pen, -pen, -pen);
        painter.fillRect(QRectF(outer.topLeft(), QPointF(outer.right(), inner.top())), ink);
        painter.fillRect(QRectF(QPointF(outer.left(), inner.bottom()), outer.bottomRight()), ink);
        painter.fillRect(QRectF(QPointF(outer.left(), inner.top()), inner.bottomLeft()), ink);
        painter.fillRect(QRectF(inner.topRight(), QPointF(outer.right(), inner.bottom())), ink);
    };
    drawFrame(ring.adjusted(-thick - 1, -thick - 1, thick + 1, thick + 1), 1, halo);
    drawFrame(ring.adjusted(-thick, -thick, thick, thick), thick, colour);
    painter.restore();
}

void RowMap::paintDrag(QPainter& painter) const {
    if (m_drag != Drag::rectangle && m_drag != Drag::lasso) {
        return;
    }
    const MapFrame now = frame();
    const QPointF shift = QPointF(now.rowNames, now.ruler) - now.scroll;
    QColor wash = m_painter.theme().sky;
    wash.setAlpha(28);
    painter.save();
    painter.setClipRect(QRectF(now.rowNames, now.ruler, now.size.width(), now.size.height()));
    painter.setPen(QPen(m_painter.theme().sky, 1));
    painter.setBrush(wash);
    if (m_drag == Drag::lasso) {
        painter.setRenderHint(QPainter::Antialiasing);
        painter.drawPolygon(m_lasso.translated(shift));
    } else {
        painter.drawRect(QRectF(m_dragContent + shift, QPointF(m_dragAt)).normalized());
    }
    painter.restore();
}

void RowMap::resizeEvent(QResizeEvent* event) {
    QAbstractScrollArea::resizeEvent(event);
    m_fitted ? zoomToFit() : updateScrollBars();
}

void RowMap::scrollContentsBy(int /*dx*/, int /*dy*/) {
    hideCard();
    viewport()->update();
}

void RowMap::changeEvent(QEvent* event) {
    QAbstractScrollArea::changeEvent(event);
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange ||
        event->type() == QEvent::StyleChange) {
        adoptTheme();
    }
}

bool RowMap::viewportEvent(QEvent* event) {
    switch (event->type()) {
    case QEvent::Leave:
        hover(std::nullopt, 0);
        break;
    case QEvent::ScreenChangeInternal:
        adoptTheme();
        break;
    case QEvent::Gesture:
        if (auto* gesture = static_cast<QGestureEvent*>(event)->gesture(Qt::PinchGesture)) {
            pinch(*static_cast<QPinchGesture*>(gesture));
            return true;
        }
        break;
    default:
        break;
    }
    return QAbstractScrollArea::viewportEvent(event);
}

} // namespace pipwright::ui
