#include "core/season/inexact_date.h"

#include "core/season/calendar_arithmetic.h"
#include "core/season/date_words.h"
#include "core/season/day_span.h"
#include "core/season/iso_week.h"
#include "core/season/relative_days.h"
#include "core/units/text.h"

#include <algorithm>
#include <array>
#include <vector>

namespace pipwright {

namespace {

constexpr std::string_view kForms =
    "Type a day (2026-08-22), a week (2026-W34), a month (August 2026), a part of it "
    "(late August 2026) or a year (2026).";

/// What a pattern stands for, and by how many days "about" widens it on both sides.
struct Reading {
    DaySpan days;
    int doubt = 0;
};

constexpr int kDoubtOfDay = 3;
constexpr int kDoubtOfWeek = 7;
constexpr int kDoubtOfMonth = 15;
constexpr int kDoubtOfYear = 183;

Problem refusal(std::string what, std::string remedy) {
    return {ProblemCode::badInput, std::move(what), std::move(remedy), ""};
}

int daysIn(int year, int month) {
    const Date first = dayOfAnyYear(year, static_cast<unsigned>(month), 1);
    const Date next = month == 12 ? dayOfAnyYear(year + 1, 1, 1)
                                  : dayOfAnyYear(year, static_cast<unsigned>(month + 1), 1);
    return daysBetween(first, next);
}

std::string dayText(int year, int month, int day) {
    return std::to_string(day) + " " + std::string{monthName(month)} + " " + std::to_string(year);
}

std::optional<Problem> faultOfMonth(int month) {
    if (month >= 1 && month <= 12) {
        return std::nullopt;
    }
    return refusal("There is no month " + std::to_string(month) + ".",
                   "Type year, month and day as 2026-08-22.");
}

Problem noSuchDay(int year, int month, int day) {
    return refusal("There is no " + dayText(year, month, day) + ".",
                   std::string{monthName(month)} + " " + std::to_string(year) + " has " +
                       std::to_string(daysIn(year, month)) + " days; correct the day.");
}

/// A number typed as "00" comes here too, so the day is checked from below as well.
Result<Reading> daysOfMonth(int year, int month, int first, int last, int doubt) {
    if (const auto fault = faultOfMonth(month)) {
        return *fault;
    }
    for (const int day : {first, last}) {
        if (day < 1 || day > daysIn(year, month)) {
            return noSuchDay(year, month, day);
        }
    }
    if (first > last) {
        return refusal("The span ends before it begins.", "Type the earlier day first.");
    }
    const Date start = dayOfAnyYear(year, static_cast<unsigned>(month), 1);
    return Reading{{start.plusDays(first - 1), start.plusDays(last - 1)}, doubt};
}

Result<Reading> oneDay(int year, int month, int day) {
    return daysOfMonth(year, month, day, day, kDoubtOfDay);
}

/// Two numbers and a year between slashes or hyphens: which is the day depends on the country.
Result<Reading> dayAmongTwo(int one, int two, int year) {
    const bool dayFirst = two >= 1 && two <= 12;
    const bool monthFirst = one >= 1 && one <= 12;
    if (dayFirst && monthFirst && one != two) {
        return refusal("This is " + dayText(year, two, one) + " in some countries and " +
                           dayText(year, one, two) + " in others.",
                       "Type the month as a word, or year, month and day as 2026-08-22.");
    }
    return dayFirst ? oneDay(year, two, one) : oneDay(year, one, two);
}

Result<Reading> wholeMonth(int year, int month) {
    if (const auto fault = faultOfMonth(month)) {
        return *fault;
    }
    return daysOfMonth(year, month, 1, daysIn(year, month), kDoubtOfMonth);
}

Result<Reading> wholeYear(int year) {
    return Reading{{dayOfAnyYear(year, 1, 1), dayOfAnyYear(year, 12, 31)}, kDoubtOfYear};
}

Result<Reading> isoWeek(int year, int week) {
    if (week < 1 || week > weeksIn(year)) {
        return refusal(
            "The year " + std::to_string(year) + " has no week " + std::to_string(week) + ".",
            "It has weeks 1 to " + std::to_string(weeksIn(year)) + "; correct the week.");
    }
    const Date monday = firstDay({year, week});
    return Reading{{monday, monday.plusDays(6)}, kDoubtOfWeek};
}

Result<Reading> weekOfMonth(int year, int month, int week) {
    const int first = (week - 1) * 7 + 1;
    if (week < 1 || first > daysIn(year, month)) {
        return refusal(std::string{monthName(month)} + " " + std::to_string(year) +
                           " has no week " + std::to_string(week) + ".",
                       "Count the weeks of a month from its first day, or type the week of the "
                       "year as 2026-W34.");
    }
    return daysOfMonth(year, month, first, std::min(first + 6, daysIn(year, month)), kDoubtOfWeek);
}

Result<Reading> lastWeekOfMonth(int year, int month) {
    return daysOfMonth(year, month, daysIn(year, month) - 6, daysIn(year, month), kDoubtOfWeek);
}

Result<Reading> partOfMonth(int year, int month, int part) {
    const int last = part == 3 ? daysIn(year, month) : part * 10;
    return daysOfMonth(year, month, part * 10 - 9, last, kDoubtOfWeek);
}

Problem shortYear() {
    return refusal("A year of two digits can be mistaken for a day.",
                   "Type the year with four digits, as 22.8.2026 or 2026-08-22.");
}

using Tokens = std::vector<DateToken>;

struct Form {
    std::string_view pattern;
    Result<Reading> (*read)(const Tokens&);
};

int at(const Tokens& tokens, std::size_t index) {
    return tokens[index].value;
}

constexpr auto kPatterns = std::to_array<Form>({
    {"y", [](const Tokens& t) { return wholeYear(at(t, 0)); }},
    {"y-n", [](const Tokens& t) { return wholeMonth(at(t, 0), at(t, 2)); }},
    {"n/y", [](const Tokens& t) { return wholeMonth(at(t, 2), at(t, 0)); }},
    {"n.y", [](const Tokens& t) { return wholeMonth(at(t, 2), at(t, 0)); }},
    {"my", [](const Tokens& t) { return wholeMonth(at(t, 1), at(t, 0)); }},
    {"m.y", [](const Tokens& t) { return wholeMonth(at(t, 2), at(t, 0)); }},
    {"ym", [](const Tokens& t) { return wholeMonth(at(t, 0), at(t, 1)); }},
    {"y-n-n", [](const Tokens& t) { return oneDay(at(t, 0), at(t, 2), at(t, 4)); }},
    {"y/n/n", [](const Tokens& t) { return oneDay(at(t, 0), at(t, 2), at(t, 4)); }},
    {"y.n.n", [](const Tokens& t) { return oneDay(at(t, 0), at(t, 2), at(t, 4)); }},
    {"n.n.y", [](const Tokens& t) { return oneDay(at(t, 4), at(t, 2), at(t, 0)); }},
    {"n/n/y", [](const Tokens& t) { return dayAmongTwo(at(t, 0), at(t, 2), at(t, 4)); }},
    {"n-n-y", [](const Tokens& t) { return dayAmongTwo(at(t, 0), at(t, 2), at(t, 4)); }},
    {"nmy", [](const Tokens& t) { return oneDay(at(t, 2), at(t, 1), at(t, 0)); }},
    {"nm.y", [](const Tokens& t) { return oneDay(at(t, 3), at(t, 1), at(t, 0)); }},
    {"n.my", [](const Tokens& t) { return oneDay(at(t, 3), at(t, 2), at(t, 0)); }},
    {"n.m.y", [](const Tokens& t) { return oneDay(at(t, 4), at(t, 2), at(t, 0)); }},
    {"n-m-y", [](const Tokens& t) { return oneDay(at(t, 4), at(t, 2), at(t, 0)); }},
    {"mny", [](const Tokens& t) { return oneDay(at(t, 2), at(t, 0), at(t, 1)); }},
    {"m.ny", [](const Tokens& t) { return oneDay(at(t, 3), at(t, 0), at(t, 2)); }},
    {"ymn", [](const Tokens& t) { return oneDay(at(t, 0), at(t, 1), at(t, 2)); }},
    {"y-wn", [](const Tokens& t) { return isoWeek(at(t, 0), at(t, 3)); }},
    {"ywn", [](const Tokens& t) { return isoWeek(at(t, 0), at(t, 2)); }},
    {"wny", [](const Tokens& t) { return isoWeek(at(t, 2), at(t, 1)); }},
    {"nwmy", [](const Tokens& t) { return weekOfMonth(at(t, 3), at(t, 2), at(t, 0)); }},
    {"n.wmy", [](const Tokens& t) { return weekOfMonth(at(t, 4), at(t, 3), at(t, 0)); }},
    {"lwmy", [](const Tokens& t) { return lastWeekOfMonth(at(t, 3), at(t, 2)); }},
    {"pmy", [](const Tokens& t) { return partOfMonth(at(t, 2), at(t, 1), at(t, 0)); }},
    {"p-my", [](const Tokens& t) { return partOfMonth(at(t, 3), at(t, 2), at(t, 0)); }},
    {"n-nmy",
     [](const Tokens&
            t) { return daysOfMonth(at(t, 4), at(t, 3), at(t, 0), at(t, 2), kDoubtOfDay); }},
    {"n.-n.my",
     [](const Tokens&
            t) { return daysOfMonth(at(t, 6), at(t, 5), at(t, 0), at(t, 3), kDoubtOfDay); }},
    {"n.-n.n.y",
     [](const Tokens&
            t) { return daysOfMonth(at(t, 7), at(t, 5), at(t, 0), at(t, 3), kDoubtOfDay); }},
});

/// How a year is added to the patterns that lack one.
struct Yearless {
    std::string_view pattern;
    std::string_view between; // what stands between it and the year
};

constexpr auto kYearless = std::to_array<Yearless>({
    {"n.n.", ""},
    {"n.n", "."},
    {"n/n", "/"},
    {"nm", ""},
    {"nm.", ""},
    {"n.m", ""},
    {"mn", ""},
    {"m.n", ""},
    {"m", ""},
    {"nwm", ""},
    {"n.wm", ""},
    {"lwm", ""},
    {"pm", ""},
    {"p-m", ""},
    {"wn", ""},
    {"n-nm", ""},
    {"n.-n.m", ""},
    {"n.-n.n.", ""},
});

/// True for "22.8.26": a pattern of the table but for the digits of its year.
bool hasShortYear(std::string_view pattern) {
    return std::any_of(kPatterns.begin(), kPatterns.end(), [&](const Form& form) {
        return pattern.size() == form.pattern.size() && pattern.size() > 2 &&
               form.pattern.back() == 'y' && pattern.back() == 'n' &&
               pattern.substr(0, pattern.size() - 1) == form.pattern.substr(0, pattern.size() - 1);
    });
}

Result<Reading> readTokens(Tokens tokens, std::optional<int> yearMeant) {
    const std::string pattern = patternOf(tokens);
    for (const auto& form : kPatterns) {
        if (form.pattern == pattern) {
            return form.read(tokens);
        }
    }
    for (const auto& yearless : kYearless) {
        if (yearless.pattern != pattern) {
            continue;
        }
        if (!yearMeant) {
            return refusal("The year is missing.", "Add the year with four digits.");
        }
        for (const char mark : yearless.between) {
            tokens.push_back({mark, 0});
        }
        tokens.push_back({'y', *yearMeant});
        return readTokens(std::move(tokens), std::nullopt);
    }
    if (hasShortYear(pattern)) {
        return shortYear();
    }
    return refusal("This cannot be read as a date.", std::string{kForms});
}

bool namesYear(const Tokens& tokens) {
    return std::any_of(tokens.begin(), tokens.end(), [](DateToken t) { return t.kind == 'y'; });
}

/// "20 Aug to 3 Sep 2026": the first may borrow the year of the second, or be of the year before.
Result<Reading> readSpan(std::string_view first, std::string_view last,
                         std::optional<int> yearMeant) {
    const auto end = readTokens(dateTokens(last), yearMeant);
    if (!end) {
        return end.problem();
    }
    const Tokens firstTokens = dateTokens(first);
    const int endYear = end->days.first.year();
    auto start = readTokens(firstTokens, endYear);
    if (start && start->days.first > end->days.last && !namesYear(firstTokens)) {
        start = readTokens(firstTokens, endYear - 1);
    }
    if (!start) {
        return start.problem();
    }
    const auto days = DaySpan::of(start->days.first, end->days.last);
    if (!days) {
        return refusal("The span ends before it begins.", "Type the earlier date first.");
    }
    return Reading{*days, kDoubtOfDay};
}

Result<Reading> readFolded(std::string_view folded, std::optional<int> yearMeant) {
    for (const std::string_view word : {" to ", " until ", " bis ", "..", " - "}) {
        const auto position = folded.find(word);
        if (position != std::string_view::npos) {
            return readSpan(folded.substr(0, position), folded.substr(position + word.size()),
                            yearMeant);
        }
    }
    return readTokens(dateTokens(folded), yearMeant);
}

} // namespace

Result<InexactDate> readInexactDate(std::string_view typed, std::optional<int> yearMeant) {
    constexpr std::size_t kLongest = 200;
    const std::string_view text = trimmed(typed);
    const auto quoted = [&](Problem problem) {
        const bool shown = text.size() <= kLongest && !firstBadUtf8(text);
        problem.what = (shown ? "\"" + std::string{text} + "\": " : "") + problem.what;
        return problem;
    };
    if (text.empty()) {
        return refusal("There is no date.", std::string{kForms});
    }
    if (text.size() > kLongest) {
        return quoted(refusal("This is too long for a date.", std::string{kForms}));
    }
    const std::string folded = foldedForSearch(text);
    const auto approximate = afterAbout(folded);
    const auto reading = readFolded(approximate ? trimmed(*approximate) : folded, yearMeant);
    if (!reading) {
        return quoted(reading.problem());
    }
    const int doubt = approximate ? reading->doubt : 0;
    return InexactDate{std::string{typed}, reading->days.first.plusDays(-doubt),
                       reading->days.last.plusDays(doubt)};
}

Result<InexactDate> readInexactDate(std::string_view typed, Date today) {
    const std::string folded = foldedForSearch(trimmed(typed));
    const std::string meant = withRelativeDays(folded, today);
    return readInexactDate(meant == folded ? typed : std::string_view(meant), today.year());
}

} // namespace pipwright
