#pragma once

#include "core/units/result.h"

#include <variant>

/// The distributions of the textbook, as values, with their probabilities and quantiles.
///
/// All rest on three special functions: the regularised incomplete gamma and beta functions and the
/// error function (Abramowitz & Stegun 1964, ch. 6, 7 and 26); each formula stands in
/// distributions.cpp.
namespace pipwright {

struct NormalDistribution {
    double mean = 0;
    double standardDeviation = 1; ///< above 0
};

/// Student (1908).
struct StudentDistribution {
    double degreesOfFreedom = 1; ///< above 0, not necessarily whole
};

struct ChiSquareDistribution {
    double degreesOfFreedom = 1; ///< above 0
};

/// Fisher's variance ratio.
struct VarianceRatioDistribution {
    double numeratorDegrees = 1;   ///< above 0
    double denominatorDegrees = 1; ///< above 0
};

struct BetaDistribution {
    double a = 1; ///< above 0
    double b = 1; ///< above 0
};

struct GammaDistribution {
    double shape = 1; ///< above 0
    double scale = 1; ///< above 0; the mean is shape x scale
};

struct WeibullDistribution {
    double shape = 1; ///< above 0
    double scale = 1; ///< above 0; 63.2 % lie below it
};

/// Successes among so many independent tries.
struct BinomialDistribution {
    double tries = 1;  ///< a whole number, 0 or more
    double chance = 0; ///< of a success, 0 to 1
};

/// Failures before the wanted number of successes is reached.
struct NegativeBinomialDistribution {
    double wanted = 1; ///< successes, above 0
    double chance = 1; ///< of a success, above 0, at most 1
};

using Distribution =
    std::variant<NormalDistribution, StudentDistribution, ChiSquareDistribution,
                 VarianceRatioDistribution, BetaDistribution, GammaDistribution,
                 WeibullDistribution, BinomialDistribution, NegativeBinomialDistribution>;

/// P(X <= x). `x` may be infinite, not NaN. Problem: parameters that name no distribution.
Result<double> probabilityAtMost(const Distribution& distribution, double x);

/// P(X > x), computed for itself, so that a small tail keeps its digits.
Result<double> probabilityAbove(const Distribution& distribution, double x);

/// The smallest x with P(X <= x) >= `probability`; whole for counts. At 0 and 1 the ends of the
/// range, which may be infinite. Problem: a probability outside 0 to 1, unusable parameters.
Result<double> quantile(const Distribution& distribution, double probability);

/// The standard normal curve, for loops that have checked their input: no NaN in, no NaN out.
double standardNormalDensity(double z);
/// P(Z <= z).
double standardNormalBelow(double z);
/// P(Z > z), exact far in the tail.
double standardNormalAbove(double z);
/// The z that leaves `probability` (0 to 1) below; minus and plus infinity at the ends.
double standardNormalQuantile(double probability);
/// The z that leaves `probability` (0 to 1) above; exact for tiny probabilities.
double standardNormalUpperQuantile(double probability);

/// ln of the number of ways to choose `chosen` of `all`, 0 <= chosen <= all.
double logBinomialCoefficient(double all, double chosen);

} // namespace pipwright
