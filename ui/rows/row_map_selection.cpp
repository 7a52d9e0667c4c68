// Cursor and selection of the map, and the keys that move them.
#include "ui/rows/map_words.h"
#include "ui/rows/row_map.h"
#include "ui/rows/row_map_accessible.h"

#include <QKeyEvent>
#include <QScrollBar>

#include <algorithm>
#include <cmath>

namespace pipwright::ui {

namespace {

constexpr int kCardDelayByKey = 900; ///< milliseconds
constexpr double kZoomStep = 1.25;

bool isArrow(int key) {
    return key == Qt::Key_Left || key == Qt::Key_Right || key == Qt::Key_Up || key == Qt::Key_Down;
}

} // namespace

std::vector<Uuid> RowMap::selectedTrees() const {
    return plantsOf(selection(), scene());
}

void RowMap::setSelection(const MapSelection& selection) {
    changeSelection(treesOnly(selection, scene()));
}

void RowMap::selectAllShown() {
    const auto count = static_cast<CellIndex>(scene().cells().size());
    if (count == 0) {
        return;
    }
    MapSelection all = MapSelection::run(0, count - 1);
    all.filter([this](CellIndex cell) { return m_painter.isShown(cell); });
    changeSelection(std::move(all));
}

void RowMap::selectRow(std::uint32_t row) {
    const MapRow& facts = scene().rows()[row];
    if (facts.cellCount > 0) {
        changeSelection(MapSelection::run(facts.firstCell, facts.firstCell + facts.cellCount - 1));
    }
}

void RowMap::changeSelection(MapSelection selection) {
    MapSelection trees = treesOnly(std::move(selection), scene());
    if (trees == this->selection()) {
        return;
    }
    m_painter.setSelection(std::move(trees));
    viewport()->update();
    Q_EMIT selectionChanged();
}

void RowMap::setCursorCell(CellIndex cell) {
    const std::optional<Uuid> before = currentTree();
    m_cursor = cell;
    ensureVisible(cell);
    viewport()->update();
    announceCurrentCell(*this);
    if (currentTree() && currentTree() != before) {
        Q_EMIT currentTreeChanged(*currentTree());
    }
}

void RowMap::moveCursor(CellIndex cell, Step step) {
    const CellIndex from = m_cursor.value_or(cell);
    if (!m_anchor || step == Step::select || step == Step::brush) {
        m_anchor = step == Step::select ? cell : from;
    }
    setCursorCell(cell);
    switch (step) {
    case Step::select:
        changeSelection(MapSelection::of(cell));
        break;
    case Step::extend:
        changeSelection(MapSelection::run(*m_anchor, cell));
        break;
    case Step::rectangle:
        changeSelection(rectangleBetween(*m_anchor, cell));
        break;
    case Step::brush: {
        MapSelection painted = selection();
        painted.add(from);
        painted.add(cell);
        changeSelection(std::move(painted));
        break;
    }
    case Step::leave:
        break;
    }
}

MapSelection RowMap::rectangleBetween(CellIndex one, CellIndex other) const {
    const MapLayout::Slot& first = layoutOfMap().slot(one);
    const MapLayout::Slot& second = layoutOfMap().slot(other);
    const double left = static_cast<double>(std::min(first.left, second.left));
    const double right =
        static_cast<double>(std::max(first.left + first.width, second.left + second.width));
    const std::uint32_t top = std::min(scene().rowOf(one), scene().rowOf(other));
    const std::uint32_t bottom = std::max(scene().rowOf(one), scene().rowOf(other));
    MapSelection rectangle;
    for (std::uint32_t row = top; row <= bottom; ++row) {
        const auto [from, end] = layoutOfMap().cellsBetween(row, left, right);
        if (from < end) {
            rectangle.unite(MapSelection::run(from, end - 1));
        }
    }
    return rectangle;
}

/// The cell as many rows further that is nearest to where the cursor was.
std::optional<CellIndex> RowMap::inRow(CellIndex cell, int rows) const {
    const int count = static_cast<int>(scene().rows().size());
    const MapLayout::Slot& slot = layoutOfMap().slot(cell);
    const double place = m_wishedPlace.value_or(static_cast<double>(slot.left + slot.width / 2));
    const int from = static_cast<int>(scene().rowOf(cell));
    const int step = rows < 0 ? -1 : 1;
    int row = std::clamp(from + rows, 0, count - 1);
    for (; row >= 0 && row < count && row != from; row += step) {
        if (const auto found = layoutOfMap().nearest(static_cast<std::uint32_t>(row), place)) {
            return found;
        }
    }
    return std::nullopt;
}

std::optional<CellIndex> RowMap::neighbour(CellIndex cell, int key) const {
    const MapRow& row = scene().rows()[scene().rowOf(cell)];
    const MapLayout::Slot& slot = layoutOfMap().slot(cell);
    switch (key) {
    case Qt::Key_Left:
        return cell > row.firstCell ? std::optional(cell - 1) : std::nullopt;
    case Qt::Key_Right:
        return cell + 1 < row.firstCell + row.cellCount ? std::optional(cell + 1) : std::nullopt;
    case Qt::Key_Up:
        // Plants that share a place are stacked: go through them before leaving the row.
        return slot.part > 0 ? std::optional(cell - 1) : inRow(cell, -1);
    case Qt::Key_Down:
        return slot.part + 1 < slot.parts ? std::optional(cell + 1) : inRow(cell, 1);
    default:
        return std::nullopt;
    }
}

bool RowMap::moveByKey(const QKeyEvent& event) {
    if (!m_cursor) {
        return false;
    }
    const auto has = [&event](Qt::KeyboardModifier modifier) {
        return event.modifiers().testFlag(modifier);
    };
    Step step = Step::select;
    if (has(Qt::ShiftModifier)) {
        step = has(Qt::AltModifier) ? Step::rectangle : Step::extend;
    } else if (has(Qt::AltModifier)) {
        step = Step::brush;
    } else if (has(Qt::ControlModifier)) {
        step = Step::leave;
    }
    const MapRow& row = scene().rows()[scene().rowOf(*m_cursor)];
    const int page = std::max(1, static_cast<int>((viewport()->height() - m_painter.rulerHeight()) /
                                                  frame().scale.rowPitch) -
                                     1);
    const auto last = static_cast<CellIndex>(scene().cells().size()) - 1;
    std::optional<CellIndex> target;
    if (isArrow(event.key())) {
        target = neighbour(*m_cursor, event.key());
        while (target && has(Qt::ControlModifier) && scene().cells()[*target].isGap()) {
            target = neighbour(*target, event.key());
        }
    } else if (event.key() == Qt::Key_Home) {
        target = has(Qt::ControlModifier) ? 0 : row.firstCell;
        step = step == Step::leave ? Step::select : step;
    } else if (event.key() == Qt::Key_End) {
        target = has(Qt::ControlModifier) ? last : row.firstCell + row.cellCount - 1;
        step = step == Step::leave ? Step::select : step;
    } else if (event.key() == Qt::Key_PageUp || event.key() == Qt::Key_PageDown) {
        target = inRow(*m_cursor, event.key() == Qt::Key_PageUp ? -page : page);
    } else {
        return false;
    }
    const bool across = event.key() == Qt::Key_Up || event.key() == Qt::Key_Down ||
                        event.key() == Qt::Key_PageUp || event.key() == Qt::Key_PageDown;
    if (across && !m_wishedPlace) {
        const MapLayout::Slot& slot = layoutOfMap().slot(*m_cursor);
        m_wishedPlace = static_cast<double>(slot.left + slot.width / 2);
    } else if (!across) {
        m_wishedPlace.reset();
    }
    if (target) {
        moveCursor(*target, step);
        hover(m_cursor, kCardDelayByKey);
    }
    return true;
}

bool RowMap::actByKey(const QKeyEvent& event) {
    const bool control = event.modifiers().testFlag(Qt::ControlModifier);
    const bool shift = event.modifiers().testFlag(Qt::ShiftModifier);
    const QString typed = event.text();
    if (event.matches(QKeySequence::SelectAll)) {
        selectAllShown();
    } else if (event.key() == Qt::Key_Space && m_cursor && control) {
        MapSelection changed = selection();
        changed.toggle(*m_cursor);
        m_anchor = m_cursor;
        changeSelection(std::move(changed));
    } else if (event.key() == Qt::Key_Space && m_cursor && shift) {
        selectRow(scene().rowOf(*m_cursor));
    } else if (event.key() == Qt::Key_Space && m_cursor && event.modifiers() == Qt::NoModifier) {
        changeSelection(MapSelection::of(*m_cursor));
    } else if (event.key() == Qt::Key_Return || event.key() == Qt::Key_Enter) {
        if (!currentTree()) {
            return false;
        }
        Q_EMIT treeActivated(*currentTree());
    } else if (event.key() == Qt::Key_Escape && (m_drag != Drag::none || m_card->isVisible())) {
        if (m_drag != Drag::none && m_drag != Drag::pan) {
            changeSelection(m_dragBase);
        }
        endDrag();
        hideCard();
    } else if (event.key() == Qt::Key_Escape && selection().count() > 1 && m_cursor) {
        changeSelection(MapSelection::of(*m_cursor));
    } else if (typed == QLatin1String("+") || typed == QLatin1String("=")) {
        zoomBy(kZoomStep);
    } else if (typed == QLatin1String("-")) {
        zoomBy(1 / kZoomStep);
    } else if (typed == QLatin1String("0") && !control) {
        zoomToFit();
    } else if (!control && typed.size() == 1 &&
               (typed[0].isDigit() || typed[0] == QLatin1Char('/'))) {
        Q_EMIT findRequested(typed);
    } else {
        const bool plain =
            (event.modifiers() & ~(Qt::ShiftModifier | Qt::KeypadModifier)) == Qt::NoModifier;
        if (plain && typed.size() == 1 && typed[0].isLetter()) {
            Q_EMIT strayLetter(typed.toUpper());
        }
        return false;
    }
    return true;
}

void RowMap::keyPressEvent(QKeyEvent* event) {
    m_card->hide();
    // Anything else, letters above all, belongs to the window's menus.
    event->setAccepted(moveByKey(*event) || actByKey(*event));
}

void RowMap::focusInEvent(QFocusEvent* event) {
    QAbstractScrollArea::focusInEvent(event);
    viewport()->update();
    announceCurrentCell(*this);
}

void RowMap::focusOutEvent(QFocusEvent* event) {
    QAbstractScrollArea::focusOutEvent(event);
    hideCard();
    viewport()->update();
}

} // namespace pipwright::ui
