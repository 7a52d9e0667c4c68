#include "core/statistics/augmented_block.h"
#include "core/statistics/difference_tests.h"
#include "core/statistics/intraclass_correlation.h"
#include "core/statistics/paired_comparison.h"
#include "core/statistics/panel_mean.h"
#include "core/statistics/rank_tests.h"
#include "tests/checks/tolerances.h"

#include <array>
#include <cmath>
#include <gtest/gtest.h>
#include <vector>

// Where no other source is named, the values were computed with R 4.2.2.

namespace pipwright {
namespace {

// ---- triangle and paired tests ---------------------------------------------------------------

struct CriticalEntry {
    int answers;
    /// Triangle at .20 .10 .05 .01 .001, then paired one- and two-sided at .05, and at .01; 0 where
    /// none is enough.
    std::array<int, 9> least;
};
constexpr std::array kCritical{std::to_array<CriticalEntry>(
    {{6, {4, 5, 5, 6, 0, 6, 6, 0, 0}},           {7, {4, 5, 5, 6, 7, 7, 7, 7, 0}},
     {8, {5, 5, 6, 7, 8, 7, 8, 8, 8}},           {9, {5, 6, 6, 7, 8, 8, 8, 9, 9}},
     {10, {6, 6, 7, 8, 9, 9, 9, 10, 10}},        {11, {6, 7, 7, 8, 10, 9, 10, 10, 11}},
     {12, {6, 7, 8, 9, 10, 10, 10, 11, 11}},     {13, {7, 8, 8, 9, 11, 10, 11, 12, 12}},
     {14, {7, 8, 9, 10, 11, 11, 12, 12, 13}},    {15, {8, 8, 9, 10, 12, 12, 12, 13, 13}},
     {16, {8, 9, 9, 11, 12, 12, 13, 14, 14}},    {17, {8, 9, 10, 11, 13, 13, 13, 14, 15}},
     {18, {9, 10, 10, 12, 13, 13, 14, 15, 15}},  {19, {9, 10, 11, 12, 14, 14, 15, 15, 16}},
     {20, {9, 10, 11, 13, 14, 15, 15, 16, 17}},  {21, {10, 11, 12, 13, 15, 15, 16, 17, 17}},
     {22, {10, 11, 12, 14, 15, 16, 17, 17, 18}}, {23, {11, 12, 12, 14, 16, 16, 17, 18, 19}},
     {24, {11, 12, 13, 15, 16, 17, 18, 19, 19}}, {25, {11, 12, 13, 15, 17, 18, 18, 19, 20}},
     {26, {12, 13, 14, 15, 17, 18, 19, 20, 20}}, {27, {12, 13, 14, 16, 18, 19, 20, 20, 21}},
     {28, {12, 14, 15, 16, 18, 19, 20, 21, 22}}, {29, {13, 14, 15, 17, 19, 20, 21, 22, 22}},
     {30, {13, 14, 15, 17, 19, 20, 21, 22, 23}}, {31, {14, 15, 16, 18, 20, 21, 22, 23, 24}},
     {32, {14, 15, 16, 18, 20, 22, 23, 24, 24}}, {33, {14, 15, 17, 18, 21, 22, 23, 24, 25}},
     {34, {15, 16, 17, 19, 21, 23, 24, 25, 25}}, {35, {15, 16, 17, 19, 22, 23, 24, 25, 26}},
     {36, {15, 17, 18, 20, 22, 24, 25, 26, 27}}, {37, {16, 17, 18, 20, 22, 24, 25, 27, 27}},
     {38, {16, 17, 19, 21, 23, 25, 26, 27, 28}}, {39, {16, 18, 19, 21, 23, 26, 27, 28, 28}},
     {40, {17, 18, 19, 21, 24, 26, 27, 28, 29}}, {41, {17, 19, 20, 22, 24, 27, 28, 29, 30}},
     {42, {18, 19, 20, 22, 25, 27, 28, 29, 30}}, {43, {18, 19, 20, 23, 25, 28, 29, 30, 31}},
     {44, {18, 20, 21, 23, 26, 28, 29, 31, 31}}, {45, {19, 20, 21, 24, 26, 29, 30, 31, 32}},
     {46, {19, 20, 22, 24, 27, 30, 31, 32, 33}}, {47, {19, 21, 22, 24, 27, 30, 31, 32, 33}},
     {48, {20, 21, 22, 25, 27, 31, 32, 33, 34}}, {49, {20, 22, 23, 25, 28, 31, 32, 34, 34}},
     {50, {20, 22, 23, 26, 28, 32, 33, 34, 35}}, {51, {21, 22, 24, 26, 29, 32, 33, 35, 36}},
     {52, {21, 23, 24, 26, 29, 33, 34, 35, 36}}, {53, {22, 23, 24, 27, 30, 33, 35, 36, 37}},
     {54, {22, 23, 25, 27, 30, 34, 35, 36, 37}}, {55, {22, 24, 25, 28, 30, 35, 36, 37, 38}},
     {56, {23, 24, 26, 28, 31, 35, 36, 38, 39}}, {57, {23, 25, 26, 28, 31, 36, 37, 38, 39}},
     {58, {23, 25, 26, 29, 32, 36, 37, 39, 40}}, {59, {24, 25, 27, 29, 32, 37, 38, 39, 40}},
     {60, {24, 26, 27, 30, 33, 37, 39, 40, 41}}})};

TEST(DifferenceTestCheck, CriticalNumbers) {
    constexpr std::array levels{.2, .1, .05, .01, .001};
    constexpr std::array pairedLevels{.05, .05, .01, .01};
    for (const auto& entry : kCritical) {
        for (std::size_t i = 0; i < levels.size(); ++i) {
            EXPECT_EQ(
                leastForDifference(ForcedChoice::triangle, entry.answers, levels[i])->value_or(0),
                entry.least[i])
                << entry.answers << " at " << levels[i];
        }
        for (std::size_t i = 0; i < pairedLevels.size(); ++i) {
            EXPECT_EQ(leastForDifference(ForcedChoice::paired, entry.answers, pairedLevels[i],
                                         i % 2 == 0 ? Sides::one : Sides::two)
                          ->value_or(0),
                      entry.least[levels.size() + i])
                << entry.answers << " at " << pairedLevels[i];
        }
    }
}

TEST(DifferenceTestCheck, Similarity) {
    EXPECT_EQ(**mostForSimilarity(ForcedChoice::triangle, 30, .3, .05), 11);
    EXPECT_EQ(**mostForSimilarity(ForcedChoice::triangle, 36, .3, .05), 13);
    EXPECT_EQ(**mostForSimilarity(ForcedChoice::triangle, 60, .3, .05), 25);
}

// ---- ranks -------------------------------------------------------------------------------------

TEST(FriedmanCheck, RoundingFirstBase) {
    // 22 players, three ways of rounding first base: Hollander & Wolfe (1973), p. 140, as in R's
    // help page of friedman.test. Rank sums, statistic, p and W: R 4.2.2.
    const DenseMatrix times(
        {{5.4, 5.5, 5.55},   {5.85, 5.7, 5.75}, {5.2, 5.6, 5.5},   {5.55, 5.5, 5.4},
         {5.9, 5.85, 5.7},   {5.45, 5.55, 5.6}, {5.4, 5.4, 5.35},  {5.45, 5.5, 5.35},
         {5.25, 5.15, 5},    {5.85, 5.8, 5.7},  {5.25, 5.2, 5.1},  {5.65, 5.55, 5.45},
         {5.6, 5.35, 5.45},  {5.05, 5, 4.95},   {5.5, 5.5, 5.4},   {5.45, 5.55, 5.5},
         {5.55, 5.55, 5.35}, {5.45, 5.5, 5.55}, {5.5, 5.45, 5.25}, {5.65, 5.6, 5.4},
         {5.7, 5.65, 5.55},  {6.3, 6.3, 6.25}});
    const auto test = friedmanTest(times);
    ASSERT_TRUE(test.ok());
    EXPECT_EQ(test->rankSums, (std::vector<double>{53, 47, 32}));
    EXPECT_NEAR(test->uncorrected, 10.636364, kPrinted);
    EXPECT_EQ(test->tieSum, 24);
    EXPECT_NEAR(test->statistic, 11.142857, kPrinted);
    EXPECT_NEAR(test->pValue, .003805, kPrinted);
    EXPECT_NEAR(test->concordance, .253247, kPrinted);
    EXPECT_FALSE(test->exactPValue.has_value());
}

TEST(FriedmanCheck, SevenTastersFiveFruits) {
    const DenseMatrix ranks({{2, 4, 5, 3, 1},
                             {4, 5, 3, 1, 2},
                             {1, 4, 5, 3, 2},
                             {1, 2, 5, 3, 4},
                             {1, 5, 2, 3, 4},
                             {2, 3, 4, 5, 1},
                             {4, 5, 3, 1, 2}});
    const auto test = friedmanTest(ranks);
    EXPECT_EQ(test->rankSums, (std::vector<double>{15, 28, 27, 19, 16}));
    EXPECT_NEAR(test->statistic, 8.571429, kPrinted);
    EXPECT_NEAR(test->pValue, .072751, kPrinted);
    EXPECT_NEAR(test->concordance, .306122, kPrinted);
    EXPECT_NEAR(*leastSignificantRankDifference(7, 5), 11.595303, 5e-4); // with z = 1.96
}

TEST(FriedmanCheck, TiedScores) {
    const auto test =
        friedmanTest(DenseMatrix({{7, 7, 5, 3}, {8, 6, 6, 4}, {6, 6, 6, 2}, {9, 7, 5, 5}}));
    EXPECT_EQ(test->rankSums, (std::vector<double>{14.5, 12, 9, 4.5}));
    EXPECT_NEAR(test->uncorrected, 8.325, 1e-9);
    EXPECT_EQ(test->tieSum, 42);
    EXPECT_NEAR(test->statistic, 10.090909, kPrinted);
    EXPECT_NEAR(test->pValue, .017809, kPrinted);
    EXPECT_NEAR(test->concordance, .840909, kPrinted);
}

TEST(FriedmanCheck, ExactForSmallPanels) {
    struct Known {
        DenseMatrix ranks;
        double statistic;
        double p;
    };
    const std::vector<Known> known{
        {DenseMatrix({{1, 2, 3}, {1, 2, 3}, {1, 2, 3}}), 6, .027778},
        {DenseMatrix({{1, 2, 3}, {1, 2, 3}, {1, 2, 3}, {1, 2, 3}}), 8, .004630},
        {DenseMatrix({{1, 2, 3}, {1, 2, 3}, {1, 2, 3}, {2, 1, 3}}), 6.5, .041667},
        {DenseMatrix({{1, 2, 3}, {1, 2, 3}, {1, 2, 3}, {2, 1, 3}, {1, 3, 2}}), 6.4, .039352},
        {DenseMatrix({{1, 2, 3, 4}, {2, 1, 4, 3}, {1, 2, 4, 3}}), 7.4, .032986},
        {DenseMatrix({{1, 2, 3, 4}, {2, 3, 1, 4}, {1, 2, 4, 3}, {1, 2, 3, 4}}), 7.8, .036386},
    };
    for (const Known& entry : known) {
        const auto test = friedmanTest(entry.ranks);
        EXPECT_NEAR(test->statistic, entry.statistic, kPrinted);
        EXPECT_NEAR(*test->exactPValue, entry.p, kPrinted);
    }
}

TEST(RankDifferenceCheck, HonestDifferences) {
    const std::array eight{9.37, 13.27, 17.25};
    const std::array ten{10.48, 14.83, 19.29};
    for (int fruits = 3; fruits <= 5; ++fruits) {
        const auto i = static_cast<std::size_t>(fruits - 3);
        EXPECT_NEAR(*honestRankDifference(8, fruits), eight[i], .005);
        EXPECT_NEAR(*honestRankDifference(10, fruits), ten[i], .005);
    }
}

TEST(RankDifferenceCheck, LimitsOfOneRankSum) {
    EXPECT_EQ(**rankSumLimits(8, 4), (std::pair{13, 27}));
    EXPECT_EQ(**rankSumLimits(10, 5), (std::pair{20, 40}));
    EXPECT_EQ(**rankSumLimits(8, 4, .05 / 4), (std::pair{11, 29}));
    EXPECT_EQ(**rankSumLimits(10, 5, .05 / 5), (std::pair{18, 42}));
}

// ---- paired comparisons
// --------------------------------------------------------------------------

// Agresti (2002), Categorical Data Analysis, p. 437: the American League of 1987, games won by the
// home and the away team. Estimates: R package BradleyTerry2 1.1-2, whose paper prints them too.
constexpr std::size_t kBaltimore = 0;
constexpr std::size_t kBoston = 1;
constexpr std::size_t kCleveland = 2;
constexpr std::size_t kDetroit = 3;
constexpr std::size_t kMilwaukee = 4;
constexpr std::size_t kNewYork = 5;
constexpr std::size_t kToronto = 6;
const std::vector<PairRecord> kLeague{
    {kMilwaukee, kDetroit, 4, 3},   {kMilwaukee, kToronto, 4, 2},   {kMilwaukee, kNewYork, 4, 3},
    {kMilwaukee, kBoston, 6, 1},    {kMilwaukee, kCleveland, 4, 2}, {kMilwaukee, kBaltimore, 6, 0},
    {kDetroit, kMilwaukee, 3, 3},   {kDetroit, kToronto, 4, 2},     {kDetroit, kNewYork, 4, 3},
    {kDetroit, kBoston, 6, 0},      {kDetroit, kCleveland, 6, 1},   {kDetroit, kBaltimore, 4, 3},
    {kToronto, kMilwaukee, 2, 5},   {kToronto, kDetroit, 4, 3},     {kToronto, kNewYork, 2, 4},
    {kToronto, kBoston, 4, 3},      {kToronto, kCleveland, 4, 2},   {kToronto, kBaltimore, 6, 0},
    {kNewYork, kMilwaukee, 3, 3},   {kNewYork, kDetroit, 5, 1},     {kNewYork, kToronto, 2, 5},
    {kNewYork, kBoston, 4, 3},      {kNewYork, kCleveland, 4, 2},   {kNewYork, kBaltimore, 6, 1},
    {kBoston, kMilwaukee, 5, 1},    {kBoston, kDetroit, 2, 5},      {kBoston, kToronto, 3, 3},
    {kBoston, kNewYork, 4, 2},      {kBoston, kCleveland, 5, 2},    {kBoston, kBaltimore, 6, 0},
    {kCleveland, kMilwaukee, 2, 5}, {kCleveland, kDetroit, 3, 3},   {kCleveland, kToronto, 3, 4},
    {kCleveland, kNewYork, 4, 3},   {kCleveland, kBoston, 4, 2},    {kCleveland, kBaltimore, 2, 4},
    {kBaltimore, kMilwaukee, 2, 5}, {kBaltimore, kDetroit, 1, 5},   {kBaltimore, kToronto, 1, 6},
    {kBaltimore, kNewYork, 2, 4},   {kBaltimore, kBoston, 1, 6},    {kBaltimore, kCleveland, 3, 4}};

TEST(BradleyTerryCheck, AmericanLeague) {
    const auto fit = pairedComparison(kLeague, 7);
    ASSERT_TRUE(fit.ok());
    const std::vector<double> abilities{0,        1.107698, .683853, 1.436408,
                                        1.581356, 1.247618, 1.294485};
    const std::vector<double> errors{0, .333878, .331876, .339568, .343256, .335861, .336669};
    for (std::size_t team = 0; team < abilities.size(); ++team) {
        EXPECT_NEAR(fit->abilities[team], abilities[team], 2 * kPrinted);
        EXPECT_NEAR(fit->differenceError(team, kBaltimore), errors[team], 2 * kPrinted);
    }
    EXPECT_NEAR(fit->deviance, 44.053461, kPrinted);
    EXPECT_EQ(fit->degreesOfFreedom, 36);
    EXPECT_TRUE(fit->commonScale);
    EXPECT_FALSE(fit->tieParameter.has_value());
}

TEST(BradleyTerryCheck, AmericanLeagueAtHome) {
    const auto fit = pairedComparison(kLeague, 7, PairedModel{true, std::nullopt});
    ASSERT_TRUE(fit.ok());
    EXPECT_NEAR(*fit->orderEffect, .302261, kPrinted);
    EXPECT_NEAR(*fit->orderEffectError, .130944, kPrinted);
    const std::vector<double> abilities{0,        1.143803, .704694, 1.475357,
                                        1.619555, 1.281340, 1.327110};
    for (std::size_t team = 0; team < abilities.size(); ++team) {
        EXPECT_NEAR(fit->abilities[team], abilities[team], kPrinted);
    }
    EXPECT_NEAR(fit->deviance, 38.642852, kPrinted);
    EXPECT_EQ(fit->degreesOfFreedom, 35);
}

TEST(BradleyTerryCheck, ThreeFruits) {
    const std::vector<PairRecord> records{{0, 1, 6, 2}, {0, 2, 8, 1}, {1, 2, 5, 3}};
    const auto fit = pairedComparison(records, 3);
    const std::array shares{.692646, .200056, .107298};
    for (std::size_t i = 0; i < shares.size(); ++i) {
        EXPECT_NEAR(fit->shares()[i], shares[i], kPrinted);
    }
    EXPECT_NEAR(fit->difference(0, 2), 1.864910, kPrinted);
    EXPECT_NEAR(fit->difference(1, 2), .622990, kPrinted);
}

// ---- scores
// ----------------------------------------------------------------------------------------

TEST(PanelMeanCheck, SmallPanel) {
    const auto interval = meanInterval(std::vector<double>{7, 6, 8, 7});
    EXPECT_EQ(interval->mean, 7);
    EXPECT_NEAR(interval->deviation, .816497, kPrinted);
    EXPECT_NEAR(interval->low, 5.700772, kPrinted);
    EXPECT_NEAR(interval->high, 8.299228, kPrinted);
}

TEST(PanelMeanCheck, Shrinkage) {
    const std::array values{5.875, 6.1, 6.25, 6.357143};
    const std::array errors{.670820, .6, .547723, .507093};
    for (int n = 1; n <= 4; ++n) {
        const auto shrunk = shrunkMean(7, n, 5.5, .6, 1.8);
        EXPECT_NEAR(shrunk->value, values[static_cast<std::size_t>(n - 1)], kPrinted);
        EXPECT_NEAR(shrunk->standardError, errors[static_cast<std::size_t>(n - 1)], kPrinted);
    }
}

TEST(TasterBiasCheck, ThreeTastersFourFruits) {
    const std::vector<EntryRecord> scores{{0, 0, 7}, {1, 0, 6}, {2, 0, 5}, {1, 1, 8}, {2, 1, 6},
                                          {3, 1, 7}, {0, 2, 5}, {2, 2, 4}, {3, 2, 5}};
    const auto fit = BlockAdjustment::of(scores, 4, 3);
    const std::array tasters{0., 1.2, -1.2};
    const std::array fruits{6.6, 6.4, 5.0, 6.0};
    for (std::size_t i = 0; i < tasters.size(); ++i) {
        EXPECT_NEAR(fit->blockEffects()[i], tasters[i], 1e-9);
    }
    for (std::size_t i = 0; i < fruits.size(); ++i) {
        EXPECT_NEAR(fit->adjustedMeans()[i], fruits[i], 1e-9);
    }
}

TEST(IntraclassCheck, ShroutAndFleiss) {
    // Shrout & Fleiss (1979), table 2: six targets, four judges; they print .17 .29 .71 .44 .62
    // .91.
    const auto found = intraclassCorrelations(DenseMatrix(
        {{9, 2, 5, 8}, {6, 1, 3, 2}, {8, 4, 6, 8}, {7, 1, 2, 6}, {10, 5, 6, 9}, {6, 2, 4, 7}}));
    ASSERT_TRUE(found.ok());
    EXPECT_NEAR(found->oneWaySingle.value, .165742, kPrinted);
    EXPECT_NEAR(found->twoWaySingle.value, .289764, kPrinted);
    EXPECT_NEAR(found->consistencySingle.value, .714841, kPrinted);
    EXPECT_NEAR(found->oneWayMean.value, .442797, kPrinted);
    EXPECT_NEAR(found->twoWayMean.value, .620051, kPrinted);
    EXPECT_NEAR(found->consistencyMean.value, .909316, kPrinted);
    // Their 95 % intervals: R 4.2.2, package psych 2.2.9, ICC(scores, lmer = FALSE).
    const auto expectBounds = [](const CorrelationInterval& interval, double low, double high) {
        EXPECT_NEAR(interval.low, low, 1e-7);
        EXPECT_NEAR(interval.high, high, 1e-7);
    };
    expectBounds(found->oneWaySingle, -.132932325, .72256006);
    expectBounds(found->twoWaySingle, .018786513, .76108437);
    expectBounds(found->consistencySingle, .342464765, .94585826);
    expectBounds(found->oneWayMean, -.884442155, .91241542);
    expectBounds(found->twoWayMean, .071136815, .92723204);
    expectBounds(found->consistencyMean, .675674714, .98589168);
}

} // namespace
} // namespace pipwright
