#include "core/fruit/acid_class.h"
#include "core/fruit/juice.h"
#include "core/units/no_number.h"

#include <gtest/gtest.h>
#include <limits>

namespace pipwright {
namespace {

TEST(BrixAt20, LeavesACompensatedReadingAlone) {
    const auto at20 = brixAt20(Brix{12.5}, Celsius{4}, Refractometer::compensated);
    ASSERT_TRUE(at20);
    EXPECT_EQ(at20->value, Brix{12.5});
    EXPECT_EQ(at20->correction, Brix{0});
}

TEST(BrixAt20, RefusesWhatTheTableLacks) {
    const auto refused = [](double brix, double degrees) {
        return !brixAt20(Brix{brix}, Celsius{degrees}, Refractometer::uncompensated);
    };
    EXPECT_TRUE(refused(12, 9.9));
    EXPECT_TRUE(refused(12, 30.1));
    EXPECT_TRUE(refused(12, 68)) << "Fahrenheit";
    EXPECT_TRUE(refused(30.1, 20));
    EXPECT_TRUE(refused(-0.1, 20));
    EXPECT_TRUE(refused(kNaN, 20));
    EXPECT_TRUE(refused(12, kNaN));
    EXPECT_TRUE(refused(kInfinity, 20));
    EXPECT_FALSE(refused(30, 30)) << "the last corner";
    EXPECT_FALSE(refused(0, 10)) << "the first corner";
}

TEST(BrixAt20, GoesOnWithoutSteps) {
    double before = brixAt20(Brix{13}, Celsius{10}, Refractometer::uncompensated)->value.number();
    for (double degrees = 10.05; degrees < 30; degrees += 0.05) {
        const double value =
            brixAt20(Brix{13}, Celsius{degrees}, Refractometer::uncompensated)->value.number();
        EXPECT_GT(value, before) << degrees;
        EXPECT_LT(value - before, 0.006) << degrees;
        before = value;
    }
}

TEST(Acid, RefusesAmountsThatMakeNoSense) {
    const auto acid = [](double alkali, double strength, double sample) {
        return acidOf({Millilitres{alkali}, MolesPerLitre{strength}}, Millilitres{sample},
                      Acid::malic);
    };
    EXPECT_FALSE(acid(7.5, 0.1, 0));
    EXPECT_FALSE(acid(-1, 0.1, 10));
    EXPECT_FALSE(acid(7.5, -0.1, 10));
    EXPECT_FALSE(acid(kNaN, 0.1, 10));
    EXPECT_FALSE(acid(7.5, kInfinity, 10));
    EXPECT_FALSE(acid(7.5, 0.1, kNaN));
    EXPECT_FALSE(acidOf({Millilitres{7.5}, MolesPerLitre{0.1}}, Grams{0}, Acid::citric));
    EXPECT_EQ(acid(0, 0.1, 10)->number(), 0);
}

TEST(Acid, InTermsOfAnotherAndBack) {
    for (const AcidEquivalent equivalent : {AcidEquivalent::rounded, AcidEquivalent::exact}) {
        const GramsPerLitre citric =
            inTermsOf(Acid::citric, GramsPerLitre{6}, Acid::malic, equivalent);
        EXPECT_LT(citric.number(), 6);
        EXPECT_NEAR(inTermsOf(Acid::malic, citric, Acid::citric, equivalent).number(), 6, 1e-12);
        EXPECT_GT(inTermsOf(Acid::tartaric, GramsPerLitre{6}, Acid::malic, equivalent).number(), 6);
    }
}

TEST(SugarAcidRatio, NeedsAcid) {
    EXPECT_FALSE(sugarAcidRatio(Brix{12}, GramsPerLitre{0}));
    EXPECT_FALSE(sugarAcidRatio(Brix{-1}, GramsPerLitre{5}));
    EXPECT_FALSE(sugarAcidRatio(Brix{kNaN}, GramsPerLitre{5}));
    EXPECT_FALSE(sugarLessAcid(Brix{12}, GramsPerLitre{5}, kNaN));
    EXPECT_FALSE(sugarLessAcid(Brix{12}, GramsPerLitre{5}, -1));
}

TEST(JuiceAcidity, HasNoClassForNoValue) {
    EXPECT_EQ(juiceAcidity(GramsPerLitre{-0.2}), std::nullopt);
    EXPECT_EQ(juiceAcidity(GramsPerLitre{kNaN}), std::nullopt);
    EXPECT_EQ(juiceAcidity(GramsPerLitre{0.4}), JuiceAcidity::veryLow);
    EXPECT_EQ(ciderKind(GramsPerLitre{kNaN}, GramsPerLitre{1}), std::nullopt);
    EXPECT_EQ(ciderKind(GramsPerLitre{4}, GramsPerLitre{2}), std::nullopt) << "on the limit";
}

} // namespace
} // namespace pipwright
