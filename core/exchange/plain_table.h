#pragma once

#include "core/units/result.h"

#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace pipwright {

/// Somebody's own table as it was pasted or read: a line of headings, and lines of cells.
struct PlainTable {
    struct Line {
        std::int64_t number = 0; ///< in the file or the pasted text, from 1
        std::vector<std::string> cells;
    };

    std::string name; ///< file name, or "pasted text"
    char delimiter = ',';
    /// What the columns are called. An empty heading becomes "column 3", one that stands twice gets
    /// a number behind it, so that each names one column.
    std::vector<std::string> headings;
    std::vector<Line> lines;     ///< without blank lines; each as long as the headings
    std::vector<Problem> faults; ///< lines that cannot be read, or have too many cells
};

/// The delimiter that cuts the beginning of a table best: comma, semicolon or tab.
char sniffedDelimiter(std::string_view text);

/// Cuts a pasted text into its table. Without a delimiter the best one is found and told. A Problem
/// when there is no table, or one too large for this way in (more than 1,000,000 lines).
Result<PlainTable> readTable(std::string_view text, const std::string& name,
                             std::optional<char> delimiter = std::nullopt);
Result<PlainTable> readTableFile(const std::filesystem::path& file,
                                 std::optional<char> delimiter = std::nullopt);

} // namespace pipwright
