#pragma once

#include "core/orchard/words.h"
#include "core/units/result.h"

#include <optional>
#include <string>
#include <string_view>

namespace pipwright {

/// What a taster wrote beside a lot, in one cell of a sheet.
struct TypedScore {
    std::optional<double> liking; ///< 1 to 9, halves
    Verdict verdict = Verdict::unknown;
    std::string words;

    [[nodiscard]] bool empty() const {
        return !liking && verdict == Verdict::unknown && words.empty();
    }
};

/// Reads such a cell: a liking, a mark for the verdict, then free words, each of which may be
/// missing: "7", "7.5 crisp, sharp", "7h + melting", "spat it out". Halves are written 7.5, 7,5, 7½
/// or 7h. Marks of the verdict, alone between blanks: x cull, - no reason to keep, ? taste again,
/// + watch, ++ back up now, P for a parent only, N talk of a name. A liking outside 1 to 9 or
/// between the halves is refused, with the remedy.
Result<TypedScore> readTypedScore(std::string_view typed);

/// The mark of a verdict as above; "" for unknown.
std::string_view markOf(Verdict verdict);

/// What readTypedScore reads as this.
std::string typedText(const TypedScore& score);

} // namespace pipwright
