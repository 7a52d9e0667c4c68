#include "core/statistics/number_needed.h"

#include <gtest/gtest.h>
#include <limits>

namespace pipwright {
namespace {

TEST(NumberNeeded, IsTheSmallestThatReaches) {
    for (const std::int64_t wanted : {1, 2, 7, 40}) {
        for (const double chance : {.9, .315, .02, .0004}) {
            for (const double assurance : {.1, .9, .999999}) {
                const std::int64_t n = *numberNeeded(wanted, chance, assurance);
                EXPECT_GE(*chanceOfAtLeast(wanted, n, chance), assurance * (1 - 1e-11));
                EXPECT_LT(*chanceOfAtLeast(wanted, n - 1, chance), assurance);
            }
        }
    }
}

TEST(NumberNeeded, ReachesARoundProbabilityExactly) {
    EXPECT_EQ(*numberNeeded(1, .5, .75), 2);
    EXPECT_EQ(*numberNeeded(1, .5, .875), 3);
    EXPECT_EQ(*numberNeeded(2, .5, .25), 2);
}

TEST(NumberNeeded, SureThingsAndNothingWanted) {
    EXPECT_EQ(*numberNeeded(5, 1, .99), 5);
    EXPECT_EQ(*numberNeeded(0, .2, .99), 0);
    EXPECT_EQ(*chanceOfAtLeast(0, 0, .2), 1);
    EXPECT_EQ(*chanceOfAtLeast(1, 0, .2), 0);
    EXPECT_EQ(*chanceOfAtLeast(4, 3, .2), 0);
    EXPECT_EQ(*chanceOfAtLeast(3, 3, 1), 1);
}

TEST(NumberNeeded, RefusesTheImpossible) {
    constexpr double notANumber = std::numeric_limits<double>::quiet_NaN();
    EXPECT_FALSE(numberNeeded(-1, .5, .9).ok());
    EXPECT_FALSE(numberNeeded(1, 0, .9).ok());
    EXPECT_FALSE(numberNeeded(1, 1.2, .9).ok());
    EXPECT_FALSE(numberNeeded(1, notANumber, .9).ok());
    EXPECT_FALSE(numberNeeded(1, .5, 1).ok());
    EXPECT_FALSE(numberNeeded(1, .5, 0).ok());
    EXPECT_FALSE(numberNeeded(1, .5, notANumber).ok());
    EXPECT_FALSE(numberNeeded(1, 1e-300, .9).ok());
    EXPECT_FALSE(chanceOfAtLeast(1, -1, .5).ok());
    EXPECT_FALSE(chanceOfAtLeast(-1, 1, .5).ok());
    EXPECT_FALSE(chanceOfAtLeast(1, 1, notANumber).ok());
}

} // namespace
} // namespace pipwright
