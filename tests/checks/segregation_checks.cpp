#include "core/pedigree/segregation.h"
#include "tests/checks/tolerances.h"

#include <cmath>
#include <cstdint>
#include <gtest/gtest.h>
#include <optional>
#include <string>
#include <vector>

// Mendel (1866), Versuche ueber Pflanzen-Hybriden: the counts, from memory, universally reprinted.
// The statistics were computed in R 4.2.2.

namespace pipwright {
namespace {

using Expression = SegregatingGene::Expression;

constexpr SegregatingGene kOneParentOnce{1, 0, Expression::dominant};
constexpr SegregatingGene kBothOnce{1, 1, Expression::dominant};

struct KnownRatio {
    const char* what;
    std::vector<SegregatingGene> genes;
    std::vector<std::int64_t> counted;
    double chiSquare;
    double pValue;
    double likelihoodRatio;
    std::optional<double> yates;
    std::optional<double> yatesPValue;
    std::optional<double> exact;
};

const std::vector<KnownRatio>& knownTests() {
    static const std::vector<KnownRatio> all = {
        {"seed shape round:wrinkled",
         {kBothOnce},
         {5474, 1850},
         0.262880029127981,
         0.608148404522074,
         0.262277484708825,
         0.249226288002913,
         0.617620399454547,
         0.608155387364119},
        {"cotyledon yellow:green",
         {kBothOnce},
         {6022, 2001},
         0.0149985458473555,
         0.902527951585321,
         0.015006449973729,
         0.0120071461215672,
         0.912744753728796,
         0.907641714776814},
        {"seed coat",
         {kBothOnce},
         {705, 224},
         0.390742734122713,
         0.531909247383909,
         0.393892418966896,
         0.344815213491209,
         0.557062888994559,
         0.544640261093329},
        {"pod form",
         {kBothOnce},
         {882, 299},
         0.0635055038103302,
         0.801038757531421,
         0.0633275800767219,
         0.047699689528648,
         0.827115450912228,
         0.81404621338816},
        {"pod colour",
         {kBothOnce},
         {428, 152},
         0.450574712643678,
         0.50206215878985,
         0.445873447517938,
         0.388505747126437,
         0.533085891962909,
         0.502170108251837},
        {"flower position",
         {kBothOnce},
         {651, 207},
         0.34965034965035,
         0.554311125400167,
         0.352423681930064,
         0.304584304584305,
         0.581022644667377,
         0.581056210095246},
        {"stem length",
         {kBothOnce},
         {787, 277},
         0.606516290726817,
         0.436102511484232,
         0.601073985717864,
         0.552631578947368,
         0.45724442162388,
         0.436167669872478},
        {"dihybrid",
         {kBothOnce, kBothOnce},
         {315, 108, 101, 32},
         0.470023980815348,
         0.925425895103616,
         0.475445238998232,
         std::nullopt,
         std::nullopt,
         std::nullopt},
        {"1:1",
         {kOneParentOnce},
         {60, 40},
         4,
         0.0455002638963585,
         4.02710271013778,
         3.61,
         0.0574331196320037,
         0.0568879336409809},
        {"1:1",
         {kOneParentOnce},
         {48, 52},
         0.16,
         0.689156516779352,
         0.160042693996763,
         0.09,
         0.764177155622095,
         0.764353434402667},
        {"1:1",
         {kOneParentOnce},
         {9, 1},
         6.4,
         0.0114120363860017,
         7.36128414336994,
         4.9,
         0.0268566955075243,
         0.021484375},
    };
    return all;
}

TEST(SegregationCheck, CountsAgainstRatios) {
    for (const KnownRatio& known : knownTests()) {
        SCOPED_TRACE(known.what);
        const auto classes = segregationOf(known.genes);
        ASSERT_TRUE(classes.ok());
        const auto test = testSegregation(*classes, known.counted);
        ASSERT_TRUE(test.ok());
        EXPECT_NEAR(test->fit.pearson.statistic, known.chiSquare, kClosedForm);
        EXPECT_NEAR(test->fit.pearson.pValue, known.pValue, kClosedForm);
        EXPECT_NEAR(test->fit.likelihoodRatio.statistic, known.likelihoodRatio, kClosedForm);
        EXPECT_EQ(test->fit.pearson.degreesOfFreedom, static_cast<int>(known.counted.size()) - 1);
        ASSERT_EQ(test->fit.yates.has_value(), known.yates.has_value());
        if (known.yates) {
            EXPECT_NEAR(test->fit.yates->statistic, *known.yates, kClosedForm);
            EXPECT_NEAR(test->fit.yates->pValue, *known.yatesPValue, kClosedForm);
        }
        ASSERT_EQ(test->exact.has_value(), known.exact.has_value());
        if (known.exact) {
            EXPECT_NEAR(test->exact->pValue, *known.exact, kClosedForm);
        }
    }
}

// Scab resistance Rvi6, one parent carrying it once. Auriu de Bistrita x Florina: 13 resistant,
// 13 susceptible (J. USAMV Cluj Horticulture, article 14241, abstract). Salva x Jonathan: 24 and
// 43 (article 14966, abstract). The statistics computed in R.
TEST(SegregationCheck, ScabResistance) {
    const auto half = segregationOf(std::vector{kOneParentOnce}).value();
    const std::vector<std::int64_t> even{13, 13};
    const auto fits = testSegregation(half, even).value();
    EXPECT_NEAR(fits.fit.pearson.statistic, 0, kClosedForm);
    EXPECT_NEAR(fits.fit.pearson.pValue, 1, kClosedForm);
    const std::vector<std::int64_t> deficit{24, 43};
    const auto doesNot = testSegregation(half, deficit).value();
    EXPECT_NEAR(doesNot.fit.pearson.statistic, 5.388060, 5e-7);
    EXPECT_NEAR(doesNot.fit.pearson.pValue, .020275, 5e-7);
    EXPECT_NEAR(doesNot.exact->pValue, .027120, 5e-7);
}

// Zhdanov and Sedov (abstract): parents with Vf and Vm once each, crossed with a susceptible one,
// give 3 resistant to 1 susceptible. Two resistant parents give 1:2:1 at the marker (abstract,
// Purdue).
TEST(SegregationCheck, TwoGenesAndMarkers) {
    const auto either =
        segregationOf(std::vector{kOneParentOnce, kOneParentOnce}, Grouping::anyGene).value();
    ASSERT_EQ(either.size(), 2U);
    EXPECT_NEAR(either[0].share, 0.75, kClosedForm);
    const auto marker =
        segregationOf(std::vector<SegregatingGene>{{1, 1, Expression::codominant}}).value();
    ASSERT_EQ(marker.size(), 3U);
    EXPECT_NEAR(marker[1].share, 0.5, kClosedForm);
}

// The question of Sedcole (1977), Crop Science 17:667-668; exact numbers computed in R. 11 plants
// for one of a quarter and 191 for one of 1/64 are the familiar published entries (from memory).
TEST(SegregationCheck, SeedlingsToGrow) {
    struct Line {
        double chance;
        std::vector<std::int64_t> at95; // for 1, 2, 3, 5 and 10 wanted
        std::vector<std::int64_t> at99; // for 1, 5 and 10
    };
    const std::vector<Line> lines = {
        {3 / 4., {3, 5, 6, 9, 17}, {4, 11, 19}},
        {1 / 2., {5, 8, 11, 16, 28}, {7, 19, 33}},
        {1 / 4., {11, 18, 23, 34, 60}, {17, 43, 70}},
        {1 / 8., {23, 37, 49, 71, 123}, {35, 89, 146}},
        {1 / 16., {47, 75, 99, 144, 248}, {72, 182, 296}},
        {1 / 32., {95, 150, 200, 291, 500}, {146, 368, 597}},
        {1 / 64., {191, 302, 401, 584, 1002}, {293, 739, 1198}},
        {1 / 100., {299, 473, 628, 913, 1568}, {459, 1157, 1874}},
        {1 / 256., {766, 1213, 1610, 2341, 4018}, {1177, 2967, 4804}},
    };
    const std::vector<std::int64_t> wanted95{1, 2, 3, 5, 10};
    const std::vector<std::int64_t> wanted99{1, 5, 10};
    for (const Line& line : lines) {
        for (std::size_t i = 0; i < wanted95.size(); ++i) {
            EXPECT_EQ(seedsToSow(wanted95[i], {line.chance, 1, 1}, 0.95).value(), line.at95[i])
                << wanted95[i] << " of " << line.chance;
        }
        for (std::size_t i = 0; i < wanted99.size(); ++i) {
            EXPECT_EQ(seedsToSow(wanted99[i], {line.chance, 1, 1}, 0.99).value(), line.at99[i])
                << wanted99[i] << " of " << line.chance;
        }
    }
}

TEST(SegregationCheck, GerminationAndSurvivalCountIn) {
    EXPECT_EQ(seedsToSow(10, {0.5, 0.7, 0.9}, 0.95).value(), 47);
    EXPECT_EQ(seedsToSow(5, {0.25, 0.8, 1}, 0.95).value(), 44);
}

} // namespace
} // namespace pipwright
