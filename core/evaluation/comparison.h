#pragma once

#include "core/evaluation/orchard_view.h"
#include "core/evaluation/tree_life.h"

#include <optional>
#include <string>
#include <vector>

namespace pipwright {

/// One score of one taster, as eaten, with what decides how far it speaks.
struct ComparedScore {
    Date date;
    int cropYear = 0;
    PersonId taster;
    double liking = 0; ///< 1 to 9, as eaten
    bool fair = false;
    bool unclear = false;
    Sight sight = Sight::unknown;
    Ripeness ripeness = Ripeness::unknown;
    std::string words;
};

/// A trait over all observations of a genotype: n values, their mean and their range. On ordinal
/// scales the value is the state's rank.
struct ComparedTrait {
    TraitId trait;
    int count = 0;
    double mean = 0;
    double lowest = 0;
    double highest = 0;
    /// Standard error of the mean, from two values on.
    std::optional<double> standardError;
};

/// When a genotype was first seen ripe, over its crop years.
struct ComparedSeason {
    std::optional<int> usualWeek;   ///< ISO week number of the median first ripe day
    std::vector<LifeYear> years;    ///< with their windows
    std::optional<int> earliestDay; ///< day of the crop year, 1 = 1 January of it
    std::optional<int> latestDay;
    std::optional<double> usualLength; ///< days from first ripe to over, mean of years that tell
};

/// One column of Compare.
struct ComparedGenotype {
    Index genotype = 0;
    std::optional<Index> plant;
    TreeLife life;
    std::string purdy;
    std::vector<ComparedScore> scores; ///< by date
    std::vector<ComparedTrait> traits; ///< by the order of the dictionary
    ComparedSeason season;
    GenotypeFacts facts;
    /// Mean of the fair scores and of all; nothing without any.
    std::optional<ComparedTrait> fairLiking;
    std::optional<ComparedTrait> anyLiking;
};

/// Two to eight genotypes side by side.
struct Comparison {
    std::vector<ComparedGenotype> columns;
    std::vector<TraitId> traits; ///< those any column has a value for, in the dictionary's order
};

Result<Comparison> compare(const OrchardView& view, const Store& store,
                           const std::vector<Index>& genotypes);

/// Benchmarks of the same species by how near their usual harvest week is; those within two weeks
/// come first, those of unknown season last. Not the genotype itself.
struct NearBenchmark {
    Index genotype = 0;
    std::optional<int> weeksApart; ///< nothing when either season is unknown
};
std::vector<NearBenchmark> benchmarksNear(const OrchardView& view, Index genotype);

/// The Purdy line of a genotype, three generations back.
Result<std::string> purdyLine(const OrchardView& view, Index genotype);

} // namespace pipwright
