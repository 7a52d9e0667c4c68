#pragma once

#include "core/units/result.h"

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

/// Do counts in classes fit a ratio? Tests only report; they never correct the counts: distorted
/// ratios are real where a gene beside the marker kills.
namespace pipwright {

/// A statistic referred to the chi-square distribution.
struct ChiSquareTest {
    double statistic = 0;
    int degreesOfFreedom = 0;
    double pValue = 1;
};

struct GoodnessOfFit {
    std::vector<double> expected{};     ///< counts, in the order of the classes
    double smallestExpected = 0;        ///< below 5 the exact test is the one to read
    ChiSquareTest pearson{};            ///< X^2 = sum (O-E)^2/E (Pearson 1900)
    std::optional<ChiSquareTest> yates; ///< with (|O-E|-1/2)^2 (Yates 1934); two classes only
    ChiSquareTest likelihoodRatio{};    ///< G = 2 sum O ln(O/E) (Woolf 1957)
};

/// Compares the counts with a ratio such as 9:3:3:1, given in any scale; one degree of freedom is
/// lost, as the ratio is given and not estimated.
/// Problem: fewer than two classes, lengths that differ, nothing counted, a negative count, a part
/// of the ratio that is not above 0 (a class that cannot occur is a finding of its own, not a
/// test).
Result<GoodnessOfFit> goodnessOfFit(std::span<const std::int64_t> observed,
                                    std::span<const double> ratio);

/// Two-sided exact p-value of `successes` among `tries` at `chance`: the summed probability of all
/// outcomes no likelier than the one seen (Fisher's ordering by likelihood; Clopper & Pearson 1934
/// for the distribution). Problem: impossible numbers, more than 10 million tries.
Result<double> exactBinomialTest(std::int64_t successes, std::int64_t tries, double chance);

struct MultinomialTest {
    double pValue = 1;
    double standardError = 0; ///< 0 when exact
    bool exact = true;        ///< else from simulated samples with a fixed seed
};

/// The same for more than two classes: summed probability of all tables no likelier than the one
/// seen. Every table is looked at while there are at most `mostTables`; beyond that the p-value
/// comes from 100,000 random tables, always the same ones, and its standard error says how far it
/// can be off. Problem: as goodnessOfFit(); more than 10 million counted.
Result<MultinomialTest> exactMultinomialTest(std::span<const std::int64_t> observed,
                                             std::span<const double> ratio,
                                             std::int64_t mostTables = 2'000'000);

} // namespace pipwright
