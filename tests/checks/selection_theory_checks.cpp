#include "core/statistics/order_statistics.h"
#include "core/statistics/orthant.h"
#include "core/statistics/selection.h"
#include "core/statistics/selection_index.h"
#include "tests/checks/tolerances.h"

#include <array>
#include <cmath>
#include <cstdint>
#include <gtest/gtest.h>
#include <limits>
#include <vector>

// Where no other source is named, the values were computed with R 4.2.2 (quadrature of the normal
// order statistics, solve(), mvtnorm).

namespace pipwright {
namespace {

constexpr double kQuantile = 1e-6;

struct InfiniteEntry {
    double kept;
    double threshold;
    double intensity;
    double varianceReduction;
};
constexpr std::array kInfinite{
    std::to_array<InfiniteEntry>({{0.001, 3.09023230617, 3.36709007706, 0.932205053143},
                                  {0.005, 2.57582930355, 2.89194860538, 0.914200774075},
                                  {0.01, 2.32634787404, 2.66521422035, 0.903151404969},
                                  {0.02, 2.05374891063, 2.42090679404, 0.88885501442},
                                  {0.03, 1.88079360815, 2.26806504721, 0.878356814724},
                                  {0.04, 1.75068607125, 2.15434435065, 0.869618933813},
                                  {0.05, 1.64485362695, 2.06271280751, 0.861923483467},
                                  {0.06, 1.5547735946, 1.98538275321, 0.854923996887},
                                  {0.07, 1.47579102818, 1.91811306529, 0.848423678446},
                                  {0.08, 1.40507156031, 1.85832782827, 0.84229873609},
                                  {0.09, 1.34075503369, 1.80434030911, 0.836465599154},
                                  {0.1, 1.28155156554, 1.75498331932, 0.830864830723},
                                  {0.12, 1.17498679207, 1.66700403158, 0.820194721878},
                                  {0.15, 1.03643338949, 1.55439183502, 0.805110378615},
                                  {0.2, 0.841621233573, 1.39980960204, 0.781357437925},
                                  {0.25, 0.674489750196, 1.27110629074, 0.758363037838},
                                  {0.3, 0.524400512708, 1.15897538067, 0.735456649154},
                                  {0.4, 0.253347103136, 0.965856333742, 0.688181553231},
                                  {0.5, 0, 0.797884560803, 0.636619772368},
                                  {0.6, -0.253347103136, 0.643904222495, 0.577743917213},
                                  {0.7, -0.524400512708, 0.496703734572, 0.507186293011},
                                  {0.8, -0.841621233573, 0.34995240051, 0.416994053631},
                                  {0.9, -1.28155156554, 0.194998146592, 0.287924457217}})};

TEST(SelectionCheck, IntensityOfInfinitePopulations) {
    for (const auto& entry : kInfinite) {
        const auto found = truncationSelection(entry.kept);
        EXPECT_NEAR(found->threshold, entry.threshold, kQuantile);
        EXPECT_NEAR(found->intensity, entry.intensity, kQuantile);
        EXPECT_NEAR(found->varianceReduction, entry.varianceReduction, kQuantile);
    }
    // The two-decimal list of an exercise (albert.io) ends 0.01 -> 2.67 and 0.90 -> 0.20.
    EXPECT_NEAR(truncationSelection(.01)->intensity, 2.67, .005);
    EXPECT_NEAR(truncationSelection(.90)->intensity, .20, .0051);
}

struct FiniteEntry {
    std::int64_t kept;
    std::int64_t candidates;
    double exact;
    double burrows;
    double infinite;
};
constexpr std::array kFinite{
    std::to_array<FiniteEntry>({{1, 2, 0.564189583548, 0.58899887125, 0.797884560803},
                                {1, 3, 0.846284375322, 0.861609596371, 1.09079932403},
                                {1, 4, 1.029375373, 1.03509140969, 1.27110629074},
                                {1, 5, 1.16296447364, 1.16168197893, 1.39980960204},
                                {1, 10, 1.53875273084, 1.52188087067, 1.75498331932},
                                {2, 10, 1.27005488771, 1.26992180762, 1.39980960204},
                                {3, 10, 1.06538962693, 1.06746299151, 1.15897538067},
                                {1, 20, 1.8674750598, 1.84339921682, 2.06271280751},
                                {2, 20, 1.63753957785, 1.63288203669, 1.75498331932},
                                {5, 20, 1.21447838283, 1.21491227144, 1.27110629074},
                                {1, 50, 2.24907362939, 2.22247199347, 2.42090679404},
                                {5, 50, 1.70548131843, 1.70470632059, 1.75498331932},
                                {10, 50, 1.37178347057, 1.37179458756, 1.39980960204},
                                {1, 100, 2.50759363644, 2.48132693423, 2.66521422035},
                                {5, 100, 2.01820526414, 2.01711295202, 2.06271280751},
                                {10, 100, 1.7297911357, 1.72959592393, 1.75498331932},
                                {1, 200, 2.74604244745, 2.72077513615, 2.89194860538},
                                {10, 200, 2.04007512003, 2.03979944729, 2.06271280751},
                                {1, 500, 3.03669934593, 3.01300235738, 3.17009662032},
                                {1, 1000, 3.24143576914, 3.21889059693, 3.36709007706}})};

TEST(SelectionCheck, IntensityOfFinitePopulations) {
    for (const auto& entry : kFinite) {
        EXPECT_NEAR(*finiteIntensity(entry.kept, entry.candidates), entry.exact, kQuantile);
        EXPECT_NEAR(*burrowsIntensity(entry.kept, entry.candidates), entry.burrows, kQuantile);
        EXPECT_NEAR(truncationSelection(static_cast<double>(entry.kept) /
                                        static_cast<double>(entry.candidates))
                        ->intensity,
                    entry.infinite, kQuantile);
    }
}

struct MaximumEntry {
    std::int64_t size;
    double expected;
    double blom;
};
constexpr std::array kMaxima{std::to_array<MaximumEntry>({{1, 0, 0},
                                                          {2, 0.564189583548, 0.58945579785},
                                                          {3, 0.846284375322, 0.869423773289},
                                                          {4, 1.029375373, 1.04913139796},
                                                          {5, 1.16296447364, 1.17976111761},
                                                          {6, 1.26720636061, 1.28155156554},
                                                          {7, 1.35217837561, 1.36448874817},
                                                          {8, 1.42360030605, 1.43420015969},
                                                          {9, 1.48501316221, 1.49415490862},
                                                          {10, 1.53875273084, 1.5466352714},
                                                          {15, 1.73591344494, 1.73938415692},
                                                          {20, 1.8674750598, 1.86824165486},
                                                          {25, 1.96531460975, 1.96421684195},
                                                          {30, 2.04276084417, 2.04028132201},
                                                          {40, 2.16077717818, 2.15635570519},
                                                          {50, 2.24907362939, 2.24332876305},
                                                          {75, 2.4029924598, 2.39520013073},
                                                          {100, 2.50759363644, 2.49859056096},
                                                          {150, 2.64924674448, 2.63882189787},
                                                          {200, 2.74604244745, 2.73478004246},
                                                          {300, 2.87776684715, 2.86552398522},
                                                          {400, 2.96817818209, 2.95535959625},
                                                          {500, 3.03669934593, 3.02349269372},
                                                          {1000, 3.24143576914, 3.22728994584}})};

TEST(SelectionCheck, ExpectedMaximum) {
    for (const auto& entry : kMaxima) {
        EXPECT_NEAR(*expectedMaximum(entry.size), entry.expected, kQuantile) << entry.size;
        EXPECT_NEAR(*blomScore(1, entry.size), entry.blom, kQuantile) << entry.size;
    }
}

TEST(SelectionCheck, BreedersEquation) {
    // 240-day weight of pigs: h2 = .4, phenotypic variance 1156 (inputs of a published exercise).
    EXPECT_NEAR(*responseOfPhenotypes(truncationSelection(.05)->intensity, .4, std::sqrt(1156.0)),
                28.052894, kQuantile);
}

TEST(SelectionCheck, Reliabilities) {
    EXPECT_NEAR(*reliabilityOfOwnRecords(.35, .5, 1), .35, kClosedForm);
    EXPECT_NEAR(*reliabilityOfOwnRecords(.35, .5, 2), .35 * 2 / 1.5, kClosedForm);
    EXPECT_NEAR(*reliabilityOfOwnRecords(.35, .5, 2), .466667, kQuantile);
    EXPECT_NEAR(*reliabilityOfOwnRecords(.35, .5, 3), .525, kClosedForm);
    EXPECT_NEAR(*reliabilityOfOwnRecords(.35, .5, 5), .583333, kQuantile);
    EXPECT_NEAR(*reliabilityOfOwnRecords(.35, .5, 10), .636364, kQuantile);
    EXPECT_NEAR(*reliabilityOfHalfSibs(.3, 10), .447761, kQuantile);
    const CloneVariances clone{1, .5, 1.5};
    EXPECT_NEAR(*cloneMeanHeritability(clone, 1, 1), .333333, kQuantile);
    EXPECT_NEAR(*cloneMeanHeritability(clone, 2, 2), .615385, kQuantile);
    EXPECT_NEAR(*cloneMeanHeritability(clone, 3, 4), .774194, kQuantile);
}

TEST(SelectionCheck, UsefulnessOfCrosses) {
    const std::array<SeedlingOutlook, 3> crosses{{{6.2, .5}, {5.8, 1.0}, {6.0, .7}}};
    const std::array useful{6.929279, 7.258558, 7.020991};
    const std::array best{7.170873, 7.741745, 7.359222};
    const std::array oneAboveEight{.015786, .753428, .192624};
    const double accuracy = std::sqrt(.5);
    for (std::size_t i = 0; i < crosses.size(); ++i) {
        EXPECT_NEAR(*usefulness(crosses[i], truncationSelection(.05)->intensity, accuracy),
                    useful[i], kQuantile);
        EXPECT_NEAR(*expectedBest(crosses[i], 200, accuracy), best[i], kQuantile);
        EXPECT_NEAR(*chanceOneExceeds(crosses[i], 8, 100), oneAboveEight[i], kQuantile);
    }
}

// Mrode (2014), Linear Models for the Prediction of Animal Breeding Values, 3rd ed., p. 18.
const TraitCovariances kMrode{DenseMatrix({{6400, -57.60}, {-57.60, 51.84}}),
                              DenseMatrix({{2752, 62.064}, {62.064, 15.552}})};

TEST(SelectionIndexCheck, MrodeTwoTraits) {
    const auto index = smithHazelIndex(kMrode, std::vector<double>{1.5, .5});
    ASSERT_TRUE(index.ok());
    expectNear(index->coefficients, {.674, 2.695}, .0005); // as printed
    expectNear(index->coefficients, {.67410227, 2.69483586}, 5e-9);
    EXPECT_NEAR(index->indexDeviation, 55.456707, kQuantile);
    EXPECT_NEAR(index->goalDeviation, 79.303115, kQuantile);
    EXPECT_NEAR(index->accuracy, .6993005, 5e-8);
    expectNear(index->responses, {36.467757, 1.5101432}, kQuantile);
    EXPECT_TRUE(index->turnedTraits.empty());
    EXPECT_NEAR(index->response(1), 55.456707, kQuantile);
}

TEST(SelectionIndexCheck, MrodeOneTraitInTheGoal) {
    const auto gain = smithHazelIndex(kMrode, std::vector<double>{1.0, 0.0});
    expectNear(gain->coefficients, {.445, 1.692}, .0005); // as printed
    expectNear(gain->coefficients, {.44522727, 1.69191919}, 5e-9);
    const auto lean = smithHazelIndex(kMrode, std::vector<double>{0.0, 1.0});
    expectNear(lean->coefficients, {.0125, .314}, .0005); // as printed
    expectNear(lean->coefficients, {.01252273, .31391414}, 5e-9);
}

TEST(SelectionIndexCheck, ThreeTraits) {
    const TraitCovariances traits{DenseMatrix({{1, .2, .1}, {.2, 1, .3}, {.1, .3, 1}}),
                                  DenseMatrix({{.4, .1, 0}, {.1, .5, .2}, {0, .2, .6}})};
    const auto index = smithHazelIndex(traits, std::vector<double>{3, 2, 1});
    expectNear(index->coefficients, {1.1227064, 1.108945, .55504587}, kQuantile);
    EXPECT_NEAR(index->indexDeviation, 1.946857, kQuantile);
    EXPECT_NEAR(index->accuracy, .67987197, 5e-8);
    expectNear(index->responses, {.28763132, .39949122, .28498062}, 5e-8);
}

TEST(SelectionCheck, IndependentCulling) {
    constexpr double infinite = std::numeric_limits<double>::infinity();
    const std::array<std::pair<double, double>, 4> known{
        {{-.5, .012447}, {0, .048951}, {.3, .076501}, {.5, .097477}}};
    for (const auto& [correlation, chance] : known) {
        const JointNormal traits{{0, 0}, DenseMatrix({{1, correlation}, {correlation, 1}})};
        const auto found = rectangleProbability(traits, std::vector<double>{.5, 1},
                                                std::vector<double>{infinite, infinite});
        EXPECT_NEAR(found->value, chance, kQuantile);
    }
}

} // namespace
} // namespace pipwright
