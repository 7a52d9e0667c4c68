#include "tests/support/small_orchard.h"
#include "ui/book/open_book.h"

#include <QSignalSpy>

#include <gtest/gtest.h>

namespace pipwright::ui {
namespace {

using test::SmallOrchard;

class OpenBookTest : public testing::Test {
  protected:
    void SetUp() override {
        const auto row = orchard.row(1);
        tree = orchard.seedling(row, 1, "AT17-001");
        other = orchard.seedling(row, 2, "AT17-002");
        auto opened = OpenBook::open(orchard.takeStore(), QStringLiteral("in memory"), {});
        ASSERT_TRUE(opened);
        book = std::move(*opened);
        book->setToday(Date::of(2026, 8, 22));
    }

    SmallOrchard orchard;
    EditedTree tree;
    EditedTree other;
    std::unique_ptr<OpenBook> book;
};

TEST_F(OpenBookTest, TellsEverybodyOfAnEditAndOfItsUndoing) {
    QSignalSpy moved(book.get(), &OpenBook::viewChanged);
    const auto plant = book->view()->plant(*tree.plant);
    const std::array trees = {book->treeAt(*plant)};
    ASSERT_TRUE(book->apply(noteOn(trees, "split bark", book->context(plant))));
    EXPECT_EQ(moved.count(), 1);
    EXPECT_EQ(book->view()->plantFacts(*plant).notes, 1);
    EXPECT_EQ(book->undoSentence(), QStringLiteral("Note on AT17-001"));
    book->undo();
    EXPECT_EQ(moved.count(), 2);
    EXPECT_EQ(book->view()->plantFacts(*plant).notes, 0);
    EXPECT_EQ(book->redoSentence(), QStringLiteral("Note on AT17-001"));
    book->redo();
    EXPECT_EQ(book->view()->plantFacts(*plant).notes, 1);
}

TEST_F(OpenBookTest, RefusesWithAWordAndChangesNothing) {
    QSignalSpy refused(book.get(), &OpenBook::problemMet);
    QSignalSpy moved(book.get(), &OpenBook::viewChanged);
    Observation lost;
    lost.id = ObservationId(book->ids().make());
    lost.plant = PlantId(Uuid::named("nowhere"));
    lost.trait = shippedTraitId(trait_key::kNote);
    ChangeSet set;
    set.sentence = "Note on nothing";
    set.create(lost);
    EXPECT_FALSE(book->apply(set));
    EXPECT_EQ(refused.count(), 1);
    EXPECT_EQ(moved.count(), 0);
}

TEST_F(OpenBookTest, KeepsTheNewestEightBeside) {
    QSignalSpy beside(book.get(), &OpenBook::laidBesideChanged);
    for (Index genotype = 0; genotype < 4; ++genotype) {
        book->layBeside(genotype);
    }
    book->layBeside(1); // once more: comes to the end, does not stand twice
    EXPECT_EQ(book->laidBeside(), (std::vector<Index>{0, 2, 3, 1}));
    EXPECT_EQ(beside.count(), 5);
}

TEST_F(OpenBookTest, TakesTheDayItIsGiven) {
    EXPECT_TRUE(book->todayIsFixed());
    EXPECT_EQ(book->today(), Date::of(2026, 8, 22));
    EXPECT_EQ(book->context().day, Date::of(2026, 8, 22));
    book->setToday(std::nullopt);
    EXPECT_FALSE(book->todayIsFixed());
}

TEST_F(OpenBookTest, LosesTheSelectionWhenItsTreeIsTakenBack) {
    // The last change set planted the second tree; undoing it takes that tree away.
    book->selectPlant(book->view()->plant(*other.plant));
    QSignalSpy selected(book.get(), &OpenBook::currentTreeChanged);
    book->undo();
    EXPECT_EQ(selected.count(), 1);
    EXPECT_FALSE(book->currentPlant());
}

} // namespace
} // namespace pipwright::ui
