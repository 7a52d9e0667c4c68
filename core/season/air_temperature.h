#pragma once

#include "core/units/quantity.h"

#include <cmath>

namespace pipwright {

/// Whether air near the ground can be so warm: the coldest and warmest ever measured, -89 and
/// 57 degrees, with room to spare. NaN and infinities cannot.
inline bool isAirTemperature(Celsius temperature) {
    return std::isfinite(temperature.degrees()) && temperature.degrees() >= -100 &&
           temperature.degrees() <= 70;
}

} // namespace pipwright
