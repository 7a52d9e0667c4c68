#pragma once

#include "core/units/result.h"

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

/// Trees compared as if the ground were even, from what their neighbours did.
namespace pipwright {

/// A tree in its place. Trees of the same `entry` stand for the same thing (a check); a tree
/// without one is a seedling of its own and is compared with the mean of all such.
struct PlantedValue {
    int row = 0;
    int position = 0;
    double value = 0;
    std::optional<std::size_t> entry{};
};

struct PapadakisAdjustment {
    std::vector<double> covariates{}; ///< mean residual of the neighbours of each tree
    double slope = 0;                 ///< as regressed
    double usedSlope = 0;             ///< kept between 0 and 1: beyond, few trees over-correct
    std::vector<double> adjusted{};   ///< in the unit of the values
};

/// Papadakis (1937): residual = value less the mean of its entry; covariate = mean residual of the
/// neighbours (the next positions in the row and the same position in the next rows); the residuals
/// are regressed on it and the values adjusted, y - b (covariate - mean covariate). A tree without
/// neighbours has the mean covariate. Problem: fewer than three trees with neighbours, two trees in
/// one place, values not finite, a covariate that does not vary.
Result<PapadakisAdjustment> papadakisAdjustment(std::span<const PlantedValue> trees,
                                                bool clamped = true);

struct MovingMeanAdjustment {
    std::vector<double> movingMeans{};
    std::vector<double> adjusted{}; ///< y - moving mean + mean of all
};

/// Values along one row, in order, each less the mean of up to `reach` neighbours on either side,
/// itself left out. Problem: fewer than two values, `reach` below 1, values not finite.
Result<MovingMeanAdjustment> movingMeanAdjustment(std::span<const double> row, int reach);

/// A check tree in a row.
struct CheckValue {
    double position = 0;
    double value = 0;
};

/// The level of the ground at each position, interpolated linearly between the check trees on
/// either side; beyond the first and last it stays theirs. Checks in one place count as their mean.
/// Problem: no check in the row (then nothing can be adjusted), numbers that are not finite.
Result<std::vector<double>> checkLevels(std::span<const CheckValue> checks,
                                        std::span<const double> positions);

} // namespace pipwright
