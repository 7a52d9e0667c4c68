#include "tests/ui/rows/random_scene.h"
#include "ui/rows/colour_chooser.h"
#include "ui/rows/map_filter_bar.h"
#include "ui/rows/map_legend.h"
#include "ui/rows/map_words.h"
#include "ui/rows/tree_list_view.h"

#include <QAbstractButton>
#include <QAbstractItemModelTester>
#include <QClipboard>
#include <QComboBox>
#include <QGuiApplication>
#include <QLineEdit>
#include <QMenu>
#include <QSignalSpy>
#include <QTest>
#include <QToolButton>

#include <gtest/gtest.h>

namespace pipwright::ui {
namespace {

using testing::OrchardValues;
using testing::plainScene;
using testing::randomScene;
using testing::randomValues;
using testing::treeNumber;

std::vector<TreeColumn> withLiking(const ScenePointer& scene,
                                   const std::vector<std::optional<double>>& liking) {
    std::vector<TreeColumn> columns = sceneColumns(scene);
    columns.push_back(
        {QStringLiteral("liking"), QStringLiteral("Liking (1 to 9)"),
         [liking](CellIndex cell) { return liking[cell] ? QVariant(*liking[cell]) : QVariant(); },
         1, true});
    return columns;
}

TEST(TreeTableModelTest, HoldsEveryTreeAndNoGap) {
    const ScenePointer scene = randomScene({});
    TreeTableModel model;
    const QAbstractItemModelTester tester(&model,
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    model.setTrees(scene, sceneColumns(scene));
    EXPECT_EQ(static_cast<std::size_t>(model.rowCount()), scene->treeCount());
    for (int row = 0; row < model.rowCount(); ++row) {
        ASSERT_FALSE(scene->cells()[model.cellOf(row)].isGap());
        ASSERT_EQ(model.rowOf(model.cellOf(row)), row);
    }
    model.sort(0, Qt::DescendingOrder);
    model.setShown(CellSet(scene->cells().size(), false));
    EXPECT_EQ(model.rowCount(), 0);
}

TEST(TreeTableModelTest, NumbersSortAsNumbersAndTheUnknownLast) {
    const ScenePointer scene = plainScene(1, 4);
    TreeTableModel model;
    model.setTrees(scene, withLiking(scene, {9.0, std::nullopt, 10.5, 2.0}));
    const int liking = model.columnCount() - 1;
    model.sort(liking, Qt::AscendingOrder);
    EXPECT_EQ(model.cellOf(0), 3U);
    EXPECT_EQ(model.cellOf(2), 2U);
    EXPECT_EQ(model.cellOf(3), 1U);
    model.sort(liking, Qt::DescendingOrder);
    EXPECT_EQ(model.cellOf(0), 2U);
    EXPECT_EQ(model.cellOf(3), 1U);
    model.sort(-1);
    EXPECT_EQ(model.cellOf(0), 0U);
}

TEST(TreeTableModelTest, CodesSortAsPeopleCount) {
    MapSceneBuilder builder;
    int ordinal = 0;
    for (const char* code : {"row 10", "row 9", "row 2"}) {
        PlaceFacts facts;
        facts.plant = Uuid::named(code);
        facts.ordinal = ++ordinal;
        facts.code = code;
        builder.addPlace(facts);
    }
    const ScenePointer scene = builder.finish();
    TreeTableModel model;
    model.setTrees(scene, sceneColumns(scene));
    model.sort(0);
    EXPECT_EQ(model.cellOf(0), 2U);
    EXPECT_EQ(model.cellOf(1), 1U);
    EXPECT_EQ(model.cellOf(2), 0U);
}

TEST(TreeListViewTest, CopiesATableWithItsHeader) {
    MapSceneBuilder builder;
    PlaceFacts facts;
    facts.plant = treeNumber(1);
    facts.ordinal = 1;
    facts.code = "odd\tcode";
    facts.stage = Stage::watched;
    builder.addRow({"4", {}, ""});
    builder.addPlace(facts);
    const ScenePointer scene = builder.finish();
    TreeListView view;
    view.setTrees(scene, withLiking(scene, {6.54}));
    view.copyAsTable();
    const QStringList lines = QGuiApplication::clipboard()->text().split(QLatin1Char('\n'));
    ASSERT_EQ(lines.size(), 3);
    EXPECT_TRUE(lines[0].startsWith(QStringLiteral("Code\tRow\tPlace\t")));
    EXPECT_TRUE(lines[1].startsWith(QStringLiteral("odd code\t4\t1\t")));
    EXPECT_EQ(lines[1].split(QLatin1Char('\t')).size(), lines[0].split(QLatin1Char('\t')).size());
    EXPECT_TRUE(lines[2].isEmpty());
}

TEST(TreeListViewTest, TellsTheCurrentTreeAndKeepsItThroughChanges) {
    const ScenePointer scene = plainScene(3, 10);
    TreeListView view;
    view.resize(600, 400);
    view.setTrees(scene, sceneColumns(scene));
    view.show();
    ASSERT_TRUE(view.goTo(treeNumber(5)));
    QSignalSpy trees(&view, &TreeListView::currentTreeChanged);
    QTest::keyClick(&view, Qt::Key_Down);
    ASSERT_EQ(trees.count(), 1);
    EXPECT_EQ(trees[0][0].value<Uuid>(), treeNumber(6));
    view.sortByColumn(0, Qt::DescendingOrder);
    EXPECT_EQ(view.currentTree(), treeNumber(6));
    CellSet shown(30, false);
    shown[5] = shown[7] = true;
    view.setShown(shown);
    EXPECT_EQ(view.currentTree(), treeNumber(6));
    EXPECT_EQ(view.trees().rowCount(), 2);
    EXPECT_FALSE(view.goTo(treeNumber(1)));
    view.setSelection(MapSelection::of(CellIndex{7}));
    EXPECT_EQ(view.selectedCells(), MapSelection::of(CellIndex{7}));
    EXPECT_EQ(trees.count(), 1);
}

TEST(TreeListViewTest, LettersAreLeftAndEnterActivates) {
    const ScenePointer scene = plainScene(1, 3);
    TreeListView view;
    view.setTrees(scene, sceneColumns(scene));
    view.goTo(treeNumber(2));
    QSignalSpy activated(&view, &TreeListView::treeActivated);
    QTest::keyClick(&view, Qt::Key_Return);
    EXPECT_EQ(activated.count(), 1);
    QKeyEvent letter(QEvent::KeyPress, Qt::Key_N, Qt::NoModifier, QStringLiteral("n"));
    QCoreApplication::sendEvent(&view, &letter);
    EXPECT_FALSE(letter.isAccepted());
}

TEST(MapFilterBarTest, SaysWhatWasAskedForAndComesBack) {
    MapFilterBar bar;
    FilterFacts facts;
    facts.families = {QStringLiteral("Ash Tarn x Russet Moor")};
    facts.traits = {{QStringLiteral("liking"), QStringLiteral("Liking"), 1, {}}};
    bar.setFacts(facts);
    QSignalSpy changes(&bar, &MapFilterBar::filterChanged);
    auto* text = bar.findChild<QLineEdit*>();
    QTest::keyClicks(text, QStringLiteral("AT"));
    EXPECT_EQ(changes.count(), 2);
    EXPECT_EQ(bar.spec().text, QStringLiteral("AT"));
    FilterSpec spec;
    spec.stages = {Stage::watched, Stage::selection};
    spec.family = facts.families.front();
    spec.bounds = {{QStringLiteral("liking"), 5.5, std::nullopt}};
    bar.setSpec(spec);
    EXPECT_EQ(bar.spec(), spec);
    EXPECT_EQ(changes.count(), 3);
    bar.setSpec(spec);
    EXPECT_EQ(changes.count(), 3);
    bar.setFacts({});
    EXPECT_FALSE(bar.spec().family);
    bar.clear();
    EXPECT_TRUE(bar.spec().isEmpty());
}

TEST(MapFilterBarTest, SeveralTraitsMayBeBoundedFromAndTo) {
    MapFilterBar bar;
    FilterFacts facts;
    facts.traits = {{QStringLiteral("liking"), QStringLiteral("Liking"), 1, {}},
                    {QStringLiteral("mass"), QStringLiteral("Mass (g)"), 1, {}}};
    bar.setFacts(facts);
    bar.show();
    const auto fields = bar.findChildren<QLineEdit*>();
    ASSERT_EQ(fields.size(), 3); // words, from, to
    auto* trait = bar.findChildren<QComboBox*>().last();
    EXPECT_FALSE(bar.andButton()->isVisible());
    trait->setCurrentIndex(1);
    QTest::keyClicks(fields[1], QStringLiteral("6"));
    QTest::keyClicks(fields[2], QStringLiteral("8"));
    const TraitBound liking{QStringLiteral("liking"), 6.0, 8.0};
    EXPECT_EQ(bar.spec().bounds, std::vector{liking});
    QTest::mouseClick(bar.andButton(), Qt::LeftButton);
    EXPECT_EQ(bar.spec().bounds, std::vector{liking}); // it still holds
    ASSERT_EQ(bar.furtherBounds().size(), 1U);
    EXPECT_EQ(bar.furtherBounds()[0]->text(), QStringLiteral("Liking from 6 to 8"));
    trait->setCurrentIndex(2);
    QTest::keyClicks(fields[1], QStringLiteral("150"));
    const TraitBound mass{QStringLiteral("mass"), 150.0, std::nullopt};
    EXPECT_EQ(bar.spec().bounds, (std::vector{liking, mass}));
    QTest::mouseClick(bar.furtherBounds()[0], Qt::LeftButton);
    EXPECT_EQ(bar.spec().bounds, std::vector{mass});
    EXPECT_TRUE(bar.furtherBounds().empty());
}

TEST(MapFilterBarTest, EveryFieldHasAName) {
    const MapFilterBar bar;
    const QWidget* fields = bar.findChildren<QLineEdit*>().first()->parentWidget();
    const auto children = fields->findChildren<QWidget*>(QString(), Qt::FindDirectChildrenOnly);
    EXPECT_GT(children.size(), 6);
    for (const QWidget* child : children) {
        EXPECT_FALSE(child->accessibleName().isEmpty()) << child->metaObject()->className();
    }
}

TEST(MapLegendTest, LinesCountAndAreChosen) {
    const ScenePointer scene = randomScene({});
    const OrchardValues values = randomValues(*scene);
    const CellColouring colouring = colourByLiking(*scene, values.liking);
    MapLegend legend;
    legend.setColouring(colouring);
    ASSERT_EQ(legend.lineCount(), colouring.legend.size());
    QSignalSpy chosen(&legend, &MapLegend::entryChosen);
    legend.line(1)->click();
    ASSERT_EQ(chosen.count(), 1);
    EXPECT_EQ(chosen[0][0].value<std::size_t>(), 1U);
    EXPECT_TRUE(
        legend.line(1)->accessibleName().contains(QString::number(colouring.legend[1].count)));
    EXPECT_TRUE(legend.line(1)->accessibleName().contains(colouring.legend[1].label));
    legend.setColouring(colourByLiking(*scene, {}));
    EXPECT_EQ(legend.lineCount(), 0U);
}

TEST(ColourChooserTest, KeepsTheChoiceWhileItExists) {
    ColourChooser chooser;
    QSignalSpy chosen(&chooser, &ColourChooser::colourChosen);
    chooser.setTraits({{QStringLiteral("brix"), QStringLiteral("Brix (°)")}});
    chooser.choose(QStringLiteral("brix"));
    EXPECT_EQ(chooser.chosen(), QStringLiteral("brix"));
    chooser.setTraits({{QStringLiteral("mass"), QStringLiteral("Mass (g)")},
                       {QStringLiteral("brix"), QStringLiteral("Brix (°)")}});
    EXPECT_EQ(chooser.chosen(), QStringLiteral("brix"));
    EXPECT_EQ(chosen.count(), 1);
    chooser.setTraits({});
    EXPECT_EQ(chooser.chosen(), QStringLiteral("stage"));
    EXPECT_EQ(chosen.count(), 2);
    chooser.choose(QStringLiteral("no such way"));
    EXPECT_EQ(chooser.chosen(), QStringLiteral("stage"));
}

} // namespace
} // namespace pipwright::ui
