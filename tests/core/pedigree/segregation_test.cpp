#include "core/pedigree/segregation.h"

#include <gtest/gtest.h>
#include <random>
#include <string>

namespace pipwright {
namespace {

using Expression = SegregatingGene::Expression;

std::vector<double> sharesOf(const std::vector<SegregatingGene>& genes,
                             Grouping grouping = Grouping::eachGene) {
    const auto classes = segregationOf(genes, grouping);
    EXPECT_TRUE(classes.ok());
    std::vector<double> shares;
    for (const SegregationClass& one : classes.value()) {
        shares.push_back(one.share);
    }
    return shares;
}

TEST(Segregation, TheRatiosOfTheTextbooks) {
    const SegregatingGene oneParent{1, 0, Expression::dominant};
    const SegregatingGene both{1, 1, Expression::dominant};
    EXPECT_EQ(sharesOf({oneParent}), (std::vector{0.5, 0.5}));
    EXPECT_EQ(sharesOf({both}), (std::vector{0.75, 0.25}));
    EXPECT_EQ(sharesOf({{1, 1, Expression::recessive}}), (std::vector{0.25, 0.75}));
    EXPECT_EQ(sharesOf({{1, 1, Expression::codominant}}), (std::vector{0.25, 0.5, 0.25}));
    EXPECT_EQ(sharesOf({both, both}), (std::vector{9 / 16., 3 / 16., 3 / 16., 1 / 16.}));
    EXPECT_EQ(sharesOf({both, oneParent}), (std::vector{3 / 8., 3 / 8., 1 / 8., 1 / 8.}));
    EXPECT_EQ(sharesOf({both, both}, Grouping::anyGene), (std::vector{15 / 16., 1 / 16.}));
    EXPECT_EQ(sharesOf({both, both}, Grouping::everyGene), (std::vector{9 / 16., 7 / 16.}));
    EXPECT_EQ(sharesOf({oneParent, oneParent}, Grouping::anyGene), (std::vector{0.75, 0.25}));
    EXPECT_EQ(sharesOf({{2, 0, Expression::dominant}}), (std::vector{1.0}));
    EXPECT_EQ(sharesOf({{2, 1, Expression::codominant}}), (std::vector{0.5, 0.5}));
}

TEST(Segregation, SaysWhatIsSeenInEachClass) {
    const std::vector<SegregatingGene> genes{{1, 1, Expression::codominant},
                                             {1, 0, Expression::dominant}};
    const auto classes = segregationOf(genes);
    ASSERT_TRUE(classes.ok());
    ASSERT_EQ(classes->size(), 6U);
    EXPECT_EQ(classes->front().shown, (std::vector{2, 1}));
    EXPECT_EQ(classes->back().shown, (std::vector{0, 0}));
}

TEST(Segregation, SharesSumToOne) {
    const std::uint64_t seed = 1866;
    SCOPED_TRACE("seed " + std::to_string(seed));
    std::mt19937_64 random{seed};
    for (int round = 0; round < 300; ++round) {
        std::vector<SegregatingGene> genes(1 + random() % 6);
        for (SegregatingGene& gene : genes) {
            gene = {static_cast<int>(random() % 3), static_cast<int>(random() % 3),
                    random() % 2 == 0 ? Expression::dominant : Expression::recessive};
        }
        for (const Grouping grouping :
             {Grouping::eachGene, Grouping::anyGene, Grouping::everyGene}) {
            double sum = 0;
            for (const double share : sharesOf(genes, grouping)) {
                EXPECT_GT(share, 0);
                sum += share;
            }
            EXPECT_NEAR(sum, 1, 1e-12);
        }
    }
}

TEST(Segregation, RefusesWhatIsNoHypothesis) {
    EXPECT_FALSE(segregationOf({}).ok());
    EXPECT_FALSE(segregationOf(std::vector<SegregatingGene>(9)).ok());
    EXPECT_FALSE(segregationOf(std::vector<SegregatingGene>{{3, 0}}).ok());
    EXPECT_FALSE(segregationOf(std::vector<SegregatingGene>{{-1, 0}}).ok());
    EXPECT_FALSE(segregationOf(std::vector<SegregatingGene>{{1, 1, Expression::codominant}},
                               Grouping::anyGene)
                     .ok());
}

TEST(Segregation, TellsWhichTestToRead) {
    const auto half = segregationOf(std::vector<SegregatingGene>{{1, 0}}).value();
    const std::vector<std::int64_t> many{30, 20};
    const auto plain = testSegregation(half, many);
    ASSERT_TRUE(plain.ok());
    EXPECT_FALSE(plain->readExact);
    EXPECT_EQ(plain->pValue(), plain->fit.pearson.pValue);
    const std::vector<std::int64_t> few{7, 1};
    const auto exact = testSegregation(half, few);
    ASSERT_TRUE(exact.ok());
    EXPECT_TRUE(exact->readExact);
    EXPECT_NEAR(exact->pValue(), 18 / 256., 1e-12);
    const std::vector<std::int64_t> nothing{0, 0};
    EXPECT_FALSE(testSegregation(half, nothing).ok());
    const std::vector<std::int64_t> three{1, 2, 3};
    EXPECT_FALSE(testSegregation(half, three).ok());
}

TEST(SeedsToSow, RefusesPartsThatAreNone) {
    EXPECT_FALSE(seedsToSow(1, {1.5, 1, 1}, 0.95).ok());
    EXPECT_FALSE(seedsToSow(1, {0.5, -0.1, 1}, 0.95).ok());
    EXPECT_FALSE(seedsToSow(1, {0, 1, 1}, 0.95).ok());
    EXPECT_FALSE(seedsToSow(1, {0.5, 1, 1}, 1).ok());
    EXPECT_EQ(seedsToSow(1, {0.5, 1, 1}, 0.95).value(), 5);
}

} // namespace
} // namespace pipwright
