#include "core/season/season_interval.h"
#include "tests/core/season/days.h"

#include <random>

namespace pipwright {
namespace {

using enum SeasonSide;

CalendarDay on(unsigned month, unsigned number) {
    return CalendarDay::of(month, number).value();
}

SeasonInterval fromTo(CalendarDay first, CalendarDay last) {
    return SeasonInterval::of(first, last);
}

TEST(CalendarDay, HasTheDaysOfALeapYear) {
    EXPECT_TRUE(CalendarDay::of(2, 29));
    EXPECT_FALSE(CalendarDay::of(2, 30));
    EXPECT_FALSE(CalendarDay::of(13, 1));
    EXPECT_LT(on(8, 22), on(9, 1));
}

TEST(SeasonInterval, EmptyAndWholeAreDefined) {
    const auto empty = SeasonInterval::empty();
    const auto whole = SeasonInterval::whole();
    for (Date date = day("2023-12-31"); date <= day("2025-01-01"); date = date.plusDays(1)) {
        EXPECT_FALSE(empty.contains(date));
        EXPECT_TRUE(whole.contains(date));
    }
    EXPECT_TRUE(empty.isEmpty());
    EXPECT_TRUE(whole.isWhole());
    EXPECT_EQ(empty.first(), std::nullopt);
    EXPECT_EQ(whole.first(), on(1, 1));
    EXPECT_EQ(whole.last(), on(12, 31));
    EXPECT_EQ(fromTo(on(8, 22), on(8, 21)), whole);
    EXPECT_FALSE(fromTo(on(8, 22), on(8, 22)).isWhole()) << "one day";
    EXPECT_FALSE(whole.crossesNewYear());
    EXPECT_FALSE(empty.meets(whole));
    EXPECT_TRUE(whole.meets(fromTo(on(2, 29), on(2, 29))));
}

TEST(SeasonInterval, MayCrossNewYear) {
    const auto interval = fromTo(on(12, 15), on(1, 10));
    EXPECT_TRUE(interval.crossesNewYear());
    EXPECT_TRUE(interval.contains(day("2025-12-15")));
    EXPECT_TRUE(interval.contains(day("2026-01-10")));
    EXPECT_FALSE(interval.contains(day("2026-01-11")));
    EXPECT_FALSE(interval.contains(day("2025-12-14")));
    EXPECT_EQ(interval.last(), on(1, 10));
}

TEST(SeasonInterval, LiesInTheRightYearOfACrop) {
    const auto summer = fromTo(on(8, 15), on(8, 28));
    EXPECT_EQ(summer.inCrop({2026}, northern), DaySpan::of(day("2026-08-15"), day("2026-08-28")));
    const auto newYear = fromTo(on(12, 25), on(1, 5));
    EXPECT_EQ(newYear.inCrop({2025}, southern), DaySpan::of(day("2025-12-25"), day("2026-01-05")));
    const auto february = fromTo(on(2, 10), on(2, 20));
    EXPECT_EQ(february.inCrop({2025}, southern), DaySpan::of(day("2026-02-10"), day("2026-02-20")));
    EXPECT_EQ(february.inCrop({2026}, northern), DaySpan::of(day("2027-02-10"), day("2027-02-20")));
    EXPECT_EQ(SeasonInterval::whole().inCrop({2026}, northern), fruitDaysOf({2026}, northern));
    EXPECT_EQ(SeasonInterval::empty().inCrop({2026}, northern), std::nullopt);
}

TEST(SeasonInterval, MindsTheLeapDay) {
    const auto toLeapDay = fromTo(on(2, 20), on(2, 29));
    EXPECT_EQ(toLeapDay.inCrop({2023}, southern)->last, day("2024-02-29"));
    EXPECT_EQ(toLeapDay.inCrop({2024}, southern)->last, day("2025-02-28"));
    const auto fromLeapDay = fromTo(on(2, 29), on(3, 5));
    EXPECT_EQ(fromLeapDay.inCrop({2024}, southern)->first, day("2025-03-01"));
    const auto leapDay = fromTo(on(2, 29), on(2, 29));
    EXPECT_EQ(leapDay.inCrop({2023}, southern)->dayCount(), 1);
    EXPECT_EQ(leapDay.inCrop({2024}, southern), std::nullopt);
}

TEST(SeasonInterval, MeetsWhenADayIsShared) {
    const std::uint64_t seed = 1968;
    SCOPED_TRACE("seed " + std::to_string(seed));
    std::mt19937_64 random{seed};
    const auto anyDay = [&] {
        return CalendarDay::ofDate(day("2000-01-01").plusDays(static_cast<int>(random() % 366)));
    };
    for (int round = 0; round < 500; ++round) {
        const auto one = fromTo(anyDay(), anyDay());
        const auto other = fromTo(anyDay(), anyDay());
        bool shared = false;
        int held = 0;
        for (Date date = day("2000-01-01"); date.year() == 2000; date = date.plusDays(1)) {
            shared = shared || (one.contains(date) && other.contains(date));
            held += one.contains(date) ? 1 : 0;
        }
        EXPECT_EQ(one.meets(other), shared);
        EXPECT_EQ(other.meets(one), shared);
        EXPECT_EQ(fromTo(*one.first(), *one.last()), one);
        // In a crop that has the leap day, the dated span has as many days as the interval.
        const auto span = one.inCrop({1999}, southern);
        const bool inLeapYear = span && (span->last < day("2000-09-30"));
        EXPECT_TRUE(!inLeapYear || span->dayCount() == held);
    }
}

TEST(DaySpan, SharesDaysWithAnother) {
    const auto span = DaySpan::of(day("2026-12-20"), day("2027-01-10")).value();
    EXPECT_EQ(span.dayCount(), 22);
    EXPECT_TRUE(span.contains(day("2027-01-01")));
    EXPECT_EQ(DaySpan::of(day("2027-01-01"), day("2026-01-01")), std::nullopt);
    const DaySpan later{day("2027-01-10"), day("2027-02-01")};
    EXPECT_EQ(span.sharedWith(later), (DaySpan{day("2027-01-10"), day("2027-01-10")}));
    EXPECT_EQ(span.sharedWith({day("2027-01-11"), day("2027-02-01")}), std::nullopt);
}

} // namespace
} // namespace pipwright
