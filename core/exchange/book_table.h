#pragma once

#include <string>
#include <variant>
#include <vector>

namespace pipwright {

/// A table as a list on the screen shows it, to be copied or saved: headings and lines of cells.
/// Numbers stay numbers.
struct BookTable {
    using Cell = std::variant<std::monostate, std::string, double>;

    std::vector<std::string> headings;
    std::vector<std::vector<Cell>> lines;
};

enum class TableForm { tabs, commas };

/// The table as text for a spreadsheet, lines ended by CR LF: texts that a spreadsheet would run
/// as a formula are guarded (see guardedCell), numbers have a decimal point.
std::string tableText(const BookTable& table, TableForm form);

} // namespace pipwright
