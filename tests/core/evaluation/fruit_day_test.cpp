#include "core/evaluation/fruit_day.h"
#include "core/orchard/dictionary.h"
#include "core/orchard/fruit_traits.h"

#include <gtest/gtest.h>
#include <string>

namespace pipwright {
namespace {

const Date kMeasuredDay = Date::of(2026, 9, 20).value();

class FruitDayTest : public testing::Test {
  protected:
    Observation& measured(std::string_view trait, double value,
                          const std::string& instrument = {}) {
        Observation one;
        one.id = ObservationId(Uuid::named("reading " + std::to_string(m_all.size())));
        one.plant = m_plant;
        one.trait = shippedTraitId(trait);
        one.date = kMeasuredDay;
        one.value = value;
        one.qualifier = Qualifier::exact;
        one.instrument = instrument;
        m_all.push_back(one);
        return m_all.back();
    }

    PlantId m_plant{Uuid::named("tree")};
    std::vector<Observation> m_all;
};

TEST_F(FruitDayTest, DerivesRatioAndStreifFromTheSameDay) {
    measured(trait_key::kSolubleSolids, 12);
    measured(trait_key::kAcidity, 6);
    measured(trait_key::kFirmness, 7.5, "11 mm");
    const ObservationId starch = measured(trait_key::kStarchTen, 3).id;
    const auto days = fruitDays(m_all);
    ASSERT_EQ(days.size(), 1U);
    EXPECT_EQ(days[0].date, kMeasuredDay);
    EXPECT_NEAR(days[0].ratio->low, 20, 1e-12);
    EXPECT_NEAR(days[0].ratio->high, 20, 1e-12);
    EXPECT_NEAR(days[0].streifKilograms->low, 0.208333, 1e-6);
    EXPECT_NEAR(days[0].streifNewtons->high, 2.043052, 1e-6);
    EXPECT_EQ(days[0].streifBeside, starch);
    EXPECT_EQ(days[0].ratioBeside, m_all[0].id);
}

TEST_F(FruitDayTest, KeepsDaysAndSubjectsApart) {
    measured(trait_key::kSolubleSolids, 12);
    measured(trait_key::kAcidity, 6).date = kMeasuredDay.plusDays(1);
    measured(trait_key::kAcidity, 6).plant = PlantId(Uuid::named("another tree"));
    measured(trait_key::kAcidity, 6).dateTo = kMeasuredDay.plusDays(3);
    measured(trait_key::kAcidity, 6).voidReason = "wrong bottle";
    measured(trait_key::kAcidity, 6).qualifier = Qualifier::lessThan;
    for (const FruitDay& day : fruitDays(m_all)) {
        EXPECT_FALSE(day.ratio);
    }
    EXPECT_TRUE(fruitDays({}).empty());
}

TEST_F(FruitDayTest, CarriesRangesThrough) {
    Observation& solids = measured(trait_key::kSolubleSolids, 12);
    solids.valueTo = 13;
    solids.qualifier = Qualifier::range;
    measured(trait_key::kAcidity, 5);
    measured(trait_key::kAcidity, 7);
    const auto days = fruitDays(m_all);
    EXPECT_EQ(days[0].acidity->readings, 2);
    EXPECT_NEAR(days[0].ratio->low, 20, 1e-12);
    EXPECT_NEAR(days[0].ratio->high, 13 / 0.6, 1e-12);
}

TEST_F(FruitDayTest, MakesNoStreifOfAnotherProbeOrChart) {
    measured(trait_key::kSolubleSolids, 12);
    measured(trait_key::kFirmness, 4, "8 mm");
    measured(trait_key::kFirmness, 7);
    measured(trait_key::kStarchTen, 3);
    auto days = fruitDays(m_all);
    EXPECT_FALSE(days[0].streifKilograms);
    EXPECT_EQ(days[0].firmnessWithoutProbe, 2);
    m_all.clear();
    measured(trait_key::kSolubleSolids, 12);
    measured(trait_key::kFirmness, 7, "11 mm");
    measured(trait_key::kStarchEight, 3);
    days = fruitDays(m_all);
    EXPECT_FALSE(days[0].streifKilograms) << "the chart of eight steps is another scale";
}

TEST_F(FruitDayTest, BringsSolidsToTwentyDegrees) {
    const Observation cold = measured(trait_key::kSolubleSolids, 12,
                                      "15 \xC2\xB0"
                                      "C");
    measured(trait_key::kAcidity, 6);
    EXPECT_NEAR((*solidsAt20(cold))->value.number(), 11.682, 1e-9);
    EXPECT_NEAR(fruitDays(m_all)[0].ratio->low, 19.47, 1e-9);
    const Observation hot = measured(trait_key::kSolubleSolids, 12, "35 C");
    EXPECT_FALSE(*solidsAt20(hot)) << "beyond the table";
    EXPECT_FALSE(solidsAt20(measured(trait_key::kSolubleSolids, 12, "ATC")));
}

TEST_F(FruitDayTest, ReckonsNothingOfNothing) {
    measured(trait_key::kSolubleSolids, 0);
    measured(trait_key::kAcidity, 0);
    measured(trait_key::kFirmness, 7, "11 mm");
    measured(trait_key::kStarchTen, 3);
    const auto days = fruitDays(m_all);
    EXPECT_FALSE(days[0].ratio);
    EXPECT_FALSE(days[0].streifKilograms);
}

} // namespace
} // namespace pipwright
