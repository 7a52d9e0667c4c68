#include "tests/ui/rows/random_scene.h"
#include "ui/rows/map_layout.h"
#include "ui/rows/map_selection.h"
#include "ui/rows/map_words.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <random>

namespace pipwright::ui {
namespace {

using testing::plainScene;
using testing::randomScene;
using testing::treeNumber;

PlaceFacts place(int number, int ordinal, std::optional<double> tape = std::nullopt) {
    PlaceFacts facts;
    facts.plant = number > 0 ? treeNumber(number) : Uuid{};
    facts.ordinal = ordinal;
    facts.tapeMetres = tape;
    facts.code = "T" + std::to_string(number);
    facts.shortCode = facts.code;
    return facts;
}

TEST(MapSceneTest, KeepsTheTrueOrderWhateverTheOrderOfTelling) {
    MapSceneBuilder builder;
    builder.addSite("Upper bank");
    builder.addRow({"1", 12.0, "N to S"});
    for (const int ordinal : {3, 1, 2}) {
        builder.addPlace(place(ordinal, ordinal));
    }
    const ScenePointer scene = builder.finish();
    ASSERT_EQ(scene->cells().size(), 3U);
    EXPECT_EQ(scene->cells()[0].ordinal, 1);
    EXPECT_EQ(scene->cells()[2].ordinal, 3);
    EXPECT_EQ(scene->find(treeNumber(2)), 1U);
    EXPECT_FALSE(scene->find(treeNumber(9)));
}

TEST(MapSceneTest, FindsTheRowOfACellBesideEmptyRows) {
    MapSceneBuilder builder;
    builder.addSite("Upper bank");
    builder.addRow({"1", {}, ""});
    builder.addPlace(place(1, 1));
    builder.addRow({"2", {}, ""});
    builder.addRow({"3", {}, ""});
    builder.addPlace(place(2, 1));
    builder.addSite("Nothing here");
    builder.addRow({"1", {}, ""});
    const ScenePointer scene = builder.finish();
    EXPECT_EQ(scene->rowOf(0), 0U);
    EXPECT_EQ(scene->rowOf(1), 2U);
    EXPECT_EQ(scene->sites()[1].firstRow, 3U);
}

TEST(MapSceneTest, MarksTwoPlantsAtOnePlaceButNotAPlantBesideAGap) {
    MapSceneBuilder builder;
    builder.addPlace(place(1, 1));
    builder.addPlace(place(2, 1));
    builder.addPlace(place(3, 2));
    builder.addPlace(place(0, 2));
    const ScenePointer scene = builder.finish();
    EXPECT_TRUE(scene->cells()[0].has(CellMark::secondPlant));
    EXPECT_TRUE(scene->cells()[1].has(CellMark::secondPlant));
    EXPECT_FALSE(scene->cells()[2].has(CellMark::secondPlant));
}

TEST(MapLayoutTest, LeavesMissingOrdinalsBlank) {
    MapSceneBuilder builder;
    builder.addPlace(place(1, 1));
    builder.addPlace(place(2, 4));
    const MapLayout layout(builder.finish(), PlaceSpacing::byOrder);
    const MapScale scale{10, 20, 30};
    EXPECT_EQ(layout.cellRect(1, scale), QRectF(30, 30, 10, 20));
    EXPECT_FALSE(layout.cellAt({15, 35}, scale));
    EXPECT_EQ(layout.cellAt({35, 35}, scale), 1U);
}

TEST(MapLayoutTest, SpacesByTapeAndFillsInWhatWasNotMeasured) {
    MapSceneBuilder builder;
    builder.addPlace(place(1, 1, 0.0));
    builder.addPlace(place(2, 2, 2.0));
    builder.addPlace(place(3, 3)); // between 2 m and 6 m
    builder.addPlace(place(4, 4, 6.0));
    builder.addPlace(place(5, 5)); // after the last one measured
    builder.addPlace(place(6, 6, 10.0));
    builder.addPlace(place(7, 7, 10.5)); // crowded
    const MapLayout layout(builder.finish(), PlaceSpacing::byTape);
    EXPECT_DOUBLE_EQ(layout.metresPerPlace(), 2.0);
    EXPECT_FLOAT_EQ(layout.slot(2).left, 2.0F);
    EXPECT_FLOAT_EQ(layout.slot(4).left, 4.0F);
    EXPECT_FLOAT_EQ(layout.slot(5).width, 0.25F);
    EXPECT_FLOAT_EQ(layout.slot(6).left, 5.25F);
}

TEST(MapLayoutTest, BothPlantsOfAPlaceCanBePicked) {
    MapSceneBuilder builder;
    builder.addPlace(place(1, 1));
    builder.addPlace(place(2, 1));
    const MapLayout layout(builder.finish(), PlaceSpacing::byOrder);
    const MapScale scale{10, 20, 0};
    EXPECT_EQ(layout.cellAt({5, 4}, scale), 0U);
    EXPECT_EQ(layout.cellAt({5, 16}, scale), 1U);
    EXPECT_FALSE(layout.cellRect(0, scale).intersects(layout.cellRect(1, scale)));
}

TEST(MapLayoutTest, EveryCellIsFoundAtItsOwnMiddle) {
    for (const PlaceSpacing spacing : {PlaceSpacing::byOrder, PlaceSpacing::byTape}) {
        const MapLayout layout(randomScene({3, 7, 90, true, true, 5}), spacing);
        const MapScale scale{7.3, 11.9, 26};
        for (CellIndex cell = 0; cell < layout.scene().cells().size(); ++cell) {
            ASSERT_EQ(layout.cellAt(layout.cellRect(cell, scale).center(), scale), cell);
        }
    }
}

TEST(MapLayoutTest, RowsBetweenAgreesWithTheTopsOfTheRows) {
    const MapLayout layout(randomScene({3, 7, 20, true, true, 5}), PlaceSpacing::byOrder);
    const MapScale scale{8, 12, 30};
    for (double top = -20; top < 500; top += 7) {
        const auto [first, end] = layout.rowsBetween(top, top + 40, scale);
        for (std::uint32_t row = 0; row < layout.scene().rows().size(); ++row) {
            const double rowTop = layout.rowTop(row, scale);
            const bool overlaps = rowTop < top + 40 && rowTop + 12 > top;
            EXPECT_EQ(overlaps, row >= first && row < end) << row << " at " << top;
        }
    }
}

TEST(MapLayoutTest, RectangleAndLassoChooseTheCellsInThem) {
    const MapLayout layout(plainScene(3, 10), PlaceSpacing::byOrder);
    const MapScale scale{10, 10, 0};
    EXPECT_THAT(layout.cellsIn(QRectF(25, 5, 20, 10), scale),
                ::testing::ElementsAre(2, 3, 4, 12, 13, 14));
    const QPolygonF triangle({{0, 0}, {40, 0}, {0, 40}});
    EXPECT_THAT(layout.cellsIn(triangle, scale), ::testing::ElementsAre(0, 1, 2, 10, 11, 20));
}

TEST(MapLayoutTest, AnEmptySceneHasNothingAnywhere) {
    const MapLayout layout;
    EXPECT_FALSE(layout.cellAt({3, 3}, {}));
    EXPECT_TRUE(layout.cellsIn(QRectF(0, 0, 100, 100), {}).empty());
    EXPECT_EQ(layout.contentSize({}), QSizeF(0, 0));
}

TEST(MapSelectionTest, RunsNeitherTouchNorOverlap) {
    MapSelection selection = MapSelection::run(5, 2);
    selection.add(7);
    EXPECT_EQ(selection.runs().size(), 2U);
    selection.add(6);
    ASSERT_EQ(selection.runs().size(), 1U);
    EXPECT_EQ(selection.runs()[0], (MapSelection::Run{2, 7}));
    selection.toggle(4);
    EXPECT_EQ(selection.runs().size(), 2U);
    EXPECT_EQ(selection.count(), 5U);
    EXPECT_FALSE(selection.contains(4));
}

TEST(MapSelectionTest, AgreesWithAPlainSetUnderRandomChanges) {
    std::mt19937 random(20260822);
    for (int turn = 0; turn < 300; ++turn) {
        MapSelection selection;
        CellSet set(64, false);
        for (int step = 0; step < 20; ++step) {
            const CellIndex one = random() % 64;
            const CellIndex other = random() % 64;
            const bool adds = random() % 2 == 0;
            const MapSelection run = MapSelection::run(one, other);
            adds ? selection.unite(run) : selection.subtract(run);
            for (CellIndex cell = std::min(one, other); cell <= std::max(one, other); ++cell) {
                set[cell] = adds;
            }
            ASSERT_EQ(selection, MapSelection::of(set));
        }
        for (CellIndex cell = 0; cell < 64; ++cell) {
            ASSERT_EQ(selection.contains(cell), set[cell]);
        }
    }
}

TEST(MapWordsTest, FindsWhatWasTyped) {
    const ScenePointer scene = plainScene(3, 20);
    EXPECT_EQ(findTyped(*scene, QStringLiteral("2/14")), 33U);
    EXPECT_EQ(findTyped(*scene, QStringLiteral("r3-007")), 46U);
    EXPECT_EQ(findTyped(*scene, QStringLiteral("007")), 6U);
    EXPECT_FALSE(findTyped(*scene, QStringLiteral("9/99")));
    EXPECT_FALSE(findTyped(*scene, QStringLiteral("  ")));
}

TEST(MapWordsTest, SaysAPlaceAsAReaderWould) {
    MapSceneBuilder builder;
    builder.addRow({"3", {}, ""});
    PlaceFacts facts = place(1, 14);
    facts.code = "AT17-014";
    facts.stage = Stage::watched;
    builder.addPlace(facts);
    facts = place(2, 15);
    facts.state = PlantState::lost;
    facts.identity = Confidence::byMap;
    facts.marks = static_cast<std::uint8_t>(CellMark::photo);
    builder.addPlace(facts);
    builder.addPlace(place(0, 16));
    const ScenePointer scene = builder.finish();
    EXPECT_EQ(cellWords(*scene, 0), QStringLiteral("row 3, place 14, AT17-014, watched"));
    EXPECT_EQ(
        cellWords(*scene, 1),
        QStringLiteral("row 3, place 15, T2, stage unknown, lost, identity by map only, photo"));
    EXPECT_EQ(cellWords(*scene, 2), QStringLiteral("row 3, place 16, gap"));
}

} // namespace
} // namespace pipwright::ui
