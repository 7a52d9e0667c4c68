#pragma once

#include "core/season/date.h"

#include <compare>
#include <optional>

namespace pipwright {

/// Degrees from the equator, north positive.
class Latitude {
  public:
    /// Nothing beyond the poles, and for NaN.
    static std::optional<Latitude> of(double degrees);

    [[nodiscard]] double degrees() const { return m_degrees; }
    auto operator<=>(const Latitude&) const = default;

  private:
    explicit Latitude(double degrees) : m_degrees(degrees) {}

    double m_degrees;
};

/// How the sun goes over a place on a day. Hours of local solar time: noon is when it is highest.
struct SunDay {
    enum class Kind {
        risesAndSets,
        staysUp,   ///< polar day: from 0 to 24
        staysDown, ///< polar night: from 12 to 12
    };

    Kind kind = Kind::risesAndSets;
    double sunrise = 0;
    double sunset = 0;

    [[nodiscard]] double daylength() const { return sunset - sunrise; }
};

/// Sunrise and sunset when the upper rim of the sun stands on the horizon (its centre 0.8333
/// degrees below, refraction included), by the declination series of Spencer (1971), Search 2:172.
/// Good to a minute or two; hills are not in it.
SunDay sunOn(Latitude latitude, Date date);

} // namespace pipwright
