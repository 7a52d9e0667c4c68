#pragma once

#include "core/exchange/print/micrometres.h"

namespace pipwright {

/// The size of a page as it lies in the printer, width first.
struct PaperSize {
    Micrometres width;
    Micrometres height;

    bool operator==(const PaperSize&) const = default;
    [[nodiscard]] constexpr PaperSize turned() const { return {height, width}; }
};

inline constexpr PaperSize kA4{210_mm, 297_mm};         ///< ISO 216
inline constexpr PaperSize kA5{148_mm, 210_mm};         ///< ISO 216
inline constexpr PaperSize kLetter{215.9_mm, 279.4_mm}; ///< 8.5 by 11 inches

/// A page that is one label, as a roll printer feeds it.
constexpr PaperSize singleLabel(Micrometres width, Micrometres height) {
    return {width, height};
}

} // namespace pipwright
