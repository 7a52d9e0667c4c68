#include "core/season/daylength.h"
#include "tests/core/season/days.h"

#include <limits>

namespace pipwright {
namespace {

TEST(Latitude, LiesBetweenThePoles) {
    EXPECT_TRUE(Latitude::of(90));
    EXPECT_TRUE(Latitude::of(-90));
    EXPECT_FALSE(Latitude::of(90.001));
    EXPECT_FALSE(Latitude::of(-123.4)) << "a longitude in the wrong field";
    EXPECT_FALSE(Latitude::of(std::numeric_limits<double>::quiet_NaN()));
    EXPECT_FALSE(Latitude::of(std::numeric_limits<double>::infinity()));
}

TEST(SunOn, MirrorsTheHemispheresAlmost) {
    const double north = sunOn(*Latitude::of(45), day("2026-06-21")).daylength();
    const double south = sunOn(*Latitude::of(-45), day("2026-12-21")).daylength();
    EXPECT_NEAR(north, south, 0.02) << "the declinations of the solstices differ a little";
    EXPECT_GT(north, 15);
}

TEST(SunOn, StaysUpOrDownBeyondThePolarCircles) {
    EXPECT_EQ(sunOn(*Latitude::of(70), day("2026-06-21")).kind, SunDay::Kind::staysUp);
    EXPECT_EQ(sunOn(*Latitude::of(70), day("2026-12-21")).kind, SunDay::Kind::staysDown);
    EXPECT_EQ(sunOn(*Latitude::of(-70), day("2026-12-21")).kind, SunDay::Kind::staysUp);
    EXPECT_EQ(sunOn(*Latitude::of(50), day("2026-12-21")).kind, SunDay::Kind::risesAndSets);
}

TEST(SunOn, KnowsThePolesThemselves) {
    for (const double pole : {90.0, -90.0}) {
        for (Date date = day("2024-01-01"); date <= day("2024-12-31"); date = date.plusDays(1)) {
            const SunDay sun = sunOn(*Latitude::of(pole), date);
            EXPECT_TRUE(sun.daylength() == 0 || sun.daylength() == 24) << date.iso();
        }
    }
}

TEST(SunOn, IsAFullDayOnEveryDayAndLatitude) {
    for (double degrees = -90; degrees <= 90; degrees += 7.5) {
        for (Date date = day("2024-01-01"); date <= day("2024-12-31"); date = date.plusDays(5)) {
            const SunDay sun = sunOn(*Latitude::of(degrees), date);
            ASSERT_GE(sun.sunrise, 0);
            ASSERT_LE(sun.sunset, 24);
            ASSERT_NEAR(sun.sunrise + sun.sunset, 24, 1e-12) << "noon is at 12";
        }
    }
}

} // namespace
} // namespace pipwright
