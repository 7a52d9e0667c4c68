#pragma once

#include "core/pedigree/pedigree.h"
#include "core/units/result.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace pipwright {

/// A line of a pedigree as people keep it: by names, in any order. An empty parent is unknown.
struct PedigreeLine {
    std::string name;
    std::string seedParent;
    std::string pollenParent;
    std::optional<int> year{}; ///< of the bloom it came from
};

/// A pedigree and what its members are called.
struct NamedPedigree {
    Pedigree pedigree;
    std::vector<std::string> names; ///< by number; the lines in their order, then added founders
    /// Parents that had no line of their own: taken as founders.
    std::vector<int> addedFounders;

    /// The member of that name.
    [[nodiscard]] std::optional<int> find(std::string_view name) const;
};

/// Problem: a line without a name, two lines of one name, a ring (its members are named), a
/// parent that is not older than its child; `where` says the line, from 1.
Result<NamedPedigree> pedigreeOf(std::span<const PedigreeLine> lines);

/// A child that bloomed into being no later than its parent did.
struct TooYoungParent {
    int child;
    int parent;
};

/// All parents that cannot have bloomed in time, from the years the members come from (the bloom
/// of their cross); nothing is said where a year is unknown. One entry a member in `years`.
std::vector<TooYoungParent> tooYoungParents(const Pedigree& pedigree,
                                            std::span<const std::optional<int>> years);

} // namespace pipwright
