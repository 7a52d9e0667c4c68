#include "core/evaluation/living_copies.h"
#include "core/evaluation/sitting.h"
#include "core/evaluation/typed_tree.h"
#include "core/history/sitting_edits.h"
#include "tests/support/small_orchard.h"

#include <cmath>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace pipwright {
namespace {

class SittingTest : public testing::Test {
  protected:
    SittingTest() {
        other.id = PersonId(orchard.ids.make());
        other.name = "Jory Pell";
        const auto row = orchard.row(1);
        one = orchard.seedling(row, 1, "AT17-001");
        two = orchard.seedling(row, 2, "AT17-002");
        sitting.date = *Date::of(2026, 8, 22);
        sitting.newPersons = {other};
    }
    ServedLot lot(const EditedTree& tree, double mine, double theirs) const {
        ServedLot served;
        served.plant = tree.plant;
        served.scores = {{orchard.taster.id, mine, Verdict::unknown, ""},
                         {other.id, theirs, Verdict::unknown, ""}};
        return served;
    }
    Sitting held() {
        orchard.apply(sittingHeld(sitting, orchard.on(sitting.date)));
        view = orchard.view();
        const std::array ids = {orchard.store().all<Tasting>()->front().id};
        auto read = readSitting(*view, orchard.store(), ids);
        EXPECT_TRUE(read);
        return *read;
    }

    test::SmallOrchard orchard;
    Person other;
    EditedTree one;
    EditedTree two;
    HeldSitting sitting;
    OrchardView::Pointer view;
};

TEST_F(SittingTest, MeanRangeAndSpreadAreThoseOfTheLikings) {
    sitting.lots = {lot(one, 6, 8), lot(two, 5, 6), lot(one, 7, 8.5)};
    const Sitting read = held();
    ASSERT_EQ(read.lots.size(), 3U);
    const auto liking = likingOf(read.lots[0]);
    ASSERT_TRUE(liking);
    EXPECT_EQ(liking->n, 2);
    EXPECT_DOUBLE_EQ(liking->mean, 7);
    EXPECT_DOUBLE_EQ(liking->low, 6);
    EXPECT_DOUBLE_EQ(liking->high, 8);
    const auto spread = tasterSpread(read);
    ASSERT_TRUE(spread);
    // Differences 2, 1 and 1.5: squares within lots 2 + 0.5 + 1.125 over 3.
    EXPECT_NEAR(spread->standardDeviation, std::sqrt(3.625 / 3), 1e-12);
    ASSERT_EQ(spread->levels.size(), 2U);
    EXPECT_NEAR(spread->levels[0].offset, 0.75, 1e-12); // Jory, by name first
    EXPECT_NEAR(spread->levels[1].offset, -0.75, 1e-12);
    const auto repeats = repeatServings(*view, read);
    ASSERT_EQ(repeats.size(), 1U);
    EXPECT_EQ(repeats[0].name, "AT17-001");
    EXPECT_EQ(repeats[0].servings, 2);
    EXPECT_EQ(repeats[0].pairs, 2);
    EXPECT_DOUBLE_EQ(repeats[0].meanGap, 0.75);
    EXPECT_DOUBLE_EQ(repeats[0].largestGap, 1);
}

TEST_F(SittingTest, VoidScoresStandApart) {
    sitting.lots = {lot(one, 6, 8)};
    held();
    Score mine = orchard.store().all<Score>()->front();
    orchard.apply(voided(mine, "wrong plate", "score"));
    const std::array ids = {orchard.store().all<Tasting>()->front().id};
    const auto read = readSitting(*view, orchard.store(), ids);
    ASSERT_TRUE(read);
    EXPECT_EQ(read->lots[0].scores.size(), 1U);
    EXPECT_EQ(read->voidedScores.size(), 1U);
    EXPECT_FALSE(tasterSpread(*read));
}

TEST_F(SittingTest, ATreeIsFoundAsItIsWritten) {
    view = orchard.view();
    for (const auto* typed : {"AT17-002", "at17-002", "1/2", "Ashcroft 1/2", " 1 / 2 "}) {
        const auto tree = treeNamed(*view, typed);
        ASSERT_TRUE(tree) << typed << ": " << tree.problem().sentence();
        EXPECT_EQ(view->plants()[*tree->plant].id, *two.plant) << typed;
    }
    for (const auto* typed : {"nobody", "1/99", "Elsewhere 1/2", ""}) {
        const auto tree = treeNamed(*view, typed);
        ASSERT_FALSE(tree) << typed;
        EXPECT_FALSE(tree.problem().remedy.empty());
    }
    const auto bought = fruitNamed(*view, "ash tarn @ farm shop");
    ASSERT_TRUE(bought);
    EXPECT_TRUE(bought->bought);
    EXPECT_FALSE(bought->tree.plant);
    EXPECT_EQ(bought->source, "farm shop");
}

TEST_F(SittingTest, TwoTreesAtOnePlaceAreNotGuessed) {
    const auto place = orchard.position(orchard.row(2), 7);
    orchard.seedlingAt(place, "AT17-070", Stage::juvenile);
    orchard.seedlingAt(place, "AT17-071", Stage::juvenile);
    view = orchard.view();
    const auto tree = treeNamed(*view, "2/7");
    ASSERT_FALSE(tree);
    EXPECT_THAT(tree.problem().what, testing::HasSubstr("AT17-071"));
}

TEST_F(SittingTest, LimbsOfOneFrameShareItsFate) {
    ChangeSet set;
    set.sentence = "Two limbs";
    for (const double bearing : {20.0, 200.0}) {
        Plant limb;
        limb.id = PlantId(orchard.ids.make());
        limb.kind = PlantKind::limb;
        limb.frame = two.plant;
        limb.state = PlantState::growing;
        limb.limbBearing = bearing;
        limb.limbHeight = 180 - bearing / 4;
        set.create(limb);
        Identity identity;
        identity.id = IdentityId(orchard.ids.make());
        identity.plant = limb.id;
        identity.genotype = orchard.father.id;
        identity.asserted = *Date::of(2024, 4, 1);
        set.create(identity);
    }
    orchard.apply(set);
    view = orchard.view();
    const LivingCopies copies = livingCopies(*view, *view->genotype(orchard.father.id));
    EXPECT_EQ(copies.plants, 2);
    EXPECT_EQ(copies.stems, 1);
    EXPECT_TRUE(copies.onlyTree());
    EXPECT_THAT(copies.sites, testing::ElementsAre("Ashcroft"));
    EXPECT_TRUE(livingCopies(*view, *view->genotype(orchard.mother.id)).none());
    const auto frames = frameTrees(*view);
    ASSERT_EQ(frames.size(), 1U);
    EXPECT_EQ(frames[0].limbs, 2);
    const auto limbs = limbsOf(*view, orchard.store(), frames[0].plant);
    ASSERT_TRUE(limbs);
    ASSERT_EQ(limbs->size(), 2U);
    EXPECT_EQ((*limbs)[0].bearing, 200); // the lower one first
}

} // namespace
} // namespace pipwright
