#pragma once

#include "core/statistics/mixed_model_fit.h"
#include "core/statistics/mixed_model_search.h"
#include "core/statistics/mixed_model_start.h"
#include "core/statistics/restricted_likelihood.h"

#include <memory>
#include <vector>

namespace pipwright {

/// What a term is known by once its records are read.
struct TermSheet {
    std::string name;
    std::int32_t levels = 0;
    std::int32_t width = 1;
    std::vector<double> relationshipDiagonal; ///< empty: all 1
    double meanRelationship = 1;
};

/// What is made once of a model. Parts that do not change are shared among copies.
struct MixedModelEquations::Content {
    std::shared_ptr<const ModelRecords> records;
    std::shared_ptr<const EquationCounts> counts;
    std::shared_ptr<const EquationPlan> plan;
    std::vector<TermSheet> terms;
    std::vector<std::int32_t> fixedLevels; ///< of each fixed term; 0 for covariates
    std::vector<DisconnectedParts> disconnected;
    bool intercept = true;
    FixedSpace fixed;
    std::vector<VarianceChoice> termChoices;
    std::vector<VarianceChoice> groupChoices;
};

struct MixedFit::Content {
    std::shared_ptr<const MixedModelEquations::Content> equations;
    std::shared_ptr<const SparseCholesky> factor;
    VarianceState state;   ///< in units of the scaled response
    double fixedScale = 1; ///< see RestrictedLikelihood::takeFactor

    LikelihoodKind likelihood = LikelihoodKind::restricted;
    double criterion = 0;
    double penalty = 0;
    bool converged = true;
    int iterations = 0;
    std::vector<VarianceComponent> components;
    std::vector<double> componentCovariance;
    std::vector<FixedEffect> fixedEffects;
    std::vector<RandomEffects> randomEffects;
};

/// Everything a fit tells, from a likelihood that stands at its final point.
std::shared_ptr<MixedFit::Content>
gatherFit(const std::shared_ptr<const MixedModelEquations::Content>& equations,
          RestrictedLikelihood& likelihood, LikelihoodKind kind, const SearchEnd& end);

/// The pairs of crossed factors whose levels fall into several parts.
std::vector<DisconnectedParts> findDisconnected(const ModelRecords& records);

} // namespace pipwright
