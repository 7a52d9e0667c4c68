#include "core/statistics/censored_mode.h"

#include "core/statistics/fitted_means.h"
#include "core/statistics/normal_interval.h"
#include "core/statistics/refusal.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <utility>

namespace pipwright {

namespace {

constexpr int kMostMoves = 200;
/// Newton's steps that have not come to rest by then give way to careful ones.
constexpr int kNewtonSteps = 25;
/// In residual standard deviations.
constexpr double kAtRest = 1e-10;
constexpr double kLongestMove = 3;
const double kLogTwoPi = std::log(2 * std::numbers::pi);
/// Careful steps this short have come near enough for Newton's to finish.
constexpr double kNear = 1e-6;

} // namespace

CensoredModeSearch::CensoredModeSearch(MixedModel model, std::vector<ResponseInterval> responses,
                                       LikelihoodKind likelihood, std::stop_token stop)
    : m_model(std::move(model)), m_responses(std::move(responses)),
      m_givenWeights(std::move(m_model.weights)), m_means(m_model.response),
      m_likelihood(likelihood), m_stop(std::move(stop)) {
    if (m_givenWeights.empty()) {
        m_givenWeights.assign(m_responses.size(), 1);
    }
    m_model.weights.assign(m_responses.size(), 1);
    m_model.residual = {};
    for (RandomTerm& term : m_model.random) {
        term.variance = {};
    }
}

CensoredModeSearch::Working CensoredModeSearch::linearise(double residualVariance, bool bounded) {
    Working working;
    for (std::size_t record = 0; record < m_responses.size(); ++record) {
        if (std::isnan(m_model.response[record])) {
            continue;
        }
        const double variance = residualVariance / m_givenWeights[record];
        const ResponseInterval& response = m_responses[record];
        const IntervalEvidence evidence =
            intervalEvidence(response.low, response.high, m_means[record], std::sqrt(variance));
        const double curvature = bounded ? 1 / variance : evidence.curvature;
        m_model.weights[record] = curvature * residualVariance;
        m_model.response[record] = m_means[record] + evidence.slope / curvature;
        working.logLikelihood += evidence.logProbability;
        working.logWeights += std::log(curvature);
    }
    return working;
}

CensoredModeSearch::Move CensoredModeSearch::moveTo(const std::vector<double>& means,
                                                    double residualVariance, double longest) {
    const double deviation = std::sqrt(residualVariance);
    Move move;
    for (std::size_t record = 0; record < means.size(); ++record) {
        if (std::isnan(m_model.response[record])) {
            continue;
        }
        ++move.records;
        move.distance = std::max(move.distance, std::abs(means[record] - m_means[record]));
        const double rest = m_model.response[record] - means[record];
        move.square += m_model.weights[record] / residualVariance * rest * rest;
    }
    move.distance /= deviation;
    const double factor = std::min(1.0, longest / std::max(move.distance, kAtRest));
    for (std::size_t record = 0; record < means.size(); ++record) {
        m_means[record] += factor * (means[record] - m_means[record]);
    }
    return move;
}

Result<CensoredMode> CensoredModeSearch::at(const VarianceValues& variances) {
    const double residual = variances.back();
    bool careful = false;
    for (int step = 0; step < kMostMoves; ++step) {
        if (m_stop.stop_requested()) {
            return Problem{ProblemCode::cancelled, "The fit was stopped.", "Start it again.", {}};
        }
        careful = careful || step == kNewtonSteps;
        const Working working = linearise(residual, careful);
        const auto equations = MixedModelEquations::of(m_model, m_stop);
        if (!equations) {
            return equations.problem();
        }
        const auto fit = equations->withVariances(variances, m_likelihood);
        if (!fit) {
            return fit.problem();
        }
        const Move move = moveTo(fittedMeans(m_model, *fit), residual, kLongestMove);
        if (move.distance < kAtRest && !careful) {
            return CensoredMode{*fit, fit->criterion() - move.records * kLogTwoPi +
                                          working.logWeights - move.square -
                                          2 * working.logLikelihood};
        }
        careful = careful && move.distance > kNear;
    }
    return unusable("The censored responses set no bound to some effect.",
                    "Leave out the levels of which every response is open on the same side.");
}

} // namespace pipwright
