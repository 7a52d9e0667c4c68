#pragma once

#include "core/units/result.h"

#include <cstdint>
#include <vector>

namespace pipwright {

inline constexpr int kMostLotsServed = 12;
inline constexpr int kMostTasters = 12;

/// How often something happens over all tasters: seldom and often may be as far apart as the
/// numbers force them (nothing or once, when there are fewer tasters than lots), and no further.
struct ServingEvenness {
    int fewest = 0;
    int most = 0;
    /// Sum of the squared differences from an even share, less the smallest sum that whole numbers
    /// allow. 0: no order is more even.
    double imbalance = 0;

    bool operator==(const ServingEvenness&) const = default;
};

/// Who tastes which lot when.
struct ServingOrders {
    int lots = 0;
    std::vector<std::vector<int>> rows; ///< a row a taster: lots from 0, first served first
    ServingEvenness places;             ///< how often a lot stands in a place
    ServingEvenness followings;         ///< how often a lot directly follows another

    /// Of both. 0: position and carry-over are as even as these numbers of lots and tasters allow.
    [[nodiscard]] double imbalance() const { return places.imbalance + followings.imbalance; }
    /// Every lot as often in every place, and as often after every other lot.
    [[nodiscard]] bool isPerfect() const {
        return places.fewest == places.most && followings.fewest == followings.most;
    }
};

/// Orders in which each lot stands as often as possible equally often in each place and directly
/// after each other lot, so that neither tiredness nor contrast falls on one of them (MacFie,
/// Bratchell, Greenhoff and Vallis 1989, J. Sensory Studies 4:129-148). They are rows of the
/// squares of Williams (1949, Aust. J. Sci. Res. A 2:149-168): one square of n tasters when n is
/// even, a pair of squares of 2n when n is odd. Where rows of those cannot be even (few tasters of
/// an odd number of lots), a search with a fixed beginning goes on from them; what is left is told
/// as `imbalance`. Lots stand for themselves: shuffle them with `shuffled`. Problem: not 2 to 12
/// lots, not 1 to 12 tasters.
Result<ServingOrders> servingOrders(int lots, int tasters);

/// The same orders with lots and tasters changed about by chance: as even as before. The same draw
/// gives the same orders on every machine. When `first` and `second` are two servings of the same
/// fruit (-1: none are), they are kept as far apart as a hundred tries find.
ServingOrders shuffled(const ServingOrders& orders, std::uint64_t draw, int first = -1,
                       int second = -1);

/// Counts how even these orders are; each row must hold every lot once.
ServingOrders counted(int lots, std::vector<std::vector<int>> rows);

/// The squares of Williams for `lots` (2 or more): that many rows when even, twice as many when
/// odd.
std::vector<std::vector<int>> williamsSquares(int lots);

} // namespace pipwright
