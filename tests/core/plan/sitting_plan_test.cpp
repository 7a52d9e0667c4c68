#include "core/plan/serving_codes.h"
#include "core/plan/sitting_plan.h"

#include <algorithm>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <set>

namespace pipwright::test {
namespace {

using ::testing::HasSubstr;

LotToServe lotNamed(const std::string& name, Ripeness ripeness = Ripeness::prime) {
    LotToServe lot;
    lot.name = name;
    lot.claimedGenotype = GenotypeId(Uuid::named(name));
    lot.condition.origin = Origin::pickedRipe;
    lot.condition.soundness = Soundness::sound;
    lot.condition.ripeness = ripeness;
    lot.condition.storage = StoragePath::fridge;
    lot.condition.daysInFridge = 3;
    return lot;
}

Person personNamed(const std::string& name) {
    Person person;
    person.id = PersonId(Uuid::named(name));
    person.name = name;
    return person;
}

SittingWish wishOf(int lots) {
    SittingWish wish;
    wish.date = *Date::of(2026, 8, 22);
    for (int i = 1; i <= lots; ++i) {
        wish.lots.push_back(lotNamed("AT17-0" + std::to_string(10 + i)));
    }
    wish.tasters = {personNamed("Mara Thorne"), personNamed("Jory Pell"), personNamed("Ines Holt")};
    wish.draw = 11;
    return wish;
}

bool says(const SittingPlan& plan, PlanRemarkKind kind) {
    return std::any_of(plan.remarks.begin(), plan.remarks.end(),
                       [kind](const PlanRemark& one) { return one.kind == kind; });
}

std::string sentenceAbout(const SittingPlan& plan, PlanRemarkKind kind) {
    for (const PlanRemark& one : plan.remarks) {
        if (one.kind == kind) {
            return sentenceOf(one);
        }
    }
    return {};
}

TEST(ServingCodes, AreApartAndNeverReadUpsideDown) {
    std::vector<std::string> used;
    for (std::uint64_t draw = 1; draw <= 300; ++draw) {
        const auto codes = servingCodes(12, used, draw);
        ASSERT_TRUE(codes.ok());
        ASSERT_EQ(codes->size(), 12U);
        ASSERT_TRUE(std::is_sorted(codes->begin(), codes->end()));
        const std::set<std::string> recent(
            used.begin(), used.begin() + static_cast<std::ptrdiff_t>(
                                             std::min(used.size(), kMostCodesRemembered)));
        for (const std::string& code : *codes) {
            EXPECT_EQ(code.size(), 3U);
            EXPECT_NE(code[0], '0');
            EXPECT_EQ(upsideDown(code), "");
            EXPECT_FALSE(recent.contains(code)) << code;
            for (const std::string& other : *codes) {
                if (&other != &code) {
                    int same = 0;
                    for (std::size_t i = 0; i < 3; ++i) {
                        same += code[i] == other[i] ? 1 : 0;
                    }
                    EXPECT_LT(same, 2) << code << " " << other;
                }
            }
        }
        used.insert(used.begin(), codes->begin(), codes->end());
    }
    EXPECT_EQ(upsideDown("168"), "891");
    EXPECT_EQ(upsideDown("417"), "");
    EXPECT_EQ(*servingCodes(9, {}, 4), *servingCodes(9, {}, 4));
    EXPECT_NE(*servingCodes(9, {}, 4), *servingCodes(9, {}, 5));
    EXPECT_FALSE(servingCodes(13, {}, 1).ok());
}

TEST(SittingPlan, HidesTheBenchmarkTwiceAndServesEveryLotToEverybody) {
    SittingWish wish = wishOf(6);
    wish.benchmark = lotNamed("Russet Moor");
    wish.benchmarkDays = -4;
    wish.repeat = lotNamed("AT16-002");
    wish.repeatDays = 7;
    const auto plan = planSitting(wish);
    ASSERT_TRUE(plan.ok()) << plan.problem().sentence();
    ASSERT_EQ(plan->served(), 9);
    ASSERT_EQ(plan->lots.size(), 9U);
    EXPECT_EQ(std::count_if(plan->lots.begin(), plan->lots.end(),
                            [](const auto& one) { return one.lot.role == LotRole::benchmark; }),
              2);
    std::vector<int> twins;
    for (int i = 0; i < 9; ++i) {
        if (plan->lots[static_cast<std::size_t>(i)].lot.role == LotRole::benchmark) {
            twins.push_back(i);
        }
    }
    EXPECT_EQ(plan->orders.imbalance(), 0);
    ASSERT_EQ(plan->orders.rows.size(), 3U);
    for (const auto& row : plan->orders.rows) {
        const auto gap = std::abs(std::find(row.begin(), row.end(), twins[0]) -
                                  std::find(row.begin(), row.end(), twins[1]));
        EXPECT_GT(gap, 1);
    }
    EXPECT_EQ(plan->pauseAfter, 5);
    EXPECT_THAT(sentenceAbout(*plan, PlanRemarkKind::benchmarkTwice),
                HasSubstr("Russet Moor is the benchmark, hidden twice"));
    EXPECT_THAT(sentenceAbout(*plan, PlanRemarkKind::benchmarkTwice), HasSubstr("4 days before"));
    EXPECT_THAT(sentenceAbout(*plan, PlanRemarkKind::repeatServed), HasSubstr("7 days ago"));
    EXPECT_THAT(sentenceAbout(*plan, PlanRemarkKind::evenOrders), HasSubstr("Imbalance 0"));
    EXPECT_FALSE(says(*plan, PlanRemarkKind::noBenchmark));
    for (const PlanRemark& one : plan->remarks) {
        EXPECT_FALSE(one.isWarning()) << sentenceOf(one);
    }
}

TEST(SittingPlan, TheSameDrawMakesTheSamePlanAndCodesTellNothingOfTheList) {
    const auto one = planSitting(wishOf(8));
    const auto again = planSitting(wishOf(8));
    ASSERT_TRUE(one.ok() && again.ok());
    EXPECT_EQ(one->orders.rows, again->orders.rows);
    bool inOrder = true;
    for (std::size_t i = 0; i < one->lots.size(); ++i) {
        EXPECT_EQ(one->lots[i].code, again->lots[i].code);
        inOrder = inOrder && one->lots[i].lot.name == wishOf(8).lots[i].name;
    }
    EXPECT_FALSE(inOrder);
    SittingWish other = wishOf(8);
    other.draw = 12;
    EXPECT_NE(planSitting(other)->lots[0].code, one->lots[0].code);
}

TEST(SittingPlan, OffPrimeFruitIsLookedAtOnlyAndRottenFruitIsNotEaten) {
    SittingWish wish = wishOf(4);
    wish.lots.push_back(lotNamed("green one", Ripeness::gettingThere));
    wish.lots.push_back(lotNamed("rotten one"));
    wish.lots.back().condition.soundness = Soundness::rot;
    const auto plan = planSitting(wish);
    ASSERT_TRUE(plan.ok());
    EXPECT_EQ(plan->served(), 4);
    ASSERT_EQ(plan->lots.size(), 6U);
    EXPECT_FALSE(plan->lots[4].isServed());
    EXPECT_FALSE(plan->lots[5].isServed());
    EXPECT_TRUE(plan->lots[3].isServed());
    EXPECT_THAT(sentenceAbout(*plan, PlanRemarkKind::lookOnly), HasSubstr("green one"));
    EXPECT_THAT(sentenceAbout(*plan, PlanRemarkKind::rotten), HasSubstr("do not eat"));
    EXPECT_TRUE(says(*plan, PlanRemarkKind::noBenchmark));
}

TEST(SittingPlan, WarnsOfWhatMakesALotUnfairOrUnsafe) {
    SittingWish wish = wishOf(10);
    wish.sight = Sight::sighted;
    wish.tasters = {personNamed("Mara Thorne")};
    wish.tasters[0].healthNotes = "birch pollen";
    wish.lots[0].condition.origin = Origin::onGroundLonger;
    wish.lots[1].condition.soundness = Soundness::insect;
    wish.lots[2].condition.soundness = Soundness::bird;
    wish.lots[3].condition.daysInFridge = 8;
    wish.lots[4].condition.daysInFridge.reset();
    wish.lots[4].condition.storage = StoragePath::unknown;
    wish.lots[5].condition.ripeness = Ripeness::unknown;
    wish.lots[6].condition.fruits = 1;
    wish.lots[8] = wish.lots[7];
    const auto plan = planSitting(wish);
    ASSERT_TRUE(plan.ok());
    EXPECT_THAT(sentenceAbout(*plan, PlanRemarkKind::fallen), HasSubstr("wash it"));
    EXPECT_THAT(sentenceAbout(*plan, PlanRemarkKind::wormy), HasSubstr("AT17-012"));
    EXPECT_THAT(sentenceAbout(*plan, PlanRemarkKind::pecked), HasSubstr("AT17-013"));
    EXPECT_THAT(sentenceAbout(*plan, PlanRemarkKind::unequalDays), HasSubstr("3 to 8 days"));
    EXPECT_THAT(sentenceAbout(*plan, PlanRemarkKind::daysUnknown), HasSubstr("AT17-015"));
    EXPECT_THAT(sentenceAbout(*plan, PlanRemarkKind::ripenessUnknown), HasSubstr("AT17-016"));
    EXPECT_THAT(sentenceAbout(*plan, PlanRemarkKind::oneFruit), HasSubstr("AT17-017"));
    EXPECT_THAT(sentenceAbout(*plan, PlanRemarkKind::servedTwice), HasSubstr("AT17-018"));
    EXPECT_THAT(sentenceAbout(*plan, PlanRemarkKind::manyLots), HasSubstr("10 lots"));
    EXPECT_THAT(sentenceAbout(*plan, PlanRemarkKind::sighted), HasSubstr("hope"));
    EXPECT_THAT(sentenceAbout(*plan, PlanRemarkKind::oneTaster), HasSubstr("alone"));
    EXPECT_EQ(sentenceAbout(*plan, PlanRemarkKind::healthNote), "Mara Thorne: birch pollen");
}

TEST(SittingPlan, KeptEquallyLongInDifferentPlacesIsSaid) {
    SittingWish wish = wishOf(3);
    wish.lots[0].condition.daysInFridge.reset();
    wish.lots[0].condition.daysOnCounter = 3;
    wish.lots[0].condition.storage = StoragePath::counter;
    EXPECT_TRUE(says(*planSitting(wish), PlanRemarkKind::unequalPaths));
    EXPECT_FALSE(says(*planSitting(wishOf(3)), PlanRemarkKind::unequalPaths));
}

TEST(SittingPlan, RefusesWithAWayOut) {
    EXPECT_THAT(planSitting(wishOf(1)).problem().remedy, HasSubstr("2 to 12"));
    SittingWish thirteen = wishOf(11);
    thirteen.benchmark = lotNamed("Russet Moor");
    EXPECT_THAT(planSitting(thirteen).problem().sentence(), HasSubstr("twelve"));
    SittingWish nobody = wishOf(5);
    nobody.tasters.clear();
    EXPECT_THAT(planSitting(nobody).problem().remedy, HasSubstr("Name who tastes"));
    SittingWish twice = wishOf(5);
    twice.tasters.push_back(twice.tasters[0]);
    EXPECT_THAT(planSitting(twice).problem().sentence(), HasSubstr("named twice"));
    // A dozen with only looked-at lots beside is no thirteen.
    SittingWish besides = wishOf(12);
    besides.lots.push_back(lotNamed("green", Ripeness::green));
    EXPECT_TRUE(planSitting(besides).ok());
}

} // namespace
} // namespace pipwright::test
