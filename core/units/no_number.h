#pragma once

#include <limits>

namespace pipwright {

/// Without an end.
inline constexpr double kInfinity = std::numeric_limits<double>::infinity();
/// Where there is no number.
inline constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();

} // namespace pipwright
