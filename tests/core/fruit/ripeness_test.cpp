#include "core/fruit/streif.h"
#include "core/units/no_number.h"

#include <concepts>
#include <gtest/gtest.h>
#include <limits>

namespace pipwright {
namespace {

// What must not be mixed does not compile: no comparing, no converting.
static_assert(std::totally_ordered<Firmness<AppleProbe>>);
static_assert(!std::totally_ordered_with<Firmness<AppleProbe>, Firmness<PearProbe>>);
static_assert(!std::convertible_to<Firmness<PearProbe>, Firmness<AppleProbe>>);
static_assert(!std::constructible_from<Firmness<AppleProbe>, Firmness<PearProbe>>);
static_assert(!std::totally_ordered_with<StarchIndex<StarchEight>, StarchIndex<StarchTen>>);
static_assert(!std::constructible_from<StarchIndex<StarchTen>, StarchIndex<StarchEight>>);
static_assert(!std::totally_ordered_with<StreifKilograms, StreifNewtons>);
static_assert(!std::constructible_from<StreifNewtons, StreifKilograms>);
static_assert(!std::totally_ordered_with<Newtons, KilogramsForce>);
static_assert(!std::totally_ordered_with<GramsPerLitre, GramsPer100Grams>);

TEST(Firmness, HasBounds) {
    EXPECT_FALSE(Firmness<AppleProbe>::of(Newtons{-0.1}));
    EXPECT_FALSE(Firmness<AppleProbe>::of(Newtons{301}));
    EXPECT_FALSE(Firmness<PearProbe>::of(Newtons{kNaN}));
    EXPECT_EQ(Firmness<PearProbe>::of(Newtons{0})->force(), Newtons{0});
}

TEST(Firmness, UnitsGoBackAndForth) {
    for (const double number : {0.0, 0.25, 7.5, 16.0}) {
        EXPECT_NEAR(toKilogramsForce(toNewtons(KilogramsForce{number})).number(), number, 1e-12);
        EXPECT_NEAR(toPoundsForce(toNewtons(PoundsForce{number})).number(), number, 1e-12);
    }
}

TEST(StarchIndex, EndsWhereItsChartEnds) {
    EXPECT_TRUE(StarchIndex<StarchEight>::of(8));
    EXPECT_FALSE(StarchIndex<StarchEight>::of(8.5));
    EXPECT_TRUE(StarchIndex<StarchTen>::of(8.5)) << "a mean of fruits";
    EXPECT_FALSE(StarchIndex<StarchTen>::of(0));
    EXPECT_FALSE(StarchIndex<StarchTen>::of(kNaN));
}

TEST(Streif, NeedsSolubleSolids) {
    const auto parts = [](double brix) {
        return StreifParts{*Firmness<AppleProbe>::of(Newtons{70}), Brix{brix},
                           *StarchIndex<StarchTen>::of(4)};
    };
    EXPECT_FALSE(streifInKilograms(parts(0)));
    EXPECT_FALSE(streifInNewtons(parts(-2)));
    EXPECT_FALSE(streifInNewtons(parts(kNaN)));
    EXPECT_NEAR(streifInNewtons(parts(12))->number() / streifInKilograms(parts(12))->number(),
                9.80665, 1e-12);
}

} // namespace
} // namespace pipwright
