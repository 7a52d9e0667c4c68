#include "core/season/frost_kill.h"
#include "core/season/growth_stage.h"

#include <gtest/gtest.h>
#include <limits>
#include <set>
#include <string>

namespace pipwright {
namespace {

TEST(GrowthStage, StandsOnceInTheOrderOfTheCodes) {
    int before = -1;
    std::set<std::string> names;
    for (const GrowthStage& stage : kPomeStages) {
        EXPECT_GT(stage.code, before);
        before = stage.code;
        EXPECT_EQ(std::stoi(stage.digits), stage.code);
        EXPECT_EQ(std::string(stage.digits).size(), 2);
        EXPECT_TRUE(names.insert(stage.name).second) << stage.name;
        EXPECT_FALSE(std::string(stage.meaning).empty());
    }
}

TEST(GrowthStage, IsFoundByItsCode) {
    EXPECT_STREQ(pomeStage(65)->name, "full bloom");
    EXPECT_FALSE(pomeStage(66));
    EXPECT_FALSE(pomeStage(-1));
    EXPECT_FALSE(pomeStage(87)->wasReadUp);
    EXPECT_TRUE(pomeStage(57)->wasReadUp);
}

TEST(FrostLimit, HoldsUntilTheNextStage) {
    EXPECT_STREQ(frostLimitAt(Blossom::apple, 56)->stage, "tight cluster");
    EXPECT_STREQ(frostLimitAt(Blossom::apple, 67)->stage, "full bloom");
    EXPECT_STREQ(frostLimitAt(Blossom::apple, 72)->stage, "post bloom");
    EXPECT_FALSE(frostLimitAt(Blossom::apple, 74)) << "beyond the table";
    EXPECT_FALSE(frostLimitAt(Blossom::apple, 31)) << "a shoot is no blossom";
    EXPECT_FALSE(frostLimitAt(Blossom::apple, 0)) << "the table begins when buds swell";
}

TEST(FrostLimit, StagesAreInOrderAndGrowTender) {
    for (const Blossom blossom :
         {Blossom::apple, Blossom::pear, Blossom::peach, Blossom::sweetCherry}) {
        const FrostLimit* before = nullptr;
        for (const FrostLimit& limit : frostLimits(blossom)) {
            EXPECT_EQ(limit.blossom, blossom);
            EXPECT_GT(limit.killsATenth, limit.killsNineTenths) << limit.stage;
            if (before != nullptr) {
                EXPECT_GT(limit.fromStage, before->fromStage) << limit.stage;
                EXPECT_GE(limit.killsATenth, before->killsATenth) << limit.stage;
            }
            before = &limit;
        }
    }
}

TEST(FrostKill, IsABandAndOnlyBetweenTheTwoPointsAGuess) {
    const FrostLimit bloom = *frostLimitAt(Blossom::apple, 65);
    const auto mild = killedBy(bloom, Celsius{-1});
    EXPECT_EQ(mild->atMost, 0.1);
    EXPECT_FALSE(mild->likely);
    const auto hard = killedBy(bloom, Celsius{-6});
    EXPECT_EQ(hard->atLeast, 0.9);
    EXPECT_FALSE(hard->likely);
    const auto night = killedBy(bloom, toCelsius(Fahrenheit{26.5}));
    EXPECT_EQ(night->atLeast, 0.1);
    EXPECT_EQ(night->atMost, 0.9);
    EXPECT_NEAR(night->likely.value(), 0.5, 1e-12);
    EXPECT_NEAR(killedBy(bloom, toCelsius(bloom.killsATenth))->likely.value(), 0.1, 1e-12);
    EXPECT_NEAR(killedBy(bloom, toCelsius(bloom.killsNineTenths))->likely.value(), 0.9, 1e-12);
}

TEST(FrostKill, RefusesWhatAirCannotHave) {
    const FrostLimit bloom = *frostLimitAt(Blossom::pear, 65);
    EXPECT_FALSE(killedBy(bloom, Celsius{std::numeric_limits<double>::quiet_NaN()}));
    EXPECT_FALSE(killedBy(bloom, Celsius{-300}));
}

} // namespace
} // namespace pipwright
