#include "core/statistics/keeping_curve.h"
#include "core/statistics/keeping_fit.h"
#include "core/statistics/nonlinear_decay.h"
#include "core/units/no_number.h"

#include <cmath>
#include <gtest/gtest.h>
#include <limits>
#include <vector>

namespace pipwright {
namespace {

TEST(KeepingFit, ExactDaysUnderTheNormalLawAreMeanAndSpread) {
    const std::vector<double> days{12, 15, 19, 22, 31};
    std::vector<KeepingRecord> records;
    double mean = 0;
    double squares = 0;
    for (const double day : days) {
        records.push_back(KeepingRecord::onDay(day));
        mean += day / 5;
    }
    for (const double day : days) {
        squares += (day - mean) * (day - mean) / 5;
    }
    const auto fit = fitKeeping(KeepingLaw::normal, records);
    ASSERT_TRUE(fit.ok());
    EXPECT_NEAR(fit->coefficients[0], mean, 1e-8);
    EXPECT_NEAR(fit->scale(), std::sqrt(squares), 1e-8);
    EXPECT_NEAR(fit->standardErrors[0], std::sqrt(squares / 5), 1e-7);
    EXPECT_NEAR(fit->dayOf(.5)->day, mean, 1e-8);
}

TEST(KeepingFit, ExponentialIsEndsOverTime) {
    const auto fit = fitKeeping(KeepingLaw::exponential,
                                std::vector{KeepingRecord::onDay(10), KeepingRecord::onDay(30),
                                            KeepingRecord::after(20), KeepingRecord::after(40)});
    ASSERT_TRUE(fit.ok());
    EXPECT_NEAR(fit->coefficients[0], std::log(100.0 / 2), 1e-9);
    EXPECT_NEAR(fit->standardErrors[0], 1 / std::sqrt(2.0), 1e-9);
    EXPECT_EQ(fit->scale(), 1);
}

TEST(KeepingFit, OtherUnitsOfTimeShiftTheIntercept) {
    std::vector<KeepingRecord> days;
    std::vector<KeepingRecord> hours;
    for (const auto& [from, to] : std::vector<std::pair<double, double>>{
             {7, 10}, {10, 14}, {0, 7}, {14, 21}, {21, 28}, {14, 14}}) {
        days.push_back(KeepingRecord::between(from, to));
        hours.push_back(KeepingRecord::between(24 * from, 24 * to));
    }
    days.push_back({std::nullopt, 5, {}});
    hours.push_back({std::nullopt, 120, {}});
    for (const KeepingLaw law :
         {KeepingLaw::weibull, KeepingLaw::logNormal, KeepingLaw::logLogistic}) {
        const auto a = fitKeeping(law, days);
        const auto b = fitKeeping(law, hours);
        ASSERT_TRUE(a.ok() && b.ok());
        EXPECT_NEAR(b->coefficients[0] - a->coefficients[0], std::log(24.0), 1e-6);
        EXPECT_NEAR(b->logScale, a->logScale, 1e-6);
        EXPECT_NEAR(b->dayOf(.3)->day / a->dayOf(.3)->day, 24, 1e-4);
    }
}

TEST(KeepingFit, RefusesWhatBoundsNoCurve) {
    const auto law = KeepingLaw::weibull;
    EXPECT_FALSE(fitKeeping(law, {}).ok());
    EXPECT_FALSE(fitKeeping(law, std::vector{KeepingRecord::onDay(7)}).ok());
    EXPECT_FALSE(
        fitKeeping(law, std::vector{KeepingRecord::onDay(7), KeepingRecord::onDay(7)}).ok());
    EXPECT_FALSE(
        fitKeeping(law, std::vector{KeepingRecord::after(7), KeepingRecord::after(9)}).ok());
    const auto sound = KeepingRecord::between(7, 14);
    for (const KeepingRecord& bad :
         {KeepingRecord::between(14, 7), KeepingRecord::onDay(-3), KeepingRecord::onDay(0),
          KeepingRecord::onDay(kNaN), KeepingRecord::after(kInfinity), KeepingRecord{},
          KeepingRecord::onDay(9, {1}), KeepingRecord::onDay(9, {kNaN})}) {
        EXPECT_FALSE(fitKeeping(law, std::vector{sound, KeepingRecord::onDay(20), bad}).ok());
    }
    // A covariate that is the same everywhere.
    EXPECT_FALSE(
        fitKeeping(law, std::vector{KeepingRecord::onDay(9, {2}), KeepingRecord::onDay(12, {2}),
                                    KeepingRecord::onDay(19, {2})})
            .ok());
    // A group none of which ended.
    EXPECT_FALSE(
        fitKeeping(law, std::vector{KeepingRecord::onDay(9, {0}), KeepingRecord::onDay(12, {0}),
                                    KeepingRecord::onDay(19, {0}), KeepingRecord::after(19, {1})})
            .ok());
}

TEST(KeepingFit, RefusesWrongQuestions) {
    const auto fit = fitKeeping(
        KeepingLaw::weibull,
        std::vector{KeepingRecord::onDay(9), KeepingRecord::onDay(15), KeepingRecord::after(20)});
    ASSERT_TRUE(fit.ok());
    EXPECT_FALSE(fit->dayOf(0).ok());
    EXPECT_FALSE(fit->dayOf(1).ok());
    EXPECT_FALSE(fit->dayOf(kNaN).ok());
    EXPECT_FALSE(fit->dayOf(.5, std::vector<double>{1}).ok());
}

TEST(KeepingCurve, WithoutCensoringIsTheShareLeft) {
    const auto curve = keepingCurve(
        std::vector<KeepingDayRecord>{{3, true, 0}, {5, true, 0}, {5, true, 0}, {9, true, 0}});
    ASSERT_EQ(curve->steps.size(), 3U);
    EXPECT_NEAR(curve->steps[1].share, .25, 1e-12);
    EXPECT_NEAR(curve->steps[1].standardError, std::sqrt(.25 * .75 / 4), 1e-12);
    EXPECT_EQ(curve->steps[2].share, 0);
    EXPECT_EQ(*curve->median, 5);
    EXPECT_FALSE(
        keepingCurve(std::vector<KeepingDayRecord>{{3, true, 0}, {5, false, 0}, {6, false, 0}})
            ->median.has_value());
}

TEST(KeepingCurve, RefusesBadDays) {
    EXPECT_FALSE(keepingCurve({}).ok());
    EXPECT_FALSE(keepingCurve(std::vector<KeepingDayRecord>{{-1, true, 0}}).ok());
    EXPECT_FALSE(keepingCurve(std::vector<KeepingDayRecord>{{kNaN, true, 0}}).ok());
    EXPECT_TRUE(keepingCurve(std::vector<KeepingDayRecord>{{4, false, 0}})->steps.empty());
    EXPECT_FALSE(logRankTest({}).ok());
    EXPECT_FALSE(logRankTest(std::vector<KeepingDayRecord>{{4, true, 0}}).ok());
    EXPECT_FALSE(logRankTest(std::vector<KeepingDayRecord>{{4, true, 0}, {4, true, 2}}).ok());
    EXPECT_FALSE(logRankTest(std::vector<KeepingDayRecord>{{4, false, 0}, {4, false, 1}}).ok());
    const auto alike = logRankTest(
        std::vector<KeepingDayRecord>{{4, true, 0}, {4, true, 1}, {6, true, 0}, {6, true, 1}});
    EXPECT_EQ(alike->statistic, 0);
    EXPECT_EQ(alike->pValue, 1);
}

std::vector<TimedValue> sampled(double (*curve)(double)) {
    std::vector<TimedValue> values;
    for (int day = 0; day <= 60; day += 6) {
        values.push_back({static_cast<double>(day), curve(day)});
    }
    return values;
}

TEST(DecayFit, FindsTheCurveItWasDrawnFrom) {
    const auto falling = fitDecay(DecayShape::exponential,
                                  sampled([](double day) { return 80 * std::exp(-.03 * day); }));
    ASSERT_TRUE(falling.ok());
    EXPECT_NEAR(falling->parameters[0], 80, 1e-7);
    EXPECT_NEAR(falling->parameters[1], .03, 1e-10);
    const auto sigmoid =
        fitDecay(DecayShape::logistic,
                 sampled([](double day) { return 2 + 6 / (1 + std::exp((day - 31) / 5)); }));
    ASSERT_TRUE(sigmoid.ok());
    EXPECT_NEAR(sigmoid->parameters[2], 31, 1e-6);
    EXPECT_NEAR(sigmoid->parameters[3], 5, 1e-6);
    EXPECT_NEAR(sigmoid->valueAt(31), 5, 1e-7);
}

TEST(DecayFit, DayCarriesTheErrorOfTheParameters) {
    const std::vector<TimedValue> firmness{
        {0, 75.2}, {7, 66.8}, {14, 59.0}, {21, 53.1}, {28, 46.5}};
    const auto fit = fitDecay(DecayShape::exponential, firmness);
    const auto day = fit->dayAt(50);
    EXPECT_GT(day->standardError, 0);
    EXPECT_LT(day->standardError, 1);
    EXPECT_NEAR(fit->valueAt(day->day), 50, 1e-9);
    EXPECT_FALSE(fit->dayAt(0).ok());
    EXPECT_FALSE(fit->dayAt(-5).ok());
    EXPECT_FALSE(fit->dayAt(kNaN).ok());
}

TEST(DecayFit, RefusesTooLittle) {
    const auto exponential = DecayShape::exponential;
    EXPECT_FALSE(fitDecay(exponential, {}).ok());
    EXPECT_FALSE(fitDecay(exponential, std::vector<TimedValue>{{0, 5}}).ok());
    EXPECT_FALSE(fitDecay(exponential, std::vector<TimedValue>{{0, 5}, {7, 4}}).ok());
    EXPECT_FALSE(fitDecay(exponential, std::vector<TimedValue>{{3, 5}, {3, 4}, {3, 4.5}}).ok());
    EXPECT_FALSE(fitDecay(exponential, std::vector<TimedValue>{{0, 5}, {7, 5}, {9, 5}}).ok());
    EXPECT_FALSE(fitDecay(exponential, std::vector<TimedValue>{{0, 5}, {7, 0}, {9, 1}}).ok());
    EXPECT_FALSE(fitDecay(exponential, std::vector<TimedValue>{{0, 5}, {7, kNaN}, {9, 1}}).ok());
    EXPECT_FALSE(
        fitDecay(exponential, std::vector<TimedValue>{{0, 5}, {kInfinity, 2}, {9, 1}}).ok());
    EXPECT_FALSE(
        fitDecay(DecayShape::logistic, std::vector<TimedValue>{{0, 5}, {1, 4}, {2, 3}, {3, 2}})
            .ok());
}

} // namespace
} // namespace pipwright
