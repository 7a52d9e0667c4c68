#include "tests/core/season/days.h"

namespace pipwright {
namespace {

TEST(Date, KnowsWhichDaysExist) {
    EXPECT_TRUE(Date::of(2024, 2, 29));
    EXPECT_FALSE(Date::of(2026, 2, 29));
    EXPECT_FALSE(Date::of(1900, 2, 29)) << "a century is no leap year";
    EXPECT_TRUE(Date::of(2000, 2, 29)) << "but every fourth is";
    EXPECT_FALSE(Date::of(2026, 4, 31));
    EXPECT_FALSE(Date::of(2026, 0, 1));
    EXPECT_FALSE(Date::of(2026, 13, 1));
    EXPECT_FALSE(Date::of(10000, 1, 1));
    EXPECT_FALSE(Date::of(-1, 1, 1));
}

TEST(Date, ReadsOnlyTheIsoForm) {
    EXPECT_EQ(Date::fromIso("2026-08-22"), Date::of(2026, 8, 22));
    for (const char* wrong : {"", "2026-8-22", "22.8.2026", "2026-08-32", "2026-08-2a",
                              "2026/08/22", "2026-08-22 ", "-026-08-22"}) {
        EXPECT_EQ(Date::fromIso(wrong), std::nullopt) << wrong;
    }
}

TEST(Date, EveryDayOfFourHundredYearsReadsBack) {
    Date before = day("1799-12-31");
    for (Date date = day("1800-01-01"); date <= day("2200-12-31"); date = date.plusDays(1)) {
        ASSERT_EQ(Date::fromIso(date.iso()), date);
        ASSERT_EQ(Date::of(date.year(), date.month(), date.day()), date);
        ASSERT_EQ(daysBetween(before, date), 1);
        const bool newYear = date.month() == 1 && date.day() == 1;
        ASSERT_EQ(date.dayOfYear(), newYear ? 1 : before.dayOfYear() + 1) << date.iso();
        before = date;
    }
}

TEST(Date, CountsDaysAcrossNewYear) {
    EXPECT_EQ(daysBetween(day("2023-10-05"), day("2024-02-20")), 138);
    EXPECT_EQ(daysBetween(day("2024-02-20"), day("2023-10-05")), -138);
    EXPECT_EQ(day("2026-12-31").plusDays(1), day("2027-01-01"));
    EXPECT_EQ(Date{}.iso(), "1970-01-01");
    EXPECT_EQ(day("1969-12-31").days(), -1);
}

} // namespace
} // namespace pipwright
