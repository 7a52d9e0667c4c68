#include "core/statistics/selection_index.h"

#include "core/statistics/refusal.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <optional>
#include <string>

namespace pipwright {

namespace {

std::optional<Problem> faultOf(const TraitCovariances& traits, std::span<const double> weights) {
    const std::size_t count = weights.size();
    if (count == 0) {
        return unusable("An index needs at least one trait.", "Choose one.");
    }
    if (traits.phenotypic.rows() != count || traits.genetic.rows() != count ||
        traits.phenotypic.columns() != count || traits.genetic.columns() != count) {
        return unusable("The covariances and the weights are not of the same traits.",
                        "Give one row, one column and one weight for each trait.");
    }
    if (!choleskyFactor(traits.phenotypic, Definiteness::semidefinite) ||
        !choleskyFactor(traits.genetic, Definiteness::semidefinite)) {
        return unusable("These are no covariances: some combination of traits would have a "
                        "variance below 0, or a number is missing.",
                        "Check the variances and correlations.");
    }
    if (!std::all_of(weights.begin(), weights.end(), [](double w) { return std::isfinite(w); }) ||
        std::all_of(weights.begin(), weights.end(), [](double w) { return w == 0; })) {
        return unusable("The weights must be finite, and one of them other than 0.",
                        "Say what a unit of each trait is worth.");
    }
    return std::nullopt;
}

Result<SelectionIndex> described(const TraitCovariances& traits, std::span<const double> weights,
                                 std::vector<double> coefficients) {
    SelectionIndex index;
    index.coefficients = std::move(coefficients);
    const auto& b = index.coefficients;
    const double indexVariance = traits.phenotypic.form(b, b);
    const double goalVariance = traits.genetic.form(weights, weights);
    if (!(indexVariance > 0) || !(goalVariance > 0)) {
        return unusable("Nothing in the goal varies, or no measured trait tells of it.",
                        "Give genetic variances above 0.");
    }
    index.indexDeviation = std::sqrt(indexVariance);
    index.goalDeviation = std::sqrt(goalVariance);
    index.responses = traits.genetic.times(b);
    for (double& response : index.responses) {
        response /= index.indexDeviation;
    }
    index.accuracy = dot(weights, index.responses) / index.goalDeviation;
    for (std::size_t i = 0; i < b.size(); ++i) {
        if (b[i] * weights[i] < 0) {
            index.turnedTraits.push_back(i);
        }
    }
    return index;
}

} // namespace

Result<SelectionIndex> smithHazelIndex(const TraitCovariances& traits,
                                       std::span<const double> weights,
                                       std::span<const std::size_t> measured, double ridge) {
    if (auto fault = faultOf(traits, weights)) {
        return *fault;
    }
    std::vector<bool> seen(weights.size(), false);
    for (const std::size_t trait : measured) {
        if (trait >= weights.size() || seen[trait]) {
            return unusable("A measured trait is not among the traits, or named twice.",
                            "Name each once.");
        }
        seen[trait] = true;
    }
    if (measured.empty() || !std::isfinite(ridge) || ridge < 0) {
        return unusable("An index needs a measured trait and a ridge of 0 or more.", "Give both.");
    }
    const std::size_t count = measured.size();
    DenseMatrix phenotypic(count, count);
    std::vector<double> towardsGoal(count, 0);
    const std::vector<double> genetic = traits.genetic.times(weights);
    for (std::size_t i = 0; i < count; ++i) {
        for (std::size_t j = 0; j < count; ++j) {
            phenotypic(i, j) = traits.phenotypic(measured[i], measured[j]);
        }
        phenotypic(i, i) *= 1 + ridge;
        towardsGoal[i] = genetic[measured[i]];
    }
    if (const auto repeated = firstDependentRow(phenotypic)) {
        return unusable("Trait " + std::to_string(measured[*repeated] + 1) +
                            " varies only together with the traits before it.",
                        "Leave it out of the index, or give a ridge.");
    }
    const auto inverse = inverseOfPositive(phenotypic);
    if (!inverse) {
        return unusable("The measured traits repeat each other.", "Leave one out.");
    }
    const std::vector<double> solved = inverse->times(towardsGoal);
    std::vector<double> coefficients(weights.size(), 0);
    for (std::size_t i = 0; i < count; ++i) {
        coefficients[measured[i]] = solved[i];
    }
    return described(traits, weights, std::move(coefficients));
}

Result<SelectionIndex> smithHazelIndex(const TraitCovariances& traits,
                                       std::span<const double> weights) {
    std::vector<std::size_t> all(weights.size());
    std::iota(all.begin(), all.end(), std::size_t{0});
    return smithHazelIndex(traits, weights, all);
}

Result<SelectionIndex> baseIndex(const TraitCovariances& traits, std::span<const double> weights) {
    if (auto fault = faultOf(traits, weights)) {
        return *fault;
    }
    return described(traits, weights, {weights.begin(), weights.end()});
}

} // namespace pipwright
