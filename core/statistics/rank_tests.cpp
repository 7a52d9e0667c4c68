#include "core/statistics/rank_tests.h"

#include "core/statistics/distributions.h"
#include "core/statistics/order_statistics.h"
#include "core/statistics/refusal.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>

namespace pipwright {

namespace {

/// The ranks of one taster's scores, smallest 1; adds to the sum of t^3 - t.
std::vector<double> ranksOf(const DenseMatrix& scores, std::size_t row, double& tieSum) {
    const std::size_t count = scores.columns();
    std::vector<std::size_t> order(count);
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::sort(order.begin(), order.end(),
              [&](std::size_t a, std::size_t b) { return scores(row, a) < scores(row, b); });
    std::vector<double> ranks(count);
    for (std::size_t from = 0; from < count;) {
        std::size_t to = from + 1;
        while (to < count && scores(row, order[to]) == scores(row, order[from])) {
            ++to;
        }
        const auto tied = static_cast<double>(to - from);
        for (std::size_t i = from; i < to; ++i) {
            ranks[order[i]] = static_cast<double>(from + 1) + (tied - 1) / 2;
        }
        tieSum += tied * tied * tied - tied;
        from = to;
    }
    return ranks;
}

double squaresOf(const std::vector<int>& sums) {
    double squares = 0;
    for (const int sum : sums) {
        squares += static_cast<double>(sum) * sum;
    }
    return squares;
}

/// P(sum of squared rank sums >= the one seen) when every taster shuffles his own ranks. Ranks are
/// doubled to be whole. The distribution of the sums is built up taster by taster.
double exactFriedman(const std::vector<std::vector<double>>& ranks) {
    std::map<std::vector<int>, double> chances{{std::vector<int>(ranks.front().size(), 0), 1.0}};
    std::vector<int> seen(ranks.front().size(), 0);
    for (const auto& row : ranks) {
        std::vector<int> doubled;
        for (std::size_t i = 0; i < row.size(); ++i) {
            doubled.push_back(static_cast<int>(std::lround(2 * row[i])));
            seen[i] += doubled.back();
        }
        std::sort(doubled.begin(), doubled.end());
        std::vector<std::vector<int>> orders;
        do {
            orders.push_back(doubled);
        } while (std::next_permutation(doubled.begin(), doubled.end()));
        std::map<std::vector<int>, double> next;
        for (const auto& [sums, chance] : chances) {
            for (const auto& order : orders) {
                std::vector<int> grown = sums;
                for (std::size_t i = 0; i < grown.size(); ++i) {
                    grown[i] += order[i];
                }
                // Fruits are interchangeable: one order of the sums stands for all.
                std::sort(grown.begin(), grown.end());
                next[grown] += chance / static_cast<double>(orders.size());
            }
        }
        chances = std::move(next);
    }
    double p = 0;
    for (const auto& [sums, chance] : chances) {
        p += squaresOf(sums) >= squaresOf(seen) ? chance : 0;
    }
    return std::min(p, 1.0);
}

std::optional<Problem> faultOfPanel(int tasters, int fruits, double level) {
    if (tasters < 1 || tasters > 100'000 || fruits < 2 || fruits > 1000) {
        return unusable("Ranks need at least one taster and two fruits.",
                        "Give 1 to 100,000 tasters and 2 to 1000 fruits.");
    }
    if (!(level > 0 && level < 1)) {
        return unusable("A level of significance must lie between 0 and 1.", "Give one that does.");
    }
    return std::nullopt;
}

} // namespace

Result<FriedmanTest> friedmanTest(const DenseMatrix& scores) {
    if (scores.rows() < 2 || scores.columns() < 2) {
        return unusable("Ranks can be compared from two tasters and two fruits on.",
                        "Let another taster rank the same fruits.");
    }
    if (!scores.isFinite()) {
        return unusable("A score is missing or not a finite number.",
                        "Use the fruits that every taster scored.");
    }
    const auto n = static_cast<double>(scores.rows());
    const auto k = static_cast<double>(scores.columns());
    FriedmanTest test;
    test.rankSums.assign(scores.columns(), 0);
    std::vector<std::vector<double>> ranks;
    for (std::size_t row = 0; row < scores.rows(); ++row) {
        ranks.push_back(ranksOf(scores, row, test.tieSum));
        for (std::size_t i = 0; i < scores.columns(); ++i) {
            test.rankSums[i] += ranks.back()[i];
        }
    }
    const double correction = 1 - test.tieSum / (n * k * (k * k - 1));
    if (correction < 1e-12) {
        return unusable("Every taster gave all fruits the same score.",
                        "Nothing can be told apart; ask for a forced choice.");
    }
    // As a sum of squared distances from the mean: nothing large cancels.
    double squares = 0;
    for (const double sum : test.rankSums) {
        squares += (sum - n * (k + 1) / 2) * (sum - n * (k + 1) / 2);
    }
    test.uncorrected = 12 * squares / (n * k * (k + 1));
    test.statistic = test.uncorrected / correction;
    test.degreesOfFreedom = static_cast<int>(k) - 1;
    test.concordance = test.statistic / (n * (k - 1));
    const auto above = probabilityAbove(ChiSquareDistribution{k - 1}, test.statistic);
    if (!above) {
        return above.problem();
    }
    test.pValue = *above;
    if (scores.columns() <= 4 && scores.rows() <= 10) {
        test.exactPValue = exactFriedman(ranks);
    }
    return test;
}

Result<double> leastSignificantRankDifference(int tasters, int fruits, double level) {
    if (auto fault = faultOfPanel(tasters, fruits, level)) {
        return *fault;
    }
    const double spread = std::sqrt(tasters * static_cast<double>(fruits) * (fruits + 1) / 6);
    return standardNormalUpperQuantile(level / 2) * spread;
}

Result<double> honestRankDifference(int tasters, int fruits, double level) {
    if (auto fault = faultOfPanel(tasters, fruits, level)) {
        return *fault;
    }
    const auto range = rangeQuantile(1 - level, fruits);
    if (!range) {
        return range.problem();
    }
    return *range * std::sqrt(tasters * static_cast<double>(fruits) * (fruits + 1) / 12);
}

Result<std::optional<std::pair<int, int>>> rankSumLimits(int tasters, int fruits, double level) {
    if (auto fault = faultOfPanel(tasters, fruits, level)) {
        return *fault;
    }
    if (static_cast<double>(tasters) * tasters * fruits * fruits > 1e8) {
        return unusable("The panel is too large to count every rank sum.",
                        "Use the differences of rank sums instead.");
    }
    // Each taster gives one fruit chosen beforehand each rank with the same chance; element i is
    // the chance of the sum tasters + i.
    std::vector<double> chances{1};
    for (int taster = 0; taster < tasters; ++taster) {
        std::vector<double> next(chances.size() + static_cast<std::size_t>(fruits) - 1, 0);
        for (std::size_t i = 0; i < chances.size(); ++i) {
            for (std::size_t rank = 0; rank < static_cast<std::size_t>(fruits); ++rank) {
                next[i + rank] += chances[i] / fruits;
            }
        }
        chances = std::move(next);
    }
    double tail = 0;
    int low = tasters - 1;
    for (const double chance : chances) {
        tail += chance;
        if (tail > level / 2 * (1 + 1e-12)) {
            break;
        }
        ++low;
    }
    if (low < tasters) {
        return std::optional<std::pair<int, int>>{};
    }
    return std::optional(std::pair{low, tasters * (fruits + 1) - low}); // symmetric
}

} // namespace pipwright
