#include "core/statistics/mixed_model_content.h"
#include "core/statistics/subscript.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <utility>

namespace pipwright {

namespace {

using Equations = MixedModelEquations::Content;

/// The numbers of one random term.
RandomEffects randomEffects(const Equations& equations, const RestrictedLikelihood& likelihood,
                            std::span<const double> effects, std::size_t term) {
    const ModelRecords& records = *equations.records;
    const DesignFamily& family = records.families[term];
    const std::size_t width = at(family.width);
    const std::vector<double>& factor = likelihood.state().factors[term];
    const std::vector<double>& relationship = equations.terms[term].relationshipDiagonal;
    const double squared = records.scale * records.scale;
    RandomEffects random;
    random.effectsPerLevel = family.width;
    random.predictions.reserve(at(family.unknowns()));
    random.errorCovariance.reserve(at(family.unknowns()) * width);
    random.reliabilities.reserve(at(family.unknowns()));
    std::vector<double> block(width * width);
    std::vector<double> half(width * width);
    for (std::int32_t level = 0; level < family.levels; ++level) {
        const std::size_t first = at(family.firstUnknown + level * family.width);
        for (std::size_t a = 0; a < width; ++a) {
            random.predictions.push_back(effects[first + a] * records.scale);
            const auto slot = static_cast<std::size_t>(equations.plan->ownSlots[first + a]);
            for (std::size_t b = a; b < width; ++b) {
                block[a * width + b] = likelihood.inverse()[slot + (b - a)];
                block[b * width + a] = block[a * width + b];
            }
        }
        // L B L'.
        for (std::size_t a = 0; a < width; ++a) {
            for (std::size_t b = 0; b < width; ++b) {
                double sum = 0;
                for (std::size_t k = 0; k < width; ++k) {
                    sum += factor[a * width + k] * block[k * width + b];
                }
                half[a * width + b] = sum;
            }
        }
        for (std::size_t a = 0; a < width; ++a) {
            double prior = 0;
            double error = 0;
            for (std::size_t b = 0; b < width; ++b) {
                double sum = 0;
                for (std::size_t k = 0; k < width; ++k) {
                    sum += half[a * width + k] * factor[b * width + k];
                }
                random.errorCovariance.push_back(sum * squared);
                prior += factor[a * width + b] * factor[a * width + b];
                error = b == a ? sum : error;
            }
            prior *= relationship.empty() ? 1.0 : relationship[at(level)];
            random.reliabilities.push_back(prior > 0 ? std::clamp(1 - error / prior, 0.0, 1.0)
                                                     : 0.0);
        }
    }
    return random;
}

/// Fixed effects in the user's terms; the intercept's error comes later when there are centres.
std::vector<FixedEffect> fixedEffects(const Equations& equations,
                                      const RestrictedLikelihood& likelihood,
                                      std::span<const double> effects) {
    const ModelRecords& records = *equations.records;
    std::vector<FixedEffect> list;
    double moved = records.shift;
    for (const FixedColumn& column : records.fixedColumns) {
        FixedEffect effect;
        effect.effect = column.effect;
        effect.dropped = equations.fixed.dropped[at(column.unknown)];
        if (!effect.dropped) {
            effect.estimate = effects[at(column.unknown)] * records.scale;
            const double error = likelihood.inverse()[static_cast<std::size_t>(
                equations.plan->ownSlots[at(column.unknown)])];
            effect.standardError =
                std::sqrt(std::max(error, 0.0)) * likelihood.fixedScale() * records.scale;
            moved -= column.centre * effect.estimate;
        }
        list.push_back(effect);
    }
    if (equations.intercept && !list.empty()) {
        list.front().estimate += moved;
    }
    return list;
}

std::vector<VarianceComponent> components(const Equations& equations, const SearchEnd& end,
                                          const VarianceState& state) {
    const double squared = equations.records->scale * equations.records->scale;
    std::vector<VarianceComponent> list;
    for (std::size_t term = 0; term < equations.terms.size(); ++term) {
        const std::int32_t width = equations.terms[term].width;
        for (std::int32_t row = 0; row < width; ++row) {
            for (std::int32_t column = 0; column <= row; ++column) {
                VarianceComponent component;
                component.term = static_cast<std::int32_t>(term);
                component.row = row;
                component.column = column;
                component.value = state.covariance(term, width, row, column) * squared;
                component.held =
                    end.allHeld || equations.termChoices[term].knowledge == VarianceKnowledge::held;
                component.atBoundary = end.termAtBoundary[term];
                list.push_back(component);
            }
        }
    }
    for (std::size_t group = 0; group < equations.groupChoices.size(); ++group) {
        VarianceComponent component;
        component.group = static_cast<std::int32_t>(group);
        component.value = state.residual[group] * squared;
        component.held =
            end.allHeld || equations.groupChoices[group].knowledge == VarianceKnowledge::held;
        component.atBoundary = !end.groupAtBoundary.empty() && end.groupAtBoundary[group];
        list.push_back(component);
    }
    return list;
}

/// Inverse of a symmetric positive definite matrix, rows in a row, by Gauss-Jordan; empty when a
/// pivot vanishes.
std::vector<double> smallInverse(std::vector<double> matrix, std::size_t size) {
    std::vector<double> scale(size);
    for (std::size_t k = 0; k < size; ++k) {
        scale[k] = std::sqrt(matrix[k * size + k]);
        if (!(scale[k] > 0)) {
            return {};
        }
    }
    for (std::size_t row = 0; row < size; ++row) {
        for (std::size_t column = 0; column < size; ++column) {
            matrix[row * size + column] /= scale[row] * scale[column];
        }
    }
    for (std::size_t pivot = 0; pivot < size; ++pivot) {
        const double value = matrix[pivot * size + pivot];
        if (!(value > 1e-10)) {
            return {};
        }
        matrix[pivot * size + pivot] = 1;
        for (std::size_t column = 0; column < size; ++column) {
            matrix[pivot * size + column] /= value;
        }
        for (std::size_t row = 0; row < size; ++row) {
            if (row == pivot) {
                continue;
            }
            const double factor = matrix[row * size + pivot];
            matrix[row * size + pivot] = 0;
            for (std::size_t column = 0; column < size; ++column) {
                matrix[row * size + column] -= factor * matrix[pivot * size + column];
            }
        }
    }
    for (std::size_t row = 0; row < size; ++row) {
        for (std::size_t column = 0; column < size; ++column) {
            matrix[row * size + column] /= scale[row] * scale[column];
        }
    }
    return matrix;
}

/// How a variance component changes with a parameter of the search: S = L (I + D) L'.
double componentSlope(const VarianceComponent& component, const SearchParameter& parameter,
                      const VarianceState& state, const std::vector<TermSheet>& terms) {
    if (component.isResidual() != (parameter.term < 0)) {
        return 0;
    }
    if (parameter.term < 0) {
        return component.group == parameter.group ? state.residual[at(parameter.group)] : 0.0;
    }
    if (*component.term != parameter.term) {
        return 0;
    }
    const std::vector<double>& factor = state.factors[at(parameter.term)];
    const std::size_t width = at(terms[at(parameter.term)].width);
    const auto number = [&](std::int32_t row, std::int32_t column) {
        return factor[at(row) * width + at(column)];
    };
    double slope =
        number(component.row, parameter.row) * number(component.column, parameter.column);
    if (parameter.row != parameter.column) {
        slope += number(component.row, parameter.column) * number(component.column, parameter.row);
    }
    return slope;
}

/// Sampling covariance of the components from the average information, and their errors.
void addErrors(MixedFit::Content& fit, const SearchEnd& end) {
    const std::size_t count = fit.components.size();
    fit.componentCovariance.assign(count * count, 0.0);
    const std::size_t free = end.parameters.size();
    const std::vector<double> inverse = smallInverse(end.information, free);
    if (free == 0 || inverse.empty()) {
        return;
    }
    const double squared = fit.equations->records->scale * fit.equations->records->scale;
    std::vector<double> slopes(count * free);
    for (std::size_t row = 0; row < count; ++row) {
        for (std::size_t k = 0; k < free; ++k) {
            slopes[row * free + k] =
                squared * componentSlope(fit.components[row], end.parameters[k], fit.state,
                                         fit.equations->terms);
        }
    }
    for (std::size_t row = 0; row < count; ++row) {
        for (std::size_t column = 0; column < count; ++column) {
            double sum = 0;
            for (std::size_t j = 0; j < free; ++j) {
                for (std::size_t k = 0; k < free; ++k) {
                    sum +=
                        slopes[row * free + j] * inverse[j * free + k] * slopes[column * free + k];
                }
            }
            // The information is that of minus twice the log-likelihood.
            fit.componentCovariance[row * count + column] = 2 * sum;
        }
        VarianceComponent& component = fit.components[row];
        const double variance = fit.componentCovariance[row * count + row];
        if (!component.held && !component.atBoundary && variance > 0) {
            component.standardError = std::sqrt(variance);
        }
    }
}

} // namespace

std::shared_ptr<MixedFit::Content>
gatherFit(const std::shared_ptr<const MixedModelEquations::Content>& equations,
          RestrictedLikelihood& likelihood, LikelihoodKind kind, const SearchEnd& end) {
    const ModelRecords& records = *equations->records;
    likelihood.invertForErrors();
    auto fit = std::make_shared<MixedFit::Content>();
    fit->equations = equations;
    fit->state = likelihood.state();
    fit->fixedScale = likelihood.fixedScale();
    fit->likelihood = kind;
    const double degrees = static_cast<double>(records.count()) -
                           (kind == LikelihoodKind::restricted ? equations->fixed.rank : 0);
    fit->criterion = likelihood.criterion() + 2 * degrees * std::log(records.scale);
    fit->penalty = end.penalty;
    fit->converged = end.converged;
    fit->iterations = end.iterations;
    fit->components = components(*equations, end, fit->state);
    addErrors(*fit, end);
    const std::vector<double> effects = likelihood.effects();
    for (std::size_t term = 0; term < equations->terms.size(); ++term) {
        fit->randomEffects.push_back(randomEffects(*equations, likelihood, effects, term));
    }
    fit->fixedEffects = fixedEffects(*equations, likelihood, effects);
    SparseCholesky factor = likelihood.takeFactor();
    factor.releaseRoom();
    fit->factor = std::make_shared<const SparseCholesky>(std::move(factor));
    const bool centred = std::any_of(records.fixedColumns.begin(), records.fixedColumns.end(),
                                     [](const FixedColumn& column) { return column.centre != 0; });
    if (centred && equations->intercept) {
        // The intercept at 0 of the covariates, not at their centres.
        const MixedFit whole(fit);
        if (const auto intercept = whole.contrast({{EffectRef::theIntercept(), 1}})) {
            fit->fixedEffects.front().standardError = intercept->standardError;
        }
    }
    return fit;
}

} // namespace pipwright
