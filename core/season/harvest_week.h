#pragma once

#include "core/season/crop_season.h"
#include "core/season/iso_week.h"

#include <compare>
#include <string>
#include <vector>

namespace pipwright {

/// A week in which fruit of a crop year is ripe. Weeks of one crop are in the order of time, also
/// across New Year, since an ISO week carries its year; crops are in the order of their bloom.
struct HarvestWeek {
    CropYear crop;
    IsoWeek week;

    auto operator<=>(const HarvestWeek&) const = default;
};

inline HarvestWeek harvestWeekOf(Date date, CropYear crop) {
    return {crop, isoWeekOf(date)};
}

/// "2026-W34" in the north while the week lies in the crop's own year; else the crop comes first:
/// "2025/26 W03" in the south, "2026 crop, 2027-W03" for a keeper in the north.
std::string label(HarvestWeek week, SeasonSide side);

/// The 52 or 53 weeks of a crop in the order of time: those whose Thursday is one of its fruit
/// days. Every week belongs to exactly one crop of a side.
std::vector<IsoWeek> weeksOf(CropYear crop, SeasonSide side);

/// How many places an axis has on which several crops lie over each other: one for each week
/// number, week 53 with a place of its own that stays empty in years without it.
inline constexpr int kSeasonPlaces = 53;

/// The place (0 to 52) of a week number (1 to 53) on that axis. The axis starts with week 14 in
/// the north and with week 40 in the south, so week 1 follows week 53 in the middle of it.
int seasonPlace(int weekNumber, SeasonSide side);

/// The week number at a place: the inverse of seasonPlace.
int weekNumberAt(int place, SeasonSide side);

} // namespace pipwright
