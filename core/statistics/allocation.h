#pragma once

#include "core/units/result.h"

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

/// Sharing out what is scarce: grafts, stocks, places in a row.
namespace pipwright {

/// A tree to be propagated.
struct WantedTree {
    double worth = 0;  ///< of having it alive at least once, 0 or more
    double chance = 0; ///< that one graft takes, 0 to 1
};

struct SharedGrafts {
    std::vector<int> grafts{}; ///< for each wish
    double expectedWorth = 0;  ///< sum of worth x (1 - (1 - chance)^grafts)
};

/// Shares `grafts` out so that the expected worth is largest. Every further graft of a tree adds
/// less than the one before, so giving each to the tree where it adds most is optimal (Fox 1966,
/// Management Science 13:210-216). Of equal gains the earlier wish has it.
/// Problem: negative numbers, chances outside 0 to 1, more than a million grafts.
Result<SharedGrafts> shareOutGrafts(std::span<const WantedTree> wishes, int grafts,
                                    std::optional<int> mostOfEach = std::nullopt);

/// Something to be done or not.
struct Choice {
    double worth = 0;
    int cost = 0; ///< in whole units of what is scarce
};

struct ChosenSet {
    std::vector<std::size_t> chosen{}; ///< places in the list, in order
    double worth = 0;
};

/// The set of choices with the largest summed worth whose costs stay within `budget`: the 0/1
/// knapsack by dynamic programming (Bellman 1957), exact.
/// Problem: negative numbers, more than 10^8 choices x budget.
Result<ChosenSet> bestWithinBudget(std::span<const Choice> choices, int budget);

} // namespace pipwright
