#pragma once

#include "core/season/date.h"

#include <compare>
#include <optional>
#include <string>
#include <string_view>

namespace pipwright {

/// A week of ISO 8601: Monday to Sunday, and the year that holds its Thursday. A label for
/// people; the week of one calendar day moves by up to six days between years, so models work
/// in days.
struct IsoWeek {
    int year = 1970;
    int week = 1; ///< 1 to 53

    auto operator<=>(const IsoWeek&) const = default;
};

IsoWeek isoWeekOf(Date date);

/// The Monday of the week.
Date firstDay(IsoWeek week);

/// 52 or 53.
int weeksIn(int year);

/// So many weeks later (earlier when negative), across years of 52 and 53 weeks.
IsoWeek plusWeeks(IsoWeek week, int weeks);

/// Weeks from `from` to `to`; negative when `to` is earlier.
int weeksBetween(IsoWeek from, IsoWeek to);

/// "2026-W34".
std::string label(IsoWeek week);

/// Reads label(), any letter case; nothing for anything else or a week the year does not have.
std::optional<IsoWeek> isoWeekFromLabel(std::string_view text);

} // namespace pipwright
