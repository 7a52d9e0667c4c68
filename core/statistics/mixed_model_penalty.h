#pragma once

#include "core/statistics/mixed_model_search.h"

#include <span>
#include <vector>

namespace pipwright {

/// The penalties of priors at a point: their sum, and slope and curvature for each parameter.
/// Formulas: see VarianceChoice. Curvatures are kept above 0.
struct Penalty {
    double value = 0;
    std::vector<double> slopes;
    std::vector<double> curvatures; ///< diagonal
};

/// Of a single variance in the units of its choice; 0 without a prior.
double priorPenalty(const VarianceChoice& choice, double variance);

double penaltyValue(const ModelRecords& records, const SearchTask& task,
                    const VarianceState& state);

Penalty penaltyAt(const ModelRecords& records, const SearchTask& task, const VarianceState& state,
                  std::span<const SearchParameter> parameters);

} // namespace pipwright
