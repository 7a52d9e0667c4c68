// The pointer on the map: pressing, dragging, zooming, resting.
#include "ui/rows/map_words.h"
#include "ui/rows/row_map.h"

#include <QApplication>
#include <QContextMenuEvent>
#include <QMouseEvent>
#include <QPinchGesture>
#include <QScrollBar>
#include <QWheelEvent>

#include <algorithm>
#include <cmath>

namespace pipwright::ui {

namespace {

constexpr int kCardDelay = 450; ///< milliseconds

} // namespace

void RowMap::mousePressEvent(QMouseEvent* event) {
    hideCard();
    const QPoint point = event->position().toPoint();
    const MapFrame now = frame();
    if (event->button() == Qt::MiddleButton) {
        m_drag = Drag::pan;
        m_dragFrom = point;
        m_panScroll = now.scroll;
        viewport()->setCursor(Qt::ClosedHandCursor);
        return;
    }
    if (event->button() == Qt::RightButton) {
        const auto cell = cellAt(point);
        if (cell && !selection().contains(*cell)) {
            moveCursor(*cell, Step::select);
        } else if (cell) {
            setCursorCell(*cell);
        }
        return;
    }
    if (event->button() != Qt::LeftButton || point.y() < now.ruler) {
        return;
    }
    const auto row = layoutOfMap().rowAt(now.toContent(point).y(), now.scale);
    if (point.x() < now.rowNames) {
        if (row && scene().rows()[*row].cellCount > 0) {
            const MapSelection before = selection();
            m_anchor = scene().rows()[*row].firstCell;
            setCursorCell(*m_anchor);
            selectRow(*row);
            if (event->modifiers().testFlag(Qt::ControlModifier)) {
                MapSelection both = selection();
                both.unite(before);
                changeSelection(std::move(both));
            }
        }
        return;
    }
    m_drag = event->modifiers().testFlag(Qt::AltModifier) ? Drag::lasso : Drag::pressed;
    m_dragFrom = point;
    m_dragAt = point;
    m_dragContent = now.toContent(point);
    m_lasso = QPolygonF({m_dragContent});
    const bool adds = event->modifiers() & (Qt::ControlModifier | Qt::ShiftModifier);
    m_dragBase = adds ? selection() : MapSelection();
    if (m_drag == Drag::pressed) {
        if (const auto cell = cellAt(point)) {
            pressCell(*cell, event->modifiers());
        }
    }
}

void RowMap::pressCell(CellIndex cell, Qt::KeyboardModifiers modifiers) {
    m_wishedPlace.reset();
    if (modifiers.testFlag(Qt::ShiftModifier)) {
        moveCursor(cell, Step::extend);
    } else if (modifiers.testFlag(Qt::ControlModifier)) {
        m_anchor = cell;
        setCursorCell(cell);
        MapSelection changed = selection();
        changed.toggle(cell);
        changeSelection(std::move(changed));
    } else {
        moveCursor(cell, Step::select);
    }
}

void RowMap::mouseMoveEvent(QMouseEvent* event) {
    const QPoint point = event->position().toPoint();
    if (m_drag == Drag::none) {
        hover(cellAt(point), kCardDelay);
    } else if (m_drag == Drag::pan) {
        scrollTo(m_panScroll - QPointF(point - m_dragFrom));
    } else if (m_drag != Drag::pressed ||
               (point - m_dragFrom).manhattanLength() >= QApplication::startDragDistance()) {
        if (m_drag == Drag::pressed) {
            m_drag = Drag::rectangle;
        }
        m_dragScroll.start();
        dragTo(point);
    }
}

void RowMap::dragTo(QPoint point) {
    m_dragAt = point;
    const MapFrame before = frame();
    // Beyond the edge the map comes along, the faster the further.
    const auto beyond = [](int at, double low, int high) {
        return at < low ? (at - low) / 3 : (at > high ? (at - high) / 3.0 : 0.0);
    };
    const QPointF push(beyond(point.x(), before.rowNames, viewport()->width()),
                       beyond(point.y(), before.ruler, viewport()->height()));
    if (!push.isNull()) {
        scrollTo(before.scroll + push);
    }
    const MapFrame now = frame();
    const QPointF content = now.toContent(point);
    std::vector<CellIndex> cells;
    if (m_drag == Drag::lasso) {
        m_lasso << content;
        cells = layoutOfMap().cellsIn(m_lasso, now.scale);
    } else {
        cells = layoutOfMap().cellsIn(QRectF(m_dragContent, content).normalized(), now.scale);
    }
    CellSet set(scene().cells().size(), false);
    for (const CellIndex cell : cells) {
        set[cell] = true;
    }
    MapSelection chosen = MapSelection::of(set);
    chosen.unite(m_dragBase);
    changeSelection(std::move(chosen));
    viewport()->update();
}

void RowMap::mouseReleaseEvent(QMouseEvent* event) {
    const QPoint point = event->position().toPoint();
    const bool clicked = m_drag == Drag::pressed;
    const bool chosen = m_drag == Drag::rectangle || m_drag == Drag::lasso;
    const bool plain = event->modifiers() == Qt::NoModifier;
    endDrag();
    if (clicked && plain && !cellAt(point)) {
        changeSelection({});
    }
    if (chosen && !selection().isEmpty() && m_cursor && !selection().contains(*m_cursor)) {
        m_anchor = selection().runs().front().first;
        setCursorCell(*m_anchor);
    }
}

void RowMap::endDrag() {
    m_dragScroll.stop();
    if (m_drag == Drag::pan) {
        viewport()->unsetCursor();
    }
    if (m_drag != Drag::none) {
        viewport()->update();
    }
    m_drag = Drag::none;
    m_lasso.clear();
}

void RowMap::mouseDoubleClickEvent(QMouseEvent* event) {
    const auto cell = cellAt(event->position().toPoint());
    if (event->button() == Qt::LeftButton && cell && !scene().cells()[*cell].isGap()) {
        Q_EMIT treeActivated(scene().cells()[*cell].plant);
    }
}

void RowMap::wheelEvent(QWheelEvent* event) {
    if (!event->modifiers().testFlag(Qt::ControlModifier)) {
        QAbstractScrollArea::wheelEvent(event);
        return;
    }
    const double notches = event->angleDelta().y() / 120.0;
    if (notches != 0) {
        zoomBy(std::pow(1.15, notches), event->position());
    }
    event->accept();
}

void RowMap::pinch(const QPinchGesture& gesture) {
    if (gesture.changeFlags().testFlag(QPinchGesture::ScaleFactorChanged)) {
        const QPointF middle = viewport()->mapFromGlobal(gesture.centerPoint());
        setCellWidth(m_zoom * gesture.scaleFactor(), middle);
    }
}

void RowMap::contextMenuEvent(QContextMenuEvent* event) {
    QPoint position = event->globalPos();
    if (event->reason() == QContextMenuEvent::Keyboard && m_cursor) {
        position = viewport()->mapToGlobal(rectOf(*m_cursor).center());
    }
    hideCard();
    Q_EMIT contextMenuRequested(position);
    event->accept();
}

void RowMap::hover(std::optional<CellIndex> cell, int delay) {
    if (cell == m_hovered && (m_card->isVisible() || m_cardTimer.isActive())) {
        return;
    }
    m_card->hide();
    m_hovered = cell;
    if (cell && !scene().cells()[*cell].isGap()) {
        m_cardTimer.start(delay);
    } else {
        m_cardTimer.stop();
    }
}

void RowMap::showCard() {
    if (!m_hovered || m_drag != Drag::none || !isVisible()) {
        return;
    }
    const MapCell& cell = scene().cells()[*m_hovered];
    HoverWords words;
    if (m_hoverText) {
        words = m_hoverText(cell.plant);
    } else {
        words.title = codeOf(scene(), *m_hovered);
        words.lines << placeWords(scene(), *m_hovered);
        if (cell.tapeMetres) {
            words.lines << tapeWords(cell);
        }
        words.lines << stageWord(cell.stage) + QStringLiteral(", ") + stateWord(cell.state)
                    << identityWord(cell.identity) << markWords(cell);
    }
    const QRect box = rectOf(*m_hovered);
    m_card->showFor(words, QRect(viewport()->mapToGlobal(box.topLeft()), box.size()));
}

void RowMap::hideCard() {
    m_cardTimer.stop();
    m_hovered.reset();
    m_card->hide();
}

} // namespace pipwright::ui
