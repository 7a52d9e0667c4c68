#pragma once

#include "core/evaluation/orchard_view.h"
#include "core/exchange/print/label_sheet.h"
#include "core/exchange/print/walking_sheet.h"

#include <span>
#include <string>
#include <vector>

namespace pipwright {

/// What stands on the label of a plant: code, cross, year of the cross (of planting, for a grafted
/// tree without a cross), site and place, and the plant's own label code.
LabelText labelOf(const OrchardView& view, Index plant);

/// The plants as lines of a walking sheet, each with its newest note. Plants that stand nowhere
/// known are left out and returned in `nowhere`.
struct TreesToWalk {
    std::vector<WalkingTree> trees;
    std::vector<Index> nowhere;
};
Result<TreesToWalk> treesToWalk(const OrchardView& view, const Store& store,
                                std::span<const Index> plants);

} // namespace pipwright
