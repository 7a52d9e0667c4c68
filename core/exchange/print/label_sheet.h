#pragma once

#include "core/exchange/print/label_design.h"
#include "core/exchange/print/text_measure.h"
#include "core/units/result.h"

#include <span>
#include <string>
#include <vector>

namespace pipwright {

/// What is written on one plant's label.
struct LabelText {
    std::string code;      ///< the tree's code as the breeder says it; must not be empty
    std::string cross;     ///< in words: "Ash Tarn x Russet Moor"
    std::string year;      ///< of the cross
    std::string place;     ///< kept short: "Upper, row 3, 14"
    std::string labelCode; ///< the plant's 26 base-32 characters
    std::vector<std::string> extraLines;
};

enum class Overflow {
    leaveOutLabel, ///< a label of which anything does not fit is not printed
    leaveOutField  ///< it is printed without that field; the code and the QR code never go missing
};

struct LabelRun {
    int startCell = 0;    ///< the first free label of a half-used sheet, counted from 0, row by row
    bool cutMarks = true; ///< only on stock that is to be cut
    Overflow overflow = Overflow::leaveOutLabel;
};

/// Places the labels in the order given. Text that does not fit is in the misfits and is not
/// printed: nothing is shrunk or cut off. badInput when the start cell is not on the sheet.
Result<PrintedMatter> placeLabels(std::span<const LabelText> labels, const LabelStock& stock,
                                  const LabelRun& run, const TextMeasure& measure);

} // namespace pipwright
