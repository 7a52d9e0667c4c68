#pragma once

#include "core/statistics/restricted_likelihood.h"
#include "core/units/result.h"

#include <cstdint>
#include <vector>

namespace pipwright {

/// What is to be found, in the units of the scaled response.
struct SearchTask {
    std::vector<VarianceChoice> terms;
    std::vector<VarianceChoice> groups;
    double unit = 1; ///< variances of the choices times this are those of the search
};

/// The directions of a search: every number of every variance that is not held, terms first.
std::vector<SearchParameter> searchParameters(const ModelRecords& records, const SearchTask& task);

/// Where a search ended.
struct SearchEnd {
    int iterations = 0;
    bool converged = true;
    double penalty = 0;                      ///< of the priors
    std::vector<SearchParameter> parameters; ///< those free at the end
    std::vector<double> information;         ///< average information of them, relative changes
    std::vector<bool> termAtBoundary;        ///< of each random term
    std::vector<bool> groupAtBoundary;       ///< of each residual group; empty: none
    bool allHeld = false;                    ///< nothing was searched for
};

/// Minimises minus twice the log-likelihood (and the penalties of priors) from a starting point,
/// by average information steps with limits; leaves `likelihood` at the minimum.
///
/// A variance heads for 0 when the gradient there points down; it is then held just above 0, so
/// that it can return, and set to 0 at the end. For intercepts with slopes the same is done along
/// the axes of the covariance. Steps that raise the criterion are damped; when that does not help,
/// an expectation-maximisation step, which cannot raise it, is taken (Dempster, Laird & Rubin
/// 1977; Johnson & Thompson 1995, J. Dairy Sci. 78:449-456). Where all that gets nowhere the roots
/// of the variances are searched (VarianceRoots).
Result<SearchEnd> searchVariances(RestrictedLikelihood& likelihood, const ModelRecords& records,
                                  VarianceState start, const SearchTask& task,
                                  const FitControl& control);

} // namespace pipwright
