#include "core/statistics/mixed_model_inference.h"

#include "core/statistics/distributions.h"
#include "core/statistics/mixed_model_content.h"
#include "core/statistics/mixed_model_penalty.h"
#include "core/statistics/refusal.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace pipwright {

namespace {

/// How far the search for a bound goes before it calls the side open, as a factor of the estimate.
constexpr double kFarthest = 1e10;
/// Steps of the search outward, as a factor of the variance.
constexpr double kStride = 4;
/// Relative accuracy of a bound, in ln v.
constexpr double kBoundAccuracy = 1e-7;
constexpr int kMostProfileSteps = 80;

/// The minimised criterion as one variance is held at a value, over its lowest.
class Profile {
  public:
    Profile(const MixedModelEquations& equations, const MixedFit& fit, std::int32_t component,
            FitControl control)
        : m_equations(&equations), m_fit(&fit), m_component(component),
          m_control(std::move(control)) {
        m_control.likelihood = fit.likelihood();
        m_control.progress = nullptr;
    }

    [[nodiscard]] const VarianceComponent& component() const {
        return m_fit->varianceComponents()[static_cast<std::size_t>(m_component)];
    }

    /// The signed distance to the wanted rise, on the scale of a normal deviate, which is nearly
    /// straight in ln v: below 0 inside the interval.
    [[nodiscard]] Result<double> excess(double variance, double deviate) const {
        const Result<MixedFit> held = fitHeldAt(variance);
        if (!held) {
            return held.problem();
        }
        // The prior of the variance held counts as it did in the fit.
        const double rise = held->criterion() + held->penalty() + priorPenalty(choice(), variance) -
                            m_fit->criterion() - m_fit->penalty();
        // A prior that forbids 0 gives no number there.
        return std::isnan(rise) ? deviate + 1 : std::sqrt(std::max(0.0, rise)) - deviate;
    }

  private:
    [[nodiscard]] const VarianceChoice& choice() const {
        const MixedModelEquations::Content& content = *m_equations->content();
        const VarianceComponent& which = component();
        return which.term ? content.termChoices[static_cast<std::size_t>(*which.term)]
                          : content.groupChoices[static_cast<std::size_t>(which.group)];
    }

    [[nodiscard]] Result<MixedFit> fitHeldAt(double variance) const {
        const VarianceChoice known = VarianceChoice::held(variance);
        const VarianceComponent& which = component();
        const Result<MixedModelEquations> held =
            which.term ? m_equations->withVarianceChoice(*which.term, known)
                       : m_equations->withResidualChoice(which.group, known);
        if (!held) {
            return held.problem();
        }
        return held->fit(m_control);
    }

    const MixedModelEquations* m_equations;
    const MixedFit* m_fit;
    std::int32_t m_component;
    FitControl m_control;
};

/// A place on the profile: ln v and the excess there.
struct ProfilePoint {
    double logVariance = 0;
    double excess = 0;
};

/// The place between `inside` and `outside` where the excess is 0, by false position with the
/// Illinois rule (Dowell & Jarratt 1971, BIT 11:168-174).
Result<double> crossing(const Profile& profile, double deviate, ProfilePoint inside,
                        ProfilePoint outside) {
    int lastSide = 0;
    for (int step = 0; step < kMostProfileSteps; ++step) {
        const double width = outside.logVariance - inside.logVariance;
        if (std::abs(width) < kBoundAccuracy) {
            break;
        }
        ProfilePoint next{
            inside.logVariance - width * inside.excess / (outside.excess - inside.excess), 0};
        const Result<double> excess = profile.excess(std::exp(next.logVariance), deviate);
        if (!excess) {
            return excess.problem();
        }
        next.excess = *excess;
        if (std::abs(next.excess) < kBoundAccuracy) {
            return std::exp(next.logVariance);
        }
        const int side = next.excess > 0 ? 1 : -1;
        ProfilePoint& moved = side > 0 ? outside : inside;
        ProfilePoint& kept = side > 0 ? inside : outside;
        moved = next;
        if (side == lastSide) {
            kept.excess /= 2;
        }
        lastSide = side;
    }
    return std::exp((inside.logVariance + outside.logVariance) / 2);
}

/// Walks from `start`, which lies inside, by a factor a step until the excess is above 0; then
/// finds the bound. Nothing when that side is open.
Result<std::optional<double>> boundFrom(const Profile& profile, double deviate, double start,
                                        double stride) {
    ProfilePoint inside{std::log(start), -deviate};
    for (double variance = start * stride;
         variance < start * kFarthest && variance > 0 && variance > start / kFarthest;
         variance *= stride) {
        const Result<double> excess = profile.excess(variance, deviate);
        if (!excess) {
            return excess.problem();
        }
        const ProfilePoint here{std::log(variance), *excess};
        if (here.excess > 0) {
            const Result<double> found = crossing(profile, deviate, inside, here);
            if (!found) {
                return found.problem();
            }
            return std::optional<double>{*found};
        }
        inside = here;
    }
    return std::optional<double>{};
}

/// Whether 0 lies inside the interval. Only a random term can be taken out; a residual cannot.
Result<bool> reachesZero(const Profile& profile, double deviate) {
    const VarianceComponent& which = profile.component();
    if (which.isResidual()) {
        return false;
    }
    if (which.value <= 0) {
        return true;
    }
    const Result<double> excess = profile.excess(0, deviate);
    if (!excess) {
        return excess.problem();
    }
    return *excess <= 0;
}

std::optional<Problem> unfitForProfile(const MixedFit& fit, std::int32_t component,
                                       double confidence) {
    if (!(confidence > 0 && confidence < 1)) {
        return unusable("A confidence must lie between 0 and 1.", "Ask for 0.95, say.");
    }
    const auto& components = fit.varianceComponents();
    if (component < 0 || static_cast<std::size_t>(component) >= components.size()) {
        return unusable("The model has no such variance.", "Name one of its variances.");
    }
    const VarianceComponent& which = components[static_cast<std::size_t>(component)];
    if (which.held) {
        return unusable("A variance that is held has no interval.", "Let it be estimated.");
    }
    const bool single =
        !which.term ||
        fit.randomEffects()[static_cast<std::size_t>(*which.term)].effectsPerLevel == 1;
    if (!single) {
        return unusable("Only single variances have a profile, not those of correlated slopes.",
                        "Use its standard error.");
    }
    return std::nullopt;
}

/// Variances and covariances that a fit estimated, of random terms and of the residual.
struct EstimatedCounts {
    std::int32_t termVariances = 0;
    std::int32_t termCovariances = 0;
    std::int32_t residuals = 0;
};

EstimatedCounts estimatedCounts(const MixedFit& fit) {
    EstimatedCounts counts;
    for (const VarianceComponent& component : fit.varianceComponents()) {
        if (component.held) {
            continue;
        }
        if (component.isResidual()) {
            ++counts.residuals;
        } else if (component.row == component.column) {
            ++counts.termVariances;
        } else {
            ++counts.termCovariances;
        }
    }
    return counts;
}

std::optional<Problem> unfitForComparison(const MixedFit& smaller, const MixedFit& larger) {
    if (smaller.likelihood() != larger.likelihood()) {
        return unusable("The two models were fitted by different likelihoods.",
                        "Fit both by the full or both by the restricted likelihood.");
    }
    if (smaller.recordsUsed() != larger.recordsUsed()) {
        return unusable("The two models rest on different records.", "Fit both to the same ones.");
    }
    if (larger.likelihood() == LikelihoodKind::restricted &&
        smaller.fixedRank() != larger.fixedRank()) {
        return unusable("Restricted likelihoods of different fixed terms cannot be compared.",
                        "Fit both models by the full likelihood.");
    }
    if (smaller.penalty() != 0 || larger.penalty() != 0) {
        return unusable("With a prior on a variance there is no likelihood ratio.",
                        "Fit both models without priors.");
    }
    return std::nullopt;
}

double chiSquareTail(double statistic, std::int32_t degrees) {
    if (degrees == 0) {
        return statistic > 0 ? 0 : 1;
    }
    const Result<double> tail =
        probabilityAbove(ChiSquareDistribution{static_cast<double>(degrees)}, statistic);
    return tail ? *tail : 1;
}

} // namespace

Result<VarianceInterval> profileInterval(const MixedModelEquations& equations, const MixedFit& fit,
                                         std::int32_t component, double confidence,
                                         const FitControl& control) {
    if (const auto problem = unfitForProfile(fit, component, confidence)) {
        return *problem;
    }
    const Profile profile(equations, fit, component, control);
    const double deviate = standardNormalUpperQuantile((1 - confidence) / 2);
    const double estimate = profile.component().value;
    VarianceInterval interval;

    const Result<bool> zeroInside = reachesZero(profile, deviate);
    if (!zeroInside) {
        return zeroInside.problem();
    }
    if (!*zeroInside) {
        const auto low = boundFrom(profile, deviate, estimate, 1 / kStride);
        if (!low) {
            return low.problem();
        }
        interval.low = low->value_or(0);
    }
    // An estimate of 0 has no logarithm: start from a millionth of the residual variance, which
    // no criterion can tell from 0.
    const double start = estimate > 0 ? estimate : 1e-6 * fit.residualVariance();
    const auto high = boundFrom(profile, deviate, start, kStride);
    if (!high) {
        return high.problem();
    }
    interval.high = *high;
    return interval;
}

Result<LikelihoodRatio> compareLikelihoods(const MixedFit& smaller, const MixedFit& larger) {
    if (const auto problem = unfitForComparison(smaller, larger)) {
        return *problem;
    }
    const EstimatedCounts few = estimatedCounts(smaller);
    const EstimatedCounts many = estimatedCounts(larger);
    const std::int32_t fixed = larger.fixedRank() - smaller.fixedRank();
    const std::int32_t variances = many.termVariances - few.termVariances;
    const std::int32_t covariances = many.termCovariances - few.termCovariances;
    const std::int32_t residuals = many.residuals - few.residuals;

    LikelihoodRatio ratio;
    ratio.degreesOfFreedom = fixed + variances + covariances + residuals;
    if (ratio.degreesOfFreedom < 1 || fixed < 0 || variances < 0 || covariances < 0 ||
        residuals < 0) {
        return unusable("The first model is not a smaller form of the second.",
                        "Give the model with fewer parameters first.");
    }
    // The searches end within their tolerance, so the larger model may look a shade worse.
    ratio.statistic = std::max(0.0, smaller.criterion() - larger.criterion());
    ratio.pValue = chiSquareTail(ratio.statistic, ratio.degreesOfFreedom);
    if (variances == 1 && fixed == 0 && residuals == 0) {
        ratio.boundaryPValue = (chiSquareTail(ratio.statistic, ratio.degreesOfFreedom - 1) +
                                chiSquareTail(ratio.statistic, ratio.degreesOfFreedom)) /
                               2;
    }
    return ratio;
}

} // namespace pipwright
