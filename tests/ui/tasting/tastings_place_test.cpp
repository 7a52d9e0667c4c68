#include "core/history/sitting_edits.h"
#include "tests/support/small_orchard.h"
#include "ui/book/open_book.h"
#include "ui/tasting/sheet_model.h"
#include "ui/tasting/sheet_table.h"
#include "ui/tasting/sitting_page.h"
#include "ui/tasting/sitting_sheet.h"
#include "ui/tasting/sitting_table_model.h"
#include "ui/tasting/taster_row.h"
#include "ui/tasting/tastings_place.h"
#include "ui/widgets/chip_row.h"
#include "ui/widgets/flow_text.h"
#include "ui/widgets/inexact_date_edit.h"
#include "ui/widgets/notice_bar.h"

#include <QApplication>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>
#include <QThreadPool>
#include <QToolButton>

#include <atomic>
#include <gtest/gtest.h>
#include <tuple>
#include <utility>

namespace pipwright::ui {
namespace {

QWidget* typing(SheetTable* table) {
    QWidget* editor = table->indexWidget(table->currentIndex());
    return editor != nullptr ? editor : table;
}

class TastingsPlaceTest : public testing::Test {
  protected:
    TastingsPlaceTest() {
        std::tie(one, two) = fill(orchard);
        taster = orchard.taster.id;
    }
    /// Two trees with a bite each; the same names every time.
    static std::pair<EditedTree, EditedTree> fill(test::SmallOrchard& orchard) {
        const auto row = orchard.row(1);
        const EditedTree first = orchard.seedling(row, 1, "AT17-001");
        const EditedTree second = orchard.seedling(row, 2, "AT17-002");
        orchard.apply(biteOf(first, {}, {orchard.taster.id, 6, Verdict::again, "thin"},
                             orchard.on(*Date::of(2026, 8, 20))));
        orchard.apply(biteOf(second, {}, {orchard.taster.id, 7, Verdict::watch, ""},
                             orchard.on(*Date::of(2026, 8, 20))));
        return {first, second};
    }
    void open(OpenBook::OpenReader reader = {}) {
        auto opened = OpenBook::open(orchard.takeStore(), {}, std::move(reader));
        ASSERT_TRUE(opened);
        book = std::move(*opened);
        book->setToday(*Date::of(2026, 8, 22));
        place = std::make_unique<TastingsPlace>(*book);
        place->resize(1200, 800);
        place->show();
    }
    /// Types into the sheet as a hand does: words, then Enter goes on.
    void type(const QString& text, Qt::Key end = Qt::Key_Return) {
        SheetTable* table = place->sheet()->table();
        for (const QChar letter : text) { // the first opens the cell, the others go into it
            QTest::keyClicks(typing(table), letter);
        }
        QTest::keyClick(typing(table), end);
    }

    test::SmallOrchard orchard;
    EditedTree one;
    EditedTree two;
    PersonId taster;
    std::unique_ptr<OpenBook> book;
    std::unique_ptr<TastingsPlace> place;
};

TEST_F(TastingsPlaceTest, BitesOfADayAreOneLineAndSittingsAreApart) {
    open();
    EXPECT_EQ(place->list()->model()->rowCount(), 0);
    place->shownChips()->chip(QStringLiteral("row"))->click();
    ASSERT_EQ(place->list()->model()->rowCount(), 1);
    EXPECT_EQ(place->page()->table()->model()->rowCount(), 2);
    QTest::keyClicks(place->filterLine(), QStringLiteral("AT17-002"));
    QTest::keyClick(place->filterLine(), Qt::Key_Return);
    EXPECT_EQ(place->page()->table()->model()->rowCount(), 1);
}

TEST_F(TastingsPlaceTest, WhatIsTypedIsLookedForByAWorkerAndOnlyTheLastWordCounts) {
    std::atomic<int> readers = 0;
    open([&readers]() -> Result<std::unique_ptr<Store>> {
        ++readers;
        test::SmallOrchard same;
        fill(same);
        return same.takeStore();
    });
    const auto rows = [this] { return place->list()->model()->rowCount(); };
    const auto lots = [this] { return place->page()->table()->model()->rowCount(); };
    place->shownChips()->chip(QStringLiteral("row"))->click();
    ASSERT_TRUE(QTest::qWaitFor([&] { return rows() == 1; }));
    ASSERT_EQ(lots(), 2);
    const int before = readers;
    QTest::keyClicks(place->filterLine(), QStringLiteral("AT17-002"));
    EXPECT_EQ(lots(), 2); // no letter waits for the book
    ASSERT_TRUE(QTest::qWaitFor([&] { return lots() == 1; }));
    EXPECT_EQ(readers, before + 1); // looked for once, not letter by letter
    QTest::keyClicks(place->filterLine(), QStringLiteral("9"));
    QTest::keyClick(place->filterLine(), Qt::Key_Return); // nothing is called so
    place->filterLine()->clear();                         // and no longer wanted
    EXPECT_EQ(lots(), 2);
    QThreadPool::globalInstance()->waitForDone();
    QCoreApplication::processEvents();
    EXPECT_EQ(rows(), 1);
    EXPECT_EQ(lots(), 2);
}

TEST_F(TastingsPlaceTest, ASittingIsTypedWithTheKeyboardAndKeptInOneStep) {
    open();
    place->newButton()->click();
    ASSERT_TRUE(place->isEntering());
    SittingSheet* sheet = place->sheet();
    sheet->tasters()->button(QStringLiteral("Mara Thorne"))->click();
    QTest::keyClicks(sheet->tasters()->newcomerLine(), QStringLiteral("Jory Pell"));
    QTest::keyClick(sheet->tasters()->newcomerLine(), Qt::Key_Return);
    ASSERT_EQ(sheet->model()->columnCount(), SheetModel::firstTaster + 2);
    sheet->begin();
    for (const QString& cell :
         {QStringLiteral("at17-001"), QStringLiteral("t"), QStringLiteral("4"), QStringLiteral("s"),
          QStringLiteral("f5"), QStringLiteral("7h + crisp"), QStringLiteral("6")}) {
        type(cell);
    }
    EXPECT_EQ(sheet->table()->currentIndex().row(), 1); // Enter went on to the next line
    for (const QString& cell :
         {QStringLiteral("1/1"), QStringLiteral("d"), QStringLiteral("?"), QString(),
          QStringLiteral("0"), QStringLiteral("6.5"), QStringLiteral("8 x")}) {
        type(cell, Qt::Key_Tab);
    }
    for (const QString& cell : {QStringLiteral("Ash Tarn @ farm shop"), QString(), QString(),
                                QString(), QString(), QStringLiteral("5")}) {
        type(cell);
    }
    const auto before = book->store().position();
    ASSERT_TRUE(sheet->keep()) << sheet->notice()->text().toStdString();
    EXPECT_EQ(book->store().position(), before + 1);
    EXPECT_FALSE(place->isEntering());
    ASSERT_EQ(place->list()->model()->rowCount(), 1);
    const auto lots = book->store().all<Lot>();
    ASSERT_TRUE(lots);
    EXPECT_EQ(lots->size(), 5U);
    EXPECT_EQ(place->page()->table()->model()->rowCount(), 3);
    // The same tree under two lines: what a repeat shows, |7.5 - 6.5| and |6 - 8|.
    EXPECT_TRUE(place->page()->findings().contains(QStringLiteral("1.5 points")))
        << place->page()->findings().toStdString();
    EXPECT_FALSE(sheet->isBegun());
    book->undo();
    EXPECT_EQ(place->list()->model()->rowCount(), 0);
}

TEST_F(TastingsPlaceTest, WhatIsOutOfRangeIsRefusedInPlaceAndNothingIsLost) {
    open();
    place->newButton()->click();
    SittingSheet* sheet = place->sheet();
    sheet->tasters()->button(QStringLiteral("Mara Thorne"))->click();
    sheet->begin();
    for (const QString& cell : {QStringLiteral("AT17-001"), QString(), QString(), QString(),
                                QString(), QStringLiteral("11")}) {
        type(cell);
    }
    EXPECT_FALSE(sheet->keep());
    EXPECT_TRUE(sheet->notice()->text().contains(QStringLiteral("1 to 9")));
    EXPECT_EQ(sheet->table()->currentIndex().column(), SheetModel::firstTaster);
    QTest::keyClick(typing(sheet->table()), Qt::Key_Escape);
    if (place->isEntering()) {
        QTest::keyClick(typing(sheet->table()), Qt::Key_Escape);
    }
    EXPECT_FALSE(place->isEntering());
    place->hide();
    place->show();
    place->newSitting();
    EXPECT_EQ(sheet->model()->rows().front().fruit, QStringLiteral("AT17-001"));
    EXPECT_EQ(sheet->model()->index(0, SheetModel::firstTaster).data(Qt::EditRole).toString(),
              QStringLiteral("11"));
    sheet->startAgain();
    EXPECT_FALSE(sheet->isBegun());
    sheet->notice()->offerButton()->click();
    EXPECT_TRUE(sheet->isBegun());
}

TEST_F(TastingsPlaceTest, HealthNotesOfAChosenTasterAreShown) {
    Person careful;
    careful.id = PersonId(orchard.ids.make());
    careful.name = "Bren Holt";
    careful.tastes = true;
    careful.healthNotes = "raw pears make her mouth itch";
    ChangeSet set;
    set.sentence = "Somebody";
    set.create(careful);
    orchard.apply(set);
    open();
    place->newButton()->click();
    EXPECT_FALSE(place->sheet()->healthWords()->isVisible());
    place->sheet()->tasters()->button(QStringLiteral("Bren Holt"))->click();
    EXPECT_TRUE(place->sheet()->healthWords()->isVisible());
    EXPECT_TRUE(place->sheet()->healthWords()->text().contains(QStringLiteral("itch")));
}

TEST_F(TastingsPlaceTest, AScoreIsCorrectedInItsCellAndVoidedWithAReason) {
    open();
    place->shownChips()->chip(QStringLiteral("row"))->click();
    SittingPage* page = place->page();
    auto* model = page->table()->model();
    const QModelIndex cell = model->index(0, SittingTableModel::firstTaster);
    EXPECT_FALSE(model->setData(cell, QStringLiteral("12"), Qt::EditRole));
    EXPECT_TRUE(page->notice()->text().contains(QStringLiteral("1 to 9")));
    ASSERT_TRUE(model->setData(cell, QStringLiteral("8.5 ++ superb"), Qt::EditRole));
    QCoreApplication::processEvents();
    EXPECT_TRUE(model->index(0, SittingTableModel::firstTaster)
                    .data()
                    .toString()
                    .startsWith(QStringLiteral("8.5")));
    page->table()->setCurrentIndex(model->index(0, SittingTableModel::firstTaster));
    QTest::keyClick(page->table(), Qt::Key_Delete);
    ASSERT_TRUE(page->reasonLine()->isVisible());
    QTest::keyClick(page->reasonLine(), Qt::Key_Return); // no reason, no voiding
    EXPECT_TRUE(page->reasonLine()->isVisible());
    QTest::keyClicks(page->reasonLine(), QStringLiteral("another apple"));
    QTest::keyClick(page->reasonLine(), Qt::Key_Return);
    EXPECT_TRUE(page->findings().contains(QStringLiteral("another apple")));
}

TEST_F(TastingsPlaceTest, AConditionIsAskedForFromItsCell) {
    open();
    QTest::mouseClick(place->shownChips()->chip(QStringLiteral("row")), Qt::LeftButton);
    std::vector<std::pair<Lot, Date>> wanted;
    QObject::connect(
        place.get(), &TastingsPlace::conditionWanted, place.get(),
        [&wanted](const Lot& lot, const Date& tasted) { wanted.emplace_back(lot, tasted); });
    PlainTable* table = place->page()->table();
    ASSERT_EQ(table->model()->rowCount(), 2);
    const bool oneFirst = table->model()
                              ->index(0, SittingTableModel::fruit)
                              .data()
                              .toString()
                              .contains(QStringLiteral("AT17-001"));
    table->setCurrentIndex(table->model()->index(oneFirst ? 1 : 0, SittingTableModel::condition));
    QTest::keyClick(table, Qt::Key_F2);
    QTest::keyClick(table, Qt::Key_Return);
    ASSERT_EQ(wanted.size(), 2U);
    EXPECT_EQ(wanted[0].first.plant, two.plant);
    EXPECT_EQ(wanted[0].second, Date::of(2026, 8, 20));
    EXPECT_EQ(book->currentPlant(), book->view()->plant(*two.plant));
    table->setCurrentIndex(table->model()->index(oneFirst ? 0 : 1, SittingTableModel::fruit));
    QTest::keyClick(table, Qt::Key_F2); // whose fruit it is, is no condition
    QTest::keyClick(table, Qt::Key_Return);
    EXPECT_EQ(wanted.size(), 2U);
    EXPECT_EQ(book->currentPlant(), book->view()->plant(*one.plant));
}

TEST_F(TastingsPlaceTest, ALateEntryMayHaveAnInexactDay) {
    open();
    place->newButton()->click();
    SittingSheet* sheet = place->sheet();
    sheet->dateEdit()->line()->setText(QStringLiteral("late August 2025"));
    sheet->begin();
    place->sheet()->table()->setCurrentIndex(sheet->model()->index(0, 0));
    type(QStringLiteral("AT17-002"));
    ASSERT_TRUE(sheet->keep());
    bool found = false;
    for (const Tasting& tasting : *book->store().all<Tasting>()) {
        if (tasting.date == *Date::of(2025, 8, 21)) {
            found = true;
            EXPECT_NE(tasting.notes.find("late August 2025"), std::string::npos);
        }
    }
    EXPECT_TRUE(found);
}

} // namespace
} // namespace pipwright::ui
