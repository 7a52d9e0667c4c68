#include "core/exchange/cell_reading.h"

#include <array>
#include <charconv>

namespace pipwright {

namespace {

template <typename Number>
std::optional<Number> whole(std::string_view text) {
    Number number{};
    const char* const end = text.data() + text.size();
    const auto [stop, error] = std::from_chars(text.data(), end, number);
    return error == std::errc{} && stop == end && !text.empty() ? std::optional(number)
                                                                : std::nullopt;
}

/// Three numbers parted by one and the same mark.
std::optional<std::array<unsigned, 3>> threeNumbers(std::string_view text) {
    for (const char mark : {'/', '.', '-'}) {
        const auto parts = split(text, mark);
        if (parts.size() != 3) {
            continue;
        }
        std::array<unsigned, 3> numbers{};
        bool good = true;
        for (std::size_t i = 0; i < 3; ++i) {
            const auto number = whole<unsigned>(trimmed(parts[i]));
            good = good && number;
            numbers[i] = number.value_or(0);
        }
        if (good) {
            return numbers;
        }
    }
    return std::nullopt;
}

} // namespace

Result<InexactDate> readCellDate(std::string_view text, DateOrder order) {
    if (const auto day = Date::fromIso(text)) {
        return InexactDate{std::string(text), *day, *day};
    }
    const auto numbers = threeNumbers(text);
    if (!numbers || (*numbers)[0] > 31) { // a year in front is read the one way it can be
        return readInexactDate(text);
    }
    const auto& n = *numbers;
    const bool monthFirst = order == DateOrder::monthDayYear;
    const bool yearFirst = order == DateOrder::yearMonthDay;
    const unsigned year = yearFirst ? n[0] : n[2];
    const unsigned month = monthFirst ? n[0] : n[1];
    const unsigned day = yearFirst ? n[2] : monthFirst ? n[1] : n[0];
    const auto date = year >= 1000 ? Date::of(static_cast<int>(year), month, day) : std::nullopt;
    if (!date) {
        return Problem{ProblemCode::badInput,
                       "\"" + std::string(text) + "\" is not a day of the calendar, read " +
                           (monthFirst  ? "month, day, year."
                            : yearFirst ? "year, month, day."
                                        : "day, month, year."),
                       "Correct it, write the year with four digits, or change the order of dates "
                       "in the recipe.",
                       ""};
    }
    return InexactDate{std::string(text), *date, *date};
}

Result<double> readCellNumber(std::string_view text, char decimalMark) {
    std::string digits(trimmed(text));
    const bool otherMark = digits.find(decimalMark == ',' ? '.' : ',') != std::string::npos;
    std::replace(digits.begin(), digits.end(), decimalMark, '.');
    const bool plain = digits.find_first_not_of("0123456789.-") == std::string::npos;
    const auto number = otherMark || !plain ? std::nullopt : whole<double>(digits);
    if (!number) {
        return Problem{ProblemCode::badInput, "\"" + std::string(text) + "\" is not a number.",
                       std::string("Write digits, with \"") + decimalMark +
                           "\" before decimals, or change the decimal mark in the recipe.",
                       ""};
    }
    return *number;
}

Result<std::int64_t> readCellWholeNumber(std::string_view text) {
    if (const auto number = whole<std::int64_t>(trimmed(text)); number && *number >= 0) {
        return *number;
    }
    return Problem{ProblemCode::badInput, "\"" + std::string(text) + "\" is not a whole number.",
                   "Write digits only.", ""};
}

std::string wordKey(std::string_view text) {
    std::string key = foldedForSearch(text);
    std::erase_if(key, [](char c) { return c == ' ' || c == '_' || c == '-'; });
    return key;
}

} // namespace pipwright
