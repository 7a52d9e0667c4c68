#include "core/statistics/augmented_block.h"
#include "core/statistics/neighbour_adjustment.h"
#include "tests/checks/tolerances.h"

#include <array>
#include <cmath>
#include <gtest/gtest.h>
#include <map>
#include <vector>

namespace pipwright {
namespace {

// Twelve treatments, 1 to 4 of them checks, in three blocks: Aravind et al. (2023), vignette "Data
// analysis with augmented randomised complete block design", the example of Federer (1956).
// Exact least-squares standard errors computed with R 4.2.2 (emmeans).
struct Plot {
    std::size_t block;
    std::size_t treatment;
    double first;
    double second;
};
constexpr std::array kPlots{std::to_array<Plot>(
    {{1, 1, 92, 258},  {1, 2, 79, 224},  {1, 3, 87, 238}, {1, 4, 81, 278}, {1, 7, 96, 347},
     {1, 11, 89, 300}, {1, 12, 82, 289}, {2, 1, 79, 260}, {2, 2, 81, 220}, {2, 3, 81, 237},
     {2, 4, 91, 227},  {2, 5, 79, 281},  {2, 9, 78, 311}, {3, 1, 83, 250}, {3, 2, 77, 240},
     {3, 3, 78, 268},  {3, 4, 78, 287},  {3, 8, 70, 226}, {3, 6, 75, 395}, {3, 10, 74, 450}})};

BlockAdjustment fitOf(double Plot::*variable) {
    std::vector<EntryRecord> records;
    for (const Plot& plot : kPlots) {
        records.push_back({plot.treatment - 1, plot.block - 1, plot.*variable});
    }
    return *BlockAdjustment::of(records, 12, 3);
}

TEST(AugmentedBlockCheck, FirstVariable) {
    const BlockAdjustment fit = fitOf(&Plot::first);
    expectNear(fit.blockEffects(), {2.5, .75, -3.25}, kClosedForm);
    expectNear(fit.adjustedMeans(),
               {254. / 3, 79, 82, 250. / 3, 78.25, 78.25, 93.5, 73.25, 77.25, 77.25, 86.5, 79.5},
               kClosedForm);
    EXPECT_NEAR(*fit.residualVariance(), 26.97222, 5e-6);
    EXPECT_EQ(fit.residualDegrees(), 6);
    double sum = 0;
    for (const double mean : fit.adjustedMeans()) {
        sum += mean / 12;
    }
    EXPECT_NEAR(sum, 81.0625, kClosedForm);
}

TEST(AugmentedBlockCheck, StandardErrorsAreThoseOfLeastSquares) {
    const BlockAdjustment fit = fitOf(&Plot::first);
    EXPECT_NEAR(*fit.differenceError(0, 1), 4.240458, kPrinted);  // two checks
    EXPECT_NEAR(*fit.differenceError(6, 10), 7.344688, kPrinted); // tests 7 and 11, block 1
    EXPECT_NEAR(*fit.differenceError(6, 4), 8.211611, kPrinted);  // tests 7 and 5, two blocks
    // A test against a check: texts and packages print sqrt(MSE (1 + 1/r + 1/c + 1/(rc))) =
    // 6.704752; the exact standard error has - 1/(rc).
    EXPECT_NEAR(*fit.differenceError(6, 0), 6.360687, kPrinted);
    const double textbook = std::sqrt(*fit.residualVariance() * (1 + 1. / 3 + 1. / 4 + 1. / 12));
    EXPECT_NEAR(textbook, 6.704752, kPrinted);
    EXPECT_LT(*fit.differenceError(6, 0), textbook);
}

TEST(AugmentedBlockCheck, SecondVariable) {
    const BlockAdjustment fit = fitOf(&Plot::second);
    expectNear(fit.blockEffects(), {.583333, -12.916667, 12.333333}, kPrinted);
    EXPECT_NEAR(*fit.residualVariance(), 286.25, kClosedForm);
    const std::vector<double> tests(fit.adjustedMeans().begin() + 4, fit.adjustedMeans().end());
    expectNear(tests,
               {293.9167, 382.6667, 346.4167, 213.6667, 323.9167, 437.6667, 299.4167, 288.4167},
               5e-5);
    EXPECT_NEAR(*fit.differenceError(4, 3), 20.721366, kPrinted);
}

// Meadowfoam, 50 tests and 3 checks in 6 blocks of 12 plots: J. Kling's extension tutorial on
// augmented designs, through the R package agridat (MIT licence). Block, row, column, entry, weight
// of a thousand seeds; then the Papadakis covariate and adjusted value, computed with R 4.2.2.
constexpr std::size_t kMf183 = 1001;
constexpr std::size_t kRoss = 1002;
constexpr std::size_t kStarlight = 1003;
struct Meadowfoam {
    std::size_t block;
    int row;
    int column;
    std::size_t entry;
    double weight;
    double covariate;
    double papadakis;
};
constexpr std::array kMeadowfoam{
    std::to_array<Meadowfoam>({{1, 1, 1, 31, 9.25, -0.7424, 9.41034930598},
                               {1, 1, 2, 126, 9.43, 0.0195777777778, 9.42936797457},
                               {1, 1, 3, kMf183, 10.3, -0.909866666667, 10.495729612},
                               {1, 1, 4, 34, 9.02, -0.130422222222, 9.05105813722},
                               {1, 1, 5, 89, 10.97, -0.411466666667, 11.0604337649},
                               {1, 1, 6, 90, 10.52, 0.193466666667, 10.4826308601},
                               {1, 1, 7, kRoss, 9.86, 0.491866666667, 9.7595885632},
                               {1, 1, 8, 121, 10.56, -0.236533333333, 10.613475993},
                               {1, 1, 9, 68, 10.39, 0.3952, 10.3100111125},
                               {1, 1, 10, 57, 10.97, -0.173755555556, 11.0102130731},
                               {1, 1, 11, 118, 10.32, 0.260133333333, 10.2685463434},
                               {1, 1, 12, kStarlight, 10.44, 0.7452, 10.2860673996},
                               {2, 2, 12, 96, 11.58, 0.115066666667, 11.5591942518},
                               {2, 2, 11, 15, 9.95, 0.219266666667, 9.90718015212},
                               {2, 2, 10, kMf183, 9.24, 0.2277, 9.19539846075},
                               {2, 2, 9, 105, 10.27, -0.854016666667, 10.4539303081},
                               {2, 2, 8, 125, 9.34, 0.2202, 9.29698296889},
                               {2, 2, 7, 95, 11.01, -0.0986, 11.0343351279},
                               {2, 2, 6, 27, 10.05, 0.2964, 9.99088436626},
                               {2, 2, 5, 47, 9.84, -0.1698, 9.87937739177},
                               {2, 2, 4, 30, 8.81, -0.8061, 8.98380706172},
                               {2, 2, 3, kStarlight, 9.4, -0.299016666667, 9.46667670633},
                               {2, 2, 2, 39, 10.98, -0.3624, 11.0600675606},
                               {2, 2, 1, kRoss, 9.18, -0.0114666666667, 9.18592666453},
                               {3, 3, 1, 77, 10.35, 0.1784, 10.3158139609},
                               {3, 3, 2, 102, 11.01, 0.1552, 10.9807153727},
                               {3, 3, 3, 149, 9.39, 0.0664, 9.37947594899},
                               {3, 3, 4, 143, 9.3, -0.6173, 9.43391971034},
                               {3, 3, 5, 23, 10.31, -0.220316666667, 10.3600499343},
                               {3, 3, 6, kRoss, 10.32, 0.3202, 10.2558561938},
                               {3, 3, 7, 71, 10.86, 0.1489, 10.8320463595},
                               {3, 3, 8, 12, 9.86, -0.4886, 9.96672955078},
                               {3, 3, 9, 104, 8.29, 0.0627, 8.28025763967},
                               {3, 3, 10, 70, 10.54, -0.595733333333, 10.6693633692},
                               {3, 3, 11, kMf183, 10.27, -0.0411, 10.2821872322},
                               {3, 3, 12, kStarlight, 10.5, 0.842911111111, 10.3254241929},
                               {4, 4, 12, 135, 11.15, 0.0311777777778, 11.1469172687},
                               {4, 4, 11, 100, 9.63, 0.345983333333, 9.56040900694},
                               {4, 4, 10, 61, 10.35, -0.0498, 10.3640252617},
                               {4, 4, 9, 74, 10.4, -0.4624, 10.5011943357},
                               {4, 4, 8, kRoss, 10.06, 0.0202, 10.0592365191},
                               {4, 4, 7, 141, 9.91, 0.5139, 9.80493363042},
                               {4, 4, 6, 113, 10.88, 0.132183333333, 10.8555780521},
                               {4, 4, 5, kMf183, 10.02, 0.2652, 9.96747592009},
                               {4, 4, 4, 58, 9.84, 0.0634833333333, 9.83009214659},
                               {4, 4, 3, 75, 11.34, -0.2686, 11.4002506456},
                               {4, 4, 2, 9, 10.72, 0.6764, 10.5806026209},
                               {4, 4, 1, kStarlight, 10.61, 0.0185333333333, 10.609588632},
                               {5, 5, 1, 28, 9.6, 0.3826, 9.52267308613},
                               {5, 5, 2, 44, 10.53, -0.166533333333, 10.5686872505},
                               {5, 5, 3, kRoss, 9.48, 0.508533333333, 9.37606743402},
                               {5, 5, 4, 123, 10.27, -0.0432, 10.2826308945},
                               {5, 5, 5, 111, 10.85, -0.239016666667, 10.9040006413},
                               {5, 5, 6, 92, 10.64, 0.2277, 10.5953984608},
                               {5, 5, 7, 110, 10.76, 0.2977, 10.7006097182},
                               {5, 5, 8, 109, 10.73, 0.138383333333, 10.704268192},
                               {5, 5, 9, kStarlight, 9.92, -0.0298, 9.92979990663},
                               {5, 5, 10, 35, 10.05, 0.1564, 10.0204618514},
                               {5, 5, 11, 72, 10.29, 0.0396833333333, 10.2851203191},
                               {5, 5, 12, kMf183, 10.4, 0.3368, 10.3323491491},
                               {6, 6, 12, kStarlight, 10.15, 0.444166666667, 10.0596660349},
                               {6, 6, 11, kRoss, 10.44, 0.2368, 10.3934759242},
                               {6, 6, 10, 85, 10.85, -0.0965333333333, 10.8738985079},
                               {6, 6, 9, 132, 9.52, 0.157844444444, 9.49015668687},
                               {6, 6, 8, kMf183, 10.14, 0.121866666667, 10.1177576311},
                               {6, 6, 7, 87, 10.73, -0.110422222222, 10.7568327822},
                               {6, 6, 6, 101, 9.24, -0.151466666667, 9.27550414967},
                               {6, 6, 5, 66, 8.79, -0.1598, 8.82726471426}})};

TEST(AugmentedBlockCheck, MeadowfoamBlockEffects) {
    std::map<std::size_t, std::size_t> numbers;
    std::vector<EntryRecord> records;
    for (const auto& plot : kMeadowfoam) {
        const std::size_t number = numbers.try_emplace(plot.entry, numbers.size()).first->second;
        records.push_back({number, plot.block - 1, plot.weight});
    }
    const auto fit = BlockAdjustment::of(records, numbers.size(), 6);
    ASSERT_TRUE(fit.ok());
    // Mean of the checks in the block less their grand mean (R 4.2.2).
    const std::vector<double> effects{.159444, -.767222, .322778, .189444, -.107222, .202778};
    expectNear(fit->blockEffects(), effects, kPrinted);
    for (const auto& plot : kMeadowfoam) {
        if (plot.entry < kMf183) {
            EXPECT_NEAR(fit->adjustedMeans()[numbers[plot.entry]],
                        plot.weight - effects[plot.block - 1], 2 * kPrinted);
        }
    }
}

TEST(PapadakisCheck, MeadowfoamFourNeighbours) {
    std::vector<PlantedValue> trees;
    for (const auto& plot : kMeadowfoam) {
        const bool isCheck = plot.entry >= kMf183;
        trees.push_back({plot.row, plot.column, plot.weight,
                         isCheck ? std::optional(plot.entry) : std::nullopt});
    }
    const auto found = papadakisAdjustment(trees);
    ASSERT_TRUE(found.ok());
    EXPECT_NEAR(found->slope, .211268, kPrinted);
    EXPECT_EQ(found->usedSlope, found->slope);
    for (std::size_t i = 0; i < trees.size(); ++i) {
        EXPECT_NEAR(found->covariates[i], kMeadowfoam[i].covariate, kClosedForm);
        EXPECT_NEAR(found->adjusted[i], kMeadowfoam[i].papadakis, kClosedForm);
    }
}

// One row of nine trees; all computed with R 4.2.2.
const std::vector<double> kRow{5.0, 5.5, 6.2, 6.0, 4.8, 4.1, 4.5, 5.2, 5.9};

TEST(PapadakisCheck, OneRow) {
    std::vector<PlantedValue> trees;
    for (std::size_t i = 0; i < kRow.size(); ++i) {
        trees.push_back({1, static_cast<int>(i), kRow[i], std::nullopt});
    }
    const auto found = papadakisAdjustment(trees, false);
    expectNear(
        found->covariates,
        {.255556, .355556, .505556, .255556, -.194444, -.594444, -.594444, -.044444, -.044444},
        kPrinted);
    EXPECT_NEAR(found->slope, 1.497354, kPrinted);
    expectNear(
        found->adjusted,
        {4.600705, 4.950970, 5.426367, 5.600705, 5.074515, 4.973457, 5.373457, 5.249912, 5.949912},
        kPrinted);
    // A slope above 1 over-corrects and is not used unless asked for.
    EXPECT_EQ(papadakisAdjustment(trees)->usedSlope, 1);
}

TEST(MovingMeanCheck, TwoOnEitherSide) {
    const auto found = movingMeanAdjustment(kRow, 2);
    expectNear(found->movingMeans, {5.85, 5.733333, 5.325, 5.15, 5.2, 5.125, 5, 4.833333, 4.85},
               kPrinted);
    expectNear(
        found->adjusted,
        {4.394444, 5.011111, 6.119444, 6.094444, 4.844444, 4.219444, 4.744444, 5.611111, 6.294444},
        kPrinted);
}

TEST(CheckLevelCheck, BetweenThreeCheckTrees) {
    const std::vector<CheckValue> checks{{1, 6}, {6, 5}, {11, 7}};
    std::vector<double> positions;
    for (int position = 1; position <= 11; ++position) {
        positions.push_back(position);
    }
    expectNear(*checkLevels(checks, positions), {6, 5.8, 5.6, 5.4, 5.2, 5, 5.4, 5.8, 6.2, 6.6, 7},
               kClosedForm);
    expectNear(*checkLevels(checks, std::vector<double>{-3, 40}), {6, 7}, kClosedForm);
    EXPECT_FALSE(checkLevels({}, positions).ok());
}

} // namespace
} // namespace pipwright
