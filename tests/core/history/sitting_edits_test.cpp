#include "core/history/graft_edits.h"
#include "core/history/sitting_edits.h"
#include "tests/support/small_orchard.h"

#include <gtest/gtest.h>

namespace pipwright {
namespace {

TEST(SittingEdits, AWholeSittingIsOneChangeSetWithItsNewTaster) {
    test::SmallOrchard orchard;
    const EditedTree tree = orchard.seedling(orchard.row(1), 1, "AT17-001");
    HeldSitting sitting;
    sitting.date = *Date::of(2026, 1, 9);
    sitting.sight = Sight::blind;
    Person friendOfHers;
    friendOfHers.id = PersonId(orchard.ids.make());
    friendOfHers.name = "Jory Pell";
    sitting.newPersons = {friendOfHers};
    ServedLot lot;
    lot.plant = tree.plant;
    lot.hemisphere = Hemisphere::north;
    const auto path = readStoragePath("l60c2");
    ASSERT_TRUE(path);
    putPath(*path, lot.condition);
    lot.scores = {{orchard.taster.id, 7.5, Verdict::watch, "crisp"},
                  {friendOfHers.id, std::nullopt, Verdict::unknown, ""}};
    ServedLot bought;
    bought.claimedGenotype = orchard.mother.id;
    bought.source = "farm shop";
    sitting.lots = {lot, bought};
    const auto before = orchard.store().position();
    orchard.apply(sittingHeld(sitting, orchard.on(*Date::of(2026, 2, 1))));
    EXPECT_EQ(orchard.store().position(), before + 1);

    const auto lots = orchard.store().all<Lot>();
    ASSERT_TRUE(lots);
    ASSERT_EQ(lots->size(), 2U);
    const Lot& kept = lots->front().plant ? lots->front() : lots->back();
    EXPECT_EQ(kept.cropYear, CropYear{2025}); // kept over New Year
    EXPECT_EQ(kept.storage, StoragePath::chained);
    EXPECT_EQ(kept.daysInCellar, 60);
    EXPECT_EQ(kept.storageTyped, "l60c2");
    const auto scores = orchard.store().all<Score>();
    ASSERT_TRUE(scores);
    ASSERT_EQ(scores->size(), 1U); // an empty cell is no score
    EXPECT_EQ(scores->front().liking, 7.5);
}

TEST(SittingEdits, AConditionIsCorrectedWithItsCropYearAndUndone) {
    test::SmallOrchard orchard;
    const EditedTree tree = orchard.seedling(orchard.row(1), 1, "AT17-001");
    const EditContext july = orchard.on(*Date::of(2026, 7, 20));
    LotCondition first;
    first.origin = Origin::droppedToday;
    first.bag = Bag::organza;
    orchard.apply(biteOf(tree, first, {orchard.taster.id, 8, Verdict::unknown, ""}, july));
    const Lot before = orchard.store().all<Lot>()->front();
    EXPECT_EQ(before.cropYear, CropYear{2026});
    LotCondition condition = conditionOf(before);
    condition.origin = Origin::pickedRipe;
    const auto path = readStoragePath("l270c3");
    ASSERT_TRUE(path);
    putPath(*path, condition);
    condition.taken = Date::of(2025, 10, 20);
    orchard.apply(conditionCorrected(before, condition, july.day, "Condition of AT17-001", july));
    EXPECT_EQ(orchard.store().undoSentence(), "Condition of AT17-001 corrected");
    Lot after = orchard.store().all<Lot>()->front();
    EXPECT_EQ(after.origin, Origin::pickedRipe);
    EXPECT_EQ(after.bag, Bag::organza); // what was not touched stays
    EXPECT_EQ(after.storage, StoragePath::chained);
    EXPECT_EQ(after.storageTyped, "l270c3");
    EXPECT_EQ(after.cropYear, CropYear{2025});
    ASSERT_TRUE(orchard.store().undo({}));
    EXPECT_EQ(toRecord(orchard.store().all<Lot>()->front()), toRecord(before));
    // The same condition is no edit.
    EXPECT_TRUE(conditionCorrected(before, conditionOf(before), july.day, "x", july).empty());
}

TEST(SittingEdits, AScoreIsCorrectedAndUndone) {
    test::SmallOrchard orchard;
    const EditedTree tree = orchard.seedling(orchard.row(1), 1, "AT17-001");
    orchard.apply(biteOf(tree, {}, {orchard.taster.id, 8, Verdict::unknown, ""},
                         orchard.on(*Date::of(2026, 8, 22))));
    const Score before = orchard.store().all<Score>()->front();
    orchard.apply(scoreCorrected(before, *readTypedScore("6h ? thin"), "Score",
                                 orchard.on(*Date::of(2026, 8, 22))));
    EXPECT_EQ(orchard.store().all<Score>()->front().liking, 6.5);
    EXPECT_EQ(orchard.store().undoSentence(), "Score corrected");
    ASSERT_TRUE(orchard.store().undo({}));
    EXPECT_EQ(orchard.store().all<Score>()->front().liking, 8);
    EXPECT_TRUE(
        scoreAdded(before.lot, orchard.taster.id, {}, "Score", orchard.on(*Date::of(2026, 8, 22)))
            .empty());
}

TEST(GraftEdits, AnOrderAnswersAnOpenWishOnly) {
    test::SmallOrchard orchard;
    const EditedTree tree = orchard.seedling(orchard.row(1), 1, "AT17-001");
    const EditContext context = orchard.on(*Date::of(2026, 8, 22));
    orchard.apply(graftWishFor(tree, 3, "only tree", context));
    const GraftWish wish = orchard.store().all<GraftWish>()->front();
    GraftPlan plan;
    plan.method = GraftMethod::chipBud;
    plan.number = 4;
    plan.ontoWords = "two stocks by the shed";
    orchard.apply(graftsOrdered(wish, plan, tree.code, context));
    const GraftWish ordered = orchard.store().all<GraftWish>()->front();
    EXPECT_EQ(ordered.state, WishState::ordered);
    const GraftOrder order = orchard.store().all<GraftOrder>()->front();
    EXPECT_EQ(order.wish, wish.id);
    EXPECT_EQ(order.motherPlant, tree.plant);
    EXPECT_EQ(order.reason, "only tree");

    GraftWish done = ordered;
    done.state = WishState::done;
    orchard.apply(graftWishChanged(ordered, done, tree.code, context));
    orchard.apply(graftsOrdered(done, plan, tree.code, context));
    EXPECT_EQ(orchard.store().all<GraftWish>()->front().state, WishState::done);
}

TEST(GraftEdits, ALookIsCountedAndCorrected) {
    test::SmallOrchard orchard;
    const EditedTree tree = orchard.seedling(orchard.row(1), 1, "AT17-001");
    const EditContext context = orchard.on(*Date::of(2026, 6, 1));
    orchard.apply(graftWishFor(tree, 3, "", context));
    GraftPlan plan;
    plan.number = 3;
    orchard.apply(
        graftsOrdered(orchard.store().all<GraftWish>()->front(), plan, tree.code, context));
    const GraftOrder order = orchard.store().all<GraftOrder>()->front();
    orchard.apply(graftsChecked(order, {}, GraftCheckpoint::midsummer, *readGraftCount("2 wind", 3),
                                tree.code, context));
    const GraftCheck check = orchard.store().all<GraftCheck>()->front();
    EXPECT_EQ(check.alive, 2);
    EXPECT_EQ(check.cause, "wind");
    EXPECT_EQ(check.date, context.day);
    orchard.apply(graftsChecked(order, check, GraftCheckpoint::midsummer, *readGraftCount("1", 3),
                                tree.code, context));
    ASSERT_EQ(orchard.store().all<GraftCheck>()->size(), 1U);
    EXPECT_EQ(orchard.store().all<GraftCheck>()->front().alive, 1);
}

TEST(GraftEdits, NoMoreLiveThanWereGrafted) {
    EXPECT_EQ(readGraftCount("4 of 5 frost", 5)->cause, "frost");
    EXPECT_EQ(readGraftCount("0", 5)->alive, 0);
    for (const auto* typed : {"6", "", "some", "-1"}) {
        const auto count = readGraftCount(typed, 5);
        ASSERT_FALSE(count) << typed;
        EXPECT_FALSE(count.problem().remedy.empty());
    }
}

} // namespace
} // namespace pipwright
