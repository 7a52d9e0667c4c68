#include "core/statistics/normal_interval.h"
#include "core/units/no_number.h"

#include <cmath>
#include <gtest/gtest.h>
#include <limits>
#include <numbers>

namespace pipwright {
namespace {

double below(double z) {
    return .5 * std::erfc(-z / std::numbers::sqrt2);
}

TEST(NormalInterval, ProbabilityAndDerivativesAroundTheMean) {
    for (const double mean : {-1.2, 0., .3, 2.5}) {
        for (const double deviation : {.5, 1., 3.}) {
            const auto at = [&](double there) {
                return std::log(below((2 - there) / deviation) - below((-1 - there) / deviation));
            };
            const IntervalEvidence evidence = intervalEvidence(-1, 2, mean, deviation);
            const double step = 1e-4;
            EXPECT_NEAR(evidence.logProbability, at(mean), 1e-12);
            EXPECT_NEAR(evidence.slope, (at(mean + step) - at(mean - step)) / (2 * step), 1e-6);
            EXPECT_NEAR(evidence.curvature,
                        -(at(mean + step) - 2 * at(mean) + at(mean - step)) / (step * step), 1e-5);
        }
    }
}

TEST(NormalInterval, AnExactNumberHasADensity) {
    const IntervalEvidence evidence = intervalEvidence(3, 3, 1, 2);
    EXPECT_NEAR(evidence.logProbability, -.5 - std::log(2 * std::sqrt(2 * std::numbers::pi)),
                1e-14);
    EXPECT_DOUBLE_EQ(evidence.slope, .5);
    EXPECT_DOUBLE_EQ(evidence.curvature, .25);
}

TEST(NormalInterval, OpenSidesMirrorEachOther) {
    const IntervalEvidence right = intervalEvidence(1, kInfinity, 0, 1);
    const IntervalEvidence left = intervalEvidence(-kInfinity, -1, 0, 1);
    EXPECT_NEAR(right.logProbability, std::log(.15865525393145705), 1e-12);
    EXPECT_DOUBLE_EQ(right.logProbability, left.logProbability);
    EXPECT_DOUBLE_EQ(right.slope, -left.slope);
    EXPECT_DOUBLE_EQ(right.curvature, left.curvature);
}

TEST(NormalInterval, NoEndsTellNothing) {
    const IntervalEvidence evidence = intervalEvidence(-kInfinity, kInfinity, 5, 2);
    EXPECT_EQ(evidence.logProbability, 0);
    EXPECT_EQ(evidence.slope, 0);
    EXPECT_GT(evidence.curvature, 0);
    EXPECT_LT(evidence.curvature, 1e-9);
}

// Mills' ratio at 10 is .0990285964717319 and at 40 .0249843984 (Abramowitz & Stegun 1964, 26.2).
TEST(NormalInterval, FarInTheTailNothingVanishes) {
    const IntervalEvidence ten = intervalEvidence(10, kInfinity, 0, 1);
    EXPECT_NEAR(ten.slope, 1 / .0990285964717319, 1e-10);
    const IntervalEvidence forty = intervalEvidence(40, kInfinity, 0, 1);
    EXPECT_NEAR(forty.logProbability, -804.608442, 1e-5);
    const IntervalEvidence far = intervalEvidence(1e6, kInfinity, 0, 1);
    EXPECT_TRUE(std::isfinite(far.logProbability));
    EXPECT_NEAR(far.slope, 1e6, 1);
    EXPECT_GT(far.curvature, 0);
    EXPECT_LE(far.curvature, 1);
    const IntervalEvidence both = intervalEvidence(1e3, 1e3 + 1, 0, 1);
    EXPECT_NEAR(both.slope, 1e3, 1);
    EXPECT_TRUE(std::isfinite(both.logProbability));
}

TEST(NormalInterval, ANarrowIntervalIsADensityTimesItsWidth) {
    for (const double at : {-20., -1., 0., .5, 3., 30.}) {
        for (const double width : {1e-10, 1e-7, 3e-6, 2e-4, 1e-3}) {
            const IntervalEvidence exact = intervalEvidence(at, at, 0, 1);
            const IntervalEvidence narrow = intervalEvidence(at - width / 2, at + width / 2, 0, 1);
            EXPECT_NEAR(narrow.logProbability, exact.logProbability + std::log(width), 1e-4);
            EXPECT_NEAR(narrow.slope, exact.slope, 1e-3 * std::abs(at) + 1e-9);
            EXPECT_NEAR(narrow.curvature, 1, 1e-4) << at << " " << width;
        }
    }
}

} // namespace
} // namespace pipwright
