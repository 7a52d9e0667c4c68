#pragma once

#include "core/evaluation/orchard_view.h"
#include "ui/rows/cell_colouring.h"
#include "ui/rows/filter_spec.h"
#include "ui/rows/map_hover_card.h"
#include "ui/rows/map_scene.h"
#include "ui/rows/tree_table_model.h"

#include <QString>

#include <optional>
#include <vector>

/// From the view of the book to the plain values the map draws.
namespace pipwright::ui {

/// The map of the whole orchard: every position with the plants that stand there; of earlier plants
/// only the mark that there were some, unless nothing stands there now.
ScenePointer sceneOf(const OrchardView& view);

/// Whether these changes may move, add, take away or rename a tree of the map; else the scene's
/// cells can only look otherwise (see looksOtherwise).
bool needNewScene(const std::vector<Change>& changes);

/// The cells that look otherwise in this view than in the scene.
std::vector<CellStanding> looksOtherwise(const MapScene& scene, const OrchardView& view,
                                         const std::vector<std::optional<Index>>& plants);

/// For each cell of the scene, the plant it holds; nothing for a gap.
std::vector<std::optional<Index>> plantsOfCells(const MapScene& scene, const OrchardView& view);

/// What the filter may ask of each cell; weeks in the calendar of `today`.
FilterFacts filterFactsOf(const OrchardView& view, const std::vector<std::optional<Index>>& plants,
                          Date today);

/// The values of the cells' plants in a column of plants (traitColumn of the view).
std::vector<std::optional<double>>
valuesOfCells(const std::vector<std::optional<Index>>& plants,
              const std::vector<std::optional<double>>& ofPlants);

/// One of the built-in colourings (see builtInColourChoices), as of `today`.
CellColouring colouringOf(const QString& key, const MapScene& scene, const OrchardView& view,
                          const std::vector<std::optional<Index>>& plants, Date today);

/// Colouring by the latest value of a trait (traitColumn of the view).
CellColouring colouringByTrait(const Trait& trait, const MapScene& scene, const OrchardView& view,
                               const std::vector<std::optional<Index>>& plants,
                               const std::vector<std::optional<double>>& column);

/// What the hover card tells of a plant beside what the scene knows.
HoverWords hoverWordsOf(const OrchardView& view, Index plant);

/// Columns of the list of trees; weeks in the calendar of `today`.
std::vector<TreeColumn> columnsOf(ScenePointer scene, OrchardView::Pointer view,
                                  std::vector<std::optional<Index>> plants, Date today);

} // namespace pipwright::ui
