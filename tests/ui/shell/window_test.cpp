// What the window remembers, its history and its help.
#include "core/store/orchard_book.h"
#include "tests/support/small_orchard.h"
#include "tests/support/test_doors.h"
#include "ui/book/open_book.h"
#include "ui/shell/book_history.h"
#include "ui/shell/help_window.h"
#include "ui/shell/main_window.h"
#include "ui/shell/workbench.h"
#include "ui/widgets/navigation_rail.h"
#include "ui/widgets/number_text.h"
#include "ui/widgets/status_line.h"

#include <QAction>
#include <QApplication>
#include <QListWidget>
#include <QLocale>
#include <QMenu>
#include <QTemporaryDir>
#include <QTest>
#include <QTextBrowser>
#include <QThreadPool>
#include <QTimer>
#include <QToolButton>
#include <QTreeWidget>

#include <gtest/gtest.h>

namespace pipwright::ui {
namespace {

class Window : public testing::Test {
  protected:
    void TearDown() override {
        window.reset();
        QThreadPool::globalInstance()->waitForDone();
        QLocale::setDefault(QLocale::c());
    }
    /// A book with three trees in row 1.
    QString make(const char* name) {
        const QString path = folder.filePath(QString::fromLatin1(name));
        auto book = createBook(path.toStdString());
        EXPECT_TRUE(book);
        test::SmallOrchard orchard(std::move(*book));
        const TrialRow row = orchard.row(1);
        for (const char* code : {"AT17-001", "AT17-002", "AT17-003"}) {
            last = orchard.seedling(row, ++ordinal, code);
        }
        orchard.apply(sittingOn(orchard));
        return path;
    }
    ChangeSet sittingOn(test::SmallOrchard& orchard) {
        ChangeSet set = noteOn(std::vector{last}, "seen", orchard.on(*Date::of(2026, 8, 22)));
        set.sentence = "Sitting of 2026-08-22, with a sentence that is longer than any line has "
                       "room for, moved from one tree to another tree";
        return set;
    }
    void open(const QString& path) {
        if (window) {
            window->close();
        }
        window = std::make_unique<MainWindow>(doors, Date::of(2026, 8, 22));
        window->show();
        ASSERT_TRUE(window->openBook(path));
        QThreadPool::globalInstance()->waitForDone();
    }
    OpenBook& book() { return window->workbench()->book(); }
    [[nodiscard]] std::string current() {
        return book().currentPlant() ? book().view()->plantCode(*book().currentPlant()) : "none";
    }
    void select(const char* code) {
        book().selectPlant(*book().view()->plantFor(*book().view()->genotypeCalled(code)));
    }

    QTemporaryDir folder;
    test::TestDoors doors;
    std::int64_t ordinal = 0;
    EditedTree last;
    std::unique_ptr<MainWindow> window;
};

TEST_F(Window, GoesOnWhereEachBookWasLeft) {
    const QString one = make("one.orchard");
    const QString two = make("two.orchard");
    open(one);
    EXPECT_EQ(current(), "none");
    EXPECT_EQ(window->workbench()->place(), QStringLiteral("rows"));
    select("AT17-002");
    window->workbench()->goTo(QStringLiteral("grafting"));
    open(two); // another book knows nothing of it
    EXPECT_EQ(current(), "none");
    EXPECT_EQ(window->workbench()->place(), QStringLiteral("rows"));
    select("AT17-003");
    open(one);
    EXPECT_EQ(current(), "AT17-002");
    EXPECT_EQ(window->workbench()->place(), QStringLiteral("grafting"));
    EXPECT_EQ(window->workbench()->rail()->current(), QStringLiteral("grafting"));
    open(two);
    EXPECT_EQ(current(), "AT17-003");
    // A tree that is no longer there is passed over.
    window->workbench()->goOnWith(QStringLiteral("season"),
                                  QString::fromStdString(book().ids().make().text()));
    EXPECT_EQ(window->workbench()->place(), QStringLiteral("season"));
    EXPECT_EQ(current(), "AT17-003");
}

TEST_F(Window, DatesReadAlikeEverywhereAndTheWholeSentenceCanBeRead) {
    for (const QLocale& locale : {QLocale(QLocale::English, QLocale::UnitedStates),
                                  QLocale(QLocale::German, QLocale::Germany)}) {
        QLocale::setDefault(locale);
        open(make(locale.language() == QLocale::German ? "de.orchard" : "us.orchard"));
        const QString day = dateText(*Date::of(2026, 8, 22));
        BookHistory history(book(), nullptr);
        const QTreeWidgetItem* newest = history.list()->topLevelItem(0);
        EXPECT_TRUE(newest->text(1).startsWith(QStringLiteral("Sitting of ") + day));
        EXPECT_EQ(newest->toolTip(1), newest->text(1));
        EXPECT_FALSE(newest->text(0).contains(QLatin1Char('/'))) << newest->text(0).toStdString();
        history.list()->topLevelItem(0)->setExpanded(true);
        QStringList fields;
        for (int i = 0; i < newest->child(0)->childCount(); ++i) {
            fields << newest->child(0)->child(i)->text(1);
        }
        EXPECT_TRUE(fields.contains(QStringLiteral("date: ") + day))
            << fields.join(QStringLiteral("; ")).toStdString();
        QToolButton* undo = window->workbench()->statusLine()->undoButton();
        EXPECT_TRUE(undo->toolTip().contains(QStringLiteral("Sitting of ") + day));
        EXPECT_TRUE(undo->toolTip().endsWith(QStringLiteral("to another tree")));
    }
}

TEST_F(Window, ALanguageIsSpokenAtOnce) {
    open(make("words.orchard"));
    select("AT17-002");
    window->workbench()->goTo(QStringLiteral("season"));
    const auto choose = [this](const QString& words) {
        QTimer::singleShot(0, window.get(), [words] {
            auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget());
            ASSERT_NE(menu, nullptr);
            for (QAction* one : menu->actions()) {
                if (one->text() == words) {
                    menu->setActiveAction(one);
                    QTest::keyClick(menu, Qt::Key_Return);
                    return;
                }
            }
            FAIL() << words.toStdString();
        });
        window->action(QStringLiteral("language"))->trigger();
    };
    choose(QStringLiteral("Deutsch"));
    const auto speaks = [this](const char* words) {
        return window->action(QStringLiteral("quit"))->text() == QString::fromUtf8(words);
    };
    EXPECT_TRUE(QTest::qWaitFor([&] { return speaks("Beenden"); }));
    EXPECT_TRUE(
        window->action(QStringLiteral("language"))->text().endsWith(QStringLiteral(": Deutsch")));
    // The book is open as it was left, on the day it was.
    ASSERT_NE(window->workbench(), nullptr);
    EXPECT_EQ(current(), "AT17-002");
    EXPECT_EQ(window->workbench()->place(), QStringLiteral("season"));
    EXPECT_EQ(book().today(), *Date::of(2026, 8, 22));
    choose(QStringLiteral("English"));
    EXPECT_TRUE(QTest::qWaitFor([&] { return speaks("Quit"); }));
}

TEST_F(Window, TheHelpBeginsWithWhatToDoFirst) {
    open(make("help.orchard"));
    window->action(QStringLiteral("handbook"))->trigger();
    auto* help = window->findChild<HelpWindow*>();
    ASSERT_NE(help, nullptr);
    EXPECT_TRUE(help->browser()->toPlainText().startsWith(QStringLiteral("What to do first")));
    ASSERT_EQ(help->pages()->count(), 3);
    EXPECT_EQ(help->pages()->currentRow(), 0);
    for (int page = 1; page < 3; ++page) {
        help->pages()->setCurrentRow(page);
        EXPECT_FALSE(help->browser()->toPlainText().isEmpty());
        EXPECT_FALSE(help->browser()->toPlainText().startsWith(QStringLiteral("What to do first")));
    }
    Q_EMIT help->browser()->anchorClicked(QUrl(QStringLiteral("start")));
    EXPECT_EQ(help->pages()->currentRow(), 0);
    EXPECT_EQ(window->action(QStringLiteral("handbook"))->shortcut(), QKeySequence(Qt::Key_F1));
}

TEST(LocalDates, ReplaceIsoDatesOnly) {
    EXPECT_EQ(withLocalDates(QStringLiteral("Sitting of 2026-08-22, 9 lots")),
              QStringLiteral("Sitting of %1, 9 lots").arg(dateText(*Date::of(2026, 8, 22))));
    for (const char* text : {"2026-02-30", "12026-08-22", "2026-08-221", "AT17-014", ""}) {
        EXPECT_EQ(withLocalDates(QString::fromLatin1(text)), QString::fromLatin1(text));
    }
}

} // namespace
} // namespace pipwright::ui
