#include "core/season/degree_days.h"
#include "core/season/hourly_temperatures.h"
#include "core/units/no_number.h"
#include "tests/core/season/days.h"

#include <algorithm>
#include <cmath>
#include <gmock/gmock.h>
#include <limits>
#include <numbers>
#include <random>

namespace pipwright {
namespace {

DayTemperatures weather(std::string_view iso, std::optional<double> low,
                        std::optional<double> high) {
    DayTemperatures one{day(iso), std::nullopt, std::nullopt};
    if (low) {
        one.lowest = Celsius{*low};
    }
    if (high) {
        one.highest = Celsius{*high};
    }
    return one;
}

DaySpan span(std::string_view first, std::string_view last) {
    return DaySpan::of(day(first), day(last)).value();
}

const Latitude kOrchard = Latitude::of(48).value();

TEST(DayTemperatures, NamesTheDayThatCannotBe) {
    const auto saysOf = [](std::vector<DayTemperatures> days) {
        const Outcome outcome = checkDays(days);
        return outcome ? std::string("fine") : outcome.problem().sentence();
    };
    EXPECT_EQ(saysOf({}), "fine");
    EXPECT_EQ(saysOf({weather("2026-04-01", {}, {}), weather("2026-04-03", -2, {})}), "fine");
    EXPECT_THAT(saysOf({weather("2026-04-01", 9, 3)}),
                testing::HasSubstr("2026-04-01 has a lowest temperature above"));
    EXPECT_THAT(saysOf({weather("2026-04-01", kNaN, 3)}),
                testing::HasSubstr("2026-04-01 has a temperature that air cannot"));
    EXPECT_THAT(saysOf({weather("2026-04-01", 3, kInfinity)}), testing::HasSubstr("cannot"));
    EXPECT_THAT(saysOf({weather("2026-04-01", 3, 104)}), testing::HasSubstr("unit"))
        << "Fahrenheit";
    EXPECT_THAT(saysOf({weather("2026-04-01", 3, 4), weather("2026-04-01", 3, 4)}),
                testing::HasSubstr("twice"));
    EXPECT_THAT(saysOf({weather("2026-04-02", 3, 4), weather("2026-04-01", 3, 4)}),
                testing::HasSubstr("2026-04-01 stands behind a later day"));
}

TEST(HeatRule, RefusesThresholdsTheWrongWayRound) {
    EXPECT_FALSE(HeatRule::clippedAverage(Celsius{30}, Celsius{10}));
    EXPECT_FALSE(HeatRule::clippedAverage(Celsius{10}, Celsius{10}));
    EXPECT_FALSE(HeatRule::sine(Celsius{10}, UpperThreshold{Celsius{9}}));
    EXPECT_FALSE(HeatRule::triangle(Celsius{kNaN}));
    EXPECT_FALSE(HeatRule::average(Celsius{kInfinity}));
    EXPECT_FALSE(HeatRule::sine(Celsius{10}, UpperThreshold{Celsius{kNaN}}));
    EXPECT_TRUE(HeatRule::sine(Celsius{10}));
}

TEST(HeatRule, RefusesADayThatCannotBe) {
    const HeatRule rule = *HeatRule::sine(Celsius{10});
    EXPECT_FALSE(rule.ofDay(Celsius{20}, Celsius{5}));
    EXPECT_FALSE(rule.ofDay(Celsius{kNaN}, Celsius{5}));
    EXPECT_FALSE(rule.ofDay(Celsius{5}, Celsius{kNaN}));
    EXPECT_EQ(rule.ofDay(Celsius{12}, Celsius{12})->number(), 2) << "the same all day";
}

TEST(HeatRule, IntermediateCutoffNeverTakesMoreThanTheDayGave) {
    const UpperThreshold low{Celsius{12}, HeatCutoff::intermediate};
    EXPECT_EQ(HeatRule::sine(Celsius{10}, low)->ofDay(Celsius{30}, Celsius{40})->number(), 0);
}

/// Against the mean over many moments of the day, for random days and thresholds.
TEST(HeatRule, AgreesWithIntegrationMomentByMoment) {
    constexpr std::uint32_t kSeed = 20260822;
    SCOPED_TRACE(testing::Message() << "seed " << kSeed);
    std::mt19937 random(kSeed);
    std::uniform_real_distribution<double> any(-10, 45);
    constexpr int kMoments = 20000;
    for (int repeat = 0; repeat < 40; ++repeat) {
        const auto [low, high] = std::minmax({any(random), any(random)});
        const auto [lower, upper] = std::minmax({any(random), any(random)});
        double flat = 0;
        double upright = 0;
        double straight = 0;
        for (int i = 0; i < kMoments; ++i) {
            const double part = (i + 0.5) / kMoments;
            const double air =
                (high + low) / 2 + (high - low) / 2 * std::sin(std::numbers::pi * (part - 0.5));
            const double line = low + (high - low) * part;
            flat += std::clamp(air, lower, upper) - lower;
            upright += air < upper ? std::max(0.0, air - lower) : 0;
            straight += std::clamp(line, lower, upper) - lower;
        }
        const auto reckoned = [low = low, high = high](const Result<HeatRule>& rule) {
            return rule->ofDay(Celsius{low}, Celsius{high})->number();
        };
        const UpperThreshold horizontal{Celsius{upper}, HeatCutoff::horizontal};
        const UpperThreshold vertical{Celsius{upper}, HeatCutoff::vertical};
        EXPECT_NEAR(reckoned(HeatRule::sine(Celsius{lower}, horizontal)), flat / kMoments, 1e-3);
        EXPECT_NEAR(reckoned(HeatRule::sine(Celsius{lower}, vertical)), upright / kMoments, 5e-3);
        EXPECT_NEAR(reckoned(HeatRule::triangle(Celsius{lower}, horizontal)), straight / kMoments,
                    1e-3);
    }
}

TEST(HeatSum, NamesTheDaysItMisses) {
    const std::vector<DayTemperatures> days = {
        weather("2026-05-01", 10, 20), weather("2026-05-02", 10, {}), weather("2026-05-04", 12, 22),
        weather("2026-05-09", 20, 30)};
    const auto sum =
        heatSum(days, span("2026-05-01", "2026-05-05"), *HeatRule::average(Celsius{10}));
    ASSERT_TRUE(sum);
    EXPECT_EQ(sum->sum.number(), 5 + 7);
    EXPECT_EQ(sum->daysCounted, 2);
    EXPECT_EQ(sum->daysMissing,
              (std::vector{day("2026-05-02"), day("2026-05-03"), day("2026-05-05")}));
    EXPECT_FALSE(sum->isWhole());
}

TEST(HeatSum, OfNoDaysIsAllMissing) {
    const auto sum = heatSum({}, span("2026-05-01", "2026-05-03"), *HeatRule::sine(Celsius{4}));
    ASSERT_TRUE(sum);
    EXPECT_EQ(sum->daysCounted, 0);
    EXPECT_EQ(sum->daysMissing.size(), 3);
}

TEST(HeatSum, RefusesSwappedTemperatures) {
    const std::vector<DayTemperatures> days = {weather("2026-05-01", 20, 10)};
    EXPECT_FALSE(heatSum(days, span("2026-05-01", "2026-05-03"), *HeatRule::sine(Celsius{4})));
}

TEST(HourlyTemperatures, MeetTheExtremesOfTheDay) {
    std::vector<DayTemperatures> days;
    for (int i = 0; i < 30; ++i) {
        const double low = 5 + 4 * std::sin(i);
        days.push_back({day("2026-04-01").plusDays(i), Celsius{low}, Celsius{low + 9}});
    }
    const auto hourly = hourlyTemperatures(days, span("2026-04-02", "2026-04-29"), kOrchard);
    ASSERT_TRUE(hourly);
    ASSERT_EQ(hourly->hours.size(), 28U * 24);
    EXPECT_EQ(hourly->missing(), 0) << "the days beside the span bound its nights";
    for (std::size_t i = 0; i < 28; ++i) {
        // The night falls from a sunset between the day's own extremes to the next lowest.
        const double lowest = std::min({days[i].lowest->degrees(), days[i + 1].lowest->degrees(),
                                        days[i + 2].lowest->degrees()});
        for (std::size_t hour = 0; hour < 24; ++hour) {
            const double air = hourly->hours[i * 24 + hour]->degrees();
            EXPECT_GE(air, lowest - 1e-9);
            EXPECT_LE(air, std::max(days[i].highest->degrees(), days[i + 1].highest->degrees()));
        }
    }
}

TEST(HourlyTemperatures, LeaveOutWhatIsNotKnown) {
    const std::vector<DayTemperatures> days = {
        weather("2026-04-01", 2, 12), weather("2026-04-02", 3, 13), weather("2026-04-03", {}, 14),
        weather("2026-04-04", 4, 15), weather("2026-04-05", 5, 16)};
    const auto hourly = hourlyTemperatures(days, span("2026-04-01", "2026-04-05"), kOrchard);
    ASSERT_TRUE(hourly);
    const auto known = [&hourly](std::size_t day, std::size_t hour) {
        return hourly->hours[day * 24 + hour].has_value();
    };
    EXPECT_FALSE(known(0, 3)) << "the evening before is not given";
    EXPECT_TRUE(known(0, 12));
    EXPECT_TRUE(known(1, 3));
    EXPECT_TRUE(known(1, 12));
    EXPECT_FALSE(known(1, 22)) << "the morning after lacks its lowest";
    for (std::size_t hour = 0; hour < 24; ++hour) {
        EXPECT_FALSE(known(2, hour)) << hour;
    }
    EXPECT_FALSE(known(3, 3)) << "the evening before is not known";
    EXPECT_TRUE(known(3, 22));
    EXPECT_FALSE(known(4, 23)) << "the morning after is not given";
}

TEST(HourlyTemperatures, SayNothingOfAPolarNight) {
    const std::vector<DayTemperatures> days = {weather("2026-12-20", -9, -2),
                                               weather("2026-12-21", -9, -2),
                                               weather("2026-12-22", -9, -2)};
    const auto hourly =
        hourlyTemperatures(days, span("2026-12-21", "2026-12-21"), *Latitude::of(75));
    ASSERT_TRUE(hourly);
    EXPECT_EQ(hourly->missing(), 24);
}

TEST(HourlyTemperatures, RefuseDaysThatCannotBe) {
    const std::vector<DayTemperatures> days = {weather("2026-04-01", 12, 2)};
    EXPECT_FALSE(hourlyTemperatures(days, span("2026-04-01", "2026-04-01"), kOrchard));
    const auto none = hourlyTemperatures({}, span("2026-04-01", "2026-04-02"), kOrchard);
    ASSERT_TRUE(none);
    EXPECT_EQ(none->missing(), 48);
}

} // namespace
} // namespace pipwright
