#pragma once

#include "core/statistics/dense_matrix.h"
#include "core/units/result.h"

#include <optional>
#include <span>
#include <vector>

/// How long fruit keeps, from looks that were days apart and lots that outlasted the last look.
namespace pipwright {

/// The end of keeping of one lot, as far as it is known: between the last day it was still good and
/// the first day it was not. Equal days are an exact day; no `last` means it was still good when
/// looking stopped; no `first` that it was already gone at the first look.
struct KeepingRecord {
    std::optional<double> first{}; ///< the end came after this day
    std::optional<double> last{};  ///< and not after this one
    std::vector<double> covariates{};

    static KeepingRecord onDay(double day, std::vector<double> covariates = {});
    static KeepingRecord after(double day, std::vector<double> covariates = {});
    static KeepingRecord between(double first, double last, std::vector<double> covariates = {});
};

enum class KeepingLaw { weibull, exponential, logNormal, logLogistic, normal };

struct KeepingDay {
    double day = 0;
    double low = 0; ///< 95 % interval by the delta method, on the scale of the law (log days)
    double high = 0;
};

/// An accelerated failure time model: g(T) = b0 + b1 x1 + ... + scale x error, with g the logarithm
/// (the identity for the normal law) and an error of the extreme value, logistic or normal law
/// (Kalbfleisch & Prentice 2002, The Statistical Analysis of Failure Time Data, ch. 2 and 3).
struct KeepingFit {
    KeepingLaw law = KeepingLaw::weibull;
    std::vector<double> coefficients{};   ///< intercept first
    double logScale = 0;                  ///< 0 and fixed for the exponential law
    std::vector<double> standardErrors{}; ///< of the coefficients, then of logScale unless fixed
    DenseMatrix covariance{};             ///< in the same order
    double logLikelihood = 0; ///< in days: exact days carry the density of the day, not of its log

    [[nodiscard]] double scale() const;
    /// The day by which `share` of the lots (strictly between 0 and 1) are past keeping, for these
    /// covariates. Problem: a share outside, a wrong number of covariates.
    [[nodiscard]] Result<KeepingDay> dayOf(double share,
                                           std::span<const double> covariates = {}) const;
};

/// Maximum likelihood by Newton's method with exact derivatives.
/// Problem: no records, days that are negative, out of order or not finite (above 0 for all but the
/// normal law), unequal numbers of covariates, covariates that repeat each other, no lot whose end
/// was seen, or data that let the curve grow without bound.
Result<KeepingFit> fitKeeping(KeepingLaw law, std::span<const KeepingRecord> records);

} // namespace pipwright
