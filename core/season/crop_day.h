#pragma once

#include "core/season/crop_season.h"

namespace pipwright {

/// The number of a day within its crop, so that both hemispheres lie over each other: 1 for
/// 1 January of the crop year in the north and for 1 July of it in the south. It goes on across
/// New Year (the fruit of southern crop 2023 picked on 20 February 2024 is day 235) and beyond
/// 366 for keepers; it is below 1 before the crop's year begins. A leap day shifts it by one, so
/// calendar days of different years are compared as CalendarDay, not by it.
int dayOfCrop(Date date, CropYear crop, SeasonSide side);

/// The day with that number: the inverse of dayOfCrop.
Date dateOfCropDay(int day, CropYear crop, SeasonSide side);

} // namespace pipwright
