#include "core/season/inexact_date.h"
#include "tests/core/season/days.h"

#include <random>
#include <string>
#include <vector>

namespace pipwright {
namespace {

/// "from..to", or "refused: " and what was said.
std::string read(std::string_view typed, std::optional<int> yearMeant = std::nullopt) {
    const auto date = readInexactDate(typed, yearMeant);
    if (!date) {
        return "refused: " + date.problem().sentence();
    }
    EXPECT_EQ(date->typed, typed);
    return date->isOneDay() ? date->from.iso() : date->from.iso() + ".." + date->to.iso();
}

TEST(InexactDate, ReadsDays) {
    for (const char* typed : {"2026-08-22",
                              "2026-8-22",
                              "2026/8/22",
                              "22.8.2026",
                              "22.08.2026",
                              "22. 8. 2026",
                              "22 August 2026",
                              "22 Aug 2026",
                              "Aug 22, 2026",
                              "August 22nd 2026",
                              "22nd of August, 2026",
                              "the 22nd of August 2026",
                              "22-Aug-2026",
                              "22. August 2026",
                              "2026 Aug 22",
                              "22/8/2026",
                              "8/22/2026",
                              "22-8-2026",
                              "22 août 2026",
                              " 22 AUGUST 2026 "}) {
        EXPECT_EQ(read(typed), "2026-08-22") << typed;
    }
    EXPECT_EQ(read("8/8/2026"), "2026-08-08") << "the same either way";
    EXPECT_EQ(read("3.8.2026"), "2026-08-03") << "with points the day stands first";
    EXPECT_EQ(read("1. März 2026"), "2026-03-01");
    EXPECT_EQ(read("1er juillet 2026"), "2026-07-01");
    EXPECT_EQ(read("29 Feb 2024"), "2024-02-29");
}

TEST(InexactDate, ReadsMonthsAndYears) {
    EXPECT_EQ(read("August 2026"), "2026-08-01..2026-08-31");
    EXPECT_EQ(read("Aug. 2026"), "2026-08-01..2026-08-31");
    EXPECT_EQ(read("2026-02"), "2026-02-01..2026-02-28");
    EXPECT_EQ(read("2/2024"), "2024-02-01..2024-02-29");
    EXPECT_EQ(read("Sept 2026"), "2026-09-01..2026-09-30");
    EXPECT_EQ(read("Dezember 2026"), "2026-12-01..2026-12-31");
    EXPECT_EQ(read("2026"), "2026-01-01..2026-12-31");
}

TEST(InexactDate, ReadsWeeksAndPartsOfMonths) {
    EXPECT_EQ(read("3rd week of August 2026"), "2026-08-15..2026-08-21");
    EXPECT_EQ(read("first week of Aug 2026"), "2026-08-01..2026-08-07");
    EXPECT_EQ(read("5th week of August 2026"), "2026-08-29..2026-08-31");
    EXPECT_EQ(read("last week of August 2026"), "2026-08-25..2026-08-31");
    EXPECT_EQ(read("3. Woche August 2026"), "2026-08-15..2026-08-21");
    EXPECT_EQ(read("2026-W34"), "2026-08-17..2026-08-23");
    EXPECT_EQ(read("week 34 of 2026"), "2026-08-17..2026-08-23");
    EXPECT_EQ(read("KW 34 2026"), "2026-08-17..2026-08-23");
    EXPECT_EQ(read("2026-W53"), "2026-12-28..2027-01-03");
    EXPECT_EQ(read("early August 2026"), "2026-08-01..2026-08-10");
    EXPECT_EQ(read("mid-August 2026"), "2026-08-11..2026-08-20");
    EXPECT_EQ(read("late Feb 2026"), "2026-02-21..2026-02-28");
    EXPECT_EQ(read("Anfang August 2026"), "2026-08-01..2026-08-10");
    EXPECT_EQ(read("fin août 2026"), "2026-08-21..2026-08-31");
}

TEST(InexactDate, ReadsSpans) {
    EXPECT_EQ(read("20-25 August 2026"), "2026-08-20..2026-08-25");
    EXPECT_EQ(read("20.-25.8.2026"), "2026-08-20..2026-08-25");
    EXPECT_EQ(read("20 Aug to 3 Sep 2026"), "2026-08-20..2026-09-03");
    EXPECT_EQ(read("2026-08-20..2026-08-25"), "2026-08-20..2026-08-25");
    EXPECT_EQ(read("28 Dec – 3 Jan 2027"), "2026-12-28..2027-01-03") << "across New Year";
    EXPECT_EQ(read("August to September 2026"), "2026-08-01..2026-09-30");
}

TEST(InexactDate, AboutWidens) {
    EXPECT_EQ(read("~20 Aug 2026"), "2026-08-17..2026-08-23");
    EXPECT_EQ(read("about 2026-01-01"), "2025-12-29..2026-01-04");
    EXPECT_EQ(read("ca. August 2026"), "2026-07-17..2026-09-15");
    EXPECT_EQ(read("~ 3rd week of August 2026"), "2026-08-08..2026-08-28");
    EXPECT_EQ(read("≈2026"), "2025-07-02..2027-07-02");
}

TEST(InexactDate, TakesTheYearThatIsMeant) {
    EXPECT_EQ(read("22 Aug", 2026), "2026-08-22");
    EXPECT_EQ(read("22.8.", 2026), "2026-08-22");
    EXPECT_EQ(read("22/8", 2026), "2026-08-22");
    EXPECT_EQ(read("Aug 22", 2026), "2026-08-22");
    EXPECT_EQ(read("late August", 2026), "2026-08-21..2026-08-31");
    EXPECT_EQ(read("week 34", 2026), "2026-08-17..2026-08-23");
    EXPECT_EQ(read("20-25 Aug", 2026), "2026-08-20..2026-08-25");
    EXPECT_EQ(read("28 Dec to 3 Jan", 2027), "2026-12-28..2027-01-03");
    EXPECT_EQ(read("29 Feb", 2024), "2024-02-29");
    EXPECT_EQ(read("22 Aug 2025", 2026), "2025-08-22") << "a typed year stands";
    EXPECT_EQ(read("22 Aug"),
              "refused: \"22 Aug\": The year is missing. Add the year with four digits.");
}

TEST(InexactDate, RefusesTheAmbiguousAndSaysWhy) {
    EXPECT_EQ(read("3/8/2026"),
              "refused: \"3/8/2026\": This is 3 August 2026 in some countries and 8 March 2026 in "
              "others. Type the month as a word, or year, month and day as 2026-08-22.");
    EXPECT_EQ(read("3-8-2026").substr(0, 8), "refused:");
    EXPECT_EQ(read("3/8", 2026).substr(0, 8), "refused:");
    EXPECT_EQ(read("22/8/26"),
              "refused: \"22/8/26\": A year of two digits can be mistaken for a day. Type the year "
              "with four digits, as 22.8.2026 or 2026-08-22.");
}

TEST(InexactDate, RefusesWhatDoesNotExist) {
    EXPECT_EQ(read("31.4.2026"),
              "refused: \"31.4.2026\": There is no 31 April 2026. April 2026 has "
              "30 days; correct the day.");
    EXPECT_EQ(read("2026-02-29").substr(0, 8), "refused:");
    EXPECT_EQ(read("8.22.2026"), "refused: \"8.22.2026\": There is no month 22. Type year, month "
                                 "and day as 2026-08-22.");
    EXPECT_EQ(read("0.8.2026").substr(0, 8), "refused:");
    EXPECT_EQ(read("2026-00").substr(0, 8), "refused:");
    EXPECT_EQ(read("2025-W53"), "refused: \"2025-W53\": The year 2025 has no week 53. It has weeks "
                                "1 to 52; correct the week.");
    EXPECT_EQ(read("5th week of February 2026").substr(0, 8), "refused:");
    EXPECT_EQ(read("25-20 August 2026").substr(0, 8), "refused:");
    EXPECT_EQ(read("2026-09-01..2026-08-01").substr(0, 8), "refused:");
}

TEST(InexactDate, RefusesWhatIsNoDate) {
    for (const std::string& typed :
         {std::string{}, std::string{"  "}, std::string{"soon"}, std::string{"20260822"},
          std::string{"12345"}, std::string{"August"}, std::string{"jui 2026"},
          std::string{"22 Aug 2026 or so"}, std::string{"2026-08-22-"}, std::string{"~"},
          std::string{".."}, std::string{"\xFF\xFE"}, std::string(100000, '9')}) {
        const auto date = readInexactDate(typed);
        ASSERT_FALSE(date.ok()) << typed;
        EXPECT_FALSE(date.problem().what.empty());
        EXPECT_FALSE(date.problem().remedy.empty());
    }
}

TEST(InexactDate, EveryDayReadsBackInEveryForm) {
    for (Date date = day("2023-12-01"); date < day("2028-03-01"); date = date.plusDays(1)) {
        const std::string number = std::to_string(date.day());
        const std::string year = std::to_string(date.year());
        EXPECT_EQ(read(date.iso()), date.iso());
        EXPECT_EQ(read(number + "." + std::to_string(date.month()) + "." + year), date.iso());
    }
}

TEST(InexactDate, AnyTextIsReadOrRefused) {
    const std::uint64_t seed = 822;
    SCOPED_TRACE("seed " + std::to_string(seed));
    std::mt19937_64 random{seed};
    const std::vector<std::string> pieces = {"2026", "22", "8",    "0",  "Aug", "week",
                                             "W",    "-",  ".",    "/",  " ",   "~",
                                             "to",   "..", "late", "rd", "of",  "é"};
    for (int round = 0; round < 50000; ++round) {
        std::string typed;
        for (std::uint64_t count = random() % 8; count > 0; --count) {
            typed += pieces[random() % pieces.size()];
        }
        const auto date = readInexactDate(typed, 2026);
        if (date) {
            EXPECT_LE(date->from, date->to) << typed;
            EXPECT_EQ(date->typed, typed);
        } else {
            EXPECT_FALSE(date.problem().remedy.empty()) << typed;
        }
    }
}

} // namespace
} // namespace pipwright
