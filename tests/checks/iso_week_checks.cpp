#include "core/season/date.h"
#include "core/season/iso_week.h"

#include <gtest/gtest.h>
#include <vector>

// ISO 8601 week dates. Values computed with R 4.2.2, format(date, "%G-W%V-%u"); the rule of the
// standard is that a week belongs to the year of its Thursday.

namespace pipwright {
namespace {

struct WeekDate {
    const char* date;
    const char* week;
    int weekday; // 1 for Monday
};

TEST(IsoWeekCheck, DaysAroundNewYear) {
    for (const WeekDate& known : std::vector<WeekDate>{{"2005-01-01", "2004-W53", 6},
                                                       {"2006-01-01", "2005-W52", 7},
                                                       {"2007-12-31", "2008-W01", 1},
                                                       {"2008-12-29", "2009-W01", 1},
                                                       {"2010-01-03", "2009-W53", 7},
                                                       {"2016-01-01", "2015-W53", 5},
                                                       {"2018-12-31", "2019-W01", 1},
                                                       {"2021-01-03", "2020-W53", 7},
                                                       {"2024-02-29", "2024-W09", 4},
                                                       {"2024-12-30", "2025-W01", 1},
                                                       {"2026-12-31", "2026-W53", 4},
                                                       {"2027-01-03", "2026-W53", 7}}) {
        const Date date = Date::fromIso(known.date).value();
        const IsoWeek week = isoWeekOf(date);
        EXPECT_EQ(label(week), known.week) << known.date;
        EXPECT_EQ(daysBetween(firstDay(week), date) + 1, known.weekday) << known.date;
    }
}

TEST(IsoWeekCheck, YearsOf53Weeks) {
    std::vector<int> years;
    for (int year = 2000; year <= 2050; ++year) {
        if (weeksIn(year) == 53) {
            years.push_back(year);
        } else {
            EXPECT_EQ(weeksIn(year), 52) << year;
        }
    }
    EXPECT_EQ(years, (std::vector<int>{2004, 2009, 2015, 2020, 2026, 2032, 2037, 2043, 2048}));
}

// Day of the year and days after full bloom: R 4.2.2, as.POSIXlt(date)$yday + 1 and as.Date
// differences; the second harvest crosses New Year.
TEST(IsoWeekCheck, DaysOfTheYearAndAfterBloom) {
    const auto day = [](const char* iso) { return Date::fromIso(iso).value(); };
    EXPECT_EQ(day("2024-02-29").dayOfYear(), 60);
    EXPECT_EQ(day("2024-12-31").dayOfYear(), 366);
    EXPECT_EQ(day("2026-12-31").dayOfYear(), 365);
    EXPECT_EQ(daysBetween(day("2024-04-20"), day("2024-09-15")), 148);
    EXPECT_EQ(daysBetween(day("2023-10-05"), day("2024-02-20")), 138);
}

} // namespace
} // namespace pipwright
