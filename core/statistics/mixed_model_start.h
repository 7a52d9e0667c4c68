#pragma once

#include "core/statistics/mixed_model_counts.h"
#include "core/statistics/mixed_model_scaling.h"

#include <vector>

namespace pipwright {

/// The fixed part of a model by itself.
struct FixedSpace {
    std::vector<bool> dropped; ///< of each unknown; only fixed ones ever are
    std::int32_t rank = 0;
    std::vector<double> leastSquares; ///< of each fixed unknown, from the first
    double restSquares = 0;           ///< squares left by least squares, above or about 0
};

/// Finds columns that are linear combinations of earlier ones (in the order of the model), by
/// Cholesky factors of X'X: a column goes when less than 1e-10 of its squares is left.
FixedSpace examineFixed(const ModelRecords& records, const EquationCounts& counts);

/// Variances to begin a search with: those of one-way analyses of variance of each random term on
/// what least squares leaves (Searle, Casella & McCulloch 1992, Variance Components, ch. 3), in
/// the units of the scaled response, never quite 0. Values held replace them; priors lend theirs.
VarianceState startingState(const ModelRecords& records, const EquationCounts& counts,
                            const FixedSpace& fixed, const std::vector<VarianceChoice>& termChoices,
                            const std::vector<VarianceChoice>& groupChoices,
                            const std::vector<double>& meanRelationship);

/// A matrix L with L L' = S for a symmetric S (k x k, rows in a row) without negative eigenvalues.
std::vector<double> covarianceRoot(const std::vector<double>& covariance, std::int32_t width);

} // namespace pipwright
