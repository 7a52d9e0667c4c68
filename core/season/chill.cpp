#include "core/season/chill.h"

#include "core/season/air_temperature.h"

#include <cmath>
#include <numbers>

namespace pipwright {

namespace {

// Of the Dynamic model: activation energies over the gas constant (kelvin), rates (per hour), and
// the steepness and middle of the step from the intermediate to a portion.
constexpr double kBuildEnergy = 4153.5;
constexpr double kUndoEnergy = 12888.8;
constexpr double kBuildRate = 139500;
constexpr double kUndoRate = 2.567e18;
constexpr double kStepSlope = 1.6;
constexpr double kStepMiddle = 277;
constexpr double kCelsiusZero = 273;

constexpr double kColdUpTo = 7.2;

constexpr double kGrowthBase = 4;
constexpr double kGrowthBest = 25;
constexpr double kGrowthEnd = 36;

double utahOf(double degrees) {
    struct Step {
        double upTo;
        double units;
    };
    constexpr Step kSteps[] = {{1.4, 0}, {2.4, 0.5}, {9.1, 1}, {12.4, 0.5}, {15.9, 0}, {18, -0.5}};
    for (const Step& step : kSteps) {
        if (degrees <= step.upTo) {
            return step.units;
        }
    }
    return -1;
}

double growthOf(double degrees) {
    if (degrees <= kGrowthBase || degrees >= kGrowthEnd) {
        return 0;
    }
    const double best = kGrowthBest - kGrowthBase;
    if (degrees <= kGrowthBest) {
        return best / 2 * (1 - std::cos(std::numbers::pi * (degrees - kGrowthBase) / best));
    }
    return best *
           (1 + std::cos(std::numbers::pi / 2 + std::numbers::pi / 2 * (degrees - kGrowthBest) /
                                                    (kGrowthEnd - kGrowthBest)));
}

/// Calls take(temperature) for every hour that has one.
template <typename Sum, typename Take>
HourSum<Sum> overHours(Hours hours, Take take) {
    HourSum<Sum> result;
    for (const auto& hour : hours) {
        if (!hour || !isAirTemperature(*hour)) {
            ++result.hoursMissing;
            continue;
        }
        ++result.hoursCounted;
        result.sum += Sum{take(*hour)};
    }
    return result;
}

} // namespace

HourSum<ChillHours> chillHours(Hours hours, ColdHour rule) {
    return overHours<ChillHours>(hours, [rule](Celsius hour) {
        const bool frost = hour.degrees() < 0;
        const bool cold = hour.degrees() <= kColdUpTo;
        return cold && (!frost || rule == ColdHour::allBelow) ? 1.0 : 0.0;
    });
}

HourSum<UtahUnits> utahUnits(Hours hours) {
    return overHours<UtahUnits>(hours, [](Celsius hour) { return utahOf(hour.degrees()); });
}

HourSum<GrowingDegreeHours> growingDegreeHours(Hours hours) {
    return overHours<GrowingDegreeHours>(hours,
                                         [](Celsius hour) { return growthOf(hour.degrees()); });
}

void ChillPortionCounter::addHour(Celsius temperature) {
    const double kelvin = temperature.degrees() + kCelsiusZero;
    const double balance = kBuildRate / kUndoRate * std::exp((kUndoEnergy - kBuildEnergy) / kelvin);
    const double undoing = kUndoRate * std::exp(-kUndoEnergy / kelvin);
    // A full intermediate of the hour before has left its fixed share in the portion.
    const double start = m_intermediate < 1 ? m_intermediate : m_intermediate * (1 - m_fixedShare);
    m_intermediate = balance - (balance - start) * std::exp(-undoing);
    const double step = kStepSlope * kStepMiddle * (kelvin - kStepMiddle) / kelvin;
    m_fixedShare = 1 / (1 + std::exp(-step));
    m_lastGain = ChillPortions{m_intermediate >= 1 ? m_fixedShare * m_intermediate : 0};
    m_portions += m_lastGain;
}

HourSum<ChillPortions> chillPortions(Hours hours) {
    ChillPortionCounter counter;
    return overHours<ChillPortions>(hours, [&counter](Celsius hour) {
        counter.addHour(hour);
        return counter.lastGain().number();
    });
}

} // namespace pipwright
