#pragma once

#include "core/statistics/mixed_model_fit.h"

#include <optional>

namespace pipwright {

/// Bounds of a variance component; both 0 or above.
struct VarianceInterval {
    double low = 0;
    std::optional<double> high; ///< nothing: the data set no upper bound
};

/// Profile-likelihood interval of a single variance (of a term without slopes, or a residual
/// group): the values at which holding it raises the minimised criterion by less than the
/// chi-square quantile of one degree of freedom. `component` counts in
/// MixedFit::varianceComponents of `fit`, which must come from `equations`.
/// Problem badInput: a covariance or a held component, or a confidence outside (0, 1).
/// Venzon & Moolgavkar (1988), Appl. Statist. 37:87-94.
Result<VarianceInterval> profileInterval(const MixedModelEquations& equations, const MixedFit& fit,
                                         std::int32_t component, double confidence,
                                         const FitControl& control = {});

/// A comparison of two nested models by their likelihoods.
struct LikelihoodRatio {
    double statistic = 0; ///< difference of the criteria, 0 or above
    std::int32_t degreesOfFreedom = 0;
    double pValue = 1;
    /// With the half-and-half mixture of chi-squares that holds when the one variance left out is
    /// tested against 0 (Self & Liang 1987, J. Am. Stat. Assoc. 82:605-610); nothing otherwise.
    std::optional<double> boundaryPValue{};
};

/// Compares `smaller` with `larger`, which must be of the same records and the same likelihood;
/// with REML also of the same fixed terms. Problem badInput otherwise, as far as it can be seen.
Result<LikelihoodRatio> compareLikelihoods(const MixedFit& smaller, const MixedFit& larger);

} // namespace pipwright
