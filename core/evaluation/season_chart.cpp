#include "core/evaluation/season_chart.h"

#include "core/evaluation/tree_life.h"
#include "core/evaluation/usual_ripening.h"
#include "core/season/iso_week.h"

#include <algorithm>
#include <array>
#include <cstdio>
#include <map>
#include <set>

namespace pipwright {

namespace {

struct Walked {
    Index genotype = 0;
    bool benchmark = false;
    ObservedWindow window;
    std::vector<TastedLot> lots;
};

std::string number(double value) {
    std::array<char, 32> text{};
    const int length = std::snprintf(text.data(), text.size(), "%.1f", value);
    return {text.data(), static_cast<std::size_t>(length)};
}

double dayOf(Date date) {
    return static_cast<double>(date.days());
}

Result<Walked> walkedIn(const OrchardView& view, const Store& store, Index genotype,
                        CropYear cropYear) {
    auto life = lifeOfGenotype(view, store, genotype);
    if (!life) {
        return life.problem();
    }
    Walked walked;
    walked.genotype = genotype;
    walked.benchmark = view.genotypes()[genotype].benchmark;
    for (LifeYear& year : life->years) {
        if (year.cropYear == cropYear.year) {
            walked.window = year.window;
            walked.lots = std::move(year.tastings);
        }
    }
    return walked;
}

std::string windowStory(const std::string& name, const ObservedWindow& window,
                        const SeasonChartWords& words) {
    std::string story = name;
    const auto add = [&story](const std::string& word, const std::optional<Date>& day) {
        if (day) {
            story += "; " + word + " " + day->iso();
        }
    };
    add(words.stillGreen, window.stillGreen);
    add(words.seenRipe, window.firstRipe);
    if (window.lastRipe != window.firstRipe) {
        add(words.seenRipe, window.lastRipe);
    }
    add(words.over, window.over);
    return story;
}

/// From the day it may first have been ripe to the day it was certainly over; the core is what was
/// seen ripe.
std::optional<ChartMark> spanOf(const OrchardView& view, const Walked& walked, double lane,
                                const SeasonChartWords& words) {
    const ObservedWindow& window = walked.window;
    if (!window.firstRipe) {
        return std::nullopt;
    }
    ChartMark mark;
    mark.y = lane;
    const Date first = window.stillGreen.value_or(*window.firstRipe);
    const Date last = window.over.value_or(window.lastRipe.value_or(*window.firstRipe));
    mark.x = dayOf(*window.firstRipe);
    mark.xInterval = ChartInterval{dayOf(first), dayOf(last)};
    mark.core = ChartInterval{dayOf(*window.firstRipe),
                              dayOf(window.lastRipe.value_or(*window.firstRipe)) + 1};
    mark.uncertain = !window.stillGreen || !window.over;
    const GenotypeEntry& entry = view.genotypes()[walked.genotype];
    mark.tooltip = windowStory(entry.called(), window, words);
    mark.id = entry.id.uuid.text();
    return mark;
}

void addLots(const OrchardView& view, const Walked& walked, ChartSeries& fair, ChartSeries& unfair,
             const SeasonChartWords& words) {
    const GenotypeEntry& entry = view.genotypes()[walked.genotype];
    for (const TastedLot& lot : walked.lots) {
        const auto mean = lot.meanLiking();
        if (!mean) {
            continue;
        }
        ChartMark mark;
        mark.x = dayOf(lot.tasting.date);
        mark.y = *mean;
        double low = *mean;
        double high = *mean;
        for (const Score& score : lot.scores) {
            low = std::min(low, score.liking.value_or(low));
            high = std::max(high, score.liking.value_or(high));
        }
        if (high > low) {
            mark.yInterval = ChartInterval{low, high};
        }
        mark.uncertain = !lot.fairness.fair();
        mark.id = entry.id.uuid.text();
        mark.tooltip = entry.called() + ", " + lot.tasting.date.iso() + ": " + number(*mean) +
                       " (" + number(low) + " - " + number(high) + "), " +
                       std::to_string(lot.scores.size()) + " " + words.scores + "; " +
                       (lot.fairness.fair() ? words.fairLot : words.unfairLot);
        (lot.fairness.fair() ? fair : unfair).marks.push_back(std::move(mark));
    }
}

/// For each week of the season the best benchmark whose window covers it.
ChartSeries barToBeat(const OrchardView& view, const std::vector<Walked>& all,
                      const SeasonChartWords& words) {
    struct Best {
        double liking = 0;
        Index genotype = 0;
    };
    std::map<IsoWeek, Best> best;
    for (const Walked& walked : all) {
        if (!walked.benchmark || !walked.window.firstRipe) {
            continue;
        }
        double sum = 0;
        int count = 0;
        for (const TastedLot& lot : walked.lots) {
            for (const Score& score : lot.scores) {
                if (lot.fairness.fair() && score.liking) {
                    sum += *score.liking;
                    ++count;
                }
            }
        }
        if (count == 0) {
            continue;
        }
        const Date last = walked.window.over
                              ? walked.window.over->plusDays(-1)
                              : walked.window.lastRipe.value_or(*walked.window.firstRipe);
        for (IsoWeek week = isoWeekOf(*walked.window.firstRipe); week <= isoWeekOf(last);
             week = plusWeeks(week, 1)) {
            const auto [at, fresh] = best.try_emplace(week, Best{sum / count, walked.genotype});
            if (!fresh && sum / count > at->second.liking) {
                at->second = {sum / count, walked.genotype};
            }
        }
    }
    ChartSeries bar;
    bar.name = words.barToBeat;
    bar.kind = SeriesKind::line;
    bar.colour = {ColourRole::attention, 0};
    for (const auto& [week, one] : best) {
        const GenotypeEntry& entry = view.genotypes()[one.genotype];
        for (const int edge : {0, 7}) { // a step as wide as the week
            ChartMark mark;
            mark.x = dayOf(firstDay(week).plusDays(edge));
            mark.y = one.liking;
            mark.id = entry.id.uuid.text();
            mark.tooltip = label(week) + ": " + entry.called() + ", " + number(one.liking);
            bar.marks.push_back(std::move(mark));
        }
    }
    return bar;
}

/// Wide enough for what usually ripens, whether it was walked already or not: a season half over
/// is not drawn as if it ended today. Nothing is said where nothing usual is known.
void spanSeason(const OrchardView& view, const std::vector<Index>& genotypes,
                const SeasonChartRequest& request, ChartSpec& chart) {
    constexpr int kDaysBefore = 7;
    constexpr int kDaysGood = 28; // from the last first ripe day on
    std::optional<double> low;
    std::optional<double> high;
    const auto reach = [&low, &high](double from, double to) {
        low = std::min(low.value_or(from), from);
        high = std::max(high.value_or(to), to);
    };
    for (const Index genotype : genotypes) {
        if (const auto usual = view.genotypeFacts(genotype).usualRipeDay) {
            const Date ripe = dateInCalendar(*usual, request.cropYear.year);
            reach(dayOf(ripe.plusDays(-kDaysBefore)), dayOf(ripe.plusDays(kDaysGood)));
        }
    }
    if (!low) {
        return;
    }
    for (const ChartSeries& series : chart.series) {
        for (const ChartMark& mark : series.marks) {
            reach(mark.x, mark.x);
            if (mark.xInterval) {
                reach(mark.xInterval->low, mark.xInterval->high);
            }
        }
    }
    chart.xAxis.low = low;
    chart.xAxis.high = high;
}

bool wanted(const GenotypeEntry& entry, const SeasonChartRequest& request) {
    return entry.benchmark && !entry.erased &&
           (!request.species || entry.species == request.species);
}

} // namespace

Result<ChartSpec> seasonChart(const OrchardView& view, const Store& store,
                              const SeasonChartRequest& request) {
    std::vector<Index> genotypes;
    for (Index i = 0; i < view.genotypes().size(); ++i) {
        if (wanted(view.genotypes()[i], request)) {
            genotypes.push_back(i);
        }
    }
    for (const Index one : request.genotypes) {
        if (std::find(genotypes.begin(), genotypes.end(), one) == genotypes.end()) {
            genotypes.push_back(one);
        }
    }
    std::vector<Walked> all;
    for (const Index genotype : genotypes) {
        auto walked = walkedIn(view, store, genotype, request.cropYear);
        if (!walked) {
            return walked.problem();
        }
        const auto chosen = std::find(request.genotypes.begin(), request.genotypes.end(), genotype);
        if (!walked->window.empty() || !walked->lots.empty() || chosen != request.genotypes.end()) {
            all.push_back(std::move(*walked));
        }
    }
    std::stable_sort(all.begin(), all.end(), [](const Walked& a, const Walked& b) {
        return a.window.firstRipe.value_or(Date::fromDays(1'000'000)) <
               b.window.firstRipe.value_or(Date::fromDays(1'000'000));
    });

    const SeasonChartWords& words = request.words;
    ChartSpec chart;
    const SeasonSide side = seasonSideOf(view);
    chart.title = words.title + " " + label(request.cropYear, side);
    chart.emptyText = words.empty;
    chart.xAxis = {AxisKind::week, words.day};
    chart.yAxis = {AxisKind::numeric, words.liking, {}, {}, 1.0, 9.0};
    ChartSeries benchmarks{words.benchmarks, SeriesKind::spans, {ColourRole::secondInk, 0}};
    ChartSeries selections{words.selections, SeriesKind::spans, {ColourRole::action, 0}};
    ChartSeries fairBenchmarks{
        words.benchmarks + ", " + words.fairLot, SeriesKind::points, {ColourRole::secondInk, 0}};
    ChartSeries unfairBenchmarks{
        words.benchmarks + ", " + words.unfairLot, SeriesKind::points, {ColourRole::secondInk, 0}};
    ChartSeries fairSelections{
        words.selections + ", " + words.fairLot, SeriesKind::points, {ColourRole::action, 0}};
    ChartSeries unfairSelections{
        words.selections + ", " + words.unfairLot, SeriesKind::points, {ColourRole::action, 0}};
    for (const Walked& walked : all) {
        const auto lane = static_cast<double>(chart.lanes.size());
        const bool chosen = std::find(request.genotypes.begin(), request.genotypes.end(),
                                      walked.genotype) != request.genotypes.end();
        if (auto span = spanOf(view, walked, lane, words)) {
            chart.lanes.push_back(view.genotypes()[walked.genotype].called());
            (chosen ? selections : benchmarks).marks.push_back(std::move(*span));
        }
        addLots(view, walked, chosen ? fairSelections : fairBenchmarks,
                chosen ? unfairSelections : unfairBenchmarks, words);
    }
    ChartSeries bar = barToBeat(view, all, words);
    for (ChartSeries* series : {&benchmarks, &selections, &bar, &fairBenchmarks, &unfairBenchmarks,
                                &fairSelections, &unfairSelections}) {
        if (!series->marks.empty()) {
            chart.series.push_back(std::move(*series));
        }
    }
    const DaySpan season = fruitDaysOf(request.cropYear, side);
    if (request.today && !chart.series.empty() && season.contains(*request.today)) {
        ChartSeries today{words.today, SeriesKind::verticalRule, {ColourRole::link, 0}};
        ChartMark mark;
        mark.x = dayOf(*request.today);
        mark.label = words.today;
        mark.tooltip = words.today + " " + request.today->iso();
        today.marks.push_back(mark);
        chart.series.push_back(std::move(today));
    }
    if (!chart.series.empty()) {
        spanSeason(view, genotypes, request, chart);
    }
    return chart;
}

SeasonSide seasonSideOf(const OrchardView& view) {
    bool south = false;
    for (const Site& site : view.sites()) {
        if (site.hemisphere == Hemisphere::north) {
            return SeasonSide::northern;
        }
        south = south || site.hemisphere == Hemisphere::south;
    }
    return south ? SeasonSide::southern : SeasonSide::northern;
}

CropYear seasonToShow(const std::vector<int>& seasons, Date today, SeasonSide side) {
    const CropYear running = proposedCropYear(today, side, CropRecord::fruit);
    for (const int year : seasons) { // newest first
        if (year <= running.year) {
            return {year};
        }
    }
    return seasons.empty() ? running : CropYear{seasons.back()};
}

std::vector<int> seasonsOf(const OrchardView& view, const Store& store) {
    std::set<int> years;
    const Trait* walk = view.traitByKey("ripening_state");
    if (walk != nullptr) {
        if (const auto marks = store.where<Observation>("trait", walk->id.uuid)) {
            for (const Observation& one : *marks) {
                if (one.cropYear) {
                    years.insert(one.cropYear->year);
                }
            }
        }
    }
    (void)store.scan(Kind::lot, {}, [&years](const Record& record) {
        const auto lot = fromRecord<Lot>(record);
        if (lot.cropYear) {
            years.insert(lot.cropYear->year);
        }
        return true;
    });
    return {years.rbegin(), years.rend()};
}

} // namespace pipwright
