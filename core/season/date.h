#pragma once

#include <chrono>
#include <compare>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace pipwright {

/// A civil day of a site, without a time zone (Gregorian calendar). Differences are days.
class Date {
  public:
    Date() = default; ///< 1970-01-01; use std::optional<Date> for "no date"

    /// Nothing when the day does not exist (31 April, 29 February of a common year).
    static std::optional<Date> of(int year, unsigned month, unsigned day);
    /// Reads "2026-08-22" (ISO 8601 extended, years 0000 to 9999); nothing for anything else.
    static std::optional<Date> fromIso(std::string_view text);
    static Date fromDays(std::int32_t daysSince1970);

    [[nodiscard]] std::string iso() const;
    [[nodiscard]] int year() const;
    [[nodiscard]] unsigned month() const;
    [[nodiscard]] unsigned day() const;
    /// Days since 1970-01-01; may be negative.
    [[nodiscard]] std::int32_t days() const { return m_days; }
    /// 1 for 1 January, 365 or 366 for 31 December.
    [[nodiscard]] int dayOfYear() const;

    [[nodiscard]] Date plusDays(int days) const { return fromDays(m_days + days); }
    auto operator<=>(const Date&) const = default;

  private:
    std::int32_t m_days = 0;
};

/// Days from `from` to `to`; negative when `to` is earlier.
inline int daysBetween(Date from, Date to) {
    return to.days() - from.days();
}

} // namespace pipwright
