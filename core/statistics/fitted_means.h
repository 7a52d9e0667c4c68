#pragma once

#include "core/statistics/mixed_model_fit.h"

#include <vector>

namespace pipwright {

/// X b + Z u of each record of the model at the estimates of `fit`, which must be of it; NaN where
/// a record has no level of a fixed factor or a covariate is missing.
std::vector<double> fittedMeans(const MixedModel& model, const MixedFit& fit);

} // namespace pipwright
