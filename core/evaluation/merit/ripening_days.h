#pragma once

#include "core/evaluation/merit/trait_records.h"
#include "core/history/store.h"

#include <optional>
#include <vector>

/// Against whom a seedling stands depends on when it ripens, so that must be said of every one,
/// and what it rests on.
namespace pipwright {

/// What a ripening day rests on, the surest first.
enum class RipeningBasis {
    seenRipe,   ///< its usual first ripe day (usual_ripening.h)
    eatenPrime, ///< nobody marked it ripe, but fair fruit of it was eaten
    siblings,   ///< the middle of its family, from three siblings on
    parents,    ///< midway between its parents
    unknown,
};

/// A day of the crop year (usual_ripening.h) and how it is known.
struct RipeningDay {
    std::optional<int> day;
    RipeningBasis basis = RipeningBasis::unknown;

    bool operator==(const RipeningDay&) const = default;
};

/// Usual first ripe days as the view holds them, one a genotype.
std::vector<std::optional<int>> usualRipeDays(const OrchardView& view);
/// The same from what had been seen up to a day: one pass over the marks of all trees.
Result<std::vector<std::optional<int>>> usualRipeDaysAsOf(const OrchardView& view,
                                                          const Store& store, Date asOf);

/// One a genotype. Fruit counts as eaten ripe on the first day of a crop year that a fair lot of
/// it was tasted. Siblings share a cross; a parent counts with the day seen or eaten. A family's
/// day is a first guess that siblings miss by two to three weeks.
std::vector<RipeningDay> ripeningDays(const OrchardView& view,
                                      const std::vector<std::optional<int>>& usual,
                                      const TraitRecords& records);

} // namespace pipwright
