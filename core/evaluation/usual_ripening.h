#pragma once

#include "core/season/date.h"

#include <optional>
#include <vector>

/// The one rule by which a usual harvest is named, on the map, in Compare and in lists: the usual
/// first ripe day is the median over crop years, counted in days of the crop year; its week is the
/// ISO week of that day in one calendar, that of the year worked in. So two trees of one day never
/// stand in different weeks because one of them was seen ripe in another year.
namespace pipwright {

/// Days from 1 January of the crop year, which is day 1; a southern season runs on past 365.
std::optional<int> dayOfCropYear(int cropYear, const std::optional<Date>& date);

/// The middle one; of two in the middle their mean, rounded down.
std::optional<int> medianDay(std::vector<int> days);

/// The date of such a day in the calendar of a year.
Date dateInCalendar(int dayOfCropYear, int calendarYear);

/// The ISO week number of that date.
int harvestWeekIn(int dayOfCropYear, int calendarYear);

} // namespace pipwright
