#pragma once

#include "core/evaluation/orchard_view.h"
#include "core/units/result.h"

#include <optional>
#include <string>
#include <string_view>

namespace pipwright {

/// A tree as somebody named it: a plant of the book, or a genotype that stands nowhere.
struct NamedTree {
    std::optional<Index> plant;
    std::optional<Index> genotype;
};

/// Finds a tree by what is written on sheets: `row/place` ("3/14", or "Upper 3/14" with the site),
/// the genotype's code, name or alias, or what the plant's tag says. Of several plants of a
/// genotype it is the one plantFor() shows. The Problem says why nothing, or no single tree, was
/// found and what to type.
Result<NamedTree> treeNamed(const OrchardView& view, std::string_view typed);

/// Fruit as it stands on a tasting sheet: a tree as above, or bought or given fruit of a claimed
/// genotype with its source behind an @: "Ash Tarn @ farm shop".
struct NamedFruit {
    NamedTree tree; ///< for bought fruit only the genotype
    bool bought = false;
    std::string source; ///< may be empty although it was bought
};
Result<NamedFruit> fruitNamed(const OrchardView& view, std::string_view typed);

} // namespace pipwright
