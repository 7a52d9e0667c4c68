#pragma once

#include "core/season/day_temperatures.h"
#include "core/units/quantity.h"
#include "core/units/result.h"

#include <optional>
#include <span>
#include <vector>

namespace pipwright {

/// Warmth above a threshold times its duration: one degree Celsius for a day.
using DegreeDays = Quantity<struct DegreeDayUnit>;

/// What warmth above the upper threshold does.
enum class HeatCutoff {
    horizontal,   ///< it helps no more than the threshold itself
    intermediate, ///< what is above is taken off again, but never below nothing in a day
    vertical,     ///< while it is so hot, nothing is gained at all
};

struct UpperThreshold {
    Celsius temperature;
    HeatCutoff cutoff = HeatCutoff::horizontal;
};

/// How the lowest and the highest temperature of a day become degree days.
class HeatRule {
  public:
    /// The mean of the two above the threshold, nothing when it is below.
    static Result<HeatRule> average(Celsius lower);
    /// The same after each of the two was moved into the thresholds (McMaster & Wilhelm 1997).
    static Result<HeatRule> clippedAverage(Celsius lower, Celsius upper);
    /// The day rises and falls in straight lines (Sevacherian, Stern & Mueller 1977).
    static Result<HeatRule> triangle(Celsius lower, std::optional<UpperThreshold> upper = {});
    /// The day is a sine wave (Baskerville & Emin 1969, Ecology 50:514; Allen 1976).
    static Result<HeatRule> sine(Celsius lower, std::optional<UpperThreshold> upper = {});

    /// A Problem when the lowest is above the highest, or one is nothing that air can have. A day
    /// whose two are the same has that temperature throughout.
    [[nodiscard]] Result<DegreeDays> ofDay(Celsius lowest, Celsius highest) const;

  private:
    enum class Shape { average, clippedAverage, triangle, sine };

    HeatRule(Shape shape, Celsius lower, std::optional<UpperThreshold> upper)
        : m_shape(shape), m_lower(lower), m_upper(upper) {}
    static Result<HeatRule> checked(Shape shape, Celsius lower,
                                    std::optional<UpperThreshold> upper);
    [[nodiscard]] double above(Celsius threshold, Celsius lowest, Celsius highest) const;
    [[nodiscard]] double hotShare(Celsius lowest, Celsius highest) const;
    [[nodiscard]] double between(Celsius lowest, Celsius highest) const;

    Shape m_shape;
    Celsius m_lower;
    std::optional<UpperThreshold> m_upper;
};

/// The degree days of a span, and the days without temperatures, which add nothing to it: with
/// any of them the true sum is higher or the same.
struct HeatSum {
    DegreeDays sum;
    int daysCounted = 0;
    std::vector<Date> daysMissing;

    [[nodiscard]] bool isWhole() const { return daysMissing.empty(); }
};

/// A Problem when the days do not pass checkDays.
Result<HeatSum> heatSum(std::span<const DayTemperatures> days, DaySpan span, const HeatRule& rule);

} // namespace pipwright
