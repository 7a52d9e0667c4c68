#pragma once

#include "core/exchange/print/micrometres.h"

namespace pipwright {

/// The thinnest line that office and label printers draw reliably.
inline constexpr Micrometres kHairline = 0.1_mm;
/// The size of running text on tables and sheets, in points.
inline constexpr double kTextPoints = 9.0;
/// The size of their titles, in points.
inline constexpr double kTitlePoints = 16.0;

} // namespace pipwright
