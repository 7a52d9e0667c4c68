#pragma once

#include "core/season/date.h"
#include "core/units/result.h"

#include <optional>
#include <string>
#include <string_view>

namespace pipwright {

/// A date as exact as it was written down: some day from `from` to `to`, both counted, and the
/// words as they stood in the field book.
struct InexactDate {
    std::string typed;
    Date from;
    Date to;

    [[nodiscard]] bool isOneDay() const { return from == to; }
    bool operator==(const InexactDate&) const = default;
};

/// Reads what people write in a field book:
/// - a day: "2026-08-22", "22.8.2026" (with points the day stands first), "22 August 2026",
///   "Aug 22, 2026", "22/8/2026" where one number can only be the day;
/// - a week: "2026-W34", "week 34 of 2026" (Monday to Sunday of ISO 8601);
/// - a part of a month: "3rd week of August 2026" (days 15 to 21; the last week is the last seven
///   days), "early" (1 to 10), "mid" (11 to 20) or "late" (21 to the end) "August 2026";
/// - a month "August 2026", "2026-08", "8/2026"; a year "2026";
/// - a span: "20 Aug to 3 Sep 2026", "20-25 August 2026", "2026-08-20..2026-08-25";
/// - "about" or "~" before any of these: wider by 3 days on both sides for a day, by 7 for a week
///   or part of a month, by 15 for a month, by 183 for a year, by 3 for a span.
/// Months in English, German or French, in full or by three letters or more.
/// `yearMeant` is the year of dates written without one ("22 Aug", "22.8."); without it they are
/// refused. Refused too, with the reason and what to type instead: days that do not exist, years of
/// two digits, and numbers such as "3/8/2026" that read as two different days.
Result<InexactDate> readInexactDate(std::string_view typed,
                                    std::optional<int> yearMeant = std::nullopt);

/// As above, with the year of `today` for dates written without one, and days named by their
/// distance from it: "last tue", "yesterday", "3 days ago" (see withRelativeDays). Such words mean
/// nothing later, so `typed` then holds the date they stood for.
Result<InexactDate> readInexactDate(std::string_view typed, Date today);

} // namespace pipwright
