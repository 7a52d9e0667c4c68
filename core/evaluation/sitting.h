#pragma once

#include "core/evaluation/tree_life.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace pipwright {

/// A sitting as it was held (or the bites of a day together): lots in serving order, with every
/// score, those that no longer count apart.
struct Sitting {
    std::vector<Tasting> tastings;
    std::vector<TastedLot> lots;
    std::vector<PersonId> tasters;   ///< of scores that count, by name
    std::vector<Score> voidedScores; ///< of the same lots
};

/// Reads these tastings with all that belongs to them.
Result<Sitting> readSitting(const OrchardView& view, const Store& store,
                            std::span<const TastingId> tastings);

/// The genotype of a lot: what its plant is held to be, or what bought fruit is said to be.
std::optional<Index> genotypeOf(const OrchardView& view, const Lot& lot);
/// "AT17-014", "Ash Tarn (farm shop)", "unknown fruit".
std::string fruitName(const OrchardView& view, const Lot& lot);

/// The likings of a lot as eaten.
struct LotLiking {
    int n = 0;
    double mean = 0;
    double low = 0;
    double high = 0;
};
/// Nothing when nobody gave a liking.
std::optional<LotLiking> likingOf(const TastedLot& lot);

/// How one taster used the scale, over the lots that others tasted too.
struct TasterLevel {
    PersonId taster;
    int lots = 0;
    double offset = 0; ///< mean of own liking minus the lot's mean
};

/// How far the tasters of a sitting were apart.
struct TasterSpread {
    int lots = 0; ///< lots with two likings or more
    /// Points: root of the pooled variance of likings within a lot (sum of squared deviations from
    /// the lot's mean over the sum of n - 1), by two or more tasters.
    double standardDeviation = 0;
    std::vector<TasterLevel> levels; ///< in the order of Sitting::tasters
};
/// Nothing when no lot was tasted by two.
std::optional<TasterSpread> tasterSpread(const Sitting& sitting);

/// The same genotype served more than once in one sitting: what a taster's score is worth.
struct RepeatServing {
    std::string name; ///< of the genotype
    int servings = 0;
    int pairs = 0;      ///< pairs of likings by the same taster
    double meanGap = 0; ///< mean of their absolute differences, points
    double largestGap = 0;
};
std::vector<RepeatServing> repeatServings(const OrchardView& view, const Sitting& sitting);

} // namespace pipwright
