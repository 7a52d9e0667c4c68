#pragma once

#include "core/statistics/distributions.h"
#include "core/units/result.h"

#include <cstdint>
#include <span>

/// Chances that are themselves uncertain, and losses that come together.
namespace pipwright {

/// What is believed of a chance after `successes` of `tries`: Beta(a + successes, b + failures).
/// Its mean is a/(a + b). Problem: a prior or counts that are none.
Result<BetaDistribution> updatedChance(const BetaDistribution& prior, std::int64_t successes,
                                       std::int64_t tries);
/// a/(a + b).
double meanChance(const BetaDistribution& chance);

/// The beta distribution whose mean is `mean` (between 0 and 1) and whose draws share a correlation
/// `correlation` (between 0 and 1): a = mean (1 - r)/r, b = (1 - mean)(1 - r)/r.
Result<BetaDistribution> correlatedChance(double mean, double correlation);

/// P(X = k) and P(X >= k) of `tries` whose common chance is drawn from `chance` (Skellam 1948).
/// Problem: impossible numbers, more than a million tries.
Result<double> betaBinomialProbability(const BetaDistribution& chance, std::int64_t successes,
                                       std::int64_t tries);
Result<double> betaBinomialAtLeast(const BetaDistribution& chance, std::int64_t successes,
                                   std::int64_t tries);

/// Chance that all `copies` of a tree are lost within `years`, each independently with `yearlyLoss`
/// a year and none replaced: (1 - (1 - q)^y)^c.
Result<double> chanceAllLost(double yearlyLoss, int copies, int years);

/// The same for one span of time with a cause common to all copies (a frost, a flood, one site):
/// m + (1 - m) q^c. More copies in one place soon stop helping.
Result<double> chanceAllLostTogether(double ownLoss, double commonLoss, int copies);

/// Chance that all copies fail when their failures are correlated (`loss` as correlatedChance()).
Result<double> chanceAllLost(const BetaDistribution& loss, int copies);

} // namespace pipwright
