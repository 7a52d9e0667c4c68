#include "core/statistics/allocation.h"
#include "core/statistics/beta_binomial.h"
#include "core/statistics/number_needed.h"
#include "tests/checks/tolerances.h"

#include <array>
#include <cstdint>
#include <gtest/gtest.h>
#include <numeric>
#include <vector>

// Computed with R 4.2.2; the allocations also with GLPK 5.0 as integer programs.

namespace pipwright {
namespace {

struct GraftsEntry {
    double chance;
    double assurance;
    std::array<std::int64_t, 5> needed; ///< for 1, 2, 3, 5 and 10 takes
};
constexpr std::array kGrafts{
    std::to_array<GraftsEntry>({{0.5, 0.9, {4, 7, 9, 14, 26}},    {0.6, 0.9, {3, 5, 7, 11, 21}},
                                {0.7, 0.9, {2, 4, 6, 9, 18}},     {0.75, 0.9, {2, 4, 6, 9, 16}},
                                {0.8, 0.9, {2, 4, 5, 8, 15}},     {0.85, 0.9, {2, 3, 5, 7, 14}},
                                {0.9, 0.9, {1, 3, 4, 7, 13}},     {0.95, 0.9, {1, 2, 4, 6, 12}},
                                {0.5, 0.95, {5, 8, 11, 16, 28}},  {0.6, 0.95, {4, 6, 8, 13, 23}},
                                {0.7, 0.95, {3, 5, 7, 10, 19}},   {0.75, 0.95, {3, 5, 6, 9, 17}},
                                {0.8, 0.95, {2, 4, 6, 9, 16}},    {0.85, 0.95, {2, 4, 5, 8, 14}},
                                {0.9, 0.95, {2, 3, 5, 7, 13}},    {0.95, 0.95, {1, 3, 4, 6, 12}},
                                {0.5, 0.99, {7, 11, 14, 19, 33}}, {0.6, 0.99, {6, 8, 11, 15, 26}},
                                {0.7, 0.99, {4, 7, 9, 12, 21}},   {0.75, 0.99, {4, 6, 8, 11, 19}},
                                {0.8, 0.99, {3, 5, 7, 10, 18}},   {0.85, 0.99, {3, 5, 6, 9, 16}},
                                {0.9, 0.99, {2, 4, 5, 8, 14}},    {0.95, 0.99, {2, 3, 5, 7, 13}}})};

TEST(GraftsCheck, NeededForSoManyTakes) {
    constexpr std::array<std::int64_t, 5> wanted{1, 2, 3, 5, 10};
    for (const auto& entry : kGrafts) {
        for (std::size_t i = 0; i < wanted.size(); ++i) {
            EXPECT_EQ(*numberNeeded(wanted[i], entry.chance, entry.assurance), entry.needed[i])
                << wanted[i] << " at " << entry.chance << " and " << entry.assurance;
        }
    }
}

TEST(GraftsCheck, OwnTakeRate) {
    EXPECT_NEAR(meanChance(*updatedChance({8, 2}, 7, 12)), 15. / 22, 1e-12);
}

TEST(LossCheck, IndependentCopies) {
    const std::array tenth{.40951, .167698, .068674, .028123};
    const std::array twentieth{.226219, .051175, .011577, .002619};
    for (int copies = 1; copies <= 4; ++copies) {
        const auto i = static_cast<std::size_t>(copies - 1);
        EXPECT_NEAR(*chanceAllLost(.1, copies, 5), tenth[i], kPrinted);
        EXPECT_NEAR(*chanceAllLost(.05, copies, 5), twentieth[i], kPrinted);
    }
}

TEST(LossCheck, CommonCauseAndCorrelatedLosses) {
    const std::array common{.118, .0298, .02098, .020098};
    const std::array correlated{.1, .037, .019069, .011561};
    const auto loss = correlatedChance(.1, .3);
    for (int copies = 1; copies <= 4; ++copies) {
        const auto i = static_cast<std::size_t>(copies - 1);
        EXPECT_NEAR(*chanceAllLostTogether(.1, .02, copies), common[i], kPrinted);
        EXPECT_NEAR(*chanceAllLost(*loss, copies), correlated[i], kPrinted);
        EXPECT_NEAR(*betaBinomialProbability(*loss, copies, copies), correlated[i], kPrinted);
    }
}

TEST(AllocationCheck, SharedOutGrafts) {
    const auto first =
        shareOutGrafts(std::vector<WantedTree>{{10, .7}, {6, .7}, {3, .7}, {1, .7}}, 6);
    EXPECT_EQ(first->grafts, (std::vector{2, 2, 1, 1}));
    EXPECT_NEAR(first->expectedWorth, 17.36, 1e-9);
    const auto second =
        shareOutGrafts(std::vector<WantedTree>{{10, .8}, {9, .5}, {8, .9}, {2, .7}}, 8);
    EXPECT_EQ(second->grafts, (std::vector{2, 3, 2, 1}));
    EXPECT_NEAR(second->expectedWorth, 26.795, 1e-9);
    const auto third = shareOutGrafts(std::vector<WantedTree>{{5, .6}, {5, .6}, {5, .6}}, 7);
    EXPECT_EQ(third->grafts, (std::vector{3, 2, 2})); // or any order of these
    EXPECT_NEAR(third->expectedWorth, 13.08, 1e-9);
    const auto fourth = shareOutGrafts(
        std::vector<WantedTree>{{100, .75}, {20, .75}, {5, .75}, {1, .75}, {1, .75}}, 10, 4);
    EXPECT_EQ(fourth->grafts, (std::vector{4, 3, 2, 1, 0}));
    EXPECT_NEAR(fourth->expectedWorth, 124.734375, 1e-9);
}

TEST(AllocationCheck, WithinABudget) {
    const auto set = bestWithinBudget(
        std::vector<Choice>{{60, 3}, {100, 5}, {120, 8}, {70, 4}, {35, 2}, {90, 6}}, 15);
    EXPECT_EQ(set->worth, 265);
    EXPECT_EQ(set->chosen, (std::vector<std::size_t>{0, 1, 3, 4})); // items 1, 2, 4, 5
}

} // namespace
} // namespace pipwright
