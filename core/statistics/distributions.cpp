#include "core/statistics/distributions.h"

#include "core/statistics/refusal.h"
#include "core/statistics/sound_parameters.h"
#include "core/units/no_number.h"

#include <algorithm>
#include <boost/math/special_functions/beta.hpp>
#include <boost/math/special_functions/erf.hpp>
#include <boost/math/special_functions/gamma.hpp>
#include <cmath>
#include <limits>
#include <numbers>
#include <optional>

namespace pipwright {

namespace {

namespace policies = boost::math::policies;

/// Problems of the library come back as NaN or infinity and are turned into a Problem here.
using Quiet = policies::policy<
    policies::domain_error<policies::ignore_error>, policies::pole_error<policies::ignore_error>,
    policies::overflow_error<policies::ignore_error>,
    policies::evaluation_error<policies::ignore_error>,
    policies::rounding_error<policies::ignore_error>,
    policies::indeterminate_result_error<policies::ignore_error>, policies::promote_double<false>>;
constexpr Quiet kQuiet{};

/// Both tails at x: below (P(X <= x)) and above (P(X > x)).
struct Tails {
    double below = 0;
    double above = 1;
};

Tails swapped(Tails tails) {
    return {tails.above, tails.below};
}

constexpr Tails kNothingBelow{0, 1};
constexpr Tails kAllBelow{1, 0};

Tails gammaTails(double shape, double x) {
    if (x <= 0) {
        return kNothingBelow;
    }
    if (x == kInfinity) {
        return kAllBelow;
    }
    return {boost::math::gamma_p(shape, x, kQuiet), boost::math::gamma_q(shape, x, kQuiet)};
}

Tails betaTails(double a, double b, double x) {
    if (x <= 0) {
        return kNothingBelow;
    }
    if (x >= 1) {
        return kAllBelow;
    }
    return {boost::math::ibeta(a, b, x, kQuiet), boost::math::ibetac(a, b, x, kQuiet)};
}

// ---- which parameters name a distribution --------------------------------------------------

bool isSound(const NormalDistribution& d) {
    return std::isfinite(d.mean) && isPositive(d.standardDeviation);
}
bool isSound(const StudentDistribution& d) {
    return isPositive(d.degreesOfFreedom);
}
bool isSound(const ChiSquareDistribution& d) {
    return isPositive(d.degreesOfFreedom);
}
bool isSound(const VarianceRatioDistribution& d) {
    return isPositive(d.numeratorDegrees) && isPositive(d.denominatorDegrees);
}
bool isSound(const GammaDistribution& d) {
    return isPositive(d.shape) && isPositive(d.scale);
}
bool isSound(const WeibullDistribution& d) {
    return isPositive(d.shape) && isPositive(d.scale);
}
bool isSound(const BinomialDistribution& d) {
    return std::isfinite(d.tries) && d.tries >= 0 && d.tries == std::floor(d.tries) &&
           isChance(d.chance);
}
bool isSound(const NegativeBinomialDistribution& d) {
    return isPositive(d.wanted) && isChance(d.chance) && d.chance > 0;
}

// ---- probabilities ---------------------------------------------------------------------------

Tails tails(const NormalDistribution& d, double x) {
    const double z = (x - d.mean) / d.standardDeviation;
    return {standardNormalBelow(z), standardNormalAbove(z)};
}

/// P(|T| > t) = I_{v/(v+t^2)}(v/2, 1/2) (Abramowitz & Stegun 1964, 26.7.1).
Tails tails(const StudentDistribution& d, double t) {
    if (std::isinf(t)) {
        return t > 0 ? kAllBelow : kNothingBelow;
    }
    const double v = d.degreesOfFreedom;
    const double square = t * t;
    const double beyond = square < v ? betaTails(.5, v / 2, square / (v + square)).above
                                     : betaTails(v / 2, .5, v / (v + square)).below;
    const Tails upper{1 - beyond / 2, beyond / 2};
    return t > 0 ? upper : swapped(upper);
}

/// Abramowitz & Stegun (1964), 26.4.19.
Tails tails(const ChiSquareDistribution& d, double x) {
    return gammaTails(d.degreesOfFreedom / 2, x / 2);
}

/// Abramowitz & Stegun (1964), 26.6.2.
Tails tails(const VarianceRatioDistribution& d, double x) {
    if (x <= 0) {
        return kNothingBelow;
    }
    if (x == kInfinity) {
        return kAllBelow;
    }
    const double part = d.numeratorDegrees * x;
    const double whole = part + d.denominatorDegrees;
    if (part < d.denominatorDegrees) {
        return betaTails(d.numeratorDegrees / 2, d.denominatorDegrees / 2, part / whole);
    }
    return swapped(
        betaTails(d.denominatorDegrees / 2, d.numeratorDegrees / 2, d.denominatorDegrees / whole));
}

Tails tails(const BetaDistribution& d, double x) {
    return betaTails(d.a, d.b, x);
}

Tails tails(const GammaDistribution& d, double x) {
    return gammaTails(d.shape, x / d.scale);
}

Tails tails(const WeibullDistribution& d, double x) {
    if (x <= 0) {
        return kNothingBelow;
    }
    const double hazard = std::pow(x / d.scale, d.shape);
    return {-std::expm1(-hazard), std::exp(-hazard)};
}

/// P(X >= k) = I_p(k, n - k + 1) (Abramowitz & Stegun 1964, 26.5.24).
Tails tails(const BinomialDistribution& d, double x) {
    const double k = std::floor(x);
    if (k < 0) {
        return kNothingBelow;
    }
    if (k >= d.tries) {
        return kAllBelow;
    }
    return swapped(betaTails(k + 1, d.tries - k, d.chance));
}

/// P(failures <= k) = I_p(r, k + 1) (Abramowitz & Stegun 1964, 26.5.26).
Tails tails(const NegativeBinomialDistribution& d, double x) {
    const double k = std::floor(x);
    if (k < 0) {
        return kNothingBelow;
    }
    return std::isinf(k) ? kAllBelow : betaTails(d.wanted, k + 1, d.chance);
}

// ---- quantiles, of probabilities strictly between 0 and 1 --------------------------------------

double inverse(const NormalDistribution& d, double p) {
    return d.mean + d.standardDeviation * standardNormalQuantile(p);
}

double inverse(const StudentDistribution& d, double p) {
    const double tail = std::min(p, 1 - p);
    double complement = 0;
    const double x =
        boost::math::ibeta_inv(d.degreesOfFreedom / 2, .5, 2 * tail, &complement, kQuiet);
    const double t = std::sqrt(d.degreesOfFreedom * complement / x);
    return p < .5 ? -t : t;
}

double inverse(const ChiSquareDistribution& d, double p) {
    return 2 * boost::math::gamma_p_inv(d.degreesOfFreedom / 2, p, kQuiet);
}

double inverse(const VarianceRatioDistribution& d, double p) {
    double complement = 0;
    const double x = boost::math::ibeta_inv(d.numeratorDegrees / 2, d.denominatorDegrees / 2, p,
                                            &complement, kQuiet);
    return d.denominatorDegrees * x / (d.numeratorDegrees * complement);
}

double inverse(const BetaDistribution& d, double p) {
    return boost::math::ibeta_inv(d.a, d.b, p, static_cast<double*>(nullptr), kQuiet);
}

double inverse(const GammaDistribution& d, double p) {
    return d.scale * boost::math::gamma_p_inv(d.shape, p, kQuiet);
}

double inverse(const WeibullDistribution& d, double p) {
    return d.scale * std::pow(-std::log1p(-p), 1 / d.shape);
}

/// The smallest whole k from 0 on with P(X <= k) >= p: doubling, then halving the interval.
template <typename Counts>
double smallestCount(const Counts& d, double p) {
    const auto reaches = [&](double k) { return tails(d, k).below >= p; };
    if (reaches(0)) {
        return 0;
    }
    double low = 0;
    double high = 1;
    while (!reaches(high)) {
        low = high;
        high *= 2;
        if (high > 1e15) {
            return kInfinity;
        }
    }
    while (high - low > 1) {
        const double middle = std::floor((low + high) / 2);
        (reaches(middle) ? high : low) = middle;
    }
    return high;
}

double inverse(const BinomialDistribution& d, double p) {
    return smallestCount(d, p);
}

double inverse(const NegativeBinomialDistribution& d, double p) {
    return smallestCount(d, p);
}

/// The ends of the range.
double lowestOf(const Distribution& distribution) {
    const bool wholeLine = std::holds_alternative<NormalDistribution>(distribution) ||
                           std::holds_alternative<StudentDistribution>(distribution);
    return wholeLine ? -kInfinity : 0;
}

double highestOf(const Distribution& distribution) {
    if (std::holds_alternative<BetaDistribution>(distribution)) {
        return 1;
    }
    if (const auto* counts = std::get_if<BinomialDistribution>(&distribution)) {
        return counts->chance > 0 ? counts->tries : 0;
    }
    const auto* failures = std::get_if<NegativeBinomialDistribution>(&distribution);
    return failures != nullptr && failures->chance == 1 ? 0 : kInfinity;
}

std::optional<Problem> faultOf(const Distribution& distribution) {
    if (std::visit([](const auto& d) { return isSound(d); }, distribution)) {
        return std::nullopt;
    }
    return unusable("No distribution has these parameters.",
                    "Spreads, shapes and degrees of freedom must be above 0, numbers of tries "
                    "whole, chances between 0 and 1.");
}

Result<Tails> tailsAt(const Distribution& distribution, double x) {
    if (auto fault = faultOf(distribution)) {
        return *fault;
    }
    if (std::isnan(x)) {
        return unusable("The value asked about is not a number.", "Give a number.");
    }
    const Tails found = std::visit([x](const auto& d) { return tails(d, x); }, distribution);
    if (std::isnan(found.below) || std::isnan(found.above)) {
        return undecided("The probability could not be computed.",
                         "Ask with less extreme parameters.");
    }
    return found;
}

} // namespace

Result<double> probabilityAtMost(const Distribution& distribution, double x) {
    const auto found = tailsAt(distribution, x);
    return found ? Result<double>(found->below) : found.problem();
}

Result<double> probabilityAbove(const Distribution& distribution, double x) {
    const auto found = tailsAt(distribution, x);
    return found ? Result<double>(found->above) : found.problem();
}

Result<double> quantile(const Distribution& distribution, double probability) {
    if (auto fault = faultOf(distribution)) {
        return *fault;
    }
    if (!isChance(probability)) {
        return unusable("A probability must lie between 0 and 1.", "Give one that does.");
    }
    if (probability == 0) {
        return lowestOf(distribution);
    }
    if (probability == 1) {
        return highestOf(distribution);
    }
    const double found =
        std::visit([&](const auto& d) { return inverse(d, probability); }, distribution);
    if (!std::isfinite(found)) {
        return undecided("The quantile could not be computed.",
                         "Ask with less extreme parameters.");
    }
    return found;
}

double standardNormalDensity(double z) {
    return std::exp(-.5 * z * z) * std::numbers::inv_sqrtpi / std::numbers::sqrt2;
}

double standardNormalBelow(double z) {
    return .5 * std::erfc(-z / std::numbers::sqrt2);
}

double standardNormalAbove(double z) {
    return .5 * std::erfc(z / std::numbers::sqrt2);
}

double standardNormalQuantile(double probability) {
    return -standardNormalUpperQuantile(probability);
}

double standardNormalUpperQuantile(double probability) {
    if (probability <= 0 || probability >= 1) {
        return probability <= 0 ? kInfinity : -kInfinity;
    }
    return std::numbers::sqrt2 * boost::math::erfc_inv(2 * probability, kQuiet);
}

double logBinomialCoefficient(double all, double chosen) {
    if (chosen <= 0 || chosen >= all) {
        return 0;
    }
    return std::lgamma(all + 1) - std::lgamma(chosen + 1) - std::lgamma(all - chosen + 1);
}

} // namespace pipwright
