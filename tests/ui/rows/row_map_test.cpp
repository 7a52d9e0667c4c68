#include "tests/ui/rows/random_scene.h"
#include "ui/rows/row_map.h"

#include <QScrollBar>
#include <QSignalSpy>
#include <QTest>
#include <QWheelEvent>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace pipwright::ui {
namespace {

using testing::plainScene;
using testing::randomScene;
using testing::treeNumber;

class RowMapTest : public ::testing::Test {
  protected:
    void show(ScenePointer scene, QSize size = {700, 500}) {
        map.resize(size);
        map.setScene(std::move(scene));
        map.show();
        map.activateWindow();
        map.setFocus();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&map));
    }
    QPoint middleOf(CellIndex cell) const { return map.rectOf(cell).center() - QPoint(0, 2); }
    void press(int key, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
        QTest::keyClick(&map, static_cast<Qt::Key>(key), modifiers);
    }
    void click(CellIndex cell, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
        QTest::mouseClick(map.viewport(), Qt::LeftButton, modifiers, middleOf(cell));
    }
    void drag(const std::vector<QPoint>& points, Qt::KeyboardModifiers modifiers) {
        QWidget* target = map.viewport();
        QTest::mousePress(target, Qt::LeftButton, modifiers, points.front());
        for (const QPoint& point : points) {
            QMouseEvent move(QEvent::MouseMove, QPointF(point), target->mapToGlobal(QPointF(point)),
                             Qt::NoButton, Qt::LeftButton, modifiers);
            QCoreApplication::sendEvent(target, &move);
        }
        QTest::mouseRelease(target, Qt::LeftButton, modifiers, points.back());
    }

    RowMap map;
};

TEST_F(RowMapTest, ShowsTheWholeSceneAtFirstWithoutScrollBars) {
    show(plainScene(10, 40));
    EXPECT_EQ(map.horizontalScrollBar()->maximum(), 0);
    EXPECT_EQ(map.verticalScrollBar()->maximum(), 0);
    EXPECT_TRUE(map.viewport()->rect().contains(map.rectOf(399)));
    EXPECT_EQ(map.currentTree(), treeNumber(1));
}

TEST_F(RowMapTest, ArrowsMoveAndSelectAndTell) {
    show(plainScene(5, 10));
    QSignalSpy trees(&map, &RowMap::currentTreeChanged);
    press(Qt::Key_Right);
    press(Qt::Key_Down);
    EXPECT_EQ(map.currentCell(), 11U);
    EXPECT_EQ(map.selection(), MapSelection::of(CellIndex{11}));
    ASSERT_EQ(trees.count(), 2);
    EXPECT_EQ(trees.back().front().value<Uuid>(), treeNumber(12));
    press(Qt::Key_End);
    EXPECT_EQ(map.currentCell(), 19U);
    press(Qt::Key_Home);
    EXPECT_EQ(map.currentCell(), 10U);
    press(Qt::Key_End, Qt::ControlModifier);
    EXPECT_EQ(map.currentCell(), 49U);
    press(Qt::Key_Right);
    EXPECT_EQ(map.currentCell(), 49U);
    press(Qt::Key_PageUp);
    EXPECT_EQ(map.currentCell(), 9U);
}

TEST_F(RowMapTest, ShiftExtendsAlongTheRowsAndAltShiftAsARectangle) {
    show(plainScene(5, 10));
    click(3);
    press(Qt::Key_Right, Qt::ShiftModifier);
    press(Qt::Key_Down, Qt::ShiftModifier);
    EXPECT_EQ(map.selection(), MapSelection::run(3, 14));
    click(3);
    press(Qt::Key_Right, Qt::AltModifier | Qt::ShiftModifier);
    press(Qt::Key_Down, Qt::AltModifier | Qt::ShiftModifier);
    EXPECT_EQ(map.selection().count(), 4U);
    EXPECT_TRUE(map.selection().contains(13));
    EXPECT_FALSE(map.selection().contains(5));
}

TEST_F(RowMapTest, AltArrowsAddEveryTreePassed) {
    show(plainScene(5, 10));
    click(3);
    press(Qt::Key_Right, Qt::AltModifier);
    press(Qt::Key_Down, Qt::AltModifier);
    press(Qt::Key_Left, Qt::AltModifier);
    EXPECT_THAT(map.selectedTrees(), ::testing::ElementsAre(treeNumber(4), treeNumber(5),
                                                            treeNumber(14), treeNumber(15)));
}

TEST_F(RowMapTest, ControlLeavesTheSelectionAloneAndJumpsOverGaps) {
    MapSceneBuilder builder;
    for (const int ordinal : {1, 2, 3, 4}) {
        PlaceFacts facts;
        facts.plant = ordinal == 2 || ordinal == 3 ? Uuid{} : treeNumber(ordinal);
        facts.ordinal = ordinal;
        builder.addPlace(facts);
    }
    show(builder.finish());
    click(0);
    press(Qt::Key_Right, Qt::ControlModifier);
    EXPECT_EQ(map.currentTree(), treeNumber(4));
    EXPECT_EQ(map.selection(), MapSelection::of(CellIndex{0}));
    press(Qt::Key_Space, Qt::ControlModifier);
    EXPECT_EQ(map.selectedTrees().size(), 2U);
    press(Qt::Key_Left);
    EXPECT_FALSE(map.currentTree());
    EXPECT_TRUE(map.selection().isEmpty());
}

TEST_F(RowMapTest, TheCursorKeepsItsPlaceThroughAShorterRow) {
    MapSceneBuilder builder;
    int number = 0;
    for (const int places : {10, 3, 10}) {
        builder.addRow({std::to_string(places), {}, ""});
        for (int ordinal = 1; ordinal <= places; ++ordinal) {
            PlaceFacts facts;
            facts.plant = treeNumber(++number);
            facts.ordinal = ordinal;
            builder.addPlace(facts);
        }
    }
    show(builder.finish());
    click(7);
    press(Qt::Key_Down);
    EXPECT_EQ(map.currentCell(), 12U);
    press(Qt::Key_Down);
    EXPECT_EQ(map.currentCell(), 20U);
}

TEST_F(RowMapTest, PlantsThatShareAPlaceAreWalkedOneByOne) {
    MapSceneBuilder builder;
    for (const int row : {1, 2}) {
        builder.addRow({std::to_string(row), {}, ""});
        for (const int plant : {1, 2}) {
            PlaceFacts facts;
            facts.plant = treeNumber(10 * row + plant);
            facts.ordinal = 1;
            builder.addPlace(facts);
        }
    }
    show(builder.finish());
    click(0);
    EXPECT_EQ(map.currentTree(), treeNumber(11));
    press(Qt::Key_Down);
    EXPECT_EQ(map.currentTree(), treeNumber(12));
    click(3);
    EXPECT_EQ(map.currentTree(), treeNumber(22));
}

TEST_F(RowMapTest, ClicksSelectToggleAndExtend) {
    show(plainScene(3, 10));
    click(2);
    click(5, Qt::ControlModifier);
    EXPECT_EQ(map.selection().count(), 2U);
    click(5, Qt::ControlModifier);
    EXPECT_EQ(map.selection(), MapSelection::of(CellIndex{2}));
    click(2);
    click(12, Qt::ShiftModifier);
    EXPECT_EQ(map.selection(), MapSelection::run(2, 12));
    QTest::mouseClick(map.viewport(), Qt::LeftButton, {},
                      QPoint(map.viewport()->width() - 3, map.viewport()->height() - 3));
    EXPECT_TRUE(map.selection().isEmpty());
}

TEST_F(RowMapTest, ARowsNameSelectsTheRow) {
    show(plainScene(3, 10));
    QTest::mouseClick(map.viewport(), Qt::LeftButton, {}, QPoint(6, middleOf(14).y()));
    EXPECT_EQ(map.selection(), MapSelection::run(10, 19));
    click(25);
    press(Qt::Key_Space, Qt::ShiftModifier);
    EXPECT_EQ(map.selection(), MapSelection::run(20, 29));
}

TEST_F(RowMapTest, DraggingSelectsARectangleAndAltDraggingALasso) {
    show(plainScene(4, 10));
    QSignalSpy changes(&map, &RowMap::selectionChanged);
    drag({middleOf(1), middleOf(12), middleOf(22)}, Qt::NoModifier);
    EXPECT_EQ(map.selection().count(), 6U);
    EXPECT_TRUE(map.selection().contains(11));
    EXPECT_GT(changes.count(), 0);
    const QPoint corner = map.rectOf(0).topLeft() + QPoint(1, -3);
    drag({corner, map.rectOf(4).topRight(), map.rectOf(30).bottomLeft(), corner}, Qt::AltModifier);
    EXPECT_TRUE(map.selection().contains(0));
    EXPECT_TRUE(map.selection().contains(10));
    EXPECT_FALSE(map.selection().contains(24));
    EXPECT_TRUE(map.currentCell() && map.selection().contains(*map.currentCell()));
}

TEST_F(RowMapTest, EscapeTakesADragBack) {
    show(plainScene(4, 10));
    click(35);
    QWidget* target = map.viewport();
    QTest::mousePress(target, Qt::LeftButton, Qt::ControlModifier, middleOf(1));
    const MapSelection before = map.selection();
    QMouseEvent move(QEvent::MouseMove, QPointF(middleOf(28)),
                     target->mapToGlobal(QPointF(middleOf(28))), Qt::NoButton, Qt::LeftButton,
                     Qt::ControlModifier);
    QCoreApplication::sendEvent(target, &move);
    EXPECT_GT(map.selection().count(), before.count());
    press(Qt::Key_Escape);
    EXPECT_LE(map.selection().count(), before.count());
}

TEST_F(RowMapTest, SelectAllTakesWhatIsShownAndNoGaps) {
    show(randomScene({}));
    press(Qt::Key_A, Qt::ControlModifier);
    EXPECT_EQ(map.selectedTrees().size(), map.scene().treeCount());
    CellSet shown(map.scene().cells().size(), false);
    shown[3] = shown[8] = true;
    map.setShown(shown);
    press(Qt::Key_A, Qt::ControlModifier);
    EXPECT_LE(map.selection().count(), 2U);
    EXPECT_GE(map.selection().count(), 1U);
}

TEST_F(RowMapTest, DigitsAndSlashAskToFindAndLettersAreLeft) {
    show(plainScene(3, 10));
    QSignalSpy finds(&map, &RowMap::findRequested);
    QTest::keyClicks(&map, QStringLiteral("7/"));
    ASSERT_EQ(finds.count(), 2);
    EXPECT_EQ(finds[0][0].toString(), QStringLiteral("7"));
    EXPECT_EQ(finds[1][0].toString(), QStringLiteral("/"));
    QSignalSpy strays(&map, &RowMap::strayLetter);
    QKeyEvent letter(QEvent::KeyPress, Qt::Key_N, Qt::NoModifier, QStringLiteral("n"));
    letter.setAccepted(true);
    QCoreApplication::sendEvent(&map, &letter);
    EXPECT_FALSE(letter.isAccepted());
    ASSERT_EQ(strays.count(), 1); // no menu took it: it is told where to find instead
    EXPECT_EQ(strays[0][0].toString(), QStringLiteral("N"));
}

TEST_F(RowMapTest, EnterAndDoubleClickActivate) {
    show(plainScene(3, 10));
    QSignalSpy activated(&map, &RowMap::treeActivated);
    click(4);
    press(Qt::Key_Return);
    QTest::mouseDClick(map.viewport(), Qt::LeftButton, {}, middleOf(5));
    ASSERT_EQ(activated.count(), 2);
    EXPECT_EQ(activated[0][0].value<Uuid>(), treeNumber(5));
    EXPECT_EQ(activated[1][0].value<Uuid>(), treeNumber(6));
}

TEST_F(RowMapTest, TheMenuIsAskedForAtTheCursorOrThePointer) {
    show(plainScene(3, 10));
    QSignalSpy menus(&map, &RowMap::contextMenuRequested);
    click(4);
    QContextMenuEvent byKey(QContextMenuEvent::Keyboard, QPoint(), QPoint());
    QCoreApplication::sendEvent(map.viewport(), &byKey);
    ASSERT_EQ(menus.count(), 1);
    EXPECT_TRUE(map.rectOf(4).contains(map.viewport()->mapFromGlobal(menus[0][0].toPoint())));
}

TEST_F(RowMapTest, ZoomKeepsTheTreeUnderThePointer) {
    show(randomScene({2, 12, 90, true, true, 3}));
    const CellIndex cell = 300;
    const QPointF about = map.rectOf(cell).center();
    for (int notch = 0; notch < 14; ++notch) {
        QWheelEvent wheel(about, map.viewport()->mapToGlobal(about), {}, {0, 120}, Qt::NoButton,
                          Qt::ControlModifier, Qt::NoScrollPhase, false);
        QCoreApplication::sendEvent(map.viewport(), &wheel);
        const QRect box = map.rectOf(cell).adjusted(-1, -1, 1, 1);
        ASSERT_TRUE(box.contains(about.toPoint())) << notch;
    }
    EXPECT_GT(map.cellWidth(), 28);
    press(Qt::Key_0);
    EXPECT_EQ(map.horizontalScrollBar()->maximum(), 0);
    const double fitted = map.cellWidth();
    press(Qt::Key_Plus);
    EXPECT_GT(map.cellWidth(), fitted);
    press(Qt::Key_Minus);
    press(Qt::Key_Minus);
    EXPECT_LT(map.cellWidth(), fitted);
}

TEST_F(RowMapTest, GoingToATreeMovesNothingWhenItIsInView) {
    show(randomScene({2, 12, 90, true, true, 3}));
    map.setCellWidth(60, {0, 0});
    const Uuid far = map.scene().cells()[map.scene().find(treeNumber(1500)).value()].plant;
    ASSERT_TRUE(map.goTo(far));
    EXPECT_TRUE(map.viewport()->rect().contains(map.rectOf(*map.currentCell()).center()));
    const QPoint at(map.horizontalScrollBar()->value(), map.verticalScrollBar()->value());
    ASSERT_TRUE(map.goTo(far));
    EXPECT_EQ(QPoint(map.horizontalScrollBar()->value(), map.verticalScrollBar()->value()), at);
    EXPECT_FALSE(map.goTo(treeNumber(999999)));
    EXPECT_EQ(map.currentTree(), far);
}

TEST_F(RowMapTest, ANewSceneKeepsCursorSelectionAndView) {
    show(randomScene({}));
    map.setCellWidth(40, {0, 0});
    ASSERT_TRUE(map.goTo(treeNumber(60)));
    const QRect before = map.rectOf(*map.currentCell());
    QSignalSpy trees(&map, &RowMap::currentTreeChanged);
    QSignalSpy selections(&map, &RowMap::selectionChanged);
    map.setScene(randomScene({}));
    EXPECT_EQ(map.currentTree(), treeNumber(60));
    EXPECT_THAT(map.selectedTrees(), ::testing::ElementsAre(treeNumber(60)));
    EXPECT_EQ(map.rectOf(*map.currentCell()), before);
    EXPECT_EQ(trees.count() + selections.count(), 0);
    map.setScene(plainScene(1, 3));
    EXPECT_TRUE(map.selection().isEmpty());
    EXPECT_EQ(selections.count(), 1);
    EXPECT_TRUE(map.currentCell());
}

TEST_F(RowMapTest, AnEmptySceneTakesEveryKeyAndClick) {
    show(MapSceneBuilder().finish());
    for (const int key : {Qt::Key_Right, Qt::Key_Down, Qt::Key_Home, Qt::Key_PageDown,
                          Qt::Key_Space, Qt::Key_Return, Qt::Key_Plus, Qt::Key_0, Qt::Key_Escape}) {
        press(key);
        press(key, Qt::ShiftModifier);
    }
    press(Qt::Key_A, Qt::ControlModifier);
    drag({{50, 50}, {90, 90}}, Qt::NoModifier);
    drag({{50, 50}, {90, 90}, {20, 90}}, Qt::AltModifier);
    EXPECT_FALSE(map.currentTree());
    EXPECT_TRUE(map.selection().isEmpty());
    EXPECT_FALSE(map.grab().isNull());
}

TEST_F(RowMapTest, OneTreeIsNotBlownUp) {
    show(plainScene(1, 1));
    EXPECT_LE(map.cellWidth(), 40);
    press(Qt::Key_Right);
    press(Qt::Key_Down);
    EXPECT_EQ(map.currentTree(), treeNumber(1));
}

TEST_F(RowMapTest, RowsOfTwoThousandPlacesFitAndScroll) {
    show(plainScene(3, 2000));
    EXPECT_EQ(map.horizontalScrollBar()->maximum(), 0);
    map.setCellWidth(30, {350, 200});
    press(Qt::Key_End);
    EXPECT_TRUE(map.viewport()->rect().contains(map.rectOf(1999).center()));
    EXPECT_EQ(map.horizontalScrollBar()->value(), map.horizontalScrollBar()->maximum());
}

TEST_F(RowMapTest, TheCardTellsOfTheTreeUnderTheCursor) {
    show(plainScene(3, 10));
    map.setHoverText([](const Uuid& plant) {
        return HoverWords{QString::fromStdString(plant.text()), {QStringLiteral("six and a half")}};
    });
    press(Qt::Key_Right);
    EXPECT_FALSE(map.hoverCard().isVisible());
    ASSERT_TRUE(QTest::qWaitFor([this] { return map.hoverCard().isVisible(); }));
    EXPECT_EQ(map.hoverCard().text(),
              QString::fromStdString(treeNumber(2).text()) + QStringLiteral("\nsix and a half"));
    press(Qt::Key_Right);
    EXPECT_FALSE(map.hoverCard().isVisible());
    QTest::mouseMove(map.viewport(), middleOf(7));
    ASSERT_TRUE(QTest::qWaitFor([this] { return map.hoverCard().isVisible(); }));
    EXPECT_TRUE(map.hoverCard().text().startsWith(QString::fromStdString(treeNumber(8).text())));
}

TEST_F(RowMapTest, AColouringOrFilterOfAnotherSceneIsRefused) {
    show(plainScene(3, 10));
    map.setColouring(colourByStage(*plainScene(1, 2)));
    EXPECT_EQ(map.colouring().entryOf.size(), 30U);
    map.setShown(CellSet(4, true));
    press(Qt::Key_A, Qt::ControlModifier);
    EXPECT_EQ(map.selection().count(), 30U);
}

TEST_F(RowMapTest, SpacingByTapeKeepsTheCurrentTree) {
    show(randomScene({}));
    map.setCellWidth(30, {0, 0});
    ASSERT_TRUE(map.goTo(treeNumber(60)));
    map.setSpacing(PlaceSpacing::byTape);
    EXPECT_EQ(map.currentTree(), treeNumber(60));
    EXPECT_EQ(map.selection().count(), 1U);
    EXPECT_TRUE(map.viewport()->rect().contains(map.rectOf(*map.currentCell()).center()));
}

} // namespace
} // namespace pipwright::ui
