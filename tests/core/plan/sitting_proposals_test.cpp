#include "core/evaluation/planned_table.h"
#include "core/history/sitting_edits.h"
#include "core/plan/sitting_proposals.h"
#include "tests/support/tasted_orchard.h"

#include <algorithm>
#include <array>
#include <gtest/gtest.h>

namespace pipwright::test {
namespace {

class SittingProposals : public ::testing::Test {
  protected:
    SittingProposals() {
        const auto row = m_orchard.row(1);
        for (int i = 1; i <= 3; ++i) {
            m_trees.push_back(m_orchard.seedling(row, i, "AT17-00" + std::to_string(i)));
        }
    }
    Index genotype(const std::string& code) { return *m_orchard.view()->genotypeCalled(code); }
    /// A sitting at the table with a lot of each tree, liked so much.
    void held(const char* day, const std::vector<double>& likings,
              Ripeness ripeness = Ripeness::prime) {
        HeldSitting sitting;
        sitting.date = *Date::fromIso(day);
        for (std::size_t i = 0; i < likings.size(); ++i) {
            ServedLot lot;
            lot.plant = m_trees[i].plant;
            lot.condition.ripeness = ripeness;
            lot.condition.storage = StoragePath::fridge;
            lot.condition.daysInFridge = 2;
            lot.scores = {{m_orchard.taster.id, likings[i], Verdict::unknown, ""}};
            sitting.lots.push_back(lot);
        }
        m_orchard.apply(sittingHeld(sitting, m_orchard.on(sitting.date)));
    }
    std::vector<Tasting> newestFirst() {
        auto all = *m_orchard.store().all<Tasting>();
        std::sort(all.begin(), all.end(),
                  [](const Tasting& a, const Tasting& b) { return a.date > b.date; });
        return all;
    }

    TastedOrchard m_orchard;
    std::vector<EditedTree> m_trees;
    Date m_day = *Date::of(2026, 8, 22);
};

TEST_F(SittingProposals, TheBenchmarkOfTheSameSeasonIsHidden) {
    m_orchard.walk(m_trees[0], WalkMark::ripe, "2025-08-20");
    m_orchard.walk(m_trees[1], WalkMark::ripe, "2025-08-26");
    m_orchard.walk(TastedOrchard::treeOf(m_orchard.mother), WalkMark::ripe, "2025-09-04");
    m_orchard.walk(TastedOrchard::treeOf(m_orchard.father), WalkMark::ripe, "2025-08-24");
    const auto view = m_orchard.view();
    const std::array lots = {genotype("AT17-001"), genotype("AT17-002")};
    const auto proposed = proposedBenchmark(*view, lots);
    ASSERT_TRUE(proposed);
    EXPECT_EQ(view->genotypes()[proposed->genotype].code, "Russet Moor");
    EXPECT_EQ(proposed->daysLater, 4); // of -2 and 4 the upper middle
    // It is not proposed when it is on the table already; then the other, fifteen days later than
    // the first lot but nine than the second, is the next.
    const std::array withIt = {lots[0], lots[1], genotype("Russet Moor")};
    const auto other = proposedBenchmark(*view, withIt);
    ASSERT_TRUE(other);
    EXPECT_EQ(view->genotypes()[other->genotype].code, "Ash Tarn");
}

TEST_F(SittingProposals, WithoutAKnownSeasonNoBenchmarkIsProposed) {
    const auto view = m_orchard.view();
    const std::array lots = {genotype("AT17-001")};
    EXPECT_FALSE(proposedBenchmark(*view, lots));
    EXPECT_FALSE(proposedBenchmark(*view, {}));
}

TEST_F(SittingProposals, AMiddlingLotOfTheLastSittingComesAgain) {
    held("2026-08-15", {5, 8, 6.5});
    held("2026-07-01", {5, 8, 6.5});
    const auto view = m_orchard.view();
    const auto sittings = newestFirst();
    const auto proposed = proposedRepeat(*view, m_orchard.store(), m_day, sittings, {});
    ASSERT_TRUE(proposed.ok());
    ASSERT_TRUE(proposed->has_value());
    EXPECT_EQ((*proposed)->lot.name, "AT17-003");
    EXPECT_EQ((*proposed)->daysAgo, 7);
    EXPECT_EQ((*proposed)->lot.condition.daysInFridge, 9);
    const std::array chosen = {genotype("AT17-003")};
    const auto other = proposedRepeat(*view, m_orchard.store(), m_day, sittings, chosen);
    ASSERT_TRUE(other->has_value());
    EXPECT_NE((*other)->lot.name, "AT17-003");
    // Too long ago, or not in its prime: nothing.
    const auto late = proposedRepeat(*view, m_orchard.store(), m_day.plusDays(20), sittings, {});
    EXPECT_FALSE(late->has_value());
}

TEST_F(SittingProposals, OverRipeFruitIsNotServedAgain) {
    held("2026-08-15", {5, 8, 6.5}, Ripeness::gone);
    const auto view = m_orchard.view();
    const auto proposed = proposedRepeat(*view, m_orchard.store(), m_day, newestFirst(), {});
    EXPECT_FALSE(proposed->has_value());
}

TEST_F(SittingProposals, APlanGoesIntoTheBookAndComesBackAsSheets) {
    const auto view = m_orchard.view();
    SittingWish wish;
    wish.date = m_day;
    wish.draw = 23;
    for (const EditedTree& tree : m_trees) {
        wish.lots.push_back(fruitOf(*view, genotype(tree.code)));
        wish.lots.back().condition.ripeness = Ripeness::prime;
    }
    wish.lots.push_back(fruitOf(*view, genotype("Ash Tarn")));
    wish.lots.back().condition.ripeness = Ripeness::gone;
    wish.benchmark = fruitOf(*view, genotype("Russet Moor"));
    Person jory;
    jory.id = PersonId(m_orchard.ids.make());
    jory.name = "Jory Pell";
    wish.tasters = {jory, m_orchard.taster};
    const auto plan = planSitting(wish);
    ASSERT_TRUE(plan.ok());
    m_orchard.apply(sittingPlanned(plannedSitting(*plan, "Saturday", {jory}), m_orchard.on(m_day)));
    const auto id = m_orchard.store().all<Tasting>()->front().id;
    const auto read = readPlannedTable(m_orchard.store(), id);
    ASSERT_TRUE(read.ok());
    ASSERT_TRUE(read->has_value());
    const PlannedTable& table = **read;
    EXPECT_TRUE(table.isSealed());
    EXPECT_EQ(table.served(), 5);
    ASSERT_EQ(table.lots.size(), 6U);
    EXPECT_TRUE(table.lots.back().servingCode.empty());
    ASSERT_EQ(table.sheets.size(), 2U);
    EXPECT_EQ(table.sheets[0].taster, jory.id);
    for (std::size_t taster = 0; taster < 2; ++taster) {
        ASSERT_EQ(table.sheets[taster].lines.size(), 5U);
        EXPECT_EQ(table.sheets[taster].open(), 5);
        for (std::size_t place = 0; place < 5; ++place) {
            const auto lot = static_cast<std::size_t>(plan->orders.rows[taster][place]);
            EXPECT_EQ(table.sheets[taster].lines[place].code, plan->lots[lot].code);
        }
    }
    EXPECT_FALSE(table.allSheetsIn());
    EXPECT_EQ(table.unwritten().size(), 10U);
    const auto used = usedServingCodes(m_orchard.store(), 200);
    EXPECT_EQ(used->size(), 5U);
    // The next plan takes other codes.
    wish.usedCodes = *used;
    const auto next = planSitting(wish);
    for (const PlannedServing& serving : next->lots) {
        if (serving.isServed()) {
            EXPECT_EQ(std::count(used->begin(), used->end(), serving.code), 0) << serving.code;
        }
    }
    held("2026-08-10", {5, 6});
    for (const Tasting& tasting : newestFirst()) {
        if (tasting.id != id) { // written down after the event: no key
            EXPECT_FALSE((*readPlannedTable(m_orchard.store(), tasting.id)).has_value());
        }
    }
}

} // namespace
} // namespace pipwright::test
