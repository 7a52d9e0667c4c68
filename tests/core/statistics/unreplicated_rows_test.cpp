#include "core/statistics/augmented_block.h"
#include "core/statistics/neighbour_adjustment.h"
#include "core/units/no_number.h"

#include <cmath>
#include <gtest/gtest.h>
#include <limits>
#include <vector>

namespace pipwright {
namespace {

TEST(BlockAdjustment, ShiftingABlockShiftsNoEntry) {
    std::vector<EntryRecord> records{{0, 0, 5}, {1, 0, 7}, {2, 0, 6}, {0, 1, 4},
                                     {1, 1, 7}, {3, 1, 8}, {0, 2, 6}, {4, 2, 3}};
    const auto before = BlockAdjustment::of(records, 5, 3);
    for (EntryRecord& record : records) {
        record.value += record.block == 1 ? 10 : 0;
    }
    const auto after = BlockAdjustment::of(records, 5, 3);
    for (std::size_t i = 0; i < 5; ++i) {
        EXPECT_NEAR(after->adjustedMeans()[i] - after->adjustedMeans()[0],
                    before->adjustedMeans()[i] - before->adjustedMeans()[0], 1e-12);
        EXPECT_NEAR(*after->differenceError(i, 0), *before->differenceError(i, 0), 1e-12);
    }
}

TEST(BlockAdjustment, OneBlockIsPlainMeans) {
    const auto fit =
        BlockAdjustment::of(std::vector<EntryRecord>{{0, 0, 5}, {0, 0, 7}, {1, 0, 4}}, 2, 1);
    ASSERT_TRUE(fit.ok());
    EXPECT_NEAR(fit->adjustedMeans()[0], 6, 1e-12);
    EXPECT_NEAR(*fit->residualVariance(), 2, 1e-12);
    EXPECT_NEAR(*fit->differenceError(0, 1), std::sqrt(2 * 1.5), 1e-12);
    EXPECT_EQ(*fit->differenceError(1, 1), 0);
}

TEST(BlockAdjustment, SaysWhatCannotBeEstimated) {
    // Nothing repeated beyond the block effects.
    const auto saturated =
        BlockAdjustment::of(std::vector<EntryRecord>{{0, 0, 5}, {0, 1, 6}, {1, 1, 7}}, 2, 2);
    ASSERT_TRUE(saturated.ok());
    EXPECT_FALSE(saturated->residualVariance().has_value());
    EXPECT_FALSE(saturated->differenceError(0, 1).ok());
    // No check in both blocks.
    const auto apart = BlockAdjustment::of(
        std::vector<EntryRecord>{{0, 0, 5}, {1, 0, 6}, {2, 1, 7}, {3, 1, 7}}, 4, 2);
    ASSERT_FALSE(apart.ok());
    EXPECT_NE(apart.problem().what.find("Blocks 1 and 2"), std::string::npos);
}

TEST(BlockAdjustment, RefusesBadRecords) {
    EXPECT_FALSE(BlockAdjustment::of({}, 0, 0).ok());
    EXPECT_FALSE(BlockAdjustment::of({}, 3, 3).ok());
    EXPECT_FALSE(BlockAdjustment::of(std::vector<EntryRecord>{{0, 0, kNaN}}, 1, 1).ok());
    EXPECT_FALSE(BlockAdjustment::of(std::vector<EntryRecord>{{0, 0, kInfinity}}, 1, 1).ok());
    EXPECT_FALSE(BlockAdjustment::of(std::vector<EntryRecord>{{1, 0, 2}}, 1, 1).ok());
    EXPECT_FALSE(BlockAdjustment::of(std::vector<EntryRecord>{{0, 1, 2}}, 1, 1).ok());
    EXPECT_FALSE(BlockAdjustment::of(std::vector<EntryRecord>{{0, 0, 2}}, 2, 1).ok());
    const auto one = BlockAdjustment::of(std::vector<EntryRecord>{{0, 0, 2}}, 1, 1);
    ASSERT_TRUE(one.ok());
    EXPECT_EQ(one->adjustedMeans()[0], 2);
    EXPECT_FALSE(one->differenceError(0, 7).ok());
}

std::vector<PlantedValue> rowOf(const std::vector<double>& values) {
    std::vector<PlantedValue> trees;
    for (std::size_t i = 0; i < values.size(); ++i) {
        trees.push_back({0, static_cast<int>(i), values[i], std::nullopt});
    }
    return trees;
}

TEST(Papadakis, ALonelyTreeKeepsItsValue) {
    auto trees = rowOf({5, 6, 7, 6, 5, 4});
    trees.push_back({9, 90, 8, std::nullopt});
    const auto found = papadakisAdjustment(trees);
    ASSERT_TRUE(found.ok());
    EXPECT_EQ(found->adjusted.back(), 8);
}

TEST(Papadakis, SlopeIsKeptWithinItsBounds) {
    // Neighbours pull apart: the slope is negative and not used.
    const auto found = papadakisAdjustment(rowOf({5, 7, 5, 7, 5, 7.5}));
    ASSERT_TRUE(found.ok());
    EXPECT_LT(found->slope, 0);
    EXPECT_EQ(found->usedSlope, 0);
    EXPECT_EQ(found->adjusted[1], 7);
}

TEST(Papadakis, RefusesWhereNeighboursTellNothing) {
    EXPECT_FALSE(papadakisAdjustment({}).ok());
    EXPECT_FALSE(papadakisAdjustment(rowOf({5})).ok());
    EXPECT_FALSE(papadakisAdjustment(rowOf({5, 6})).ok());
    EXPECT_FALSE(papadakisAdjustment(rowOf({5, 5, 5, 5})).ok());
    EXPECT_FALSE(papadakisAdjustment(rowOf({5, kNaN, 5, 5})).ok());
    auto twice = rowOf({5, 6, 7});
    twice.push_back(twice.front());
    EXPECT_FALSE(papadakisAdjustment(twice).ok());
}

TEST(MovingMean, ALongReachIsTheMeanOfAllOthers) {
    const auto found = movingMeanAdjustment(std::vector<double>{1, 2, 6}, 100);
    EXPECT_EQ(found->movingMeans, (std::vector<double>{4, 3.5, 1.5}));
    EXPECT_EQ(found->adjusted, (std::vector<double>{0, 1.5, 7.5}));
}

TEST(MovingMean, RefusesShortRows) {
    EXPECT_FALSE(movingMeanAdjustment({}, 2).ok());
    EXPECT_FALSE(movingMeanAdjustment(std::vector<double>{5}, 2).ok());
    EXPECT_FALSE(movingMeanAdjustment(std::vector<double>{5, 6}, 0).ok());
    EXPECT_FALSE(movingMeanAdjustment(std::vector<double>{5, kInfinity}, 2).ok());
}

TEST(CheckLevels, ChecksInOnePlaceCountAsTheirMean) {
    const std::vector<CheckValue> checks{{4, 6}, {2, 5}, {4, 8}};
    EXPECT_EQ(*checkLevels(checks, std::vector<double>{1, 2, 3, 4, 9}),
              (std::vector<double>{5, 5, 6, 7, 7}));
    EXPECT_TRUE(checkLevels(checks, {})->empty());
    EXPECT_FALSE(checkLevels(checks, std::vector<double>{kNaN}).ok());
    EXPECT_FALSE(checkLevels(std::vector<CheckValue>{{1, kNaN}}, std::vector<double>{1}).ok());
}

} // namespace
} // namespace pipwright
