#include "core/season/frost_kill.h"

#include "core/season/air_temperature.h"

#include <array>

namespace pipwright {

namespace {

constexpr FrostLimit limit(Blossom blossom, const char* stage, int from, double tenth,
                           double nineTenths) {
    return {blossom, stage, from, Fahrenheit{tenth}, Fahrenheit{nineTenths}};
}

using enum Blossom;

constexpr std::array kApple = {
    limit(apple, "silver tip", 51, 15, 2),       limit(apple, "green tip", 53, 18, 10),
    limit(apple, "half-inch green", 54, 23, 15), limit(apple, "tight cluster", 55, 27, 21),
    limit(apple, "first pink", 57, 28, 24),      limit(apple, "full pink", 59, 28, 25),
    limit(apple, "first bloom", 60, 28, 25),     limit(apple, "full bloom", 65, 28, 25),
    limit(apple, "post bloom", 69, 28, 25),
};

constexpr std::array kPear = {
    limit(pear, "scales separating", 51, 15, 0), limit(pear, "blossom buds exposed", 53, 20, 6),
    limit(pear, "tight cluster", 55, 24, 15),    limit(pear, "first white", 57, 25, 19),
    limit(pear, "full white", 59, 26, 22),       limit(pear, "first bloom", 60, 27, 23),
    limit(pear, "full bloom", 65, 28, 24),       limit(pear, "post bloom", 69, 28, 24),
};

constexpr std::array kPeach = {
    limit(peach, "first swelling", 51, 18, 1), limit(peach, "calyx green", 53, 21, 5),
    limit(peach, "calyx red", 55, 23, 9),      limit(peach, "first pink", 57, 25, 15),
    limit(peach, "first bloom", 60, 26, 21),   limit(peach, "full bloom", 65, 27, 24),
    limit(peach, "post bloom", 69, 28, 25),
};

constexpr std::array kSweetCherry = {
    limit(sweetCherry, "first swelling", 51, 17, 5),
    limit(sweetCherry, "side green", 52, 22, 9),
    limit(sweetCherry, "green tip", 53, 25, 14),
    limit(sweetCherry, "tight cluster", 55, 26, 17),
    limit(sweetCherry, "open cluster", 56, 27, 21),
    limit(sweetCherry, "first white", 57, 27, 24),
    limit(sweetCherry, "first bloom", 60, 28, 25),
    limit(sweetCherry, "full bloom", 65, 28, 25),
    limit(sweetCherry, "post bloom", 69, 28, 25),
};

constexpr int kLastStage = 72;

} // namespace

std::span<const FrostLimit> frostLimits(Blossom blossom) {
    switch (blossom) {
    case apple:
        return kApple;
    case pear:
        return kPear;
    case peach:
        return kPeach;
    case sweetCherry:
        break;
    }
    return kSweetCherry;
}

std::optional<FrostLimit> frostLimitAt(Blossom blossom, int stage) {
    std::optional<FrostLimit> found;
    for (const FrostLimit& one : frostLimits(blossom)) {
        if (one.fromStage <= stage && stage <= kLastStage) {
            found = one;
        }
    }
    return found;
}

Result<FrostKill> killedBy(const FrostLimit& limit, Celsius lowest) {
    if (!isAirTemperature(lowest)) {
        return Problem{ProblemCode::badInput, "Air cannot have that temperature.",
                       "Look whether the unit or the point is amiss.", ""};
    }
    const double tenth = toCelsius(limit.killsATenth).degrees();
    const double nineTenths = toCelsius(limit.killsNineTenths).degrees();
    const double air = lowest.degrees();
    if (air > tenth) {
        return FrostKill{0, 0.1, std::nullopt};
    }
    if (air < nineTenths) {
        return FrostKill{0.9, 1, std::nullopt};
    }
    return FrostKill{0.1, 0.9, 0.1 + 0.8 * (tenth - air) / (tenth - nineTenths)};
}

} // namespace pipwright
