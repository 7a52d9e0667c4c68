#pragma once

#include "core/statistics/mixed_model_fit.h"

#include <string>
#include <vector>

namespace pipwright::published {

/// A model of published data and what it must come to, by restricted likelihood.
struct ReferenceFit {
    std::string name{};
    MixedModel model{};
    double criterion = 0;
    std::vector<double> variances{};                ///< as MixedFit::varianceComponents
    std::vector<UncertainValue> fixed{};            ///< as MixedFit::fixedEffects
    std::vector<std::vector<double>> predictions{}; ///< as MixedFit::randomEffects
};

std::vector<ReferenceFit> referenceFits();

} // namespace pipwright::published
