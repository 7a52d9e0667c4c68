#include "core/evaluation/usual_ripening.h"

#include "core/season/iso_week.h"

#include <algorithm>

namespace pipwright {

std::optional<int> dayOfCropYear(int cropYear, const std::optional<Date>& date) {
    const auto newYear = Date::of(cropYear, 1, 1);
    return newYear && date ? std::optional(daysBetween(*newYear, *date) + 1) : std::nullopt;
}

std::optional<int> medianDay(std::vector<int> days) {
    if (days.empty()) {
        return std::nullopt;
    }
    std::sort(days.begin(), days.end());
    const std::size_t middle = days.size() / 2;
    return days.size() % 2 == 1 ? days[middle] : (days[middle - 1] + days[middle]) / 2;
}

Date dateInCalendar(int dayOfCropYear, int calendarYear) {
    return Date::of(calendarYear, 1, 1).value_or(Date{}).plusDays(dayOfCropYear - 1);
}

int harvestWeekIn(int dayOfCropYear, int calendarYear) {
    return isoWeekOf(dateInCalendar(dayOfCropYear, calendarYear)).week;
}

} // namespace pipwright
