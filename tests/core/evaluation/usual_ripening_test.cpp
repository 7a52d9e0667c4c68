#include "core/evaluation/usual_ripening.h"

#include <gtest/gtest.h>

namespace pipwright {
namespace {

TEST(UsualRipening, CountsDaysFromTheNewYearOfTheCrop) {
    EXPECT_EQ(dayOfCropYear(2026, Date::of(2026, 1, 1)), 1);
    EXPECT_EQ(dayOfCropYear(2026, Date::of(2026, 8, 20)), 232);
    EXPECT_EQ(dayOfCropYear(2025, Date::of(2026, 2, 10)), 365 + 41); // a southern season
    EXPECT_EQ(dayOfCropYear(2026, std::nullopt), std::nullopt);
}

TEST(UsualRipening, TakesTheMiddleDay) {
    EXPECT_EQ(medianDay({}), std::nullopt);
    EXPECT_EQ(medianDay({240}), 240);
    EXPECT_EQ(medianDay({250, 230, 233}), 233);
    EXPECT_EQ(medianDay({250, 230, 233, 236}), 234); // 234.5 rounded down
}

TEST(UsualRipening, NamesDayAndWeekInTheSameCalendar) {
    // 20 August 2026 is a Thursday of week 34; 24 August is the Monday of week 35.
    EXPECT_EQ(dateInCalendar(232, 2026), Date::of(2026, 8, 20));
    EXPECT_EQ(harvestWeekIn(232, 2026), 34);
    EXPECT_EQ(harvestWeekIn(236, 2026), 35);
    // The same day of the crop year in another calendar: 24 August 2025 is a Sunday of week 34.
    EXPECT_EQ(harvestWeekIn(236, 2025), 34);
    // 2 January 2027 still lies in week 53 of 2026.
    EXPECT_EQ(harvestWeekIn(367, 2026), 53);
}

} // namespace
} // namespace pipwright
