#include "core/season/chill.h"
#include "tests/checks/tolerances.h"

#include <cmath>
#include <functional>
#include <gtest/gtest.h>
#include <numbers>
#include <vector>

namespace pipwright {
namespace {

using HourList = std::vector<std::optional<Celsius>>;

HourList hoursOf(int count, const std::function<double(int)>& degrees) {
    HourList hours;
    for (int hour = 0; hour < count; ++hour) {
        hours.emplace_back(Celsius{degrees(hour)});
    }
    return hours;
}

// The weights of Richardson, Seeley & Walker (1974), HortScience 9:331, with the limits as the
// source of the R package chillR has them, hour by hour and summed with R 4.2.2.
TEST(ChillCheck, UtahUnitsAndChillHoursOfEighteenHours) {
    struct Known {
        double degrees;
        double units;
    };
    HourList hours;
    for (const Known& known : std::vector<Known>{{-3, 0},
                                                 {0, 0},
                                                 {1.4, 0},
                                                 {1.5, 0.5},
                                                 {2.4, 0.5},
                                                 {2.5, 1},
                                                 {5, 1},
                                                 {7.2, 1},
                                                 {7.3, 1},
                                                 {9.1, 1},
                                                 {9.2, 0.5},
                                                 {12.4, 0.5},
                                                 {12.5, 0},
                                                 {15.9, 0},
                                                 {16, -0.5},
                                                 {18, -0.5},
                                                 {18.1, -1},
                                                 {25, -1}}) {
        const HourList one{Celsius{known.degrees}};
        EXPECT_EQ(utahUnits(one).sum.number(), known.units) << known.degrees;
        hours.push_back(one.front());
    }
    EXPECT_EQ(utahUnits(hours).sum.number(), 4);
    EXPECT_EQ(chillHours(hours, ColdHour::fromZero).sum.number(), 7);
    EXPECT_EQ(chillHours(hours, ColdHour::allBelow).sum.number(), 8);
}

// The Dynamic model of Fishman, Erez & Couvillon (1987), J. theor. Biol. 124:473 and 126:309, with
// the constants of Erez et al. (1990) and 273 for the freezing point. Computed with R 4.2.2 from
// the equations; the R package chillR gives the same totals to ten digits.
TEST(DynamicModelCheck, ConstantTemperatures) {
    struct Known {
        double degrees;
        double balance, undoing; // of the equations, for looking up
        double firstHour, dayEnd;
        int firstPortionHour; // 0: never
        double portions240, portions720;
    };
    for (const Known& known :
         std::vector<Known>{{0, 4.28014206541851, 0.0080470313180061, 0.034304228532096,
                             0.751696408110485, 34, 0.774298938937961, 3.33275519468027},
                            {2, 3.39151789287204, 0.0113436851926064, 0.0382549251708655,
                             0.808317396627596, 31, 5.70872275431256, 18.7586890005103},
                            {4, 2.69643186040956, 0.0159117997375274, 0.0425655385291455,
                             0.855915483022953, 30, 6.5821495914296, 21.2457621547848},
                            {6, 2.15086330956654, 0.0222114758202059, 0.0472471910395078,
                             0.888742003990054, 29, 7.82074574981491, 24.432564407895},
                            {8, 1.72120938195427, 0.0308584061056827, 0.0523026397244619,
                             0.900490447695083, 29, 8.13317373797798, 24.4010320130687},
                            {10, 1.38172781621957, 0.0426728103403462, 0.0577218728981481,
                             0.885545919093996, 31, 7.09525380406581, 23.3130280147094},
                            {12, 1.11262906638618, 0.0587426010571906, 0.063476097830454,
                             0.840939912369713, 39, 6.0003702706144, 18.0011116120003},
                            {14, 0.898647584521445, 0.0805045780803046, 0.0695097799371772,
                             0.768485422225765, 0, 0, 0},
                            {16, 0.727968035925701, 0.109848372090078, 0.075730530026321,
                             0.675829923262036, 0, 0, 0}}) {
        SCOPED_TRACE(known.degrees);
        ChillPortionCounter counter;
        int firstPortionHour = 0;
        for (int hour = 1; hour <= 720; ++hour) {
            counter.addHour(Celsius{known.degrees});
            if (hour == 1) {
                EXPECT_NEAR(counter.intermediate(), known.firstHour, kClosedForm);
                EXPECT_NEAR(known.balance * (1 - std::exp(-known.undoing)), known.firstHour,
                            kClosedForm);
            }
            if (hour == 24) {
                EXPECT_NEAR(counter.intermediate(), known.dayEnd, kClosedForm);
            }
            if (counter.lastGain().number() > 0 && firstPortionHour == 0) {
                firstPortionHour = hour;
            }
            if (hour == 240) {
                EXPECT_NEAR(counter.portions().number(), known.portions240, kClosedForm);
            }
        }
        EXPECT_NEAR(counter.portions().number(), known.portions720, kClosedForm);
        EXPECT_EQ(firstPortionHour, known.firstPortionHour);
    }
}

// The same, hour by hour at 6 degrees: the first portion is fixed in hour 29, the second in 57.
TEST(DynamicModelCheck, HourByHourAtSixDegrees) {
    struct Known {
        int hour;
        double intermediate;
        double portions;
    };
    const std::vector<Known> trace = {{1, 0.0472471910395078, 0},
                                      {2, 0.0934565211181657, 0},
                                      {5, 0.226082835527581, 0},
                                      {10, 0.428401516311877, 0},
                                      {20, 0.771475500017649, 0},
                                      {24, 0.888742003990054, 0},
                                      {28, 0.996039278961946, 0},
                                      {29, 1.0214068564125, 0.980511620878231},
                                      {30, 0.0872440965881878, 0.980511620878231},
                                      {31, 0.132574829952195, 0.980511620878231},
                                      {40, 0.498268635431808, 0.980511620878231},
                                      {56, 0.992552240241254, 0.980511620878231},
                                      {57, 1.01799641613666, 1.95774934918194},
                                      {58, 0.087110548377956, 1.95774934918194},
                                      {60, 0.17678205500083, 1.95774934918194}};
    ChillPortionCounter counter;
    std::vector<int> gains;
    auto known = trace.begin();
    for (int hour = 1; hour <= 60; ++hour) {
        counter.addHour(Celsius{6});
        if (counter.lastGain().number() > 0) {
            gains.push_back(hour);
        }
        if (known->hour == hour) {
            EXPECT_NEAR(counter.intermediate(), known->intermediate, kClosedForm) << hour;
            EXPECT_NEAR(counter.portions().number(), known->portions, kClosedForm) << hour;
            ++known;
        }
    }
    EXPECT_EQ(known, trace.end());
    EXPECT_EQ(gains, (std::vector<int>{29, 57}));
}

// Six series of 720 hours; computed with R 4.2.2, the portions also with the R package chillR to
// ten digits. The last column counts every hour up to 7.2 degrees.
TEST(ChillCheck, SixSeriesOfThirtyDays) {
    struct Known {
        const char* name;
        std::function<double(int)> degrees;
        double portions;
        int gains;
        double intermediate;
        double utah;
        double chillFromZero;
        double chillAllBelow;
    };
    const auto wave = [](double height) {
        return
            [height](int hour) { return 7 + height * std::sin(2 * std::numbers::pi * hour / 24); };
    };
    const auto warmAfternoon = [](double warm) {
        return [warm](int hour) { return hour % 24 < 16 ? 6.0 : warm; };
    };
    for (const Known& known : std::vector<Known>{
             {"6 degrees", [](int) { return 6.0; }, 24.432564407895, 25, 0.767218877291017, 720,
              720, 720},
             {"16 hours 6, 8 hours 15", warmAfternoon(15), 21.3976714173649, 22, 0.531218099923111,
              480, 480, 480},
             {"16 hours 6, 8 hours 24", warmAfternoon(24), 0, 0, 0.353102550203769, 240, 480, 480},
             {"wave 4 to 10", wave(3), 22.7042314373316, 29, 0.455701889175326, 615, 390, 390},
             {"wave 0 to 14", wave(7), 19.7896425769753, 44, 0.408809919655098, 330, 390, 390},
             {"ramp -2 to 16", [](int hour) { return -2 + 18.0 * hour / 719; }, 16.2666733103024,
              163, 0.74548587652228, 352, 288, 368}}) {
        SCOPED_TRACE(known.name);
        const HourList hours = hoursOf(720, known.degrees);
        ChillPortionCounter counter;
        int gains = 0;
        for (const auto& hour : hours) {
            counter.addHour(*hour);
            gains += counter.lastGain().number() > 0 ? 1 : 0;
        }
        EXPECT_NEAR(chillPortions(hours).sum.number(), known.portions, kClosedForm);
        EXPECT_EQ(counter.portions(), chillPortions(hours).sum);
        EXPECT_EQ(gains, known.gains);
        EXPECT_NEAR(counter.intermediate(), known.intermediate, kClosedForm);
        EXPECT_EQ(utahUnits(hours).sum.number(), known.utah);
        EXPECT_EQ(chillHours(hours, ColdHour::fromZero).sum.number(), known.chillFromZero);
        EXPECT_EQ(chillHours(hours, ColdHour::allBelow).sum.number(), known.chillAllBelow);
    }
}

// Anderson, Richardson & Kesner (1986), Acta Horticulturae 184:71, base 4, best 25, end 36
// degrees; equations as in the documentation of the R package chillR, computed with R 4.2.2.
TEST(GrowingDegreeHourCheck, SingleHours) {
    const auto growth = [](double degrees) {
        return growingDegreeHours(HourList{Celsius{degrees}}).sum.number();
    };
    EXPECT_NEAR(growth(10), 3.953357, 5e-7);
    EXPECT_NEAR(growth(14.5), 10.5, kClosedForm);
    EXPECT_NEAR(growth(20), 18.197045, 5e-7);
    EXPECT_NEAR(growth(25), 21, kClosedForm);
    EXPECT_NEAR(growth(30), 7.247925, 5e-7);
    for (const double none : {-3.0, 4.0, 36.0, 41.0}) {
        EXPECT_EQ(growth(none), 0) << none;
    }
}

} // namespace
} // namespace pipwright
