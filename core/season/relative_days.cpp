#include "core/season/relative_days.h"

#include "core/season/iso_week.h"

#include <algorithm>
#include <array>
#include <optional>
#include <vector>

namespace pipwright {

namespace {

constexpr int kMostAgo = 9999; ///< days or weeks; more is a slip of the finger

using Words = std::vector<std::string_view>;

/// A day or week and how many words name it.
struct Named {
    std::string text;
    std::size_t words = 0;
};

struct Weekday {
    std::string_view word; ///< folded, in full
    int day;               ///< 1 Monday to 7 Sunday
    bool shortened;        ///< whether three letters of it are enough
};

// French days by their whole word only: "mar" is March.
constexpr std::array kWeekdays = {
    Weekday{"monday", 1, true},   Weekday{"tuesday", 2, true},    Weekday{"wednesday", 3, true},
    Weekday{"thursday", 4, true}, Weekday{"friday", 5, true},     Weekday{"saturday", 6, true},
    Weekday{"sunday", 7, true},   Weekday{"montag", 1, true},     Weekday{"dienstag", 2, true},
    Weekday{"mittwoch", 3, true}, Weekday{"donnerstag", 4, true}, Weekday{"freitag", 5, true},
    Weekday{"samstag", 6, true},  Weekday{"sonnabend", 6, false}, Weekday{"sonntag", 7, true},
    Weekday{"lundi", 1, false},   Weekday{"mardi", 2, false},     Weekday{"mercredi", 3, false},
    Weekday{"jeudi", 4, false},   Weekday{"vendredi", 5, false},  Weekday{"samedi", 6, false},
    Weekday{"dimanche", 7, false}};

template <std::size_t N>
bool isOneOf(std::string_view word, const std::array<std::string_view, N>& list) {
    return std::find(list.begin(), list.end(), word) != list.end();
}

bool isLast(std::string_view word) {
    return isOneOf(word, std::array<std::string_view, 6>{"last", "letzte", "letzten", "letzter",
                                                         "vorigen", "vorige"});
}

bool isLastBehind(std::string_view word) {
    return word == "dernier" || word == "derniere";
}

std::optional<int> weekdayOf(std::string_view word) {
    if (!word.empty() && word.back() == '.') {
        word.remove_suffix(1);
    }
    for (const Weekday& one : kWeekdays) {
        const bool begins = one.shortened && word.size() >= 3 &&
                            one.word.substr(0, std::min(word.size(), one.word.size())) == word;
        if (begins || one.word == word) {
            return one.day;
        }
    }
    return std::nullopt;
}

std::optional<int> numberOf(std::string_view word) {
    if (isOneOf(word, std::array<std::string_view, 8>{"a", "one", "ein", "eine", "einem", "einer",
                                                      "un", "une"})) {
        return 1;
    }
    int number = 0;
    for (const char c : word) {
        if (c < '0' || c > '9') {
            return std::nullopt;
        }
        number = number * 10 + (c - '0');
        if (number > kMostAgo) {
            return std::nullopt;
        }
    }
    return word.empty() ? std::nullopt : std::optional(number);
}

/// How many days the word is long: 1 for "days", 7 for "weeks".
std::optional<int> unitOf(std::string_view word) {
    if (isOneOf(word, std::array<std::string_view, 7>{"day", "days", "tag", "tage", "tagen", "jour",
                                                      "jours"})) {
        return 1;
    }
    if (isOneOf(word, std::array<std::string_view, 6>{"week", "weeks", "woche", "wochen", "semaine",
                                                      "semaines"})) {
        return 7;
    }
    return std::nullopt;
}

std::optional<Named> plainDay(const Words& words, std::size_t at, Date today) {
    const std::string_view word = words[at];
    const auto ago = [today](int days, std::size_t count) {
        return Named{today.plusDays(-days).iso(), count};
    };
    if (isOneOf(word, std::array<std::string_view, 3>{"today", "heute", "aujourd'hui"})) {
        return ago(0, 1);
    }
    if (isOneOf(word, std::array<std::string_view, 3>{"yesterday", "gestern", "hier"})) {
        return ago(1, 1);
    }
    if (word == "vorgestern" || word == "avant-hier") {
        return ago(2, 1);
    }
    const auto is = [&](std::size_t index, std::string_view what) {
        return index < words.size() && words[index] == what;
    };
    const std::size_t start = word == "the" ? at + 1 : at;
    if (is(start, "day") && is(start + 1, "before") && is(start + 2, "yesterday")) {
        return ago(2, start + 3 - at);
    }
    return std::nullopt;
}

/// "3 days ago", "vor 3 Tagen", "il y a 3 jours".
std::optional<Named> countedBack(const Words& words, std::size_t at, Date today) {
    const auto is = [&](std::size_t index, std::string_view what) {
        return index < words.size() && words[index] == what;
    };
    const std::size_t number = is(at, "vor")                                        ? at + 1
                               : is(at, "il") && is(at + 1, "y") && is(at + 2, "a") ? at + 3
                                                                                    : at;
    if (number + 1 >= words.size()) {
        return std::nullopt;
    }
    const auto count = numberOf(words[number]);
    const auto unit = unitOf(words[number + 1]);
    const bool behind = number == at;
    if (!count || !unit || (behind && !is(number + 2, "ago"))) {
        return std::nullopt;
    }
    return Named{today.plusDays(-*count * *unit).iso(), number + (behind ? 3U : 2U) - at};
}

/// A weekday, or the week before this one.
std::optional<Named> namedBack(const Words& words, std::size_t at, Date today) {
    const bool lastBefore = isLast(words[at]);
    const std::size_t place = lastBefore ? at + 1 : at;
    if (place >= words.size()) {
        return std::nullopt;
    }
    const bool lastBehind = place + 1 < words.size() && isLastBehind(words[place + 1]);
    const std::size_t end = place + (lastBehind ? 2U : 1U);
    const bool moreDate = end < words.size() && (numberOf(words[end]) || words[end] == "of" ||
                                                 (words[end][0] >= '0' && words[end][0] <= '9'));
    const int weekdayToday = daysBetween(firstDay(isoWeekOf(today)), today) + 1;
    if (unitOf(words[place]) == 7 && (lastBefore || lastBehind)) {
        if (end != words.size()) {
            return std::nullopt; // "last week of August"
        }
        return Named{label(plusWeeks(isoWeekOf(today), -1)), end - at};
    }
    const auto weekday = weekdayOf(words[place]);
    if (!weekday || moreDate) {
        return std::nullopt;
    }
    int ago = (weekdayToday - *weekday + 7) % 7;
    if (ago == 0 && (lastBefore || lastBehind)) {
        ago = 7;
    }
    return Named{today.plusDays(-ago).iso(), end - at};
}

} // namespace

std::string withRelativeDays(std::string_view folded, Date today) {
    Words words;
    for (std::size_t at = 0; at < folded.size();) {
        const std::size_t begin = folded.find_first_not_of(" ,", at);
        if (begin == std::string_view::npos) {
            break;
        }
        const std::size_t end = std::min(folded.find_first_of(" ,", begin), folded.size());
        words.push_back(folded.substr(begin, end - begin));
        at = end;
    }
    std::string text;
    bool any = false;
    for (std::size_t at = 0; at < words.size();) {
        auto named = plainDay(words, at, today);
        if (!named) {
            named = countedBack(words, at, today);
        }
        if (!named) {
            named = namedBack(words, at, today);
        }
        // "on Tuesday", "am Dienstag"
        const bool on = !named && (words[at] == "on" || words[at] == "am") &&
                        at + 1 < words.size() && namedBack(words, at + 1, today);
        if (!on) {
            text += (text.empty() ? "" : " ") + (named ? named->text : std::string(words[at]));
        }
        any = any || named;
        at += named ? named->words : 1;
    }
    return any ? text : std::string(folded);
}

} // namespace pipwright
