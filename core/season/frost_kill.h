#pragma once

#include "core/units/quantity.h"
#include "core/units/result.h"

#include <optional>
#include <span>
#include <string_view>

namespace pipwright {

/// The blossom whose hardiness is tabled.
enum class Blossom { apple, pear, peach, sweetCherry };

/// Half an hour at which temperature kills a tenth and nine tenths of the buds or flowers.
/// Source of the numbers: "Orchard frost: critical temperatures for various fruits" of Penn State
/// Extension, after the 1989 spray guide for tree fruits in eastern Washington, bulletin EB 0419
/// (Beers, editor), in degrees Fahrenheit. Averages of one region: kinds differ by one or two
/// degrees, slow cool springs harden, wet and wind change it.
struct FrostLimit {
    Blossom blossom;
    const char* stage; ///< as the trade calls it
    /// The BBCH stage from which on it holds, until the next limit's; the assignment is ours.
    int fromStage;
    Fahrenheit killsATenth;
    Fahrenheit killsNineTenths;
};

/// The limits of a blossom in the order of the stages.
std::span<const FrostLimit> frostLimits(Blossom blossom);

/// The limit that holds at a BBCH stage; nothing before the first, in leaf and shoot stages
/// (10 to 39) and once fruitlets are larger than 20 mm (beyond stage 72).
std::optional<FrostLimit> frostLimitAt(Blossom blossom, int stage);

/// What share of the flowers a frost kills, as far as the table tells: between its two points a
/// straight line, with the whole band between them as its uncertainty; beyond them only the bound.
struct FrostKill {
    double atLeast = 0;
    double atMost = 1;
    std::optional<double> likely; ///< only between the two points
};

/// A Problem when the temperature is nothing that air can have.
Result<FrostKill> killedBy(const FrostLimit& limit, Celsius lowest);

} // namespace pipwright
