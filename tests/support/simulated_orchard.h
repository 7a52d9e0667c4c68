#pragma once

#include "core/evaluation/merit/merit_model.h"

#include <cstdint>
#include <vector>

namespace pipwright::test {

/// An orchard whose truth is known, to try the merit model on. All of it is invented.
struct SimulationPlan {
    int seedlings = 300;
    int benchmarks = 8;
    int families = 12;
    int cropYears = 6;
    int tasters = 3;
    int mostTastings = 6;      ///< a seedling has 1 to so many lots
    double varianceFactor = 1; ///< all true variances, in parts of those of likingPriors()
    bool cohorts = false;      ///< each fruits for four years, in the order of planting, and is
                               ///< tasted beside what ripens with it; else at any time
    // Where the truth breaks the model:
    bool skewed = false;         ///< residuals from a gamma curve, long towards poor scores
    bool ceiling = false;        ///< the level is so high that many scores stop at 9
    bool lossByGenotype = false; ///< what over-ripeness costs differs from genotype to genotype
    bool bestTastedMost = false; ///< lots go to what did well before
    double swappedLabels = 0;    ///< part of the lots that are of another seedling
};

struct SimulatedOrchard {
    MeritFamilies families;
    TraitRecords records;
    std::vector<Index> benchmarks;
    std::vector<Index> seedlings;
    std::vector<double> merit; ///< the truth, by genotype: a fair lot, average taster and day
    MeritPriors truth;         ///< the true variances, known; condition effects as believed
};

/// The same plan and seed give the same orchard.
SimulatedOrchard simulateOrchard(const SimulationPlan& plan, std::uint64_t seed);

} // namespace pipwright::test
