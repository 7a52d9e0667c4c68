#include "core/season/crop_season.h"
#include "tests/core/season/days.h"

namespace pipwright {
namespace {

using enum SeasonSide;
using enum CropRecord;

int proposed(const char* iso, SeasonSide side, CropRecord about) {
    return proposedCropYear(day(iso), side, about).year;
}

TEST(CropSeason, NorthernFruitBelongsToItsYearUntilTheCellarIsEmpty) {
    EXPECT_EQ(proposed("2026-08-22", northern, fruit), 2026);
    EXPECT_EQ(proposed("2026-12-31", northern, fruit), 2026);
    EXPECT_EQ(proposed("2027-01-01", northern, fruit), 2026) << "tasted from the cellar";
    EXPECT_EQ(proposed("2027-03-31", northern, fruit), 2026);
    EXPECT_EQ(proposed("2027-04-01", northern, fruit), 2027);
    EXPECT_EQ(proposed("2027-03-20", northern, flower), 2027) << "an early bloom";
}

TEST(CropSeason, SouthernHarvestBelongsToTheBloomBeforeNewYear) {
    EXPECT_EQ(proposed("2025-09-28", southern, flower), 2025);
    EXPECT_EQ(proposed("2025-12-10", southern, fruit), 2025);
    EXPECT_EQ(proposed("2026-02-20", southern, fruit), 2025);
    EXPECT_EQ(proposed("2026-05-30", southern, fruit), 2025);
    EXPECT_EQ(proposed("2026-08-15", southern, fruit), 2025) << "a keeper in winter";
    EXPECT_EQ(proposed("2026-09-30", southern, fruit), 2025);
    EXPECT_EQ(proposed("2026-10-01", southern, fruit), 2026);
}

TEST(CropSeason, FruitDaysAreExactlyThoseTheProposalGives) {
    for (const SeasonSide side : {northern, southern}) {
        for (Date date = day("1999-01-01"); date < day("2030-01-01"); date = date.plusDays(1)) {
            const CropYear crop = proposedCropYear(date, side, fruit);
            ASSERT_TRUE(fruitDaysOf(crop, side).contains(date)) << date.iso();
            ASSERT_FALSE(fruitDaysOf({crop.year - 1}, side).contains(date)) << date.iso();
            ASSERT_FALSE(fruitDaysOf({crop.year + 1}, side).contains(date)) << date.iso();
        }
    }
}

TEST(CropSeason, LabelsReadBack) {
    EXPECT_EQ(label(CropYear{2026}, northern), "2026");
    EXPECT_EQ(label(CropYear{2025}, southern), "2025/26");
    EXPECT_EQ(label(CropYear{1999}, southern), "1999/00");
    for (int year = 1950; year < 2110; ++year) {
        for (const SeasonSide side : {northern, southern}) {
            const auto read = readCropYear(label(CropYear{year}, side));
            ASSERT_TRUE(read.ok());
            EXPECT_EQ(*read, CropYear{year});
        }
    }
    EXPECT_EQ(*readCropYear(" 2025/2026 "), CropYear{2025});
}

TEST(CropSeason, RefusesWhatIsNoCropYear) {
    for (const char* wrong : {"", "26", "2025/27", "2025/6", "2025/26/27", "2026-08", "/26", "202x",
                              "2025/", "2025/2025"}) {
        const auto read = readCropYear(wrong);
        ASSERT_FALSE(read.ok()) << wrong;
        EXPECT_FALSE(read.problem().remedy.empty());
    }
}

} // namespace
} // namespace pipwright
