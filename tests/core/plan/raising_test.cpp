#include "core/plan/raising.h"
#include "tests/support/small_orchard.h"

#include <gtest/gtest.h>

namespace pipwright {
namespace {

TEST(CountedPart, LiesBetweenItsBounds) {
    const auto half = countedPart(50, 100);
    ASSERT_TRUE(half);
    EXPECT_DOUBLE_EQ(half->part, 0.5);
    // The bounds from the qbeta of R, for 50.5 and 50.5.
    EXPECT_NEAR(half->low, 0.403174, 1e-6);
    EXPECT_NEAR(half->high, 0.596826, 1e-6);
    EXPECT_EQ(countedPart(0, 10)->low, 0);
    EXPECT_EQ(countedPart(10, 10)->high, 1);
    EXPECT_FALSE(countedPart(0, 0));
    EXPECT_FALSE(countedPart(3, 2));
    EXPECT_FALSE(countedPart(-1, 2));
}

TEST(RaisingRecord, CountsOnlyWhatWasCountedOnBothSides) {
    test::SmallOrchard orchard;
    const auto add = [&](std::optional<std::int64_t> sown, std::optional<std::int64_t> germinated,
                         std::optional<std::int64_t> planted, const char* species) {
        Cross cross;
        cross.id = CrossId(orchard.ids.make());
        cross.code = "X";
        cross.species = shippedSpeciesId(species);
        cross.seedsSown = sown;
        cross.germinated = germinated;
        cross.planted = planted;
        ChangeSet set;
        set.sentence = "Cross";
        set.create(cross);
        orchard.apply(set);
    };
    add(100, 60, 50, "apple");
    add(40, 20, std::nullopt, "apple");
    add(80, std::nullopt, 30, "apple");
    add(10, 20, 15, "apple"); // more than were sown: only what lived of them tells
    add(1000, 1, 0, "pear");
    const auto record = raisingRecordOf(*orchard.view(), shippedSpeciesId("apple"));
    ASSERT_TRUE(record.germination);
    EXPECT_EQ(record.germination->counted, 80);
    EXPECT_EQ(record.germination->of, 140);
    ASSERT_TRUE(record.survival);
    EXPECT_EQ(record.survival->counted, 65);
    EXPECT_EQ(record.survival->of, 80);
    EXPECT_EQ(record.crosses, 3);
    EXPECT_FALSE(raisingRecordOf(*orchard.view(), shippedSpeciesId("quince")).germination);
}

TEST(RaisingAdvice, CountsBackFromTheGoal) {
    RaisingRecord record;
    record.germination = countedPart(70, 100);
    record.survival = countedPart(90, 100);
    const auto advice = raisingAdvice(10, {1, 0, 0}, record, 0.95);
    ASSERT_TRUE(advice.ok());
    EXPECT_DOUBLE_EQ(advice->wantedShare, 0.5);
    EXPECT_EQ(advice->seedlings, 28);
    EXPECT_EQ(advice->seeds, 47); // q = 0.5 x 0.7 x 0.9
    EXPECT_LT(*advice->seedsAtBest, 47);
    EXPECT_GT(*advice->seedsAtWorst, 47);
}

TEST(RaisingAdvice, DoesNotGuessWhatWasNeverCounted) {
    const auto advice = raisingAdvice(1, {0, 0, 1}, {}, 0.95);
    ASSERT_TRUE(advice.ok());
    EXPECT_EQ(advice->seedlings, 11);
    EXPECT_FALSE(advice->seeds);
    RaisingRecord none;
    none.germination = countedPart(0, 8);
    const auto hopeless = raisingAdvice(1, {1, 0, 0}, none, 0.95);
    ASSERT_TRUE(hopeless.ok());
    EXPECT_FALSE(hopeless->seeds);
    EXPECT_FALSE(hopeless->seedsAtWorst);
    EXPECT_TRUE(hopeless->seedsAtBest);
}

TEST(WantedGenes, MultiplyTheirShares) {
    const auto shareOf = [](const WantedGenes& genes) {
        return wantedClasses(genes).value().front().share;
    };
    EXPECT_DOUBLE_EQ(shareOf({0, 0, 0}), 1);
    EXPECT_DOUBLE_EQ(shareOf({2, 0, 0}), 1 / 4.);
    EXPECT_DOUBLE_EQ(shareOf({1, 1, 1}), 3 / 32.);
    EXPECT_FALSE(wantedClasses({-1, 0, 0}).ok());
    EXPECT_FALSE(wantedClasses({9, 0, 0}).ok());
    EXPECT_FALSE(raisingAdvice(0, {1, 0, 0}, {}, 1.0).ok());
}

} // namespace
} // namespace pipwright
