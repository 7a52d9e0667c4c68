#pragma once

#include <string_view>

/// Keys of the shipped traits that are measured on fruit, which core/fruit reckons with.
namespace pipwright::trait_key {

inline constexpr std::string_view kSolubleSolids = "soluble_solids";
inline constexpr std::string_view kAcidity = "acidity";
inline constexpr std::string_view kFirmness = "firmness";
inline constexpr std::string_view kStarchEight = "starch_8";
inline constexpr std::string_view kStarchTen = "starch_10";

} // namespace pipwright::trait_key
