#include "core/evaluation/merit/slots.h"
#include "tests/support/ladder_orchard.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace pipwright {
namespace {

using test::LadderOrchard;

TEST(SeasonCut, CutsTenToFourteenDaysThroughTheWholeSeason) {
    std::vector<BenchmarkWindow> windows;
    for (int i = 0; i < 9; ++i) {
        windows.push_back({static_cast<Index>(i), 205 + 11 * i, 214 + 11 * i, 2});
    }
    const auto slots = cutSeason(windows);
    ASSERT_FALSE(slots.empty());
    EXPECT_EQ(slots.front().first, 205);
    EXPECT_GE(slots.back().last, 205 + 88);
    for (std::size_t i = 0; i < slots.size(); ++i) {
        const int length = slots[i].last - slots[i].first + 1;
        EXPECT_GE(length, 10);
        EXPECT_LE(length, 14);
        if (i > 0) {
            EXPECT_EQ(slots[i].first, slots[i - 1].last + 1);
        }
    }
}

TEST(SeasonCut, CutsWhereNoWindowIsOpen) {
    // Two groups of days, nothing open between day 213 and 216.
    const std::vector<BenchmarkWindow> windows = {
        {0, 204, 212, 1}, {1, 206, 213, 1}, {2, 217, 224, 1}, {3, 219, 226, 1}};
    const auto slots = cutSeason(windows);
    ASSERT_EQ(slots.size(), 2U);
    EXPECT_GE(slots[1].first, 214);
    EXPECT_LE(slots[1].first, 217);
}

TEST(SeasonCut, MakesOneSlotOfOneWindowAndNoneOfNone) {
    EXPECT_TRUE(cutSeason({}).empty());
    const std::vector<BenchmarkWindow> one = {{0, 230, 260, 1}};
    ASSERT_EQ(cutSeason(one).size(), 1U);
    EXPECT_EQ(cutSeason(one).front().first, 230);
}

TEST(Ladders, AreProposedFromTheTastings) {
    LadderOrchard orchard;
    const char* names[] = {"Fenella", "Odo", "Lady Vennick", "Brackley", "Iron Duchess"};
    const double likings[] = {5, 8, 6.5, 4, 7};
    std::vector<Genotype> benchmarks;
    for (int i = 0; i < 5; ++i) {
        benchmarks.push_back(orchard.benchmark(names[i]));
        orchard.ripens(benchmarks.back(), "09-05");
        orchard.tastes(LadderOrchard::treeOf(benchmarks.back()), likings[i], "09-08",
                       i == 2 ? 3 : 2);
    }
    const auto evaluation = orchard.evaluate(2024);
    ASSERT_EQ(evaluation.ladders.size(), 1U);
    const SeasonLadders& season = evaluation.ladders.front();
    EXPECT_FALSE(season.metFor.has_value());
    ASSERT_EQ(season.slots.size(), 1U);
    const SlotLadder& ladder = season.slots.front();
    EXPECT_EQ(ladder.benchmarks.size(), 5U);
    EXPECT_EQ(ladder.best->genotype, evaluation.at(benchmarks[1]));
    EXPECT_EQ(ladder.best->ground, RungGround::highestMerit);
    // Of five the second weakest stands at the lower quartile.
    EXPECT_EQ(ladder.floor->genotype, evaluation.at(benchmarks[0]));
    EXPECT_EQ(ladder.floor->ground, RungGround::lowerQuartile);
    EXPECT_EQ(ladder.famous->genotype, evaluation.at(benchmarks[2]));
    EXPECT_EQ(ladder.famous->ground, RungGround::mostTasted);
}

TEST(Ladders, HoldAnElectionUntilTheNextOne) {
    LadderOrchard orchard;
    const Genotype weak = orchard.benchmark("Fenella");
    const Genotype strong = orchard.benchmark("Odo");
    for (const Genotype& one : {weak, strong}) {
        orchard.ripens(one, "09-05");
    }
    orchard.tastes(LadderOrchard::treeOf(weak), 4.5, "09-08");
    orchard.tastes(LadderOrchard::treeOf(strong), 8, "09-08");
    const Slot slot = orchard.slotOf(2024, "09-01", "09-12", "early September");
    orchard.elect(slot, Rung::best, strong, "2024-01-05");
    orchard.elect(slot, Rung::best, weak, "2024-01-11");

    const auto now = orchard.evaluate(2024);
    const SlotLadder& ladder = now.ladders.front().slots.front();
    EXPECT_EQ(ladder.name, "early September");
    EXPECT_EQ(ladder.best->genotype, now.at(weak));
    EXPECT_EQ(ladder.best->ground, RungGround::elected);
    EXPECT_TRUE(ladder.best->overtaken);
    EXPECT_EQ(ladder.floor->ground, RungGround::lowestMerit); // proposed beside it

    // A year on without a meeting the same ladder is carried over.
    const auto later = orchard.evaluate(2025);
    EXPECT_EQ(later.ladders.front().slots.front().best->ground, RungGround::carriedOver);
    EXPECT_EQ(later.ladders.front().metFor, CropYear{2024});

    // A void election counts no more.
    auto elections = LadderOrchard::taken(orchard.store().all<Election>());
    for (const Election& one : elections) {
        if (one.genotype == weak.id) {
            orchard.apply(voided(one, "mixed up", "election"));
        }
    }
    const auto voidNow = orchard.evaluate(2024);
    EXPECT_EQ(voidNow.ladders.front().slots.front().best->genotype, voidNow.at(strong));

    // As the book stood before the second election.
    const auto before =
        LadderOrchard::taken(readLadders(*now.view, orchard.store(), Date::of(2024, 1, 8)));
    EXPECT_EQ(before.elections.size(), 1U);
}

TEST(Ladders, BorrowFromTheNearestSlotAndSaySo) {
    LadderOrchard orchard;
    const Genotype early = orchard.benchmark("Penrose");
    const Genotype late = orchard.benchmark("Salt Hill");
    orchard.ripens(early, "08-03");
    orchard.ripens(late, "10-05");
    orchard.tastes(LadderOrchard::treeOf(early), 6, "08-05");
    orchard.tastes(LadderOrchard::treeOf(late), 7, "10-08");
    orchard.slotOf(2024, "08-01", "08-12", "early August");
    orchard.slotOf(2024, "08-13", "08-24", "middle of August");
    orchard.slotOf(2024, "10-01", "10-12", "October");
    const auto evaluation = orchard.evaluate(2024);
    const auto& slots = evaluation.ladders.front().slots;
    ASSERT_EQ(slots.size(), 3U);
    EXPECT_FALSE(slots[0].best->borrowed);
    ASSERT_TRUE(slots[1].best.has_value());
    EXPECT_TRUE(slots[1].best->borrowed);
    EXPECT_TRUE(slots[1].benchmarksBorrowed);
    EXPECT_EQ(slots[1].best->from, 0U);
    EXPECT_EQ(slots[1].best->genotype, evaluation.at(early));
}

TEST(Ladders, RunOnPastNewYearInTheSouth) {
    LadderOrchard orchard;
    orchard.moveToTheSouth();
    const Genotype one = orchard.benchmark("Penrose");
    const Genotype other = orchard.benchmark("Salt Hill");
    orchard.walk(LadderOrchard::treeOf(one), WalkMark::ripe, "2024-12-28");
    orchard.walk(LadderOrchard::treeOf(other), WalkMark::ripe, "2025-01-20");
    const auto records = LadderOrchard::taken(readLadders(*orchard.view(), orchard.store()));
    ASSERT_EQ(records.windows.size(), 2U);
    EXPECT_EQ(records.windows[0].first, 363);      // 28 December of a leap year
    EXPECT_EQ(records.windows[1].first, 366 + 20); // 20 January, of the same crop
    const auto ladders = seasonLadders(*orchard.view(), records, nullptr, CropYear{2024});
    ASSERT_EQ(ladders.size(), 1U);
    ASSERT_GE(ladders.front().slots.size(), 2U);
    EXPECT_EQ(ladders.front().slots.front().days.first, 363);
    EXPECT_FALSE(ladders.front().slots.front().best.has_value()); // without a model nobody
}

TEST(RipeningDays, SayWhatTheyRestOn) {
    LadderOrchard orchard;
    orchard.ripens(orchard.mother, "09-01");
    orchard.ripens(orchard.father, "09-21");
    const auto row = orchard.row(1);
    const auto marked = orchard.seedling(row, 1, "AT17-001");
    const auto eaten = orchard.seedling(row, 2, "AT17-002");
    const auto unseen = orchard.seedling(row, 3, "AT17-003");
    orchard.walk(marked, WalkMark::ripe, "2024-09-14");
    orchard.bite(eaten, 6, "2024-09-18");
    auto evaluation = orchard.evaluate(2024);
    const auto dayOf = [&](const EditedTree& tree) { return evaluation.days[evaluation.at(tree)]; };
    EXPECT_EQ(dayOf(marked).basis, RipeningBasis::seenRipe);
    EXPECT_EQ(dayOf(marked).day, 258);
    EXPECT_EQ(dayOf(eaten).basis, RipeningBasis::eatenPrime);
    EXPECT_EQ(dayOf(eaten).day, 262);
    EXPECT_EQ(dayOf(unseen).basis, RipeningBasis::parents);
    EXPECT_NEAR(*dayOf(unseen).day, 254, 1); // 11 September

    const auto third = orchard.seedling(row, 4, "AT17-004");
    orchard.walk(third, WalkMark::ripe, "2024-09-30");
    evaluation = orchard.evaluate(2024);
    EXPECT_EQ(dayOf(unseen).basis, RipeningBasis::siblings);
    EXPECT_EQ(dayOf(unseen).day, 262); // the middle one of three

    const auto before = LadderOrchard::taken(
        usualRipeDaysAsOf(*evaluation.view, orchard.store(), *Date::of(2024, 9, 20)));
    EXPECT_EQ(before[evaluation.at(marked)], 258);
    EXPECT_EQ(before[evaluation.at(third)], std::nullopt);
}

TEST(LadderEdits, CutASeasonAnewAndKeepElections) {
    LadderOrchard orchard;
    const Genotype best = orchard.benchmark("Odo");
    const auto apple = shippedSpeciesId("apple");
    const auto day = [](const char* text) { return *Date::fromIso(text); };
    const std::vector<CutSlot> first = {
        {day("2024-08-01"), day("2024-08-12"), "early August", {{Rung::best, best.id, "rich"}}},
        {day("2024-08-13"), day("2024-08-24"), "late August", {}},
        {day("2024-09-10"), day("2024-09-21"), "September", {{Rung::floor, best.id, ""}}}};
    const ChangeSet cut =
        cutSlots({2024}, "2024", apple, first, {}, orchard.on(*Date::of(2024, 1, 11)));
    EXPECT_EQ(cut.sentence, "Season of 2024 cut into 3 slots");
    orchard.apply(cut);
    SeasonAsCut asCut{LadderOrchard::taken(orchard.store().all<Slot>()),
                      LadderOrchard::taken(orchard.store().all<Election>())};
    ASSERT_EQ(asCut.slots.size(), 3U);
    ASSERT_EQ(asCut.elections.size(), 2U);

    const std::vector<CutSlot> second = {{day("2024-08-03"), day("2024-08-14"), "August", {}},
                                         {day("2024-08-15"), day("2024-08-26"), "end of it", {}}};
    orchard.apply(
        cutSlots({2024}, "2024", apple, second, asCut, orchard.on(*Date::of(2024, 1, 12))));
    const auto slots = LadderOrchard::taken(orchard.store().all<Slot>());
    const auto elections = LadderOrchard::taken(orchard.store().all<Election>());
    EXPECT_EQ(slots.size(), 2U);
    ASSERT_EQ(elections.size(), 1U);
    EXPECT_EQ(elections.front().rung, Rung::best);
    const auto kept = LadderOrchard::taken(orchard.store().get(elections.front().slot));
    EXPECT_EQ(kept->name, "August");
    EXPECT_EQ(kept->first, day("2024-08-03"));
    ASSERT_TRUE(orchard.store().undo({}).ok());
    EXPECT_EQ(LadderOrchard::taken(orchard.store().all<Slot>()).size(), 3U);
}

} // namespace
} // namespace pipwright
