#pragma once

#include "core/units/result.h"

#include <span>

/// The mean of a few tasters.
namespace pipwright {

struct MeanInterval {
    double mean = 0;
    double deviation = 0; ///< standard deviation of the scores, n - 1
    double low = 0;       ///< mean -+ t(n-1) x deviation/sqrt(n), Student (1908)
    double high = 0;
};

/// Problem: fewer than two scores, scores that are not finite, a confidence not between 0 and 1.
Result<MeanInterval> meanInterval(std::span<const double> scores, double confidence = .95);

struct ShrunkMean {
    double value = 0;
    double weight = 0;        ///< given to the tree's own mean, 0 to 1
    double standardError = 0; ///< of the true value around `value`
};

/// A tree's own mean drawn towards the mean of its kind, w = s_g^2/(s_g^2 + s_e^2/n) (Robinson
/// 1991, Statistical Science 6:15-32); the error is sqrt(s_g^2 (1 - w)).
/// Problem: negative or two zero variances, negative counts, means that are not finite.
Result<ShrunkMean> shrunkMean(double ownMean, int records, double populationMean,
                              double geneticVariance, double residualVariance);

} // namespace pipwright
