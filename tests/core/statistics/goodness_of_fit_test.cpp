#include "core/statistics/goodness_of_fit.h"

#include <cmath>
#include <gtest/gtest.h>
#include <limits>
#include <vector>

namespace pipwright {
namespace {

using Counts = std::vector<std::int64_t>;
using Ratio = std::vector<double>;

TEST(GoodnessOfFit, ScaleOfTheRatioDoesNotMatter) {
    const Counts counts{31, 12, 9, 4};
    const auto small = goodnessOfFit(counts, Ratio{9e-300, 3e-300, 3e-300, 1e-300});
    const auto large = goodnessOfFit(counts, Ratio{9e300, 3e300, 3e300, 1e300});
    EXPECT_NEAR(small->pearson.statistic, large->pearson.statistic, 1e-12);
    EXPECT_NEAR(large->expected[3], 3.5, 1e-12);
    EXPECT_NEAR(large->smallestExpected, 3.5, 1e-12);
    EXPECT_FALSE(large->yates.has_value());
    EXPECT_EQ(large->pearson.degreesOfFreedom, 3);
}

TEST(GoodnessOfFit, PerfectAgreementAndEmptyClass) {
    const auto perfect = goodnessOfFit(Counts{30, 10}, Ratio{3, 1});
    EXPECT_EQ(perfect->pearson.statistic, 0);
    EXPECT_EQ(perfect->pearson.pValue, 1);
    EXPECT_EQ(perfect->yates->statistic, 0);
    EXPECT_EQ(perfect->likelihoodRatio.statistic, 0);
    const auto empty = goodnessOfFit(Counts{8, 0}, Ratio{1, 1});
    EXPECT_NEAR(empty->likelihoodRatio.statistic, 16 * std::log(2.0), 1e-12);
    EXPECT_NEAR(empty->pearson.statistic, 8, 1e-12);
}

TEST(GoodnessOfFit, RefusesWhatCannotBeTested) {
    constexpr double notANumber = std::numeric_limits<double>::quiet_NaN();
    constexpr double infinite = std::numeric_limits<double>::infinity();
    for (const auto& [counts, ratio] : std::vector<std::pair<Counts, Ratio>>{
             {{}, {}},
             {{5}, {1}},
             {{5, 5}, {1}},
             {{0, 0}, {1, 1}},
             {{-1, 5}, {1, 1}},
             {{5, 5}, {1, 0}},
             {{5, 5}, {1, -1}},
             {{5, 5}, {1, notANumber}},
             {{5, 5}, {infinite, 1}},
             {{5, 5}, {1e300, 1e-300}},
             {{std::numeric_limits<std::int64_t>::max(), 5}, {1, 1}}}) {
        EXPECT_FALSE(goodnessOfFit(counts, ratio).ok());
    }
    EXPECT_FALSE(exactMultinomialTest(Counts{0, 0, 0}, Ratio{1, 1, 1}).ok());
    EXPECT_FALSE(exactMultinomialTest(Counts{2, 1}, Ratio{1, 0}).ok());
    EXPECT_FALSE(exactBinomialTest(5, 4, .5).ok());
    EXPECT_FALSE(exactBinomialTest(0, 0, .5).ok());
    EXPECT_FALSE(exactBinomialTest(-1, 4, .5).ok());
    EXPECT_FALSE(exactBinomialTest(1, 4, notANumber).ok());
    EXPECT_FALSE(exactBinomialTest(1, 4, -.5).ok());
}

TEST(ExactTests, TwoClassesAgreeBothWays) {
    for (std::int64_t k = 0; k <= 12; ++k) {
        const auto multinomial = exactMultinomialTest(Counts{k, 12 - k}, Ratio{3, 1});
        ASSERT_TRUE(multinomial.ok());
        EXPECT_TRUE(multinomial->exact);
        EXPECT_NEAR(multinomial->pValue, *exactBinomialTest(k, 12, .75), 1e-12);
    }
}

TEST(ExactTests, ThreeSeedlingsByHand) {
    // 3 seedlings at 1:1:2: P(3,0,0) = P(0,3,0) = 1/64; no table is less likely.
    EXPECT_NEAR(exactMultinomialTest(Counts{3, 0, 0}, Ratio{1, 1, 2})->pValue, 2. / 64, 1e-12);
    // The likeliest table leaves nothing likelier out: (0,1,2) and (1,0,2), (1,1,1) tie at 3/16.
    EXPECT_NEAR(exactMultinomialTest(Counts{1, 0, 2}, Ratio{1, 1, 2})->pValue, 1, 1e-12);
    EXPECT_EQ(*exactBinomialTest(0, 5, 0), 1);
    EXPECT_EQ(*exactBinomialTest(1, 5, 0), 0);
    EXPECT_EQ(*exactBinomialTest(5, 5, 1), 1);
}

TEST(ExactTests, SimulationAgreesWithTheExactValueAndRepeats) {
    const Counts counts{4, 1, 4, 1};
    const Ratio ratio{9, 3, 3, 1};
    const auto exact = exactMultinomialTest(counts, ratio);
    const auto simulated = exactMultinomialTest(counts, ratio, 10);
    ASSERT_TRUE(exact->exact);
    ASSERT_FALSE(simulated->exact);
    EXPECT_GT(simulated->standardError, 0);
    EXPECT_NEAR(simulated->pValue, exact->pValue, 4 * simulated->standardError);
    EXPECT_EQ(simulated->pValue, exactMultinomialTest(counts, ratio, 10)->pValue);
}

} // namespace
} // namespace pipwright
