#pragma once

#include <string>

namespace pipwright {

/// The fixed words on paper; the window gives them in the user's language. "%1" and "%2" are
/// filled in.
struct PaperWords {
    std::string pageOf = "page %1 of %2";
    std::string notYet = "not yet";
    std::string ripening = "ripening";
    std::string ripe = "ripe";
    std::string over = "over";
    std::string gone = "gone";
    std::string rowOutward = "Row %1, from the zero stake";
    std::string rowBack = "Row %1, back to the zero stake";
    std::string expected = "expected: %1";
    std::string moreInBook = "… more in the book";
    std::string fallenFruit =
        "Fallen fruit can carry germs from animals: wash it, taste nothing rotten, keep it "
        "out of raw juice. Taste nothing within the waiting time of a spray.";
    std::string rulerTitle = "Ruler page";
    std::string rulerAdvice =
        "Print at actual size (100 %), never \"fit to page\". Lay a ruler on the line: it must "
        "measure %1 mm. If it does not, the labels will not lie where they should.";
};

/// Puts the values where the pattern says %1 and %2.
std::string filledIn(const std::string& pattern, const std::string& first,
                     const std::string& second = {});

} // namespace pipwright
