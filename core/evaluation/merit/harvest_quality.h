#pragma once

#include "core/evaluation/merit/keeping_by_genotype.h"
#include "core/evaluation/merit/slots.h"

#include <optional>
#include <span>
#include <vector>

/// What there is to eat, week by week: merit while the fruit hangs ripe, falling with keeping after
/// it; and the best of the benchmarks of each week, the bar that a newcomer has to beat.
namespace pipwright {

/// One week of a genotype's fruit.
struct WeekQuality {
    int monday = 0;         ///< day of the crop year
    UncertainValue quality; ///< liking
    double daysKept = 0;    ///< 0: fresh from the tree
};

struct QualityCurve {
    Index genotype = 0;
    StoragePath path = StoragePath::fridge; ///< it is kept on
    std::vector<WeekQuality> weeks;         ///< in order; none where it is not to be had
};

/// Weeks begin on Mondays of the calendar of `cropYear`; a week counts by its Thursday. From the
/// window's first day to its last the quality is the merit, then the keeping curve's slope is taken
/// from it until it falls below what counts as good, or nobody looks further. Without a slope for
/// the path the fruit is not kept. Nothing when the genotype has no merit.
std::optional<QualityCurve> qualityByWeek(const MeritModel& model, const KeepingByGenotype* keeping,
                                          const BenchmarkWindow& window, StoragePath path,
                                          CropYear cropYear);

/// The bar of one week.
struct BarWeek {
    int monday = 0;
    Index genotype = 0; ///< the best to be had
    UncertainValue quality;
    double daysKept = 0;
};
/// For each week with any curve the one of highest expected quality.
std::vector<BarWeek> barByWeek(std::span<const QualityCurve> curves);

/// Where a curve lies above the bar, by expected quality, and how surely; the two counted as
/// independent, which errs on the side of doubt. Weeks without a bar count as beaten.
struct BeatenWeek {
    int monday = 0;
    double ahead = 0; ///< liking above the bar
    double chance = 1;
    bool gap = false; ///< nothing was to be had in that week
};
std::vector<BeatenWeek> beatenWeeks(const QualityCurve& curve, std::span<const BarWeek> bar);

} // namespace pipwright
