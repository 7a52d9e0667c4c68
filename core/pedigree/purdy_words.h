#pragma once

#include "core/units/text.h"

#include <string_view>

namespace pipwright {

// What reader and writer of Purdy lines agree on beside the slashes.

/// A cross has a number of at most two digits, and a parent recurs at most so often.
inline constexpr int kLatestCross = 99;
inline constexpr int kMostDoses = 20;

inline bool meansUnknown(std::string_view word) {
    return word == "?";
}

inline bool meansOpenPollination(std::string_view word) {
    const auto folded = foldedForSearch(word);
    return folded == "op" || folded == "o.p." || folded == "o.p" || folded == "open";
}

inline bool meansSelfing(std::string_view word) {
    const auto folded = foldedForSearch(word);
    return folded == "self" || folded == "selfed" || folded == "\xE2\x8A\x97"; // crossed circle
}

} // namespace pipwright
