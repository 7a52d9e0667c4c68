#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace pipwright {

/// One piece of a typed date, and the letter that stands for its kind in a pattern:
/// y year of four digits, n number of one or two digits, x any other number, m month, w week,
/// p part of a month (1 early, 2 mid, 3 late), l last, u unknown word, or the mark itself (-./).
struct DateToken {
    char kind = 'u';
    int value = 0;
};

/// The pieces of a typed date in order, without commas, "of" and the endings of ordinals.
std::vector<DateToken> dateTokens(std::string_view folded);

/// The kinds of the pieces as a pattern, e.g. "nmy" for 22 August 2026.
std::string patternOf(const std::vector<DateToken>& tokens);

/// What follows a word for "about" at the start; nothing when the text does not start with one.
std::optional<std::string_view> afterAbout(std::string_view folded);

/// English name of a month, 1 to 12.
std::string_view monthName(int month);

} // namespace pipwright
