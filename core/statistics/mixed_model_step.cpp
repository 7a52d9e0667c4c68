#include "core/statistics/mixed_model_step.h"

#include <Eigen/Dense>
#include <algorithm>

namespace pipwright {

namespace {

using Matrix = Eigen::MatrixXd;
using Vector = Eigen::VectorXd;

Eigen::Index count(const StepModel& model) {
    return static_cast<Eigen::Index>(model.parameters.size());
}

Eigen::Map<const Vector> gradientOf(const StepModel& model) {
    return {model.gradient.data(), count(model)};
}

Matrix dampedInformation(const StepModel& model, double damping) {
    Matrix damped = Eigen::Map<const Matrix>(model.information.data(), count(model), count(model));
    for (Eigen::Index k = 0; k < count(model); ++k) {
        const auto place = static_cast<std::size_t>(k);
        damped(k, k) += std::max(damping, model.leastDamping[place]) * model.expected[place];
    }
    return damped;
}

/// The solution of a system with an information matrix, scaled to a diagonal of 1.
Vector solved(Matrix information, const Vector& right) {
    const Vector scale = information.diagonal().cwiseMax(1e-12).cwiseSqrt();
    const Vector inverse = scale.cwiseInverse();
    information = (inverse.asDiagonal() * information * inverse.asDiagonal()).eval();
    information.diagonal().array() += 1e-10;
    return information.ldlt().solve(right.cwiseQuotient(scale)).cwiseQuotient(scale);
}

/// A step while it is found: some of its numbers are held where they are.
struct StepDraft {
    Vector step;
    std::vector<bool> held;

    [[nodiscard]] Vector heldPart() const {
        Vector part = step;
        for (std::size_t k = 0; k < held.size(); ++k) {
            if (!held[k]) {
                part(static_cast<Eigen::Index>(k)) = 0;
            }
        }
        return part;
    }
    /// An axis that shrinks to its limit takes its covariances along with it.
    void holdCovariances(const StepModel& model, const SearchParameter& axis) {
        for (std::size_t k = 0; k < held.size(); ++k) {
            const SearchParameter& other = model.parameters[k];
            if (axis.term >= 0 && other.term == axis.term && other.row != other.column &&
                (other.row == axis.row || other.column == axis.row)) {
                step(static_cast<Eigen::Index>(k)) = 0;
                held[k] = true;
            }
        }
    }
    /// Takes one number as wanted; false when a limit stands in the way.
    bool take(const StepModel& model, Eigen::Index k, double wanted) {
        const auto place = static_cast<std::size_t>(k);
        const SearchParameter& parameter = model.parameters[place];
        step(k) = wanted;
        if (parameter.row != parameter.column ||
            (wanted >= model.low[place] && wanted <= model.high[place])) {
            return true;
        }
        step(k) = std::clamp(wanted, model.low[place], model.high[place]);
        held[place] = true;
        if (wanted < model.low[place]) {
            holdCovariances(model, parameter);
        }
        return false;
    }
};

} // namespace

double promisedGain(const StepModel& model) {
    const Vector gradient = gradientOf(model);
    return 0.5 * gradient.dot(solved(dampedInformation(model, 0), gradient));
}

std::vector<double> limitedStep(const StepModel& model, double damping) {
    const Matrix information = dampedInformation(model, damping);
    StepDraft draft{Vector::Zero(count(model)), std::vector<bool>(model.parameters.size(), false)};
    for (std::size_t round = 0; round <= model.parameters.size(); ++round) {
        std::vector<Eigen::Index> open;
        for (Eigen::Index k = 0; k < count(model); ++k) {
            if (!draft.held[static_cast<std::size_t>(k)]) {
                open.push_back(k);
            }
        }
        const Vector rest = -(gradientOf(model) + information * draft.heldPart());
        const Vector wanted = solved(information(open, open), rest(open));
        bool within = true;
        for (std::size_t k = 0; k < open.size(); ++k) {
            // It may have been held just now, by its axis.
            if (!draft.held[static_cast<std::size_t>(open[k])]) {
                within = draft.take(model, open[k], wanted(static_cast<Eigen::Index>(k))) && within;
            }
        }
        if (within) {
            break;
        }
    }
    return {draft.step.data(), draft.step.data() + draft.step.size()};
}

} // namespace pipwright
