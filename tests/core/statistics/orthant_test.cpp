#include "core/statistics/order_statistics.h"
#include "core/statistics/orthant.h"
#include "core/units/no_number.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <limits>
#include <numbers>
#include <vector>

namespace pipwright {
namespace {

constexpr double kPi = std::numbers::pi;

JointNormal equallyCorrelated(std::size_t size, double correlation) {
    JointNormal quantities{std::vector<double>(size, 0), DenseMatrix(size, size)};
    for (std::size_t i = 0; i < size; ++i) {
        for (std::size_t j = 0; j < size; ++j) {
            quantities.covariance(i, j) = i == j ? 1 : correlation;
        }
    }
    return quantities;
}

TEST(Orthant, PairsFollowSheppard) {
    // Sheppard (1899): 1/4 + asin(r)/(2 pi).
    for (const double r : {-1.0, -.999, -.3, 0.0, .5, .95, .999999, 1.0}) {
        const auto found = orthantProbability(equallyCorrelated(2, r));
        EXPECT_NEAR(found->value, .25 + std::asin(r) / (2 * kPi), 1e-10) << r;
        EXPECT_EQ(found->error, 0);
    }
}

TEST(Orthant, PairsAwayFromTheMeans) {
    for (const double r : {-.98, -.2, .6, .97, .9999}) {
        JointNormal pair = equallyCorrelated(2, r);
        pair.means = {-1, .4};
        // Given the second at z, the first is normal with mean r z: summed over narrow strips.
        double sum = 0;
        constexpr double kStep = 1e-4;
        for (double z = -.4 + kStep / 2; z < 9; z += kStep) {
            const double lead = (r * z - 1) / std::sqrt(1 - r * r);
            sum += kStep * std::exp(-z * z / 2) / std::sqrt(2 * kPi) * .5 *
                   std::erfc(-lead / std::sqrt(2.0));
        }
        EXPECT_NEAR(orthantProbability(pair)->value, sum, 1e-8) << r;
    }
    // Independent pairs multiply.
    JointNormal apart = equallyCorrelated(2, 0);
    apart.means = {-3, 2};
    EXPECT_NEAR(orthantProbability(apart)->value, .001349898031630 * .977249868051821, 1e-14);
}

TEST(Orthant, TriplesFollowPlackett) {
    // 1/8 + (asin r12 + asin r13 + asin r23)/(4 pi).
    const JointNormal three{{0, 0, 0}, DenseMatrix({{1, .6, -.2}, {.6, 1, .3}, {-.2, .3, 1}})};
    const double known = .125 + (std::asin(.6) + std::asin(-.2) + std::asin(.3)) / (4 * kPi);
    const auto found = orthantProbability(three, {1e-6, 8'000});
    EXPECT_NEAR(found->value, known, std::max(found->error, 1e-7));
    EXPECT_LT(found->error, 1e-5);
}

TEST(Orthant, ManyHalfCorrelated) {
    // Equal correlations of one half: 1/(n + 1).
    for (const std::size_t size : {4U, 8U, 20U}) {
        const auto found = orthantProbability(equallyCorrelated(size, .5), {1e-4, 2'000});
        EXPECT_NEAR(found->value, 1.0 / static_cast<double>(size + 1), found->error + 1e-9);
        EXPECT_LT(found->error, 1e-3);
    }
}

TEST(Orthant, ComesOutTheSameEveryTime) {
    const JointNormal six = equallyCorrelated(6, .3);
    EXPECT_EQ(orthantProbability(six)->value, orthantProbability(six)->value);
    EXPECT_EQ(maximumOutlook(six)->mean.value, maximumOutlook(six)->mean.value);
}

TEST(Orthant, IndependentRectanglesMultiply) {
    JointNormal five = equallyCorrelated(5, 0);
    const std::vector<double> lower{-1, -kInfinity, 2, -kInfinity, 0};
    const std::vector<double> upper{1, 0, kInfinity, kInfinity, 1};
    const double known = .682689492137086 * .5 * .022750131948179 * .341344746068543;
    const auto found = rectangleProbability(five, lower, upper);
    EXPECT_NEAR(found->value, known, 1e-12);
}

TEST(Orthant, OrderOfQuantitiesDoesNotMatter) {
    const JointNormal one{
        {1, 0, -.5, .2},
        DenseMatrix({{2, .5, .3, 0}, {.5, 1, .2, .4}, {.3, .2, 1, -.3}, {0, .4, -.3, 3}})};
    const JointNormal other{
        {.2, -.5, 0, 1},
        DenseMatrix({{3, -.3, .4, 0}, {-.3, 1, .2, .3}, {.4, .2, 1, .5}, {0, .3, .5, 2}})};
    const auto a = orthantProbability(one);
    const auto b = orthantProbability(other);
    EXPECT_NEAR(a->value, b->value, a->error + b->error);
}

TEST(Orthant, WithoutFullRank) {
    // The third is the sum of the first two: positive whenever they are.
    const JointNormal sum{{0, 0, 0}, DenseMatrix({{1, 0, 1}, {0, 1, 1}, {1, 1, 2}})};
    EXPECT_NEAR(orthantProbability(sum)->value, .25, 1e-4);
    // A quantity that does not vary is settled beforehand.
    const JointNormal fixed{{0, 3}, DenseMatrix({{1, 0}, {0, 0}})};
    EXPECT_NEAR(orthantProbability(fixed)->value, .5, 1e-14);
    const JointNormal below{{0, -3}, DenseMatrix({{1, 0}, {0, 0}})};
    EXPECT_EQ(orthantProbability(below)->value, 0);
    EXPECT_EQ(orthantProbability(JointNormal{{2}, DenseMatrix(1, 1)})->value, 1);
}

TEST(Orthant, RefusesBadInput) {
    const JointNormal two = equallyCorrelated(2, .5);
    EXPECT_FALSE(orthantProbability({{}, DenseMatrix()}).ok());
    EXPECT_FALSE(orthantProbability({{0}, two.covariance}).ok());
    EXPECT_FALSE(orthantProbability({{0, kNaN}, two.covariance}).ok());
    EXPECT_FALSE(orthantProbability(equallyCorrelated(2, 1.5)).ok());
    EXPECT_FALSE(orthantProbability(equallyCorrelated(2, kNaN)).ok());
    EXPECT_FALSE(orthantProbability({{0, 0}, DenseMatrix({{-1, 0}, {0, 1}})}).ok());
    EXPECT_FALSE(orthantProbability(equallyCorrelated(201, .5)).ok());
    EXPECT_FALSE(rectangleProbability(two, std::vector<double>{0}, std::vector<double>{1}).ok());
    EXPECT_FALSE(
        rectangleProbability(two, std::vector<double>{2, 0}, std::vector<double>{1, 1}).ok());
    EXPECT_FALSE(
        rectangleProbability(two, std::vector<double>{kNaN, 0}, std::vector<double>{1, 1}).ok());
    EXPECT_EQ(
        rectangleProbability(two, std::vector<double>{1, 0}, std::vector<double>{1, 1})->value, 0);
    EXPECT_FALSE(orthantProbability(two, {0, 100}).ok());
    EXPECT_FALSE(maximumOutlook(two, {1e-3, 0}).ok());
    EXPECT_FALSE(maximumOutlook({{}, DenseMatrix()}).ok());
}

TEST(LargestOfSeveral, PairsFollowClark) {
    const JointNormal pair{{1, 2}, DenseMatrix({{1, .3}, {.3, 2}})};
    const auto found = maximumOutlook(pair);
    const double spread = std::sqrt(2.4);
    const double z = -1 / spread;
    const double below = .5 * std::erfc(-z / std::sqrt(2.0));
    EXPECT_NEAR(found->mean.value,
                below + 2 * (1 - below) + spread * std::exp(-z * z / 2) / std::sqrt(2 * kPi),
                1e-12);
    EXPECT_NEAR(found->bestChances[0].value, below, 1e-14);
    EXPECT_EQ(maximumOutlook({{4}, equallyCorrelated(1, 0).covariance})->mean.value, 4);
    // Two that are one.
    const auto same = maximumOutlook({{4, 4}, DenseMatrix({{1, 1}, {1, 1}})});
    EXPECT_EQ(same->mean.value, 4);
    EXPECT_EQ(same->bestChances[0].value, .5);
}

TEST(LargestOfSeveral, IndependentOnesFollowOrderStatistics) {
    for (const std::size_t size : {3U, 12U}) {
        const auto found = maximumOutlook(equallyCorrelated(size, 0), {1e-3, 2'000});
        const double known = *expectedMaximum(static_cast<std::int64_t>(size));
        EXPECT_NEAR(found->mean.value, known, found->mean.error);
        EXPECT_LT(found->mean.error, 1e-2);
        // Equal correlation r shrinks it by sqrt(1 - r).
        const auto related = maximumOutlook(equallyCorrelated(size, .6), {1e-3, 2'000});
        EXPECT_NEAR(related->mean.value, known * std::sqrt(.4), related->mean.error);
        double sum = 0;
        for (const Estimate& chance : found->bestChances) {
            EXPECT_NEAR(chance.value, 1.0 / static_cast<double>(size), chance.error + 1e-3);
            sum += chance.value;
        }
        EXPECT_NEAR(sum, 1, 1e-12);
    }
}

TEST(LargestOfSeveral, BestChancesAreOrthants) {
    const JointNormal three{{1, .5, 0}, DenseMatrix({{1, .4, .1}, {.4, 1, .2}, {.1, .2, 2}})};
    const auto found = maximumOutlook(three);
    // The first is best when both its leads are positive.
    const JointNormal leads{{.5, 1}, DenseMatrix({{1.2, .7}, {.7, 2.8}})};
    EXPECT_NEAR(found->bestChances[0].value, orthantProbability(leads)->value,
                found->bestChances[0].error + 1e-4);
}

} // namespace
} // namespace pipwright
