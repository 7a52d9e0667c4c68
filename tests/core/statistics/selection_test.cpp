#include "core/statistics/order_statistics.h"
#include "core/statistics/selection.h"
#include "core/statistics/selection_index.h"
#include "core/units/no_number.h"

#include <cmath>
#include <gtest/gtest.h>
#include <limits>
#include <vector>

namespace pipwright {
namespace {

TEST(OrderStatistics, AreSymmetricAndSumToNothing) {
    for (const std::int64_t size : {1, 2, 7, 40}) {
        double sum = 0;
        for (std::int64_t rank = 1; rank <= size; ++rank) {
            const double value = *expectedOrderStatistic(rank, size);
            EXPECT_NEAR(value, -*expectedOrderStatistic(size + 1 - rank, size), 1e-11);
            sum += value;
        }
        EXPECT_NEAR(sum, 0, 1e-10);
    }
}

TEST(OrderStatistics, MeanOfBestIsTheMeanOfTheBest) {
    double sum = 0;
    for (std::int64_t rank = 1; rank <= 29; ++rank) {
        sum += *expectedOrderStatistic(rank, 30);
        EXPECT_NEAR(*expectedMeanOfBest(rank, 30), sum / static_cast<double>(rank), 1e-11);
    }
    EXPECT_EQ(*expectedMeanOfBest(30, 30), 0);
}

TEST(OrderStatistics, HoldInLargeSamples) {
    // The finite intensity approaches the infinite one.
    EXPECT_NEAR(*finiteIntensity(100'000'000'000, 1'000'000'000'000),
                truncationSelection(.1)->intensity, 1e-9);
    EXPECT_GT(*expectedMaximum(1'000'000'000'000), 7);
    EXPECT_LT(*expectedMaximum(1'000'000'000'000), 7.2);
}

TEST(OrderStatistics, RefuseWhatIsNoSample) {
    EXPECT_FALSE(expectedOrderStatistic(0, 5).ok());
    EXPECT_FALSE(expectedOrderStatistic(6, 5).ok());
    EXPECT_FALSE(expectedMaximum(0).ok());
    EXPECT_FALSE(expectedMaximum(-3).ok());
    EXPECT_FALSE(expectedMeanOfBest(1, 2'000'000'000'000).ok());
    EXPECT_FALSE(blomScore(3, 2).ok());
}

TEST(RangeOfNormals, QuantileUndoesProbability) {
    for (const int size : {2, 3, 10, 200}) {
        for (const double p : {.01, .5, .95, .999}) {
            EXPECT_NEAR(*rangeProbability(*rangeQuantile(p, size), size), p, 1e-10);
        }
    }
    // Two values differ by sqrt(2) times a normal quantity.
    EXPECT_NEAR(*rangeQuantile(.95, 2), 1.959964 * std::sqrt(2.0), 1e-6);
    EXPECT_EQ(*rangeProbability(-1, 3), 0);
    EXPECT_EQ(*rangeProbability(0, 3), 0);
    EXPECT_NEAR(*rangeProbability(kInfinity, 3), 1, 1e-12);
    EXPECT_FALSE(rangeProbability(kNaN, 3).ok());
    EXPECT_FALSE(rangeProbability(1, 1).ok());
    EXPECT_FALSE(rangeQuantile(0, 3).ok());
    EXPECT_FALSE(rangeQuantile(.5, 5000).ok());
}

TEST(Selection, KeepingAllMovesNothing) {
    EXPECT_EQ(truncationSelection(1)->intensity, 0);
    EXPECT_EQ(truncationSelection(1)->varianceReduction, 0);
    EXPECT_EQ(*finiteIntensity(7, 7), 0);
    EXPECT_EQ(*burrowsIntensity(7, 7), 0);
}

TEST(Selection, RefusesImpossibleNumbers) {
    for (const double share : {0.0, -.1, 1.1, kNaN}) {
        EXPECT_FALSE(truncationSelection(share).ok());
    }
    EXPECT_FALSE(finiteIntensity(3, 2).ok());
    EXPECT_FALSE(finiteIntensity(0, 2).ok());
    EXPECT_FALSE(burrowsIntensity(3, 2).ok());
    EXPECT_FALSE(responseOfPhenotypes(1, 1.2, 1).ok());
    EXPECT_FALSE(responseOfPhenotypes(kInfinity, .2, 1).ok());
    EXPECT_FALSE(responseOfPhenotypes(1, .2, -1).ok());
    EXPECT_FALSE(responseOfAccuracy(1, kNaN, 1).ok());
    EXPECT_FALSE(reliabilityOfOwnRecords(.5, .4, 2).ok());
    EXPECT_FALSE(reliabilityOfOwnRecords(.5, 1.4, 2).ok());
    EXPECT_FALSE(reliabilityOfOwnRecords(.5, .6, -2).ok());
    EXPECT_FALSE(reliabilityOfHalfSibs(-.1, 3).ok());
    EXPECT_FALSE(reliabilityOfHalfSibs(.1, -3).ok());
    EXPECT_FALSE(cloneMeanHeritability({-1, 1, 1}, 1, 1).ok());
    EXPECT_FALSE(cloneMeanHeritability({0, 0, 0}, 1, 1).ok());
    EXPECT_FALSE(cloneMeanHeritability({1, 1, 1}, 0, 1).ok());
    EXPECT_FALSE(varianceWithinFamily(-1, 0, 0).ok());
    EXPECT_FALSE(varianceWithinFamily(1, 1.5, 0).ok());
}

TEST(Selection, NoRecordsNoReliability) {
    EXPECT_EQ(*reliabilityOfOwnRecords(.3, .5, 0), 0);
    EXPECT_EQ(*reliabilityOfHalfSibs(.3, 0), 0);
    EXPECT_EQ(*reliabilityOfOwnRecords(0, 0, 3), 0);
    EXPECT_EQ(*varianceWithinFamily(2, 0, 0), 1);
    EXPECT_EQ(*varianceWithinFamily(2, 1, 1), 0);
}

TEST(Crosses, WithoutSpreadOrSeedlings) {
    EXPECT_EQ(*chanceOneExceeds({6, 0}, 5, 10), 1);
    EXPECT_EQ(*chanceOneExceeds({6, 0}, 7, 10), 0);
    EXPECT_EQ(*chanceOneExceeds({6, 1}, 5, 0), 0);
    EXPECT_NEAR(*chanceOneExceeds({0, 1}, 9, 1'000'000) / 1.128588e-13, 1, 1e-5);
    EXPECT_EQ(*chanceOneExceeds({0, 1}, -kInfinity, 1), 1);
    EXPECT_FALSE(chanceOneExceeds({0, 1}, kNaN, 1).ok());
    EXPECT_FALSE(chanceOneExceeds({0, -1}, 1, 1).ok());
    EXPECT_FALSE(chanceOneExceeds({0, 1}, 1, -1).ok());
    EXPECT_FALSE(usefulness({kNaN, 1}, 1, .5).ok());
    EXPECT_FALSE(expectedBest({1, 1}, 0, .5).ok());
    EXPECT_FALSE(expectedBest({1, 1}, 5, 1.5).ok());
}

const DenseMatrix kUnrelated({{1, 0}, {0, 1}});

TEST(SelectionIndex, MissingTraitRespondsThroughCorrelation) {
    const TraitCovariances traits{DenseMatrix({{1, .2}, {.2, 1}}),
                                  DenseMatrix({{.4, .3}, {.3, .6}})};
    const auto index =
        smithHazelIndex(traits, std::vector<double>{0, 1}, std::vector<std::size_t>{0});
    ASSERT_TRUE(index.ok());
    EXPECT_NEAR(index->coefficients[0], .3, 1e-12); // cov(trait 1, goal)/var(trait 1)
    EXPECT_EQ(index->coefficients[1], 0);
    EXPECT_NEAR(index->responses[1], .3, 1e-12);
}

TEST(SelectionIndex, TellsOfATraitTurnedAgainstTheWish) {
    const TraitCovariances traits{DenseMatrix({{1, .9}, {.9, 1}}),
                                  DenseMatrix({{.5, .1}, {.1, .05}})};
    const auto index = smithHazelIndex(traits, std::vector<double>{1, 1});
    ASSERT_TRUE(index.ok());
    EXPECT_EQ(index->turnedTraits, (std::vector<std::size_t>{1}));
}

TEST(SelectionIndex, BaseIndexIsNeverMoreAccurate) {
    const TraitCovariances traits{DenseMatrix({{1, .2, .1}, {.2, 1, .3}, {.1, .3, 1}}),
                                  DenseMatrix({{.4, .1, 0}, {.1, .5, .2}, {0, .2, .6}})};
    const std::vector<double> weights{3, 2, 1};
    const auto base = baseIndex(traits, weights);
    EXPECT_EQ(base->coefficients, weights);
    EXPECT_LT(base->accuracy, smithHazelIndex(traits, weights)->accuracy);
}

TEST(SelectionIndex, RepeatedTraitNeedsARidge) {
    const TraitCovariances traits{DenseMatrix({{1, 1}, {1, 1}}), DenseMatrix({{.5, .5}, {.5, .5}})};
    const std::vector<double> weights{1, 1};
    const std::vector<std::size_t> both{0, 1};
    const auto refused = smithHazelIndex(traits, weights);
    ASSERT_FALSE(refused.ok());
    EXPECT_NE(refused.problem().what.find("Trait 2"), std::string::npos);
    const auto ridged = smithHazelIndex(traits, weights, both, 1e-3);
    ASSERT_TRUE(ridged.ok());
    EXPECT_NEAR(ridged->coefficients[0], ridged->coefficients[1], 1e-9);
}

TEST(SelectionIndex, RefusesWhatAreNoCovariances) {
    const std::vector<double> weights{1, 1};
    const DenseMatrix negative({{-1, 0}, {0, 1}});
    const DenseMatrix tooCorrelated({{1, 2}, {2, 1}});
    const DenseMatrix lopsided({{1, .5}, {.2, 1}});
    const DenseMatrix missing({{1, kNaN}, {kNaN, 1}});
    for (const DenseMatrix& bad : {negative, tooCorrelated, lopsided, missing, DenseMatrix(1, 1)}) {
        EXPECT_FALSE(smithHazelIndex({bad, kUnrelated}, weights).ok());
        EXPECT_FALSE(smithHazelIndex({kUnrelated, bad}, weights).ok());
        EXPECT_FALSE(baseIndex({kUnrelated, bad}, weights).ok());
    }
    EXPECT_FALSE(smithHazelIndex({kUnrelated, kUnrelated}, std::vector<double>{0, 0}).ok());
    EXPECT_FALSE(smithHazelIndex({kUnrelated, kUnrelated}, std::vector<double>{}).ok());
    EXPECT_FALSE(smithHazelIndex({kUnrelated, kUnrelated}, std::vector<double>{1, kInfinity}).ok());
    EXPECT_FALSE(smithHazelIndex({kUnrelated, kUnrelated}, weights, {}).ok());
    EXPECT_FALSE(
        smithHazelIndex({kUnrelated, kUnrelated}, weights, std::vector<std::size_t>{0, 0}).ok());
    EXPECT_FALSE(smithHazelIndex({kUnrelated, DenseMatrix({{0, 0}, {0, 0}})}, weights).ok());
}

} // namespace
} // namespace pipwright
