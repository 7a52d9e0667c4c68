#include "core/statistics/keeping_curve.h"
#include "core/statistics/keeping_fit.h"
#include "core/statistics/nonlinear_decay.h"

#include <array>
#include <gtest/gtest.h>
#include <vector>

// Computed with R 4.2.2: survreg, survfit and survdiff of survival 3.5-3, and nls.

namespace pipwright {
namespace {

constexpr double kSurvival = 1e-4;

// Days on the counter until unacceptable, twelve trees looked at every week or less often.
const std::vector<KeepingRecord> kTwelveTrees{
    KeepingRecord::between(7, 10),  KeepingRecord::between(10, 14), KeepingRecord::between(14, 21),
    KeepingRecord::between(14, 21), KeepingRecord::between(21, 28), KeepingRecord::between(21, 28),
    KeepingRecord::between(28, 35), KeepingRecord::between(28, 35), KeepingRecord::between(35, 42),
    KeepingRecord::after(21),       KeepingRecord::after(42),       KeepingRecord::after(42)};

struct KnownFit {
    KeepingLaw law;
    double intercept;
    double scale;
    double logLikelihood;
    std::array<double, 3> days; ///< tenth, median, ninetieth percentile
};

TEST(KeepingCheck, IntervalAndRightCensored) {
    const std::vector<KnownFit> known{
        {KeepingLaw::weibull, 3.480229, .461553, -21.990063, {11.491020, 27.414283, 47.711823}},
        {KeepingLaw::logNormal, 3.250075, .587615, -21.789747, {12.146199, 25.792274, 54.769512}},
        {KeepingLaw::logLogistic, 3.261896, .343930, -21.887207, {12.258326, 26.098971, 55.566829}},
        {KeepingLaw::exponential, 3.539704, 1, -24.763964, {3.630379, 23.883586, 79.339555}}};
    for (const KnownFit& entry : known) {
        const auto fit = fitKeeping(entry.law, kTwelveTrees);
        ASSERT_TRUE(fit.ok());
        EXPECT_NEAR(fit->coefficients[0], entry.intercept, kSurvival);
        EXPECT_NEAR(fit->scale(), entry.scale, kSurvival);
        EXPECT_NEAR(fit->logLikelihood, entry.logLikelihood, kSurvival);
        const std::array shares{.1, .5, .9};
        for (std::size_t i = 0; i < shares.size(); ++i) {
            const auto day = fit->dayOf(shares[i]);
            EXPECT_NEAR(day->day / entry.days[i], 1, kSurvival);
            EXPECT_LT(day->low, day->day);
            EXPECT_GT(day->high, day->day);
        }
    }
}

struct StoredFruit {
    double day;
    bool ended;
    std::size_t group;
};
constexpr std::array kTwoGroups{std::to_array<StoredFruit>({{12, true, 0},
                                                            {15, true, 0},
                                                            {18, true, 0},
                                                            {21, true, 0},
                                                            {21, true, 0},
                                                            {25, true, 0},
                                                            {30, true, 0},
                                                            {30, false, 0},
                                                            {20, true, 1},
                                                            {26, true, 1},
                                                            {31, true, 1},
                                                            {35, true, 1},
                                                            {40, true, 1},
                                                            {42, false, 1},
                                                            {42, false, 1},
                                                            {42, false, 1}})};

TEST(KeepingCheck, TwoGroupsWeibull) {
    std::vector<KeepingRecord> records;
    for (const StoredFruit& lot : kTwoGroups) {
        const std::vector<double> group{static_cast<double>(lot.group)};
        records.push_back(lot.ended ? KeepingRecord::onDay(lot.day, group)
                                    : KeepingRecord::after(lot.day, group));
    }
    const auto fit = fitKeeping(KeepingLaw::weibull, records);
    ASSERT_TRUE(fit.ok());
    EXPECT_NEAR(fit->coefficients[0], 3.195326, kSurvival);
    EXPECT_NEAR(fit->coefficients[1], .540386, kSurvival);
    EXPECT_NEAR(fit->standardErrors[1], .169220, kSurvival);
    EXPECT_NEAR(fit->logScale, -1.261903, kSurvival);
    EXPECT_NEAR(fit->logLikelihood, -46.313124, kSurvival);
    EXPECT_NEAR(fit->dayOf(.5, std::vector<double>{0})->day, 22.011405, 1e-3);
    EXPECT_NEAR(fit->dayOf(.5, std::vector<double>{1})->day, 37.786317, 1e-3);
}

TEST(KeepingCheck, TwoGroupsWithoutALaw) {
    std::vector<KeepingDayRecord> first;
    std::vector<KeepingDayRecord> second;
    std::vector<KeepingDayRecord> both;
    for (const StoredFruit& lot : kTwoGroups) {
        (lot.group == 0 ? first : second).push_back({lot.day, lot.ended, lot.group});
        both.push_back({lot.day, lot.ended, lot.group});
    }
    const auto curve = keepingCurve(first);
    const std::array<double, 6> days{12, 15, 18, 21, 25, 30};
    const std::array shares{.875, .75, .625, .375, .25, .125};
    ASSERT_EQ(curve->steps.size(), days.size());
    for (std::size_t i = 0; i < days.size(); ++i) {
        EXPECT_EQ(curve->steps[i].day, days[i]);
        EXPECT_NEAR(curve->steps[i].share, shares[i], 1e-9);
    }
    EXPECT_EQ(*curve->median, 21);
    EXPECT_EQ(*keepingCurve(second)->median, 37.5);
    const auto test = logRankTest(both);
    EXPECT_NEAR(test->statistic, 6.5565, 5e-5);
    EXPECT_NEAR(test->pValue, .0105, 5e-5);
}

TEST(FirmnessDecayCheck, Exponential) {
    const std::vector<TimedValue> firmness{{0, 75.2},  {7, 66.8},  {14, 59.0},
                                           {21, 53.1}, {28, 46.5}, {35, 41.9}};
    const auto fit = fitDecay(DecayShape::exponential, firmness);
    ASSERT_TRUE(fit.ok());
    EXPECT_NEAR(fit->parameters[0], 75.120075, 5e-6);
    EXPECT_NEAR(fit->parameters[1], .016845184, 5e-9);
    EXPECT_NEAR(fit->standardErrors[1], .000206801, 5e-9);
    EXPECT_NEAR(fit->residualSquares, .449811, kSurvival);
    EXPECT_NEAR(fit->dayAt(50)->day, 24.165057, 5e-6);
}

TEST(FirmnessDecayCheck, LogisticLiking) {
    const std::vector<TimedValue> liking{{0, 7.4},  {7, 7.3},  {14, 7.0}, {21, 6.3},
                                         {28, 5.0}, {35, 3.9}, {42, 3.2}};
    const auto fit = fitDecay(DecayShape::logistic, liking);
    ASSERT_TRUE(fit.ok());
    EXPECT_NEAR(fit->parameters[0], 2.837695, 5e-6);
    EXPECT_NEAR(fit->parameters[1], 7.450803, 5e-6);
    EXPECT_NEAR(fit->parameters[2], 27.452100, 5e-6);
    EXPECT_NEAR(fit->parameters[3], 6.023516, 5e-6);
    EXPECT_NEAR(fit->residualSquares, .003936, kSurvival);
    EXPECT_NEAR(fit->dayAt(5)->day, 28.206491, 5e-6);
}

} // namespace
} // namespace pipwright
