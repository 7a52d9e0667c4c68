#pragma once

#include "core/units/result.h"

#include <cstdint>
#include <span>
#include <string>
#include <vector>

namespace pipwright {

/// Codes that are remembered from earlier sittings at most; older ones may come again.
inline constexpr std::size_t kMostCodesRemembered = 200;

/// Three-digit codes for so many lots, in rising order: three different digits, the first not 0;
/// none of those that read as a number upside down (0, 1, 6, 8, 9 only, as 168 and 891); any two
/// differ in at least two digits, so that a slip of the pen does not lead to another lot; none of
/// `used` (newest first; what is behind kMostCodesRemembered is not looked at). The same draw gives
/// the same codes on every machine. Problem: more than 12 lots, or no lot.
Result<std::vector<std::string>> servingCodes(int lots, std::span<const std::string> used,
                                              std::uint64_t draw);

/// What a code says to whoever sees it upside down: "168" is "891"; empty when it says nothing.
std::string upsideDown(const std::string& code);

} // namespace pipwright
