#pragma once

#include "core/exchange/print/page.h"
#include "core/exchange/print/paper_words.h"
#include "core/exchange/print/text_measure.h"
#include "core/season/date.h"

#include <array>
#include <string>
#include <vector>

namespace pipwright {

/// The fixed words of tasting sheets and keys; the window gives them in the user's language. "%1"
/// and "%2" are filled in.
struct SittingWords {
    std::string sheetOf = "Tasting sheet of %1";
    std::string howTo =
        "Taste in this order, from top to bottom. Eat a slice with its skin; write 1 to 9, halves "
        "if you like. Water between the lots. Nobody speaks before the sheets are turned.";
    std::string pause = "Pause: water, a plain cracker, five minutes";
    std::string place = "no.";
    std::string code = "code";
    std::string liking = "1 to 9";
    std::string remarks = "what you taste, in your own words";
    std::string bestOnes = "The best, by code:";
    std::array<std::string, 3> bestPlaces{"first", "second", "third"};
    std::string lookOnly = "Look only, no score: %1";
    /// For 1 to 9.
    std::array<std::string, 9> scale{"spat it out", "bad",  "poor",      "rather poor", "so so",
                                     "rather good", "good", "very good", "none better"};
    std::string caution =
        "Leave out rotten fruit, also around the rotten place (patulin), and whatever iodine "
        "touched: nobody eats, feeds or composts that. Fallen and wormy fruit is washed and cut "
        "out, and not for children, old people, anyone pregnant or ill. Taste nothing within the "
        "waiting time of a spray. Who reacts to birch pollen may itch or swell from raw apple, "
        "pear, plum or cherry: say so before, stop at once; trouble breathing needs an ambulance. "
        "Do not chew pips or stones.";
    std::string keyTitle = "Key of the sitting";
    std::string keyAdvice = "Only for whoever cuts and serves. Fold it, and keep it until every "
                            "sheet is entered.";
    std::string fruit = "fruit";
    std::string where = "where";
    std::string condition = "condition";
    std::string role = "why";
    std::string orders = "Who gets what, in this order";
    std::string drawn = "Drawn with number %1.";
};

/// A taster and the codes in his order.
struct SheetTaster {
    std::string name;
    std::vector<std::string> codes;
};

/// The sheets of one sitting.
struct TastingSheets {
    Date date;
    std::string title;
    std::vector<SheetTaster> tasters;
    int pauseAfter = 0; ///< lots; 0: no pause
    std::vector<std::string> lookOnly;
    PaperSize paper = kA4;
    PaperWords words;
    SittingWords sittingWords;
};

/// A page a taster: his lots in his order, with room for a liking and for words, the pause, the
/// best three, the scale and the cautions. A name too long for its line is broken, nothing is left
/// out.
PrintedMatter layOutTastingSheets(const TastingSheets& sheets, const TextMeasure& measure);

/// What stands behind a code.
struct KeyLine {
    std::string code; ///< empty: looked at only
    std::string fruit;
    std::string where;
    std::string condition;
    std::string role;
};

struct SittingKeyPaper {
    Date date;
    std::string title;
    std::vector<KeyLine> lines;
    std::vector<SheetTaster> tasters;
    std::string draw;
    PaperSize paper = kA4;
    PaperWords words;
    SittingWords sittingWords;
};

/// The key, for whoever serves: codes with their fruit, then each taster's order.
PrintedMatter layOutSittingKey(const SittingKeyPaper& key, const TextMeasure& measure);

} // namespace pipwright
