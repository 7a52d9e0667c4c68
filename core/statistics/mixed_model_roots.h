#pragma once

#include "core/statistics/mixed_model_search.h"
#include "core/statistics/quasi_newton.h"

#include <cstddef>
#include <functional>
#include <vector>

namespace pipwright {

/// The variances of a search as free numbers of the order of 1: the root L of each covariance (its
/// lower triangle) and the logarithm of each residual variance. None has a limit, and a variance
/// of 0 is a point like any other, as f(L L') is even in a column of L and has a minimum at 0
/// there (Pinheiro & Bates 1996, Stat. Comput. 6:289-296). What is held is left out.
class VarianceRoots {
  public:
    /// Residual groups of `tied` keep their share of the largest.
    VarianceRoots(const ModelRecords& records, const SearchTask& task, VarianceState from,
                  std::vector<bool> tied);

    /// Where the search stands. Axes of no length are given some: from 0 both ways look alike.
    [[nodiscard]] std::vector<double> numbers() const;
    /// The variances for such numbers. No other residual variance is less than `leastResidual`
    /// of the largest.
    [[nodiscard]] VarianceState state(const std::vector<double>& numbers,
                                      double leastResidual) const;

  private:
    /// Calls visit(term, place in L, its unit) for each number of a root.
    template <typename Visit>
    void eachOfRoots(Visit visit) const;
    [[nodiscard]] bool isFree(std::size_t group) const;

    const ModelRecords& m_records;
    const SearchTask& m_task;
    VarianceState m_from;
    std::vector<bool> m_tied;
    std::vector<std::vector<double>> m_units; ///< of each term's effects
};

/// The lowest point of `objectiveAt` from where the roots stand, within the iterations that
/// `control` leaves after `iterations`; it is infinite where the equations break down.
Result<LowestPoint>
lowestAmongRoots(const VarianceRoots& roots,
                 const std::function<double(const std::vector<double>&)>& objectiveAt,
                 double tolerance, int iterations, const FitControl& control);

} // namespace pipwright
