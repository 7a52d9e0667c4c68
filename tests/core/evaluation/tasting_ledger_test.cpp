#include "core/evaluation/merit/tasting_ledger.h"
#include "tests/support/random_changes.h"
#include "tests/support/tasted_orchard.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <sstream>

namespace pipwright {
namespace {

using test::RandomChanges;
using test::TastedOrchard;

/// Everything a list of records says, so that two can be compared.
std::string saidBy(const TraitRecords& all) {
    std::ostringstream text;
    text << all.persons.size() << ' ' << all.lots.size() << ' ' << all.sittings << ' '
         << all.leftOut << '\n';
    for (const TraitRecord& record : all.records) {
        text << record.source.text() << ' ' << record.value << ' ' << record.genotype << ' '
             << record.plant << ' ' << record.person << ' ' << record.lot << ' ' << record.sitting
             << ' ' << record.cropYear << ' ' << record.date.iso() << ' ' << record.fair
             << record.unclear << ' ' << static_cast<int>(record.sight);
        for (const ConditionAmount& one : record.conditions) {
            text << ' ' << static_cast<int>(one.condition) << ':' << one.amount;
        }
        text << '\n';
    }
    return text.str();
}

TastingLedger ledgerOf(const Store& store) {
    auto ledger = TastingLedger::read(store);
    if (!ledger) {
        throw std::runtime_error(ledger.problem().sentence());
    }
    return *ledger;
}

class TastingLedgerTest : public ::testing::Test {
  protected:
    TastingLedgerTest() {
        const TrialRow row = orchard.row(1);
        for (int i = 0; i < 3; ++i) {
            trees.push_back(orchard.seedling(row, i + 1, "AT17-00" + std::to_string(i + 1)));
        }
    }

    TraitRecords likings(std::optional<Date> asOf = std::nullopt) {
        return ledgerOf(orchard.store()).likings(*orchard.view(), asOf);
    }

    TastedOrchard orchard;
    std::vector<EditedTree> trees;
};

TEST_F(TastingLedgerTest, CarriedAlongItIsWhatItIsReadAnew) {
    for (const std::uint64_t seed : {1U, 2U}) {
        TastedOrchard book;
        const TrialRow row = book.row(1);
        for (int i = 0; i < 6; ++i) {
            const auto tree = book.seedling(row, i + 1, "AT17-00" + std::to_string(i + 1));
            book.bite(tree, 5 + i / 2.0, "2024-09-12");
            book.bite(tree, 6, i % 2 == 0 ? "2025-09-03" : "2025-09-04", Origin::droppedToday);
        }
        TastingLedger carried = ledgerOf(book.store());
        RandomChanges random(seed);
        int concerned = 0;
        for (int i = 0; i < 120; ++i) {
            std::vector<Change> changes;
            if (i % 7 == 6) {
                const auto undone = book.store().undo({});
                ASSERT_TRUE(undone.ok()) << undone.problem().sentence();
                changes = undone->changes;
            } else {
                const auto done = book.store().apply(random.next(book.store()), {});
                ASSERT_TRUE(done.ok()) << done.problem().sentence();
                changes = done->changes;
            }
            ASSERT_TRUE(carried.refresh(changes, book.store()).ok());
            const bool concerns =
                std::any_of(changes.begin(), changes.end(), [](const Change& change) {
                    return change.kind == Kind::tasting || change.kind == Kind::lot ||
                           change.kind == Kind::score;
                });
            if (concerns) {
                ++concerned;
                const auto view = OrchardView::load(book.store());
                ASSERT_TRUE(view.ok());
                ASSERT_EQ(saidBy(carried.likings(**view)),
                          saidBy(ledgerOf(book.store()).likings(**view)))
                    << "change " << i << " of seed " << seed;
            }
        }
        EXPECT_GT(concerned, 10);
    }
}

TEST_F(TastingLedgerTest, WhatIsVoidDoesNotCount) {
    orchard.bite(trees[0], 7, "2025-09-12");
    orchard.bite(trees[1], 5, "2025-09-12");
    ASSERT_EQ(likings().records.size(), 2U);
    const auto scores = orchard.store().all<Score>();
    ASSERT_TRUE(scores.ok());
    const auto five = std::find_if(scores->begin(), scores->end(),
                                   [](const Score& one) { return one.liking == 5; });
    orchard.apply(voided(*five, "wrong tree", "bite"));
    const TraitRecords left = likings();
    ASSERT_EQ(left.records.size(), 1U);
    EXPECT_EQ(left.records.front().value, 7);
    ASSERT_TRUE(orchard.store().undo({}).ok());
    EXPECT_EQ(likings().records.size(), 2U);
}

TEST_F(TastingLedgerTest, SetBackToADayItKnowsNothingLater) {
    orchard.bite(trees[0], 7, "2024-09-12");
    orchard.bite(trees[0], 6, "2025-09-12");
    EXPECT_EQ(likings(Date::fromIso("2024-09-11")).records.size(), 0U);
    EXPECT_EQ(likings(Date::fromIso("2024-09-12")).records.size(), 1U); // the day itself counts
    EXPECT_EQ(likings(Date::fromIso("2025-09-11")).records.size(), 1U);
    EXPECT_EQ(likings().records.size(), 2U);
}

TEST_F(TastingLedgerTest, BitesOfADayAreOneSitting) {
    orchard.bite(trees[0], 7, "2025-09-12");
    orchard.bite(trees[1], 6, "2025-09-12");
    orchard.bite(trees[2], 5, "2025-09-13");
    const TraitRecords all = likings();
    ASSERT_EQ(all.records.size(), 3U);
    EXPECT_EQ(all.sittings, 2);
    EXPECT_EQ(all.lots.size(), 3U);
    EXPECT_EQ(all.persons.size(), 1U);
    for (const TraitRecord& one : all.records) {
        for (const TraitRecord& other : all.records) {
            EXPECT_EQ(one.sitting == other.sitting, one.date == other.date);
        }
    }
}

TEST_F(TastingLedgerTest, FruitFollowsItsPlantToAnotherGenotype) {
    orchard.bite(trees[0], 7, "2025-09-12");
    orchard.bite(trees[1], 5, "2025-09-12");
    const auto likedOf = [&](const EditedTree& tree) {
        const auto view = orchard.view();
        const auto genotype = view->genotype(*tree.genotype);
        for (const TraitRecord& record : likings().records) {
            if (record.genotype == genotype) {
                return record.value;
            }
        }
        return 0.0;
    };
    EXPECT_EQ(likedOf(trees[0]), 7);
    orchard.apply(
        swapOfTags(trees[0], trees[1], "tags swapped", orchard.on(*Date::of(2025, 10, 1))));
    EXPECT_EQ(likedOf(trees[0]), 5);
    EXPECT_EQ(likedOf(trees[1]), 7);

    // Of a plant that nobody knows the fruit speaks for nobody.
    orchard.apply(identityOf(trees[2], std::nullopt, "", IdentityBasis::guess, Confidence::unknown,
                             "", orchard.on(*Date::of(2025, 10, 2))));
    orchard.bite({trees[2].plant, std::nullopt, "tree"}, 9, "2025-10-03");
    const TraitRecords all = likings();
    EXPECT_EQ(all.records.size(), 2U);
    EXPECT_EQ(all.leftOut, 1);
}

TEST_F(TastingLedgerTest, ConditionsComeAlong) {
    orchard.bite(trees[0], 7, "2025-09-12");
    orchard.bite(trees[0], 4, "2025-09-13", Origin::onGroundLonger);
    orchard.keptBite(trees[0], 6, "2026-01-10", 90);
    const TraitRecords all = likings();
    ASSERT_EQ(all.records.size(), 3U);
    for (const TraitRecord& record : all.records) {
        const bool hasStorage =
            std::any_of(record.conditions.begin(), record.conditions.end(), [](const auto& one) {
                return conditionClasses()[one.condition].correction == Correction::storage &&
                       one.amount == 90;
            });
        EXPECT_EQ(hasStorage, record.value == 6);
        EXPECT_EQ(record.fair, record.value == 7);
    }
}

TEST_F(TastingLedgerTest, AStoppedReadingSaysSo) {
    orchard.bite(trees[0], 7, "2025-09-12");
    std::stop_source source;
    source.request_stop();
    const auto ledger = TastingLedger::read(orchard.store(), source.get_token());
    ASSERT_FALSE(ledger.ok());
    EXPECT_EQ(ledger.problem().code, ProblemCode::cancelled);
}

TEST_F(TastingLedgerTest, ATraitWithoutOrderIsRefused) {
    const auto view = orchard.view();
    const auto& traits = view->traits();
    const auto unordered = std::find_if(traits.begin(), traits.end(), [](const Trait& one) {
        return one.scale == ScaleKind::nominal || one.scale == ScaleKind::text;
    });
    ASSERT_NE(unordered, traits.end());
    const auto refused = observedRecords(*view, orchard.store(), unordered->id);
    ASSERT_FALSE(refused.ok());
    EXPECT_NE(refused.problem().sentence().find("has no order"), std::string::npos);
    EXPECT_FALSE(observedRecords(*view, orchard.store(), TraitId(Uuid{})).ok());

    orchard.measure(trees[0], "soluble_solids", 12.5, "2025-09-12");
    orchard.measure(trees[1], "soluble_solids", 14.0, "2025-09-12");
    const Trait* sugar = view->traitByKey("soluble_solids");
    ASSERT_NE(sugar, nullptr);
    const auto measured = observedRecords(*orchard.view(), orchard.store(), sugar->id);
    ASSERT_TRUE(measured.ok());
    ASSERT_EQ(measured->records.size(), 2U);
    EXPECT_EQ(measured->records[0].value + measured->records[1].value, 26.5);
    EXPECT_EQ(measured->sittings, 1);
}

} // namespace
} // namespace pipwright
