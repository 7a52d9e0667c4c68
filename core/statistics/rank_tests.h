#pragma once

#include "core/statistics/dense_matrix.h"
#include "core/units/result.h"

#include <optional>
#include <utility>
#include <vector>

/// Fruits ranked by several tasters.
namespace pipwright {

struct FriedmanTest {
    std::vector<double> rankSums{};    ///< of each fruit; ties share the mean of their ranks
    double uncorrected = 0;            ///< 12/(nk(k+1)) sum R^2 - 3n(k+1)
    double tieSum = 0;                 ///< sum of t^3 - t over groups of t tied ranks
    double statistic = 0;              ///< corrected for ties; equal to the above without
    int degreesOfFreedom = 0;          ///< k - 1
    double pValue = 1;                 ///< by the chi-square distribution
    std::optional<double> exactPValue; ///< of small panels, where chi-square is poor: read this one
    double concordance = 0;            ///< Kendall's W, 0 no agreement to 1 full: F/(n(k-1))
};

/// Friedman (1937, J. Am. Stat. Assoc. 32:675-701) with Kendall & Babington Smith's (1939)
/// coefficient of concordance. A row a taster, a column a fruit; scores or ranks, larger = larger
/// rank. The exact p-value, over all ways each taster might have ordered his scores, is given up to
/// 4 fruits and 10 tasters.
/// Problem: fewer than two fruits or tasters, a missing or infinite score, every taster tying all.
Result<FriedmanTest> friedmanTest(const DenseMatrix& scores);

/// The difference two rank sums must reach, for `tasters` who each rank `fruits` without ties:
/// for one comparison planned beforehand, z sqrt(nk(k+1)/6). Problem: as above; a level not between
/// 0 and 1.
Result<double> leastSignificantRankDifference(int tasters, int fruits, double level = .05);

/// For all comparisons together, q sqrt(nk(k+1)/12) with the studentised range of k (Nemenyi 1963).
Result<double> honestRankDifference(int tasters, int fruits, double level = .05);

/// Rank sums so low or so high that one fruit, chosen beforehand, would reach them by chance with
/// at most half of `level` on either side; exact. For any of k fruits, give `level`/k. Nothing
/// where even the extreme sums are too likely.
Result<std::optional<std::pair<int, int>>> rankSumLimits(int tasters, int fruits,
                                                         double level = .05);

} // namespace pipwright
