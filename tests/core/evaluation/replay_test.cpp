#include "core/evaluation/merit/replay.h"
#include "tests/support/ladder_orchard.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace pipwright {
namespace {

using test::LadderOrchard;
using ::testing::Contains;
using ::testing::ElementsAre;

/// Two benchmarks and four seedlings; the book can be kept up to 2022 or on to 2024.
class ReplayOrchard : public LadderOrchard {
  public:
    explicit ReplayOrchard(bool goesOn) {
        const Genotype fenella = benchmark("Fenella");
        const Genotype odo = benchmark("Odo");
        const TrialRow line = row(1);
        for (int i = 1; i <= 12; ++i) {
            trees.push_back(seedling(line, i, "AT17-00" + std::to_string(i), Stage::bearing));
        }
        for (const Genotype* one : {&fenella, &odo}) {
            ripens(*one, "09-05", 2021, 2);
            tastes(treeOf(*one), one == &fenella ? 5 : 7, "09-08", 2, 2021);
        }
        for (std::size_t i = 0; i < trees.size(); ++i) {
            walk(trees[i], WalkMark::ripe, "2022-09-06");
        }
        // The first is a sleeper, the second poor for good, the third culled too early.
        tastes(trees[0], 2.5, "09-09", 2, 2021);
        tastes(trees[1], 2, "09-09", 2, 2021);
        tastes(trees[2], 4, "09-09", 1, 2022);
        for (std::size_t i = 3; i < trees.size(); ++i) {
            tastes(trees[i], 4.5 + 0.2 * static_cast<double>(i), "09-10", 1, 2022);
        }
        decide(trees[2], Stage::culled, "2022-11-01");
        if (!goesOn) {
            return;
        }
        tastes(trees[0], 9, "09-09", 2, 2023);
        tastes(trees[0], 9, "09-12", 2, 2023);
        tastes(trees[0], 9, "09-14", 2, 2023);
        decide(trees[0], Stage::watched, "2023-11-01");
        walk(trees[5], WalkMark::ripe, "2023-10-30");
        const Slot slot = slotOf(2022, "09-01", "09-12", "early September");
        elect(slot, Rung::floor, odo, "2023-01-05");
    }

    void decide(const EditedTree& tree, Stage stage, const char* day) {
        const std::array which = {tree};
        apply(decisionOn(which, stage, "at the round", on(*Date::fromIso(day))));
    }

    BookEvaluation evaluation(const char* day, bool asItStood) {
        const auto seen = view();
        return taken(evaluateBook(*seen, store(), taken(TastingLedger::read(store())),
                                  {*Date::fromIso(day), asItStood, {}, {}}));
    }

    std::vector<EditedTree> trees;
};

TEST(Replay, StandsAsItStood) {
    ReplayOrchard stopped(false);
    ReplayOrchard going(true);
    const BookEvaluation then = stopped.evaluation("2022-12-01", false);
    const BookEvaluation replayed = going.evaluation("2022-12-01", true);
    ASSERT_EQ(then.verdicts.size(), replayed.verdicts.size());
    ASSERT_GE(then.verdicts.size(), 12U);
    for (std::size_t i = 0; i < then.verdicts.size(); ++i) {
        const SeedlingVerdict& a = then.verdicts[i];
        const SeedlingVerdict& b = replayed.verdicts[i];
        EXPECT_EQ(a.genotype, b.genotype);
        EXPECT_EQ(a.stage, b.stage);
        EXPECT_EQ(a.suggestion, b.suggestion);
        EXPECT_EQ(a.season, b.season);
        EXPECT_NEAR(a.merit.value, b.merit.value, 1e-9);
        EXPECT_NEAR(a.merit.standardError, b.merit.standardError, 1e-9);
        ASSERT_TRUE(a.floor && b.floor);
        EXPECT_EQ(a.floor->reference, b.floor->reference);
        EXPECT_NEAR(a.floor->above, b.floor->above, 1e-9);
    }
    const BookEvaluation today = going.evaluation("2024-12-01", false);
    const Index sleeper = *going.view()->genotype(*going.trees[0].genotype);
    EXPECT_GT(today.verdictOn(sleeper)->merit.value, replayed.verdictOn(sleeper)->merit.value + 1);
    EXPECT_EQ(replayed.verdictOn(sleeper)->stage, Stage::bearing);
    EXPECT_EQ(today.verdictOn(sleeper)->stage, Stage::watched);
}

TEST(Replay, CountsWhatEachThresholdWouldRegret) {
    ReplayOrchard orchard(true);
    const BookEvaluation then = orchard.evaluation("2022-12-01", true);
    const BookEvaluation now = orchard.evaluation("2024-12-01", false);
    const auto made = regretTable(then, now, {});
    ASSERT_TRUE(made.ok());
    const RegretTable& table = *made;
    const auto view = orchard.view();
    const auto at = [&](std::size_t i) { return *view->genotype(*orchard.trees[i].genotype); };
    ASSERT_EQ(table.bestTenth.size(), 2U); // of twelve
    EXPECT_EQ(table.bestTenth.front(), at(0));
    EXPECT_EQ(table.judgedThen, 11);
    EXPECT_THAT(table.decided.culled, ElementsAre(at(2)));
    EXPECT_TRUE(table.decided.regretted.empty());
    EXPECT_EQ(table.decided.culledTastedSince, 0);

    ASSERT_EQ(table.rows.size(), kTriedThresholds.size());
    const double below = then.verdictOn(at(0))->floor->below();
    ASSERT_GT(below, 0.7); // or the sleeper was none
    for (std::size_t i = 0; i < table.rows.size(); ++i) {
        const RegretRow& row = table.rows[i];
        if (i > 0) {
            EXPECT_LE(row.culled.size(), table.rows[i - 1].culled.size());
        }
        if (row.threshold <= below) {
            EXPECT_THAT(row.regretted, ElementsAre(at(0)));
            EXPECT_EQ(row.regrettedTastedSince, 1);
            EXPECT_THAT(row.culled, Contains(at(1)));
        } else {
            EXPECT_TRUE(row.regretted.empty());
        }
    }
    EXPECT_LT(table.rows.back().culled.size(), table.rows.front().culled.size());

    EXPECT_FALSE(regretTable(now, now, {}).ok());
}

} // namespace
} // namespace pipwright
