#include "core/season/hourly_temperatures.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace pipwright {

namespace {

constexpr int kHoursADay = 24;

/// A day of which both temperatures are known and the sun rises and sets.
struct Curve {
    double lowest;
    double highest;
    SunDay sun;

    [[nodiscard]] double byDay(double hour) const {
        return lowest + (highest - lowest) * std::sin(std::numbers::pi * (hour - sun.sunrise) /
                                                      (sun.daylength() + 4));
    }
    [[nodiscard]] double atSunset() const { return byDay(sun.sunset); }
};

std::optional<Curve> curveOf(const DayTemperatures& day, Latitude latitude) {
    const SunDay sun = sunOn(latitude, day.date);
    if (!day.isWhole() || sun.kind != SunDay::Kind::risesAndSets) {
        return std::nullopt;
    }
    return Curve{day.lowest->degrees(), day.highest->degrees(), sun};
}

/// The temperature so many hours after sunset.
std::optional<Celsius> byNight(const std::optional<Curve>& evening,
                               const std::optional<Curve>& morning, double sinceSunset) {
    if (!evening || !morning) {
        return std::nullopt;
    }
    const double night = kHoursADay - evening->sun.sunset + morning->sun.sunrise;
    const double start = evening->atSunset();
    return Celsius{start -
                   (start - morning->lowest) * std::log(sinceSunset + 1) / std::log(night + 1)};
}

} // namespace

std::size_t HourlyTemperatures::missing() const {
    return static_cast<std::size_t>(std::count(hours.begin(), hours.end(), std::nullopt));
}

Result<HourlyTemperatures> hourlyTemperatures(std::span<const DayTemperatures> days, DaySpan span,
                                              Latitude latitude) {
    if (auto outcome = checkDays(days); !outcome) {
        return outcome.problem();
    }
    // The evening before and the morning after bound the first and the last night.
    const DaySpan wider{span.first.plusDays(-1), span.last.plusDays(1)};
    const std::vector<DayTemperatures> all = withoutGaps(days, wider);
    HourlyTemperatures result{span.first, {}};
    result.hours.reserve(static_cast<std::size_t>(span.dayCount()) * kHoursADay);
    std::optional<Curve> before = curveOf(all.front(), latitude);
    std::optional<Curve> today = curveOf(all[1], latitude);
    for (std::size_t i = 1; i + 1 < all.size(); ++i) {
        const std::optional<Curve> after = curveOf(all[i + 1], latitude);
        for (int hour = 0; hour < kHoursADay; ++hour) {
            std::optional<Celsius> temperature;
            if (today && hour < today->sun.sunrise) {
                const double sinceSunset = before ? hour + kHoursADay - before->sun.sunset : 0;
                temperature = byNight(before, today, sinceSunset);
            } else if (today && hour <= today->sun.sunset) {
                temperature = Celsius{today->byDay(hour)};
            } else if (today) {
                temperature = byNight(today, after, hour - today->sun.sunset);
            }
            result.hours.push_back(temperature);
        }
        before = today;
        today = after;
    }
    return result;
}

} // namespace pipwright
