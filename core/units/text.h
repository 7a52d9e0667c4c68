#pragma once

#include <compare>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace pipwright {

/// The text without blanks (space, tab, line ends, no-break space) at both ends.
std::string_view trimmed(std::string_view text);

/// The parts between the separators, blanks kept: "a,,b" has three parts, "" has one.
std::vector<std::string_view> split(std::string_view text, char separator);

/// The byte offset of the first byte that is not part of well-formed UTF-8 (RFC 3629: no overlong
/// forms, no surrogates, nothing above U+10FFFF); nothing when all is well.
std::optional<std::size_t> firstBadUtf8(std::string_view text);

/// The number of characters (code points) in the text; a bad byte counts as one.
std::size_t characterCount(std::string_view text);

/// The text as a finder compares it: lower case, Latin letters without their accents ("Éclair" is
/// "eclair", "Groß" is "gross"), curly apostrophes straight, a multiplication sign as "x", runs of
/// blanks as one space, none at the ends. Bytes that are not UTF-8 stay as they are.
std::string foldedForSearch(std::string_view text);

/// A text whose bytes sort as a reader expects: as foldedForSearch, and runs of digits by their
/// value, so that "row 2" stands before "row 10". Make it once a name when many are sorted.
std::string naturalSortKey(std::string_view text);

/// The order of naturalSortKey; texts that differ only in case, accents or leading zeros are then
/// ordered by their bytes, so only identical texts are equal.
std::strong_ordering naturalOrder(std::string_view left, std::string_view right);

/// naturalOrder for std::sort, std::map and the like.
struct NaturalLess {
    using is_transparent = void;
    bool operator()(std::string_view left, std::string_view right) const {
        return std::is_lt(naturalOrder(left, right));
    }
};

} // namespace pipwright
