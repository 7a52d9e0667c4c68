#pragma once

#include "core/statistics/restricted_likelihood.h"

#include <vector>

namespace pipwright {

/// What is known of the criterion around a point: enough for one step. One number (of the
/// information one row and column) for each parameter.
struct StepModel {
    std::vector<SearchParameter> parameters;
    std::vector<double> gradient;
    std::vector<double> information;
    /// What would be expected of the information if levels were independent: q d^2 of a variance,
    /// 2 q d_1 d_2 of a covariance, d = (q - T) / q. A step is damped by adding a share of it.
    std::vector<double> expected;
    std::vector<double> leastDamping; ///< the share that is always added
    std::vector<double> low;          ///< how far a variance may shrink and
    std::vector<double> high;         ///< grow, relatively; not used of covariances

    void clear() { *this = {}; }
};

/// What a step without limits would gain. The limited one can promise less than nothing where an
/// axis that shrinks takes its covariances along, and that is no end of the search.
double promisedGain(const StepModel& model);

/// The step that information and gradient ask for, variances held to their limits and the others
/// set right for that; `damping` 0 or more.
std::vector<double> limitedStep(const StepModel& model, double damping);

} // namespace pipwright
