#pragma once

#include "core/units/quantity.h"

#include <optional>
#include <string_view>

/// What breeders write of the instrument beside a reading.
namespace pipwright {

enum class NamedProbe { apple, pear };

/// The probe of a penetrometer: "11 mm", "11.1", "7/16" is the apple probe, "8 mm" or "5/16" that
/// for pears. Nothing when neither or both are named.
std::optional<NamedProbe> probeNamed(std::string_view instrument);

/// The temperature of the juice that was read without compensation: "17 °C", "hand refractometer,
/// 63 F". Nothing when none is named, or when the instrument compensates ("ATC").
std::optional<Celsius> juiceTemperatureNamed(std::string_view instrument);

} // namespace pipwright
