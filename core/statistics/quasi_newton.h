#pragma once

#include "core/units/result.h"

#include <functional>
#include <optional>
#include <vector>

namespace pipwright {

/// A function to be minimised; a Problem ends the search.
using SearchedFunction = std::function<Result<double>(const std::vector<double>&)>;

struct SearchControl {
    double tolerance = 1e-9; ///< ends when a step promises less
    int maximumIterations = 200;
    /// The step of central differences; parameters should be of the order of 1.
    double differenceStep = 1e-4;
    /// Called after each iteration with its number and the value so far.
    std::function<void(int, double)> progress{};
};

/// Where a search ended.
struct LowestPoint {
    std::vector<double> parameters;
    double value = 0;
    bool converged = false;
    int iterations = 0;
};

/// The lowest point near `start` of a smooth function of a few parameters, by the
/// Broyden-Fletcher-Goldfarb-Shanno update with central differences (Nocedal & Wright 2006,
/// Numerical Optimization, 2nd ed., algorithm 6.1).
Result<LowestPoint> lowestPoint(const SearchedFunction& function, std::vector<double> start,
                                const SearchControl& control = {});

/// The matrix of second derivatives at a point, rows in a row, by central differences.
Result<std::vector<double>> secondDerivatives(const SearchedFunction& function,
                                              const std::vector<double>& at, double differenceStep);

/// The inverse of a small symmetric matrix, rows in a row; nothing when it is not positive
/// definite.
std::optional<std::vector<double>> inverseOfPositive(std::vector<double> matrix);

} // namespace pipwright
