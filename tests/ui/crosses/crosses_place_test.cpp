#include "tests/support/small_orchard.h"
#include "ui/book/open_book.h"
#include "ui/crosses/cross_table_model.h"
#include "ui/crosses/crosses_place.h"
#include "ui/crosses/outlook_panel.h"
#include "ui/crosses/raising_panel.h"
#include "ui/widgets/flow_text.h"

#include <QAbstractItemModelTester>
#include <QLineEdit>
#include <QSpinBox>
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

/// The small orchard with S alleles and a second, open-pollinated cross.
std::unique_ptr<OpenBook> bookOfTwoCrosses(test::SmallOrchard& orchard) {
    ChangeSet set;
    set.sentence = "Alleles, and a cross";
    for (auto [genotype, alleles] :
         {std::pair{&orchard.mother, "S2 S5"}, std::pair{&orchard.father, "S5 S7"}}) {
        const Genotype before = *genotype;
        genotype->selfAlleles = alleles;
        set.edit(before, *genotype);
    }
    Cross open;
    open.id = CrossId(orchard.ids.make());
    open.code = "AT21";
    open.species = shippedSpeciesId("apple");
    open.seedParent = orchard.mother.id;
    open.pollination = Pollination::open;
    open.cropYear = CropYear{2021};
    open.seedsSown = 100;
    open.germinated = 70;
    open.planted = 63;
    set.create(open);
    orchard.apply(set);
    auto book = OpenBook::open(orchard.takeStore(), {}, {});
    EXPECT_TRUE(book);
    (*book)->setToday(Date::of(2026, 5, 1));
    return std::move(*book);
}

TEST(CrossesPlace, SaysWhatTheChosenCrossPromises) {
    test::SmallOrchard orchard;
    const auto book = bookOfTwoCrosses(orchard);
    CrossesPlace place(*book);
    place.show();
    ASSERT_EQ(place.table()->model()->rowCount(), 2);
    const OutlookPanel& outlook = *place.outlook();
    EXPECT_EQ(outlook.seedEdit()->text(), QStringLiteral("Ash Tarn"));
    EXPECT_EQ(outlook.pollenEdit()->text(), QStringLiteral("Russet Moor"));
    EXPECT_TRUE(outlook.pollenWords()->text().startsWith(QStringLiteral("Half compatible")));
    EXPECT_TRUE(outlook.pollenWords()->text().contains(QStringLiteral("S2\u00A0S7")));
    EXPECT_TRUE(outlook.inbreedingWords()->text().startsWith(QStringLiteral("F = 0.000")));
    EXPECT_TRUE(outlook.founderWords()->text().contains(QStringLiteral("Ash Tarn")));
    EXPECT_TRUE(outlook.warningWords()->isHidden());
    place.table()->setCurrentIndex(place.table()->model()->index(1, 0));
    EXPECT_TRUE(outlook.pollenEdit()->text().isEmpty());
    EXPECT_TRUE(outlook.founderWords()->text().contains(QStringLiteral("unknown")));
    // Sorting takes the chosen cross along.
    place.table()->sortByColumn(0, Qt::DescendingOrder);
    EXPECT_EQ(place.table()->currentIndex().row(), 0);
    EXPECT_TRUE(outlook.pollenEdit()->text().isEmpty());
}

TEST(CrossesPlace, TwoParentsCanBeTried) {
    test::SmallOrchard orchard;
    const auto book = bookOfTwoCrosses(orchard);
    CrossesPlace place(*book);
    place.show();
    OutlookPanel& outlook = *place.outlook();
    const auto type = [](QLineEdit* edit, const char* text) {
        edit->selectAll();
        QTest::keyClicks(edit, QString::fromLatin1(text));
    };
    type(outlook.pollenEdit(), "ash tarn");
    EXPECT_TRUE(outlook.pollenWords()->text().startsWith(QStringLiteral("Incompatible")));
    EXPECT_TRUE(outlook.inbreedingWords()->text().startsWith(QStringLiteral("F = 0.500")));
    type(outlook.pollenEdit(), "nobody");
    EXPECT_TRUE(outlook.pollenWords()->text().contains(QStringLiteral("not in the book")));
    EXPECT_TRUE(outlook.inbreedingWords()->text().isEmpty());
    // What was typed stays when the book changes.
    ChangeSet set;
    set.sentence = "Another cross";
    Cross another;
    another.id = CrossId(orchard.ids.make());
    another.code = "AT22";
    another.seedParent = orchard.father.id;
    set.create(another);
    ASSERT_TRUE(book->apply(set));
    EXPECT_EQ(place.table()->model()->rowCount(), 3);
    EXPECT_EQ(outlook.pollenEdit()->text(), QStringLiteral("nobody"));
}

TEST(CrossesPlace, CountsTheSeedsToSow) {
    test::SmallOrchard orchard;
    const auto book = bookOfTwoCrosses(orchard);
    CrossesPlace place(*book);
    place.show();
    RaisingPanel& raising = *place.raising();
    // One gene of one parent, ten plants, 95 % sure; 70 of 100 germinated, 63 of 70 lived.
    EXPECT_TRUE(raising.advice()->text().contains(QStringLiteral("raise 28")));
    EXPECT_TRUE(raising.advice()->text().contains(QStringLiteral("Sow 47 seeds")));
    raising.plants()->setValue(1);
    EXPECT_TRUE(raising.advice()->text().contains(QStringLiteral("raise 5")));
    EXPECT_TRUE(raising.verdict()->text().isEmpty());
    raising.seenWith()->setValue(24);
    raising.seenWithout()->setValue(43);
    EXPECT_TRUE(raising.verdict()->text().contains(QStringLiteral("5.39")));
    EXPECT_TRUE(raising.verdict()->text().contains(QStringLiteral("p\u00A0=\u00A00.020")));
    EXPECT_TRUE(raising.verdict()->text().contains(QStringLiteral("hardly fits")));
    raising.oneParentOnce()->setValue(0);
    EXPECT_FALSE(raising.verdict()->text().isEmpty()) << "nothing to tell apart, and it says so";
}

TEST(CrossesPlace, SaysWhyTooManyGenesCannotBeReckonedWith) {
    test::SmallOrchard orchard;
    const auto book = bookOfTwoCrosses(orchard);
    CrossesPlace place(*book);
    place.show();
    RaisingPanel& raising = *place.raising();
    raising.bothTwice()->selectAll();
    QTest::keyClicks(raising.bothTwice(), QStringLiteral("9"));
    EXPECT_EQ(raising.bothTwice()->value(), 9);
    EXPECT_TRUE(raising.advice()->text().contains(QStringLiteral("no more than 8")))
        << raising.advice()->text().toStdString();
    raising.bothTwice()->selectAll();
    QTest::keyClicks(raising.bothTwice(), QStringLiteral("3"));
    EXPECT_TRUE(raising.advice()->text().contains(QStringLiteral("raise")));
}

TEST(CrossesPlace, SaysOfAParentWithoutAllelesWhatItsOwnParentsLeaveOpen) {
    test::SmallOrchard orchard;
    ChangeSet alleles;
    alleles.sentence = "S alleles";
    for (auto [parent, text] : {std::pair{&orchard.mother, "S2 S5"}, {&orchard.father, "S5 S7"}}) {
        const Genotype before = *parent;
        parent->selfAlleles = text;
        alleles.edit(before, *parent);
    }
    orchard.apply(alleles);
    orchard.seedling(orchard.row(1), 1, "AT17-001"); // S2 S7 or S5 S7
    auto book = OpenBook::open(orchard.takeStore(), {}, {});
    ASSERT_TRUE(book);
    CrossesPlace place(**book);
    place.show();
    OutlookPanel& outlook = *place.outlook();
    const auto type = [](QLineEdit* edit, const char* text) {
        edit->selectAll();
        QTest::keyClicks(edit, QString::fromLatin1(text));
    };
    type(outlook.seedEdit(), "AT17-001");
    type(outlook.pollenEdit(), "Russet Moor"); // S5 S7: half accepted, or none
    const QString words = outlook.pollenWords()->text();
    EXPECT_TRUE(words.startsWith(QStringLiteral("Between 0"))) << words.toStdString();
    EXPECT_TRUE(words.contains(QStringLiteral("S2 S7 (50")));
    EXPECT_TRUE(words.contains(QStringLiteral("S5 S7 (50")));
    EXPECT_TRUE(words.contains(QStringLiteral("25")));
}

} // namespace
} // namespace pipwright::ui
