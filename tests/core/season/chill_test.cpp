#include "core/season/chill.h"

#include <gtest/gtest.h>
#include <limits>
#include <vector>

namespace pipwright {
namespace {

using HourList = std::vector<std::optional<Celsius>>;

TEST(Chill, OfNoHoursIsNothing) {
    EXPECT_EQ(chillHours({}, ColdHour::fromZero).hoursCounted, 0);
    EXPECT_EQ(utahUnits({}).sum.number(), 0);
    EXPECT_EQ(growingDegreeHours({}).sum.number(), 0);
    EXPECT_EQ(chillPortions({}).sum.number(), 0);
    EXPECT_TRUE(chillPortions({}).isWhole());
}

TEST(Chill, ShowsMissingAndImpossibleHours) {
    const HourList hours = {Celsius{5},
                            std::nullopt,
                            Celsius{std::numeric_limits<double>::quiet_NaN()},
                            Celsius{5},
                            Celsius{std::numeric_limits<double>::infinity()},
                            Celsius{-273}};
    for (const int missing :
         {chillHours(hours, ColdHour::allBelow).hoursMissing, utahUnits(hours).hoursMissing,
          growingDegreeHours(hours).hoursMissing, chillPortions(hours).hoursMissing}) {
        EXPECT_EQ(missing, 4);
    }
    EXPECT_EQ(chillHours(hours, ColdHour::allBelow).sum.number(), 2);
    EXPECT_EQ(utahUnits(hours).hoursCounted, 2);
    EXPECT_FALSE(utahUnits(hours).isWhole());
}

TEST(Chill, AMissingHourLeavesTheIntermediateAsItWas) {
    const HourList whole(100, Celsius{6});
    HourList holed = whole;
    holed.insert(holed.begin() + 40, std::nullopt);
    EXPECT_EQ(chillPortions(holed).sum, chillPortions(whole).sum);
    EXPECT_EQ(chillPortions(holed).hoursMissing, 1);
}

TEST(Chill, PortionsAreNeverLost) {
    ChillPortionCounter counter;
    for (int hour = 0; hour < 200; ++hour) {
        counter.addHour(Celsius{6});
    }
    const ChillPortions gained = counter.portions();
    EXPECT_GT(gained.number(), 5);
    for (int hour = 0; hour < 500; ++hour) {
        counter.addHour(Celsius{28});
    }
    EXPECT_GE(counter.portions(), gained);
    EXPECT_LT(counter.intermediate(), 0.3) << "but what was not fixed is undone";
}

TEST(Chill, UtahUnitsAreTakenAwayByWarmth) {
    EXPECT_LT(utahUnits(HourList(10, Celsius{21})).sum.number(), 0);
}

} // namespace
} // namespace pipwright
