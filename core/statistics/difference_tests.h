#pragma once

#include "core/units/result.h"

#include <optional>

/// Can tasters tell two fruits apart? Exact binomial forms of the triangle and paired tests.
namespace pipwright {

/// A test by forced choice and its chance of a right answer by guessing.
enum class ForcedChoice {
    triangle, ///< two alike, one odd: 1/3 (the design of ISO 4120)
    paired,   ///< one of two: 1/2 (the design of ISO 5495)
};
double guessingChance(ForcedChoice design);

/// Whether a preference for either side counts, or only one named beforehand.
enum class Sides { one, two };

/// Fewest right answers (or preferences) that guessing would reach with a chance of at most
/// `level`, halved when two-sided; nothing when even all of them would not do.
/// Problem: fewer than one or more than 10 million answers, a level not between 0 and 1.
Result<std::optional<int>> leastForDifference(ForcedChoice design, int answers, double level,
                                              Sides sides = Sides::one);

/// Most right answers with which no more than the share `distinguishers` of tasters who can tell
/// is still believed: P(X <= x) <= `level` if that share could. Nothing when even none would not
/// do.
Result<std::optional<int>> mostForSimilarity(ForcedChoice design, int answers,
                                             double distinguishers, double level);

struct DifferenceResult {
    double pValue = 1;         ///< exact
    double distinguishers = 0; ///< share of tasters who can tell, (p - g)/(1 - g), not below 0
    double low = 0;            ///< its 95 % interval, from Clopper & Pearson (1934)
    double high = 1;
};

/// `right` of `answers`. Two-sided doubles the smaller tail; only of a paired test.
Result<DifferenceResult> differenceTest(ForcedChoice design, int right, int answers,
                                        Sides sides = Sides::one);

} // namespace pipwright
