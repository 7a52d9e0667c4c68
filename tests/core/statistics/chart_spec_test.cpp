#include "core/statistics/chart_spec.h"

#include <cmath>
#include <gtest/gtest.h>

namespace pipwright {
namespace {

constexpr double kSaturday22August2026 = 20687;

ChartSpec seasonOfTwo() {
    ChartSpec spec;
    spec.title = "Windows";
    spec.xAxis = {AxisKind::week, "picked", "", {}, {}, {}, 0};
    spec.yAxis = {AxisKind::numeric, "liking", "of 9", {}, 1.0, 9.0, 1};
    spec.lanes = {"Benchmarks"};
    ChartMark window;
    window.y = 0;
    window.xInterval = {kSaturday22August2026, kSaturday22August2026 + 9};
    window.label = "Red \"Early\", old";
    ChartMark point;
    point.x = kSaturday22August2026;
    point.y = 7.44;
    point.yInterval = {6.8, 8.04};
    point.uncertain = true;
    point.tooltip = "two lots";
    spec.series = {{"benchmarks", SeriesKind::spans, {}, {window}, false},
                   {"own", SeriesKind::points, {}, {point}, false}};
    return spec;
}

TEST(ChartSpec, TableSaysEveryMarkWithItsInterval) {
    const ChartTable table = seasonOfTwo().toTable();
    ASSERT_EQ(table.rows.size(), 2U);
    EXPECT_EQ(table.header[5], "liking (of 9)");
    const std::vector<std::string> window{"benchmarks",
                                          "Benchmarks, Red \"Early\", old",
                                          "",
                                          "2026-08-22 (2026-W34)",
                                          "2026-08-31 (2026-W36)",
                                          "",
                                          "",
                                          "",
                                          "",
                                          ""};
    EXPECT_EQ(table.rows[0], window);
    const std::vector<std::string> point{
        "own", "", "2026-08-22 (2026-W34)", "", "", "7.4", "6.8", "8.0", "yes", "two lots"};
    EXPECT_EQ(table.rows[1], point);
}

TEST(ChartSpec, CsvQuotesWhatNeedsIt) {
    const std::string csv = seasonOfTwo().toTable().csv();
    EXPECT_NE(csv.find("benchmarks,\"Benchmarks, Red \"\"Early\"\", old\",,2026-08-22"),
              std::string::npos);
    EXPECT_EQ(csv.substr(csv.size() - 2), "\r\n");
}

TEST(ChartSpec, RangeTakesTheAxisFirstThenTheMarks) {
    const ChartSpec spec = seasonOfTwo();
    EXPECT_EQ(rangeOfY(spec), (ChartInterval{1, 9}));
    const ChartInterval days = rangeOfX(spec);
    EXPECT_NEAR(days.low, kSaturday22August2026 - 0.36, 1e-9);
    EXPECT_NEAR(days.high, kSaturday22August2026 + 9.36, 1e-9);
}

TEST(ChartSpec, EmptyChartStillHasARange) {
    ChartSpec spec;
    EXPECT_TRUE(spec.isEmpty());
    EXPECT_EQ(rangeOfX(spec), (ChartInterval{0, 1}));
    spec.series.push_back({"none", SeriesKind::points, {}, {}, false});
    EXPECT_TRUE(spec.isEmpty());
    EXPECT_TRUE(spec.toTable().rows.empty());
}

TEST(ChartSpec, LoneValueGetsRoom) {
    ChartSpec spec;
    spec.series.push_back({"one", SeriesKind::points, {}, {ChartMark{.x = 3, .y = 5}}, false});
    EXPECT_EQ(rangeOfX(spec), (ChartInterval{2.5, 3.5}));
}

TEST(ChartWeeks, NewYearAndWeek53) {
    // 2020 has 53 ISO weeks; week 53 runs from 28 December 2020 to 3 January 2021.
    constexpr double k26December2020 = 18622;
    const auto weeks = weeksBetween(k26December2020, k26December2020 + 10);
    ASSERT_EQ(weeks.size(), 3U);
    EXPECT_EQ(weeks[0].week, 52);
    EXPECT_EQ(weeks[1], (ChartWeek{18624, 2020, 53}));
    EXPECT_EQ(weeks[2], (ChartWeek{18631, 2021, 1}));
}

TEST(ChartWeeks, MonthsCrossTheYear) {
    const auto months = monthsBetween(18622, 18622 + 40);
    ASSERT_EQ(months.size(), 3U);
    EXPECT_EQ(months[0].month, 12);
    EXPECT_EQ(months[1], (ChartMonth{18628, 2021, 1}));
    EXPECT_EQ(months[2].month, 2);
}

TEST(ChartTicks, AreRoundAndInside) {
    EXPECT_EQ(axisTicks({1, 9}, 5), (std::vector<double>{2, 4, 6, 8}));
    const auto fine = axisTicks({0, 0.5}, 5);
    ASSERT_EQ(fine.size(), 6U);
    EXPECT_DOUBLE_EQ(fine[3], 0.3);
    EXPECT_TRUE(axisTicks({2, 2}, 5).empty());
}

TEST(ChartAxisText, NumbersCategoriesAndNonsense) {
    EXPECT_EQ(axisValueText({AxisKind::numeric, "", "g", {}, {}, {}, 1}, -0.04), "0.0");
    EXPECT_EQ(axisValueText({AxisKind::category, "", "", {"a", "b"}, {}, {}, 0}, 1), "b");
    EXPECT_EQ(axisValueText({AxisKind::category, "", "", {"a", "b"}, {}, {}, 0}, 2), "");
    EXPECT_EQ(axisValueText({}, std::nan("")), "");
}

} // namespace
} // namespace pipwright
