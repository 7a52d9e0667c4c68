#pragma once

#include "core/season/date.h"
#include "core/season/day_span.h"
#include "core/units/quantity.h"
#include "core/units/result.h"

#include <optional>
#include <span>
#include <vector>

namespace pipwright {

/// The lowest and highest air temperature of a day, as far as they were written down.
struct DayTemperatures {
    Date date;
    std::optional<Celsius> lowest;
    std::optional<Celsius> highest;

    [[nodiscard]] bool isWhole() const { return lowest && highest; }
};

/// Whether days can be reckoned with: in the order of time, no day twice, temperatures that air
/// can have, no day whose lowest is above its highest. The Problem names the day. Days may lack.
Outcome checkDays(std::span<const DayTemperatures> days);

/// The days of a span in the order of time, one for each: those that lack are there without
/// temperatures. The days must have passed checkDays.
std::vector<DayTemperatures> withoutGaps(std::span<const DayTemperatures> days, DaySpan span);

} // namespace pipwright
