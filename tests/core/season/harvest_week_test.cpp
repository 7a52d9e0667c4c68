#include "core/season/harvest_week.h"
#include "tests/core/season/days.h"

#include <algorithm>
#include <set>

namespace pipwright {
namespace {

using enum SeasonSide;

TEST(HarvestWeek, SouthernWeeksAreInOrderAcrossNewYear) {
    const CropYear crop{2025};
    std::vector<HarvestWeek> weeks = {
        harvestWeekOf(day("2026-02-20"), crop), harvestWeekOf(day("2025-12-10"), crop),
        harvestWeekOf(day("2026-01-01"), crop), harvestWeekOf(day("2024-12-30"), CropYear{2024})};
    std::sort(weeks.begin(), weeks.end());
    std::vector<std::string> labels;
    for (const HarvestWeek& week : weeks) {
        labels.push_back(label(week, southern));
    }
    EXPECT_EQ(labels, (std::vector<std::string>{"2024/25 W01", "2025/26 W50", "2025/26 W01",
                                                "2025/26 W08"}));
}

TEST(HarvestWeek, NorthernLabelsNameTheCropOnlyWhenTheYearDiffers) {
    EXPECT_EQ(label(harvestWeekOf(day("2026-08-22"), {2026}), northern), "2026-W34");
    EXPECT_EQ(label(harvestWeekOf(day("2027-01-20"), {2026}), northern), "2026 crop, 2027-W03");
}

TEST(HarvestWeek, EveryWeekBelongsToOneCrop) {
    for (const SeasonSide side : {northern, southern}) {
        IsoWeek last = weeksOf({1989}, side).back();
        for (int year = 1990; year < 2060; ++year) {
            const auto weeks = weeksOf({year}, side);
            ASSERT_TRUE(weeks.size() == 52 || weeks.size() == 53) << year;
            ASSERT_EQ(plusWeeks(last, 1), weeks.front()) << year;
            for (std::size_t i = 1; i < weeks.size(); ++i) {
                ASSERT_EQ(plusWeeks(weeks[i - 1], 1), weeks[i]);
            }
            last = weeks.back();
        }
    }
}

TEST(HarvestWeek, Week53HasItsOwnPlaceBeforeWeek1) {
    for (const SeasonSide side : {northern, southern}) {
        std::set<int> places;
        for (int week = 1; week <= 53; ++week) {
            const int place = seasonPlace(week, side);
            EXPECT_EQ(weekNumberAt(place, side), week);
            places.insert(place);
        }
        EXPECT_EQ(places.size(), 53U);
        EXPECT_EQ(*places.begin(), 0);
        EXPECT_EQ(*places.rbegin(), kSeasonPlaces - 1);
        EXPECT_EQ(seasonPlace(53, side) + 1, seasonPlace(1, side));
    }
    EXPECT_EQ(seasonPlace(14, northern), 0);
    EXPECT_EQ(seasonPlace(40, southern), 0);
}

TEST(HarvestWeek, PlacesFollowTheOrderOfTimeWithinACrop) {
    // The first and last week of a crop may share their number's place with the other end.
    for (const SeasonSide side : {northern, southern}) {
        for (int year = 1990; year < 2060; ++year) {
            const auto weeks = weeksOf({year}, side);
            for (std::size_t i = 2; i + 1 < weeks.size(); ++i) {
                EXPECT_LT(seasonPlace(weeks[i - 1].week, side), seasonPlace(weeks[i].week, side))
                    << label(weeks[i]);
            }
        }
    }
}

} // namespace
} // namespace pipwright
