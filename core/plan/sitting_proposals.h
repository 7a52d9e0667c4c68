#pragma once

#include "core/evaluation/orchard_view.h"
#include "core/history/planned_sitting_edits.h"
#include "core/plan/sitting_plan.h"

#include <optional>
#include <span>
#include <vector>

namespace pipwright {

/// A benchmark that may be hidden among the lots.
struct ProposedBenchmark {
    Index genotype = 0;
    std::optional<int> daysLater; ///< than the middle one of the lots; nothing when unknown
};
/// The benchmark of the same species whose usual first ripe day lies nearest to those of these
/// genotypes (the smallest sum of days over all of them, a fortnight each at most); nothing when
/// none ripens within a fortnight of any, or no season is known.
std::optional<ProposedBenchmark> proposedBenchmark(const OrchardView& view,
                                                   std::span<const Index> genotypes);

/// A lot of an earlier sitting that may be served again.
struct ProposedRepeat {
    LotToServe lot; ///< with the days since then added to where it was kept last
    int daysAgo = 0;
};
/// So many days after a sitting its fruit may still be served.
inline constexpr int kRepeatDays = 14;
/// Of the newest of these sittings (given newest first; those within kRepeatDays before `date`
/// count) the lot in its prime with the most likings; of several the one that is not liked best or
/// least, since a middling fruit tells most of noise. Not of the genotypes chosen already.
Result<std::optional<ProposedRepeat>> proposedRepeat(const OrchardView& view, const Store& store,
                                                     Date date, std::span<const Tasting> sittings,
                                                     std::span<const Index> chosen);

/// Fruit of this plant, or bought fruit of this genotype when it stands nowhere.
LotToServe fruitOf(const OrchardView& view, Index genotype);

/// What the genotype of some fruit is called by people, rather than by its tag: for benchmarks.
std::string calledBenchmark(const OrchardView& view, const LotToServe& lot);

/// The plan as it goes into the book.
PlannedSitting plannedSitting(const SittingPlan& plan, const std::string& title,
                              std::vector<Person> newPersons);

} // namespace pipwright
