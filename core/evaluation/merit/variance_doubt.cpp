#include "core/evaluation/merit/variance_doubt.h"

#include "core/statistics/mixed_model_start.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace pipwright {

namespace {

/// Of the logarithm of a variance: less is not worth another fit.
constexpr double kLeastDoubt = 0.05;

/// The standard deviation of the logarithm of a variance that only a prior knows.
double priorDoubt(const VariancePrior& prior) {
    return std::isfinite(prior.weight) && prior.weight > 0 ? std::sqrt(2 / prior.weight) : 0;
}

/// The prior of a component that is one of the model's own; nothing for condition effects.
std::optional<VariancePrior> priorOf(const MeritDesign& design,
                                     const VarianceComponent& component) {
    if (component.isResidual()) {
        return design.priors.residual;
    }
    for (const MeritTerm term : kMeritTerms) {
        if (design.termAt[static_cast<std::size_t>(term)] == *component.term) {
            return design.priors.of(term);
        }
    }
    return std::nullopt;
}

/// Covariances of the logarithms of all variances, rows in a row.
std::vector<double> logCovariance(const MeritDesign& design, const MixedFit& fit) {
    const auto& components = fit.varianceComponents();
    const std::size_t count = components.size();
    const std::vector<double>& sampling = fit.varianceComponentCovariance();
    std::vector<double> covariance(count * count, 0.0);
    std::vector<double> shrink(count, 1.0);
    for (std::size_t i = 0; i < count; ++i) {
        const auto prior = priorOf(design, components[i]);
        if (!prior || !(components[i].value > 0)) {
            shrink[i] = 0;
            continue;
        }
        const double doubt = priorDoubt(*prior);
        const double found = sampling.empty() ? 0 : std::sqrt(sampling[i * count + i]);
        if (components[i].held || !(found > 0)) {
            covariance[i * count + i] = doubt * doubt;
            shrink[i] = 0;
            continue;
        }
        // The quadratic approximation may promise more doubt than there was before any data.
        const double relative = found / components[i].value;
        shrink[i] = doubt > 0 ? std::min(1.0, doubt / relative) : 1;
    }
    for (std::size_t i = 0; i < count; ++i) {
        for (std::size_t j = 0; j < count; ++j) {
            if (shrink[i] > 0 && shrink[j] > 0) {
                covariance[i * count + j] = sampling[i * count + j] * shrink[i] * shrink[j] /
                                            (components[i].value * components[j].value);
            }
        }
    }
    return covariance;
}

} // namespace

std::vector<double> meritValues(const MeritDesign& design, const MixedFit& fit) {
    double level = design.priors.level ? design.priors.level->mean : 0;
    if (design.model.intercept) {
        level += fit.fixedEffects().front().estimate;
    } else if (design.levelTerm) {
        level += fit.randomEffects()[static_cast<std::size_t>(*design.levelTerm)].prediction(0);
    }
    const std::int32_t term = design.termAt[static_cast<std::size_t>(MeritTerm::genotype)];
    std::vector<double> values = fit.randomEffects()[static_cast<std::size_t>(term)].predictions;
    for (double& value : values) {
        value += level;
    }
    return values;
}

Result<MeritMoves> varianceDoubt(const MeritDesign& design, const MixedModelEquations& equations,
                                 const MixedFit& fit, const std::stop_token& stop) {
    const auto& components = fit.varianceComponents();
    const std::size_t count = components.size();
    const std::vector<double> root =
        covarianceRoot(logCovariance(design, fit), static_cast<std::int32_t>(count));
    const std::vector<double> here = meritValues(design, fit);
    MeritMoves moves;
    for (std::size_t k = 0; k < count; ++k) {
        VarianceValues values;
        double most = 0;
        for (std::size_t i = 0; i < count; ++i) {
            const double step = root[i * count + k];
            most = std::max(most, std::abs(step));
            values.push_back(components[i].value * std::exp(step));
        }
        if (most < kLeastDoubt) {
            continue;
        }
        if (stop.stop_requested()) {
            return Problem{ProblemCode::cancelled, "The computation was stopped.",
                           "Start it again.", ""};
        }
        const Result<MixedFit> there = equations.withVariances(values);
        if (!there) {
            return there.problem();
        }
        std::vector<double> move = meritValues(design, *there);
        for (std::size_t at = 0; at < move.size(); ++at) {
            move[at] -= here[at];
        }
        moves.push_back(std::move(move));
    }
    return moves;
}

} // namespace pipwright
