#pragma once

#include "core/season/crop_year.h"
#include "core/season/date.h"
#include "core/season/day_span.h"
#include "core/units/result.h"

#include <string>
#include <string_view>

namespace pipwright {

/// When the trees of a site bloom: about March to June in the north, August to November in
/// the south.
enum class SeasonSide { northern, southern };

/// What a record with a date is about.
enum class CropRecord {
    flower, ///< bloom, pollination, frost on the blossom
    fruit,  ///< fruit on the tree, on the ground, on the table or in store
};

/// The crop year to offer for a record of that day; the breeder may choose another.
/// Flowers belong to the calendar year of the day. Fruit belongs to the latest bloom that can have
/// made it: in the north a day of January to March belongs to the year before (keepers tasted
/// from the cellar), any later day to its own year; in the south a day of October to December
/// belongs to its own year (the bloom just past), any earlier day to the year before.
CropYear proposedCropYear(Date date, SeasonSide side, CropRecord about);

/// The days for which proposedCropYear offers this year for fruit: 1 April to 31 March in the
/// north, 1 October to 30 September in the south.
DaySpan fruitDaysOf(CropYear crop, SeasonSide side);

/// "2026" in the north; "2025/26" in the south, where the fruit of one bloom spans New Year.
std::string label(CropYear crop, SeasonSide side);

/// Reads either label: "2026", "2025/26" or "2025/2026".
Result<CropYear> readCropYear(std::string_view text);

} // namespace pipwright
