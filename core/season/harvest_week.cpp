#include "core/season/harvest_week.h"

#include <array>
#include <cstdio>

namespace pipwright {

namespace {

constexpr int kThursday = 3; // days after the week's Monday

int firstWeekNumber(SeasonSide side) {
    return side == SeasonSide::northern ? 14 : 40;
}

std::string shortWeek(int week) {
    std::array<char, 32> text{};
    const int length = std::snprintf(text.data(), text.size(), "W%02d", week);
    return {text.data(), static_cast<std::size_t>(length)};
}

} // namespace

std::string label(HarvestWeek week, SeasonSide side) {
    if (side == SeasonSide::southern) {
        return label(week.crop, side) + " " + shortWeek(week.week.week);
    }
    if (week.week.year == week.crop.year) {
        return label(week.week);
    }
    return label(week.crop, side) + " crop, " + label(week.week);
}

std::vector<IsoWeek> weeksOf(CropYear crop, SeasonSide side) {
    const DaySpan days = fruitDaysOf(crop, side);
    std::vector<IsoWeek> weeks;
    IsoWeek week = isoWeekOf(days.first);
    if (!days.contains(firstDay(week).plusDays(kThursday))) {
        week = plusWeeks(week, 1);
    }
    while (days.contains(firstDay(week).plusDays(kThursday))) {
        weeks.push_back(week);
        week = plusWeeks(week, 1);
    }
    return weeks;
}

int seasonPlace(int weekNumber, SeasonSide side) {
    return (weekNumber - firstWeekNumber(side) + kSeasonPlaces) % kSeasonPlaces;
}

int weekNumberAt(int place, SeasonSide side) {
    return (place + firstWeekNumber(side) - 1) % kSeasonPlaces + 1;
}

} // namespace pipwright
