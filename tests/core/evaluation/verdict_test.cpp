#include "core/evaluation/merit/ladder_odds.h"
#include "core/evaluation/merit/verdict.h"
#include "core/evaluation/merit/verdict_words.h"
#include "core/statistics/distributions.h"
#include "core/statistics/orthant.h"
#include "tests/support/ladder_orchard.h"

#include <cmath>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace pipwright {
namespace {

using test::LadderOrchard;
using ::testing::HasSubstr;

/// Three benchmarks of early September, tasted in two years: Fenella poor, Odo good, Brackley
/// between them.
class VerdictTest : public ::testing::Test {
  protected:
    VerdictTest() {
        fenella = orchard.benchmark("Fenella");
        odo = orchard.benchmark("Odo");
        brackley = orchard.benchmark("Brackley");
        for (const auto& [one, liking] :
             {std::pair{&fenella, 4.5}, {&odo, 7.0}, {&brackley, 6.0}}) {
            orchard.ripens(*one, "09-05");
            orchard.tastes(LadderOrchard::treeOf(*one), liking, "09-08");
        }
        row = orchard.row(1);
    }

    EditedTree seedling(const std::string& code, Stage stage = Stage::bearing) {
        const auto tree = orchard.seedling(row, ++planted, code, stage);
        orchard.walk(tree, WalkMark::ripe, "2024-09-06");
        return tree;
    }

    LadderOrchard orchard;
    Genotype fenella, odo, brackley;
    TrialRow row;
    std::int64_t planted = 0;
};

TEST_F(VerdictTest, HoldsTheJointDifferenceAgainstTheLadder) {
    const auto tree = seedling("AT17-001");
    orchard.tastes(tree, 6.5, "09-09");
    const auto evaluation = orchard.evaluate(2024);
    const auto verdict = orchard.verdictOn(evaluation, tree);
    EXPECT_EQ(verdict.basis, MeritBasis::tasted);
    EXPECT_EQ(verdict.lack, LadderLack::none);
    ASSERT_TRUE(verdict.floor && verdict.best && verdict.aboveAll);
    EXPECT_EQ(verdict.floor->reference, evaluation.at(fenella));
    EXPECT_EQ(verdict.best->reference, evaluation.at(odo));

    const auto difference =
        LadderOrchard::taken(evaluation.model->difference(evaluation.at(tree), evaluation.at(odo)));
    EXPECT_NEAR(verdict.best->ahead.value, difference.value, 1e-9);
    EXPECT_NEAR(verdict.best->ahead.standardError, difference.standardError,
                0.02 * difference.standardError);
    const double z = verdict.best->ahead.value / verdict.best->ahead.standardError;
    EXPECT_NEAR(verdict.best->above, standardNormalBelow(z), 1e-12);
    const double margin = (verdict.best->ahead.value - 0.5) / verdict.best->ahead.standardError;
    EXPECT_NEAR(verdict.best->aboveByMargin, standardNormalBelow(margin), 1e-12);
    EXPECT_EQ(verdict.benchmarks, 3);
    EXPECT_LE(*verdict.aboveAll, verdict.best->above + 0.002);
    EXPECT_GT(*verdict.aboveAll, 0.5 * verdict.best->above);
    EXPECT_NEAR(verdict.ninetyFive.high - verdict.ninetyFive.low,
                2 * 1.96 * verdict.merit.standardError, 1e-3);
    EXPECT_EQ(evidenceLine(verdict.evidence),
              "4 fair lots of 4, 2 tasters, 2 sittings, 2 crop years");
}

TEST_F(VerdictTest, SuggestsByTheThresholds) {
    const auto poor = seedling("AT17-001");
    const auto good = seedling("AT17-002", Stage::watched);
    const auto over = seedling("AT17-003");
    const auto silent = seedling("AT17-004");
    const auto culled = seedling("AT17-005", Stage::culled);
    orchard.tastes(poor, 2, "09-09", 3, 2022);
    orchard.tastes(good, 9, "09-09", 3, 2022);
    orchard.tastes(culled, 3, "09-09", 1);
    orchard.bite(over, 5, "2024-09-20", Origin::droppedToday);
    const auto evaluation = orchard.evaluate(2024);

    const auto cull = orchard.verdictOn(evaluation, poor);
    EXPECT_EQ(cull.suggestion, Suggestion::cull);
    EXPECT_EQ(cull.reason, SuggestionReason::belowFloor);
    EXPECT_GE(cull.floor->below(), 0.9);
    EXPECT_THAT(reasonSentence(*evaluation.view, cull, {}), HasSubstr("Worse than Fenella"));

    const auto name = orchard.verdictOn(evaluation, good);
    EXPECT_EQ(name.suggestion, Suggestion::nameTalk);
    EXPECT_EQ(name.gate, Gate::watchToSelection);
    VerdictChoices strict;
    strict.thresholds.nameCropYears = 4;
    const auto backUp = orchard.verdictOn(evaluation, good, strict);
    EXPECT_EQ(backUp.suggestion, Suggestion::backUpNow); // one tree only
    EXPECT_EQ(backUp.reason, SuggestionReason::aboveBestOneTree);
    strict.thresholds.backUpAboveBest = 1;
    const auto wait = orchard.verdictOn(evaluation, good, strict);
    EXPECT_EQ(wait.reason, SuggestionReason::aboveBestTooFewYears);
    EXPECT_THAT(reasonSentence(*evaluation.view, wait, strict),
                HasSubstr("tasted in 3 crop years, where 4 are asked for"));

    EXPECT_EQ(orchard.verdictOn(evaluation, over).reason, SuggestionReason::noFairLot);
    EXPECT_EQ(orchard.verdictOn(evaluation, over).suggestion, Suggestion::notEnoughYet);
    const auto unheard = orchard.verdictOn(evaluation, silent);
    EXPECT_EQ(unheard.reason, SuggestionReason::neverTasted);
    EXPECT_EQ(orchard.verdictOn(evaluation, culled).suggestion, Suggestion::none);
}

TEST_F(VerdictTest, RulesOutByFaultsOfThePurpose) {
    const auto good = seedling("AT17-001");
    orchard.tastes(good, 8, "09-09");
    const auto heavy = [&](const char* state, const char* day) {
        Observation scab;
        scab.trait = shippedTraitId(trait_key::kScab);
        scab.state = shippedStateId(trait_key::kScab, state);
        scab.qualifier = Qualifier::exact;
        const std::array trees = {good};
        orchard.apply(observationOn(trees, scab, "scab", orchard.on(*Date::fromIso(day))));
    };
    heavy("1", "2022-07-01");
    heavy("4", "2023-07-01");
    heavy("2", "2024-07-01");
    const auto evaluation = orchard.evaluate(2024);
    const auto verdict = orchard.verdictOn(evaluation, good);
    ASSERT_EQ(verdict.faults.size(), 1U);
    EXPECT_EQ(verdict.faults[0].kind, FaultKind::scab);
    EXPECT_EQ(verdict.faults[0].cropYear, 2023); // its worst year
    EXPECT_EQ(verdict.faults[0].figure, 4);
    EXPECT_EQ(verdict.suggestion, Suggestion::parentOnly);
    EXPECT_EQ(sentenceOf(verdict.faults[0]), "scab 4.0 in 2023, 4.0 rules it out (3 readings)");

    VerdictChoices cider;
    cider.limits = proposedLimits(Purpose::cider);
    EXPECT_TRUE(orchard.verdictOn(evaluation, good, cider).faults.empty());
    const auto before = LadderOrchard::taken(
        FaultLedger::read(*evaluation.view, orchard.store(), *Date::of(2022, 12, 31)));
    EXPECT_EQ(before.seen(evaluation.at(good))[0].figure, 1);
}

TEST_F(VerdictTest, GuessesTheUntastedFromItsParents) {
    orchard.tastes(LadderOrchard::treeOf(orchard.mother), 8, "09-09", 3, 2022);
    orchard.tastes(LadderOrchard::treeOf(orchard.father), 5, "09-09", 3, 2022);
    const auto silent = seedling("AT17-001");
    const auto evaluation = orchard.evaluate(2024);
    const auto verdict = orchard.verdictOn(evaluation, silent);
    EXPECT_EQ(verdict.basis, MeritBasis::relatives);
    const auto& model = *evaluation.model;
    const double middle = (model.meritOf(evaluation.at(orchard.mother))->merit.value +
                           model.meritOf(evaluation.at(orchard.father))->merit.value) /
                          2;
    EXPECT_NEAR(verdict.merit.value, middle, 1e-9);
    EXPECT_GT(verdict.merit.standardError, std::sqrt(model.varianceOf(MeritTerm::genotype) / 2));
    EXPECT_TRUE(verdict.floor.has_value());
}

TEST_F(VerdictTest, ListsTheUntestedFirst) {
    const auto tested = seedling("AT17-001");
    const auto fallen = seedling("AT17-002");
    const auto hopeless = seedling("AT17-003");
    orchard.tastes(tested, 5, "09-09");
    orchard.bite(fallen, 5.5, "2024-09-20", Origin::droppedToday);
    for (const char* day : {"2022-09-18", "2023-09-18", "2024-09-18"}) {
        orchard.bite(hopeless, 1, day, Origin::droppedToday);
    }
    const auto evaluation = orchard.evaluate(2024);
    const auto all = LadderOrchard::taken(verdicts(evaluation.ground(), {}));
    ASSERT_EQ(all.size(), 3U);
    const EvidenceLedger ledger = evidenceLedger(all);
    ASSERT_EQ(ledger.neverFair.size(), 2U);
    ASSERT_EQ(ledger.tested.size(), 1U);
    EXPECT_EQ(all[ledger.neverFair[0]].genotype, evaluation.at(fallen));
    EXPECT_EQ(all[ledger.neverFair[1]].genotype, evaluation.at(hopeless));
    EXPECT_GT(all[ledger.neverFair[0]].deficit, all[ledger.neverFair[1]].deficit);
}

TEST_F(VerdictTest, SaysWhatIsMissing) {
    const auto late = seedling("AT17-001");
    orchard.tastes(late, 6, "09-09");
    // Of no season anybody knows, and far outside all slots.
    const auto unknown = orchard.seedling(row, ++planted, "AT17-002", Stage::bearing);
    orchard.bite(unknown, 6, "2024-09-20", Origin::droppedToday);
    const auto winter = orchard.seedling(row, ++planted, "AT17-003", Stage::bearing);
    orchard.walk(winter, WalkMark::ripe, "2024-11-20");
    orchard.bite(winter, 6, "2024-11-20");
    const auto evaluation = orchard.evaluate(2024);
    const auto verdict = orchard.verdictOn(evaluation, unknown);
    EXPECT_EQ(verdict.lack, LadderLack::unknownSeason);
    EXPECT_EQ(verdict.suggestion, Suggestion::notEnoughYet);
    EXPECT_THAT(reasonSentence(*evaluation.view, verdict, {}), HasSubstr("Nobody knows when"));
    EXPECT_EQ(orchard.verdictOn(evaluation, winter).lack, LadderLack::outsideSlots);

    VerdictGround ground = evaluation.ground();
    const std::vector<SeasonLadders> none;
    ground.ladders = &none;
    const auto lone = LadderOrchard::taken(verdicts(ground, {}, evaluation.at(late)));
    EXPECT_EQ(lone.front().lack, LadderLack::noLadders);
    EXPECT_FALSE(lone.front().floor.has_value());

    VerdictChoices senseless;
    senseless.thresholds.watchAboveFloor = 0.05;
    const auto refused = verdicts(evaluation.ground(), senseless);
    ASSERT_FALSE(refused.ok());
    EXPECT_THAT(refused.problem().sentence(), HasSubstr("worth watching and culling at once"));
    senseless.thresholds = {};
    senseless.thresholds.nameAboveBest = 1.2;
    EXPECT_FALSE(verdicts(evaluation.ground(), senseless).ok());
}

TEST(LadderOdds, AgreesWithTheOrthantProbability) {
    // A seedling and five benchmarks that share a level and two of them a family.
    const std::vector<double> means = {6.2, 6.6, 5.4, 7.0, 6.9};
    DenseMatrix covariance(5, 5);
    for (std::size_t i = 0; i < 5; ++i) {
        for (std::size_t k = 0; k < 5; ++k) {
            covariance(i, k) = 0.04 + (i == k ? 0.1 + 0.03 * static_cast<double>(i) : 0) +
                               (i != k && i + k == 7 ? 0.05 : 0);
        }
    }
    for (const std::size_t count : {1U, 2U, 3U, 5U}) {
        DenseMatrix part(count, count);
        for (std::size_t i = 0; i < count; ++i) {
            for (std::size_t k = 0; k < count; ++k) {
                part(i, k) = covariance(i, k);
            }
        }
        const std::vector<double> some(means.begin(),
                                       means.begin() + static_cast<std::ptrdiff_t>(count));
        const auto odds = LadderOdds::of(some, part);
        ASSERT_TRUE(odds.ok());
        for (const double merit : {5.0, 6.5, 7.2, 8.5}) {
            const std::vector<double> together(count, 0.06);
            JointNormal ahead{{}, DenseMatrix(count, count)};
            for (std::size_t i = 0; i < count; ++i) {
                ahead.means.push_back(merit - some[i]);
                for (std::size_t k = 0; k < count; ++k) {
                    ahead.covariance(i, k) = 0.4 - 0.12 + part(i, k);
                }
            }
            const auto exact = orthantProbability(ahead);
            ASSERT_TRUE(exact.ok());
            EXPECT_NEAR(odds->aboveAll(merit, 0.4, together), exact->value, 0.002)
                << count << " benchmarks, " << merit;
        }
    }
    EXPECT_FALSE(LadderOdds::of({}, {}).ok());
}

} // namespace
} // namespace pipwright
