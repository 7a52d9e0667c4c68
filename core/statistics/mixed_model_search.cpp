#include "core/statistics/mixed_model_search.h"

#include "core/statistics/mixed_model_axes.h"
#include "core/statistics/mixed_model_penalty.h"
#include "core/statistics/mixed_model_problems.h"
#include "core/statistics/mixed_model_roots.h"
#include "core/statistics/mixed_model_step.h"
#include "core/statistics/subscript.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>
#include <utility>

namespace pipwright {

namespace {

/// What the data say of an axis of a term, in levels: q - T. Below this it is as good as 0.
constexpr double kNothing = 1e-6;
/// Below this share of the levels an axis may be on its way to 0.
constexpr double kLittle = 0.02;
/// How far a variance may move in one step.
constexpr double kMostShrinking = 1e-3;
constexpr double kMostGrowing = 10;
/// How often a step that raises the criterion is damped further: up to about 1e5 in the end.
constexpr int kMostDampings = 11;
constexpr double kMostResidualShrinking = 0.1;
/// The share of the largest residual variance below which another is as good as 0.
constexpr double kLeastResidual = 1e-6;
/// A search that is not over by then has lost its way.
constexpr int kMostInformationSteps = 40;
/// What a step among the roots has to promise; central differences are not good for less.
constexpr double kRootTolerance = 1e-9;

class VarianceSearch {
  public:
    VarianceSearch(RestrictedLikelihood& likelihood, const ModelRecords& records,
                   const SearchTask& task, const FitControl& control)
        : m_likelihood(likelihood), m_records(records), m_task(task), m_control(control) {
        m_all = searchParameters(records, task);
        const auto estimated = [](const VarianceChoice& choice) {
            return choice.knowledge == VarianceKnowledge::estimated;
        };
        m_profile = !m_all.empty() &&
                    std::all_of(task.terms.begin(), task.terms.end(), estimated) &&
                    std::all_of(task.groups.begin(), task.groups.end(), estimated);
    }

    Result<SearchEnd> run(VarianceState start) {
        SearchEnd end;
        end.termAtBoundary.assign(m_task.terms.size(), false);
        if (!moveTo(std::move(start))) {
            return equationsBroken();
        }
        if (m_all.empty()) {
            return end;
        }
        end.converged = false;
        if (Outcome outcome = stepByInformation(end); !outcome) {
            return outcome.problem();
        }
        if (Outcome outcome = descendByRoots(end); !outcome) {
            return outcome.problem();
        }
        return finish(std::move(end));
    }

  private:
    /// The search proper, for as long as it gets on.
    Outcome stepByInformation(SearchEnd& end) {
        const int most = std::min(m_control.maximumIterations, kMostInformationSteps);
        for (end.iterations = 1; end.iterations <= most; ++end.iterations) {
            if (m_control.stop.stop_requested()) {
                return fitStopped();
            }
            if (!survey()) {
                return equationsBroken();
            }
            const bool stay = !step(end);
            if (m_control.progress) {
                m_control.progress({end.iterations, m_likelihood.criterion()});
            }
            if (stay) {
                return {};
            }
            if (residualVanishes()) {
                return responseExplained();
            }
        }
        end.iterations = most;
        return {};
    }

    /// Where covariances are all but singular the average information says little of them, and
    /// steps by it get nowhere: the roots of the variances are searched then, slower and sure.
    Outcome descendByRoots(SearchEnd& end) {
        if (end.converged || end.iterations >= m_control.maximumIterations) {
            return {};
        }
        const VarianceState before = m_likelihood.state();
        const double reached = m_objective;
        const VarianceRoots roots(m_records, m_task, before, m_frozenGroups);
        const auto objectiveAt = [&](const std::vector<double>& numbers) {
            return moveTo(roots.state(numbers, kLeastResidual / 2))
                       ? m_objective
                       : std::numeric_limits<double>::infinity();
        };
        const Result<LowestPoint> lowest =
            lowestAmongRoots(roots, objectiveAt, kRootTolerance, end.iterations, m_control);
        if (!lowest) {
            return lowest.problem();
        }
        end.iterations += lowest->iterations;
        const bool lower = lowest->value <= reached + kRootTolerance;
        end.converged = lowest->converged && lower;
        VarianceState to = lower ? roots.state(lowest->parameters, kLeastResidual / 2) : before;
        if (!moveTo(std::move(to)) || !survey()) {
            return equationsBroken();
        }
        return residualVanishes() ? Outcome(responseExplained()) : Outcome();
    }

    bool moveTo(VarianceState state) {
        if (!m_likelihood.moveTo(std::move(state), m_profile)) {
            return false;
        }
        m_objective =
            m_likelihood.criterion() + penaltyValue(m_records, m_task, m_likelihood.state());
        return std::isfinite(m_objective);
    }

    /// The scaled response has variance about 1, so this is far below any rounding of records.
    [[nodiscard]] bool residualVanishes() const {
        return std::ranges::min(m_likelihood.state().residual) < 1e-13;
    }

    /// Left alone are variances of frozen axes and covariances among them. A covariance of a frozen
    /// with a free axis turns the free one, and stays open if that is of any length.
    [[nodiscard]] bool isOpen(const SearchParameter& parameter) const {
        if (parameter.term < 0) {
            return !m_frozenGroups[at(parameter.group)];
        }
        const auto& frozen = m_frozen[at(parameter.term)];
        const auto& said = m_said[at(parameter.term)];
        if (turns(parameter)) {
            return std::max(said[at(parameter.row)], said[at(parameter.column)]) > 10 * kNothing;
        }
        return !frozen[at(parameter.row)];
    }
    /// Turning by s lengthens the frozen axis by s squared, against its gradient.
    [[nodiscard]] double turningCurvature(const SearchParameter& parameter,
                                          const std::vector<double>& gradient) const {
        if (!turns(parameter)) {
            return 0;
        }
        const bool rowFrozen = m_frozen[at(parameter.term)][at(parameter.row)];
        const std::int32_t axis = rowFrozen ? parameter.row : parameter.column;
        for (std::size_t k = 0; k < m_all.size(); ++k) {
            if (m_all[k].term == parameter.term && m_all[k].row == axis &&
                m_all[k].column == axis) {
                return 2 * std::max(gradient[k], 0.0);
            }
        }
        return 0;
    }
    /// Whether a parameter turns a free axis towards a frozen one.
    [[nodiscard]] bool turns(const SearchParameter& parameter) const {
        return parameter.term >= 0 && m_frozen[at(parameter.term)][at(parameter.row)] !=
                                          m_frozen[at(parameter.term)][at(parameter.column)];
    }

    /// Gradient, information and what is free at the present point.
    bool survey() {
        m_likelihood.invert();
        if (!turnToAxes()) {
            return false;
        }
        std::vector<double> gradient = m_likelihood.gradient(m_all);
        const Penalty penalty = penaltyAt(m_records, m_task, m_likelihood.state(), m_all);
        for (std::size_t k = 0; k < m_all.size(); ++k) {
            gradient[k] += penalty.slopes[k];
        }
        freeze(gradient);
        tieFrozenGroups(gradient);
        m_model.clear();
        std::vector<double> curvatures;
        for (std::size_t k = 0; k < m_all.size(); ++k) {
            if (isOpen(m_all[k])) {
                open(m_all[k], gradient[k]);
                curvatures.push_back(penalty.curvatures[k] + turningCurvature(m_all[k], gradient));
            }
        }
        m_model.information = m_likelihood.averageInformation(m_model.parameters);
        const std::size_t count = m_model.parameters.size();
        for (std::size_t k = 0; k < count; ++k) {
            double& own = m_model.information[k * count + k];
            own += curvatures[k];
            if (m_model.parameters[k].term < 0) {
                m_model.expected[k] = own;
            }
        }
        const auto finite = [](double number) { return std::isfinite(number); };
        return std::ranges::all_of(m_model.gradient, finite) &&
               std::ranges::all_of(m_model.information, finite);
    }

    /// What the data say of the axes of a term: q I - T.
    [[nodiscard]] std::vector<double> saidOf(std::size_t term) const {
        const std::size_t width = at(m_records.families[term].width);
        std::vector<double> said = m_likelihood.inverseSums(term);
        for (std::size_t place = 0; place < said.size(); ++place) {
            const bool diagonal = place % (width + 1) == 0;
            said[place] = (diagonal ? m_records.families[term].levels : 0) - said[place];
        }
        return said;
    }
    void noteSaid() {
        m_said.clear();
        for (std::size_t term = 0; term < m_task.terms.size(); ++term) {
            const std::vector<double> said = saidOf(term);
            const std::size_t width = at(m_records.families[term].width);
            std::vector<double>& axes = m_said.emplace_back();
            for (std::size_t axis = 0; axis < width; ++axis) {
                axes.push_back(said[axis * (width + 1)]);
            }
        }
    }

    /// Where a covariance has axes of which the data say little or nothing, its matrix L is turned
    /// so that they are columns of it, and the gradient has no covariances among them. False when
    /// the equations break down.
    bool turnToAxes() {
        noteSaid();
        bool turned = false;
        VarianceState state = m_likelihood.state();
        for (std::size_t term = 0; term < m_task.terms.size(); ++term) {
            const std::int32_t width = m_records.families[term].width;
            if (width == 1 || m_task.terms[term].knowledge == VarianceKnowledge::held) {
                continue;
            }
            const std::optional<std::vector<double>> rotation =
                axisRotation(saidOf(term), m_likelihood.solutionSums(term), width, kNothing,
                             kLittle * m_records.families[term].levels);
            if (!rotation) {
                continue;
            }
            state.factors[term] = squareProduct(state.factors[term], *rotation, width);
            turned = true;
        }
        if (turned) {
            if (!moveTo(std::move(state))) {
                return false;
            }
            m_likelihood.invert();
            noteSaid();
        }
        return true;
    }

    /// An axis of which the data say nothing is left alone while the gradient points down there;
    /// so is a residual variance that is next to nothing beside the largest.
    void freeze(const std::vector<double>& gradient) {
        m_frozen.clear();
        for (const DesignFamily& family : m_records.families) {
            if (family.random) {
                m_frozen.emplace_back(at(family.width), false);
            }
        }
        const std::vector<double>& residual = m_likelihood.state().residual;
        const double largest = std::ranges::max(residual);
        m_frozenGroups.assign(residual.size(), false);
        for (std::size_t k = 0; k < m_all.size(); ++k) {
            const SearchParameter& parameter = m_all[k];
            if (parameter.term < 0) {
                m_frozenGroups[at(parameter.group)] =
                    residual[at(parameter.group)] < kLeastResidual * largest && gradient[k] >= 0;
                continue;
            }
            if (parameter.row == parameter.column &&
                m_said[at(parameter.term)][at(parameter.row)] < kNothing && gradient[k] >= 0) {
                m_frozen[at(parameter.term)][at(parameter.row)] = true;
            }
        }
    }
    [[nodiscard]] static std::size_t largestGroup(const VarianceState& state) {
        return static_cast<std::size_t>(std::ranges::max_element(state.residual) -
                                        state.residual.begin());
    }
    /// A frozen group keeps its share of the largest, which answers for it.
    void tieFrozenGroups(std::vector<double>& gradient) const {
        double tied = 0;
        double* answering = nullptr;
        for (std::size_t k = 0; k < m_all.size(); ++k) {
            if (m_all[k].term < 0 && m_frozenGroups[at(m_all[k].group)]) {
                tied += gradient[k];
            } else if (m_all[k].term < 0 &&
                       at(m_all[k].group) == largestGroup(m_likelihood.state())) {
                answering = &gradient[k];
            }
        }
        if (answering != nullptr) {
            *answering += tied;
        }
    }

    /// Adds an open parameter to what the next step is made of.
    void open(const SearchParameter& parameter, double gradient) {
        constexpr double kOfCovariances = 0.01; // their average information can be next to nothing
        constexpr double kAtOnce = 0.1;         // of what there is to say, from nearly 0
        m_model.parameters.push_back(parameter);
        m_model.gradient.push_back(gradient);
        if (parameter.term < 0) {
            m_model.expected.push_back(0); // set when the information is known
            m_model.leastDamping.push_back(0);
            m_model.low.push_back(kMostResidualShrinking - 1);
            m_model.high.push_back(kMostGrowing - 1);
            return;
        }
        const DesignFamily& family = m_records.families[at(parameter.term)];
        const double levels = family.levels;
        const double said = m_said[at(parameter.term)][at(parameter.row)];
        const double other = m_said[at(parameter.term)][at(parameter.column)];
        const double both = parameter.row == parameter.column ? 1 : 2;
        m_model.expected.push_back(both * said * other / levels);
        m_model.leastDamping.push_back(family.width == 1 ? 0 : kOfCovariances);
        m_model.low.push_back(kMostShrinking - 1);
        m_model.high.push_back(
            std::max(kMostGrowing - 1, kAtOnce * levels / std::max(said, 1e-300)));
    }

    /// The point a step leads to.
    [[nodiscard]] VarianceState stepped(const VarianceState& from,
                                        const std::vector<double>& step) const {
        VarianceState state = from;
        for (std::size_t term = 0; term < m_task.terms.size(); ++term) {
            stretch(static_cast<std::int32_t>(term), step, state.factors[term]);
        }
        for (std::size_t k = 0; k < m_model.parameters.size(); ++k) {
            if (m_model.parameters[k].term < 0) {
                state.residual[at(m_model.parameters[k].group)] *= 1 + step[k];
            }
        }
        const std::size_t largest = largestGroup(from);
        for (std::size_t group = 0; group < state.residual.size(); ++group) {
            if (m_frozenGroups[group]) {
                state.residual[group] *= state.residual[largest] / from.residual[largest];
            }
        }
        return state;
    }
    /// The matrix L of a term after a step: L times the root of I + D, plus what turns free axes
    /// towards frozen ones.
    void stretch(std::int32_t term, const std::vector<double>& step,
                 std::vector<double>& factor) const {
        const std::size_t width = at(m_records.families[at(term)].width);
        std::vector<double> change(width * width, 0.0);
        std::vector<double> turning(width * width, 0.0);
        double most = kMostGrowing;
        bool changed = false;
        for (std::size_t k = 0; k < m_model.parameters.size(); ++k) {
            const SearchParameter& parameter = m_model.parameters[k];
            if (parameter.term != term) {
                continue;
            }
            changed = true;
            const double value = step[k];
            const std::size_t below = at(parameter.row) * width + at(parameter.column);
            const std::size_t above = at(parameter.column) * width + at(parameter.row);
            if (turns(parameter)) {
                turning[m_frozen[at(term)][at(parameter.row)] ? below : above] += value;
                continue;
            }
            change[below] = value;
            change[above] = value;
            most = below == above ? std::max(most, 1 + value) : most;
        }
        if (!changed) {
            return;
        }
        for (std::size_t axis = 0; axis < width; ++axis) {
            change[axis * (width + 1)] += 1;
        }
        if (width == 1) {
            factor[0] *= std::sqrt(change[0]);
            return;
        }
        const auto side = static_cast<std::int32_t>(width);
        std::vector<double> root = boundedRoot(change, side, kMostShrinking, most);
        for (std::size_t place = 0; place < root.size(); ++place) {
            root[place] += turning[place];
        }
        factor = squareProduct(factor, root, side);
    }

    /// Takes one step; false when there is nothing (more) to gain.
    bool step(SearchEnd& end) {
        if (m_model.parameters.empty()) {
            end.converged = true;
            return false;
        }
        const VarianceState from = m_likelihood.state();
        const double before = m_objective;
        const double promised = promisedGain(m_model);
        if (promised < m_control.tolerance) {
            end.converged = true;
            return false;
        }
        const double rounding = 1e-13 * std::max(std::abs(before), 1.0);
        double damping = 0;
        for (int attempt = 0; attempt < kMostDampings; ++attempt) {
            if (moveTo(stepped(from, limitedStep(m_model, damping))) &&
                m_objective <= before + rounding) {
                return true;
            }
            damping = std::max(0.25, 4 * damping);
        }
        // Expectation-maximisation: the gradient divided by the count behind each variance.
        std::vector<double> sure(m_model.parameters.size());
        for (std::size_t k = 0; k < m_model.parameters.size(); ++k) {
            const SearchParameter& parameter = m_model.parameters[k];
            const double count = parameter.term < 0 ? static_cast<double>(m_records.count())
                                                    : m_records.families[at(parameter.term)].levels;
            const double half = parameter.row == parameter.column ? 1 : 0.5;
            sure[k] = std::max(-half * m_model.gradient[k] / count, -0.9);
        }
        if (moveTo(stepped(from, sure)) && m_objective < before - rounding) {
            return true;
        }
        end.converged = promised < 1e-5; // no more than rounding stands in the way
        if (!moveTo(from)) {
            end.converged = false;
        }
        return false;
    }

    /// Sets frozen axes to 0 and surveys what is left.
    Result<SearchEnd> finish(SearchEnd end) {
        VarianceState state = m_likelihood.state();
        bool zeros = false;
        for (std::size_t term = 0; term < m_frozen.size(); ++term) {
            const std::size_t width = m_frozen[term].size();
            for (std::size_t axis = 0; axis < width; ++axis) {
                if (!m_frozen[term][axis]) {
                    continue;
                }
                zeros = true;
                end.termAtBoundary[term] = true;
                for (std::size_t row = 0; row < width; ++row) {
                    state.factors[term][row * width + axis] = 0;
                }
            }
        }
        if (zeros && !moveTo(std::move(state))) {
            return equationsBroken();
        }
        end.groupAtBoundary = m_frozenGroups;
        end.penalty = penaltyValue(m_records, m_task, m_likelihood.state());
        end.parameters = m_model.parameters;
        end.information = m_model.information;
        return end;
    }

    RestrictedLikelihood& m_likelihood;
    const ModelRecords& m_records;
    const SearchTask& m_task;
    const FitControl& m_control;
    std::vector<SearchParameter> m_all;
    std::vector<std::vector<bool>> m_frozen; // of each term's axes
    std::vector<bool> m_frozenGroups;        // of the residual
    std::vector<std::vector<double>> m_said; // of each term's axes: q - T
    StepModel m_model;                       // at the present point, of the open parameters
    bool m_profile = false;
    double m_objective = 0;
};

} // namespace

Result<SearchEnd> searchVariances(RestrictedLikelihood& likelihood, const ModelRecords& records,
                                  VarianceState start, const SearchTask& task,
                                  const FitControl& control) {
    return VarianceSearch(likelihood, records, task, control).run(std::move(start));
}

} // namespace pipwright
