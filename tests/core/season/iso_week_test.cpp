#include "core/season/iso_week.h"
#include "tests/core/season/days.h"

namespace pipwright {
namespace {

TEST(IsoWeek, EachWeekHasSevenDaysFromItsMonday) {
    IsoWeek before = isoWeekOf(day("1899-12-31"));
    for (Date monday = day("1900-01-01"); monday < day("2101-01-01"); monday = monday.plusDays(7)) {
        const IsoWeek week = isoWeekOf(monday);
        ASSERT_EQ(firstDay(week), monday);
        for (int later = 1; later < 7; ++later) {
            ASSERT_EQ(isoWeekOf(monday.plusDays(later)), week) << monday.plusDays(later).iso();
        }
        ASSERT_LT(before, week);
        ASSERT_EQ(plusWeeks(before, 1), week);
        ASSERT_EQ(plusWeeks(week, -1), before);
        ASSERT_EQ(weeksBetween(before, week), 1);
        ASSERT_EQ(isoWeekFromLabel(label(week)), week);
        const bool newYear = week.year != before.year;
        ASSERT_EQ(week.week, newYear ? 1 : before.week + 1);
        ASSERT_TRUE(!newYear || before.week == weeksIn(before.year));
        before = week;
    }
}

TEST(IsoWeek, StepsOverYearsOf53Weeks) {
    EXPECT_EQ(plusWeeks({2026, 53}, 1), (IsoWeek{2027, 1}));
    EXPECT_EQ(plusWeeks({2025, 52}, 1), (IsoWeek{2026, 1}));
    EXPECT_EQ(weeksBetween({2026, 1}, {2027, 1}), 53);
    EXPECT_EQ(weeksBetween({2027, 1}, {2026, 1}), -53);
}

TEST(IsoWeek, ReadsItsLabelOnly) {
    EXPECT_EQ(label({2026, 34}), "2026-W34");
    EXPECT_EQ(label({2026, 3}), "2026-W03");
    EXPECT_EQ(isoWeekFromLabel("2026-w34"), (IsoWeek{2026, 34}));
    for (const char* wrong :
         {"2026-W00", "2025-W53", "2026-W54", "2026W34", "2026-W3", "2026-W3a", ""}) {
        EXPECT_EQ(isoWeekFromLabel(wrong), std::nullopt) << wrong;
    }
}

TEST(IsoWeek, HoldsAtTheEdgesOfTheCalendar) {
    EXPECT_EQ(isoWeekOf(day("9999-12-31")), (IsoWeek{9999, 52}));
    EXPECT_EQ(weeksIn(9999), 52);
    EXPECT_EQ(isoWeekOf(day("0000-01-01")), (IsoWeek{-1, 52}));
}

} // namespace
} // namespace pipwright
