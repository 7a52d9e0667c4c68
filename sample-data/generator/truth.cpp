#include "sample-data/generator/truth.h"

#include <algorithm>
#include <cmath>

namespace pipwright::sample {

namespace {

constexpr double kPivot = 250.0; // 7 September

double mixed(double a, double b, double spread, double low, double high, Chance& chance) {
    return std::clamp((a + b) / 2 + spread * chance.normal(), low, high);
}

} // namespace

Truth childOf(const Truth& mother, const Truth& father, Chance chance) {
    Truth child;
    // Parents were chosen for their fruit, so a child falls back towards the common run.
    child.liking = mixed(mother.liking, father.liking, 0.95, 2.0, 8.0, chance) - 0.9;
    child.season = mixed(mother.season, father.season, 9.0, 192.0, 304.0, chance);
    child.window = mixed(mother.window, father.window, 3.5, 4.0, 28.0, chance);
    child.keeping = mixed(mother.keeping, father.keeping, 0.01, 0.004, 0.12, chance);
    child.scab = mixed(mother.scab, father.scab, 0.9, 0.0, 5.0, chance);
    child.sharpness = mixed(mother.sharpness, father.sharpness, 0.8, 1.0, 5.0, chance);
    child.sweetness = mixed(mother.sweetness, father.sweetness, 0.6, 1.0, 5.0, chance);
    child.aroma = mixed(mother.aroma, father.aroma, 0.8, 1.0, 5.0, chance);
    child.crispness = mixed(mother.crispness, father.crispness, 0.8, 1.0, 5.0, chance);
    child.mass = mixed(mother.mass, father.mass, 28.0, 35.0, 320.0, chance);
    child.hue = chance.happens(0.5) ? mother.hue : father.hue;
    if (child.hue == Hue::russet && chance.happens(0.5)) {
        child.hue = Hue::gold;
    }
    child.flavour = chance.happens(0.35)   ? mother.flavour
                    : chance.happens(0.45) ? father.flavour
                                           : chance.below(12);
    return child;
}

SeasonTruth seasonOf(int year) {
    switch (year) {
    case 2016:
        return {3, 0.98, 0.0, false};
    case 2017:
        return {-4, 1.03, -0.2, true};
    case 2018:
        return {-8, 0.94, 0.3, false};
    case 2019:
        return {0, 1.0, 0.0, false};
    case 2020:
        return {-6, 1.02, 0.2, false};
    case 2021:
        return {7, 0.93, -0.5, true};
    case 2022:
        return {-9, 1.05, 0.4, false};
    case 2023:
        return {2, 1.0, -0.1, false};
    case 2024:
        return {-3, 0.97, -0.3, false};
    case 2025:
        return {-7, 0.96, 0.3, false};
    case 2026:
        return {-4, 1.03, 0.1, false};
    default:
        return {};
    }
}

GoodDays goodDaysOf(const Truth& truth, const std::string& code, int year) {
    const SeasonTruth season = seasonOf(year);
    Chance chance(code + " ripens " + std::to_string(year));
    const double first =
        kPivot + season.shift + season.stretch * (truth.season - kPivot) + 2.5 * chance.normal();
    const double length = std::max(3.0, truth.window + 1.5 * chance.normal());
    const Date newYear = Date::of(year, 1, 1).value();
    const Date start = newYear.plusDays(static_cast<int>(std::lround(first)) - 1);
    return {start, start.plusDays(static_cast<int>(std::lround(length)))};
}

Ripeness ripenessOn(const GoodDays& days, Date day) {
    const double length = daysBetween(days.first, days.last);
    const double at = daysBetween(days.first, day) / length;
    if (at < -0.8) {
        return Ripeness::green;
    }
    if (at < 0) {
        return Ripeness::gettingThere;
    }
    if (at < 0.2) {
        return Ripeness::earlyPrime;
    }
    if (at < 0.65) {
        return Ripeness::prime;
    }
    if (at <= 0.9) {
        return Ripeness::latePrime;
    }
    return at < 1.5 ? Ripeness::onItsWayOut : Ripeness::gone;
}

namespace {

double ripenessEffect(Ripeness ripeness) {
    switch (ripeness) {
    case Ripeness::green:
        return -2.2;
    case Ripeness::gettingThere:
        return -1.0;
    case Ripeness::earlyPrime:
        return -0.3;
    case Ripeness::latePrime:
        return -0.2;
    case Ripeness::onItsWayOut:
        return -1.2;
    case Ripeness::gone:
        return -2.6;
    default:
        return 0.0;
    }
}

double originEffect(Origin origin) {
    switch (origin) {
    case Origin::pickedEarly:
        return -0.6;
    case Origin::droppedToday:
        return -0.3;
    case Origin::onGroundLonger:
        return -0.9;
    case Origin::shaken:
        return -0.2;
    default:
        return 0.0;
    }
}

double soundnessEffect(Soundness soundness) {
    switch (soundness) {
    case Soundness::insect:
        return -0.6;
    case Soundness::bird:
        return -0.3;
    case Soundness::split:
        return -0.3;
    case Soundness::rot:
        return -1.0;
    default:
        return 0.0;
    }
}

} // namespace

double conditionEffect(const Lot& lot, const Truth& truth) {
    double effect =
        ripenessEffect(lot.ripeness) + originEffect(lot.origin) + soundnessEffect(lot.soundness);
    effect -= truth.keeping * static_cast<double>(lot.daysInFridge.value_or(0));
    effect -= 2.5 * truth.keeping * static_cast<double>(lot.daysOnCounter.value_or(0));
    effect -= 0.6 * truth.keeping * static_cast<double>(lot.daysInCellar.value_or(0));
    effect -= lot.bag == Bag::paper ? 0.3 : 0.0;
    effect -= lot.canopyPlace == CanopyPlace::inside ? 0.3 : 0.0;
    return effect;
}

double scoreOf(double liking, const TasterTruth& taster, const Truth& truth, bool hopes,
               Chance& chance) {
    double value = 6.0 + taster.spread * (liking - 6.0) + taster.level +
                   taster.acid * (truth.sharpness - 3.0) + taster.noise * chance.normal();
    value += hopes ? taster.hope : 0.0;
    return std::clamp(std::round(value * 2) / 2, 1.0, 9.0);
}

} // namespace pipwright::sample
