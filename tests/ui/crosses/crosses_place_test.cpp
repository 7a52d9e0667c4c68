#include "tests/support/small_orchard.h"
#include "ui/book/open_book.h"
#include "ui/crosses/cross_table_model.h"
#include "ui/crosses/crosses_place.h"

#include <QAbstractItemModelTester>
#include <QTableView>
#include <QTest>

#include <gtest/gtest.h>

namespace pipwright::ui {
namespace {

TEST(CrossLines, CountTheWayFromSeedToTree) {
    test::SmallOrchard orchard;
    const auto row = orchard.row(1);
    orchard.seedling(row, 1, "AT17-001", Stage::watched);
    orchard.seedling(row, 2, "AT17-002", Stage::culled);
    const EditedTree lost = orchard.seedling(row, 3, "AT17-003");
    const auto plant = orchard.store().get(*lost.plant);
    ASSERT_TRUE(plant && *plant);
    const std::array plants = {**plant};
    orchard.apply(
        plantsBecome(plants, PlantState::dead, "voles", orchard.on(*Date::of(2024, 3, 1))));
    const auto lines = crossLines(*orchard.view());
    ASSERT_EQ(lines.size(), 1U);
    EXPECT_EQ(lines[0].parents, "Ash Tarn x Russet Moor");
    EXPECT_EQ(lines[0].species, "apple");
    EXPECT_EQ(lines[0].seedlings, 3);
    EXPECT_EQ(lines[0].growing, 2);
    EXPECT_EQ(lines[0].kept, 1);
    EXPECT_EQ(lines[0].culled, 1);
    EXPECT_EQ(lines[0].fruited, 0);
}

TEST(CrossTableModel, KeepsTheRulesOfAModelAndSortsUnknownLast) {
    CrossTableModel model;
    QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    CrossLine known;
    known.cross.code = "B2";
    known.cross.flowers = 40;
    CrossLine unknown;
    unknown.cross.code = "B10";
    model.setLines({unknown, known});
    constexpr int kFlowers = 5;
    model.sort(kFlowers, Qt::DescendingOrder);
    EXPECT_EQ(model.line(0).cross.code, "B2");
    model.sort(kFlowers, Qt::AscendingOrder);
    EXPECT_EQ(model.line(0).cross.code, "B2");
    model.sort(0, Qt::AscendingOrder); // 2 before 10
    EXPECT_EQ(model.line(0).cross.code, "B2");
}

TEST(CrossesPlace, EnterSelectsTheFamily) {
    test::SmallOrchard orchard;
    const auto row = orchard.row(1);
    orchard.seedling(row, 1, "AT17-001");
    orchard.seedling(row, 2, "AT17-002");
    auto book = OpenBook::open(orchard.takeStore(), {}, {});
    ASSERT_TRUE(book);
    CrossesPlace place(**book);
    place.show();
    ASSERT_EQ(place.table()->model()->rowCount(), 1);
    place.table()->setCurrentIndex(place.table()->model()->index(0, 0));
    QTest::keyClick(place.table(), Qt::Key_Return);
    EXPECT_EQ((*book)->selection().size(), 2U);
}

} // namespace
} // namespace pipwright::ui
