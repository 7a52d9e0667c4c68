#include "core/statistics/mixed_model_roots.h"

#include "core/statistics/mixed_model_problems.h"
#include "core/statistics/mixed_model_start.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace pipwright {

namespace {

/// The root mean square of what a term's effects are multiplied by in the records.
std::vector<double> typicalMultipliers(const DesignFamily& family) {
    const auto width = static_cast<std::size_t>(family.width);
    std::vector<double> squares(width, family.values.empty() ? 1.0 : 0.0);
    for (std::size_t place = 0; place < family.values.size(); ++place) {
        squares[place % width] += family.values[place] * family.values[place];
    }
    const double records =
        std::max(1.0, static_cast<double>(family.values.size()) / static_cast<double>(width));
    for (double& square : squares) {
        square = square > 0 ? std::sqrt(square / records) : 1.0;
    }
    return squares;
}

bool isHeld(const VarianceChoice& choice) {
    return choice.knowledge == VarianceKnowledge::held;
}

} // namespace

VarianceRoots::VarianceRoots(const ModelRecords& records, const SearchTask& task,
                             VarianceState from, std::vector<bool> tied)
    : m_records(records), m_task(task), m_from(std::move(from)), m_tied(std::move(tied)) {
    const double residual =
        std::sqrt(*std::max_element(m_from.residual.begin(), m_from.residual.end()));
    for (std::size_t term = 0; term < task.terms.size(); ++term) {
        const DesignFamily& family = records.families[term];
        const auto width = static_cast<std::size_t>(family.width);
        std::vector<double>& factor = m_from.factors[term];
        std::vector<double> covariance(factor.size());
        for (std::size_t row = 0; row < width; ++row) {
            for (std::size_t column = 0; column < width; ++column) {
                for (std::size_t k = 0; k < width; ++k) {
                    covariance[row * width + column] +=
                        factor[row * width + k] * factor[column * width + k];
                }
            }
        }
        factor = covarianceRoot(covariance, family.width);
        std::vector<double>& units = m_units.emplace_back();
        for (const double multiplier : typicalMultipliers(family)) {
            units.push_back(residual / multiplier);
        }
    }
}

template <typename Visit>
void VarianceRoots::eachOfRoots(Visit visit) const {
    for (std::size_t term = 0; term < m_task.terms.size(); ++term) {
        const auto width = static_cast<std::size_t>(m_records.families[term].width);
        for (std::size_t row = 0; row < width && !isHeld(m_task.terms[term]); ++row) {
            for (std::size_t column = 0; column <= row; ++column) {
                visit(term, row * width + column, m_units[term][row]);
            }
        }
    }
}

bool VarianceRoots::isFree(std::size_t group) const {
    return !isHeld(m_task.groups[group]) && !m_tied[group];
}

std::vector<double> VarianceRoots::numbers() const {
    constexpr double kShortest = 0.03;
    std::vector<double> numbers;
    eachOfRoots([&](std::size_t term, std::size_t place, double unit) {
        const std::size_t width = m_units[term].size();
        const double number = m_from.factors[term][place] / unit;
        numbers.push_back(place % (width + 1) == 0 ? std::max(number, kShortest) : number);
    });
    for (std::size_t group = 0; group < m_task.groups.size(); ++group) {
        if (isFree(group)) {
            numbers.push_back(std::log(m_from.residual[group]));
        }
    }
    return numbers;
}

VarianceState VarianceRoots::state(const std::vector<double>& numbers, double leastResidual) const {
    VarianceState state = m_from;
    std::size_t next = 0;
    eachOfRoots([&](std::size_t term, std::size_t place, double unit) {
        state.factors[term][place] = numbers[next++] * unit;
    });
    double largest = 0;
    for (std::size_t group = 0; group < state.residual.size(); ++group) {
        if (isFree(group)) {
            state.residual[group] = std::exp(numbers[next++]);
        }
        largest = m_tied[group] ? largest : std::max(largest, state.residual[group]);
    }
    const double before = *std::max_element(m_from.residual.begin(), m_from.residual.end());
    for (std::size_t group = 0; group < state.residual.size(); ++group) {
        if (m_tied[group]) {
            state.residual[group] = m_from.residual[group] * largest / before;
        } else if (isFree(group)) {
            state.residual[group] += leastResidual * largest;
        }
    }
    return state;
}

Result<LowestPoint>
lowestAmongRoots(const VarianceRoots& roots,
                 const std::function<double(const std::vector<double>&)>& objectiveAt,
                 double tolerance, int iterations, const FitControl& control) {
    SearchControl search;
    search.tolerance = std::max(control.tolerance, tolerance);
    search.maximumIterations = control.maximumIterations - iterations;
    if (control.progress) {
        search.progress = [&](int iteration, double objective) {
            control.progress({iterations + iteration, objective});
        };
    }
    return lowestPoint(
        [&](const std::vector<double>& numbers) -> Result<double> {
            if (control.stop.stop_requested()) {
                return fitStopped();
            }
            return objectiveAt(numbers);
        },
        roots.numbers(), search);
}

} // namespace pipwright
