#pragma once

#include "core/exchange/table_recipe.h"
#include "core/season/inexact_date.h"
#include "core/units/text.h"

#include <algorithm>
#include <cstdint>
#include <string>
#include <string_view>

namespace pipwright {

/// Reads a date as it stands in somebody's table: ISO 8601 always, three numbers in the order
/// given, else whatever readInexactDate takes.
Result<InexactDate> readCellDate(std::string_view text, DateOrder order);
/// Reads a number with the decimal mark given; blanks and a unit behind it are refused.
Result<double> readCellNumber(std::string_view text, char decimalMark);
Result<std::int64_t> readCellWholeNumber(std::string_view text);

/// A word without case, accents and blanks, and with "_" as a blank: "Not  yet" is "not_yet".
std::string wordKey(std::string_view text);

/// The word of a vocabulary that the cell spells; the Problem lists them.
template <typename Enum>
Result<Enum> readCellWord(std::string_view text) {
    std::string known;
    for (const auto& word : Words<Enum>::words) {
        if (wordKey(word.key) == wordKey(text)) {
            return word.value;
        }
        std::string spelled(word.key);
        std::replace(spelled.begin(), spelled.end(), '_', ' ');
        known += (known.empty() ? "" : ", ") + spelled;
    }
    return Problem{ProblemCode::badInput,
                   "\"" + std::string(text) + "\" is not one of the words known here.",
                   "Use one of: " + known + "; or give this spelling a meaning in the recipe.", ""};
}

} // namespace pipwright
