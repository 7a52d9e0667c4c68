#include "core/evaluation/season_chart.h"
#include "tests/support/tasted_orchard.h"

#include <algorithm>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace pipwright {
namespace {

using test::TastedOrchard;
using testing::ElementsAre;
using testing::HasSubstr;

double dayOf(const char* iso) {
    return Date::fromIso(iso)->days();
}

ChartSpec chartOf(TastedOrchard& orchard, int cropYear, std::vector<GenotypeId> chosen = {},
                  std::optional<Date> today = std::nullopt) {
    const auto view = orchard.view();
    SeasonChartRequest request;
    request.cropYear = CropYear{cropYear};
    request.today = today;
    for (const GenotypeId id : chosen) {
        request.genotypes.push_back(*view->genotype(id));
    }
    auto chart = seasonChart(*view, orchard.store(), request);
    EXPECT_TRUE(chart);
    return *chart;
}

const ChartSeries* seriesCalled(const ChartSpec& chart, const std::string& name) {
    const auto found = std::find_if(chart.series.begin(), chart.series.end(),
                                    [&name](const auto& one) { return one.name == name; });
    return found == chart.series.end() ? nullptr : &*found;
}

TEST(SeasonChart, DrawsWindowsInLanesAndTheBarToBeat) {
    TastedOrchard orchard;
    const auto tree = TastedOrchard::treeOf(orchard.mother);
    orchard.walk(tree, WalkMark::notYet, "2026-08-13");
    orchard.walk(tree, WalkMark::ripe, "2026-08-20"); // Thursday of week 34
    orchard.walk(tree, WalkMark::over, "2026-08-31"); // Monday of week 36
    orchard.bite(tree, 7, "2026-08-20");
    orchard.bite(tree, 3, "2026-08-21", Origin::droppedToday); // unfair: not in the bar
    const ChartSpec chart = chartOf(orchard, 2026);
    EXPECT_THAT(chart.title, HasSubstr("2026"));
    EXPECT_THAT(chart.lanes, ElementsAre("Ash Tarn")); // Russet Moor was not walked
    const ChartSeries* windows = seriesCalled(chart, "benchmarks");
    ASSERT_NE(windows, nullptr);
    ASSERT_EQ(windows->marks.size(), 1U);
    EXPECT_EQ(windows->marks[0].xInterval,
              (ChartInterval{dayOf("2026-08-13"), dayOf("2026-08-31")}));
    EXPECT_FALSE(windows->marks[0].uncertain);
    const ChartSeries* bar = seriesCalled(chart, "bar to beat: the week's best benchmark");
    ASSERT_NE(bar, nullptr);
    ASSERT_EQ(bar->marks.size(), 4U); // weeks 34 and 35, a step each
    EXPECT_EQ(bar->marks[0].x, dayOf("2026-08-17"));
    EXPECT_EQ(bar->marks[3].x, dayOf("2026-08-31"));
    for (const ChartMark& mark : bar->marks) {
        EXPECT_DOUBLE_EQ(mark.y, 7.0);
    }
    EXPECT_NE(seriesCalled(chart, "benchmarks, unfair or unclear lot"), nullptr);
}

TEST(SeasonChart, TheBarIsTheBestBenchmarkOfTheWeekNotASelection) {
    TastedOrchard orchard;
    const auto seedling = orchard.seedling(orchard.row(1), 1, "AT17-001");
    for (const auto& tree :
         {TastedOrchard::treeOf(orchard.mother), TastedOrchard::treeOf(orchard.father), seedling}) {
        orchard.walk(tree, WalkMark::ripe, "2026-08-20");
    }
    orchard.bite(TastedOrchard::treeOf(orchard.mother), 6, "2026-08-20");
    orchard.bite(TastedOrchard::treeOf(orchard.father), 7.5, "2026-08-20");
    orchard.bite(seedling, 9, "2026-08-20");
    const ChartSpec chart = chartOf(orchard, 2026, {*seedling.genotype});
    const ChartSeries* bar = seriesCalled(chart, "bar to beat: the week's best benchmark");
    ASSERT_NE(bar, nullptr);
    EXPECT_DOUBLE_EQ(bar->marks[0].y, 7.5);
    EXPECT_THAT(bar->marks[0].tooltip, HasSubstr("Russet Moor"));
    EXPECT_EQ(seriesCalled(chart, "selected")->marks.size(), 1U);
}

TEST(SeasonChart, ASouthernSeasonRunsOverNewYearAndWeek53) {
    TastedOrchard orchard;
    orchard.moveToTheSouth();
    const auto tree = TastedOrchard::treeOf(orchard.mother);
    orchard.walk(tree, WalkMark::ripe, "2026-12-29"); // Tuesday of week 53
    orchard.walk(tree, WalkMark::over, "2027-01-12");
    orchard.bite(tree, 7, "2027-01-02"); // Saturday, still week 53 of 2026
    const ChartSpec chart = chartOf(orchard, 2026, {}, Date::of(2027, 1, 5));
    EXPECT_THAT(chart.title, HasSubstr("2026/27"));
    const ChartSeries* bar = seriesCalled(chart, "bar to beat: the week's best benchmark");
    ASSERT_NE(bar, nullptr);
    std::vector<double> steps;
    for (const ChartMark& mark : bar->marks) {
        steps.push_back(mark.x);
    }
    EXPECT_THAT(steps, ElementsAre(dayOf("2026-12-28"), dayOf("2027-01-04"), dayOf("2027-01-04"),
                                   dayOf("2027-01-11"), dayOf("2027-01-11"), dayOf("2027-01-18")));
    EXPECT_THAT(bar->marks[0].tooltip, HasSubstr("2026-W53"));
    EXPECT_THAT(bar->marks[2].tooltip, HasSubstr("2027-W01"));
    EXPECT_NE(seriesCalled(chart, "today"), nullptr);
    // The year after is another season.
    EXPECT_TRUE(chartOf(orchard, 2027).isEmpty());
}

TEST(SeasonChart, Week53Of2020HasAStepOfItsOwn) {
    TastedOrchard orchard;
    orchard.moveToTheSouth();
    const auto tree = TastedOrchard::treeOf(orchard.mother);
    orchard.walk(tree, WalkMark::ripe, "2020-12-31");
    orchard.bite(tree, 6, "2020-12-31");
    const ChartSpec chart = chartOf(orchard, 2020);
    const ChartSeries* bar = seriesCalled(chart, "bar to beat: the week's best benchmark");
    ASSERT_NE(bar, nullptr);
    ASSERT_EQ(bar->marks.size(), 2U);
    EXPECT_THAT(bar->marks[0].tooltip, HasSubstr("2020-W53"));
    EXPECT_EQ(bar->marks[1].x, dayOf("2021-01-04"));
}

TEST(SeasonChart, TodayIsDrawnOnlyInsideTheSeason) {
    TastedOrchard orchard;
    orchard.walk(TastedOrchard::treeOf(orchard.mother), WalkMark::ripe, "2025-08-20");
    EXPECT_NE(seriesCalled(chartOf(orchard, 2025, {}, Date::of(2026, 3, 31)), "today"), nullptr);
    EXPECT_EQ(seriesCalled(chartOf(orchard, 2025, {}, Date::of(2026, 4, 1)), "today"), nullptr);
}

TEST(SeasonToShow, IsTheRunningOneOrTheNewestBefore) {
    const auto show = [](const char* day, SeasonSide side) {
        return seasonToShow({2026, 2024}, *Date::fromIso(day), side).year;
    };
    EXPECT_EQ(show("2026-08-20", SeasonSide::northern), 2026);
    EXPECT_EQ(show("2026-02-20", SeasonSide::northern), 2024); // from the cellar
    EXPECT_EQ(show("2027-02-20", SeasonSide::southern), 2026);
    EXPECT_EQ(show("2026-08-20", SeasonSide::southern), 2024);
    EXPECT_EQ(show("2020-08-20", SeasonSide::northern), 2024); // nothing older: the oldest
    EXPECT_EQ(seasonToShow({}, *Date::of(2026, 8, 20), SeasonSide::northern).year, 2026);
}

TEST(SeasonSide, IsSouthernOnlyWhenNoSiteLiesInTheNorth) {
    TastedOrchard orchard;
    EXPECT_EQ(seasonSideOf(*orchard.view()), SeasonSide::northern);
    orchard.moveToTheSouth();
    EXPECT_EQ(seasonSideOf(*orchard.view()), SeasonSide::southern);
    Site other;
    other.id = SiteId(orchard.ids.make());
    other.name = "Far bank";
    other.hemisphere = Hemisphere::north;
    ChangeSet set;
    set.sentence = "Another site";
    set.create(other);
    orchard.apply(set);
    EXPECT_EQ(seasonSideOf(*orchard.view()), SeasonSide::northern);
}

TEST(SeasonsOf, ListsWalkedAndTastedYearsNewestFirst) {
    TastedOrchard orchard;
    orchard.walk(TastedOrchard::treeOf(orchard.mother), WalkMark::ripe, "2024-08-20");
    orchard.bite(TastedOrchard::treeOf(orchard.mother), 6, "2026-08-20");
    EXPECT_THAT(seasonsOf(*orchard.view(), orchard.store()), ElementsAre(2026, 2024));
}

} // namespace
} // namespace pipwright
