#include "core/statistics/mixed_model_content.h"
#include "core/statistics/subscript.h"

#include <cmath>
#include <utility>

namespace pipwright {

namespace {

Problem noSuchEffect() {
    return {ProblemCode::badInput, "The contrast names an effect the model does not have.",
            "Name terms and levels of the model.", "contrast"};
}

/// Adds a part of a contrast to the coefficients of the unknowns.
Outcome addPart(const MixedModelEquations::Content& equations, const ContrastPart& part,
                std::vector<double>& coefficients) {
    const ModelRecords& records = *equations.records;
    const EffectRef& effect = part.effect;
    if (!std::isfinite(part.coefficient)) {
        return noSuchEffect();
    }
    if (effect.kind == EffectRef::Kind::random) {
        if (effect.term < 0 || at(effect.term) >= equations.terms.size()) {
            return noSuchEffect();
        }
        const DesignFamily& family = records.families[at(effect.term)];
        if (effect.level < 0 || effect.level >= family.levels || effect.effect < 0 ||
            effect.effect >= family.width) {
            return noSuchEffect();
        }
        coefficients[at(family.firstUnknown + effect.level * family.width + effect.effect)] +=
            part.coefficient;
        return {};
    }
    if (effect.kind == EffectRef::Kind::fixed) {
        if (effect.term < 0 || at(effect.term) >= equations.fixedLevels.size()) {
            return noSuchEffect();
        }
        const std::int32_t levels = equations.fixedLevels[at(effect.term)];
        if (effect.level < 0 || effect.level >= std::max(levels, 1) || effect.effect != 0) {
            return noSuchEffect();
        }
    } else if (!equations.intercept) {
        return noSuchEffect();
    }
    for (const FixedColumn& column : records.fixedColumns) {
        if (effect.kind == EffectRef::Kind::intercept && column.centre != 0) {
            coefficients[at(column.unknown)] -= part.coefficient * column.centre;
        }
        if (column.effect == effect) {
            coefficients[at(column.unknown)] += part.coefficient;
        }
    }
    return {}; // a level without a column is the one others are compared with: 0
}

/// L'c for several contrasts, numbers of one unknown together, in the units of the factor.
Result<std::vector<double>> contrastSides(const MixedFit::Content& fit,
                                          const ScaledEquations& scaled,
                                          std::span<const Contrast> contrasts) {
    const MixedModelEquations::Content& equations = *fit.equations;
    const std::size_t unknowns = at(equations.records->unknowns());
    const std::size_t count = contrasts.size();
    std::vector<double> sides(unknowns * count, 0.0);
    for (std::size_t k = 0; k < count; ++k) {
        std::vector<double> coefficients(unknowns, 0.0);
        for (const ContrastPart& part : contrasts[k]) {
            if (Outcome outcome = addPart(equations, part, coefficients); !outcome) {
                return outcome.problem();
            }
        }
        scaled.scaleSide(fit.state, coefficients);
        for (std::size_t unknown = 0; unknown < unknowns; ++unknown) {
            const bool fixed = unknown >= at(equations.records->randomUnknowns);
            sides[unknown * count + k] = coefficients[unknown] * (fixed ? fit.fixedScale : 1.0);
        }
    }
    return sides;
}

} // namespace

Result<std::vector<double>>
MixedFit::contrastCovariances(std::span<const Contrast> contrasts) const {
    const MixedModelEquations::Content& equations = *m_content->equations;
    const ModelRecords& records = *equations.records;
    const std::size_t count = contrasts.size();
    const ScaledEquations scaled(records, *equations.counts, equations.fixed.dropped);
    // var(c'(u_hat - u)) = (L'c)' C^-1 (L'c).
    const Result<std::vector<double>> sides = contrastSides(*m_content, scaled, contrasts);
    if (!sides) {
        return sides.problem();
    }
    std::vector<double> covariances(count * count, 0.0);
    m_content->factor->subtractProducts(*sides, static_cast<std::int32_t>(count), covariances);
    for (double& number : covariances) {
        number *= -records.scale * records.scale;
    }
    return covariances;
}

Result<std::vector<double>> MixedFit::contrastCovariancesWith(std::span<const Contrast> contrasts,
                                                              std::int32_t term) const {
    const MixedModelEquations::Content& equations = *m_content->equations;
    const ModelRecords& records = *equations.records;
    if (term < 0 || at(term) >= equations.terms.size()) {
        return noSuchEffect();
    }
    const ScaledEquations scaled(records, *equations.counts, equations.fixed.dropped);
    Result<std::vector<double>> sides = contrastSides(*m_content, scaled, contrasts);
    if (!sides) {
        return sides.problem();
    }
    // cov(c'(u_hat - u), u_hat - u) = (L'c)' C^-1 L'.
    const std::size_t count = contrasts.size();
    m_content->factor->solve(*sides, static_cast<std::int32_t>(count));
    const DesignFamily& family = records.families[at(term)];
    const std::size_t effects = at(family.levels) * at(family.width);
    std::vector<double> covariances(count * effects, 0.0);
    std::vector<double> column(at(records.unknowns()), 0.0);
    for (std::size_t k = 0; k < count; ++k) {
        for (std::size_t unknown = 0; unknown < column.size(); ++unknown) {
            column[unknown] = (*sides)[unknown * count + k];
        }
        scaled.toEffects(m_content->state, column);
        for (std::size_t effect = 0; effect < effects; ++effect) {
            covariances[k * effects + effect] =
                column[at(family.firstUnknown) + effect] * records.scale * records.scale;
        }
    }
    return covariances;
}

Result<UncertainValue> MixedFit::contrast(const Contrast& contrast) const {
    const Result<std::vector<double>> variance = contrastCovariances({&contrast, 1});
    if (!variance) {
        return variance.problem();
    }
    UncertainValue result;
    for (const ContrastPart& part : contrast) {
        const EffectRef& effect = part.effect;
        if (effect.kind == EffectRef::Kind::random) {
            result.value += part.coefficient * randomEffects()[at(effect.term)].prediction(
                                                   effect.level, effect.effect);
            continue;
        }
        for (const FixedEffect& fixed : fixedEffects()) {
            if (fixed.effect == effect) {
                result.value += part.coefficient * fixed.estimate;
            }
        }
    }
    result.standardError = std::sqrt(std::max((*variance)[0], 0.0));
    return result;
}

double RandomEffects::prediction(std::int32_t level, std::int32_t effect) const {
    return predictions[at(level) * at(effectsPerLevel) + at(effect)];
}

double RandomEffects::errorVariance(std::int32_t level, std::int32_t effect) const {
    const std::size_t width = at(effectsPerLevel);
    return errorCovariance[(at(level) * width + at(effect)) * width + at(effect)];
}

double RandomEffects::standardError(std::int32_t level, std::int32_t effect) const {
    return std::sqrt(std::max(errorVariance(level, effect), 0.0));
}

double RandomEffects::reliability(std::int32_t level, std::int32_t effect) const {
    return reliabilities[at(level) * at(effectsPerLevel) + at(effect)];
}

LikelihoodKind MixedFit::likelihood() const {
    return m_content->likelihood;
}
double MixedFit::criterion() const {
    return m_content->criterion;
}
double MixedFit::penalty() const {
    return m_content->penalty;
}
bool MixedFit::converged() const {
    return m_content->converged;
}
int MixedFit::iterations() const {
    return m_content->iterations;
}
std::int64_t MixedFit::recordsUsed() const {
    return static_cast<std::int64_t>(m_content->equations->records->count());
}
std::int64_t MixedFit::recordsLeftOut() const {
    return m_content->equations->records->given - recordsUsed();
}
std::int32_t MixedFit::fixedRank() const {
    return m_content->equations->fixed.rank;
}
std::int64_t MixedFit::residualDegreesOfFreedom() const {
    return recordsUsed() - fixedRank();
}

std::int32_t MixedFit::estimatedVarianceCount() const {
    std::int32_t count = 0;
    for (const VarianceComponent& component : m_content->components) {
        count += component.held ? 0 : 1;
    }
    return count;
}

double MixedFit::akaikeCriterion() const {
    const bool full = likelihood() == LikelihoodKind::full;
    return criterion() + 2.0 * (estimatedVarianceCount() + (full ? fixedRank() : 0));
}

std::optional<double> MixedFit::correctedAkaikeCriterion() const {
    const bool full = likelihood() == LikelihoodKind::full;
    const auto records = static_cast<double>(full ? recordsUsed() : residualDegreesOfFreedom());
    const double estimated = estimatedVarianceCount() + (full ? fixedRank() : 0);
    const double left = records - estimated - 1;
    if (!(left > 0)) {
        return std::nullopt;
    }
    return akaikeCriterion() + 2 * estimated * (estimated + 1) / left;
}

double MixedFit::bayesCriterion() const {
    const bool full = likelihood() == LikelihoodKind::full;
    const auto records = static_cast<double>(full ? recordsUsed() : residualDegreesOfFreedom());
    return criterion() + std::log(records) * (estimatedVarianceCount() + (full ? fixedRank() : 0));
}

const std::vector<VarianceComponent>& MixedFit::varianceComponents() const {
    return m_content->components;
}

double MixedFit::variance(std::int32_t term, std::int32_t effect) const {
    for (const VarianceComponent& component : m_content->components) {
        if (component.term == term && component.row == effect && component.column == effect) {
            return component.value;
        }
    }
    return 0;
}

double MixedFit::residualVariance(std::int32_t group) const {
    for (const VarianceComponent& component : m_content->components) {
        if (component.isResidual() && component.group == group) {
            return component.value;
        }
    }
    return 0;
}

const std::vector<double>& MixedFit::varianceComponentCovariance() const {
    return m_content->componentCovariance;
}
const std::vector<FixedEffect>& MixedFit::fixedEffects() const {
    return m_content->fixedEffects;
}
const std::vector<RandomEffects>& MixedFit::randomEffects() const {
    return m_content->randomEffects;
}
const std::vector<DisconnectedParts>& MixedFit::disconnectedParts() const {
    return m_content->equations->disconnected;
}

} // namespace pipwright
