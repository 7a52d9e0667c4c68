#include "core/season/inexact_date.h"
#include "core/season/relative_days.h"
#include "tests/core/season/days.h"

#include <string>

namespace pipwright {
namespace {

/// What was understood on Saturday, 22 August 2026.
std::string onSaturday(std::string_view typed) {
    const auto date = readInexactDate(typed, *Date::of(2026, 8, 22));
    if (!date) {
        return "refused";
    }
    return date->isOneDay() ? date->from.iso() : date->from.iso() + ".." + date->to.iso();
}

TEST(RelativeDays, NameAWeekdayInThreeLanguages) {
    for (const auto* typed : {"last tue", "Last Tuesday", "tuesday", "Tue", "tues.", "on tuesday",
                              "letzten Dienstag", "am Dienstag", "mardi dernier", "mardi"}) {
        EXPECT_EQ(onSaturday(typed), "2026-08-18") << typed;
    }
    EXPECT_EQ(onSaturday("last sunday"), "2026-08-16");
    EXPECT_EQ(onSaturday("fri"), "2026-08-21");
    // Today itself, unless the last one is meant.
    EXPECT_EQ(onSaturday("saturday"), "2026-08-22");
    EXPECT_EQ(onSaturday("last saturday"), "2026-08-15");
}

TEST(RelativeDays, CountBackFromToday) {
    EXPECT_EQ(onSaturday("today"), "2026-08-22");
    EXPECT_EQ(onSaturday("Gestern"), "2026-08-21");
    EXPECT_EQ(onSaturday("day before yesterday"), "2026-08-20");
    EXPECT_EQ(onSaturday("the day before yesterday"), "2026-08-20");
    EXPECT_EQ(onSaturday("3 days ago"), "2026-08-19");
    EXPECT_EQ(onSaturday("vor 3 Tagen"), "2026-08-19");
    EXPECT_EQ(onSaturday("il y a 2 semaines"), "2026-08-08");
    EXPECT_EQ(onSaturday("a week ago"), "2026-08-15");
    EXPECT_EQ(onSaturday("last week"), "2026-08-10..2026-08-16");
    EXPECT_EQ(onSaturday("last wed to yesterday"), "2026-08-19..2026-08-21");
    EXPECT_EQ(onSaturday("about last tuesday"), "2026-08-15..2026-08-21");
}

TEST(RelativeDays, LeaveOtherDatesAlone) {
    EXPECT_EQ(onSaturday("22 Aug"), "2026-08-22");
    EXPECT_EQ(onSaturday("mar"), "2026-03-01..2026-03-31");
    EXPECT_EQ(onSaturday("last week of August"), "2026-08-25..2026-08-31");
    EXPECT_EQ(onSaturday("mid August"), "2026-08-11..2026-08-20");
    for (const auto* typed : {"last", "last pear", "3 days", "tu", "99999 days ago", "ago"}) {
        EXPECT_EQ(onSaturday(typed), "refused") << typed;
        EXPECT_EQ(withRelativeDays(typed, *Date::of(2026, 8, 22)), typed);
    }
}

TEST(RelativeDays, AreKeptAsTheDateTheyStoodFor) {
    const auto date = readInexactDate("last tue", *Date::of(2026, 8, 22));
    ASSERT_TRUE(date);
    EXPECT_EQ(date->typed, "2026-08-18");
    const auto plain = readInexactDate("late August", *Date::of(2026, 8, 22));
    ASSERT_TRUE(plain);
    EXPECT_EQ(plain->typed, "late August");
}

TEST(RelativeDays, CrossTheYear) {
    const auto date = readInexactDate("last friday", *Date::of(2027, 1, 1)); // a Friday itself
    ASSERT_TRUE(date);
    EXPECT_EQ(date->from, *Date::of(2026, 12, 25));
}

} // namespace
} // namespace pipwright
