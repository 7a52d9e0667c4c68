#include "core/season/crop_day.h"
#include "tests/core/season/days.h"

namespace pipwright {
namespace {

TEST(CropDay, BeginsInJanuaryOrInJuly) {
    EXPECT_EQ(dayOfCrop(day("2026-01-01"), {2026}, SeasonSide::northern), 1);
    EXPECT_EQ(dayOfCrop(day("2025-07-01"), {2025}, SeasonSide::southern), 1);
    EXPECT_EQ(dayOfCrop(day("2025-06-30"), {2025}, SeasonSide::southern), 0);
}

TEST(CropDay, GoesOnAcrossNewYear) {
    EXPECT_EQ(dayOfCrop(day("2024-02-20"), {2023}, SeasonSide::southern), 235);
    EXPECT_EQ(dayOfCrop(day("2027-01-10"), {2026}, SeasonSide::northern), 375)
        << "a keeper from the cellar";
}

TEST(CropDay, ReadsBack) {
    for (const SeasonSide side : {SeasonSide::northern, SeasonSide::southern}) {
        for (int number = -40; number < 420; ++number) {
            const Date date = dateOfCropDay(number, {2023}, side);
            EXPECT_EQ(dayOfCrop(date, {2023}, side), number);
        }
    }
}

} // namespace
} // namespace pipwright
