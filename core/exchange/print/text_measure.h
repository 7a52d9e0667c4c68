#pragma once

#include "core/exchange/print/micrometres.h"

#include <string>
#include <vector>

namespace pipwright {

/// How wide text will be on paper. The window answers from the real font; a test from a rule.
class TextMeasure {
  public:
    TextMeasure() = default;
    TextMeasure(const TextMeasure&) = delete;
    TextMeasure& operator=(const TextMeasure&) = delete;
    virtual ~TextMeasure() = default;
    /// Width of one line of UTF-8 text.
    [[nodiscard]] virtual Micrometres width(const std::string& text, double points,
                                            bool bold) const = 0;
};

/// From one line of running text to the next: 1.25 times the size, room for accents on capitals
/// above and for descenders below.
constexpr Micrometres lineHeight(double points) {
    return fromPoints(points * 1.25);
}

enum class LongWords {
    stayWhole, ///< a word wider than the line makes a line that is too wide
    breakUp    ///< such a word goes on in the next line
};

/// Breaks text into lines no wider than `width`, at blanks, and at line breaks in the text. With
/// LongWords::stayWhole a returned line may be too wide: measure it. Every character of the text
/// but blanks at line ends is in the result. An empty text has no lines.
std::vector<std::string> flowText(const std::string& text, double points, bool bold,
                                  Micrometres width, LongWords longWords,
                                  const TextMeasure& measure);

} // namespace pipwright
