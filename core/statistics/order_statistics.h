#pragma once

#include "core/units/result.h"

#include <cstdint>

/// What to expect of the best, the second best ... of a sample from the standard normal curve.
namespace pipwright {

/// Expected value of the `rank`-th largest (1 = largest) of `size` independent standard normal
/// values, exact by quadrature to 1e-12. Problem: a rank outside 1 to `size`, `size` above 10^12.
Result<double> expectedOrderStatistic(std::int64_t rank, std::int64_t size);

/// The largest of `size`: expectedOrderStatistic(1, size).
Result<double> expectedMaximum(std::int64_t size);

/// Mean of the expected values of the `best` largest of `size`, exact. 0 when all are taken.
Result<double> expectedMeanOfBest(std::int64_t best, std::int64_t size);

/// Blom's (1958) score of the `rank`-th largest: the normal quantile at
/// (size + 1 - rank - 0.375)/(size + 0.25). Good for plots; a few thousandths off for the largest.
Result<double> blomScore(std::int64_t rank, std::int64_t size);

/// P(range of `size` independent standard normal values <= `range`): the studentised range with
/// infinitely many degrees of freedom (Tippett 1925). `size` 2 to 1000.
Result<double> rangeProbability(double range, int size);

/// The range not exceeded with `probability` (strictly between 0 and 1): q of Tukey's test.
Result<double> rangeQuantile(double probability, int size);

} // namespace pipwright
