#include "tests/ui/widgets/look.h"
#include "ui/widgets/finder_line.h"
#include "ui/widgets/navigation_rail.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QSignalSpy>
#include <QTest>
#include <QToolButton>
#include <QVBoxLayout>

#include <gtest/gtest.h>

namespace pipwright::ui {
namespace {

class RailTest : public testing::Test {
  protected:
    void SetUp() override {
        dress();
        rail.addPlace(QStringLiteral("rows"), IconName::rows, QStringLiteral("Rows"));
        rail.addPlace(QStringLiteral("tastings"), IconName::tastings, QStringLiteral("Tastings"));
        rail.addPlace(QStringLiteral("season"), IconName::season, QStringLiteral("Season"));
        rail.setCurrent(QStringLiteral("rows"));
        rail.show();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&rail));
    }

    NavigationRail rail;
};

TEST_F(RailTest, ClickChoosesAPlace) {
    QSignalSpy chosen(&rail, &NavigationRail::placeChosen);
    QTest::mouseClick(rail.button(QStringLiteral("season")), Qt::LeftButton);
    ASSERT_EQ(chosen.count(), 1);
    EXPECT_EQ(chosen[0][0].toString(), QStringLiteral("season"));
    EXPECT_EQ(rail.current(), QStringLiteral("season"));
}

TEST_F(RailTest, AltDigitAndArrows) {
    QSignalSpy chosen(&rail, &NavigationRail::placeChosen);
    QTest::keyClick(&rail, Qt::Key_2, Qt::AltModifier);
    EXPECT_EQ(rail.current(), QStringLiteral("tastings"));
    QTest::keyClick(rail.button(QStringLiteral("tastings")), Qt::Key_Down);
    EXPECT_EQ(rail.current(), QStringLiteral("season"));
    QTest::keyClick(rail.button(QStringLiteral("season")), Qt::Key_Down);
    EXPECT_EQ(rail.current(), QStringLiteral("season")) << "stays at the end";
    EXPECT_TRUE(rail.button(QStringLiteral("season"))->hasFocus());
    EXPECT_GE(chosen.count(), 2);
}

TEST_F(RailTest, ShowingAPlaceSaysNothing) {
    QSignalSpy chosen(&rail, &NavigationRail::placeChosen);
    rail.setCurrent(QStringLiteral("season"));
    rail.setCurrent(QStringLiteral("moon"));
    EXPECT_EQ(rail.current(), QStringLiteral("season"));
    EXPECT_EQ(chosen.count(), 0);
}

TEST_F(RailTest, HasNames) {
    EXPECT_FALSE(rail.accessibleName().isEmpty());
    EXPECT_EQ(rail.button(QStringLiteral("rows"))->accessibleName(), QStringLiteral("Rows"));
}

class FinderTest : public testing::Test {
  protected:
    void SetUp() override {
        dress();
        auto* layout = new QVBoxLayout(&window);
        layout->addWidget(finder = new FinderLine(&window));
        layout->addStretch(1);
        finder->setPlaceholder(QStringLiteral("Tree, family, word or command"));
        finder->setProvider([](const QString& text) {
            std::vector<FoundThing> found;
            for (int i = 0; i < 12 && text != QStringLiteral("zzz"); ++i) {
                found.push_back({QStringLiteral("id%1").arg(i),
                                 QStringLiteral("AT17-%1").arg(14 + i, 3, 10, QLatin1Char('0')),
                                 QStringLiteral("row 3, %1: Ash Tarn × Russet Moor").arg(14 + i),
                                 QStringLiteral("tree"), IconName::tree});
            }
            return found;
        });
        window.resize(520, 380);
        window.show();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
    }

    QWidget window;
    FinderLine* finder = nullptr;
};

TEST_F(FinderTest, TypeDownEnter) {
    QSignalSpy chosen(finder, &FinderLine::chosen);
    finder->begin();
    QTest::keyClicks(finder->line(), QStringLiteral("at1"));
    EXPECT_TRUE(finder->isShowingResults());
    EXPECT_EQ(finder->resultCount(), 12);
    lookAt(window, QStringLiteral("finder"));
    QTest::keyClick(finder->line(), Qt::Key_Down);
    QTest::keyClick(finder->line(), Qt::Key_Down);
    QTest::keyClick(finder->line(), Qt::Key_Return);
    ASSERT_EQ(chosen.count(), 1);
    EXPECT_EQ(chosen[0][0].toString(), QStringLiteral("id2"));
    EXPECT_FALSE(finder->isShowingResults());
}

TEST_F(FinderTest, ClickOnAResult) {
    QSignalSpy chosen(finder, &FinderLine::chosen);
    finder->begin(QStringLiteral("at"));
    QListView* list = finder->results();
    const QRect second = list->visualRect(list->model()->index(1, 0));
    QTest::mouseClick(list->viewport(), Qt::LeftButton, {}, second.center());
    ASSERT_EQ(chosen.count(), 1);
    EXPECT_EQ(chosen[0][0].toString(), QStringLiteral("id1"));
}

TEST_F(FinderTest, EscapeClosesThenLeaves) {
    QSignalSpy dismissed(finder, &FinderLine::dismissed);
    finder->begin(QStringLiteral("at"));
    QTest::keyClick(finder->line(), Qt::Key_Escape);
    EXPECT_FALSE(finder->isShowingResults());
    EXPECT_EQ(dismissed.count(), 0);
    QTest::keyClick(finder->line(), Qt::Key_Escape);
    EXPECT_EQ(dismissed.count(), 1);
}

TEST_F(FinderTest, NothingFoundHidesTheList) {
    finder->begin(QStringLiteral("at"));
    EXPECT_TRUE(finder->isShowingResults());
    finder->begin(QStringLiteral("zzz"));
    EXPECT_FALSE(finder->isShowingResults());
    EXPECT_EQ(finder->resultCount(), 0);
}

TEST_F(FinderTest, ResultsKeepInsideTheWindow) {
    window.resize(520, 160);
    finder->begin(QStringLiteral("at"));
    EXPECT_LE(finder->results()->geometry().bottom(), window.height());
    EXPECT_TRUE(finder->line()->hasFocus());
}

} // namespace
} // namespace pipwright::ui
