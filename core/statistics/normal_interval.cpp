#include "core/statistics/normal_interval.h"

#include "core/units/no_number.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace pipwright {

namespace {

const double kLogRootTwoPi = .5 * std::log(2 * std::numbers::pi);

/// Of the standard normal: the slope and the curvature are in the standardised mean.
IntervalEvidence narrow(double middle, double width) {
    // ln of the integral of the density around its middle, to the second order of the width.
    const double square = width * width;
    return {-middle * middle / 2 - kLogRootTwoPi + std::log(width) +
                (middle * middle - 1) * square / 24,
            middle * (1 - square / 12), 1 - square / 12};
}

/// Mills' ratio, the upper tail over the density, for x >= 0. Its continued fraction (Laplace;
/// Abramowitz & Stegun 1964, 26.2.14) from 5 on.
double millsRatio(double x) {
    if (x == kInfinity) {
        return 0;
    }
    if (x < 5) {
        const double rootHalfPi = std::sqrt(std::numbers::pi / 2);
        return rootHalfPi * std::exp(x * x / 2) * std::erfc(x / std::numbers::sqrt2);
    }
    double denominator = x;
    for (int term = 60; term >= 1; --term) {
        denominator = x + term / denominator;
    }
    return 1 / denominator;
}

/// For an interval above the mean, 0 <= low: all in units of the density at its lower end.
IntervalEvidence above(double low, double high) {
    const double exponent = (low - high) * (low + high) / 2;
    const double fall = std::exp(exponent);
    const double mass = millsRatio(low) - (fall > 0 ? millsRatio(high) * fall : 0);
    const double slope = -std::expm1(exponent) / mass;
    const double pull = fall > 0 ? (high * fall - low) / mass : -low / mass;
    return {-low * low / 2 - kLogRootTwoPi + std::log(mass), slope, slope * slope + pull};
}

double density(double x) {
    return std::exp(-x * x / 2 - kLogRootTwoPi);
}

/// For an interval that holds the mean.
IntervalEvidence around(double low, double high) {
    const double outside =
        .5 * (std::erfc(-low / std::numbers::sqrt2) + std::erfc(high / std::numbers::sqrt2));
    const double mass = 1 - outside;
    const double atLow = density(low);
    const double atHigh = density(high);
    const double slope = (atLow - atHigh) / mass;
    const double pull =
        ((high == kInfinity ? 0 : high * atHigh) - (low == -kInfinity ? 0 : low * atLow)) / mass;
    return {std::log1p(-outside), slope, slope * slope + pull};
}

IntervalEvidence standard(double low, double high) {
    // Relative to how fast the density falls there.
    constexpr double kNarrow = 1e-4;
    if (high - low < kNarrow / std::max(1.0, std::abs(low))) {
        return narrow((low + high) / 2, high - low);
    }
    if (low >= 0) {
        return above(low, high);
    }
    if (high <= 0) {
        IntervalEvidence mirrored = above(-high, -low);
        mirrored.slope = -mirrored.slope;
        return mirrored;
    }
    return around(low, high);
}

} // namespace

IntervalEvidence intervalEvidence(double low, double high, double mean, double standardDeviation) {
    // Far off, or with no end at all, the evidence is all but flat; a weight of 0 would drop the
    // record from the equations.
    constexpr double kLeastCurvature = 1e-12;
    IntervalEvidence evidence;
    const double a = (low - mean) / standardDeviation;
    if (low == high) {
        evidence = {-a * a / 2 - kLogRootTwoPi - std::log(standardDeviation), a, 1};
    } else {
        evidence = standard(a, (high - mean) / standardDeviation);
    }
    evidence.slope /= standardDeviation;
    evidence.curvature = std::clamp(evidence.curvature, kLeastCurvature, 1.0) /
                         (standardDeviation * standardDeviation);
    return evidence;
}

} // namespace pipwright
