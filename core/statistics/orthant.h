#pragma once

#include "core/statistics/dense_matrix.h"
#include "core/units/result.h"

#include <span>
#include <vector>

/// Several correlated normal quantities at once.
namespace pipwright {

/// A number and how far it may be off (about 99 %; 0 when exact to rounding).
struct Estimate {
    double value = 0;
    double error = 0;
};

/// Normal quantities with their means and covariances, in the units of the traits.
struct JointNormal {
    std::vector<double> means;
    DenseMatrix covariance;
};

/// How hard to try.
struct LatticeEffort {
    double tolerance = 1e-4;         ///< stop when the error is below it
    std::size_t mostPoints = 20'000; ///< a shift; there are twelve
};

/// P(lower_i < X_i <= upper_i for all i); infinite limits leave a side open. One and two dimensions
/// are exact (two: Plackett 1954, by adaptive quadrature over the angle of the correlation); three
/// and more follow Genz (1992), J. Comput. Graph. Stat. 1:141-149, on a shifted lattice (Genz &
/// Bretz 2009), variables ordered as Gibson, Glasbey & Elston (1994) advise. The result repeats
/// exactly. A covariance matrix without full rank is allowed.
/// Problem: sizes that do not fit, more than 200 quantities, NaN, a lower limit above its upper
/// one, covariances that are none.
Result<Estimate> rectangleProbability(const JointNormal& quantities, std::span<const double> lower,
                                      std::span<const double> upper,
                                      const LatticeEffort& effort = {});

/// P(all X_i > 0).
Result<Estimate> orthantProbability(const JointNormal& quantities,
                                    const LatticeEffort& effort = {});

struct MaximumOutlook {
    Estimate mean;                     ///< E[max X_i]
    std::vector<Estimate> bestChances; ///< P(X_i is the largest), in order; their sum is 1
};

/// What to expect of the largest of correlated normal quantities. One and two are exact (Clark
/// 1961, Operations Research 9:145-162); more come from the shifted lattice, with errors.
/// Problem: as rectangleProbability(), or no quantities.
Result<MaximumOutlook> maximumOutlook(const JointNormal& quantities,
                                      const LatticeEffort& effort = {1e-3, 8'000});

} // namespace pipwright
