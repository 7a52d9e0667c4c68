#pragma once

#include "core/evaluation/orchard_view.h"
#include "core/evaluation/tree_life.h"

#include <cstdint>
#include <map>
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
    std::optional<int> daysOff; ///< the tree; nothing when not known
    StoragePath storage = StoragePath::unknown;
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
    /// How often each worded state was seen, by its rank; empty on numeric scales. A nominal scale
    /// has no mean: only these count.
    std::map<std::int64_t, int> states;
};

/// How two means differ: what is compared less what it is compared with, as observed.
struct MeanDifference {
    double difference = 0;
    double standardError = 0;
    /// The difference exceeds two standard errors.
    bool beyondDoubt = false;
};

/// The difference of two independent means, with the standard error sqrt(se1^2 + se2^2). Nothing
/// unless both have at least three values. `step` is the fineness of the scale (0.5 for liking, 1
/// for states, 0 when measured): three equal marks on a coarse scale are not certain, so no mean
/// is held to be surer than rounding allows, step / sqrt(12 n). Means are taken as eaten and as
/// seen: taster, condition and year are not yet taken out.
std::optional<MeanDifference> differenceOf(const ComparedTrait& one, const ComparedTrait& other,
                                           double step);
/// The `step` of a trait's scale; nothing for scales without order.
std::optional<double> stepOf(const Trait& trait);

/// What scores of one kind rest on.
struct ScoreGround {
    int scores = 0;
    int tasters = 0;
    int cropYears = 0;
    int sittings = 0;
};

/// What was said of the fruit, as often as it was said.
struct SaidWords {
    std::string words;
    int times = 0;
};

/// When the fruit was ripe in one crop year, in days counted from 1 January of it (that is 1), so
/// that years lie on one another and a southern season runs on past New Year.
struct ComparedWindow {
    int cropYear = 0;
    std::optional<int> stillGreen;
    std::optional<int> firstRipe;
    std::optional<int> lastRipe;
    std::optional<int> over;
};

/// When a genotype was first seen ripe, over its crop years.
struct ComparedSeason {
    std::vector<ComparedWindow> windows; ///< one for each crop year walked, oldest first
    std::optional<int> usualFirst;       ///< median of the first ripe days (usual_ripening.h)
    std::optional<int> usualLast;        ///< median of the last days it was good
};

/// How the fruit keeps, as far as lots were tasted more than kFairDays off the tree.
struct ComparedKeeping {
    std::optional<ComparedTrait> liking; ///< of kept fruit, as eaten
    std::optional<int> longestDays;      ///< of any lot that was scored
    StoragePath longestPath = StoragePath::unknown;
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
    ComparedKeeping keeping;
    GenotypeFacts facts;
    /// Mean of the fair scores and of all; nothing without any.
    std::optional<ComparedTrait> fairLiking;
    std::optional<ComparedTrait> anyLiking;
    ScoreGround fairGround;
    ScoreGround anyGround;
    std::vector<SaidWords> said; ///< most used first
};

/// Two to eight genotypes side by side.
struct Comparison {
    std::vector<ComparedGenotype> columns;
    std::vector<TraitId> traits; ///< those any column has a value for, in the dictionary's order
};

Result<Comparison> compare(const OrchardView& view, const Store& store,
                           const std::vector<Index>& genotypes);
/// One column of it.
Result<ComparedGenotype> compared(const OrchardView& view, const Store& store, Index genotype);
/// The columns, with the traits any of them has a value for.
Comparison sideBySide(const OrchardView& view, std::vector<ComparedGenotype> columns);

/// A benchmark of the same species, and by how many days its usual first ripe day is later than
/// the genotype's (negative: earlier).
struct NearBenchmark {
    Index genotype = 0;
    std::optional<int> daysLater; ///< nothing when either season is unknown

    /// They ripen within the same two weeks: fourteen days or less lie between them.
    [[nodiscard]] bool isWithinFortnight() const {
        return daysLater && *daysLater >= -14 && *daysLater <= 14;
    }
};
/// The nearest first, those of unknown season last; not the genotype itself.
std::vector<NearBenchmark> benchmarksNear(const OrchardView& view, Index genotype);

/// The Purdy line of a genotype, three generations back; empty when they hold a ring.
std::string purdyLine(const OrchardView& view, Index genotype);

} // namespace pipwright
