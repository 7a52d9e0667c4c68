#pragma once

#include "core/orchard/tastings.h"

#include <optional>
#include <vector>

namespace pipwright {

/// Why a lot does not fairly stand for its genotype (job of the trade: an over-ripe, fallen or
/// long-kept fruit tells little of what the tree can do).
enum class Unfairness {
    pickedEarly,
    fallen,
    hurt,
    underRipe,
    overRipe,
    keptTooLong,
    bagged,
    firstCrop,
    originUnknown,
    ripenessUnknown,
};

/// Whether a lot is a fair test of its genotype, and if not, every reason.
struct Fairness {
    std::vector<Unfairness> reasons; ///< empty: fair
    bool unclear = false;            ///< only unknowns speak against it

    [[nodiscard]] bool fair() const { return reasons.empty(); }
};

/// So many days off the tree a lot still speaks for fresh fruit.
inline constexpr int kFairDays = 7;

/// Fair is: picked ripe or shaken, sound, no opaque bag, eaten in its prime (early to late), at
/// most seven days off the tree (regional apple trial protocol NE-183, 1998: taste within 7 days of
/// picking), and not the tree's first crop. What is unknown is no fair test, but only unclear.
Fairness fairnessOf(const Lot& lot);

/// Days between leaving the tree and the bite, along all parts of the path; nothing if unknown.
std::optional<int> daysOffTree(const Lot& lot);

} // namespace pipwright
