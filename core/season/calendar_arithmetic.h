#pragma once

#include "core/season/date.h"

#include <algorithm>
#include <chrono>

namespace pipwright {

/// A day that every year has, also in years a Date is not read from (before 0000, after 9999), so
/// that stepping over the edge of the calendar is no special case. The year is kept within
/// -32000 to 32000, where the calendar of the standard library ends.
inline Date dayOfAnyYear(int year, unsigned month, unsigned day) {
    const std::chrono::year_month_day calendar{std::chrono::year{std::clamp(year, -32000, 32000)},
                                               std::chrono::month{month}, std::chrono::day{day}};
    return Date::fromDays(
        static_cast<std::int32_t>(std::chrono::sys_days{calendar}.time_since_epoch().count()));
}

} // namespace pipwright
