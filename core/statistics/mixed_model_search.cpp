#include "core/statistics/mixed_model_search.h"

#include "core/statistics/mixed_model_axes.h"
#include "core/statistics/mixed_model_penalty.h"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

namespace pipwright {

namespace {

using Matrix = Eigen::MatrixXd;
using Vector = Eigen::VectorXd;

std::size_t at(std::int32_t index) {
    return static_cast<std::size_t>(index);
}

/// What the data say of an axis of a term, in levels: q - T. Below this it is as good as 0.
constexpr double kNothing = 1e-6;
/// Below this share of the levels an axis may be on its way to 0.
constexpr double kLittle = 0.02;
/// How far a variance may move in one step.
constexpr double kMostShrinking = 1e-3;
constexpr double kMostGrowing = 10;
constexpr double kMostResidualShrinking = 0.1;
/// The share of the largest residual variance below which another is as good as 0.
constexpr double kLeastResidual = 1e-6;

class VarianceSearch {
  public:
    VarianceSearch(RestrictedLikelihood& likelihood, const ModelRecords& records,
                   const SearchTask& task, const FitControl& control)
        : m_likelihood(likelihood), m_records(records), m_task(task), m_control(control) {
        bool free = true;
        for (std::size_t term = 0; term < task.terms.size(); ++term) {
            const VarianceKnowledge knowledge = task.terms[term].knowledge;
            free = free && knowledge == VarianceKnowledge::estimated;
            if (knowledge == VarianceKnowledge::held) {
                continue;
            }
            for (std::int32_t row = 0; row < records.families[term].width; ++row) {
                for (std::int32_t column = 0; column <= row; ++column) {
                    m_all.push_back({static_cast<std::int32_t>(term), 0, row, column});
                }
            }
        }
        for (std::size_t group = 0; group < task.groups.size(); ++group) {
            const VarianceKnowledge knowledge = task.groups[group].knowledge;
            free = free && knowledge == VarianceKnowledge::estimated;
            if (knowledge != VarianceKnowledge::held) {
                m_all.push_back({-1, static_cast<std::int32_t>(group), 0, 0});
            }
        }
        m_profile = free && !m_all.empty();
    }

    Result<SearchEnd> run(VarianceState start) {
        SearchEnd end;
        end.termAtBoundary.assign(m_task.terms.size(), false);
        if (!moveTo(std::move(start))) {
            return broken();
        }
        if (m_all.empty()) {
            return end;
        }
        end.converged = false;
        for (end.iterations = 1; end.iterations <= m_control.maximumIterations; ++end.iterations) {
            if (m_control.stop.stop_requested()) {
                return Problem{ProblemCode::cancelled, "The fit was stopped.", "Start it again.",
                               ""};
            }
            if (!survey()) {
                return broken();
            }
            const bool stay = !step(end);
            if (m_control.progress) {
                m_control.progress({end.iterations, m_likelihood.criterion()});
            }
            if (stay) {
                break;
            }
            if (residualVanishes()) {
                return Problem{ProblemCode::badInput,
                               "The terms explain the response entirely: the residual variance "
                               "vanishes.",
                               "Leave out a term, or hold the residual variance.", "mixed model"};
            }
        }
        end.iterations = std::min(end.iterations, m_control.maximumIterations);
        return finish(std::move(end));
    }

  private:
    static Problem broken() {
        return {ProblemCode::badInput, "The equations of the model cannot be solved.",
                "Look for weights, covariates or variances of extreme size.", "mixed model"};
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
        constexpr double kVanished = 1e-13;
        const std::vector<double>& residual = m_likelihood.state().residual;
        return std::any_of(residual.begin(), residual.end(),
                           [](double variance) { return variance < kVanished; });
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
        const std::vector<double> slopes = m_likelihood.gradient(m_all);
        const Penalty penalty = penaltyAt(m_records, m_task, m_likelihood.state(), m_all);
        std::vector<double> gradient(m_all.size());
        for (std::size_t k = 0; k < m_all.size(); ++k) {
            gradient[k] = slopes[k] + penalty.slopes[k];
        }
        freeze(gradient);
        m_free.clear();
        std::vector<double> freeGradient;
        std::vector<double> curvatures;
        for (std::size_t k = 0; k < m_all.size(); ++k) {
            if (isOpen(m_all[k])) {
                m_free.push_back(m_all[k]);
                freeGradient.push_back(gradient[k]);
                curvatures.push_back(penalty.curvatures[k] + turningCurvature(m_all[k], gradient));
            }
        }
        m_gradient = Eigen::Map<const Vector>(freeGradient.data(),
                                              static_cast<Eigen::Index>(freeGradient.size()));
        const std::vector<double> information = m_likelihood.averageInformation(m_free);
        const auto count = static_cast<Eigen::Index>(m_free.size());
        m_average = Eigen::Map<const Matrix>(information.data(), count, count);
        m_information = m_average;
        for (Eigen::Index k = 0; k < count; ++k) {
            m_information(k, k) += curvatures[static_cast<std::size_t>(k)];
        }
        return m_gradient.allFinite() && m_information.allFinite();
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
        const double largest = *std::max_element(residual.begin(), residual.end());
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

    struct Limits {
        double low;
        double high;
    };

    /// How far a variance may change, relatively.
    [[nodiscard]] Limits limits(const SearchParameter& parameter) const {
        if (parameter.term < 0) {
            return {kMostResidualShrinking - 1, kMostGrowing - 1};
        }
        const double levels = m_records.families[at(parameter.term)].levels;
        const double said = std::max(m_said[at(parameter.term)][at(parameter.row)], 1e-300);
        return {kMostShrinking - 1, std::max(kMostGrowing - 1, 0.1 * levels / said)};
    }
    [[nodiscard]] bool isSingle(const SearchParameter& parameter) const {
        return parameter.term < 0 || m_records.families[at(parameter.term)].width == 1;
    }

    /// The solution of a system with an information matrix, scaled to a diagonal of 1.
    static Vector solved(Matrix information, const Vector& right) {
        const Vector scale = information.diagonal().cwiseMax(1e-12).cwiseSqrt();
        const Vector inverse = scale.cwiseInverse();
        information = (inverse.asDiagonal() * information * inverse.asDiagonal()).eval();
        information.diagonal().array() += 1e-10;
        return information.ldlt().solve(right.cwiseQuotient(scale)).cwiseQuotient(scale);
    }

    /// What a step without limits would gain. The limited one can promise less than nothing where
    /// an axis that shrinks takes its covariances along, and that is no end of the search.
    [[nodiscard]] double promise() const {
        return -0.5 * m_gradient.dot(solved(dampedInformation(0), -m_gradient));
    }

    /// The step that information and gradient ask for, variances held to their limits and the
    /// others set right for that.
    [[nodiscard]] Vector limitedStep(double damping) const {
        const Matrix information = dampedInformation(damping);
        const auto count = static_cast<Eigen::Index>(m_free.size());
        Vector step = Vector::Zero(count);
        std::vector<bool> held(m_free.size(), false);
        for (std::size_t round = 0; round <= m_free.size(); ++round) {
            std::vector<Eigen::Index> open;
            for (Eigen::Index k = 0; k < count; ++k) {
                if (!held[static_cast<std::size_t>(k)]) {
                    open.push_back(k);
                }
            }
            const Vector rest = -(m_gradient + information * maskedStep(step, held));
            const Vector wanted = solved(information(open, open), rest(open));
            bool within = true;
            for (std::size_t k = 0; k < open.size(); ++k) {
                const auto place = static_cast<Eigen::Index>(k);
                const SearchParameter& parameter = m_free[static_cast<std::size_t>(open[k])];
                if (held[static_cast<std::size_t>(open[k])]) {
                    continue; // just now, by its axis
                }
                step(open[k]) = wanted(place);
                if (parameter.row != parameter.column) {
                    continue;
                }
                const Limits limit = limits(parameter);
                if (wanted(place) < limit.low || wanted(place) > limit.high) {
                    step(open[k]) = std::clamp(wanted(place), limit.low, limit.high);
                    held[static_cast<std::size_t>(open[k])] = true;
                    within = false;
                    if (wanted(place) < limit.low) {
                        holdCovariances(parameter, step, held);
                    }
                }
            }
            if (within) {
                break;
            }
        }
        return step;
    }
    /// An axis that shrinks to its limit takes its covariances along with it.
    void holdCovariances(const SearchParameter& axis, Vector& step, std::vector<bool>& held) const {
        for (std::size_t k = 0; k < m_free.size(); ++k) {
            const SearchParameter& other = m_free[k];
            if (axis.term >= 0 && other.term == axis.term && other.row != other.column &&
                (other.row == axis.row || other.column == axis.row)) {
                step(static_cast<Eigen::Index>(k)) = 0;
                held[k] = true;
            }
        }
    }

    /// The information with a share of what would be expected of independent levels added to its
    /// diagonal: q d^2 of a variance, 2 q d_1 d_2 of a covariance, d = (q - T) / q. The average
    /// information of a covariance near 0 says next to nothing of some directions.
    [[nodiscard]] Matrix dampedInformation(double damping) const {
        constexpr double kOfCovariances = 0.01;
        Matrix damped = m_information;
        for (std::size_t k = 0; k < m_free.size(); ++k) {
            const SearchParameter& parameter = m_free[k];
            const auto place = static_cast<Eigen::Index>(k);
            if (parameter.term < 0) {
                damped(place, place) += damping * m_information(place, place);
                continue;
            }
            const auto& said = m_said[at(parameter.term)];
            const double both = parameter.row == parameter.column ? 1 : 2;
            const double expected = both * said[at(parameter.row)] * said[at(parameter.column)] /
                                    m_records.families[at(parameter.term)].levels;
            const double share = isSingle(parameter) ? damping : std::max(damping, kOfCovariances);
            damped(place, place) += share * expected;
        }
        return damped;
    }
    static Vector maskedStep(const Vector& step, const std::vector<bool>& held) {
        Vector masked = step;
        for (std::size_t k = 0; k < held.size(); ++k) {
            if (!held[k]) {
                masked(static_cast<Eigen::Index>(k)) = 0;
            }
        }
        return masked;
    }

    /// The point a step leads to.
    [[nodiscard]] VarianceState stepped(const VarianceState& from, const Vector& step) const {
        VarianceState state = from;
        for (std::size_t term = 0; term < m_task.terms.size(); ++term) {
            stretch(static_cast<std::int32_t>(term), step, state.factors[term]);
        }
        for (std::size_t k = 0; k < m_free.size(); ++k) {
            if (m_free[k].term < 0) {
                state.residual[at(m_free[k].group)] *= 1 + step(static_cast<Eigen::Index>(k));
            }
        }
        return state;
    }
    /// The matrix L of a term after a step: L times the root of I + D, plus what turns free axes
    /// towards frozen ones.
    void stretch(std::int32_t term, const Vector& step, std::vector<double>& factor) const {
        const std::size_t width = at(m_records.families[at(term)].width);
        std::vector<double> change(width * width, 0.0);
        std::vector<double> turning(width * width, 0.0);
        double most = kMostGrowing;
        bool changed = false;
        for (std::size_t k = 0; k < m_free.size(); ++k) {
            const SearchParameter& parameter = m_free[k];
            if (parameter.term != term) {
                continue;
            }
            changed = true;
            const double value = step(static_cast<Eigen::Index>(k));
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
        if (m_free.empty()) {
            end.converged = true;
            return false;
        }
        const VarianceState from = m_likelihood.state();
        const double before = m_objective;
        Vector step = limitedStep(0);
        const double promised = promise();
        if (promised < m_control.tolerance) {
            end.converged = true;
            return false;
        }
        const double rounding = 1e-13 * std::max(std::abs(before), 1.0);
        constexpr double kFirstDamping = 0.25;
        constexpr double kMostDamping = 1e5;
        for (double damping = 0; damping < kMostDamping;
             damping = std::max(kFirstDamping, 4 * damping)) {
            if (damping > 0) {
                step = limitedStep(damping);
            }
            if (moveTo(stepped(from, step)) && m_objective <= before + rounding) {
                return true;
            }
        }
        // Expectation-maximisation: the gradient divided by the count behind each variance.
        Vector sure = Vector::Zero(step.size());
        for (std::size_t k = 0; k < m_free.size(); ++k) {
            const SearchParameter& parameter = m_free[k];
            const double count = parameter.term < 0 ? static_cast<double>(m_records.count())
                                                    : m_records.families[at(parameter.term)].levels;
            const double half = parameter.row == parameter.column ? 1 : 0.5;
            const auto place = static_cast<Eigen::Index>(k);
            sure(place) = std::max(-half * m_gradient(place) / count, -0.9);
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
            return broken();
        }
        end.groupAtBoundary = m_frozenGroups;
        end.penalty = penaltyValue(m_records, m_task, m_likelihood.state());
        end.parameters = m_free;
        end.information.assign(m_average.data(), m_average.data() + m_average.size());
        for (Eigen::Index k = 0; k < m_information.rows(); ++k) {
            end.information[static_cast<std::size_t>(k * m_information.rows() + k)] =
                m_information(k, k);
        }
        return end;
    }

    RestrictedLikelihood& m_likelihood;
    const ModelRecords& m_records;
    const SearchTask& m_task;
    const FitControl& m_control;
    std::vector<SearchParameter> m_all;
    std::vector<SearchParameter> m_free;
    std::vector<std::vector<bool>> m_frozen; // of each term's axes
    std::vector<bool> m_frozenGroups;        // of the residual
    std::vector<std::vector<double>> m_said; // of each term's axes: q - T
    Vector m_gradient;
    Matrix m_average;
    Matrix m_information;
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
