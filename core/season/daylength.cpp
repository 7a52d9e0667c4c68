#include "core/season/daylength.h"

#include <cmath>
#include <numbers>

namespace pipwright {

namespace {

constexpr double kDegree = std::numbers::pi / 180;
constexpr double kHoursADegree = 24.0 / 360;
/// Half the sun's width and the bending of its light at the horizon.
constexpr double kHeightAtSunrise = -0.8333 * kDegree;

/// The sun's declination in radians; Spencer's series has a year of 365 days.
double declination(int dayOfYear) {
    const double turn = 2 * std::numbers::pi * (dayOfYear - 1) / 365;
    return 0.006918 - 0.399912 * std::cos(turn) + 0.070257 * std::sin(turn) -
           0.006758 * std::cos(2 * turn) + 0.000907 * std::sin(2 * turn) -
           0.002697 * std::cos(3 * turn) + 0.00148 * std::sin(3 * turn);
}

} // namespace

std::optional<Latitude> Latitude::of(double degrees) {
    if (degrees >= -90 && degrees <= 90) { // false for NaN
        return Latitude{degrees};
    }
    return std::nullopt;
}

SunDay sunOn(Latitude latitude, Date date) {
    const double north = latitude.degrees() * kDegree;
    const double sun = declination(date.dayOfYear());
    // cos(hour angle of sunrise) = missing / reach; compared before dividing, since the reach
    // vanishes at the poles.
    const double missing = std::sin(kHeightAtSunrise) - std::sin(north) * std::sin(sun);
    const double reach = std::cos(north) * std::cos(sun);
    if (missing >= reach) {
        return {SunDay::Kind::staysDown, 12, 12};
    }
    if (missing <= -reach) {
        return {SunDay::Kind::staysUp, 0, 24};
    }
    const double halfDay = std::acos(missing / reach) / kDegree * kHoursADegree;
    return {SunDay::Kind::risesAndSets, 12 - halfDay, 12 + halfDay};
}

} // namespace pipwright
