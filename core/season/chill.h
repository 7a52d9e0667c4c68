#pragma once

#include "core/units/quantity.h"

#include <optional>
#include <span>

namespace pipwright {

/// Hours of winter cold that count.
using ChillHours = Quantity<struct ChillHourUnit>;
/// Weighted hours of the Utah model; warm hours take away.
using UtahUnits = Quantity<struct UtahUnit>;
/// Portions of the Dynamic model; once gained, never lost.
using ChillPortions = Quantity<struct ChillPortionUnit>;
/// Warmth after the rest is broken: one degree Celsius for an hour.
using GrowingDegreeHours = Quantity<struct GrowingDegreeHourUnit>;

/// A sum over hours, and how many of them it stands on. An hour without a temperature, or with
/// one that air cannot have, counts as missing and is not filled.
template <typename Sum>
struct HourSum {
    Sum sum;
    int hoursCounted = 0;
    int hoursMissing = 0;

    [[nodiscard]] bool isWhole() const { return hoursMissing == 0; }
};

/// Temperatures of successive hours.
using Hours = std::span<const std::optional<Celsius>>;

/// Which hours are cold: two rules are in use, and their sums differ where it freezes.
enum class ColdHour {
    fromZero, ///< from 0 to 7.2 degrees Celsius
    allBelow, ///< all up to 7.2 degrees Celsius (45 F)
};

HourSum<ChillHours> chillHours(Hours hours, ColdHour rule);

/// Richardson, Seeley & Walker (1974), HortScience 9:331: nothing up to 1.4 degrees Celsius, half
/// to 2.4, one to 9.1, half to 12.4, nothing to 15.9, minus half to 18, minus one above.
HourSum<UtahUnits> utahUnits(Hours hours);

/// Anderson, Richardson & Kesner (1986), Acta Horticulturae 184:71: two cosine arcs from 4 over
/// the best 25 to 36 degrees Celsius, for a tree without stress.
HourSum<GrowingDegreeHours> growingDegreeHours(Hours hours);

/// The Dynamic model, hour by hour (Fishman, Erez & Couvillon 1987, J. theor. Biol. 124:473 and
/// 126:309; constants as Erez et al. 1990): cold builds up an intermediate that warmth undoes
/// again, until a full portion of it is fixed for good. Degrees Celsius are turned to kelvin with
/// 273, as the constants were fitted. Every hour counts from the first on (a widespread program
/// starts one hour later, so its sums can differ by the last hour).
class ChillPortionCounter {
  public:
    void addHour(Celsius temperature);

    [[nodiscard]] ChillPortions portions() const { return m_portions; }
    /// The part of a portion that warmth can still undo, as it stood at the end of the hour.
    [[nodiscard]] double intermediate() const { return m_intermediate; }
    /// What the last hour fixed; nothing in most hours.
    [[nodiscard]] ChillPortions lastGain() const { return m_lastGain; }

  private:
    ChillPortions m_portions;
    ChillPortions m_lastGain;
    double m_intermediate = 0;
    double m_fixedShare = 0; // of the intermediate, when it was full
};

/// A missing hour leaves the intermediate as it was.
HourSum<ChillPortions> chillPortions(Hours hours);

} // namespace pipwright
