#include "core/season/day_temperatures.h"

#include "core/season/air_temperature.h"

#include <algorithm>

namespace pipwright {

namespace {

Problem wrongDay(Date date, const std::string& what, const std::string& remedy) {
    return {ProblemCode::badInput, "The weather of " + date.iso() + " " + what, remedy, ""};
}

bool isPossible(const std::optional<Celsius>& temperature) {
    return !temperature || isAirTemperature(*temperature);
}

} // namespace

Outcome checkDays(std::span<const DayTemperatures> days) {
    for (std::size_t i = 0; i < days.size(); ++i) {
        const DayTemperatures& day = days[i];
        if (!isPossible(day.lowest) || !isPossible(day.highest)) {
            return wrongDay(day.date, "has a temperature that air cannot have.",
                            "Look whether the unit or the point is amiss.");
        }
        if (day.isWhole() && *day.lowest > *day.highest) {
            return wrongDay(day.date, "has a lowest temperature above the highest.",
                            "Look whether the two were swapped.");
        }
        if (i > 0 && days[i - 1].date == day.date) {
            return wrongDay(day.date, "is there twice.", "Keep one of the two.");
        }
        if (i > 0 && days[i - 1].date > day.date) {
            return wrongDay(day.date, "stands behind a later day.", "Put the days in order.");
        }
    }
    return {};
}

std::vector<DayTemperatures> withoutGaps(std::span<const DayTemperatures> days, DaySpan span) {
    std::vector<DayTemperatures> all;
    all.reserve(static_cast<std::size_t>(span.dayCount()));
    auto known =
        std::lower_bound(days.begin(), days.end(), span.first,
                         [](const DayTemperatures& day, Date date) { return day.date < date; });
    for (Date date = span.first; date <= span.last; date = date.plusDays(1)) {
        const bool there = known != days.end() && known->date == date;
        all.push_back(there ? *known++ : DayTemperatures{date, std::nullopt, std::nullopt});
    }
    return all;
}

} // namespace pipwright
