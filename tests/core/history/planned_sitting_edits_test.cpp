#include "core/history/planned_sitting_edits.h"
#include "tests/support/small_orchard.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace pipwright {
namespace {

class PlannedSittingEdits : public ::testing::Test {
  protected:
    void SetUp() override {
        m_tree = m_orchard.seedling(m_orchard.row(1), 1, "AT17-001");
        Person jory;
        jory.id = PersonId(m_orchard.ids.make());
        jory.name = "Jory Pell";
        PlannedSitting sitting;
        sitting.date = m_day;
        sitting.title = "Saturday";
        sitting.draw = 17;
        sitting.newPersons = {jory};
        sitting.tasters = {m_orchard.taster.id, jory.id};
        PlannedLot tree;
        tree.plant = m_tree.plant;
        tree.hemisphere = Hemisphere::north;
        tree.condition.ripeness = Ripeness::prime;
        tree.code = "417";
        PlannedLot bought;
        bought.claimedGenotype = m_orchard.mother.id;
        bought.source = "farm shop";
        bought.code = "532";
        PlannedLot lookedAt = tree;
        lookedAt.code.clear();
        lookedAt.condition.ripeness = Ripeness::gone;
        sitting.lots = {tree, bought, lookedAt};
        sitting.orders = {{1, 0}, {0, 1}};
        m_jory = jory.id;
        m_orchard.apply(sittingPlanned(sitting, context()));
    }

    EditContext context() { return m_orchard.on(m_day); }
    Lot lotOf(const std::string& code) {
        const auto lots = m_orchard.store().all<Lot>();
        return *std::find_if(lots->begin(), lots->end(),
                             [&code](const Lot& lot) { return lot.servingCode == code; });
    }
    std::vector<Score> sheetOf(PersonId taster) {
        auto scores = *m_orchard.store().where<Score>("taster", taster.uuid);
        std::sort(scores.begin(), scores.end(), [](const Score& a, const Score& b) {
            return a.servingOrder.value_or(0) < b.servingOrder.value_or(0);
        });
        return scores;
    }

    test::SmallOrchard m_orchard;
    EditedTree m_tree;
    PersonId m_jory;
    Date m_day = *Date::of(2026, 8, 22);
};

TEST_F(PlannedSittingEdits, APlanIsOneChangeSetWithEveryTastersOrder) {
    EXPECT_EQ(m_orchard.store().undoSentence(), "Sitting of 2026-08-22 planned, 3 lots, 2 tasters");
    const auto own = sheetOf(m_orchard.taster.id);
    ASSERT_EQ(own.size(), 2U);
    EXPECT_EQ(own[0].lot, lotOf("532").id);
    EXPECT_EQ(own[1].lot, lotOf("417").id);
    EXPECT_FALSE(isWritten(own[0]));
    EXPECT_EQ(sheetOf(m_jory)[0].lot, lotOf("417").id);
    const Lot looked = lotOf("");
    EXPECT_EQ(looked.ripeness, Ripeness::gone);
    EXPECT_TRUE(m_orchard.store().where<Score>("lot", looked.id.uuid)->empty());
    EXPECT_FALSE(lotOf("417").servingOrder); // each taster has his own
    EXPECT_EQ(lotOf("417").cropYear, CropYear{2026});
    const auto keys = m_orchard.store().all<SealedKey>();
    ASSERT_EQ(keys->size(), 1U);
    EXPECT_EQ(keys->front().draw, 17);
    EXPECT_FALSE(keys->front().opened);
    ASSERT_TRUE(m_orchard.store().undo({}));
    EXPECT_TRUE(m_orchard.store().all<Tasting>()->empty());
    EXPECT_TRUE(m_orchard.store().all<SealedKey>()->empty());
    EXPECT_FALSE(m_orchard.store().get(m_jory)->has_value());
}

TEST_F(PlannedSittingEdits, ALineIsWrittenInItsPlaceAndUndone) {
    const Score line = sheetOf(m_jory)[1];
    TypedScore typed;
    typed.liking = 7.5;
    typed.words = "crisp";
    m_orchard.apply(sheetLineWritten(line, typed, "Score of Jory Pell for 532", context()));
    EXPECT_EQ(m_orchard.store().undoSentence(), "Score of Jory Pell for 532");
    const Score after = sheetOf(m_jory)[1];
    EXPECT_EQ(after.liking, 7.5);
    EXPECT_EQ(after.servingOrder, 2);
    EXPECT_TRUE(isWritten(after));
    ASSERT_TRUE(m_orchard.store().undo({}));
    EXPECT_EQ(toRecord(sheetOf(m_jory)[1]), toRecord(line));
}

TEST_F(PlannedSittingEdits, TheBestOnesAreRankedAndChangedAbout) {
    auto sheet = sheetOf(m_jory);
    m_orchard.apply(bestOnesWritten(sheet, {sheet[1].id, sheet[0].id}, "Jory Pell", context()));
    sheet = sheetOf(m_jory);
    EXPECT_EQ(sheet[0].rank, 2);
    EXPECT_EQ(sheet[1].rank, 1);
    m_orchard.apply(bestOnesWritten(sheet, {sheet[0].id}, "Jory Pell", context()));
    sheet = sheetOf(m_jory);
    EXPECT_EQ(sheet[0].rank, 1);
    EXPECT_FALSE(sheet[1].rank);
    EXPECT_TRUE(bestOnesWritten(sheet, {sheet[0].id}, "Jory Pell", context()).empty());
}

TEST_F(PlannedSittingEdits, OpeningTheKeyIsRecordedWithItsReason) {
    const SealedKey key = m_orchard.store().all<SealedKey>()->front();
    auto sheet = sheetOf(m_orchard.taster.id);
    m_orchard.apply(sheetLineWritten(sheet[0], {7.0, Verdict::unknown, {}}, "Score", context()));
    sheet = sheetOf(m_orchard.taster.id);
    auto unwritten = sheetOf(m_jory);
    unwritten.push_back(sheet[1]);
    m_orchard.apply(keyOpened(key, m_day, unwritten, "Jory left early", context()));
    EXPECT_EQ(m_orchard.store().all<Score>()->size(), 1U);
    EXPECT_EQ(m_orchard.store().undoSentence(), "Key of 2026-08-22 opened early: Jory left early");
    const SealedKey opened = m_orchard.store().all<SealedKey>()->front();
    EXPECT_EQ(opened.opened, m_day);
    EXPECT_EQ(opened.reason, "Jory left early");
    ASSERT_TRUE(m_orchard.store().undo({}));
    EXPECT_FALSE(m_orchard.store().all<SealedKey>()->front().opened);
    EXPECT_EQ(m_orchard.store().all<Score>()->size(), 4U);
}

} // namespace
} // namespace pipwright
