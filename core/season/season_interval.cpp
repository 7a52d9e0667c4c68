#include "core/season/season_interval.h"

#include "core/season/calendar_arithmetic.h"

namespace pipwright {

namespace {

constexpr int kLeapYear = 2000;
constexpr int kDaysOfLeapYear = 366;

int ordinalOf(CalendarDay day) {
    return Date::of(kLeapYear, day.month(), day.day())->dayOfYear() - 1;
}

CalendarDay dayAt(int ordinal) {
    return CalendarDay::ofDate(Date::of(kLeapYear, 1, 1)->plusDays(ordinal % kDaysOfLeapYear));
}

/// The day in a year, or 1 March for a 29 February the year does not have.
Date startIn(int year, CalendarDay day) {
    return dayOfAnyYear(year, day.month(), 1).plusDays(static_cast<int>(day.day()) - 1);
}

/// The day in a year, or 28 February for a 29 February the year does not have.
Date endIn(int year, CalendarDay day) {
    const Date date = startIn(year, day);
    return date.month() == day.month() ? date : date.plusDays(-1);
}

} // namespace

std::optional<CalendarDay> CalendarDay::of(unsigned month, unsigned day) {
    if (!Date::of(kLeapYear, month, day)) {
        return std::nullopt;
    }
    return CalendarDay{month, day};
}

CalendarDay CalendarDay::ofDate(Date date) {
    return {date.month(), date.day()};
}

SeasonInterval SeasonInterval::whole() {
    return {0, kDaysOfLeapYear};
}

SeasonInterval SeasonInterval::of(CalendarDay first, CalendarDay last) {
    const int start = ordinalOf(first);
    const int length = (ordinalOf(last) - start + kDaysOfLeapYear) % kDaysOfLeapYear + 1;
    return length == kDaysOfLeapYear ? whole() : SeasonInterval{start, length};
}

bool SeasonInterval::isWhole() const {
    return m_length == kDaysOfLeapYear;
}

bool SeasonInterval::crossesNewYear() const {
    return m_start + m_length > kDaysOfLeapYear;
}

std::optional<CalendarDay> SeasonInterval::first() const {
    return isEmpty() ? std::nullopt : std::optional{dayAt(m_start)};
}

std::optional<CalendarDay> SeasonInterval::last() const {
    return isEmpty() ? std::nullopt : std::optional{dayAt(m_start + m_length - 1)};
}

bool SeasonInterval::contains(CalendarDay day) const {
    const int after = (ordinalOf(day) - m_start + kDaysOfLeapYear) % kDaysOfLeapYear;
    return after < m_length;
}

bool SeasonInterval::meets(const SeasonInterval& other) const {
    // Two arcs of a circle meet exactly when one holds the other's first day.
    return !isEmpty() && !other.isEmpty() &&
           (contains(dayAt(other.m_start)) || other.contains(dayAt(m_start)));
}

std::optional<DaySpan> SeasonInterval::inCrop(CropYear crop, SeasonSide side) const {
    const DaySpan cropDays = fruitDaysOf(crop, side);
    if (isEmpty()) {
        return std::nullopt;
    }
    if (isWhole()) {
        return cropDays;
    }
    const CalendarDay from = *first();
    const CalendarDay to = *last();
    Date start = startIn(crop.year, from);
    if (start < cropDays.first) {
        start = startIn(crop.year + 1, from);
    }
    const int endYear = to < from ? start.year() + 1 : start.year();
    return DaySpan::of(start, endIn(endYear, to));
}

} // namespace pipwright
