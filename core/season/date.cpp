#include "core/season/date.h"

#include <array>
#include <cstdio>

namespace pipwright {

namespace {

std::chrono::year_month_day calendarOf(std::int32_t days) {
    return std::chrono::year_month_day{std::chrono::sys_days{std::chrono::days{days}}};
}

std::optional<int> digits(std::string_view text) {
    int value = 0;
    for (const char c : text) {
        if (c < '0' || c > '9') {
            return std::nullopt;
        }
        value = value * 10 + (c - '0');
    }
    return value;
}

} // namespace

std::optional<Date> Date::of(int year, unsigned month, unsigned day) {
    const std::chrono::year_month_day calendar{std::chrono::year{year}, std::chrono::month{month},
                                               std::chrono::day{day}};
    if (year < 0 || year > 9999 || !calendar.ok()) {
        return std::nullopt;
    }
    return fromDays(
        static_cast<std::int32_t>(std::chrono::sys_days{calendar}.time_since_epoch().count()));
}

std::optional<Date> Date::fromIso(std::string_view text) {
    if (text.size() != 10 || text[4] != '-' || text[7] != '-') {
        return std::nullopt;
    }
    const auto year = digits(text.substr(0, 4));
    const auto month = digits(text.substr(5, 2));
    const auto day = digits(text.substr(8, 2));
    if (!year || !month || !day) {
        return std::nullopt;
    }
    return of(*year, static_cast<unsigned>(*month), static_cast<unsigned>(*day));
}

Date Date::fromDays(std::int32_t daysSince1970) {
    Date date;
    date.m_days = daysSince1970;
    return date;
}

std::string Date::iso() const {
    std::array<char, 32> text{};
    const int length =
        std::snprintf(text.data(), text.size(), "%04d-%02u-%02u", year(), month(), day());
    return {text.data(), static_cast<std::size_t>(length)};
}

int Date::year() const {
    return static_cast<int>(calendarOf(m_days).year());
}

unsigned Date::month() const {
    return static_cast<unsigned>(calendarOf(m_days).month());
}

unsigned Date::day() const {
    return static_cast<unsigned>(calendarOf(m_days).day());
}

int Date::dayOfYear() const {
    return m_days - of(year(), 1, 1)->days() + 1;
}

} // namespace pipwright
