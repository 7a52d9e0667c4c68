#include "core/evaluation/typed_tree.h"

#include "core/units/text.h"

#include <charconv>
#include <vector>

namespace pipwright {

namespace {

/// "Upper 3/14" in its parts.
struct TypedPlace {
    std::string row; ///< folded; may begin with the site
    std::int64_t ordinal = 0;
};

std::optional<TypedPlace> placeIn(std::string_view typed) {
    const std::size_t slash = typed.rfind('/');
    if (slash == std::string_view::npos || slash == 0) {
        return std::nullopt;
    }
    const std::string_view last = trimmed(typed.substr(slash + 1));
    TypedPlace place;
    const auto read = std::from_chars(last.data(), last.data() + last.size(), place.ordinal);
    if (last.empty() || read.ec != std::errc() || read.ptr != last.data() + last.size()) {
        return std::nullopt;
    }
    place.row = foldedForSearch(typed.substr(0, slash));
    return place.row.empty() ? std::nullopt : std::optional(place);
}

bool isRow(const OrchardView& view, Index row, const std::string& wanted) {
    const TrialRow& one = view.rows()[row];
    const std::string name = foldedForSearch(view.rowName(row));
    const std::string number = std::to_string(one.number);
    if (wanted == name || wanted == number) {
        return true;
    }
    for (const Site& site : view.sites()) {
        if (site.id == one.site) {
            const std::string withSite = foldedForSearch(site.name) + " ";
            return wanted == withSite + name || wanted == withSite + number;
        }
    }
    return false;
}

/// Growing plants where there are any; else whatever stood there.
std::vector<Index> growingOf(const OrchardView& view, const std::vector<Index>& plants) {
    std::vector<Index> all;
    std::vector<Index> growing;
    for (const Index plant : plants) {
        if (view.plants()[plant].erased) {
            continue;
        }
        all.push_back(plant);
        if (view.plants()[plant].state == PlantState::growing) {
            growing.push_back(plant);
        }
    }
    return growing.empty() ? all : growing;
}

NamedTree treeOf(const OrchardView& view, Index plant) {
    return {plant, view.plants()[plant].genotype};
}

Problem severalTrees(const OrchardView& view, std::string_view typed,
                     const std::vector<Index>& plants) {
    std::string names;
    for (const Index plant : plants) {
        names += (names.empty() ? "" : ", ") + view.plantCode(plant);
    }
    return {ProblemCode::conflict,
            "At \"" + std::string(typed) + "\" there are several trees: " + names + ".",
            "Type the code of the one you mean, or the site before the row.",
            {}};
}

Problem noTree(std::string_view typed) {
    return {ProblemCode::notFound,
            "Nothing is called \"" + std::string(typed) + "\".",
            "Type a code, a name, an alias or row/place, such as 3/14.",
            {}};
}

} // namespace

Result<NamedTree> treeNamed(const OrchardView& view, std::string_view typed) {
    const std::string_view wanted = trimmed(typed);
    if (const auto genotype = view.genotypeCalled(wanted)) {
        return NamedTree{view.plantFor(*genotype), genotype};
    }
    if (const auto place = placeIn(wanted)) {
        std::vector<Index> plants;
        for (const Index row : view.rowsInOrder()) {
            if (!isRow(view, row, place->row)) {
                continue;
            }
            for (const Index position : view.positionsOf(row)) {
                if (view.positions()[position].ordinal == place->ordinal) {
                    const auto there = growingOf(view, view.plantsAt(position));
                    plants.insert(plants.end(), there.begin(), there.end());
                }
            }
        }
        if (plants.size() == 1) {
            return treeOf(view, plants.front());
        }
        return plants.empty() ? noTree(wanted) : severalTrees(view, wanted, plants);
    }
    const std::string folded = foldedForSearch(wanted);
    std::vector<Index> tagged;
    for (Index plant = 0; plant < view.plants().size() && !folded.empty(); ++plant) {
        const PlantEntry& entry = view.plants()[plant];
        if (!entry.erased && !entry.tag.empty() && foldedForSearch(entry.tag) == folded) {
            tagged.push_back(plant);
        }
    }
    const auto plants = growingOf(view, tagged);
    if (plants.size() == 1) {
        return treeOf(view, plants.front());
    }
    return plants.empty() ? noTree(wanted) : severalTrees(view, wanted, plants);
}

Result<NamedFruit> fruitNamed(const OrchardView& view, std::string_view typed) {
    NamedFruit fruit;
    const std::size_t at = typed.find('@');
    auto tree = treeNamed(view, typed.substr(0, at));
    if (!tree) {
        return tree.problem();
    }
    fruit.tree = *tree;
    if (at == std::string_view::npos) {
        return fruit;
    }
    if (!fruit.tree.genotype) {
        return Problem{ProblemCode::badInput,
                       "Bought fruit needs a name, and this tree is not identified.",
                       "Type what the fruit is said to be before the @, its source behind it.",
                       {}};
    }
    fruit.bought = true;
    fruit.tree.plant.reset();
    fruit.source = std::string(trimmed(typed.substr(at + 1)));
    return fruit;
}

} // namespace pipwright
