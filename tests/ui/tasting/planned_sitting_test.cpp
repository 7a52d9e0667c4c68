#include "core/evaluation/planned_table.h"
#include "core/history/sitting_edits.h"
#include "tests/support/tasted_orchard.h"
#include "ui/book/open_book.h"
#include "ui/print/print_buttons.h"
#include "ui/tasting/entry_model.h"
#include "ui/tasting/entry_table.h"
#include "ui/tasting/plan_lots_model.h"
#include "ui/tasting/plan_page.h"
#include "ui/tasting/planned_page.h"
#include "ui/tasting/sitting_page.h"
#include "ui/tasting/sitting_papers.h"
#include "ui/tasting/sitting_result.h"
#include "ui/tasting/sitting_table_model.h"
#include "ui/tasting/taster_row.h"
#include "ui/tasting/tastings_place.h"
#include "ui/widgets/chip_row.h"
#include "ui/widgets/notice_bar.h"

#include <QApplication>
#include <QFile>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPushButton>
#include <QShortcut>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTest>
#include <QToolButton>

#include <gtest/gtest.h>

namespace pipwright::ui {
namespace {

constexpr int kTrees = 7;

class PlannedSittingTest : public testing::Test {
  protected:
    PlannedSittingTest() {
        const auto row = orchard.row(1);
        for (int i = 1; i <= kTrees; ++i) {
            trees.push_back(orchard.seedling(row, i, "AT17-00" + std::to_string(i)));
            orchard.walk(trees.back(), WalkMark::ripe, "2025-08-20");
        }
        orchard.walk(test::TastedOrchard::treeOf(orchard.father), WalkMark::ripe, "2025-08-24");
        jory = person("Jory Pell");
        ines = person("Ines Holt");
        auto opened = OpenBook::open(orchard.takeStore(), {}, {});
        EXPECT_TRUE(opened.ok());
        book = std::move(*opened);
        book->setToday(*Date::of(2026, 8, 22));
        EXPECT_TRUE(QTest::qWaitFor([this] { return book->view()->hasEvidence(); }));
        place = std::make_unique<TastingsPlace>(*book);
        place->resize(1300, 800);
        place->show();
    }
    PersonId person(const std::string& name) {
        Person one;
        one.id = PersonId(orchard.ids.make());
        one.name = name;
        one.tastes = true;
        ChangeSet set;
        set.sentence = name;
        set.create(one);
        orchard.apply(set);
        return one.id;
    }
    /// Opens the plan and puts seven lots and three tasters into it.
    PlanPage* plan() {
        std::vector<Index> plants;
        for (const EditedTree& tree : trees) {
            plants.push_back(*book->view()->plant(*tree.plant));
        }
        book->setSelection(plants);
        place->planButton()->click();
        PlanPage* page = place->planPage();
        page->treesButton()->click();
        for (const char* name : {"Mara Thorne", "Jory Pell", "Ines Holt"}) {
            page->tasters()->button(QString::fromLatin1(name))->click();
        }
        for (int row = 0; row < kTrees; ++row) {
            ripe(row);
        }
        return page;
    }
    void ripe(int row) {
        PlanLotsModel* model = place->planPage()->model();
        model->setData(model->index(row, SheetModel::origin), QStringLiteral("t"), Qt::EditRole);
        model->setData(model->index(row, SheetModel::ripeness), QStringLiteral("4"), Qt::EditRole);
        model->setData(model->index(row, SheetModel::soundness), QStringLiteral("s"), Qt::EditRole);
        model->setData(model->index(row, SheetModel::path), QStringLiteral("f2"), Qt::EditRole);
    }
    /// The plan with its benchmark, kept; the page of its sheets.
    PlannedPage* planned() {
        PlanPage* page = plan();
        page->benchmarkButton()->click();
        ripe(kTrees);
        EXPECT_TRUE(page->keep());
        return place->plannedPage();
    }
    PlannedTable table() {
        const auto keys = book->store().all<SealedKey>();
        return **readPlannedTable(book->store(), keys->front().tasting);
    }
    static QWidget* typing(QAbstractItemView* view) {
        QWidget* editor = view->indexWidget(view->currentIndex());
        return editor != nullptr ? editor : view;
    }
    static void type(QAbstractItemView* view, const QString& text, Qt::Key end = Qt::Key_Return) {
        for (const QChar letter : text) {
            QTest::keyClicks(typing(view), QString(letter));
        }
        QTest::keyClick(typing(view), end);
    }

    test::TastedOrchard orchard;
    std::vector<EditedTree> trees;
    PersonId jory;
    PersonId ines;
    std::unique_ptr<OpenBook> book;
    std::unique_ptr<TastingsPlace> place;
};

TEST_F(PlannedSittingTest, ThePlanIsLiveAndSaysWhy) {
    PlanPage* page = plan();
    ASSERT_TRUE(page->plan());
    EXPECT_EQ(page->plan()->served(), kTrees);
    EXPECT_EQ(page->orders()->model()->columnCount(), 3);
    EXPECT_EQ(page->orders()->model()->rowCount(), kTrees);
    EXPECT_TRUE(page->remarks().contains(QStringLiteral("No benchmark is hidden")));
    ASSERT_TRUE(page->benchmarkButton()->isVisibleTo(page));
    EXPECT_EQ(page->benchmarkButton()->text(), QStringLiteral("Hide Russet Moor twice"));
    page->benchmarkButton()->click();
    EXPECT_FALSE(page->benchmarkButton()->isVisibleTo(page));
    ripe(kTrees);
    EXPECT_EQ(page->plan()->served(), kTrees + 2);
    EXPECT_TRUE(page->remarks().contains(QStringLiteral("hidden twice under two codes")));
    EXPECT_TRUE(page->remarks().contains(QStringLiteral("4 day(s) after the middle lot")));
    EXPECT_TRUE(page->remarks().contains(QStringLiteral("Imbalance 0")));
    EXPECT_EQ(page->model()->headerData(kTrees, Qt::Vertical).toString(), QStringLiteral("twice"));
    // A lot that is gone by is looked at only; the codes go on without it.
    page->model()->setData(page->model()->index(0, SheetModel::ripeness), QStringLiteral("7"),
                           Qt::EditRole);
    EXPECT_EQ(page->plan()->served(), kTrees + 1);
    EXPECT_TRUE(page->remarks().contains(QStringLiteral("AT17-001 is not in its prime")));
    const std::string before = page->plan()->lots.front().code;
    page->drawButton()->click();
    EXPECT_NE(page->plan()->lots.front().code, before);
}

TEST_F(PlannedSittingTest, AnyLineCanBeTheOneThatIsHiddenTwice) {
    PlanPage* page = plan();
    page->table()->setCurrentIndex(page->model()->index(2, SheetModel::fruit));
    page->twiceButton()->click();
    EXPECT_EQ(page->model()->roleOf(2), LotRole::benchmark);
    EXPECT_EQ(page->plan()->served(), kTrees + 1);
    EXPECT_TRUE(page->remarks().contains(QStringLiteral("AT17-003 is the benchmark")));
    page->table()->setCurrentIndex(page->model()->index(4, SheetModel::fruit));
    page->twiceButton()->click(); // there is only one
    EXPECT_EQ(page->model()->roleOf(2), LotRole::chosen);
    EXPECT_EQ(page->model()->roleOf(4), LotRole::benchmark);
    page->twiceButton()->click();
    EXPECT_EQ(page->plan()->served(), kTrees);
    // A line that is taken away takes its part along.
    page->twiceButton()->click();
    page->model()->removeRows(0, 1);
    EXPECT_EQ(page->model()->roleOf(3), LotRole::benchmark);
    EXPECT_TRUE(page->remarks().contains(QStringLiteral("AT17-005 is the benchmark")));
}

TEST_F(PlannedSittingTest, APlanThatCannotBeServedSaysWhatIsMissing) {
    place->planButton()->click();
    PlanPage* page = place->planPage();
    EXPECT_FALSE(page->keep());
    type(page->table(), QStringLiteral("AT17-001"));
    EXPECT_FALSE(page->plan());
    EXPECT_TRUE(page->remarks().contains(QStringLiteral("nothing to compare")));
    EXPECT_FALSE(page->keep());
    EXPECT_TRUE(page->notice()->isVisibleTo(page));
    EXPECT_TRUE(place->isEntering());
    EXPECT_EQ(*book->store().count(Kind::tasting), 0);
    QTest::keyClick(page->table(), Qt::Key_Escape);
    EXPECT_FALSE(place->isEntering());
    EXPECT_TRUE(place->planPage()->isBegun()); // it waits
}

TEST_F(PlannedSittingTest, KeepingThePlanIsOneStepAndShowsItsPapers) {
    const auto position = book->store().position();
    PlannedPage* page = planned();
    EXPECT_EQ(book->store().position(), position + 1);
    ASSERT_TRUE(page->isVisible());
    EXPECT_FALSE(place->planPage()->isBegun());
    const PlannedTable kept = table();
    EXPECT_EQ(kept.served(), kTrees + 2);
    EXPECT_EQ(kept.sheets.size(), 3U);
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("key.pdf"));
    page->papers()->key()->setPathChooser([&path](QWidget*, const QString&) { return path; });
    page->papers()->key()->saveButton()->click();
    EXPECT_TRUE(QFile::exists(path));
    book->undo();
    EXPECT_EQ(*book->store().count(Kind::tasting), 0);
    EXPECT_FALSE(page->isVisible());
}

TEST_F(PlannedSittingTest, AWholeSittingIsTypedWithTheKeyboardAndThenOpened) {
    PlannedPage* page = planned();
    page->papersButton()->click(); // from the papers to the sheets
    const PlannedTable before = table();
    const auto benchmark = [&before](const std::string& code) {
        for (const Lot& lot : before.lots) {
            if (lot.servingCode == code) {
                return lot.claimedGenotype.has_value() || !lot.plant;
            }
        }
        return false;
    };
    int keys = 0;
    for (std::size_t taster = 0; taster < 3; ++taster) {
        const TasterSheet sheet = before.sheets[taster];
        EXPECT_EQ(page->model()->sheet().taster, sheet.taster);
        EXPECT_EQ(page->table()->currentIndex().row(), 0);
        for (std::size_t line = 0; line < sheet.lines.size(); ++line) {
            // The benchmark gets 6 and 7 in turn, the others by their code.
            const QString typed = benchmark(sheet.lines[line].code)
                                      ? QStringLiteral("6.5")
                                      : QString::number(5 + sheet.lines[line].code[0] % 4);
            keys += static_cast<int>(typed.size()) + 1;
            if (line == 2) {
                type(page->table(), typed, Qt::Key_Tab);
                type(page->table(), QStringLiteral("crisp"));
                continue;
            }
            type(page->table(), typed);
        }
        EXPECT_EQ(place->focusWidget(), page->bestLine());
        QTest::keyClicks(page->bestLine(),
                         QString::fromStdString(sheet.lines[3].code + " " + sheet.lines[0].code));
        QTest::keyClick(page->bestLine(), Qt::Key_Return);
    }
    EXPECT_LT(keys, 100); // for 27 scores
    const PlannedTable after = table();
    EXPECT_TRUE(after.allSheetsIn());
    for (const TasterSheet& sheet : after.sheets) {
        EXPECT_EQ(sheet.lines[3].score.rank, 1);
        EXPECT_EQ(sheet.lines[0].score.rank, 2);
        EXPECT_EQ(sheet.lines[2].score.words, "crisp");
        EXPECT_EQ(*sheet.lines[1].score.liking,
                  benchmark(sheet.lines[1].code) ? 6.5 : 5 + sheet.lines[1].code[0] % 4);
    }
    EXPECT_TRUE(page->stateWords().contains(QStringLiteral("Every sheet is in")));
    EXPECT_EQ(place->focusWidget(), page->openButton());
    EXPECT_FALSE(place->result()->isVisible());
    page->openButton()->click();
    EXPECT_TRUE(table().key.opened);
    ASSERT_TRUE(place->result()->isVisible());
    EXPECT_TRUE(place->result()->agreement().contains(QStringLiteral("Kendall's W")));
    EXPECT_TRUE(place->result()->repeatError().contains(QStringLiteral("Russet Moor came twice")));
    EXPECT_EQ(place->result()->table()->model()->rowCount(), kTrees + 2);
    EXPECT_TRUE(place->result()->ranking().contains(QStringLiteral("cannot be told apart")));
    EXPECT_EQ(place->page()->table()->model()->rowCount(), kTrees + 2);
    book->undo(); // the key is sealed again
    EXPECT_FALSE(place->result()->isVisible());
    EXPECT_TRUE(page->isVisible());
}

TEST_F(PlannedSittingTest, OpeningEarlyNeedsAReasonThatIsKept) {
    PlannedPage* page = planned();
    page->papersButton()->click();
    type(page->table(), QStringLiteral("7"));
    page->openButton()->click();
    EXPECT_FALSE(table().key.opened);
    ASSERT_TRUE(page->reasonLine()->isVisibleTo(page));
    QTest::keyClick(page->reasonLine(), Qt::Key_Return);
    EXPECT_FALSE(table().key.opened);
    QTest::keyClicks(page->reasonLine(), QStringLiteral("rain"));
    QTest::keyClick(page->reasonLine(), Qt::Key_Return);
    EXPECT_TRUE(table().key.opened);
    EXPECT_EQ(table().key.reason, "rain");
    EXPECT_TRUE(table().unwritten().empty());
    EXPECT_EQ(*book->store().count(Kind::score), 1);
}

TEST_F(PlannedSittingTest, TheFirstLetterOfAWordIsNotAKeyOfTheMap) {
    PlannedPage* page = planned();
    page->papersButton()->click();
    QShortcut layBeside(QKeySequence(Qt::Key_C), place->window());
    int beside = 0;
    QObject::connect(&layBeside, &QShortcut::activated, [&beside] { ++beside; });
    page->table()->setCurrentIndex(page->table()->model()->index(0, EntryModel::words));
    QKeyEvent first(QEvent::ShortcutOverride, Qt::Key_C, Qt::NoModifier, QStringLiteral("c"));
    first.ignore();
    QApplication::sendEvent(page->table(), &first);
    EXPECT_TRUE(first.isAccepted());
    QKeyEvent undo(QEvent::ShortcutOverride, Qt::Key_Z, Qt::ControlModifier, QString(QChar(26)));
    undo.ignore();
    QApplication::sendEvent(page->table(), &undo);
    EXPECT_FALSE(undo.isAccepted());
    type(page->table(), QStringLiteral("crisp"));
    EXPECT_EQ(beside, 0);
    EXPECT_EQ(table().sheets.front().lines.front().score.words, "crisp");
}

TEST_F(PlannedSittingTest, WhatCannotBeReadIsSaidAndNothingIsWritten) {
    PlannedPage* page = planned();
    page->papersButton()->click();
    const auto position = book->store().position();
    type(page->table(), QStringLiteral("11"));
    EXPECT_TRUE(page->notice()->isVisibleTo(page));
    EXPECT_EQ(book->store().position(), position);
    page->bestLine()->setText(QStringLiteral("000"));
    QTest::keyClick(page->bestLine(), Qt::Key_Return);
    EXPECT_EQ(book->store().position(), position);
    EXPECT_TRUE(page->notice()->text().contains(QStringLiteral("000")));
    // All in one cell is understood too.
    page->beginEntry();
    type(page->table(), QStringLiteral("7h + melting"));
    const SheetLine line = table().sheets.front().lines.front();
    EXPECT_EQ(line.score.liking, 7.5);
    EXPECT_EQ(line.score.verdict, Verdict::watch);
    EXPECT_EQ(line.score.words, "melting");
}

} // namespace
} // namespace pipwright::ui
