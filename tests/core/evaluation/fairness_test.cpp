#include "core/evaluation/fairness.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace pipwright {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

Lot fairLot() {
    Lot lot;
    lot.origin = Origin::pickedRipe;
    lot.soundness = Soundness::sound;
    lot.ripeness = Ripeness::prime;
    lot.storage = StoragePath::none;
    lot.cropNumber = 3;
    return lot;
}

TEST(Fairness, APickedRipeSoundFruitInItsPrimeIsFair) {
    EXPECT_THAT(fairnessOf(fairLot()).reasons, IsEmpty());
    Lot shaken = fairLot();
    shaken.origin = Origin::shaken;
    shaken.ripeness = Ripeness::latePrime;
    EXPECT_TRUE(fairnessOf(shaken).fair());
}

TEST(Fairness, NamesEveryReason) {
    Lot lot = fairLot();
    lot.origin = Origin::onGroundLonger;
    lot.soundness = Soundness::insect;
    lot.bag = Bag::paper;
    lot.cropNumber = 1;
    const Fairness fairness = fairnessOf(lot);
    EXPECT_THAT(fairness.reasons, ElementsAre(Unfairness::fallen, Unfairness::hurt,
                                              Unfairness::bagged, Unfairness::firstCrop));
    EXPECT_FALSE(fairness.unclear);
}

TEST(Fairness, SevenDaysOffTheTreeAreFairEightAreNot) {
    Lot lot = fairLot();
    lot.storage = StoragePath::unknown;
    lot.daysOnCounter = 2;
    lot.daysInFridge = 5;
    EXPECT_EQ(daysOffTree(lot), 7);
    EXPECT_TRUE(fairnessOf(lot).fair());
    lot.daysInCellar = 1;
    EXPECT_THAT(fairnessOf(lot).reasons, ElementsAre(Unfairness::keptTooLong));
}

TEST(Fairness, DaysOffTheTreeAreUnknownUnlessTold) {
    Lot lot = fairLot();
    lot.storage = StoragePath::unknown;
    EXPECT_EQ(daysOffTree(lot), std::nullopt);
    lot.storage = StoragePath::none;
    EXPECT_EQ(daysOffTree(lot), 0);
}

TEST(Fairness, WhatIsOnlyUnknownIsUnclear) {
    Lot lot = fairLot();
    lot.origin = Origin::unknown;
    EXPECT_TRUE(fairnessOf(lot).unclear);
    EXPECT_FALSE(fairnessOf(lot).fair());
    lot.ripeness = Ripeness::unknown;
    EXPECT_TRUE(fairnessOf(lot).unclear);
    lot.bag = Bag::paper; // now something is known against it
    EXPECT_FALSE(fairnessOf(lot).unclear);
}

} // namespace
} // namespace pipwright
