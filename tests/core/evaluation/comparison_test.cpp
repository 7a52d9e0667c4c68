#include "core/evaluation/comparison.h"
#include "tests/support/tasted_orchard.h"

#include <cmath>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace pipwright {
namespace {

using test::TastedOrchard;

ComparedTrait meanOf(double mean, int count, std::optional<double> error) {
    ComparedTrait one;
    one.mean = mean;
    one.count = count;
    one.standardError = error;
    return one;
}

Comparison compared(TastedOrchard& orchard, const std::vector<GenotypeId>& genotypes) {
    const auto view = orchard.view();
    std::vector<Index> columns;
    for (const GenotypeId id : genotypes) {
        columns.push_back(*view->genotype(id));
    }
    auto comparison = compare(*view, orchard.store(), columns);
    EXPECT_TRUE(comparison);
    return *comparison;
}

TEST(Difference, IsMarkedOnlyBeyondTwoStandardErrors) {
    // sqrt(0.3^2 + 0.4^2) = 0.5: the border lies at 1.0.
    const auto near = differenceOf(meanOf(7.0, 5, 0.3), meanOf(6.01, 5, 0.4), 0);
    ASSERT_TRUE(near);
    EXPECT_DOUBLE_EQ(near->standardError, 0.5);
    EXPECT_FALSE(near->beyondDoubt);
    const auto far = differenceOf(meanOf(6.0, 5, 0.3), meanOf(7.01, 5, 0.4), 0);
    ASSERT_TRUE(far);
    EXPECT_NEAR(far->difference, -1.01, 1e-12);
    EXPECT_TRUE(far->beyondDoubt);
}

TEST(Difference, NeedsThreeValuesOnBothSides) {
    EXPECT_FALSE(differenceOf(meanOf(9, 2, 0.1), meanOf(1, 9, 0.1), 0));
    EXPECT_FALSE(differenceOf(meanOf(9, 9, 0.1), meanOf(1, 1, std::nullopt), 0));
}

TEST(Difference, EqualMarksOnACoarseScaleAreNotCertain) {
    // Without spread the error is that of rounding: 1 / sqrt(12 * 3) on each side.
    const auto found = differenceOf(meanOf(2, 3, 0.0), meanOf(2.4, 3, 0.0), 1);
    ASSERT_TRUE(found);
    EXPECT_NEAR(found->standardError, std::sqrt(2.0 / 36.0), 1e-12);
    EXPECT_FALSE(found->beyondDoubt);
    EXPECT_TRUE(differenceOf(meanOf(2, 3, 0.0), meanOf(4, 3, 0.0), 1)->beyondDoubt);
    EXPECT_FALSE(differenceOf(meanOf(2, 3, 0.0), meanOf(4, 3, 0.0), 0)->beyondDoubt);
}

TEST(Difference, ScalesWithoutOrderHaveNone) {
    Trait trait;
    trait.scale = ScaleKind::nominal;
    EXPECT_FALSE(stepOf(trait));
    trait.scale = ScaleKind::ordinal;
    EXPECT_EQ(stepOf(trait), 1.0);
    trait.scale = ScaleKind::numeric;
    EXPECT_EQ(stepOf(trait), 0.0);
}

TEST(Comparison, KeepsFairAndUnfairScoresApart) {
    TastedOrchard orchard;
    const auto tree = TastedOrchard::treeOf(orchard.mother);
    orchard.bite(tree, 7, "2024-08-20", Origin::pickedRipe, "crisp, honey");
    orchard.bite(tree, 8, "2025-08-20", Origin::pickedRipe, "Honey; thin skin");
    orchard.bite(tree, 3, "2025-08-27", Origin::onGroundLonger, "flat");
    const auto comparison = compared(orchard, {orchard.mother.id});
    const ComparedGenotype& column = comparison.columns.front();
    ASSERT_TRUE(column.fairLiking);
    EXPECT_DOUBLE_EQ(column.fairLiking->mean, 7.5);
    EXPECT_DOUBLE_EQ(*column.fairLiking->standardError, 0.5);
    EXPECT_DOUBLE_EQ(column.anyLiking->mean, 6.0);
    EXPECT_EQ(column.fairGround.scores, 2);
    EXPECT_EQ(column.fairGround.cropYears, 2);
    EXPECT_EQ(column.fairGround.tasters, 1);
    EXPECT_EQ(column.anyGround.scores, 3);
    EXPECT_EQ(column.anyGround.sittings, 3);
    ASSERT_EQ(column.said.size(), 4U);
    EXPECT_EQ(column.said.front().words, "honey");
    EXPECT_EQ(column.said.front().times, 2);
}

TEST(Comparison, MeansTraitsWithTheirRange) {
    TastedOrchard orchard;
    const auto tree = TastedOrchard::treeOf(orchard.mother);
    orchard.measure(tree, "fruit_mass", 140, "2025-08-20");
    orchard.measure(tree, "fruit_mass", 160, "2025-08-27");
    orchard.measure(TastedOrchard::treeOf(orchard.father), "soluble_solids", 13, "2025-08-20");
    const auto comparison = compared(orchard, {orchard.mother.id, orchard.father.id});
    EXPECT_EQ(comparison.traits.size(), 2U); // those any column has
    const ComparedTrait& mass = comparison.columns.front().traits.front();
    EXPECT_DOUBLE_EQ(mass.mean, 150);
    EXPECT_DOUBLE_EQ(mass.lowest, 140);
    EXPECT_DOUBLE_EQ(mass.highest, 160);
    EXPECT_EQ(mass.count, 2);
    EXPECT_TRUE(mass.states.empty());
}

TEST(Comparison, ASouthernWindowRunsOnPastNewYear) {
    TastedOrchard orchard;
    orchard.moveToTheSouth();
    const auto tree = TastedOrchard::treeOf(orchard.mother);
    orchard.walk(tree, WalkMark::ripe, "2025-12-30");
    orchard.walk(tree, WalkMark::over, "2026-01-13");
    orchard.walk(tree, WalkMark::ripe, "2027-01-03");
    const auto comparison = compared(orchard, {orchard.mother.id});
    const ComparedSeason& season = comparison.columns.front().season;
    ASSERT_EQ(season.windows.size(), 2U);
    EXPECT_EQ(season.windows[0].cropYear, 2025);
    EXPECT_EQ(season.windows[0].firstRipe, 364);
    EXPECT_EQ(season.windows[0].over, 365 + 13);
    EXPECT_EQ(season.windows[1].cropYear, 2026);
    EXPECT_EQ(season.windows[1].firstRipe, 365 + 3);
    EXPECT_EQ(season.usualFirst, 366);
}

TEST(Comparison, TheMapAndCompareNameOneUsualDay) {
    TastedOrchard orchard;
    const auto tree = TastedOrchard::treeOf(orchard.mother);
    for (const char* day : {"2023-08-14", "2024-08-18", "2025-08-27", "2026-09-02"}) {
        orchard.walk(tree, WalkMark::ripe, day);
    }
    const auto comparison = compared(orchard, {orchard.mother.id});
    const ComparedGenotype& column = comparison.columns.front();
    ASSERT_TRUE(column.season.usualFirst);
    // The middle two are the 231st and the 239th day.
    EXPECT_EQ(column.season.usualFirst, 235);
    EXPECT_EQ(column.facts.usualRipeDay, column.season.usualFirst);
}

TEST(Comparison, TellsHowKeptFruitWasLiked) {
    TastedOrchard orchard;
    const auto tree = TastedOrchard::treeOf(orchard.mother);
    orchard.bite(tree, 8, "2025-08-20");
    orchard.keptBite(tree, 7, "2025-10-01", 42);
    orchard.keptBite(tree, 5, "2025-11-03", 75);
    const auto comparison = compared(orchard, {orchard.mother.id, orchard.father.id});
    const ComparedKeeping& keeping = comparison.columns.front().keeping;
    ASSERT_TRUE(keeping.liking);
    EXPECT_EQ(keeping.liking->count, 2);
    EXPECT_DOUBLE_EQ(keeping.liking->mean, 6.0);
    EXPECT_EQ(keeping.longestDays, 75);
    EXPECT_EQ(keeping.longestPath, StoragePath::cellar);
    EXPECT_FALSE(comparison.columns.back().keeping.liking);
    EXPECT_FALSE(comparison.columns.back().keeping.longestDays);
}

TEST(Comparison, WritesThePurdyLineOfNearAncestorsOnly) {
    TastedOrchard orchard;
    const auto child = orchard.seedling(orchard.row(1), 1, "AT17-001");
    const auto comparison = compared(orchard, {*child.genotype});
    EXPECT_EQ(comparison.columns.front().purdy, "Ash Tarn/Russet Moor");
}

TEST(BenchmarksNear, CountsTheShortWayOverNewYear) {
    TastedOrchard orchard;
    orchard.moveToTheSouth();
    orchard.walk(TastedOrchard::treeOf(orchard.mother), WalkMark::ripe, "2026-12-29");
    orchard.walk(TastedOrchard::treeOf(orchard.father), WalkMark::ripe, "2027-01-12");
    const auto view = orchard.view();
    const auto near = benchmarksNear(*view, *view->genotype(orchard.mother.id));
    ASSERT_EQ(near.size(), 1U);
    EXPECT_EQ(near.front().genotype, *view->genotype(orchard.father.id));
    EXPECT_EQ(near.front().daysLater, 14);
    EXPECT_TRUE(near.front().isWithinFortnight());
    const auto back = benchmarksNear(*view, *view->genotype(orchard.father.id));
    EXPECT_EQ(back.front().daysLater, -14);
}

TEST(BenchmarksNear, PutsUnknownSeasonsLast) {
    TastedOrchard orchard;
    const auto seedling = orchard.seedling(orchard.row(1), 1, "AT17-001");
    orchard.walk(seedling, WalkMark::ripe, "2026-08-20");
    orchard.walk(TastedOrchard::treeOf(orchard.father), WalkMark::ripe, "2026-09-10");
    const auto view = orchard.view();
    const auto near = benchmarksNear(*view, *view->genotype(*seedling.genotype));
    ASSERT_EQ(near.size(), 2U);
    EXPECT_EQ(near[0].genotype, *view->genotype(orchard.father.id));
    EXPECT_EQ(near[0].daysLater, 21);
    EXPECT_FALSE(near[0].isWithinFortnight());
    EXPECT_EQ(near[1].daysLater, std::nullopt);
    EXPECT_FALSE(near[1].isWithinFortnight());
}

} // namespace
} // namespace pipwright
