#include "core/statistics/censored_mixed_model.h"

#include "core/statistics/censored_mode.h"
#include "core/statistics/mixed_model_content.h"
#include "core/statistics/quasi_newton.h"
#include "core/statistics/refusal.h"
#include "core/statistics/variance_parameters.h"
#include "core/units/no_number.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <memory>
#include <optional>
#include <utility>

namespace pipwright {

namespace {

/// A residual this small, in units of the spread of the ends, is none.
constexpr double kNoResidual = 1e-6;
/// Taking a variance away costs less than this when it is nothing.
constexpr double kNoGain = 1e-6;
/// Of differences of the criterion, in parameters of the order of 1.
constexpr double kStep = 1e-4;

/// What the ends of the responses look like.
struct Ends {
    std::int64_t low = 0;  ///< records with a finite low end
    std::int64_t high = 0; ///< records with a finite high end
    std::int64_t exact = 0;
    std::int64_t given = 0; ///< records with a response
    double mean = 0;
    double spread = 0; ///< standard deviation of the finite ends
};

bool isMissing(const ResponseInterval& response) {
    return std::isnan(response.low) || std::isnan(response.high);
}

Ends endsOf(const std::vector<ResponseInterval>& responses) {
    Ends ends;
    double count = 0;
    double squares = 0;
    for (const ResponseInterval& response : responses) {
        if (isMissing(response)) {
            continue;
        }
        ++ends.given;
        ends.exact += response.low == response.high ? 1 : 0;
        ends.low += std::isfinite(response.low) ? 1 : 0;
        ends.high += std::isfinite(response.high) ? 1 : 0;
        for (const double end : {response.low, response.high}) {
            if (std::isfinite(end)) { // Welford (1962)
                ++count;
                const double distance = end - ends.mean;
                ends.mean += distance / count;
                squares += distance * (end - ends.mean);
            }
        }
    }
    ends.spread = count > 1 ? std::sqrt(squares / (count - 1)) : 0;
    return ends;
}

Problem tooWide() {
    return unusable("The intervals are too wide to tell how much single responses differ.",
                    "Look more often, or hold the residual variance.");
}

std::optional<Problem> unfitResponses(const MixedModel& model,
                                      const std::vector<ResponseInterval>& responses) {
    for (const ResponseInterval& response : responses) {
        if (response.low > response.high) {
            return unusable("An interval ends before it begins.", "Exchange its ends.");
        }
        if (response.low == response.high && std::isinf(response.low)) {
            return unusable("A response is infinite.", "Leave the record out or correct it.");
        }
    }
    if (model.residual.groups.count > 1) {
        return unusable("Censored responses can have one residual variance only.",
                        "Leave out the groups of the residual.");
    }
    const Ends ends = endsOf(responses);
    if (ends.given == 0) {
        return unusable("There are no records.", "Bring in some scores first.");
    }
    if (ends.low == 0 || ends.high == 0) {
        return unusable("No response has an end on one of the two sides.",
                        "Wait until some responses are bounded from below and some from above.");
    }
    return std::nullopt;
}

/// A number for each response to begin with: its middle, or half a spread beyond its only end.
std::vector<double> firstGuesses(const std::vector<ResponseInterval>& responses, const Ends& ends) {
    std::vector<double> guesses;
    for (const ResponseInterval& response : responses) {
        if (isMissing(response)) {
            guesses.push_back(kNaN);
        } else if (std::isfinite(response.low) && std::isfinite(response.high)) {
            guesses.push_back(response.low + (response.high - response.low) / 2);
        } else if (std::isfinite(response.low)) {
            guesses.push_back(response.low + ends.spread / 2);
        } else if (std::isfinite(response.high)) {
            guesses.push_back(response.high - ends.spread / 2);
        } else {
            guesses.push_back(ends.mean);
        }
    }
    return guesses;
}

/// Marks the records that no model can use as missing, so that they are left out throughout.
void markUnusable(MixedModel& model) {
    const auto drop = [&model](std::size_t record, bool unusableRecord) {
        if (unusableRecord) {
            model.response[record] = kNaN;
        }
    };
    for (std::size_t record = 0; record < model.response.size(); ++record) {
        if (!model.weights.empty()) {
            drop(record, !(model.weights[record] > 0));
        }
        for (const FixedTerm& term : model.fixed) {
            drop(record, !term.levels.ofRecord.empty() && term.levels.ofRecord[record] < 0);
            drop(record, !term.covariate.empty() && std::isnan(term.covariate[record]));
        }
        for (const RandomTerm& term : model.random) {
            for (const auto& covariate : term.covariates) {
                drop(record, std::isnan(covariate[record]));
            }
        }
    }
}

/// How the search for the variances ended, in the order of MixedFit::varianceComponents.
struct SearchedVariances {
    VarianceValues values{};
    double criterion = 0;
    double penalty = 0;
    bool converged = true;
    int iterations = 0;
    std::vector<bool> estimated{};
    std::vector<double> covariance{};
};

/// The effects at the mode, of which the last step held the variances, as a fit of its own.
MixedFit fitOf(const MixedFit& effects, SearchedVariances searched) {
    auto content = std::make_shared<MixedFit::Content>(*effects.content());
    const std::size_t count = content->components.size();
    for (std::size_t i = 0; i < count; ++i) {
        VarianceComponent& component = content->components[i];
        component.value = searched.values[i];
        component.held = !searched.estimated[i];
        component.atBoundary =
            searched.estimated[i] && component.row == component.column && component.value == 0;
        const double variance = searched.covariance[i * count + i];
        if (variance > 0) {
            component.standardError = std::sqrt(variance);
        }
    }
    content->criterion = searched.criterion;
    content->penalty = searched.penalty;
    content->converged = searched.converged;
    content->iterations = searched.iterations;
    content->componentCovariance = std::move(searched.covariance);
    return MixedFit(std::move(content));
}

/// Estimates the variances of censored responses and keeps what belongs to them.
class CensoredFitting {
  public:
    CensoredFitting(const MixedModel& model, std::vector<ResponseInterval> responses,
                    const MixedFit& start, FitControl control, double spread)
        : m_parameters(model, std::sqrt(start.residualVariance())),
          m_search(model, std::move(responses), control.likelihood, control.stop),
          m_control(std::move(control)), m_spread(spread) {
        for (const VarianceComponent& component : start.varianceComponents()) {
            m_start.push_back(component.value);
        }
    }

    Result<MixedFit> fit();

  private:
    Result<double> objective(const VarianceValues& values);
    Result<double> objectiveAt(const std::vector<double>& parameters) {
        return objective(m_parameters.values(parameters));
    }
    /// Whether a hundredth of the residual variance would do as well: nothing tells it then.
    Result<bool> residualIsIdle(const LowestPoint& lowest);
    /// Sets variances to 0 that are as good as 0; says which parameters were.
    Result<std::vector<bool>> dropNothings(LowestPoint& lowest);
    Result<std::vector<double>> samplingCovariance(const LowestPoint& lowest,
                                                   const std::vector<bool>& gone);

    VarianceParameters m_parameters;
    CensoredModeSearch m_search;
    FitControl m_control;
    double m_spread;
    VarianceValues m_start;
};

Result<double> CensoredFitting::objective(const VarianceValues& values) {
    if (std::sqrt(values.back()) < kNoResidual * m_spread) {
        return tooWide();
    }
    const Result<CensoredMode> mode = m_search.at(values);
    if (!mode) {
        return mode.problem();
    }
    return mode->criterion + m_parameters.penalty(values);
}

Result<bool> CensoredFitting::residualIsIdle(const LowestPoint& lowest) {
    if (!m_parameters.estimated().back()) {
        return false;
    }
    VarianceValues values = m_parameters.values(lowest.parameters);
    values.back() /= 100;
    const Result<double> value = objective(values);
    if (!value) {
        return value.problem();
    }
    return *value < lowest.value + kNoGain;
}

Result<std::vector<bool>> CensoredFitting::dropNothings(LowestPoint& lowest) {
    std::vector<bool> gone(m_parameters.count());
    for (const std::size_t parameter : m_parameters.singleParameters()) {
        std::vector<double> without = lowest.parameters;
        without[parameter] = 0;
        const Result<double> value = objectiveAt(without);
        if (!value) {
            return value.problem();
        }
        if (*value <= lowest.value + kNoGain) {
            lowest.parameters = std::move(without);
            lowest.value = *value;
            gone[parameter] = true;
        }
    }
    return gone;
}

Result<std::vector<double>> CensoredFitting::samplingCovariance(const LowestPoint& lowest,
                                                                const std::vector<bool>& gone) {
    std::vector<std::size_t> free;
    for (std::size_t parameter = 0; parameter < gone.size(); ++parameter) {
        if (!gone[parameter]) {
            free.push_back(parameter);
        }
    }
    const auto with = [&](const std::vector<double>& part) {
        std::vector<double> parameters = lowest.parameters;
        for (std::size_t i = 0; i < free.size(); ++i) {
            parameters[free[i]] = part[i];
        }
        return parameters;
    };
    std::vector<double> at;
    at.reserve(free.size());
    for (const std::size_t parameter : free) {
        at.push_back(lowest.parameters[parameter]);
    }
    const auto second = secondDerivatives(
        [&](const std::vector<double>& part) { return objectiveAt(with(part)); }, at, kStep);
    if (!second) {
        return second.problem();
    }
    const auto inverse = inverseOfPositive(*second);
    const std::size_t values = m_start.size();
    std::vector<double> covariance(values * values);
    if (!inverse) {
        return covariance;
    }
    // The criterion is minus twice the log-likelihood; the rest is the delta method.
    std::vector<VarianceValues> changes;
    for (std::size_t i = 0; i < free.size(); ++i) {
        std::vector<double> low = at;
        std::vector<double> high = at;
        low[i] -= kStep;
        high[i] += kStep;
        const VarianceValues below = m_parameters.values(with(low));
        changes.push_back(m_parameters.values(with(high)));
        for (std::size_t value = 0; value < values; ++value) {
            changes[i][value] = (changes[i][value] - below[value]) / (2 * kStep);
        }
    }
    for (std::size_t i = 0; i < free.size(); ++i) {
        for (std::size_t j = 0; j < free.size(); ++j) {
            for (std::size_t cell = 0; cell < covariance.size(); ++cell) {
                covariance[cell] += 2 * (*inverse)[i * free.size() + j] *
                                    changes[i][cell / values] * changes[j][cell % values];
            }
        }
    }
    return covariance;
}

Result<MixedFit> CensoredFitting::fit() {
    SearchControl search;
    search.tolerance = m_control.tolerance;
    search.maximumIterations = m_control.maximumIterations;
    search.differenceStep = kStep;
    if (m_control.progress) {
        search.progress = [this](int iteration, double value) {
            m_control.progress({iteration, value});
        };
    }
    auto lowest = lowestPoint([this](const std::vector<double>& at) { return objectiveAt(at); },
                              m_parameters.startFrom(m_start), search);
    if (!lowest) {
        return lowest.problem();
    }
    const auto idle = residualIsIdle(*lowest);
    if (!idle || *idle) {
        return idle ? tooWide() : idle.problem();
    }
    const auto gone = dropNothings(*lowest);
    if (!gone) {
        return gone.problem();
    }
    const auto covariance = samplingCovariance(*lowest, *gone);
    if (!covariance) {
        return covariance.problem();
    }
    const VarianceValues values = m_parameters.values(lowest->parameters);
    const auto mode = m_search.at(values);
    if (!mode) {
        return mode.problem();
    }
    SearchedVariances searched;
    searched.values = values;
    searched.criterion = mode->criterion;
    searched.penalty = m_parameters.penalty(values);
    searched.converged = lowest->converged;
    searched.iterations = lowest->iterations;
    searched.estimated = m_parameters.estimated();
    searched.covariance = *covariance;
    return fitOf(mode->effects, std::move(searched));
}

} // namespace

Result<MixedFit> fitCensoredMixedModel(MixedModel model,
                                       const std::vector<ResponseInterval>& responses,
                                       const FitControl& control) {
    if (const auto problem = unfitResponses(model, responses)) {
        return *problem;
    }
    const Ends ends = endsOf(responses);
    model.response = firstGuesses(responses, ends);
    FitControl quiet = control;
    quiet.progress = nullptr;
    const bool exact = ends.exact == ends.given;
    Result<MixedFit> start = fitMixedModel(model, exact ? control : quiet);
    if (!start || exact) {
        return start;
    }
    markUnusable(model);
    return CensoredFitting(model, responses, *start, control, ends.spread).fit();
}

} // namespace pipwright
