#include "tests/support/tasted_orchard.h"
#include "ui/book/open_book.h"
#include "ui/compare/compare_cells.h"
#include "ui/compare/compare_legend.h"
#include "ui/compare/compare_model.h"
#include "ui/compare/compare_paper.h"
#include "ui/compare/compare_place.h"
#include "ui/compare/compare_table.h"
#include "ui/print/paper_panel.h"
#include "ui/print/print_buttons.h"

#include <QAbstractItemModelTester>
#include <QAccessible>
#include <QApplication>
#include <QFile>
#include <QLabel>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTest>
#include <QToolButton>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace pipwright::ui {
namespace {

using test::TastedOrchard;
using testing::ElementsAre;

class ComparePlaceTest : public testing::Test {
  protected:
    void SetUp() override {
        const auto row = orchard.row(1);
        first = orchard.seedling(row, 1, "AT17-001", Stage::watched);
        second = orchard.seedling(row, 2, "AT17-002", Stage::selection);
        const auto mother = TastedOrchard::treeOf(orchard.mother);
        for (const char* day : {"2024-08-20", "2025-08-20", "2026-08-20"}) {
            orchard.walk(first, WalkMark::ripe, day);
            orchard.walk(mother, WalkMark::ripe, day);
            orchard.bite(first, 8, day, Origin::pickedRipe, "honey, crisp");
            orchard.bite(mother, 5, day);
            orchard.measure(first, "fruit_mass", 150, day);
        }
        orchard.bite(first, 3, "2026-09-20", Origin::onGroundLonger);
    }

    void open() {
        auto opened = OpenBook::open(orchard.takeStore(), {}, {});
        ASSERT_TRUE(opened);
        book = std::move(*opened);
        book->setToday(Date::of(2026, 9, 25));
        place = std::make_unique<ComparePlace>(*book);
        place->resize(1100, 800);
        place->show();
    }

    [[nodiscard]] Index indexOf(const EditedTree& tree) const {
        return *book->view()->genotype(*tree.genotype);
    }
    [[nodiscard]] Index indexOf(const Genotype& genotype) const {
        return *book->view()->genotype(genotype.id);
    }

    [[nodiscard]] int rowOf(CompareKind kind) const {
        for (int row = 0; row < place->model()->rowCount(); ++row) {
            if (place->model()->row(row).kind == kind) {
                return row;
            }
        }
        return -1;
    }

    [[nodiscard]] QString wordsAt(CompareKind kind, int column) const {
        return place->model()->index(rowOf(kind), column).data().toString();
    }

    TastedOrchard orchard;
    EditedTree first;
    EditedTree second;
    std::unique_ptr<OpenBook> book;
    std::unique_ptr<ComparePlace> place;
};

TEST_F(ComparePlaceTest, ProposesTheSelectedTreeBesideItsBenchmarks) {
    open();
    EXPECT_EQ(place->model()->columnCount(), 0);
    book->selectGenotype(indexOf(first));
    ASSERT_TRUE(QTest::qWaitFor([this] { return place->model()->columnCount() > 0; }));
    EXPECT_TRUE(place->isProposal());
    // Ash Tarn ripens in its week; of Russet Moor nothing is known.
    EXPECT_THAT(place->model()->genotypes(), ElementsAre(indexOf(first), indexOf(orchard.mother)));
}

TEST_F(ComparePlaceTest, SaysSoWhenNoBenchmarkIsKnownToRipenWithIt) {
    open();
    book->selectGenotype(indexOf(second)); // never walked
    ASSERT_TRUE(QTest::qWaitFor([this] { return place->model()->columnCount() > 0; }));
    EXPECT_THAT(place->model()->genotypes(),
                ElementsAre(indexOf(second), indexOf(orchard.mother), indexOf(orchard.father)));
    bool said = false;
    for (const auto* words : place->findChildren<QLabel*>()) {
        said = said || words->text().contains(QStringLiteral("no benchmark is known to ripen"));
    }
    EXPECT_TRUE(said);
}

TEST_F(ComparePlaceTest, SaysMeansWithTheirDoubtAndMarksWhatIsBeyondIt) {
    open();
    book->setLaidBeside({indexOf(orchard.mother), indexOf(first), indexOf(second)});
    ASSERT_TRUE(QTest::qWaitFor([this] { return place->model()->columnCount() == 3; }));
    EXPECT_TRUE(wordsAt(CompareKind::liking, 1).contains(QStringLiteral("8.0")));
    EXPECT_TRUE(wordsAt(CompareKind::liking, 1).contains(QStringLiteral("3 fair score")));
    EXPECT_TRUE(wordsAt(CompareKind::liking, 1).contains(QStringLiteral("▲ 3.0")));
    EXPECT_FALSE(wordsAt(CompareKind::liking, 0).contains(QStringLiteral("▲")));
    EXPECT_EQ(wordsAt(CompareKind::liking, 2), QStringLiteral("not tasted yet"));
    EXPECT_TRUE(wordsAt(CompareKind::trait, 1).contains(QStringLiteral("150")));
    EXPECT_TRUE(wordsAt(CompareKind::trait, 1).contains(QStringLiteral("g")));
    EXPECT_TRUE(wordsAt(CompareKind::window, 1).contains(QStringLiteral("20 Aug")));
    EXPECT_TRUE(wordsAt(CompareKind::window, 1).contains(QStringLiteral("week 34")));
}

TEST_F(ComparePlaceTest, KeysMoveTakeOutAndGoToTheTree) {
    open();
    book->setLaidBeside({indexOf(first), indexOf(second), indexOf(orchard.mother)});
    ASSERT_TRUE(QTest::qWaitFor([this] { return place->model()->columnCount() == 3; }));
    CompareTable* table = place->table();
    table->setCurrentIndex(place->model()->index(0, 0));
    QTest::keyClick(table, Qt::Key_Right);
    EXPECT_EQ(table->currentIndex().column(), 1);
    QTest::keyClick(table, Qt::Key_Left, Qt::ControlModifier);
    EXPECT_THAT(book->laidBeside(),
                ElementsAre(indexOf(second), indexOf(first), indexOf(orchard.mother)));
    EXPECT_EQ(table->currentIndex().column(), 0); // goes along
    QTest::keyClick(table, Qt::Key_Return);
    EXPECT_EQ(book->currentGenotype(), indexOf(second));
    QTest::keyClick(table, Qt::Key_Delete);
    EXPECT_THAT(book->laidBeside(), ElementsAre(indexOf(first), indexOf(orchard.mother)));
    EXPECT_EQ(place->model()->columnCount(), 2);
}

TEST_F(ComparePlaceTest, TheCrossInTheHeadTakesTheColumnOut) {
    open();
    book->setLaidBeside({indexOf(first), indexOf(second), indexOf(orchard.mother)});
    ASSERT_TRUE(QTest::qWaitFor([this] { return place->model()->columnCount() == 3; }));
    CompareTable* table = place->table();
    const QRect head = table->visualRect(place->model()->index(rowOf(CompareKind::head), 1));
    QTest::mouseClick(table->viewport(), Qt::LeftButton, {}, head.center());
    EXPECT_EQ(book->laidBeside().size(), 3U); // beside the cross nothing happens
    QTest::mouseClick(table->viewport(), Qt::LeftButton, {},
                      CompareCells::closeArea(head).center());
    EXPECT_THAT(book->laidBeside(), ElementsAre(indexOf(first), indexOf(orchard.mother)));
}

TEST_F(ComparePlaceTest, OffersWhatRipensWithItApartFromTheRest) {
    open();
    book->setLaidBeside({indexOf(first), indexOf(second)});
    ASSERT_TRUE(QTest::qWaitFor([this] { return place->model()->columnCount() == 2; }));
    ASSERT_EQ(place->nearOffers().size(), 1U);
    EXPECT_TRUE(place->nearOffers()[0]->text().contains(QStringLiteral("Ash Tarn")));
    EXPECT_TRUE(place->nearOffers()[0]->text().contains(QStringLiteral("same day")));
    ASSERT_EQ(place->farOffers().size(), 1U);
    EXPECT_TRUE(place->farOffers()[0]->text().contains(QStringLiteral("not known")));
    EXPECT_NE(place->nearOffers()[0]->y() + place->nearOffers()[0]->parentWidget()->y(),
              place->farOffers()[0]->y() + place->farOffers()[0]->parentWidget()->y());
    QTest::mouseClick(place->nearOffers()[0], Qt::LeftButton);
    EXPECT_THAT(book->laidBeside(),
                ElementsAre(indexOf(first), indexOf(second), indexOf(orchard.mother)));
    EXPECT_TRUE(place->nearOffers().empty());
    EXPECT_EQ(place->farOffers().size(), 1U);
}

TEST_F(ComparePlaceTest, AnAddedBenchmarkIsSeenAndTheKeysStayAmongTheOffers) {
    ChangeSet more;
    more.sentence = "Benchmarks";
    for (const char* name : {"Fell Codlin", "Pike Russet", "Garth Pippin"}) {
        Genotype genotype = orchard.mother;
        genotype.id = GenotypeId(orchard.ids.make());
        genotype.code = name;
        genotype.name = name;
        more.create(genotype);
    }
    orchard.apply(more);
    open();
    place->resize(620, 700);
    place->activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(place.get()));
    book->setLaidBeside({indexOf(first), indexOf(second), indexOf(orchard.mother)});
    ASSERT_TRUE(QTest::qWaitFor([this] { return place->model()->columnCount() == 3; }));
    ASSERT_FALSE(place->farOffers().empty());
    QToolButton* offer = place->farOffers().front();
    const QString name = offer->accessibleName();
    offer->setFocus();
    QTest::mouseClick(offer, Qt::LeftButton);
    ASSERT_TRUE(QTest::qWaitFor([this] { return place->model()->columnCount() == 4; }));
    const CompareTable* table = place->table();
    EXPECT_EQ(table->currentIndex().column(), 3);
    EXPECT_GE(table->columnViewportPosition(3), 0);
    EXPECT_LE(table->columnViewportPosition(3) + table->columnWidth(3), table->viewport()->width());
    // The next offer has the focus: pressing again adds the next benchmark.
    auto* next = qobject_cast<QToolButton*>(QApplication::focusWidget());
    ASSERT_NE(next, nullptr);
    EXPECT_EQ(next, place->farOffers().front());
    EXPECT_NE(next->accessibleName(), name);
    while (!place->farOffers().empty() || !place->nearOffers().empty()) {
        const int columns = place->model()->columnCount();
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Space);
        ASSERT_TRUE(QTest::qWaitFor([&] { return place->model()->columnCount() == columns + 1; }));
    }
    EXPECT_EQ(QApplication::focusWidget(), place->table()); // nothing is left to offer
}

TEST_F(ComparePlaceTest, TheLegendIsFoldedUntilItIsAskedFor) {
    open();
    book->selectGenotype(indexOf(first));
    ASSERT_TRUE(QTest::qWaitFor([this] { return place->model()->columnCount() > 0; }));
    const int before = place->table()->height();
    EXPECT_FALSE(place->legend()->isUnfolded());
    QTest::mouseClick(place->legend()->foldButton(), Qt::LeftButton);
    EXPECT_TRUE(place->legend()->isUnfolded());
    EXPECT_TRUE(QTest::qWaitFor([&] { return place->table()->height() < before; }));
    QTest::keyClick(place->legend()->foldButton(), Qt::Key_Space);
    EXPECT_FALSE(place->legend()->isUnfolded());
}

TEST_F(ComparePlaceTest, AnEditIsSeenAtOnceWhenShownAndLaterWhenNot) {
    open();
    book->setLaidBeside({indexOf(second), indexOf(first)});
    ASSERT_TRUE(QTest::qWaitFor([this] { return place->model()->columnCount() == 2; }));
    place->hide();
    const auto plant = book->view()->plant(*second.plant);
    LotCondition condition;
    ASSERT_TRUE(book->apply(
        biteOf(second, condition, {orchard.taster.id, 6.5, {}, {}}, book->context(plant))));
    EXPECT_EQ(wordsAt(CompareKind::liking, 0), QStringLiteral("not tasted yet"));
    place->show();
    EXPECT_TRUE(wordsAt(CompareKind::liking, 0).contains(QStringLiteral("6.5")));
    EXPECT_TRUE(wordsAt(CompareKind::liking, 0).contains(QStringLiteral("no fair score")));
}

TEST_F(ComparePlaceTest, IsATableForAScreenReader) {
    open();
    book->setLaidBeside({indexOf(first), indexOf(orchard.mother)});
    ASSERT_TRUE(QTest::qWaitFor([this] { return place->model()->columnCount() == 2; }));
    QAbstractItemModelTester tester(place->model(),
                                    QAbstractItemModelTester::FailureReportingMode::Fatal);
    QAccessibleInterface* seen = QAccessible::queryAccessibleInterface(place->table());
    ASSERT_NE(seen, nullptr);
    EXPECT_FALSE(seen->text(QAccessible::Name).isEmpty());
    ASSERT_NE(seen->tableInterface(), nullptr);
    EXPECT_EQ(seen->tableInterface()->columnCount(), 2);
    const int liking = rowOf(CompareKind::liking);
    EXPECT_TRUE(seen->tableInterface()
                    ->cellAt(liking, 0)
                    ->text(QAccessible::Name)
                    .contains(QStringLiteral("8.0")));
}

TEST_F(ComparePlaceTest, CtrlPMakesPaperAndSavesIt) {
    open();
    book->setLaidBeside({indexOf(first), indexOf(orchard.mother)});
    ASSERT_TRUE(QTest::qWaitFor([this] { return place->model()->columnCount() == 2; }));
    QTest::keyClick(place->table(), Qt::Key_P, Qt::ControlModifier);
    ASSERT_TRUE(place->isPaper());
    QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("compared.pdf"));
    place->paper()->buttons()->setPathChooser([&path](QWidget*, const QString&) { return path; });
    QTest::mouseClick(place->paper()->buttons()->saveButton(), Qt::LeftButton);
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_TRUE(file.readAll().startsWith("%PDF"));
    QTest::keyClick(place.get(), Qt::Key_Escape);
    EXPECT_FALSE(place->isPaper());
}

TEST_F(ComparePlaceTest, PaperHasTheWordsOfTheScreen) {
    open();
    book->setLaidBeside({indexOf(orchard.mother), indexOf(first)});
    ASSERT_TRUE(QTest::qWaitFor([this] { return place->model()->columnCount() == 2; }));
    const PrintedTable table =
        comparedOnPaper(*place->model(), book->today(), QStringLiteral("Ashcroft"));
    ASSERT_EQ(table.columns.size(), 3U);
    EXPECT_EQ(table.columns[1].heading, "Ash Tarn");
    bool found = false;
    for (const PrintedRow& row : table.rows) {
        found = found || (row.cells.size() == 3 &&
                          row.cells[2] == wordsAt(CompareKind::liking, 1).toStdString());
    }
    EXPECT_TRUE(found);
}

} // namespace
} // namespace pipwright::ui
