#include "core/orchard/storage_path.h"
#include "core/orchard/typed_score.h"

#include <gtest/gtest.h>

namespace pipwright {
namespace {

TEST(StoragePathReading, ReadsPlacesAndDays) {
    const auto fridge = readStoragePath(" F5 ");
    ASSERT_TRUE(fridge);
    EXPECT_EQ(fridge->path, StoragePath::fridge);
    EXPECT_EQ(fridge->daysInFridge, 5);
    EXPECT_FALSE(fridge->daysOnCounter);
    EXPECT_EQ(fridge->typed, "F5");

    const auto chain = readStoragePath("f14c3");
    ASSERT_TRUE(chain);
    EXPECT_EQ(chain->path, StoragePath::chained);
    EXPECT_EQ(chain->daysInFridge, 14);
    EXPECT_EQ(chain->daysOnCounter, 3);

    const auto again = readStoragePath("c1 f5 c2");
    ASSERT_TRUE(again);
    EXPECT_EQ(again->daysOnCounter, 3);
    EXPECT_EQ(again->path, StoragePath::chained);
}

TEST(StoragePathReading, KnowsNothingUnknownAndStraightOffTheTree) {
    for (const auto* typed : {"", "?", "  "}) {
        const auto path = readStoragePath(typed);
        ASSERT_TRUE(path);
        EXPECT_EQ(path->path, StoragePath::unknown);
    }
    EXPECT_EQ(readStoragePath("0")->path, StoragePath::none);
    const auto dayless = readStoragePath("l");
    ASSERT_TRUE(dayless);
    EXPECT_EQ(dayless->path, StoragePath::cellar);
    EXPECT_FALSE(dayless->daysInCellar);
}

TEST(StoragePathReading, RefusesWithARemedy) {
    for (const auto* typed : {"5", "x3", "f1000", "f5q", "-", "f-3", "f2.5"}) {
        const auto path = readStoragePath(typed);
        ASSERT_FALSE(path) << typed;
        EXPECT_FALSE(path.problem().remedy.empty());
    }
}

TEST(StoragePathReading, WritesWhatItReads) {
    for (const auto* typed : {"0", "c2", "f14c3", "l60c1", "f"}) {
        auto path = *readStoragePath(typed);
        path.typed.clear();
        EXPECT_EQ(storagePathText(path), typed);
    }
}

TEST(TypedScoreReading, ReadsLikingVerdictAndWords) {
    const auto whole = readTypedScore("7.5 ++ crisp, sharp");
    ASSERT_TRUE(whole);
    EXPECT_EQ(whole->liking, 7.5);
    EXPECT_EQ(whole->verdict, Verdict::backUpNow);
    EXPECT_EQ(whole->words, "crisp, sharp");
    for (const auto* half : {"7h", "7,5", "7½", "7.5,", "7.50"}) {
        ASSERT_TRUE(readTypedScore(half)) << half;
        EXPECT_EQ(readTypedScore(half)->liking, 7.5) << half;
    }
    EXPECT_EQ(readTypedScore("9")->liking, 9);
    EXPECT_EQ(readTypedScore("spat it out")->words, "spat it out");
    EXPECT_EQ(readTypedScore("x")->verdict, Verdict::cull);
    EXPECT_TRUE(readTypedScore("  ")->empty());
    EXPECT_EQ(readTypedScore("-sharp")->words, "-sharp"); // a mark stands alone
}

TEST(TypedScoreReading, RefusesWhatIsOutsideTheScale) {
    for (const auto* typed : {"0", "0.5", "9.5", "9h", "11", "7.3", "99999", "7x"}) {
        const auto score = readTypedScore(typed);
        ASSERT_FALSE(score) << typed;
        EXPECT_NE(score.problem().remedy.find("1 to 9"), std::string::npos);
    }
}

TEST(TypedScoreReading, WritesWhatItReads) {
    for (const auto* typed : {"7", "7.5 + crisp", "P", "2 x", "no words on it"}) {
        EXPECT_EQ(typedText(*readTypedScore(typed)), typed);
    }
}

} // namespace
} // namespace pipwright
