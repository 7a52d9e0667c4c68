#pragma once

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>

/// Integrals of smooth curves. Templates, so that a curve can be a lambda with what it needs.
namespace pipwright {

/// An integral and how far it can be off.
struct Integral {
    double value = 0;
    double error = 0;
};

/// Gauss' rule of 7 points and Kronrod's (1965) of 15 that contains it, on [low, high]; their
/// difference is the error.
template <typename Curve>
Integral kronrodRule(const Curve& curve, double low, double high) {
    static constexpr std::array kNodes{
        0.991455371120812639206854697526329, 0.949107912342758524526189684047851,
        0.864864423359769072789712788640926, 0.741531185599394439863864773280788,
        0.586087235467691130294144838258730, 0.405845151377397166906606412076961,
        0.207784955007898467600689403773245};
    static constexpr std::array kKronrodWeights{
        0.022935322010529224963732008058970, 0.063092092629978553290700663189204,
        0.104790010322250183839876322541518, 0.140653259715525918745189590510238,
        0.169004726639267902826583426598550, 0.190350578064785409913256402421014,
        0.204432940075298892414161999234649};
    static constexpr std::array kGaussWeights{0.129484966168869693270611432679082,
                                              0.279705391489276667901467771423780,
                                              0.381830050505118944950369775488975};
    const double middle = (low + high) / 2;
    const double half = (high - low) / 2;
    const double centre = curve(middle);
    double kronrod = 0.209482141084727828012999174891714 * centre;
    double gauss = 0.417959183673469387755102040816327 * centre;
    for (std::size_t i = 0; i < kNodes.size(); ++i) {
        const double pair = curve(middle - half * kNodes[i]) + curve(middle + half * kNodes[i]);
        kronrod += kKronrodWeights[i] * pair;
        if (i % 2 == 1) {
            gauss += kGaussWeights[i / 2] * pair;
        }
    }
    return {half * kronrod, std::abs(half * (kronrod - gauss))};
}

/// The integral from `low` to `high` to within about `tolerance`, halving intervals where the curve
/// bends (at most `depth` times).
template <typename Curve>
Integral integrate(const Curve& curve, double low, double high, double tolerance,
                   int depth = 30) { // NOLINT(misc-no-recursion)
    const Integral whole = kronrodRule(curve, low, high);
    if (whole.error <= tolerance || depth == 0) {
        return whole;
    }
    const double middle = (low + high) / 2;
    const Integral left = integrate(curve, low, middle, tolerance / 2, depth - 1);
    const Integral right = integrate(curve, middle, high, tolerance / 2, depth - 1);
    return {left.value + right.value, left.error + right.error};
}

/// The mean of `quantity(z)` under the density proportional to exp(`logDensity(z)`), which must be
/// log-concave with its mode inside [`low`, `high`]. The trapezoidal rule, between the points where
/// the density has fallen to e^-45 of its mode: exact to the last digits for such curves, as the
/// rule's error falls exponentially (Trefethen & Weideman 2014, SIAM Review 56:385-458).
template <typename LogDensity, typename Quantity>
double meanUnder(const LogDensity& logDensity, const Quantity& quantity, double low, double high) {
    constexpr double kGolden = 0.618033988749894848204586834365638;
    double left = low;
    double right = high;
    for (int i = 0; i < 60; ++i) { // golden section down to the mode
        const double inner = right - kGolden * (right - left);
        const double outer = left + kGolden * (right - left);
        (logDensity(inner) < logDensity(outer) ? left : right) =
            logDensity(inner) < logDensity(outer) ? inner : outer;
    }
    const double mode = (left + right) / 2;
    const double peak = logDensity(mode);
    const auto edge = [&](double inside, double outside) {
        for (int i = 0; i < 50; ++i) {
            const double middle = (inside + outside) / 2;
            (logDensity(middle) > peak - 45 ? inside : outside) = middle;
        }
        return inside;
    };
    const double from = edge(mode, low);
    const double to = edge(mode, high);
    constexpr int kSteps = 400;
    double mass = 0;
    double sum = 0;
    for (int i = 0; i <= kSteps; ++i) {
        const double z = from + (to - from) * i / kSteps;
        const double density = std::exp(logDensity(z) - peak);
        mass += density;
        sum += density * quantity(z);
    }
    return sum / mass;
}

} // namespace pipwright
