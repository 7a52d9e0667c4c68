#pragma once

#include <cstddef>
#include <initializer_list>
#include <span>
#include <string>
#include <string_view>

namespace pipwright {

/// Appends records to a text as RFC 4180 has them: CRLF ends, and quotes only around cells that
/// need them, so that the same cells always become the same bytes.
class CsvWriter {
  public:
    explicit CsvWriter(std::string& out, char delimiter = ',');

    void cell(std::string_view text);
    void endRecord();
    void record(std::span<const std::string_view> cells);
    void record(std::initializer_list<std::string_view> cells) {
        record(std::span<const std::string_view>(cells.begin(), cells.size()));
    }

  private:
    [[nodiscard]] bool needsQuotes(std::string_view text) const;

    std::string& m_out;
    char m_delimiter;
    std::size_t m_cells = 0; // of the record being written
    bool m_lastEmpty = false;
    bool m_first = true;
};

/// The cell as a spreadsheet may be given it: a text that a spreadsheet would run as a formula (it
/// begins with = + - @, a tab or a line end) gets an apostrophe in front. Genuine numbers (-3.5)
/// stay as they are. Rule and characters: OWASP, "CSV Injection".
std::string guardedCell(std::string_view text);

/// Takes guardedCell's apostrophe off again; other texts stay as they are.
std::string_view withoutGuard(std::string_view text);

} // namespace pipwright
