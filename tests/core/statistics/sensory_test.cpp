#include "core/statistics/difference_tests.h"
#include "core/statistics/intraclass_correlation.h"
#include "core/statistics/paired_comparison.h"
#include "core/statistics/panel_mean.h"
#include "core/statistics/rank_tests.h"
#include "core/units/no_number.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <limits>
#include <vector>

namespace pipwright {
namespace {

TEST(Friedman, TasterScalesDoNotMatter) {
    const DenseMatrix scores({{1, 5, 2}, {3, 4, 1}, {2, 9, 7}, {6, 8, 5}});
    const DenseMatrix stretched({{10, 50, 20}, {-3, 0, -9}, {.2, .9, .7}, {60, 80, 50}});
    const auto plain = friedmanTest(scores);
    EXPECT_EQ(plain->rankSums, friedmanTest(stretched)->rankSums);
    EXPECT_EQ(plain->statistic, friedmanTest(stretched)->statistic);
    EXPECT_EQ(*plain->exactPValue, *friedmanTest(stretched)->exactPValue);
}

TEST(Friedman, FullAgreementAndNone) {
    EXPECT_NEAR(friedmanTest(DenseMatrix({{1, 2, 3}, {1, 2, 3}}))->concordance, 1, 1e-12);
    const auto opposed = friedmanTest(DenseMatrix({{1, 2}, {2, 1}}));
    EXPECT_EQ(opposed->statistic, 0);
    EXPECT_EQ(opposed->pValue, 1);
    EXPECT_EQ(*opposed->exactPValue, 1);
}

TEST(Friedman, ExactWithTiesByHand) {
    // Two tasters, each with one fruit above two tied ones: 9 outcomes, 3 of them agree.
    const auto test = friedmanTest(DenseMatrix({{1, 1, 2}, {1, 1, 2}}));
    EXPECT_NEAR(*test->exactPValue, 1. / 3, 1e-12);
}

TEST(Friedman, RefusesWhatCannotBeRanked) {
    EXPECT_FALSE(friedmanTest(DenseMatrix()).ok());
    EXPECT_FALSE(friedmanTest(DenseMatrix({{1, 2, 3}})).ok());
    EXPECT_FALSE(friedmanTest(DenseMatrix(2, 1)).ok());
    EXPECT_FALSE(friedmanTest(DenseMatrix({{5, 5}, {7, 7}})).ok());
    EXPECT_FALSE(friedmanTest(DenseMatrix({{5, kNaN}, {7, 8}})).ok());
    EXPECT_FALSE(friedmanTest(DenseMatrix({{5, kInfinity}, {7, 8}})).ok());
    EXPECT_FALSE(leastSignificantRankDifference(0, 3).ok());
    EXPECT_FALSE(leastSignificantRankDifference(4, 1).ok());
    EXPECT_FALSE(honestRankDifference(4, 3, 1.5).ok());
    EXPECT_FALSE(rankSumLimits(4, 3, kNaN).ok());
    EXPECT_FALSE(rankSumLimits(100'000, 1000).ok());
    EXPECT_FALSE(rankSumLimits(1, 3)->has_value()); // one taster shows nothing
}

TEST(PairedComparison, TiesFollowDavidson) {
    // Two fruits: the fitted shares are the observed ones.
    const std::vector<PairRecord> records{{0, 1, 6, 3, 4}};
    const auto fit = pairedComparison(records, 2);
    ASSERT_TRUE(fit.ok());
    EXPECT_NEAR(fit->difference(0, 1), std::log(2.0), 1e-9);
    // Davidson's nu = ties/sqrt(wins x losses).
    EXPECT_NEAR(std::exp(*fit->tieParameter), 4 / std::sqrt(18.0), 1e-9);
    EXPECT_NEAR(fit->deviance, 0, 1e-9);
    EXPECT_EQ(fit->degreesOfFreedom, 0);
}

TEST(PairedComparison, OrderOfRecordsDoesNotMatter) {
    std::vector<PairRecord> records{
        {0, 1, 6, 3, 4}, {1, 2, 5, 2, 1}, {2, 3, 1, 4, 0}, {3, 0, 2, 2, 2}};
    const auto fit = pairedComparison(records, 4);
    std::reverse(records.begin(), records.end());
    for (PairRecord& record : records) {
        std::swap(record.first, record.second);
        std::swap(record.firstPreferred, record.secondPreferred);
    }
    const auto turned = pairedComparison(records, 4);
    for (std::size_t i = 0; i < 4; ++i) {
        EXPECT_NEAR(fit->abilities[i], turned->abilities[i], 1e-9);
        EXPECT_NEAR(fit->differenceError(i, 0), turned->differenceError(i, 0), 1e-9);
    }
}

TEST(PairedComparison, PriorPlacesAFruitThatWonEverything) {
    const std::vector<PairRecord> records{{0, 1, 5, 0}, {1, 2, 3, 2}, {0, 2, 4, 0}};
    const auto refused = pairedComparison(records, 3);
    ASSERT_FALSE(refused.ok());
    EXPECT_NE(refused.problem().remedy.find("prior"), std::string::npos);
    const auto wide = pairedComparison(records, 3, PairedModel{false, 3});
    const auto narrow = pairedComparison(records, 3, PairedModel{false, .5});
    ASSERT_TRUE(wide.ok() && narrow.ok());
    EXPECT_GT(wide->difference(0, 1), narrow->difference(0, 1));
    EXPECT_GT(narrow->difference(0, 1), 0);
    EXPECT_TRUE(wide->commonScale);
}

TEST(PairedComparison, SaysWhenThereIsNoCommonScale) {
    const std::vector<PairRecord> apart{{0, 1, 3, 2}, {2, 3, 2, 3}};
    ASSERT_FALSE(pairedComparison(apart, 4).ok());
    EXPECT_NE(pairedComparison(apart, 4).problem().what.find("never compared"), std::string::npos);
    const auto held = pairedComparison(apart, 4, PairedModel{false, 1});
    ASSERT_TRUE(held.ok());
    EXPECT_FALSE(held->commonScale);
}

TEST(PairedComparison, RefusesBadRecords) {
    EXPECT_FALSE(pairedComparison({}, 3).ok());
    EXPECT_FALSE(pairedComparison({}, 0).ok());
    for (const PairRecord& bad :
         {PairRecord{0, 0, 1, 1}, PairRecord{0, 5, 1, 1}, PairRecord{0, 1, -1, 2},
          PairRecord{0, 1, kNaN, 2}, PairRecord{0, 1, 0, 0}, PairRecord{0, 1, kInfinity, 0}}) {
        EXPECT_FALSE(pairedComparison(std::vector{bad}, 2).ok());
    }
    const std::vector<PairRecord> sound{{0, 1, 3, 2}};
    EXPECT_FALSE(pairedComparison(sound, 2, PairedModel{false, -1}).ok());
    EXPECT_FALSE(pairedComparison(sound, 2, PairedModel{false, kNaN}).ok());
    // One order alone cannot tell the order effect from the difference.
    EXPECT_FALSE(pairedComparison(sound, 2, PairedModel{true, std::nullopt}).ok());
    EXPECT_FALSE(pairedComparison(std::vector<PairRecord>{{0, 1, 0, 0, 7}}, 2).ok());
}

TEST(DifferenceTest, LeastIsWhereThePValuePassesTheLevel) {
    for (int answers = 6; answers <= 40; ++answers) {
        const int least = leastForDifference(ForcedChoice::triangle, answers, .05)->value();
        EXPECT_LE(differenceTest(ForcedChoice::triangle, least, answers)->pValue, .05);
        EXPECT_GT(differenceTest(ForcedChoice::triangle, least - 1, answers)->pValue, .05);
    }
}

TEST(DifferenceTest, ShareOfTastersWhoCanTell) {
    const auto all = differenceTest(ForcedChoice::triangle, 12, 12);
    EXPECT_EQ(all->distinguishers, 1);
    EXPECT_EQ(all->high, 1);
    EXPECT_NEAR(all->pValue, std::pow(3.0, -12), 1e-15);
    const auto guessing = differenceTest(ForcedChoice::triangle, 4, 12);
    EXPECT_NEAR(guessing->distinguishers, 0, 1e-12);
    EXPECT_EQ(guessing->low, 0);
    const auto none = differenceTest(ForcedChoice::paired, 0, 8, Sides::two);
    EXPECT_NEAR(none->pValue, 2. / 256, 1e-15);
    EXPECT_EQ(none->distinguishers, 0);
}

TEST(DifferenceTest, RefusesImpossibleCounts) {
    EXPECT_FALSE(leastForDifference(ForcedChoice::triangle, 0, .05).ok());
    EXPECT_FALSE(leastForDifference(ForcedChoice::triangle, 10, 0).ok());
    EXPECT_FALSE(leastForDifference(ForcedChoice::triangle, 10, kNaN).ok());
    EXPECT_FALSE(leastForDifference(ForcedChoice::triangle, 10, .05, Sides::two).ok());
    EXPECT_FALSE(leastForDifference(ForcedChoice::triangle, 3, .001)->has_value());
    EXPECT_FALSE(mostForSimilarity(ForcedChoice::triangle, 10, 1, .05).ok());
    EXPECT_FALSE(mostForSimilarity(ForcedChoice::triangle, 10, kNaN, .05).ok());
    EXPECT_FALSE(mostForSimilarity(ForcedChoice::triangle, 3, .3, .05)->has_value());
    EXPECT_FALSE(differenceTest(ForcedChoice::paired, 5, 4).ok());
    EXPECT_FALSE(differenceTest(ForcedChoice::paired, -1, 4).ok());
    EXPECT_FALSE(differenceTest(ForcedChoice::triangle, 2, 4, Sides::two).ok());
}

TEST(IntraclassCorrelation, IntervalHoldsTheValue) {
    const auto found = intraclassCorrelations(
        DenseMatrix({{9, 2, 5}, {6, 1, 3}, {8, 4, 6}, {7, 1, 2}, {10, 5, 6}}), .9);
    ASSERT_TRUE(found.ok());
    for (const CorrelationInterval& form :
         {found->oneWaySingle, found->twoWaySingle, found->consistencySingle, found->oneWayMean,
          found->twoWayMean, found->consistencyMean}) {
        EXPECT_LT(form.low, form.value);
        EXPECT_LT(form.value, form.high);
        EXPECT_LE(form.high, 1);
    }
    const auto wider = intraclassCorrelations(
        DenseMatrix({{9, 2, 5}, {6, 1, 3}, {8, 4, 6}, {7, 1, 2}, {10, 5, 6}}), .99);
    EXPECT_LT(wider->twoWaySingle.low, found->twoWaySingle.low);
    EXPECT_GT(wider->twoWaySingle.high, found->twoWaySingle.high);
}

TEST(IntraclassCorrelation, ConsistencyForgivesAHarshTaster) {
    const auto plain = intraclassCorrelations(DenseMatrix({{5, 6}, {7, 7}, {2, 3}, {4, 3}}));
    const auto harsh = intraclassCorrelations(DenseMatrix({{5, 2}, {7, 3}, {2, -1}, {4, -1}}));
    EXPECT_NEAR(plain->consistencySingle.value, harsh->consistencySingle.value, 1e-12);
    EXPECT_GT(plain->twoWaySingle.value, harsh->twoWaySingle.value);
}

TEST(IntraclassCorrelation, RefusesWhatShowsNoAgreement) {
    EXPECT_FALSE(intraclassCorrelations(DenseMatrix()).ok());
    EXPECT_FALSE(intraclassCorrelations(DenseMatrix({{1, 2}})).ok());
    EXPECT_FALSE(intraclassCorrelations(DenseMatrix(2, 1)).ok());
    EXPECT_FALSE(intraclassCorrelations(DenseMatrix({{4, 4}, {4, 4}})).ok());
    EXPECT_FALSE(intraclassCorrelations(DenseMatrix({{1, 2}, {3, 4}, {5, 6}})).ok());
    EXPECT_FALSE(intraclassCorrelations(DenseMatrix({{1, 2}, {3, kNaN}})).ok());
    EXPECT_FALSE(intraclassCorrelations(DenseMatrix({{1, 2}, {3, 7}}), 1).ok());
}

TEST(PanelMean, RefusesTooLittle) {
    EXPECT_FALSE(meanInterval({}).ok());
    EXPECT_FALSE(meanInterval(std::vector<double>{5}).ok());
    EXPECT_FALSE(meanInterval(std::vector<double>{5, kNaN}).ok());
    EXPECT_FALSE(meanInterval(std::vector<double>{5, 6}, 0).ok());
    const auto constant = meanInterval(std::vector<double>{5, 5, 5});
    EXPECT_EQ(constant->low, 5);
    EXPECT_EQ(constant->high, 5);
}

TEST(PanelMean, ShrinksFullyWithoutRecords) {
    const auto unseen = shrunkMean(0, 0, 5.5, .6, 1.8);
    EXPECT_EQ(unseen->value, 5.5);
    EXPECT_NEAR(unseen->standardError, std::sqrt(.6), 1e-12);
    EXPECT_FALSE(shrunkMean(7, -1, 5.5, .6, 1.8).ok());
    EXPECT_FALSE(shrunkMean(7, 1, 5.5, -.6, 1.8).ok());
    EXPECT_FALSE(shrunkMean(7, 1, 5.5, 0, 0).ok());
    EXPECT_FALSE(shrunkMean(kNaN, 1, 5.5, 1, 1).ok());
}

} // namespace
} // namespace pipwright
