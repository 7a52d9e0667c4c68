#pragma once

#include "core/statistics/dense_matrix.h"
#include "core/units/result.h"

#include <span>
#include <vector>

/// Curves that fall with time in store or on the counter, by least squares.
namespace pipwright {

struct TimedValue {
    double day = 0;
    double value = 0;
};

struct DayEstimate {
    double day = 0;
    double standardError = 0; ///< from the errors of the curve's parameters (delta method)
};

enum class DecayShape {
    exponential, ///< F0 exp(-k t): parameters F0, k
    logistic,    ///< L + (U - L)/(1 + exp((t - m)/s)): parameters L, U, m, s
};

struct DecayFit {
    DecayShape shape = DecayShape::exponential;
    std::vector<double> parameters{};
    std::vector<double> standardErrors{};
    DenseMatrix covariance{};
    double residualSquares = 0;
    int degreesOfFreedom = 0;

    [[nodiscard]] double valueAt(double day) const;
    /// The day the curve passes `level`. Problem: a level the curve never has.
    [[nodiscard]] Result<DayEstimate> dayAt(double level) const;
};

/// Least squares by Levenberg (1944) and Marquardt (1963, J. SIAM 11:431-441); standard errors from
/// s^2 (J'J)^-1 with s^2 = RSS/(n - p).
/// Problem: no more values than parameters, fewer days than parameters, numbers that are not
/// finite, values not above 0 (exponential), values that do not differ, a curve the data do not
/// bound (a logistic without its flat ends).
Result<DecayFit> fitDecay(DecayShape shape, std::span<const TimedValue> values);

} // namespace pipwright
