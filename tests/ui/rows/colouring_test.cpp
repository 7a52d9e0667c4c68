#include "tests/ui/rows/random_scene.h"
#include "ui/rows/cell_colouring.h"
#include "ui/rows/filter_spec.h"
#include "ui/rows/map_selection.h"

#include <cmath>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <limits>
#include <numeric>
#include <set>

namespace pipwright::ui {
namespace {

using testing::OrchardValues;
using testing::plainScene;
using testing::randomScene;
using testing::randomValues;
using Values = std::vector<std::optional<double>>;

std::size_t total(const CellColouring& colouring) {
    return std::accumulate(
        colouring.legend.begin(), colouring.legend.end(), std::size_t{0},
        [](std::size_t sum, const LegendEntry& entry) { return sum + entry.count; });
}

std::vector<QString> labels(const CellColouring& colouring) {
    std::vector<QString> all;
    for (const LegendEntry& entry : colouring.legend) {
        all.push_back(entry.label);
    }
    return all;
}

TEST(ColouringTest, StagesCountEveryTreeOnce) {
    const ScenePointer scene = randomScene({});
    const CellColouring colouring = colourByStage(*scene);
    EXPECT_EQ(total(colouring), scene->treeCount());
    for (std::size_t entry = 0; entry < colouring.legend.size(); ++entry) {
        const CellSet cells = colouring.cellsOf(entry);
        EXPECT_EQ(static_cast<std::size_t>(std::count(cells.begin(), cells.end(), true)),
                  colouring.legend[entry].count);
    }
}

TEST(ColouringTest, YearsGetOneLineEachWhenFew) {
    const ScenePointer scene = plainScene(1, 4);
    const CellColouring colouring =
        colourByFirstFruitYear(*scene, Values{2019, 2021, std::nullopt, 2019});
    EXPECT_THAT(labels(colouring),
                ::testing::ElementsAre(QStringLiteral("2019"), QStringLiteral("2020"),
                                       QStringLiteral("2021")));
    EXPECT_EQ(colouring.legend[0].count, 2U);
    EXPECT_FALSE(colouring.entry(2));
    EXPECT_FALSE(colouring.fill(2, lightTheme()));
}

TEST(ColouringTest, NumbersAreCutIntoAtMostNineRoundLines) {
    const ScenePointer scene = plainScene(1, 60);
    for (const double factor : {0.001, 0.37, 1.0, 12.0, 9000.0}) {
        Values values;
        for (int i = 0; i < 60; ++i) {
            values.emplace_back(factor * (i - 11));
        }
        const CellColouring colouring = colourByValues(*scene, values, {QStringLiteral("x"), {}});
        EXPECT_LE(colouring.legend.size(), 9U) << factor;
        EXPECT_GE(colouring.legend.size(), 3U) << factor;
        EXPECT_EQ(total(colouring), 60U);
        EXPECT_GT(colouring.legend.back().count, 0U) << factor;
        EXPECT_GT(colouring.legend.front().count, 0U) << factor;
    }
}

TEST(ColouringTest, TheLinesSayTheirUnit) {
    const ScenePointer scene = plainScene(1, 3);
    const CellColouring colouring = colourByValues(*scene, Values{1.0, 2.0, 3.0},
                                                   {QStringLiteral("Mass"), QStringLiteral("g")});
    EXPECT_TRUE(colouring.legend.front().label.endsWith(QStringLiteral(" g")));
}

TEST(ColouringTest, EqualAndUnusableNumbersDoNoHarm) {
    const ScenePointer scene = plainScene(1, 3);
    const CellColouring same = colourByLiking(*scene, Values{7.0, 7.0, 7.0});
    EXPECT_EQ(same.legend.size(), 1U);
    EXPECT_EQ(total(same), 3U);
    const CellColouring none = colourByLiking(*scene, Values{std::nullopt});
    EXPECT_TRUE(none.legend.empty());
    const double infinite = std::numeric_limits<double>::infinity();
    const CellColouring odd = colourByLiking(*scene, Values{infinite, 5.0, std::nan("")});
    EXPECT_EQ(total(odd), 1U);
}

TEST(ColouringTest, ADifferenceAsLargeAsItsDoubtFillsHalfTheCell) {
    const ScenePointer scene = plainScene(1, 4);
    const CellColouring colouring =
        colourByDifference(*scene, QStringLiteral("Against the best"),
                           Values{1.0, -3.0, 0.2, std::nullopt}, Values{1.0, 1.0, 0.8, 1.0});
    EXPECT_FLOAT_EQ(colouring.fullnessOf[0], 0.5F);
    EXPECT_EQ(colouring.entry(0), 1U);
    EXPECT_EQ(colouring.entry(1), 0U);
    EXPECT_FLOAT_EQ(colouring.toneOf[1], 0.0F);
    EXPECT_FLOAT_EQ(colouring.fullnessOf[2], 0.2F);
    EXPECT_FALSE(colouring.entry(3));
}

TEST(ColouringTest, MoreFamiliesThanHuesKeepLettersApart) {
    const ScenePointer scene = randomScene({});
    const OrchardValues values = randomValues(*scene);
    const CellColouring colouring = colourByFamily(*scene, values.familyOf, values.families);
    std::set<QString> letters;
    for (const LegendEntry& entry : colouring.legend) {
        EXPECT_TRUE(letters.insert(entry.letter).second);
    }
    EXPECT_EQ(total(colouring), scene->treeCount());
}

TEST(ColouringTest, EveryFillCanBeToldFromThePaper) {
    for (const Theme* theme : {&lightTheme(), &darkTheme()}) {
        for (const Stage stage : {Stage::bearing, Stage::watched, Stage::selection, Stage::named}) {
            const QColor fill = *stageFill(stage, *theme);
            EXPECT_GE(contrastRatio(markColour(fill, *theme).outline, theme->surface), 3.0);
            EXPECT_GE(contrastRatio(markColour(fill, *theme).text, fill), 4.5);
        }
        // Pale to deep: each living stage stands out more than the one before.
        const auto weight = [&](Stage stage) {
            return contrastRatio(*stageFill(stage, *theme), theme->paper);
        };
        EXPECT_LT(weight(Stage::bearing), weight(Stage::watched));
        EXPECT_LT(weight(Stage::watched), weight(Stage::selection));
        EXPECT_LT(weight(Stage::selection), weight(Stage::advanced));
    }
}

TEST(FilterTest, AnEmptyFilterShowsAll) {
    const ScenePointer scene = plainScene(2, 5);
    EXPECT_TRUE(shownBy({}, *scene, {}).empty());
    EXPECT_EQ(shownCount({}, *scene), 10U);
}

TEST(FilterTest, WordsMustAllBeFoundAnywhere) {
    const ScenePointer scene = plainScene(2, 5);
    FilterFacts facts;
    facts.families = {QStringLiteral("Ash Tarn x Russet Moor"), QStringLiteral("Open 2017")};
    facts.familyOf = {0, 0, 0, 1, 1, 1, 1, 1, -1, -1};
    FilterSpec spec;
    spec.text = QStringLiteral("r1- TARN");
    const CellSet shown = shownBy(spec, *scene, facts);
    EXPECT_EQ(MapSelection::of(shown), MapSelection::run(0, 2));
    spec.text = QStringLiteral("2/3");
    EXPECT_EQ(MapSelection::of(shownBy(spec, *scene, facts)), MapSelection::of(7));
}

TEST(FilterTest, StageFamilyAndBoundsAllHold) {
    const ScenePointer scene = randomScene({});
    const OrchardValues values = randomValues(*scene);
    FilterFacts facts{values.families,
                      values.familyOf,
                      {{QStringLiteral("liking"), QStringLiteral("Liking"), 1, values.liking}}};
    FilterSpec spec;
    spec.stages = {Stage::bearing, Stage::watched};
    spec.bounds = {{QStringLiteral("liking"), 5.0, std::nullopt}};
    const CellSet shown = shownBy(spec, *scene, facts);
    std::size_t passed = 0;
    for (CellIndex cell = 0; cell < scene->cells().size(); ++cell) {
        const MapCell& tree = scene->cells()[cell];
        const bool meant = !tree.isGap() &&
                           (tree.stage == Stage::bearing || tree.stage == Stage::watched) &&
                           values.liking[cell] && *values.liking[cell] >= 5.0;
        EXPECT_EQ(shown[cell], meant);
        passed += meant ? 1 : 0;
    }
    EXPECT_GT(passed, 0U);
    EXPECT_EQ(shownCount(shown, *scene), passed);
}

TEST(FilterTest, WhatIsNotThereLetsNothingThrough) {
    const ScenePointer scene = plainScene(1, 3);
    FilterSpec spec;
    spec.family = QStringLiteral("no such family");
    EXPECT_EQ(shownCount(shownBy(spec, *scene, {}), *scene), 0U);
    spec = {};
    spec.bounds = {{QStringLiteral("no such trait"), 1.0, 2.0}};
    EXPECT_EQ(shownCount(shownBy(spec, *scene, {}), *scene), 0U);
}

} // namespace
} // namespace pipwright::ui
