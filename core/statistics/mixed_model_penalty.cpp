#include "core/statistics/mixed_model_penalty.h"

#include "core/statistics/subscript.h"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>
#include <limits>

namespace pipwright {

namespace {

using Square = Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, Eigen::RowMajor>;

/// L^-1 S0 L^-T for the inverse Wishart penalty; and ln |S|.
struct Whitened {
    Square expected;
    double logDeterminant = 0;
};

Whitened whiten(const VarianceChoice& choice, double unit, const std::vector<double>& factor,
                std::int32_t width) {
    const Eigen::Map<const Square> root(factor.data(), width, width);
    const Eigen::Map<const Square> scale(choice.value.data(), width, width);
    const Eigen::FullPivLU<Square> solver(root);
    Whitened whitened;
    const Square half = solver.solve(scale * unit);
    whitened.expected = solver.solve(half.transpose());
    whitened.logDeterminant = 2 * std::log(std::abs(root.determinant()));
    return whitened;
}

double singlePenalty(const VarianceChoice& choice, double unit, double variance) {
    const double nu = choice.degreesOfFreedom;
    const double scale = choice.value[0] * unit;
    if (choice.knowledge == VarianceKnowledge::inverseChiSquare) {
        return nu * (std::log(variance) + scale / variance);
    }
    return (nu + 1) * std::log1p(variance / (nu * scale));
}

bool isPrior(const VarianceChoice& choice) {
    return choice.knowledge == VarianceKnowledge::inverseChiSquare ||
           choice.knowledge == VarianceKnowledge::halfT;
}

/// Slope and curvature in the relative change of a single variance.
void addSingle(const VarianceChoice& choice, double unit, double variance, double& slope,
               double& curvature) {
    const double nu = choice.degreesOfFreedom;
    const double scale = choice.value[0] * unit;
    if (choice.knowledge == VarianceKnowledge::inverseChiSquare) {
        slope += nu * (1 - scale / variance);
        curvature += nu * std::max(2 * scale / variance - 1, 0.5);
        return;
    }
    // (nu + 1) v / (nu A^2 + v); its own curvature is negative, so it adds none.
    slope += (nu + 1) * variance / (nu * scale + variance);
}

} // namespace

double priorPenalty(const VarianceChoice& choice, double variance) {
    return isPrior(choice) ? singlePenalty(choice, 1, variance) : 0;
}

double penaltyValue(const ModelRecords& records, const SearchTask& task,
                    const VarianceState& state) {
    double value = 0;
    // Constants are those of the user's units.
    for (std::size_t term = 0; term < task.terms.size(); ++term) {
        const VarianceChoice& choice = task.terms[term];
        const std::int32_t width = records.families[term].width;
        if (!isPrior(choice)) {
            continue;
        }
        if (choice.knowledge == VarianceKnowledge::inverseChiSquare) {
            value -= choice.degreesOfFreedom * width * std::log(task.unit);
        }
        if (width == 1) {
            value +=
                singlePenalty(choice, task.unit, state.factors[term][0] * state.factors[term][0]);
        } else {
            const Whitened whitened = whiten(choice, task.unit, state.factors[term], width);
            value +=
                choice.degreesOfFreedom * (whitened.logDeterminant + whitened.expected.trace());
        }
    }
    for (std::size_t group = 0; group < task.groups.size(); ++group) {
        const VarianceChoice& choice = task.groups[group];
        if (isPrior(choice)) {
            value += singlePenalty(choice, task.unit, state.residual[group]);
            if (choice.knowledge == VarianceKnowledge::inverseChiSquare) {
                value -= choice.degreesOfFreedom * std::log(task.unit);
            }
        }
    }
    return std::isnan(value) ? std::numeric_limits<double>::infinity() : value;
}

Penalty penaltyAt(const ModelRecords& records, const SearchTask& task, const VarianceState& state,
                  std::span<const SearchParameter> parameters) {
    Penalty penalty;
    penalty.value = penaltyValue(records, task, state);
    for (const SearchParameter& parameter : parameters) {
        double slope = 0;
        double curvature = 0;
        const VarianceChoice& choice =
            parameter.term < 0 ? task.groups[at(parameter.group)] : task.terms[at(parameter.term)];
        if (isPrior(choice)) {
            if (parameter.term < 0) {
                addSingle(choice, task.unit, state.residual[at(parameter.group)], slope, curvature);
            } else if (records.families[at(parameter.term)].width == 1) {
                const double root = state.factors[at(parameter.term)][0];
                addSingle(choice, task.unit, root * root, slope, curvature);
            } else {
                const Whitened whitened =
                    whiten(choice, task.unit, state.factors[at(parameter.term)],
                           records.families[at(parameter.term)].width);
                const double nu = choice.degreesOfFreedom;
                const double expected = whitened.expected(parameter.row, parameter.column);
                const bool diagonal = parameter.row == parameter.column;
                slope = diagonal ? nu * (1 - expected) : -2 * nu * expected;
                curvature = diagonal ? nu * std::max(2 * expected - 1, 0.5) : 2 * nu;
            }
        }
        penalty.slopes.push_back(slope);
        penalty.curvatures.push_back(curvature);
    }
    return penalty;
}

} // namespace pipwright
