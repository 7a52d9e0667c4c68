#pragma once

#include "core/season/crop_season.h"
#include "core/season/date.h"
#include "core/season/day_span.h"

#include <compare>
#include <optional>

namespace pipwright {

/// A day of any year, as "22 August". 29 February is one of them.
class CalendarDay {
  public:
    /// Nothing when no year has the day.
    static std::optional<CalendarDay> of(unsigned month, unsigned day);
    static CalendarDay ofDate(Date date);

    [[nodiscard]] unsigned month() const { return m_month; }
    [[nodiscard]] unsigned day() const { return m_day; }
    auto operator<=>(const CalendarDay&) const = default;

  private:
    CalendarDay(unsigned month, unsigned day) : m_month(month), m_day(day) {}

    unsigned m_month;
    unsigned m_day;
};

/// Days that come every year, as "15 December to 10 January": it may cross New Year, have no day
/// (empty) or have every day (whole). Compared by month and day, never by the number of the day
/// in the year, which a leap day shifts.
class SeasonInterval {
  public:
    static SeasonInterval empty() { return {0, 0}; }
    static SeasonInterval whole();
    /// Both days counted. The interval from a day to the day before it is the whole year.
    static SeasonInterval of(CalendarDay first, CalendarDay last);

    [[nodiscard]] bool isEmpty() const { return m_length == 0; }
    [[nodiscard]] bool isWhole() const;
    [[nodiscard]] bool crossesNewYear() const;
    /// Nothing when empty; 1 January and 31 December when whole.
    [[nodiscard]] std::optional<CalendarDay> first() const;
    [[nodiscard]] std::optional<CalendarDay> last() const;

    [[nodiscard]] bool contains(CalendarDay day) const;
    [[nodiscard]] bool contains(Date date) const { return contains(CalendarDay::ofDate(date)); }
    /// True when a day lies in both.
    [[nodiscard]] bool meets(const SeasonInterval& other) const;

    /// The days of the interval that starts within the fruit days of a crop; the whole year is
    /// exactly those. Where the year lacks 29 February, an interval starts on 1 March or ends on
    /// 28 February instead. Nothing when no day is left.
    [[nodiscard]] std::optional<DaySpan> inCrop(CropYear crop, SeasonSide side) const;

    bool operator==(const SeasonInterval&) const = default;

  private:
    SeasonInterval(int start, int length) : m_start(start), m_length(length) {}

    int m_start;  // day of a leap year, from 0
    int m_length; // in days of a leap year, 0 to 366
};

} // namespace pipwright
