#pragma once

#include "core/exchange/print/page.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace pipwright {

/// Where one field stands on a label, measured from the label's top left corner.
struct LabelFieldBox {
    PrintedField field = PrintedField::code;
    PaperBox box;
    double points = 10.0;
    bool bold = false;
    /// The box is cut into so many lines of equal height. Below the code, lines that stay empty
    /// let the fields after them move up.
    int lines = 1;
};

/// One label: its size, the fields shown on it and their sizes. The code of the tree comes first
/// and is the biggest: at least 14 points, on row posts at least 24.
struct LabelDesign {
    std::string key;
    Micrometres width;
    Micrometres height;
    std::vector<LabelFieldBox> fields;
    PaperPoint qrCorner;            ///< corner of the quiet zone
    Micrometres qrModule;           ///< at least 0.5 mm, to be read outdoors
    PaperBox pencil;                ///< left blank for writing by hand
    std::optional<PaperPoint> hole; ///< where to punch
};

/// A label design as it lies on the stock that goes into the printer: alone, or in a grid.
struct LabelStock {
    std::string key;  ///< lasting, for settings and the command line
    std::string name; ///< English; the window translates by key
    LabelDesign design;
    PaperSize page;
    int columns = 1;
    int rows = 1;
    PaperPoint first;   ///< top left corner of the first label
    PaperPoint step;    ///< from one label to the next, across and down
    bool toCut = false; ///< plain sheet to be cut up, as opposed to die-cut labels

    [[nodiscard]] int cells() const { return columns * rows; }
    [[nodiscard]] PaperPoint cornerOf(int cell) const {
        return {first.x + step.x * (cell % columns), first.y + step.y * (cell / columns)};
    }
};

/// The stocks we print on; the first is the default.
const std::vector<LabelStock>& labelStocks();

/// Nothing when there is no such stock.
std::optional<LabelStock> labelStock(std::string_view key);

} // namespace pipwright
