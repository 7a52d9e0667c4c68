#include "core/statistics/allocation.h"
#include "core/statistics/beta_binomial.h"
#include "core/units/no_number.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <limits>
#include <vector>

namespace pipwright {
namespace {

TEST(BetaBinomial, SumsToOne) {
    const BetaDistribution chance{2.5, 7};
    double sum = 0;
    for (int k = 0; k <= 30; ++k) {
        sum += *betaBinomialProbability(chance, k, 30);
    }
    EXPECT_NEAR(sum, 1, 1e-12);
    EXPECT_NEAR(*betaBinomialAtLeast(chance, 0, 30), 1, 1e-12);
    EXPECT_NEAR(*betaBinomialAtLeast(chance, 30, 30), *betaBinomialProbability(chance, 30, 30),
                1e-15);
    // A flat prior makes every count equally likely.
    EXPECT_NEAR(*betaBinomialProbability({1, 1}, 4, 9), .1, 1e-12);
}

TEST(BetaBinomial, RefusesTheImpossible) {
    EXPECT_FALSE(updatedChance({0, 1}, 1, 2).ok());
    EXPECT_FALSE(updatedChance({1, kNaN}, 1, 2).ok());
    EXPECT_FALSE(updatedChance({1, 1}, 3, 2).ok());
    EXPECT_FALSE(updatedChance({1, 1}, -1, 2).ok());
    EXPECT_FALSE(correlatedChance(0, .3).ok());
    EXPECT_FALSE(correlatedChance(.1, 1).ok());
    EXPECT_FALSE(correlatedChance(kNaN, .3).ok());
    EXPECT_FALSE(betaBinomialProbability({1, 1}, 2, 1).ok());
    EXPECT_FALSE(betaBinomialAtLeast({-1, 1}, 1, 2).ok());
    EXPECT_FALSE(chanceAllLost(1.2, 1, 1).ok());
    EXPECT_FALSE(chanceAllLost(.2, 0, 1).ok());
    EXPECT_FALSE(chanceAllLost(.2, 1, -1).ok());
    EXPECT_FALSE(chanceAllLostTogether(.2, kNaN, 1).ok());
    EXPECT_FALSE(chanceAllLostTogether(.2, .1, 0).ok());
    EXPECT_FALSE(chanceAllLost(BetaDistribution{0, 1}, 1).ok());
    EXPECT_FALSE(chanceAllLost(BetaDistribution{1, 1}, 0).ok());
}

TEST(Loss, AtTheEnds) {
    EXPECT_EQ(*chanceAllLost(.3, 4, 0), 0);
    EXPECT_EQ(*chanceAllLost(1, 4, 2), 1);
    EXPECT_EQ(*chanceAllLost(1, 4, 0), 0);
    EXPECT_EQ(*chanceAllLost(0, 4, 9), 0);
}

/// Every way to share out, one tree after the other.
double bestByTrying(const std::vector<WantedTree>& wishes, std::size_t from, int grafts) {
    if (from == wishes.size()) {
        return 0;
    }
    double best = 0;
    for (int own = 0; own <= grafts; ++own) {
        const double worth = wishes[from].worth * (1 - std::pow(1 - wishes[from].chance, own));
        best = std::max(best, worth + bestByTrying(wishes, from + 1, grafts - own));
    }
    return best;
}

TEST(SharedOutGrafts, AreAsGoodAsTryingEverything) {
    const std::vector<WantedTree> wishes{{7, .35}, {3, .9}, {5, .5}, {5, .65}};
    for (int grafts = 0; grafts <= 12; ++grafts) {
        EXPECT_NEAR(shareOutGrafts(wishes, grafts)->expectedWorth, bestByTrying(wishes, 0, grafts),
                    1e-12);
    }
}

TEST(SharedOutGrafts, NothingIsWastedOnTheHopeless) {
    const auto plan = shareOutGrafts(std::vector<WantedTree>{{0, .9}, {5, 0}, {5, 1}}, 9);
    EXPECT_EQ(plan->grafts, (std::vector{0, 0, 1}));
    EXPECT_TRUE(shareOutGrafts({}, 4)->grafts.empty());
    EXPECT_FALSE(shareOutGrafts({}, -1).ok());
    EXPECT_FALSE(shareOutGrafts({}, 5, -1).ok());
    EXPECT_FALSE(shareOutGrafts(std::vector<WantedTree>{{-1, .5}}, 4).ok());
    EXPECT_FALSE(shareOutGrafts(std::vector<WantedTree>{{1, 1.5}}, 4).ok());
    EXPECT_FALSE(shareOutGrafts(std::vector<WantedTree>{{kNaN, .5}}, 4).ok());
}

TEST(Budget, FreeThingsAndNone) {
    const auto set = bestWithinBudget(std::vector<Choice>{{1, 0}, {5, 3}, {2, 1}}, 0);
    EXPECT_EQ(set->chosen, (std::vector<std::size_t>{0}));
    EXPECT_TRUE(bestWithinBudget({}, 5)->chosen.empty());
    // By worth for cost the first would be taken; the second alone is better.
    EXPECT_EQ(bestWithinBudget(std::vector<Choice>{{3, 1}, {10, 5}}, 5)->worth, 10);
    EXPECT_FALSE(bestWithinBudget(std::vector<Choice>{{1, -1}}, 5).ok());
    EXPECT_FALSE(bestWithinBudget(std::vector<Choice>{{-1, 1}}, 5).ok());
    EXPECT_FALSE(bestWithinBudget(std::vector<Choice>{{kNaN, 1}}, 5).ok());
    EXPECT_FALSE(bestWithinBudget(std::vector<Choice>{{1, 1}}, -5).ok());
}

} // namespace
} // namespace pipwright
