#pragma once

#include "core/exchange/print/page.h"
#include "core/exchange/print/paper_words.h"
#include "core/exchange/print/text_measure.h"
#include "core/season/date.h"

#include <string>
#include <vector>

namespace pipwright {

/// One tree to be visited.
struct WalkingTree {
    std::string site;
    std::string row;       ///< the row's name on paper
    int rowOrder = 0;      ///< rows of a site are walked in this order
    double alongRow = 0.0; ///< from the zero stake: metres by tape, or the ordinal
    std::string code;
    std::string place; ///< "14 · 4.20 m"
    std::string lastNote;
    std::string expected; ///< what is expected today; empty: not printed
};

/// The way that goes down one row and comes back up the next: sites in the order in which they
/// first appear, rows by rowOrder, every second row of a site from its far end.
std::vector<WalkingTree> inWalkingOrder(std::vector<WalkingTree> trees);

struct WalkingSheet {
    std::vector<WalkingTree> trees; ///< in any order
    Date date;
    PaperSize paper = kA5;
    PaperWords words;
};

/// Pocket sheets: a box to tick for each tree, its code, place and last note, and five blank
/// boxes for what is seen of its fruit. Each site begins a new page. A note longer than six lines
/// ends in a visible "more in the book" and is among the misfits.
PrintedMatter layOutWalkingSheets(const WalkingSheet& sheet, const TextMeasure& measure);

} // namespace pipwright
