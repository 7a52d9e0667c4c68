#pragma once

#include <array>
#include <cstdint>
#include <span>
#include <string>
#include <string_view>

namespace pipwright {

/// SHA-256 (FIPS 180-4) of the bytes.
std::array<std::uint8_t, 32> sha256(std::string_view bytes);

/// 64 lower-case hexadecimal digits.
std::string hexOf(const std::array<std::uint8_t, 32>& hash);

} // namespace pipwright
