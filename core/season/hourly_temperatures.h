#pragma once

#include "core/season/day_temperatures.h"
#include "core/season/daylength.h"

#include <optional>
#include <span>
#include <vector>

namespace pipwright {

/// Air temperatures of successive full hours, 24 a day from 0 to 23. An hour that is not known is
/// there without a value; nothing is put in its place.
struct HourlyTemperatures {
    Date firstDay;
    std::vector<std::optional<Celsius>> hours;

    [[nodiscard]] std::size_t missing() const;
};

/// The likely temperature of every hour (of solar time) of a span from the days' lowest and
/// highest, after Linvill (1990), HortScience 25:14. By day a sine from the lowest at sunrise
///     T(t) = low + (high - low) sin(pi (t - sunrise) / (daylength + 4)),
/// by night a logarithmic fall from the temperature at sunset to the next morning's lowest
///     T(t) = sunset - (sunset - low') ln(t - t_sunset + 1) / ln(night + 1).
/// Variants of the night are in print; this one meets both its ends, where the one with ln(night)
/// falls below the morning's lowest.
///
/// An hour is missing when the day lacks a temperature, in the night also when the evening before
/// or the morning after does (also before the first and after the last day given), and on days on
/// which the sun does not rise or set, for which the curve says nothing. A Problem when the days
/// do not pass checkDays.
Result<HourlyTemperatures> hourlyTemperatures(std::span<const DayTemperatures> days, DaySpan span,
                                              Latitude latitude);

} // namespace pipwright
