#include "core/season/crop_day.h"

#include "core/season/calendar_arithmetic.h"

namespace pipwright {

namespace {

Date firstDayOf(CropYear crop, SeasonSide side) {
    return dayOfAnyYear(crop.year, side == SeasonSide::northern ? 1 : 7, 1);
}

} // namespace

int dayOfCrop(Date date, CropYear crop, SeasonSide side) {
    return daysBetween(firstDayOf(crop, side), date) + 1;
}

Date dateOfCropDay(int day, CropYear crop, SeasonSide side) {
    return firstDayOf(crop, side).plusDays(day - 1);
}

} // namespace pipwright
