#include "core/evaluation/merit/merit_priors.h"

#include <cmath>

namespace pipwright {

namespace {

// Squared points of a 9-point scale; see likingPriors.
constexpr double kGenotype = 0.80;
constexpr double kLikingTotal = 3.0; // of single scores, all terms together

MeritPriors partsOf(double scale) {
    MeritPriors priors;
    priors.of(MeritTerm::genotype) = {kGenotype * scale, 4};
    priors.of(MeritTerm::genotypeYear) = {0.25 * scale, 6};
    priors.of(MeritTerm::plant) = {0.05 * scale, 8};
    priors.of(MeritTerm::lot) = {0.30 * scale, 6};
    priors.of(MeritTerm::taster) = {0.45 * scale, 4};
    priors.of(MeritTerm::sitting) = {0.15 * scale, 6};
    priors.of(MeritTerm::cropYear) = {0.10 * scale, 6};
    priors.residual = {1.0 * scale, 6};
    return priors;
}

} // namespace

MeritPriors likingPriors() {
    MeritPriors priors = partsOf(1);
    priors.level = MeritPriors::Level{5.5, 1.5};
    const auto classes = conditionClasses();
    priors.conditions.assign(classes.begin(), classes.end());
    return priors;
}

MeritPriors traitPriors(double variance) {
    const double scale = variance / kLikingTotal;
    MeritPriors priors = partsOf(scale);
    const auto classes = conditionClasses();
    priors.conditions.assign(classes.begin(), classes.end());
    for (ConditionClass& one : priors.conditions) {
        one.sd = std::hypot(one.mean, one.sd) * std::sqrt(scale);
        one.mean = 0;
    }
    return priors;
}

} // namespace pipwright
