#include "core/evaluation/orchard_view.h"
#include "core/evaluation/tree_life.h"
#include "tests/support/small_orchard.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <random>

namespace pipwright {
namespace {

using test::SmallOrchard;

const Date kDay = *Date::of(2026, 8, 22);

LotCondition fairCondition() {
    LotCondition condition;
    condition.taken = kDay;
    condition.origin = Origin::pickedRipe;
    condition.soundness = Soundness::sound;
    condition.ripeness = Ripeness::prime;
    condition.storage = StoragePath::none;
    return condition;
}

/// What two views must agree on to be the same to every screen.
std::string described(const OrchardView& view) {
    std::vector<std::string> lines;
    for (Index plant = 0; plant < view.plants().size(); ++plant) {
        const PlantEntry& entry = view.plants()[plant];
        if (entry.erased) {
            continue;
        }
        const PlantFacts& seen = view.plantFacts(plant);
        const GenotypeFacts& tasted = view.factsOfPlant(plant);
        std::string line = entry.id.uuid.text() + " " + view.plantCode(plant) + " " +
                           view.placeText(plant) + " " + std::string(keyOf(entry.state)) + " " +
                           std::string(keyOf(entry.confidence));
        line += seen.lastVisited ? " seen " + seen.lastVisited->iso() : "";
        line += " notes " + std::to_string(seen.notes);
        line += seen.usualRipeDay ? " ripe on " + std::to_string(*seen.usualRipeDay) : "";
        line += tasted.latestLiking ? " liking " + std::to_string(*tasted.latestLiking) : "";
        line += " fair " + std::to_string(tasted.fairLots) + "/" + std::to_string(tasted.lots);
        line += " wishes " + std::to_string(tasted.openWishes);
        if (entry.genotype) {
            line += " " + std::string(keyOf(view.genotypes()[*entry.genotype].stage));
            line += " " + view.crossText(*entry.genotype);
        }
        lines.push_back(line);
    }
    std::sort(lines.begin(), lines.end());
    std::string text;
    for (const auto& line : lines) {
        text += line + "\n";
    }
    return text;
}

TEST(OrchardView, ShowsRowsPlacesAndCodes) {
    SmallOrchard orchard;
    const auto second = orchard.row(2);
    const auto first = orchard.row(1);
    const EditedTree tree = orchard.seedling(first, 14, "AT17-014", Stage::watched);
    orchard.seedling(second, 1, "AT17-101");
    const auto view = orchard.view();

    ASSERT_EQ(view->rowsInOrder().size(), 2U);
    EXPECT_EQ(view->rows()[view->rowsInOrder()[0]].number, 1);
    const auto plant = view->plant(*tree.plant);
    ASSERT_TRUE(plant);
    EXPECT_EQ(view->plantCode(*plant), "AT17-014");
    EXPECT_EQ(view->placeText(*plant), "1/14 · 4.20 m");
    EXPECT_EQ(view->crossText(*view->plants()[*plant].genotype), "Ash Tarn x Russet Moor");
    EXPECT_EQ(view->genotypes()[*view->plants()[*plant].genotype].stage, Stage::watched);
    EXPECT_EQ(view->genotypeCalled(" at17-014 "), view->plants()[*plant].genotype);
    EXPECT_FALSE(view->genotypeCalled("AT17-999"));
}

TEST(OrchardView, CountsFairAndUnfairLots) {
    SmallOrchard orchard;
    const auto row = orchard.row(1);
    const EditedTree tree = orchard.seedling(row, 1, "AT17-001");
    const BiteScore seven{orchard.taster.id, 7.0, Verdict::watch, "sharp, long"};
    orchard.apply(biteOf(tree, fairCondition(), seven, orchard.on(kDay)));
    LotCondition fallen = fairCondition();
    fallen.origin = Origin::droppedToday;
    const BiteScore five{orchard.taster.id, 5.5, Verdict::again, "flat"};
    orchard.apply(biteOf(tree, fallen, five, orchard.on(kDay.plusDays(4))));

    const auto view = orchard.view();
    const GenotypeFacts& facts = view->factsOfPlant(*view->plant(*tree.plant));
    EXPECT_EQ(facts.lots, 2);
    EXPECT_EQ(facts.fairLots, 1);
    EXPECT_EQ(facts.tasters, 1);
    ASSERT_TRUE(facts.latestLiking);
    EXPECT_DOUBLE_EQ(*facts.latestLiking, 5.5);
    EXPECT_EQ(facts.lastTasted, kDay.plusDays(4));
}

TEST(OrchardView, TakesTheUsualRipeDayFromWalkMarks) {
    SmallOrchard orchard;
    const auto row = orchard.row(1);
    const EditedTree tree = orchard.seedling(row, 1, "AT17-001");
    const std::array trees = {tree};
    orchard.apply(walkMarkOn(trees, WalkMark::notYet, {}, orchard.on(kDay.plusDays(-14))));
    orchard.apply(walkMarkOn(trees, WalkMark::ripe, {}, orchard.on(kDay)));
    orchard.apply(walkMarkOn(trees, WalkMark::ripe, {}, orchard.on(kDay.plusDays(7))));
    const auto view = orchard.view();
    // 22 August 2026 is the 234th day of its year.
    EXPECT_EQ(view->plantFacts(*view->plant(*tree.plant)).usualRipeDay, 234);
}

TEST(OrchardView, SwappedTagsCarryTheirRecordsAlong) {
    SmallOrchard orchard;
    const auto row = orchard.row(1);
    const EditedTree one = orchard.seedling(row, 1, "AT17-001");
    const EditedTree other = orchard.seedling(row, 2, "AT17-002");
    orchard.apply(biteOf(one, fairCondition(), {orchard.taster.id, 8.0, {}, ""}, orchard.on(kDay)));
    orchard.apply(swapOfTags(one, other, "tags read at the stake", orchard.on(kDay)));
    const auto view = orchard.view();
    EXPECT_EQ(view->plantCode(*view->plant(*one.plant)), "AT17-002");
    const auto genotype = view->genotype(*other.genotype);
    EXPECT_EQ(view->genotypeFacts(*genotype).lots, 1);
    EXPECT_EQ(view->genotypeFacts(*view->genotype(*one.genotype)).lots, 0);
}

TEST(OrchardView, LifeGathersEveryYear) {
    SmallOrchard orchard;
    const auto row = orchard.row(1);
    const EditedTree tree = orchard.seedling(row, 1, "AT17-001");
    const std::array trees = {tree};
    orchard.apply(walkMarkOn(trees, WalkMark::notYet, {}, orchard.on(*Date::of(2025, 8, 10))));
    orchard.apply(walkMarkOn(trees, WalkMark::ripe, {}, orchard.on(*Date::of(2025, 8, 17))));
    orchard.apply(walkMarkOn(trees, WalkMark::over, {}, orchard.on(*Date::of(2025, 8, 31))));
    orchard.apply(
        biteOf(tree, fairCondition(), {orchard.taster.id, 8.0, {}, "honey"}, orchard.on(kDay)));
    const auto view = orchard.view();
    const auto life = lifeOfPlant(*view, orchard.store(), *view->plant(*tree.plant));
    ASSERT_TRUE(life);
    ASSERT_EQ(life->years.size(), 3U); // planted 2019, walked 2025, tasted 2026
    const ObservedWindow& window = life->years[1].window;
    EXPECT_EQ(window.stillGreen, Date::of(2025, 8, 10));
    EXPECT_EQ(window.firstRipe, Date::of(2025, 8, 17));
    EXPECT_EQ(window.over, Date::of(2025, 8, 31));
    ASSERT_EQ(life->tastings.size(), 1U);
    EXPECT_TRUE(life->tastings.front().fairness.fair());
}

/// A random edit on a random tree.
ChangeSet randomEdit(SmallOrchard& orchard, const std::vector<EditedTree>& trees,
                     std::mt19937& random) {
    const auto pick = [&random](std::size_t n) {
        return std::uniform_int_distribution<std::size_t>(0, n - 1)(random);
    };
    const EditedTree& tree = trees[pick(trees.size())];
    const std::array one = {tree};
    const EditContext context = orchard.on(kDay.plusDays(static_cast<int>(pick(40))));
    switch (pick(7)) {
    case 0:
        return noteOn(one, "split bark", context);
    case 1:
        return walkMarkOn(one, pick(2) == 0 ? WalkMark::ripe : WalkMark::notYet, {}, context);
    case 2:
        return biteOf(tree, fairCondition(),
                      {orchard.taster.id, 4.0 + static_cast<double>(pick(10)) / 2, {}, "sweet"},
                      context);
    case 3:
        return decisionOn(one, pick(2) == 0 ? Stage::watched : Stage::culled, "tried", context);
    case 4:
        return swapOfTags(tree, trees[(pick(trees.size()))], "found", context);
    case 5:
        return graftWishFor(tree, 2, "only one tree", context);
    default: {
        const auto plant = orchard.store().get(*tree.plant);
        const std::array plants = {**plant};
        return plantsBecome(plants, PlantState::lost, "voles", context);
    }
    }
}

TEST(OrchardView, CarriedAlongEqualsReadAnew) {
    const unsigned seed = 20260822;
    SCOPED_TRACE("seed " + std::to_string(seed));
    std::mt19937 random(seed);
    SmallOrchard orchard;
    const auto row = orchard.row(1);
    std::vector<EditedTree> trees;
    for (int i = 1; i <= 6; ++i) {
        trees.push_back(orchard.seedling(row, i, "AT17-00" + std::to_string(i)));
    }
    OrchardView::Pointer view = orchard.view();
    std::vector<std::string> states = {described(*view)};
    constexpr int kEdits = 120;
    for (int i = 0; i < kEdits; ++i) {
        const auto entry = orchard.apply(randomEdit(orchard, trees, random));
        view = *view->after(entry.changes, orchard.store());
        ASSERT_EQ(described(*view), described(*orchard.view())) << "after edit " << i;
        states.push_back(described(*view));
    }
    for (int i = kEdits; i > 0; --i) {
        const auto entry = orchard.store().undo({});
        ASSERT_TRUE(entry);
        view = *view->after(entry->changes, orchard.store());
        ASSERT_EQ(described(*view), states[static_cast<std::size_t>(i - 1)]);
    }
    for (int i = 1; i <= kEdits; ++i) {
        const auto entry = orchard.store().redo({});
        ASSERT_TRUE(entry);
        view = *view->after(entry->changes, orchard.store());
        ASSERT_EQ(described(*view), states[static_cast<std::size_t>(i)]);
    }
}

} // namespace
} // namespace pipwright
