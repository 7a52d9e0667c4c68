#include "tests/ui/rows/random_scene.h"
#include "ui/rows/row_map.h"

#include <QAccessible>
#include <QTest>

#include <gtest/gtest.h>

namespace pipwright::ui {
namespace {

using testing::plainScene;
using testing::treeNumber;

class AccessibleTest : public ::testing::Test {
  protected:
    void show(ScenePointer scene) {
        map.resize(600, 400);
        map.setScene(std::move(scene));
        map.show();
        map.activateWindow();
        map.setFocus();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&map));
        root = QAccessible::queryAccessibleInterface(&map);
        ASSERT_NE(root, nullptr);
        table = root->tableInterface();
        ASSERT_NE(table, nullptr);
    }
    static QString nameOf(QAccessibleInterface* cell) { return cell->text(QAccessible::Name); }

    RowMap map;
    QAccessibleInterface* root = nullptr;
    QAccessibleTableInterface* table = nullptr;
};

TEST_F(AccessibleTest, TheMapIsATableOfRowsAndPlaces) {
    show(plainScene(4, 20));
    EXPECT_EQ(root->role(), QAccessible::Table);
    EXPECT_FALSE(root->text(QAccessible::Name).isEmpty());
    EXPECT_EQ(table->rowCount(), 4);
    EXPECT_EQ(table->columnCount(), 20);
    EXPECT_EQ(root->childCount(), 80);
    EXPECT_EQ(table->rowDescription(2), QStringLiteral("row 3"));
    EXPECT_EQ(table->columnDescription(13), QStringLiteral("place 14"));
    EXPECT_EQ(nameOf(table->cellAt(2, 13)), QStringLiteral("row 3, place 14, R3-014, bearing"));
    EXPECT_EQ(table->cellAt(4, 0), nullptr);
    EXPECT_EQ(table->cellAt(0, 20), nullptr);
}

TEST_F(AccessibleTest, ChildrenAndIndexesAgree) {
    show(plainScene(4, 20));
    for (const int index : {0, 19, 20, 79}) {
        QAccessibleInterface* cell = root->child(index);
        ASSERT_NE(cell, nullptr);
        EXPECT_EQ(root->indexOfChild(cell), index);
        EXPECT_EQ(cell->parent(), root);
        EXPECT_EQ(cell->tableCellInterface()->rowIndex(), index / 20);
        EXPECT_EQ(cell->tableCellInterface()->columnIndex(), index % 20);
    }
    EXPECT_EQ(root->child(5), root->child(5));
}

TEST_F(AccessibleTest, TheFocusIsTheCurrentTree) {
    show(plainScene(4, 20));
    QTest::keyClick(&map, Qt::Key_Right);
    QTest::keyClick(&map, Qt::Key_Down);
    ASSERT_NE(root->focusChild(), nullptr);
    EXPECT_EQ(nameOf(root->focusChild()), QStringLiteral("row 2, place 2, R2-002, bearing"));
    EXPECT_TRUE(root->focusChild()->state().focused);
    EXPECT_TRUE(root->focusChild()->state().selected);
    EXPECT_FALSE(table->cellAt(0, 0)->state().selected);
}

TEST_F(AccessibleTest, PlacesThatDoNotExistAreSaidToBeNone) {
    MapSceneBuilder builder;
    builder.addRow({"7", {}, ""});
    for (const int ordinal : {1, 4}) {
        PlaceFacts facts;
        facts.plant = treeNumber(ordinal);
        facts.ordinal = ordinal;
        facts.code = "X" + std::to_string(ordinal);
        builder.addPlace(facts);
    }
    show(builder.finish());
    EXPECT_EQ(table->columnCount(), 4);
    QAccessibleInterface* none = table->cellAt(0, 1);
    ASSERT_NE(none, nullptr);
    EXPECT_TRUE(none->isValid());
    EXPECT_EQ(nameOf(none), QStringLiteral("row 7, place 2, no place"));
    EXPECT_FALSE(none->state().selectable);
}

TEST_F(AccessibleTest, TheSecondPlantOfAPlaceIsReachedByTheCursor) {
    MapSceneBuilder builder;
    for (const char* code : {"first", "second"}) {
        PlaceFacts facts;
        facts.plant = Uuid::named(code);
        facts.ordinal = 1;
        facts.code = code;
        facts.stage = Stage::juvenile;
        builder.addPlace(facts);
    }
    show(builder.finish());
    EXPECT_TRUE(nameOf(table->cellAt(0, 0)).contains(QStringLiteral("first")));
    EXPECT_TRUE(nameOf(table->cellAt(0, 0)).contains(QStringLiteral("two plants")));
    QTest::keyClick(&map, Qt::Key_Down);
    EXPECT_TRUE(nameOf(table->cellAt(0, 0)).contains(QStringLiteral("second")));
    EXPECT_EQ(root->focusChild(), table->cellAt(0, 0));
}

TEST_F(AccessibleTest, RowsCanBeSelected) {
    show(plainScene(4, 20));
    EXPECT_TRUE(table->selectRow(1));
    EXPECT_TRUE(table->isRowSelected(1));
    EXPECT_EQ(table->selectedCellCount(), 20);
    EXPECT_EQ(table->selectedRows(), QList<int>{1});
    EXPECT_TRUE(table->unselectRow(1));
    EXPECT_EQ(table->selectedCellCount(), 0);
    EXPECT_FALSE(table->selectRow(9));
}

TEST_F(AccessibleTest, ACellLiesWhereItIsDrawn) {
    show(plainScene(4, 20));
    QAccessibleInterface* cell = table->cellAt(1, 3);
    EXPECT_EQ(root->childAt(cell->rect().center().x(), cell->rect().center().y()), cell);
}

TEST_F(AccessibleTest, ANewSceneHandsOutNewCells) {
    show(plainScene(4, 20));
    ASSERT_NE(table->cellAt(3, 19), nullptr);
    map.setScene(plainScene(1, 2));
    EXPECT_EQ(table->rowCount(), 1);
    EXPECT_EQ(table->columnCount(), 2);
    EXPECT_EQ(table->cellAt(3, 19), nullptr);
    EXPECT_EQ(nameOf(table->cellAt(0, 1)), QStringLiteral("row 1, place 2, R1-002, bearing"));
    map.setScene(MapSceneBuilder().finish());
    EXPECT_EQ(root->childCount(), 0);
    EXPECT_EQ(root->focusChild(), nullptr);
}

} // namespace
} // namespace pipwright::ui
