#pragma once

#include "ui/book/orchard_words.h"
#include "ui/rows/map_scene.h"

#include <QString>
#include <QStringList>

namespace pipwright::ui {

/// UTF-8 of the scene as the window's text.
QString codeOf(const MapScene& scene, CellIndex cell);
/// "row 3, place 14"
QString placeWords(const MapScene& scene, CellIndex cell);
/// "row 3, place 14, AT17-014, watched": what a screen reader says.
QString cellWords(const MapScene& scene, CellIndex cell);
/// "4.20 m from the zero stake", or nothing.
QString tapeWords(const MapCell& cell);
/// The marks of a cell in words.
QStringList markWords(const MapCell& cell);
/// Finds what was typed: a code, a short code, or `row/place`; nothing when there is none.
std::optional<CellIndex> findTyped(const MapScene& scene, const QString& typed);

} // namespace pipwright::ui
