#include "core/statistics/quasi_newton.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <utility>

namespace pipwright {

namespace {

using Numbers = std::vector<double>;

/// No step moves a parameter further than this; they are of the order of 1.
constexpr double kLongestStep = 2;

double product(const Numbers& one, const Numbers& other) {
    double sum = 0;
    for (std::size_t i = 0; i < one.size(); ++i) {
        sum += one[i] * other[i];
    }
    return sum;
}

Numbers moved(const Numbers& from, const Numbers& direction, double length) {
    Numbers to = from;
    for (std::size_t i = 0; i < to.size(); ++i) {
        to[i] += length * direction[i];
    }
    return to;
}

Result<Numbers> gradientOf(const SearchedFunction& function, const Numbers& at, double step) {
    Numbers gradient(at.size());
    for (std::size_t i = 0; i < at.size(); ++i) {
        Numbers side = at;
        side[i] = at[i] + step;
        const Result<double> above = function(side);
        if (!above) {
            return above.problem();
        }
        side[i] = at[i] - step;
        const Result<double> below = function(side);
        if (!below) {
            return below.problem();
        }
        gradient[i] = (*above - *below) / (2 * step);
    }
    return gradient;
}

/// The inverse of the matrix of second derivatives, as far as the steps have told.
class InverseCurvature {
  public:
    explicit InverseCurvature(std::size_t size) : m_size(size), m_cells(size * size) { restart(1); }

    void restart(double scale) {
        std::fill(m_cells.begin(), m_cells.end(), 0);
        for (std::size_t i = 0; i < m_size; ++i) {
            m_cells[i * m_size + i] = scale;
        }
        m_fresh = true;
    }

    [[nodiscard]] Numbers times(const Numbers& vector) const {
        Numbers result(m_size);
        for (std::size_t row = 0; row < m_size; ++row) {
            for (std::size_t column = 0; column < m_size; ++column) {
                result[row] += m_cells[row * m_size + column] * vector[column];
            }
        }
        return result;
    }

    /// Learns from a step and the change of the gradient along it.
    void learn(const Numbers& step, const Numbers& change) {
        const double along = product(step, change);
        if (!(along > 1e-14 * std::sqrt(product(step, step) * product(change, change)))) {
            return; // not convex there
        }
        if (m_fresh) {
            restart(along / product(change, change));
            m_fresh = false;
        }
        const Numbers turned = times(change);
        const double factor = (1 + product(change, turned) / along) / along;
        for (std::size_t row = 0; row < m_size; ++row) {
            for (std::size_t column = 0; column < m_size; ++column) {
                m_cells[row * m_size + column] +=
                    factor * step[row] * step[column] -
                    (step[row] * turned[column] + turned[row] * step[column]) / along;
            }
        }
    }

  private:
    std::size_t m_size;
    Numbers m_cells;
    bool m_fresh = true;
};

struct Step {
    Numbers to;
    double value = 0;
    bool lower = false;
};

/// Halves the step until the value falls by a fair part of what the slope promises.
Result<Step> stepAlong(const SearchedFunction& function, const Numbers& from, double value,
                       const Numbers& direction, double slope) {
    double length = 1;
    for (const double part : direction) {
        length = std::min(length, kLongestStep / std::max(std::abs(part), 1e-300));
    }
    for (int halving = 0; halving < 40; ++halving, length /= 2) {
        Step step{moved(from, direction, length), 0, true};
        const Result<double> there = function(step.to);
        if (!there) {
            return there.problem();
        }
        step.value = *there;
        if (step.value <= value + 1e-4 * length * slope) {
            return step;
        }
    }
    return Step{from, value, false};
}

} // namespace

Result<LowestPoint> lowestPoint(const SearchedFunction& function, Numbers start,
                                const SearchControl& control) {
    LowestPoint lowest{std::move(start), 0, false, 0};
    const Result<double> first = function(lowest.parameters);
    if (!first) {
        return first.problem();
    }
    lowest.value = *first;
    InverseCurvature curvature(lowest.parameters.size());
    Result<Numbers> gradient = gradientOf(function, lowest.parameters, control.differenceStep);
    bool restarted = true;
    while (gradient && lowest.iterations < control.maximumIterations) {
        Numbers direction = curvature.times(*gradient);
        for (double& part : direction) {
            part = -part;
        }
        const double slope = product(direction, *gradient);
        if (-slope / 2 < control.tolerance && lowest.iterations > 0) {
            lowest.converged = true;
            break;
        }
        const Result<Step> step =
            stepAlong(function, lowest.parameters, lowest.value, direction, slope);
        if (!step) {
            return step.problem();
        }
        ++lowest.iterations;
        if (!step->lower) {
            if (restarted) { // even straight downhill nothing is lower: rounding is reached
                lowest.converged = -slope < 1e-4;
                break;
            }
            curvature.restart(1);
            restarted = true;
            continue;
        }
        restarted = false;
        const Numbers before = std::exchange(lowest.parameters, step->to);
        lowest.value = step->value;
        const Numbers old = *gradient;
        gradient = gradientOf(function, lowest.parameters, control.differenceStep);
        if (gradient) {
            curvature.learn(moved(lowest.parameters, before, -1), moved(*gradient, old, -1));
        }
        if (control.progress) {
            control.progress(lowest.iterations, lowest.value);
        }
    }
    if (!gradient) {
        return gradient.problem();
    }
    return lowest;
}

Result<Numbers> secondDerivatives(const SearchedFunction& function, const Numbers& at,
                                  double differenceStep) {
    const std::size_t size = at.size();
    Numbers matrix(size * size);
    // From the gradients to both sides of each parameter.
    for (std::size_t row = 0; row < size; ++row) {
        Numbers side = at;
        side[row] = at[row] + differenceStep;
        const Result<Numbers> above = gradientOf(function, side, differenceStep);
        if (!above) {
            return above.problem();
        }
        side[row] = at[row] - differenceStep;
        const Result<Numbers> below = gradientOf(function, side, differenceStep);
        if (!below) {
            return below.problem();
        }
        for (std::size_t column = 0; column < size; ++column) {
            const double value = ((*above)[column] - (*below)[column]) / (2 * differenceStep);
            matrix[row * size + column] += value / 2;
            matrix[column * size + row] += value / 2;
        }
    }
    return matrix;
}

std::optional<Numbers> inverseOfPositive(Numbers matrix) {
    // Gauss and Jordan, in place; the pivots of a positive definite matrix stay above 0.
    const auto size = static_cast<std::size_t>(std::lround(std::sqrt(matrix.size())));
    for (std::size_t pivot = 0; pivot < size; ++pivot) {
        double* const chosen = &matrix[pivot * size];
        const double value = std::exchange(chosen[pivot], 1);
        if (!(value > 0)) {
            return std::nullopt;
        }
        for (std::size_t column = 0; column < size; ++column) {
            chosen[column] /= value;
        }
        for (std::size_t row = 0; row < size; ++row) {
            if (row == pivot) {
                continue;
            }
            const double factor = std::exchange(matrix[row * size + pivot], 0);
            for (std::size_t column = 0; column < size; ++column) {
                matrix[row * size + column] -= factor * chosen[column];
            }
        }
    }
    return matrix;
}

} // namespace pipwright
