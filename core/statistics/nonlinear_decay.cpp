#include "core/statistics/nonlinear_decay.h"

#include "core/statistics/refusal.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <set>
#include <string>

namespace pipwright {

namespace {

double curve(DecayShape shape, const std::vector<double>& p, double day) {
    if (shape == DecayShape::exponential) {
        return p[0] * std::exp(-p[1] * day);
    }
    return p[0] + (p[1] - p[0]) / (1 + std::exp((day - p[2]) / p[3]));
}

std::vector<double> slopes(DecayShape shape, const std::vector<double>& p, double day) {
    if (shape == DecayShape::exponential) {
        const double shrink = std::exp(-p[1] * day);
        return {shrink, -day * p[0] * shrink};
    }
    const double share = 1 / (1 + std::exp((day - p[2]) / p[3]));
    const double steep = (p[1] - p[0]) * share * (1 - share) / p[3];
    return {1 - share, share, steep, steep * (day - p[2]) / p[3]};
}

/// The straight line of ln value on the day.
std::vector<double> startOfExponential(std::span<const TimedValue> values) {
    double meanDay = 0;
    double meanLog = 0;
    for (const TimedValue& v : values) {
        meanDay += v.day / static_cast<double>(values.size());
        meanLog += std::log(v.value) / static_cast<double>(values.size());
    }
    double products = 0;
    double squares = 0;
    for (const TimedValue& v : values) {
        products += (v.day - meanDay) * (std::log(v.value) - meanLog);
        squares += (v.day - meanDay) * (v.day - meanDay);
    }
    const double slope = products / squares;
    return {std::exp(meanLog - slope * meanDay), -slope};
}

/// Ends a little beyond the values, the middle where they are half way, an eighth of the span for
/// steepness.
std::vector<double> startOfLogistic(std::span<const TimedValue> values) {
    std::vector<TimedValue> sorted(values.begin(), values.end());
    std::sort(sorted.begin(), sorted.end(),
              [](const auto& a, const auto& b) { return a.day < b.day; });
    const auto [lowest, highest] =
        std::minmax_element(sorted.begin(), sorted.end(),
                            [](const auto& a, const auto& b) { return a.value < b.value; });
    const double half = (lowest->value + highest->value) / 2;
    const double air = (highest->value - lowest->value) * .05;
    double middle = (sorted.front().day + sorted.back().day) / 2;
    for (std::size_t i = 1; i < sorted.size(); ++i) {
        const double before = sorted[i - 1].value - half;
        const double after = sorted[i].value - half;
        if (before * after <= 0 && before != after) {
            middle =
                sorted[i - 1].day + (sorted[i].day - sorted[i - 1].day) * before / (before - after);
            break;
        }
    }
    const bool falling = sorted.front().value >= sorted.back().value;
    const double width = (sorted.back().day - sorted.front().day) / 8;
    return {lowest->value - air, highest->value + air, middle, falling ? width : -width};
}

double squaresAt(DecayShape shape, const std::vector<double>& p,
                 std::span<const TimedValue> values) {
    double sum = 0;
    for (const TimedValue& v : values) {
        const double residual = v.value - curve(shape, p, v.day);
        sum += residual * residual;
    }
    return sum;
}

struct NormalEquations {
    DenseMatrix matrix;
    std::vector<double> right;
};

NormalEquations equationsAt(DecayShape shape, const std::vector<double>& p,
                            std::span<const TimedValue> values) {
    NormalEquations equations{DenseMatrix(p.size(), p.size()), std::vector<double>(p.size(), 0)};
    for (const TimedValue& v : values) {
        const std::vector<double> slope = slopes(shape, p, v.day);
        const double residual = v.value - curve(shape, p, v.day);
        for (std::size_t i = 0; i < p.size(); ++i) {
            equations.right[i] += slope[i] * residual;
            for (std::size_t j = 0; j < p.size(); ++j) {
                equations.matrix(i, j) += slope[i] * slope[j];
            }
        }
    }
    return equations;
}

/// Marquardt's damped steps until they no longer matter; nothing when they never settle.
std::optional<std::vector<double>> settle(DecayShape shape, std::vector<double> p,
                                          std::span<const TimedValue> values) {
    double damping = 1e-3;
    double squares = squaresAt(shape, p, values);
    for (int iteration = 0; iteration < 500; ++iteration) {
        const NormalEquations equations = equationsAt(shape, p, values);
        DenseMatrix damped = equations.matrix;
        for (std::size_t i = 0; i < p.size(); ++i) {
            damped(i, i) *= 1 + damping;
        }
        const auto inverse = inverseOfPositive(damped);
        if (!inverse) {
            damping *= 10;
            if (damping > 1e12) {
                return std::nullopt;
            }
            continue;
        }
        const std::vector<double> step = inverse->times(equations.right);
        std::vector<double> next = p;
        double change = 0;
        for (std::size_t i = 0; i < p.size(); ++i) {
            next[i] += step[i];
            change = std::max(change, std::abs(step[i]) / (std::abs(p[i]) + 1e-10));
        }
        const double nextSquares = squaresAt(shape, next, values);
        const bool small = change < 1e-10;
        if (nextSquares <= squares) {
            p = next;
            squares = nextSquares;
            damping = std::max(damping / 10, 1e-12);
        } else {
            damping *= 10;
        }
        if (small) {
            return p;
        }
        if (!std::isfinite(squares) || damping > 1e12) {
            return std::nullopt;
        }
    }
    return std::nullopt;
}

std::optional<Problem> faultOf(DecayShape shape, std::span<const TimedValue> values) {
    const std::size_t parameters = shape == DecayShape::exponential ? 2 : 4;
    std::set<double> days;
    std::set<double> heights;
    for (const TimedValue& v : values) {
        if (!std::isfinite(v.day) || !std::isfinite(v.value)) {
            return unusable("A day or a value is not a finite number.",
                            "Leave out what was not measured.");
        }
        if (shape == DecayShape::exponential && v.value <= 0) {
            return unusable("An exponential decay never reaches 0.",
                            "Leave out values of 0 or less, or choose the logistic curve.");
        }
        days.insert(v.day);
        heights.insert(v.value);
    }
    if (values.size() <= parameters || days.size() < parameters) {
        return unusable("There are too few measurements for the curve.",
                        "Measure on at least " + std::to_string(parameters) +
                            " different days, and once more.");
    }
    if (heights.size() < 2) {
        return unusable("The values do not change.", "Measure on until they do.");
    }
    return std::nullopt;
}

} // namespace

double DecayFit::valueAt(double day) const {
    return curve(shape, parameters, day);
}

Result<DayEstimate> DecayFit::dayAt(double level) const {
    DayEstimate estimate;
    if (shape == DecayShape::exponential) {
        const double ratio = parameters[0] / level;
        if (!(std::isfinite(level) && level > 0 && ratio > 0) || parameters[1] == 0) {
            return unusable("The curve never has this value.", "Ask for one it passes.");
        }
        estimate.day = std::log(ratio) / parameters[1];
    } else {
        const double above = level - parameters[0];
        const double below = parameters[1] - level;
        if (!(above * below > 0)) {
            return unusable("The curve never has this value.",
                            "Ask for one between its two flat ends.");
        }
        estimate.day = parameters[2] + parameters[3] * std::log(below / above);
    }
    // d day/d parameter = -(d value/d parameter)/(d value/d day).
    const std::vector<double> slope = slopes(shape, parameters, estimate.day);
    const double fall = shape == DecayShape::exponential ? -parameters[1] * level : -slope[2];
    estimate.standardError = std::sqrt(covariance.form(slope, slope)) / std::abs(fall);
    return estimate;
}

Result<DecayFit> fitDecay(DecayShape shape, std::span<const TimedValue> values) {
    if (auto fault = faultOf(shape, values)) {
        return *fault;
    }
    const auto settled = settle(shape,
                                shape == DecayShape::exponential ? startOfExponential(values)
                                                                 : startOfLogistic(values),
                                values);
    const auto inverse =
        settled ? inverseOfPositive(equationsAt(shape, *settled, values).matrix) : std::nullopt;
    if (!inverse) {
        return unusable("The measurements do not bound this curve.",
                        "Measure earlier and later, or choose the simpler curve.");
    }
    DecayFit fit;
    fit.shape = shape;
    fit.parameters = *settled;
    fit.residualSquares = squaresAt(shape, *settled, values);
    fit.degreesOfFreedom = static_cast<int>(values.size() - settled->size());
    const double variance = fit.residualSquares / fit.degreesOfFreedom;
    fit.covariance = *inverse;
    for (std::size_t i = 0; i < settled->size(); ++i) {
        for (std::size_t j = 0; j < settled->size(); ++j) {
            fit.covariance(i, j) *= variance;
        }
        fit.standardErrors.push_back(std::sqrt(fit.covariance(i, i)));
    }
    return fit;
}

} // namespace pipwright
