#include "core/season/crop_season.h"

#include "core/season/calendar_arithmetic.h"
#include "core/units/digits.h"
#include "core/units/text.h"

#include <array>
#include <cstdio>
#include <optional>

namespace pipwright {

namespace {

/// The month in which fruit of a new bloom is first expected.
unsigned firstFruitMonth(SeasonSide side) {
    return side == SeasonSide::northern ? 4U : 10U;
}

Problem notACropYear(std::string_view text) {
    return {ProblemCode::badInput, "\"" + std::string{text} + "\" is not a crop year.",
            "Type the year of the bloom as 2026, or as 2025/26 where the harvest spans New Year.",
            ""};
}

} // namespace

CropYear proposedCropYear(Date date, SeasonSide side, CropRecord about) {
    const bool fromEarlierBloom =
        about == CropRecord::fruit && date.month() < firstFruitMonth(side);
    return {fromEarlierBloom ? date.year() - 1 : date.year()};
}

DaySpan fruitDaysOf(CropYear crop, SeasonSide side) {
    const unsigned month = firstFruitMonth(side);
    return {dayOfAnyYear(crop.year, month, 1), dayOfAnyYear(crop.year + 1, month, 1).plusDays(-1)};
}

std::string label(CropYear crop, SeasonSide side) {
    std::array<char, 32> text{};
    const int length = side == SeasonSide::northern
                           ? std::snprintf(text.data(), text.size(), "%04d", crop.year)
                           : std::snprintf(text.data(), text.size(), "%04d/%02d", crop.year,
                                           (crop.year + 1) % 100);
    return {text.data(), static_cast<std::size_t>(length)};
}

Result<CropYear> readCropYear(std::string_view text) {
    const auto parts = split(trimmed(text), '/');
    const auto year = parts[0].size() == 4 ? numberOf(parts[0]) : std::nullopt;
    if (!year || parts.size() > 2) {
        return notACropYear(text);
    }
    if (parts.size() == 2) {
        const bool shortForm = parts[1].size() == 2;
        const auto next = shortForm || parts[1].size() == 4 ? numberOf(parts[1]) : std::nullopt;
        if (!next || *next != (shortForm ? (*year + 1) % 100 : *year + 1)) {
            return notACropYear(text);
        }
    }
    return CropYear{*year};
}

} // namespace pipwright
