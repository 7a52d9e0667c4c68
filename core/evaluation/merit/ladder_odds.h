#pragma once

#include "core/statistics/dense_matrix.h"
#include "core/units/result.h"

#include <cstddef>
#include <span>
#include <vector>

namespace pipwright {

/// The benchmarks of a slot as joint normal quantities, made once, against which many seedlings
/// are held.
///
/// P(a seedling above all): one benchmark exact, two exact (orthant.h). More: the seedling given
/// the benchmarks is normal, so the probability is the mean over the benchmarks' distribution of
/// P(seedling > the best of them | benchmarks), which is taken over 516 lattice points (the same
/// for every seedling, so that two seedlings are compared on the same ground); the error is about
/// 0.001.
class LadderOdds {
  public:
    /// Problem badInput: covariances that are none, sizes that do not fit, no benchmarks.
    static Result<LadderOdds> of(std::vector<double> means, DenseMatrix covariance);

    [[nodiscard]] std::size_t size() const { return m_means.size(); }
    /// P(seedling > all benchmarks). `together` are its covariances with each of them.
    [[nodiscard]] double aboveAll(double mean, double variance,
                                  std::span<const double> together) const;

  private:
    LadderOdds() = default;
    [[nodiscard]] double overLattice(double mean, double variance,
                                     std::span<const double> together) const;

    std::vector<double> m_means;
    DenseMatrix m_covariance;
    DenseMatrix m_factor;         ///< lower triangular
    std::vector<double> m_points; ///< standard normal, a row a point
    std::vector<double> m_bars;   ///< the best of the benchmarks at each point
};

/// P(X > 0) of a normal quantity; without variance 1, 0, or a half at 0 itself.
double chanceAboveZero(double mean, double variance);

} // namespace pipwright
