#pragma once

#include "ui/rows/map_scene.h"

#include <functional>

class QWidget;

namespace pipwright::ui {

class RowMap;

/// Lets screen readers walk the map as a table: rows are the rows, columns the places by their
/// number. May be called any number of times.
void installRowMapAccessibility();
/// Says that the current cell has the focus.
void announceCurrentCell(const RowMap& map);
/// Forgets the cells that were handed out, for they are of a scene that goes away.
void forgetAccessibleCells(const QWidget* map);

} // namespace pipwright::ui
