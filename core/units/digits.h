#pragma once

#include <optional>
#include <string_view>

namespace pipwright {

/// Whether the character is one of 0 to 9.
constexpr bool isDigit(char c) {
    return c >= '0' && c <= '9';
}

/// The number that some digits write, at most nine of them; nothing if anything else is among them.
constexpr std::optional<int> numberOf(std::string_view digits) {
    int value = 0;
    for (const char c : digits) {
        if (!isDigit(c)) {
            return std::nullopt;
        }
        value = value * 10 + (c - '0');
    }
    return value;
}

} // namespace pipwright
