#include "core/season/iso_week.h"

#include "core/season/calendar_arithmetic.h"
#include "core/units/digits.h"

#include <array>
#include <cstdio>

namespace pipwright {

namespace {

/// 0 for Monday to 6 for Sunday; 1970-01-01 was a Thursday.
int weekdayOf(Date date) {
    const int shifted = (date.days() + 3) % 7;
    return shifted < 0 ? shifted + 7 : shifted;
}

Date mondayOf(Date date) {
    return date.plusDays(-weekdayOf(date));
}

/// 4 January always lies in week 1.
Date mondayOfFirstWeek(int year) {
    return mondayOf(dayOfAnyYear(year, 1, 4));
}

} // namespace

IsoWeek isoWeekOf(Date date) {
    const Date thursday = mondayOf(date).plusDays(3);
    return {thursday.year(), daysBetween(dayOfAnyYear(thursday.year(), 1, 1), thursday) / 7 + 1};
}

Date firstDay(IsoWeek week) {
    return mondayOfFirstWeek(week.year).plusDays((week.week - 1) * 7);
}

int weeksIn(int year) {
    return isoWeekOf(dayOfAnyYear(year, 12, 28)).week;
}

IsoWeek plusWeeks(IsoWeek week, int weeks) {
    return isoWeekOf(firstDay(week).plusDays(weeks * 7));
}

int weeksBetween(IsoWeek from, IsoWeek to) {
    return daysBetween(firstDay(from), firstDay(to)) / 7;
}

std::string label(IsoWeek week) {
    std::array<char, 32> text{};
    const int length = std::snprintf(text.data(), text.size(), "%04d-W%02d", week.year, week.week);
    return {text.data(), static_cast<std::size_t>(length)};
}

std::optional<IsoWeek> isoWeekFromLabel(std::string_view text) {
    if (text.size() != 8 || text[4] != '-' || (text[5] != 'W' && text[5] != 'w')) {
        return std::nullopt;
    }
    const auto year = numberOf(text.substr(0, 4));
    const auto week = numberOf(text.substr(6, 2));
    if (!year || !week || *week < 1 || *week > weeksIn(*year)) {
        return std::nullopt;
    }
    return IsoWeek{*year, *week};
}

} // namespace pipwright
