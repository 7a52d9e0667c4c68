#pragma once

#include "core/exchange/print/page.h"
#include "core/exchange/print/paper_words.h"
#include "core/exchange/print/text_measure.h"

#include <functional>
#include <string>
#include <vector>

namespace pipwright {

struct PrintedColumn {
    std::string heading;
    double share = 1.0; ///< of the width, relative to the other columns
    Align align = Align::left;
};

/// Draws what stands below the words of a cell: marks inside the box, for that column.
using CellDrawing = std::function<std::vector<Mark>(std::size_t column, const PaperBox& box)>;

struct PrintedRow {
    std::vector<std::string> cells; ///< fewer than columns: the rest is empty
    bool isSection = false;         ///< a band across the table with the first cell as its title
    Micrometres drawingHeight{};    ///< nothing is drawn while it is 0
    CellDrawing drawing{};
};

/// A table with a title, for anything that is compared or listed on paper.
struct PrintedTable {
    std::string title;
    std::string subtitle; ///< what it is taken from, and the ISO date
    std::vector<PrintedColumn> columns;
    std::vector<PrintedRow> rows;
    std::vector<std::string> notes; ///< under the table: what a sign means, cautions
    PaperSize paper = kA4;
    PaperWords words;
};

/// Lays the table on as many pages as it takes, the headings on each. Cells grow downwards;
/// nothing is left out: a row higher than the page goes on on the next.
PrintedMatter layOutTable(const PrintedTable& table, const TextMeasure& measure);

} // namespace pipwright
