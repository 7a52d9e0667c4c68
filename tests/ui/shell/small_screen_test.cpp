// The window on small screens, what it says for a while, a book that may only be read, and a
// condition put right from the table of its sitting.
#include "core/exchange/archive.h"
#include "core/orchard/dictionary.h"
#include "core/store/orchard_book.h"
#include "tests/support/small_orchard.h"
#include "tests/support/test_doors.h"
#include "ui/book/open_book.h"
#include "ui/rows/row_map.h"
#include "ui/rows/rows_place.h"
#include "ui/shell/main_window.h"
#include "ui/shell/workbench.h"
#include "ui/tasting/sitting_page.h"
#include "ui/tasting/sitting_table_model.h"
#include "ui/tasting/tastings_place.h"
#include "ui/tree/condition_fields.h"
#include "ui/tree/condition_form.h"
#include "ui/tree/entry_strip.h"
#include "ui/tree/tree_sheet.h"
#include "ui/widgets/chip_row.h"
#include "ui/widgets/finder_line.h"
#include "ui/widgets/languages.h"
#include "ui/widgets/navigation_rail.h"
#include "ui/widgets/notice_bar.h"
#include "ui/widgets/plain_table.h"

#include <QApplication>
#include <QLineEdit>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTest>
#include <QThreadPool>
#include <QToolButton>

#include <gtest/gtest.h>

namespace pipwright::ui {
namespace {

class SmallScreen : public testing::Test {
  protected:
    void TearDown() override {
        window.reset();
        QThreadPool::globalInstance()->waitForDone();
        applyLanguage(*qApp, Language::english);
    }
    /// Three trees in row 1, the last bitten once; of its fruit nothing is known.
    QString smallBook() {
        const QString path = folder.filePath(QStringLiteral("small.orchard"));
        auto book = createBook(path.toStdString());
        EXPECT_TRUE(book);
        test::SmallOrchard orchard(std::move(*book));
        const TrialRow row = orchard.row(1);
        orchard.seedling(row, 1, "AT17-001");
        orchard.seedling(row, 2, "AT17-002");
        const EditedTree last = orchard.seedling(row, 3, "AT17-003");
        orchard.apply(biteOf(last, {}, {orchard.taster.id, 7, Verdict::unknown, "crisp"},
                             orchard.on(*Date::of(2026, 8, 20))));
        return path;
    }
    void show() {
        window = std::make_unique<MainWindow>(doors, Date::of(2026, 8, 22));
        window->show();
        ASSERT_TRUE(QTest::qWaitForWindowActive(window.get()));
    }
    void open(const QString& path) {
        show();
        ASSERT_TRUE(window->openBook(path));
        ASSERT_TRUE(QTest::qWaitFor([this] { return book().view()->hasEvidence(); }, 20000));
    }
    OpenBook& book() { return window->workbench()->book(); }
    NoticeBar& said() { return *window->workbench()->notice(); }
    void select(const char* code) {
        book().selectPlant(*book().view()->plantFor(*book().view()->genotypeCalled(code)));
    }
    static void press(Qt::Key key) { QTest::keyClick(QApplication::focusWidget(), key); }

    QTemporaryDir folder;
    test::TestDoors doors;
    std::unique_ptr<MainWindow> window;
};

TEST_F(SmallScreen, EveryPlaceFitsInEveryLanguage) {
    constexpr QSize kScreen(1024, 768 - 36); // less the desktop's title bar
    const QString path = folder.filePath(QStringLiteral("sample.orchard"));
    {
        auto book = createBook(path.toStdString());
        ASSERT_TRUE(book);
        const auto report = readArchive(PIPWRIGHT_SOURCE_DIR "/sample-data/orchard", **book, {});
        ASSERT_TRUE(report && report->written);
    }
    for (const Language language : {Language::english, Language::german}) {
        applyLanguage(*qApp, language);
        open(path);
        select("AT14-003");
        for (const QString& place : window->workbench()->rail()->places()) {
            window->workbench()->goTo(place);
            QTest::qWait(50);
            EXPECT_LE(window->minimumSizeHint().width(), kScreen.width()) << place.toStdString();
            EXPECT_LE(window->minimumSizeHint().height(), kScreen.height()) << place.toStdString();
        }
        window->resize(kScreen);
        window->workbench()->goTo(QStringLiteral("rows"));
        window->run(QStringLiteral("bite"));
        QTest::qWait(50);
        EXPECT_LE(window->minimumSizeHint().height(), kScreen.height()) << "with a form open";
        EXPECT_EQ(window->size(), kScreen);
        window.reset();
    }
}

TEST_F(SmallScreen, WhatLiesBesideIsSaidForAWhile) {
    open(smallBook());
    const auto layBeside = [this] { window->run(QStringLiteral("beside")); };
    select("AT17-001");
    layBeside();
    EXPECT_TRUE(said().isVisible());
    select("AT17-002");
    EXPECT_FALSE(said().isVisible());
    layBeside();
    EXPECT_TRUE(said().isVisible());
    window->workbench()->goTo(QStringLiteral("season"));
    EXPECT_FALSE(said().isVisible());
    select("AT17-003");
    layBeside();
    book().undo();
    EXPECT_FALSE(said().isVisible());
    // What is wrong stays until it was read.
    Q_EMIT book().problemMet({ProblemCode::badInput, "It was not kept.", "Try again.", ""});
    select("AT17-001");
    EXPECT_TRUE(said().isVisible());
}

TEST_F(SmallScreen, ABookThatIsBeingWrittenCanBeLookedAt) {
    const QString path = smallBook();
    open(path);
    test::TestDoors others;
    MainWindow second(others, std::nullopt);
    second.show();
    EXPECT_FALSE(second.openBook(path));
    QPushButton* offer = nullptr;
    for (QPushButton* button : second.notice()->findChildren<QPushButton*>()) {
        offer = button->isVisible() ? button : offer;
    }
    ASSERT_NE(offer, nullptr);
    QTest::mouseClick(offer, Qt::LeftButton);
    ASSERT_NE(second.workbench(), nullptr);
    EXPECT_TRUE(second.isReadOnly());
    EXPECT_TRUE(second.windowTitle().contains(QStringLiteral("reading only")));
    EXPECT_FALSE(second.action(QStringLiteral("restore"))->isEnabled());
    // An edit is refused with a sentence, and nothing has changed.
    OpenBook& read = second.workbench()->book();
    read.selectPlant(Index{0});
    const auto before = read.store().position();
    EXPECT_FALSE(read.apply(noteOn(std::vector{read.treeAt(0)}, "leans", read.context(Index{0}))));
    EXPECT_TRUE(second.workbench()->notice()->isVisible());
    EXPECT_EQ(read.store().position(), before);
    second.closeBook();
    // A book that is not there is not offered.
    EXPECT_FALSE(second.openBook(folder.filePath(QStringLiteral("nowhere.orchard"))));
    EXPECT_FALSE(offer->isVisible());
}

TEST_F(SmallScreen, AConditionIsPutRightFromTheTableOfItsSitting) {
    open(smallBook());
    Workbench& bench = *window->workbench();
    bench.goTo(QStringLiteral("tastings"));
    QTest::mouseClick(bench.tastings()->shownChips()->chip(QStringLiteral("row")), Qt::LeftButton);
    PlainTable* table = bench.tastings()->page()->table();
    ASSERT_TRUE(QTest::qWaitFor([table] { return table->model()->rowCount() == 1; }));
    table->setFocus();
    table->setCurrentIndex(table->model()->index(0, SittingTableModel::condition));
    QTest::keyClick(table, Qt::Key_F2);
    auto* form = dynamic_cast<ConditionForm*>(bench.sheet()->strip()->current());
    ASSERT_NE(form, nullptr);
    ASSERT_TRUE(form->isVisible());
    QTest::mouseClick(form->fields()->origin()->chip(QStringLiteral("picked_ripe")),
                      Qt::LeftButton);
    press(Qt::Key_Return);
    const auto lots = book().store().all<Lot>();
    ASSERT_TRUE(lots);
    ASSERT_EQ(lots->size(), 1U);
    EXPECT_EQ(lots->front().origin, Origin::pickedRipe);
    EXPECT_TRUE(QTest::qWaitFor([table] {
        return table->model()
            ->index(0, SittingTableModel::condition)
            .data()
            .toString()
            .contains(QStringLiteral("picked ripe"));
    }));
}

TEST_F(SmallScreen, TheFirstKeyOnTheMapIsForTheTreeUnderTheCursor) {
    open(smallBook());
    EXPECT_FALSE(book().currentPlant()); // nobody has chosen one
    RowMap* map = window->workbench()->rows()->map();
    ASSERT_EQ(QApplication::focusWidget(), map);
    QTest::keyClick(map, Qt::Key_N);
    EXPECT_EQ(window->workbench()->sheet()->strip()->titleText(),
              QStringLiteral("Note on AT17-001"));
    press(Qt::Key_Escape);
    QTest::keyClick(map, Qt::Key_Right);
    EXPECT_EQ(book().view()->plantCode(*book().currentPlant()), "AT17-002");
}

TEST_F(SmallScreen, WhatWasFoundIsNoLongerInTheFinder) {
    open(smallBook());
    FinderLine* finder = window->workbench()->finder();
    window->workbench()->find({});
    QTest::keyClicks(finder->line(), QStringLiteral("AT17-002"));
    ASSERT_GT(finder->resultCount(), 0);
    QTest::keyClick(finder->line(), Qt::Key_Return);
    EXPECT_EQ(finder->text(), QString());
    EXPECT_EQ(book().view()->plantCode(*book().currentPlant()), "AT17-002");
}

} // namespace
} // namespace pipwright::ui
