#include "core/statistics/distributions.h"
#include "core/units/no_number.h"

#include <cmath>
#include <gtest/gtest.h>
#include <limits>
#include <vector>

namespace pipwright {
namespace {

const std::vector<Distribution> kContinuous{
    NormalDistribution{3, 2},         StudentDistribution{4.5}, ChiSquareDistribution{3},
    VarianceRatioDistribution{3, 11}, BetaDistribution{2, 5},   GammaDistribution{2.5, 3},
    WeibullDistribution{2, 30}};
const std::vector<Distribution> kCounts{BinomialDistribution{20, .3},
                                        NegativeBinomialDistribution{4, .25}};

TEST(Distributions, QuantileUndoesProbability) {
    for (const auto& distribution : kContinuous) {
        for (const double p : {1e-9, .001, .2, .5, .77, .999}) {
            const auto x = quantile(distribution, p);
            ASSERT_TRUE(x.ok()) << distribution.index();
            EXPECT_NEAR(*probabilityAtMost(distribution, *x) / p, 1, 1e-9)
                << distribution.index() << " at " << p;
        }
    }
}

TEST(Distributions, QuantileOfCountsIsTheSmallestThatReaches) {
    for (const auto& distribution : kCounts) {
        for (const double p : {.001, .2, .5, .77, .999}) {
            const double k = *quantile(distribution, p);
            EXPECT_EQ(k, std::floor(k));
            EXPECT_GE(*probabilityAtMost(distribution, k), p);
            EXPECT_LT(*probabilityAtMost(distribution, k - 1), p);
        }
    }
}

TEST(Distributions, TailsAddToOne) {
    for (const auto& all : {kContinuous, kCounts}) {
        for (const auto& distribution : all) {
            for (const double x : {-4.0, -.5, 0.0, .3, 1.0, 5.0, 19.0, 20.0, 90.0}) {
                EXPECT_NEAR(*probabilityAtMost(distribution, x) +
                                *probabilityAbove(distribution, x),
                            1, 1e-14);
            }
        }
    }
}

TEST(Distributions, EndsOfTheRange) {
    for (const auto& all : {kContinuous, kCounts}) {
        for (const auto& distribution : all) {
            EXPECT_EQ(*probabilityAtMost(distribution, kInfinity), 1);
            EXPECT_EQ(*probabilityAtMost(distribution, -kInfinity), 0);
            EXPECT_EQ(*probabilityAtMost(distribution, *quantile(distribution, 1)), 1);
        }
    }
    EXPECT_EQ(*quantile(NormalDistribution{}, 0), -kInfinity);
    EXPECT_EQ(*quantile(BetaDistribution{2, 2}, 1), 1);
    EXPECT_EQ(*quantile(BinomialDistribution{7, .2}, 1), 7);
    EXPECT_EQ(*quantile(BinomialDistribution{7, 0}, 1), 0);
}

TEST(Distributions, FarTailsKeepTheirDigits) {
    // Abramowitz & Stegun (1964), table 26.2: -log10 Q(10) = 23.11805.
    EXPECT_NEAR(-std::log10(standardNormalAbove(10)), 23.11805, 5e-6);
    EXPECT_NEAR(standardNormalUpperQuantile(standardNormalAbove(10)), 10, 1e-9);
    // t with two degrees of freedom: P(T > t) = (1 - t/sqrt(2 + t^2))/2.
    EXPECT_NEAR(*probabilityAbove(StudentDistribution{2}, 1000), 4.99999250001e-7, 1e-15);
    EXPECT_NEAR(*quantile(StudentDistribution{2}, .5), 0, 1e-12);
}

TEST(Distributions, TextbookEntries) {
    EXPECT_NEAR(*quantile(StudentDistribution{3}, .975), 3.182446, 5e-7);
    EXPECT_NEAR(*quantile(ChiSquareDistribution{1}, .95), 3.841459, 5e-7);
    EXPECT_NEAR(*quantile(VarianceRatioDistribution{2, 10}, .95), 4.102821, 5e-7);
    EXPECT_NEAR(standardNormalQuantile(.975), 1.959964, 5e-7);
    EXPECT_NEAR(std::exp(logBinomialCoefficient(10, 3)), 120, 1e-10);
}

TEST(Distributions, RefusesWhatIsNoDistribution) {
    const std::vector<Distribution> bad{NormalDistribution{0, -1},
                                        NormalDistribution{kNaN, 1},
                                        StudentDistribution{0},
                                        ChiSquareDistribution{-3},
                                        VarianceRatioDistribution{1, kInfinity},
                                        BetaDistribution{0, 1},
                                        GammaDistribution{1, kNaN},
                                        WeibullDistribution{-1, 1},
                                        BinomialDistribution{2.5, .5},
                                        BinomialDistribution{3, 1.1},
                                        BinomialDistribution{-1, .1},
                                        NegativeBinomialDistribution{2, 0}};
    for (const auto& distribution : bad) {
        EXPECT_FALSE(probabilityAtMost(distribution, 0).ok());
        EXPECT_FALSE(probabilityAbove(distribution, 0).ok());
        EXPECT_FALSE(quantile(distribution, .5).ok());
    }
    EXPECT_FALSE(probabilityAtMost(NormalDistribution{}, kNaN).ok());
    for (const double p : {-.1, 1.1, kNaN, kInfinity}) {
        EXPECT_FALSE(quantile(NormalDistribution{}, p).ok());
    }
}

} // namespace
} // namespace pipwright
