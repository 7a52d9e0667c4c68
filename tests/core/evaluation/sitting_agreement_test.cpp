#include "core/evaluation/merit/tasting_ledger.h"
#include "core/evaluation/sitting_agreement.h"
#include "core/evaluation/tree_life.h"
#include "core/history/planned_sitting_edits.h"
#include "tests/support/small_orchard.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <gtest/gtest.h>

namespace pipwright {
namespace {

/// Lots down, tasters across; 0 is no liking. Made without a book.
Sitting sittingOf(const std::vector<std::vector<double>>& likings) {
    Sitting sitting;
    for (std::size_t taster = 0; taster < likings.front().size(); ++taster) {
        sitting.tasters.emplace_back(Uuid::named("taster " + std::to_string(taster)));
    }
    for (const auto& row : likings) {
        TastedLot lot;
        for (std::size_t taster = 0; taster < row.size(); ++taster) {
            if (row[taster] > 0) {
                Score score;
                score.taster = sitting.tasters[taster];
                score.liking = row[taster];
                lot.scores.push_back(score);
            }
        }
        sitting.lots.push_back(std::move(lot));
    }
    return sitting;
}

TEST(SittingAgreement, IsKendallsOverTheLotsAllTastersScored) {
    const auto agreement = agreementOf(sittingOf({{8, 7, 9}, {6, 6, 5}, {7, 6.5, 8}, {5, 0, 4}}));
    ASSERT_TRUE(agreement.ok()) << agreement.problem().sentence();
    EXPECT_EQ(agreement->tasters, 3);
    EXPECT_EQ(agreement->lots, 3);
    EXPECT_EQ(agreement->leftOut, 1);
    EXPECT_NEAR(agreement->order.concordance, 1, 1e-12); // all put them in the same order
    EXPECT_NEAR(agreement->pValue(), 1.0 / 36, 1e-12);   // 3! orders, three tasters alike
}

TEST(SittingAgreement, NeedsTwoTastersAndADifference) {
    EXPECT_FALSE(agreementOf(sittingOf({{8}, {6}, {7}})).ok());
    EXPECT_FALSE(agreementOf(sittingOf({{8, 7}})).ok());
    EXPECT_FALSE(agreementOf(sittingOf({{6, 6}, {6, 6}})).ok());
    EXPECT_FALSE(agreementOf(sittingOf({{0, 0}, {0, 0}})).ok());
}

TEST(SittingRanking, FreesLotsFromTheTastersLevels) {
    // Three tasters, four fruits, each fruit tasted by some: least squares by hand gives 6.6, 6.4,
    // 5.0 and 6.0 with tasters at 0, +1.2 and -1.2, while the raw means are 6, 7, 5 and 6.
    const auto ranking = rankingOf(sittingOf({{7, 0, 5}, {6, 8, 0}, {5, 6, 4}, {0, 7, 5}}));
    ASSERT_TRUE(ranking.ok()) << ranking.problem().sentence();
    ASSERT_EQ(ranking->lots.size(), 4U);
    EXPECT_EQ(ranking->lots[0].lot, 0U);
    EXPECT_NEAR(ranking->lots[0].mean, 6.6, 1e-9);
    EXPECT_EQ(ranking->lots[1].lot, 1U);
    EXPECT_NEAR(ranking->lots[1].mean, 6.4, 1e-9);
    EXPECT_NEAR(ranking->lots[2].mean, 6.0, 1e-9);
    EXPECT_NEAR(ranking->lots[3].mean, 5.0, 1e-9);
    ASSERT_TRUE(ranking->residual);
    EXPECT_EQ(ranking->residual->degreesOfFreedom, 3); // nine likings, six effects
    EXPECT_TRUE(ranking->lots[0].hasInterval);
    EXPECT_LT(ranking->lots[0].low, 6.6);
    EXPECT_GT(ranking->lots[0].high, 6.6);
}

TEST(SittingRanking, IntervalsOfACompleteTableAreThoseOfTheAnalysisOfVariance) {
    // Two tasters, three lots: 6 8 / 5 7 / 7 8. Lot means 7, 6, 7.5; taster means 6 and 7.67;
    // residual squares 1/3 on 2 degrees: s = 0.408248, t = 4.302653, half width t s / sqrt 2.
    const auto ranking = rankingOf(sittingOf({{6, 8}, {5, 7}, {7, 8}}));
    ASSERT_TRUE(ranking.ok());
    ASSERT_TRUE(ranking->residual);
    EXPECT_EQ(ranking->residual->degreesOfFreedom, 2);
    EXPECT_NEAR(ranking->residual->deviation, std::sqrt(1.0 / 6), 1e-9);
    EXPECT_EQ(ranking->lots[0].lot, 2U);
    EXPECT_NEAR(ranking->lots[0].mean, 7.5, 1e-9);
    const double half = 4.302653 * std::sqrt(1.0 / 6) / std::sqrt(2.0);
    EXPECT_NEAR(ranking->lots[0].high - 7.5, half, 1e-5);
    ASSERT_TRUE(ranking->leastDifference);
    EXPECT_NEAR(*ranking->leastDifference, 4.302653 * std::sqrt(1.0 / 6), 1e-5);
}

TEST(SittingRanking, SaysWhatItCannot) {
    EXPECT_FALSE(rankingOf(sittingOf({{0, 0}, {0, 0}})).ok());
    EXPECT_FALSE(rankingOf(sittingOf({{6, 0}, {0, 7}})).ok()); // nobody tasted both
    const auto alone = rankingOf(sittingOf({{6}, {8}}));
    ASSERT_TRUE(alone.ok());
    EXPECT_EQ(alone->lots[0].lot, 1U);
    EXPECT_FALSE(alone->lots[0].hasInterval);
    EXPECT_FALSE(alone->residual);
}

class PlannedAndTasted : public ::testing::Test {
  protected:
    void SetUp() override {
        const auto row = m_orchard.row(1);
        m_tree = m_orchard.seedling(row, 1, "AT17-001");
        m_jory.id = PersonId(m_orchard.ids.make());
        m_jory.name = "Jory Pell";
        PlannedSitting sitting;
        sitting.date = m_day;
        sitting.newPersons = {m_jory};
        sitting.tasters = {m_orchard.taster.id, m_jory.id};
        PlannedLot tree;
        tree.plant = m_tree.plant;
        tree.code = "243";
        PlannedLot benchmark;
        benchmark.claimedGenotype = m_orchard.mother.id;
        benchmark.code = "417";
        PlannedLot again = benchmark;
        again.code = "532";
        sitting.lots = {tree, benchmark, again};
        sitting.orders = {{1, 0, 2}, {2, 0, 1}};
        m_orchard.apply(sittingPlanned(sitting, m_orchard.on(m_day)));
        write({{"243", 7, 8}, {"417", 6, 7}, {"532", 6.5, 5}});
    }
    struct Line {
        const char* code;
        double mine;
        double theirs;
    };
    void write(const std::vector<Line>& lines) {
        for (const Line& line : lines) {
            const auto lots = *m_orchard.store().all<Lot>();
            const auto lot = std::find_if(lots.begin(), lots.end(), [&line](const Lot& one) {
                return one.servingCode == line.code;
            });
            const auto scores = *m_orchard.store().where<Score>("lot", lot->id.uuid);
            for (const Score& score : scores) {
                const double liking = score.taster == m_jory.id ? line.theirs : line.mine;
                m_orchard.apply(sheetLineWritten(score, {liking, Verdict::unknown, {}}, "Score",
                                                 m_orchard.on(m_day)));
            }
        }
    }
    void open() {
        m_orchard.apply(keyOpened(m_orchard.store().all<SealedKey>()->front(), m_day, {}, {},
                                  m_orchard.on(m_day)));
    }
    GenotypeFacts factsOf(const std::string& code) {
        const auto view = m_orchard.view();
        return view->genotypeFacts(*view->genotypeCalled(code));
    }

    test::SmallOrchard m_orchard;
    EditedTree m_tree;
    Person m_jory;
    Date m_day = *Date::of(2026, 8, 22);
};

TEST_F(PlannedAndTasted, NothingIsSeenOfItBeforeTheKeyIsOpened) {
    const auto view = m_orchard.view();
    const auto plant = *view->plant(*m_tree.plant);
    EXPECT_EQ(factsOf("AT17-001").lots, 0);
    EXPECT_FALSE(factsOf("AT17-001").latestLiking);
    EXPECT_TRUE(lifeOfPlant(*view, m_orchard.store(), plant)->tastings.empty());
    const auto position = m_orchard.store().position();
    open();
    EXPECT_EQ(factsOf("AT17-001").lots, 1);
    EXPECT_EQ(factsOf("AT17-001").latestLiking, 7.5);
    EXPECT_EQ(factsOf("Ash Tarn").tasters, 2);
    EXPECT_EQ(lifeOfPlant(*view, m_orchard.store(), plant)->tastings.size(), 1U);
    // A view that is carried along says the same as one read anew.
    const auto entries = m_orchard.store().journal({});
    ASSERT_TRUE(entries.ok());
    ASSERT_EQ(entries->front().position, position + 1);
    const auto after = view->after(entries->front().changes, m_orchard.store());
    ASSERT_TRUE(after.ok());
    const auto index = *(*after)->genotypeCalled("AT17-001");
    EXPECT_EQ((*after)->genotypeFacts(index), factsOf("AT17-001"));
}

TEST_F(PlannedAndTasted, MeritCountsItsScoresOnlyWhenTheKeyIsOpen) {
    const auto view = m_orchard.view();
    auto ledger = TastingLedger::read(m_orchard.store());
    ASSERT_TRUE(ledger.ok());
    EXPECT_TRUE(ledger->likings(*view).records.empty());
    open();
    const auto entries = m_orchard.store().journal({});
    ASSERT_TRUE(entries.ok());
    ASSERT_TRUE(ledger->refresh(entries->front().changes, m_orchard.store()).ok());
    EXPECT_EQ(ledger->likings(*view).records.size(), 6U);
    EXPECT_EQ(TastingLedger::read(m_orchard.store())->likings(*view).records.size(), 6U);
}

TEST_F(PlannedAndTasted, TheHiddenTwinsTellWhatAScoreIsWorth) {
    open();
    const auto view = m_orchard.view();
    const std::array ids = {m_orchard.store().all<Tasting>()->front().id};
    const auto sitting = readSitting(*view, m_orchard.store(), ids);
    ASSERT_TRUE(sitting.ok());
    const auto errors = repeatErrors(*view, *sitting);
    ASSERT_EQ(errors.size(), 1U);
    EXPECT_EQ(errors[0].name, "Ash Tarn");
    EXPECT_EQ(errors[0].tasters, 2);
    EXPECT_EQ(errors[0].spread.degreesOfFreedom, 2);
    // Gaps 0.5 and 2: sqrt((0.25 + 4) / 4); chi-square of 2 degrees: 0.0506356 and 7.377759.
    EXPECT_NEAR(errors[0].spread.deviation, std::sqrt(4.25 / 4), 1e-9);
    EXPECT_NEAR(errors[0].spread.low, std::sqrt(2.125 / 7.377759), 1e-5);
    EXPECT_NEAR(errors[0].spread.high, std::sqrt(2.125 / 0.0506356), 1e-4);
    EXPECT_EQ(errors[0].largestGap, 2);
    EXPECT_NEAR(errors[0].meanLiking, 6.125, 1e-12);
}

} // namespace
} // namespace pipwright
