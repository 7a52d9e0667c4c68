#include "core/fruit/alternate_bearing.h"
#include "core/fruit/fruit_size.h"
#include "core/units/no_number.h"

#include <gtest/gtest.h>
#include <limits>
#include <random>
#include <vector>

namespace pipwright {
namespace {

using Crops = std::vector<std::optional<Kilograms>>;

TEST(SizeClass, PutsAFruitOnTheLimitIntoTheUpper) {
    EXPECT_EQ(SizeClass::of(Millimetres{54.9})->label(), "under 55 mm");
    EXPECT_EQ(SizeClass::of(Millimetres{55})->label(), "55 to 60 mm");
    EXPECT_EQ(SizeClass::of(Millimetres{89.99})->label(), "85 to 90 mm");
    EXPECT_EQ(SizeClass::of(Millimetres{90})->label(), "90 mm and over");
    EXPECT_EQ(SizeClass::of(Millimetres{0})->number(), 0);
    EXPECT_EQ(SizeClass::of(Millimetres{300})->number(), SizeClass::kCount - 1);
}

TEST(SizeClass, RefusesWhatIsNoDiameter) {
    EXPECT_FALSE(SizeClass::of(Millimetres{-1}));
    EXPECT_FALSE(SizeClass::of(Millimetres{kNaN}));
    EXPECT_FALSE(SizeClass::of(Millimetres{301}));
    EXPECT_FALSE(SizeClass::at(-1));
    EXPECT_FALSE(SizeClass::at(SizeClass::kCount));
}

TEST(SizeClass, TouchesItsNeighbours) {
    for (int number = 1; number < SizeClass::kCount; ++number) {
        EXPECT_EQ(SizeClass::at(number - 1)->below(), SizeClass::at(number)->from());
        EXPECT_EQ(SizeClass::of(*SizeClass::at(number)->from()).value(), SizeClass::at(number));
    }
    EXPECT_FALSE(SizeClass::at(0)->middle());
    EXPECT_FALSE(SizeClass::at(SizeClass::kCount - 1)->middle());
}

TEST(MeanSize, SaysWhatItLeftOut) {
    const std::vector<SizedFruit> fruit = {{*SizeClass::at(0), Kilograms{3}},
                                           {*SizeClass::at(3), Kilograms{5}},
                                           {*SizeClass::at(8), Kilograms{1}}};
    const auto mean = meanSize(fruit);
    ASSERT_TRUE(mean);
    EXPECT_EQ(mean->diameter.number(), 67.5);
    EXPECT_EQ(mean->counted, Kilograms{5});
    EXPECT_EQ(mean->leftOut, Kilograms{4});
}

TEST(MeanSize, NeedsFruitWithAMiddle) {
    EXPECT_FALSE(meanSize({}));
    EXPECT_FALSE(meanSize(std::vector<SizedFruit>{{*SizeClass::at(8), Kilograms{1}}}));
    EXPECT_FALSE(meanSize(std::vector<SizedFruit>{{*SizeClass::at(2), Kilograms{-1}}}));
    EXPECT_FALSE(meanSize(std::vector<SizedFruit>{{*SizeClass::at(2), Kilograms{kNaN}}}));
    EXPECT_FALSE(meanMassInCarton(0));
}

TEST(AlternateBearing, LeavesOutGapsAndEmptyPairs) {
    const Crops crops = {Kilograms{20}, std::nullopt, Kilograms{10}, Kilograms{30},
                         Kilograms{0},  Kilograms{0}, Kilograms{5}};
    const auto bearing = alternateBearing(crops);
    ASSERT_TRUE(bearing);
    EXPECT_EQ(bearing->pairs, 3);
    EXPECT_EQ(bearing->pairsMissing, 2) << "20 and 10 are no neighbours";
    EXPECT_EQ(bearing->pairsEmpty, 1);
    EXPECT_NEAR(bearing->index, (0.5 + 1 + 1) / 3, 1e-12);
    ASSERT_TRUE(bearing->standardError);
    EXPECT_NEAR(*bearing->standardError, 0.1666667, 1e-6);
}

TEST(AlternateBearing, RefusesWhatCannotBeReckoned) {
    EXPECT_FALSE(alternateBearing({}));
    EXPECT_FALSE(alternateBearing(Crops{Kilograms{4}}));
    EXPECT_FALSE(alternateBearing(Crops{Kilograms{0}, Kilograms{0}}));
    EXPECT_FALSE(alternateBearing(Crops{Kilograms{4}, std::nullopt, Kilograms{4}}));
    EXPECT_FALSE(alternateBearing(Crops{Kilograms{4}, Kilograms{-1}}));
    EXPECT_FALSE(alternateBearing(Crops{Kilograms{4}, Kilograms{kNaN}}));
    EXPECT_FALSE(alternateBearing(Crops(5, std::nullopt)));
    EXPECT_FALSE(alternateBearing(Crops{Kilograms{4}, Kilograms{2}})->standardError)
        << "one pair has no spread";
}

TEST(AlternateBearing, StaysWithinItsBoundsAndHeedsNoUnit) {
    constexpr std::uint32_t kSeed = 1936;
    SCOPED_TRACE(testing::Message() << "seed " << kSeed);
    std::mt19937 random(kSeed);
    std::uniform_real_distribution<double> crop(0, 60);
    for (int repeat = 0; repeat < 200; ++repeat) {
        Crops kilograms;
        Crops pounds;
        Crops backwards;
        for (int year = 0; year < 9; ++year) {
            kilograms.emplace_back(Kilograms{crop(random)});
            pounds.emplace_back(*kilograms.back() * 2.2046);
        }
        backwards.assign(kilograms.rbegin(), kilograms.rend());
        const double index = alternateBearing(kilograms)->index;
        EXPECT_GE(index, 0);
        EXPECT_LE(index, 1);
        EXPECT_NEAR(alternateBearing(pounds)->index, index, 1e-12);
        EXPECT_NEAR(alternateBearing(backwards)->index, index, 1e-12);
    }
    const double huge = std::numeric_limits<double>::max();
    EXPECT_EQ(alternateBearing(Crops{Kilograms{huge}, Kilograms{huge}})->index, 0);
}

} // namespace
} // namespace pipwright
