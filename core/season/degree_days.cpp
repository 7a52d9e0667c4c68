#include "core/season/degree_days.h"

#include "core/season/air_temperature.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace pipwright {

namespace {

Problem wrong(std::string what, std::string remedy) {
    return {ProblemCode::badInput, std::move(what), std::move(remedy), ""};
}

// For a day that goes from low to high: the mean excess over a threshold between the two
// (integrated over the day), and the share of the day above it.

double triangleAbove(double threshold, double low, double high) {
    return (high - threshold) * (high - threshold) / (2 * (high - low));
}

double triangleShare(double threshold, double low, double high) {
    return (high - threshold) / (high - low);
}

/// The angle at which the sine wave passes the threshold; -pi/2 at its lowest.
double sineAngle(double threshold, double low, double high) {
    const double sine = (threshold - (high + low) / 2) / ((high - low) / 2);
    return std::asin(std::clamp(sine, -1.0, 1.0));
}

double sineAbove(double threshold, double low, double high) {
    const double angle = sineAngle(threshold, low, high);
    return (((high + low) / 2 - threshold) * (std::numbers::pi / 2 - angle) +
            (high - low) / 2 * std::cos(angle)) /
           std::numbers::pi;
}

double sineShare(double threshold, double low, double high) {
    return 0.5 - sineAngle(threshold, low, high) / std::numbers::pi;
}

} // namespace

Result<HeatRule> HeatRule::checked(Shape shape, Celsius lower,
                                   std::optional<UpperThreshold> upper) {
    if (!isAirTemperature(lower) || (upper && !isAirTemperature(upper->temperature))) {
        return wrong("A threshold is no temperature that air can have.",
                     "Thresholds are degrees Celsius, as 10 and 30.");
    }
    if (upper && upper->temperature <= lower) {
        return wrong("The upper threshold is not above the lower.",
                     "Look whether the two were swapped.");
    }
    return HeatRule{shape, lower, upper};
}

Result<HeatRule> HeatRule::average(Celsius lower) {
    return checked(Shape::average, lower, std::nullopt);
}

Result<HeatRule> HeatRule::clippedAverage(Celsius lower, Celsius upper) {
    return checked(Shape::clippedAverage, lower, UpperThreshold{upper, HeatCutoff::horizontal});
}

Result<HeatRule> HeatRule::triangle(Celsius lower, std::optional<UpperThreshold> upper) {
    return checked(Shape::triangle, lower, upper);
}

Result<HeatRule> HeatRule::sine(Celsius lower, std::optional<UpperThreshold> upper) {
    return checked(Shape::sine, lower, upper);
}

double HeatRule::above(Celsius threshold, Celsius lowest, Celsius highest) const {
    const double limit = threshold.degrees();
    const double low = lowest.degrees();
    const double high = highest.degrees();
    if (low >= limit) {
        return (low + high) / 2 - limit;
    }
    if (high <= limit) {
        return 0;
    }
    return m_shape == Shape::triangle ? triangleAbove(limit, low, high)
                                      : sineAbove(limit, low, high);
}

double HeatRule::hotShare(Celsius lowest, Celsius highest) const {
    const double limit = m_upper->temperature.degrees();
    const double low = lowest.degrees();
    const double high = highest.degrees();
    if (high <= limit) {
        return 0;
    }
    if (low >= limit) {
        return 1;
    }
    return m_shape == Shape::triangle ? triangleShare(limit, low, high)
                                      : sineShare(limit, low, high);
}

double HeatRule::between(Celsius lowest, Celsius highest) const {
    const double gained = above(m_lower, lowest, highest);
    if (!m_upper) {
        return gained;
    }
    const double tooHot = above(m_upper->temperature, lowest, highest);
    switch (m_upper->cutoff) {
    case HeatCutoff::horizontal:
        return gained - tooHot;
    case HeatCutoff::intermediate:
        return std::max(0.0, gained - 2 * tooHot);
    case HeatCutoff::vertical:
        break;
    }
    const double width = m_upper->temperature.degrees() - m_lower.degrees();
    // Never below nothing: the difference of equals may round to -1e-15.
    return std::max(0.0, gained - tooHot - width * hotShare(lowest, highest));
}

Result<DegreeDays> HeatRule::ofDay(Celsius lowest, Celsius highest) const {
    if (!isAirTemperature(lowest) || !isAirTemperature(highest)) {
        return wrong("The day has a temperature that air cannot have.",
                     "Look whether the unit or the point is amiss.");
    }
    if (lowest > highest) {
        return wrong("The day's lowest temperature is above its highest.",
                     "Look whether the two were swapped.");
    }
    switch (m_shape) {
    case Shape::average:
        return DegreeDays{
            std::max(0.0, (lowest.degrees() + highest.degrees()) / 2 - m_lower.degrees())};
    case Shape::clippedAverage: {
        const Celsius low = std::clamp(lowest, m_lower, m_upper->temperature);
        const Celsius high = std::clamp(highest, m_lower, m_upper->temperature);
        return DegreeDays{(low.degrees() + high.degrees()) / 2 - m_lower.degrees()};
    }
    case Shape::triangle:
    case Shape::sine:
        break;
    }
    return DegreeDays{between(lowest, highest)};
}

Result<HeatSum> heatSum(std::span<const DayTemperatures> days, DaySpan span, const HeatRule& rule) {
    if (auto outcome = checkDays(days); !outcome) {
        return outcome.problem();
    }
    HeatSum sum;
    for (const DayTemperatures& day : withoutGaps(days, span)) {
        if (!day.isWhole()) {
            sum.daysMissing.push_back(day.date);
            continue;
        }
        const auto gained = rule.ofDay(*day.lowest, *day.highest);
        if (!gained) {
            return gained.problem();
        }
        sum.sum += *gained;
        ++sum.daysCounted;
    }
    return sum;
}

} // namespace pipwright
