#include "core/season/crop_day.h"
#include "core/season/daylength.h"
#include "core/season/degree_days.h"
#include "core/season/frost_kill.h"
#include "core/season/hourly_temperatures.h"
#include "tests/checks/tolerances.h"

#include <gtest/gtest.h>
#include <limits>
#include <vector>

namespace pipwright {
namespace {

constexpr double kMissing = std::numeric_limits<double>::quiet_NaN();

// Sunrise, sunset and length of the day in hours of solar time, declination of Spencer (1971),
// Search 2:172, sun's centre 0.8333 degrees below the horizon. Values computed with R 4.2.2 from
// the formulas and, with the same outcome, from a second implementation of them.
TEST(DaylengthCheck, OfSevenLatitudesInFourSeasons) {
    struct Known {
        double latitude;
        int dayOfYear;
        double sunrise;
        double sunset;
        double daylength;
    };
    const std::vector<Known> table = {
        {0, 1, 5.93962241745788, 18.0603775825421, 12.1207551650842},
        {35, 1, 7.07912325728707, 16.9208767427129, 9.84175348542586},
        {45, 1, 7.5857666771691, 16.4142333228309, 8.82846664566179},
        {50, 1, 7.92420995141174, 16.0757900485883, 8.15158009717652},
        {60, 1, 8.99236645263304, 15.007633547367, 6.01526709473392},
        {-40, 1, 4.52006963717519, 19.4799303628248, 14.9598607256496},
        {70, 1, 12, 12, 0},
        {0, 80, 5.94444662989161, 18.0555533701084, 12.1111067402168},
        {35, 80, 5.93525851705652, 18.0647414829435, 12.129482965887},
        {45, 80, 5.92582871689918, 18.0741712831008, 12.1483425662016},
        {50, 80, 5.91880891444969, 18.0811910855503, 12.1623821711006},
        {60, 80, 5.89649676636976, 18.1035032336302, 12.2070064672605},
        {-40, 80, 5.92378993556806, 18.0762100644319, 12.1524201288639},
        {70, 80, 5.8496146823608, 18.1503853176392, 12.3007706352784},
        {0, 172, 5.93944397612045, 18.0605560238795, 12.1211120477591},
        {35, 172, 4.74323883513163, 19.2567611648684, 14.5135223297367},
        {45, 172, 4.19036360987408, 19.8096363901259, 15.6192727802518},
        {50, 172, 3.81352377427899, 20.186476225721, 16.372952451442},
        {60, 172, 2.56364868952484, 21.4363513104752, 18.8727026209503},
        {-40, 172, 7.33862530180167, 16.6613746981983, 9.32274939639666},
        {70, 172, 0, 24, 24},
        {0, 266, 5.94444614294778, 18.0555538570522, 12.1111077141044},
        {35, 266, 5.92056470116341, 18.0794352988366, 12.1588705976732},
        {45, 266, 5.90484250199442, 18.0951574980056, 12.1903149960112},
        {50, 266, 5.89379718625341, 18.1062028137466, 12.2124056274932},
        {60, 266, 5.86013818456928, 18.1398618154307, 12.2797236308614},
        {-40, 266, 5.94139665675299, 18.058603343247, 12.117206686494},
        {70, 266, 5.79190616281045, 18.2080938371896, 12.4161876743791},
        {0, 355, 5.93945870769123, 18.0605412923088, 12.1210825846175},
        {35, 355, 7.09972945961184, 16.9002705403882, 9.80054108077633},
        {45, 355, 7.61674261659325, 16.3832573834068, 8.76651476681351},
        {50, 355, 7.96284458169467, 16.0371554183053, 8.07431083661065},
        {60, 355, 9.06227849589001, 14.93772150411, 5.87544300821997},
        {-40, 355, 4.49395052594164, 19.5060494740584, 15.0120989481167},
        {70, 355, 12, 12, 0}};
    const Date newYear = Date::of(2023, 1, 1).value();
    for (const Known& known : table) {
        const SunDay sun =
            sunOn(Latitude::of(known.latitude).value(), newYear.plusDays(known.dayOfYear - 1));
        EXPECT_NEAR(sun.sunrise, known.sunrise, kClosedForm) << known.latitude;
        EXPECT_NEAR(sun.sunset, known.sunset, kClosedForm) << known.latitude;
        EXPECT_NEAR(sun.daylength(), known.daylength, kClosedForm) << known.latitude;
    }
}

// Degree days of ten days by every rule. The closed forms were computed with R 4.2.2 and agree
// with numerical integration over 2e6 steps to 2e-5; rules as in the glossary of UC IPM and the
// formulas published by Oregon State University (degree-day calculation methods).
TEST(DegreeDayCheck, EveryRuleOnTenDays) {
    struct Known {
        double low, high, lower, upper;
        double average, clipped;
        double triangleNone, triangleHorizontal, triangleIntermediate, triangleVertical;
        double sineNone, sineHorizontal, sineIntermediate, sineVertical;
    };
    const std::vector<Known> table = {
        {5, 20, 10, 30, 2.5, 5, 3.33333333333333, 3.33333333333333, 3.33333333333333,
         3.33333333333333, 3.77122441031625, 3.77122441031625, 3.77122441031625, 3.77122441031625},
        {8, 35, 10, 31.1, 11.5, 10.55, 11.5740740740741, 11.2924074074074, 11.0107407407407,
         8.24462962962963, 11.7327747453368, 11.0941583634187, 10.4555419815006, 5.85730135337154},
        {12, 28, 10, 30, 10, 10, 10, 10, 10, 10, 10, 10, 10, 10},
        {2, 9, 10, 30, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0},
        {32, 38, 10, 30, 25, 20, 25, 20, 15, 0, 25, 20, 15, 0},
        {-5, 40, 10, 30, 7.5, 10, 10, 8.88888888888889, 7.77777777777778, 4.44444444444444,
         11.3136732309487, 9.2649607827316, 7.21624833451446, 3.014848404497},
        {10, 30, 10, 30, 10, 10, 10, 10, 10, 10, 10, 10, 10, 10},
        {15, 33, 4.5, 30, 19.5, 18, 19.5, 19.25, 19, 15, 19.5, 18.9710352065559, 18.4420704131117,
         12.1441631501245},
        {0, 20, 10, 31.1, 0, 5, 2.5, 2.5, 2.5, 2.5, 3.18309886183791, 3.18309886183791,
         3.18309886183791, 3.18309886183791},
        {12, 12, 10, 30, 2, 2, 2, 2, 2, 2, 2, 2, 2, 2}};
    using enum HeatCutoff;
    for (const Known& known : table) {
        SCOPED_TRACE(testing::Message() << known.low << " to " << known.high);
        const Celsius lower{known.lower};
        const Celsius upper{known.upper};
        const auto expect = [&known](const Result<HeatRule>& rule, double degreeDays) {
            EXPECT_NEAR(rule->ofDay(Celsius{known.low}, Celsius{known.high})->number(), degreeDays,
                        kClosedForm);
        };
        const auto cut = [upper](HeatCutoff cutoff) { return UpperThreshold{upper, cutoff}; };
        expect(HeatRule::average(lower), known.average);
        expect(HeatRule::clippedAverage(lower, upper), known.clipped);
        expect(HeatRule::triangle(lower), known.triangleNone);
        expect(HeatRule::triangle(lower, cut(horizontal)), known.triangleHorizontal);
        expect(HeatRule::triangle(lower, cut(intermediate)), known.triangleIntermediate);
        expect(HeatRule::triangle(lower, cut(vertical)), known.triangleVertical);
        expect(HeatRule::sine(lower), known.sineNone);
        expect(HeatRule::sine(lower, cut(horizontal)), known.sineHorizontal);
        expect(HeatRule::sine(lower, cut(intermediate)), known.sineIntermediate);
        expect(HeatRule::sine(lower, cut(vertical)), known.sineVertical);
    }
}

// Hours of five January days at 45 degrees north from their lowest and highest temperatures, by
// the curve of Linvill (1990), HortScience 25:14, in the form whose night ends at the next
// morning's lowest. Computed with R 4.2.2.
const std::vector<double> kHours = {
    // day of the year 20
    kMissing, kMissing, kMissing, kMissing, kMissing, kMissing, kMissing, kMissing, -0.789349104,
    1.029629264, 2.679970088, 4.069810836, 5.121789126, 5.777348938, 6.0, 5.777348938, 5.121789126,
    3.989964832, 3.090320953, 2.513978717, 2.089043565, 1.752292461, 1.473341197, 1.235224896,
    // day of the year 21
    1.02750065, 0.843281081, 0.677783531, 0.527551222, 0.390004356, 0.263166455, 0.145489765,
    0.035739581, 1.394480007, 3.433680636, 5.282731678, 6.839236802, 8.017000221, 8.75080002, 9.0,
    8.75080002, 8.017000221, 6.61699159, 5.343533676, 4.530654567, 3.932303728, 3.458572402,
    3.066393656, 2.731770059,
    // day of the year 22
    2.43995025, 2.181215161, 1.948821017, 1.73789657, 1.544808202, 1.366773206, 1.201613235,
    1.047591039, 2.586221033, 4.843883363, 6.889794199, 8.611248594, 9.913415226, 10.72456046, 11.0,
    10.72456046, 9.913415226, 8.462494603, 7.217018951, 6.424990503, 5.842977857, 5.382631551,
    5.001775617, 4.676958314,
    // day of the year 23
    4.393784352, 4.142779169, 3.917373878, 3.712826548, 3.525601822, 3.352993388, 3.192883447,
    3.043583553, 4.461302217, 6.4857465, 8.31919446, 9.861185027, 11.02722711, 11.753429156, 12.0,
    11.753429156, 11.02722711, 9.169022305, 6.836791323, 5.359479416, 4.275803821, 3.419527787,
    2.711573065, 2.108063594,
    // day of the year 24
    1.582106806, 1.116021809, 0.697560165, 0.317885714, -0.029585909, -0.349892853, -0.646976236,
    -0.923977198, 0.329380891, 2.122138559, 3.744755424, 5.108807049, 6.139959502, 6.782020175, 7.0,
    6.782020175, 6.139959502, kMissing, kMissing, kMissing, kMissing, kMissing, kMissing, kMissing};

TEST(HourlyTemperatureCheck, FiveDaysInJanuary) {
    const Date first = Date::of(2023, 1, 20).value();
    const std::vector<std::pair<double, double>> extremes = {
        {-2, 6}, {0, 9}, {1, 11}, {3, 12}, {-1, 7}};
    std::vector<DayTemperatures> days;
    days.reserve(extremes.size());
    for (const auto& [low, high] : extremes) {
        days.push_back(
            {first.plusDays(static_cast<int>(days.size())), Celsius{low}, Celsius{high}});
    }
    const auto hourly =
        hourlyTemperatures(days, {first, first.plusDays(4)}, Latitude::of(45).value());
    ASSERT_TRUE(hourly);
    ASSERT_EQ(hourly->hours.size(), kHours.size());
    for (std::size_t i = 0; i < kHours.size(); ++i) {
        const auto& hour = hourly->hours[i];
        ASSERT_EQ(hour.has_value(), kHours[i] == kHours[i]) << "hour " << i;
        if (hour) {
            EXPECT_NEAR(hour->degrees(), kHours[i], kClosedForm) << "hour " << i;
        }
    }
}

// Days from full bloom to harvest are differences of dates: R 4.2.2, as.Date("2024-02-20") -
// as.Date("2023-10-05") is 138 and as.Date("2024-09-15") - as.Date("2024-04-20") is 148.
TEST(CropDayCheck, BloomToHarvestInBothHemispheres) {
    const auto crossed = [](const char* bloom, const char* harvest, int year, SeasonSide side) {
        return dayOfCrop(Date::fromIso(harvest).value(), {year}, side) -
               dayOfCrop(Date::fromIso(bloom).value(), {year}, side);
    };
    EXPECT_EQ(crossed("2023-10-05", "2024-02-20", 2023, SeasonSide::southern), 138);
    EXPECT_EQ(crossed("2024-04-20", "2024-09-15", 2024, SeasonSide::northern), 148);
}

// Penn State Extension, "Orchard frost: critical temperatures for various fruits" (after
// bulletin EB 0419, 1989 spray guide for tree fruits in eastern Washington): degrees Fahrenheit
// that kill a tenth and nine tenths in half an hour.
TEST(FrostCheck, LimitsOfThePrintedTable) {
    struct Known {
        Blossom blossom;
        int stage;
        double tenth;
        double nineTenths;
    };
    using enum Blossom;
    for (const Known& known : std::vector<Known>{
             {apple, 51, 15, 2},        {apple, 53, 18, 10},       {apple, 54, 23, 15},
             {apple, 55, 27, 21},       {apple, 57, 28, 24},       {apple, 59, 28, 25},
             {apple, 60, 28, 25},       {apple, 65, 28, 25},       {apple, 69, 28, 25},
             {peach, 51, 18, 1},        {peach, 53, 21, 5},        {peach, 55, 23, 9},
             {peach, 57, 25, 15},       {peach, 60, 26, 21},       {peach, 65, 27, 24},
             {peach, 69, 28, 25},       {pear, 51, 15, 0},         {pear, 53, 20, 6},
             {pear, 55, 24, 15},        {pear, 57, 25, 19},        {pear, 59, 26, 22},
             {pear, 60, 27, 23},        {pear, 65, 28, 24},        {pear, 69, 28, 24},
             {sweetCherry, 51, 17, 5},  {sweetCherry, 52, 22, 9},  {sweetCherry, 53, 25, 14},
             {sweetCherry, 55, 26, 17}, {sweetCherry, 56, 27, 21}, {sweetCherry, 57, 27, 24},
             {sweetCherry, 60, 28, 25}, {sweetCherry, 65, 28, 25}, {sweetCherry, 69, 28, 25}}) {
        const auto limit = frostLimitAt(known.blossom, known.stage);
        ASSERT_TRUE(limit) << known.stage;
        EXPECT_EQ(limit->fromStage, known.stage);
        EXPECT_EQ(limit->killsATenth.degrees(), known.tenth) << limit->stage;
        EXPECT_EQ(limit->killsNineTenths.degrees(), known.nineTenths) << limit->stage;
    }
    // The same table in Celsius, as extension services print it for full bloom: -2.2 and -3.9.
    const auto bloom = frostLimitAt(apple, 65);
    EXPECT_NEAR(toCelsius(bloom->killsATenth).degrees(), -2.2, 0.05);
    EXPECT_NEAR(toCelsius(bloom->killsNineTenths).degrees(), -3.9, 0.05);
}

} // namespace
} // namespace pipwright
