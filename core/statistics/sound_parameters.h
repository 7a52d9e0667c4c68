#pragma once

#include "core/statistics/distributions.h"

#include <cmath>

namespace pipwright {

/// Finite and above 0.
inline bool isPositive(double value) {
    return std::isfinite(value) && value > 0;
}

/// From 0 to 1; not so for what is no number.
constexpr bool isChance(double value) {
    return value >= 0 && value <= 1;
}

inline bool isSound(const BetaDistribution& chance) {
    return isPositive(chance.a) && isPositive(chance.b);
}

} // namespace pipwright
