#include "core/statistics/goodness_of_fit.h"

#include "core/statistics/distributions.h"
#include "core/statistics/refusal.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <random>

namespace pipwright {

namespace {

/// Outcomes whose probabilities agree to this relative amount count as equally likely.
constexpr double kSameChance = 1e-7;
constexpr std::int64_t kMostTries = 10'000'000;
constexpr int kSimulatedTables = 100'000;

std::optional<Problem> faultOf(std::span<const std::int64_t> observed,
                               std::span<const double> ratio) {
    if (observed.size() != ratio.size()) {
        return unusable("There are not as many counts as parts of the ratio.",
                        "Give one part for every class.");
    }
    if (observed.size() < 2) {
        return unusable("One class alone fits every ratio.", "Give at least two classes.");
    }
    std::int64_t left = kMostTries * 100;
    for (const std::int64_t count : observed) {
        if (count < 0 || count > left) {
            return unusable("A count is negative or beyond a thousand million.",
                            "Give the number seen in each class, 0 or more.");
        }
        left -= count;
    }
    if (left == kMostTries * 100) {
        return unusable("Nothing was counted.", "Count at least one seedling.");
    }
    for (const double part : ratio) {
        if (!std::isfinite(part) || part <= 0) {
            return unusable("Every part of the ratio must be above 0.",
                            "Leave out a class that cannot occur; seedlings seen in it are a "
                            "finding of their own.");
        }
    }
    return std::nullopt;
}

double totalOf(std::span<const std::int64_t> counts) {
    return static_cast<double>(std::accumulate(counts.begin(), counts.end(), std::int64_t{0}));
}

std::vector<double> chancesOf(std::span<const double> ratio) {
    // Largest first brought to 1, so that the sum cannot overflow.
    const double largest = *std::max_element(ratio.begin(), ratio.end());
    std::vector<double> chances;
    for (const double part : ratio) {
        chances.push_back(part / largest);
    }
    const double whole = std::accumulate(chances.begin(), chances.end(), 0.0);
    for (double& chance : chances) {
        chance /= whole;
    }
    return chances;
}

Result<ChiSquareTest> referred(double statistic, int degrees) {
    const auto above =
        probabilityAbove(ChiSquareDistribution{static_cast<double>(degrees)}, statistic);
    return above ? Result<ChiSquareTest>(ChiSquareTest{statistic, degrees, *above})
                 : above.problem();
}

// ---- exact ---------------------------------------------------------------------------------

/// ln of the multinomial probability of one table.
class TableChance {
  public:
    TableChance(const std::vector<double>& chances, std::int64_t total)
        : m_logFactorials(static_cast<std::size_t>(total) + 1) {
        m_logChances.reserve(chances.size());
        for (const double chance : chances) {
            m_logChances.push_back(std::log(chance));
        }
        for (std::size_t n = 1; n < m_logFactorials.size(); ++n) {
            m_logFactorials[n] = m_logFactorials[n - 1] + std::log(static_cast<double>(n));
        }
    }

    /// What class `i` adds when it holds `count`.
    [[nodiscard]] double part(std::size_t i, std::int64_t count) const {
        return static_cast<double>(count) * m_logChances[i] -
               m_logFactorials[static_cast<std::size_t>(count)];
    }
    [[nodiscard]] double whole(std::span<const std::int64_t> counts) const {
        double sum = m_logFactorials.back();
        for (std::size_t i = 0; i < counts.size(); ++i) {
            sum += part(i, counts[i]);
        }
        return sum;
    }
    [[nodiscard]] std::size_t classes() const { return m_logChances.size(); }

    /// Summed probability of the tables no likelier than `limit`, with `left` still to be placed
    /// into the classes from `i` on and `sum` gathered so far.
    [[nodiscard]] double sumUpTo(double limit, std::size_t i, std::int64_t left,
                                 double sum) const { // NOLINT(misc-no-recursion)
        if (i + 1 == classes()) {
            const double logChance = sum + part(i, left);
            return logChance <= limit ? std::exp(logChance) : 0;
        }
        double found = 0;
        for (std::int64_t count = 0; count <= left; ++count) {
            found += sumUpTo(limit, i + 1, left - count, sum + part(i, count));
        }
        return found;
    }

  private:
    std::vector<double> m_logChances;
    std::vector<double> m_logFactorials;
};

/// A number from 0 up to, not including, 1 from raw bits: the same on every platform, unlike the
/// library's distributions.
double uniformFrom(std::mt19937_64& generator) {
    return static_cast<double>(generator() >> 11) * 0x1p-53;
}

std::vector<std::int64_t> drawTable(const std::vector<double>& chances, std::int64_t total,
                                    std::mt19937_64& generator) {
    std::vector<std::int64_t> counts(chances.size(), 0);
    for (std::int64_t n = 0; n < total; ++n) {
        double point = uniformFrom(generator);
        std::size_t i = 0;
        while (i + 1 < chances.size() && point >= chances[i]) {
            point -= chances[i];
            ++i;
        }
        ++counts[i];
    }
    return counts;
}

MultinomialTest simulated(const TableChance& table, const std::vector<double>& chances,
                          std::int64_t total, double limit) {
    // About 4 x 10^8 draws at most, whatever the sample.
    const int tables =
        static_cast<int>(std::clamp<std::int64_t>(400'000'000 / total, 1'000, kSimulatedTables));
    std::mt19937_64 generator(1866); // the year of Mendel's paper
    int extreme = 0;
    for (int i = 0; i < tables; ++i) {
        extreme += table.whole(drawTable(chances, total, generator)) <= limit ? 1 : 0;
    }
    // The table seen counts as one of the sample (Davison & Hinkley 1997, eq. 4.11).
    const double p = (extreme + 1.0) / (tables + 1.0);
    return {p, std::sqrt(p * (1 - p) / tables), false};
}

/// C(total + classes - 1, classes - 1), the number of tables, up to `most` + 1.
bool hasMoreTablesThan(std::int64_t most, std::int64_t total, std::size_t classes) {
    double tables = 1;
    for (std::size_t i = 1; i < classes; ++i) {
        tables *= (static_cast<double>(total) + static_cast<double>(i)) / static_cast<double>(i);
        if (tables > static_cast<double>(most)) {
            return true;
        }
    }
    return false;
}

} // namespace

Result<GoodnessOfFit> goodnessOfFit(std::span<const std::int64_t> observed,
                                    std::span<const double> ratio) {
    if (auto fault = faultOf(observed, ratio)) {
        return *fault;
    }
    const double total = totalOf(observed);
    const std::vector<double> chances = chancesOf(ratio);
    GoodnessOfFit fit;
    double pearson = 0;
    double yates = 0;
    double likelihoodRatio = 0;
    for (std::size_t i = 0; i < observed.size(); ++i) {
        const double seen = static_cast<double>(observed[i]);
        const double expected = total * chances[i];
        if (expected <= 0) {
            return unusable("A part of the ratio is too small beside the others.",
                            "Leave that class out.");
        }
        const double gap = std::abs(seen - expected);
        // A gap under one half is corrected to none, not beyond.
        const double corrected = std::max(gap - .5, 0.0);
        pearson += gap * gap / expected;
        yates += corrected * corrected / expected;
        likelihoodRatio += seen > 0 ? 2 * seen * std::log(seen / expected) : 0;
        fit.expected.push_back(expected);
    }
    fit.smallestExpected = *std::min_element(fit.expected.begin(), fit.expected.end());
    const int degrees = static_cast<int>(observed.size()) - 1;
    const auto pearsonTest = referred(pearson, degrees);
    const auto yatesTest = referred(yates, degrees);
    const auto ratioTest = referred(std::max(likelihoodRatio, 0.0), degrees);
    if (!pearsonTest || !yatesTest || !ratioTest) {
        return unusable("The counts and the ratio are too far apart for a number.",
                        "Check the counts and the ratio.");
    }
    fit.pearson = *pearsonTest;
    fit.likelihoodRatio = *ratioTest;
    if (observed.size() == 2) {
        fit.yates = *yatesTest;
    }
    return fit;
}

Result<double> exactBinomialTest(std::int64_t successes, std::int64_t tries, double chance) {
    if (successes < 0 || tries < 1 || successes > tries || tries > kMostTries) {
        return unusable("So many successes cannot come out of so many tries.",
                        "Give 0 to all of 1 to 10 million tries.");
    }
    if (!(chance >= 0 && chance <= 1)) {
        return unusable("A chance must lie between 0 and 1.", "Give one that does.");
    }
    if (chance == 0 || chance == 1) {
        return successes == (chance == 0 ? 0 : tries) ? 1.0 : 0.0;
    }
    const TableChance table({chance, 1 - chance}, tries);
    const auto logChance = [&](std::int64_t k) {
        const std::int64_t counts[] = {k, tries - k};
        return table.whole(counts);
    };
    const double limit = logChance(successes) + kSameChance;
    double p = 0;
    for (std::int64_t k = 0; k <= tries; ++k) {
        const double outcome = logChance(k);
        p += outcome <= limit ? std::exp(outcome) : 0;
    }
    return std::min(p, 1.0);
}

Result<MultinomialTest> exactMultinomialTest(std::span<const std::int64_t> observed,
                                             std::span<const double> ratio,
                                             std::int64_t mostTables) {
    if (auto fault = faultOf(observed, ratio)) {
        return *fault;
    }
    const auto total = static_cast<std::int64_t>(totalOf(observed));
    if (total > kMostTries) {
        return unusable("There are too many counts for an exact test.",
                        "Read the chi-square test; it is good at this size.");
    }
    const std::vector<double> chances = chancesOf(ratio);
    const TableChance table(chances, total);
    const double limit = table.whole(observed) + kSameChance;
    if (hasMoreTablesThan(mostTables, total, observed.size())) {
        return simulated(table, chances, total, limit);
    }
    const double logAllOrders = table.whole(std::vector<std::int64_t>(observed.size(), 0));
    const double p = table.sumUpTo(limit, 0, total, logAllOrders);
    return MultinomialTest{std::min(p, 1.0), 0, true};
}

} // namespace pipwright
