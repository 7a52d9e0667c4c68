#pragma once

#include "core/evaluation/orchard_view.h"
#include "core/season/crop_season.h"
#include "core/statistics/chart_spec.h"

#include <optional>
#include <string>
#include <vector>

namespace pipwright {

/// The words of the chart, so that the window can give them in the user's language.
struct SeasonChartWords {
    std::string title = "Harvest windows and liking";
    std::string empty = "Walk marks and tastings of this crop year will fill this chart.";
    std::string day = "day";
    std::string liking = "liking as eaten (1 to 9)";
    std::string benchmarks = "benchmarks";
    std::string selections = "selected";
    std::string barToBeat = "bar to beat: the week's best benchmark";
    std::string fairLot = "fair lot";
    std::string unfairLot = "unfair or unclear lot";
    std::string today = "today";
    std::string stillGreen = "still green";
    std::string seenRipe = "seen ripe";
    std::string over = "over";
    std::string scores = "scores";
};

struct SeasonChartRequest {
    CropYear cropYear;
    std::vector<Index> genotypes;     ///< the selections; benchmarks come by themselves
    std::optional<SpeciesId> species; ///< benchmarks of this species only
    std::optional<Date> today;        ///< drawn as a hairline when inside the season
    SeasonChartWords words;
};

/// By ISO week of one crop year: the windows of benchmarks and selections as walked (one lane
/// each, open where an end was not seen), the liking of every lot tasted (mean of its scores as
/// eaten, with their range), and, week by week, the best mean liking of a benchmark whose window
/// covers the week: the bar to beat.
Result<ChartSpec> seasonChart(const OrchardView& view, const Store& store,
                              const SeasonChartRequest& request);

/// By whose seasons the book's crop years are named: southern when every site that says so lies in
/// the south ("2025/26"), else northern.
SeasonSide seasonSideOf(const OrchardView& view);

/// The crop year to show on that day: the running one when anything of it was walked or tasted,
/// else the newest before it; the running one when the book has none. `seasons` as of seasonsOf.
CropYear seasonToShow(const std::vector<int>& seasons, Date today, SeasonSide side);

/// The crop years in which anything was walked or tasted, newest first.
std::vector<int> seasonsOf(const OrchardView& view, const Store& store);

} // namespace pipwright
