// One August Saturday from the keyboard, on a real book file: the walk with its unreadable tag and
// two plants at one stake, a late entry, bites, a sitting, a wrong tree put right, decisions, a
// graft wish, a label; then everything is undone and done again over a restart.
#include "core/exchange/archive.h"
#include "core/orchard/dictionary.h"
#include "core/store/orchard_book.h"
#include "tests/support/test_doors.h"
#include "ui/book/open_book.h"
#include "ui/print/label_panel.h"
#include "ui/print/paper_place.h"
#include "ui/shell/main_window.h"
#include "ui/shell/workbench.h"
#include "ui/tasting/sheet_model.h"
#include "ui/tasting/sheet_table.h"
#include "ui/tasting/sitting_sheet.h"
#include "ui/tasting/taster_row.h"
#include "ui/tasting/tastings_place.h"
#include "ui/tree/entry_strip.h"
#include "ui/tree/identity_forms.h"
#include "ui/tree/tree_head.h"
#include "ui/tree/tree_sheet.h"
#include "ui/widgets/finder_line.h"
#include "ui/widgets/inexact_date_edit.h"
#include "ui/widgets/notice_bar.h"

#include <QAbstractButton>
#include <QAction>
#include <QApplication>
#include <QLineEdit>
#include <QListWidget>
#include <QMenu>
#include <QTemporaryDir>
#include <QTest>
#include <QThreadPool>
#include <QToolButton>

#include <gtest/gtest.h>

namespace pipwright::ui {
namespace {

class Saturday : public testing::Test {
  protected:
    void SetUp() override {
        path = folder.filePath(QStringLiteral("orchard.orchard"));
        auto book = createBook(path.toStdString());
        ASSERT_TRUE(book);
        const auto report = readArchive(PIPWRIGHT_SOURCE_DIR "/sample-data/orchard", **book, {});
        ASSERT_TRUE(report && report->written);
        book->reset();
        openWindow();
    }
    void TearDown() override {
        window.reset();
        QThreadPool::globalInstance()->waitForDone();
    }

    void openWindow() {
        window.reset();
        QThreadPool::globalInstance()->waitForDone();
        window = std::make_unique<MainWindow>(doors, Date::of(2026, 8, 22));
        window->resize(1366, 768);
        window->show();
        ASSERT_TRUE(QTest::qWaitForWindowActive(window.get()));
        ASSERT_TRUE(window->openBook(path));
        ASSERT_TRUE(QTest::qWaitFor(
            [this] { return window->workbench()->book().view()->hasEvidence(); }, 20000));
        QThreadPool::globalInstance()->waitForDone(); // the dated copy
    }

    OpenBook& book() { return window->workbench()->book(); }
    TreeSheet& sheet() { return *window->workbench()->sheet(); }

    static void type(const QString& keys) {
        for (const QChar key : keys) {
            QTest::keyClicks(QApplication::focusWidget(), QString(key));
        }
    }
    static void press(Qt::Key key, Qt::KeyboardModifiers with = {}) {
        QTest::keyClick(QApplication::focusWidget(), key, with);
    }
    /// Ctrl+K, what is looked for, Enter.
    void find(const QString& words) {
        press(Qt::Key_K, Qt::ControlModifier);
        ASSERT_EQ(QApplication::focusWidget(), window->workbench()->finder()->line());
        type(words);
        ASSERT_GT(window->workbench()->finder()->resultCount(), 0) << words.toStdString();
        press(Qt::Key_Return);
    }
    void identity(const char* part) {
        for (QAction* one : sheet().head()->identityButton()->menu()->actions()) {
            if (one->text().contains(QString::fromLatin1(part))) {
                one->trigger();
                return;
            }
        }
        FAIL() << part;
    }
    [[nodiscard]] Index plantAt(const char* code) {
        return *book().view()->plantFor(*book().view()->genotypeCalled(code));
    }
    [[nodiscard]] std::vector<Observation> seenOn(Index plant, std::string_view trait) {
        auto all =
            *book().store().where<Observation>("plant", book().view()->plants()[plant].id.uuid);
        std::erase_if(all, [&](const Observation& one) {
            return one.trait != shippedTraitId(trait) || one.date < Date::of(2026, 8, 17);
        });
        return all;
    }

    QTemporaryDir folder;
    QString path;
    test::TestDoors doors;
    std::unique_ptr<MainWindow> window;
};

TEST_F(Saturday, IsDoneFromTheKeyboardAndUndoneAgain) {
    const std::int64_t morning = book().store().position();

    // 07:10, the walk: a plain tree is ripe, with a few drops.
    find(QStringLiteral("AT17-014"));
    const Index plain = plantAt("AT17-014");
    ASSERT_EQ(book().currentPlant(), plain);
    press(Qt::Key_W);
    type(QStringLiteral("r"));
    press(Qt::Key_Return);
    ASSERT_EQ(seenOn(plain, trait_key::kRipeningState).size(), 1U);

    // Two plants stand at one stake in row C; the tag of one cannot be read.
    find(QStringLiteral("AT14-032"));
    const Index unreadable = plantAt("AT14-032");
    ASSERT_EQ(book().currentPlant(), unreadable);
    const auto stake = *book().view()->plants()[unreadable].position;
    EXPECT_EQ(book().view()->plantsAt(stake).size(), 2U);
    const auto confirmed = book().view()->plants()[unreadable].confirmed;
    identity("by the map");
    EXPECT_EQ(book().view()->plants()[unreadable].confirmed, confirmed);
    EXPECT_EQ(book().view()->plants()[unreadable].confidence, Confidence::byMap);
    find(QStringLiteral("C/3.40"));
    EXPECT_EQ(book().view()->plants()[*book().currentPlant()].position, stake);
    find(QStringLiteral("C/4"));
    EXPECT_EQ(book().view()->plants()[*book().currentPlant()].position, stake);

    // A late entry: what was seen on Tuesday is written down today.
    find(QStringLiteral("AT15-012"));
    press(Qt::Key_N);
    type(QStringLiteral("two drops under it on Tuesday"));
    sheet().strip()->day()->line()->setFocus();
    sheet().strip()->day()->line()->selectAll();
    type(QStringLiteral("2026-08-18"));
    press(Qt::Key_Return);
    const auto late = seenOn(plantAt("AT15-012"), trait_key::kNote);
    ASSERT_EQ(late.size(), 1U);
    EXPECT_EQ(late[0].date, Date::of(2026, 8, 18));

    // A bite in the row, put down for the wrong tree, and put right.
    find(QStringLiteral("AT16-014"));
    const Index wrong = plantAt("AT16-014");
    press(Qt::Key_B);
    type(QStringLiteral("6.5 sharp, short"));
    press(Qt::Key_Return);
    const int lotsBefore = book().view()->factsOfPlant(plain).lots;
    identity("wrong tree");
    auto* form = static_cast<MoveForm*>(sheet().strip()->current());
    for (int i = 0; i < form->list()->count(); ++i) {
        form->list()->item(i)->setCheckState(i == 0 ? Qt::Checked : Qt::Unchecked);
    }
    type(QStringLiteral("AT17-014"));
    press(Qt::Key_Return);
    EXPECT_EQ(book().view()->factsOfPlant(plain).lots, lotsBefore + 1);
    EXPECT_NE(plain, wrong);

    // 09:00, the sitting: three lots and the benchmark twice.
    press(Qt::Key_2, Qt::AltModifier);
    ASSERT_EQ(window->workbench()->place(), QStringLiteral("tastings"));
    press(Qt::Key_E, Qt::ControlModifier);
    SittingSheet* sitting = window->workbench()->tastings()->sheet();
    ASSERT_TRUE(window->workbench()->tastings()->isEntering());
    for (const char* taster : {"Annis Tarrow", "Bodo Quill", "Corra Venn"}) {
        sitting->tasters()->button(QString::fromLatin1(taster))->click();
    }
    sitting->begin();
    const QStringList lines = {
        QStringLiteral("AT17-014|t|4|s|0|7|8|6.5"), QStringLiteral("AT17-038|t|5|s|f5|7|8|5"),
        QStringLiteral("AT19-023|t|4|s|0|6|8|5.5"), QStringLiteral("FEN|t|4|s|0|7|8|6"),
        QStringLiteral("FEN|t|4|s|0|7.5|8|6.5")};
    for (const QString& line : lines) {
        for (const QString& cell : line.split(QLatin1Char('|'))) {
            SheetTable* table = sitting->table();
            QWidget* typing = QApplication::focusWidget() != nullptr &&
                                      table->isAncestorOf(QApplication::focusWidget())
                                  ? QApplication::focusWidget()
                                  : table;
            for (const QChar letter : cell) {
                QTest::keyClicks(typing, QString(letter));
                typing = QApplication::focusWidget();
            }
            QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
        }
    }
    ASSERT_TRUE(sitting->keep());
    const auto tastings = book().store().where<Tasting>("date", std::string("2026-08-22"));
    ASSERT_TRUE(tastings);
    EXPECT_EQ(tastings->size(), 2U); // the bite and the sitting

    // 10:00, decisions: the plain tree is watched, and two buds of it are wished for.
    press(Qt::Key_1, Qt::AltModifier);
    find(QStringLiteral("AT17-014"));
    press(Qt::Key_D);
    type(QStringLiteral("w"));
    press(Qt::Key_Return);
    type(QStringLiteral("within half a point of the week's best, blind"));
    press(Qt::Key_Return);
    const Index genotype = *book().view()->genotypeCalled("AT17-014");
    EXPECT_EQ(book().view()->genotypes()[genotype].stage, Stage::watched);
    press(Qt::Key_G);
    type(QStringLiteral("2 only one tree"));
    press(Qt::Key_Return);
    EXPECT_EQ(book().view()->genotypeFacts(genotype).openWishes, 2);

    // Its label, laid out.
    press(Qt::Key_L);
    EXPECT_EQ(window->workbench()->place(), QStringLiteral("paper"));

    // Beside its sisters and benchmarks.
    press(Qt::Key_C);
    EXPECT_EQ(book().laidBeside().size(), 1U);
    press(Qt::Key_C);
    EXPECT_EQ(window->workbench()->place(), QStringLiteral("compare"));

    // Home, and open again: everything is there, and can be taken back to the morning.
    const std::int64_t evening = book().store().position();
    EXPECT_GE(evening - morning, 8);
    openWindow();
    EXPECT_EQ(book().store().position(), evening);
    EXPECT_EQ(book().view()->genotypes()[*book().view()->genotypeCalled("AT17-014")].stage,
              Stage::watched);
    for (std::int64_t i = morning; i < evening; ++i) {
        press(Qt::Key_Z, Qt::ControlModifier);
    }
    EXPECT_TRUE(seenOn(plantAt("AT17-014"), trait_key::kRipeningState).empty());
    EXPECT_EQ(book().store().position(), evening + (evening - morning));
    press(Qt::Key_Y, Qt::ControlModifier);
    EXPECT_EQ(seenOn(plantAt("AT17-014"), trait_key::kRipeningState).size(), 1U);
    window->closeBook();
    const auto check = doors.check(path, {});
    ASSERT_TRUE(check);
    EXPECT_TRUE(check->findings.isEmpty())
        << check->findings.join(QStringLiteral("; ")).toStdString();
}

TEST_F(Saturday, EveryActionHasAHandlerAndNoTwoShareAKey) {
    QStringList keys;
    for (const ActionWords& words : allActionWords()) {
        if (words.id.endsWith(QLatin1Char('-'))) {
            continue;
        }
        ASSERT_NE(window->action(words.id), nullptr) << words.id.toStdString();
        for (const QString& key : words.keys.split(QLatin1Char(','), Qt::SkipEmptyParts)) {
            EXPECT_FALSE(keys.contains(key)) << key.toStdString();
            keys << key;
        }
    }
}

TEST_F(Saturday, ASecondWriterIsToldAndTheStartPageStays) {
    test::TestDoors others;
    MainWindow second(others, std::nullopt);
    second.show();
    EXPECT_FALSE(second.openBook(path));
    EXPECT_EQ(second.workbench(), nullptr);
    EXPECT_FALSE(second.notice()->text().isEmpty());
}

} // namespace
} // namespace pipwright::ui
