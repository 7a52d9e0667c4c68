#include "core/fruit/acid_class.h"
#include "core/fruit/alternate_bearing.h"
#include "core/fruit/firmness.h"
#include "core/fruit/fruit_size.h"
#include "core/fruit/juice.h"
#include "core/fruit/streif.h"
#include "tests/checks/tolerances.h"

#include <gtest/gtest.h>
#include <vector>

namespace pipwright {
namespace {

// Arithmetic of titration with the trade's factor 0.067 for malic acid (0.064 citric); computed
// with R 4.2.2 as V x N x factor x 100 / sample, percent.
TEST(AcidCheck, TitrationByTheTradesFactors) {
    const auto percent = [](double alkali, double strength, double sample, Acid acid) {
        return acidOf({Millilitres{alkali}, MolesPerLitre{strength}}, Millilitres{sample}, acid)
                   ->number() /
               10;
    };
    EXPECT_NEAR(percent(7.5, 0.1, 10, Acid::malic), 0.5025, kClosedForm);
    EXPECT_NEAR(percent(11.2, 0.1, 10, Acid::malic), 0.7504, kClosedForm);
    EXPECT_NEAR(percent(5, 0.0975, 5, Acid::malic), 0.65325, kClosedForm);
    EXPECT_NEAR(percent(7.5, 0.1, 10, Acid::citric), 0.48, kClosedForm);
    const Titration titration{Millilitres{7.5}, MolesPerLitre{0.1}};
    EXPECT_NEAR(acidOf(titration, Millilitres{10}, Acid::malic)->number(), 5.025, kClosedForm);
    EXPECT_NEAR(acidOf(titration, Grams{10}, Acid::malic)->number(), 0.5025, kClosedForm);
    // With the equivalent weight from the molar mass.
    EXPECT_NEAR(acidOf(titration, Millilitres{10}, Acid::malic, AcidEquivalent::exact)->number() /
                    10,
                0.502828, 5e-7);
    EXPECT_NEAR(inTermsOf(Acid::citric, GramsPerLitre{5.025}, Acid::malic).number(), 4.8,
                kClosedForm);
}

// Computed with R 4.2.2.
TEST(JuiceCheck, SugarAgainstAcid) {
    EXPECT_NEAR(sugarAcidRatio(Brix{12.6}, GramsPerLitre{5.025}).value(), 25.074627, 5e-7);
    EXPECT_NEAR(sugarAcidRatio(Brix{14}, GramsPerLitre{3.5}).value(), 40, kClosedForm);
    EXPECT_NEAR(sugarAcidRatio(Brix{11}, GramsPerLitre{9}).value(), 12.222222, 5e-7);
    EXPECT_NEAR(sugarLessAcid(Brix{12.6}, GramsPerLitre{5.025}, 5)->number(), 10.0875, kClosedForm);
}

// Temperature correction of refractometers set at 20 degrees Celsius: table A.1 of the GOST
// standard at docs.cntd.ru/document/1200157922 (the international table of 1936), 10 to 21
// degrees. The rows above are remembered, not read up; they are checked only for being what the
// program says they are, and must be marked so.
TEST(BrixCheck, TableOfTemperatureCorrections) {
    struct Row {
        double degrees;
        std::vector<double> corrections; // at 0, 5, 10, 15, 20, 25 and 30 Brix
    };
    const std::vector<Row> read = {
        {10, {-.50, -.54, -.58, -.61, -.64, -.66, -.68}},
        {11, {-.46, -.49, -.53, -.55, -.58, -.60, -.62}},
        {12, {-.42, -.45, -.48, -.50, -.52, -.54, -.56}},
        {13, {-.37, -.40, -.42, -.44, -.46, -.48, -.49}},
        {14, {-.33, -.35, -.37, -.39, -.40, -.41, -.42}},
        {15, {-.27, -.29, -.31, -.33, -.34, -.34, -.35}},
        {16, {-.22, -.24, -.25, -.26, -.27, -.28, -.28}},
        {17, {-.17, -.18, -.19, -.20, -.21, -.21, -.21}},
        {18, {-.12, -.13, -.13, -.14, -.14, -.14, -.14}},
        {19, {-.06, -.06, -.06, -.07, -.07, -.07, -.07}},
        {20, {0, 0, 0, 0, 0, 0, 0}},
        {21, {.06, .07, .07, .07, .07, .08, .08}},
    };
    const std::vector<Row> remembered = {{22, {.13, .13, .14, .14, .15, .15, .15}},
                                         {25, {.33, .35, .36, .37, .38, .38, .39}},
                                         {28, {.56, .57, .60, .61, .62, .63, .63}},
                                         {30, {.72, .74, .77, .78, .79, .80, .80}}};
    const auto expectRows = [](const std::vector<Row>& rows, bool fromPrint) {
        for (const Row& row : rows) {
            for (std::size_t column = 0; column < row.corrections.size(); ++column) {
                const auto at20 = brixAt20(Brix{5.0 * static_cast<double>(column)},
                                           Celsius{row.degrees}, Refractometer::uncompensated);
                ASSERT_TRUE(at20);
                EXPECT_NEAR(at20->correction.number(), row.corrections[column], kClosedForm)
                    << row.degrees;
                EXPECT_EQ(at20->fromPrint, fromPrint) << row.degrees;
            }
        }
    };
    expectRows(read, true);
    expectRows(remembered, false);
}

// The same table between its entries, in straight lines (R 4.2.2).
TEST(BrixCheck, BetweenTheEntries) {
    const auto at20 = [](double brix, double degrees) {
        return *brixAt20(Brix{brix}, Celsius{degrees}, Refractometer::uncompensated);
    };
    EXPECT_NEAR(at20(12, 15).correction.number(), -0.318, kClosedForm);
    EXPECT_NEAR(at20(12, 15).value.number(), 11.682, kClosedForm);
    EXPECT_NEAR(at20(13, 17.5).correction.number(), -0.166, kClosedForm);
    EXPECT_NEAR(at20(13, 17.5).value.number(), 12.834, kClosedForm);
    EXPECT_NEAR(at20(10, 10).value.number(), 9.42, kClosedForm);
    EXPECT_NEAR(at20(12.5, 25).correction.number(), 0.365, kClosedForm); // remembered row
    EXPECT_NEAR(at20(14, 28).correction.number(), 0.608, kClosedForm);   // remembered row
}

// The other official table, OIV-MA-AS2-02, differs; a guard that the two are not mixed up.
TEST(BrixCheck, IsNotTheTableForWine) {
    const auto correction = [](double brix, double degrees) {
        return brixAt20(Brix{brix}, Celsius{degrees}, Refractometer::uncompensated)
            ->correction.number();
    };
    struct Wine {
        double degrees;
        double brix;
        double correction;
    };
    for (const Wine& wine : std::vector<Wine>{{10, 10, -.59},
                                              {10, 15, -.62},
                                              {10, 20, -.65},
                                              {15, 10, -.32},
                                              {16, 10, -.26},
                                              {16, 15, -.27},
                                              {16, 20, -.28}}) {
        const double ours = correction(wine.brix, wine.degrees);
        EXPECT_NE(ours, wine.correction);
        EXPECT_NEAR(ours, wine.correction, 0.02) << wine.degrees << " " << wine.brix;
    }
}

StreifParts parts(double kilograms, double brix, double starch) {
    return {*Firmness<AppleProbe>::of(toNewtons(KilogramsForce{kilograms})), Brix{brix},
            *StarchIndex<StarchTen>::of(starch)};
}

// The index in both conventions: kilograms as KOB Bavendorf, newtons as NIAB and DLR
// Rheinland-Pfalz; values computed with R 4.2.2.
TEST(StreifCheck, InBothConventions) {
    EXPECT_NEAR(streifInKilograms(parts(7.5, 12, 3))->number(), 0.208333, 5e-7);
    EXPECT_NEAR(streifInNewtons(parts(7.5, 12, 3))->number(), 2.043052, 5e-7);
    EXPECT_NEAR(streifInKilograms(parts(8.2, 11.5, 2.5))->number(), 0.285217, 5e-7);
    EXPECT_NEAR(streifInKilograms(parts(6.8, 13, 5))->number(), 0.104615, 5e-7);
}

// DeLong et al. (1999), HortScience 34:1251, abstract: Jonagold is picked at 1.38 to 2.34. Such
// windows are of the newton kind: a fruit of 7.5 kg, 12 Brix, step 3 lies within it by newtons and
// far below it by kilograms.
TEST(StreifCheck, PrintedWindowsAreOfTheNewtonKind) {
    const StreifParts jonagold = parts(7.5, 12, 3);
    EXPECT_GT(streifInNewtons(jonagold)->number(), 1.38);
    EXPECT_LT(streifInNewtons(jonagold)->number(), 2.34);
    EXPECT_LT(streifInKilograms(jonagold)->number(), 1.38);
}

// Factors are exact by definition of the pound (1959) and of standard gravity (1901).
TEST(FirmnessCheck, ForcesInThreeUnits) {
    EXPECT_NEAR(toNewtons(PoundsForce{1}).number(), 4.4482216152605, 1e-13);
    EXPECT_NEAR(toNewtons(PoundsForce{15}).number(), 66.723324, 5e-7);
    EXPECT_NEAR(toNewtons(PoundsForce{18}).number(), 80.067989, 5e-7);
    EXPECT_NEAR(toNewtons(KilogramsForce{1}).number(), 9.80665, 1e-13);
    EXPECT_NEAR(toNewtons(KilogramsForce{7.5}).number(), 73.549875, kClosedForm);
    EXPECT_NEAR(toPoundsForce(Newtons{66.7}).number(), 14.994757, 5e-7);
    EXPECT_NEAR(toKilogramsForce(Newtons{66.7}).number(), 6.801507, 5e-7);
    EXPECT_NEAR(toKilogramsForce(toNewtons(PoundsForce{16})).number(), 7.257478, 5e-7);
}

// Probes of 11.1 mm and 8 mm, about a square centimetre and half of it (Strickhof); areas R 4.2.2.
TEST(FirmnessCheck, AreasOfTheProbes) {
    EXPECT_NEAR(squareMillimetresOf<AppleProbe>(), 96.7689, 5e-5);
    EXPECT_NEAR(squareMillimetresOf<PearProbe>(), 50.2655, 5e-5);
    EXPECT_NEAR(squareMillimetresOf<AppleProbe>() / squareMillimetresOf<PearProbe>(), 1.925156,
                5e-7);
}

// DLR Rheinland-Pfalz prints the example; the mean is also checked with R 4.2.2.
TEST(SizeCheck, MeanOfSortedFruit) {
    const auto sorted = [](double diameter, double kilograms) {
        return SizedFruit{*SizeClass::of(Millimetres{diameter}), Kilograms{kilograms}};
    };
    const std::vector<SizedFruit> fruit = {sorted(61, 10), sorted(68, 20), sorted(74.9, 10)};
    EXPECT_NEAR(meanSize(fruit)->diameter.number(), 67.5, kClosedForm);
}

// 42 pounds over the count, R 4.2.2.
TEST(SizeCheck, CartonCounts) {
    struct Known {
        int count;
        double grams;
    };
    for (const Known& known : std::vector<Known>{{88, 216.4873},
                                                 {100, 190.5088},
                                                 {113, 168.5919},
                                                 {125, 152.4070},
                                                 {138, 138.0499},
                                                 {163, 116.8766}}) {
        EXPECT_NEAR(meanMassInCarton(known.count)->number(), known.grams, 5e-5) << known.count;
    }
}

// Classes of Barker (Long Ashton 1903) as cider.org.uk prints them, and of juice acidity as on
// yorkshireapples.co.uk: low .10-.35, medium .36-.60, high .61-.90, very high from .91 percent.
TEST(AcidClassCheck, PrintedLimits) {
    EXPECT_EQ(ciderKind(GramsPerLitre{4.6}, GramsPerLitre{1.9}), CiderKind::sharp);
    EXPECT_EQ(ciderKind(GramsPerLitre{4.6}, GramsPerLitre{2.1}), CiderKind::bittersharp);
    EXPECT_EQ(ciderKind(GramsPerLitre{4.4}, GramsPerLitre{2.1}), CiderKind::bittersweet);
    EXPECT_EQ(ciderKind(GramsPerLitre{4.4}, GramsPerLitre{1.9}), CiderKind::sweet);
    EXPECT_EQ(ciderKind(GramsPerLitre{4.5}, GramsPerLitre{1.9}), std::nullopt);
    const auto classOf = [](double percent) { return juiceAcidity(GramsPerLitre{percent * 10}); };
    EXPECT_EQ(classOf(0.10), JuiceAcidity::low);
    EXPECT_EQ(classOf(0.35), JuiceAcidity::low);
    EXPECT_EQ(classOf(0.36), JuiceAcidity::medium);
    EXPECT_EQ(classOf(0.60), JuiceAcidity::medium);
    EXPECT_EQ(classOf(0.61), JuiceAcidity::high);
    EXPECT_EQ(classOf(0.90), JuiceAcidity::high);
    EXPECT_EQ(classOf(0.91), JuiceAcidity::veryHigh);
}

// KOB Bavendorf: on the chart of ten steps step 3 is 30 % and step 6 is 60 % cleared.
TEST(StarchCheck, StepsOfTheTenStepChart) {
    EXPECT_NEAR(clearedShare(*StarchIndex<StarchTen>::of(3)), 0.3, kClosedForm);
    EXPECT_NEAR(clearedShare(*StarchIndex<StarchTen>::of(6)), 0.6, kClosedForm);
}

// Hoblyn, Grubb, Painter & Wates (1936), J. Pomology 14:39. For two years the index is (on - off) /
// (on + off), as the California Avocado Commission explains it (2013): 1 is full alternation, 0
// none. The longer series are worked by hand: crops 10, 30, 10, 15 give (20/40 + 20/40 + 5/25) / 3.
TEST(AlternateBearingCheck, WorkedByHand) {
    const auto index = [](const std::vector<double>& crops) {
        std::vector<std::optional<Kilograms>> years;
        years.reserve(crops.size());
        for (const double crop : crops) {
            years.emplace_back(Kilograms{crop});
        }
        return alternateBearing(years)->index;
    };
    EXPECT_NEAR(index({100, 20}), 80.0 / 120, kClosedForm);
    EXPECT_NEAR(index({10, 30, 10, 15}), (0.5 + 0.5 + 0.2) / 3, kClosedForm);
    EXPECT_EQ(index({40, 0, 35, 0}), 1);
    EXPECT_EQ(index({12, 12, 12}), 0);
}

} // namespace
} // namespace pipwright
