#pragma once

#include "core/exchange/csv_format.h"
#include "core/units/result.h"

#include <array>
#include <cstdint>
#include <istream>
#include <string>
#include <string_view>
#include <vector>

namespace pipwright {

/// Reads the records of a table of plain text one after the other: RFC 4180 in UTF-8, line ends
/// CRLF or LF, a byte order mark at the start passed over. It holds one record at a time, never
/// more than the format's limit.
class CsvReader {
  public:
    /// `name` is what complaints call the source, as "plant.csv".
    CsvReader(std::istream& source, std::string name, CsvFormat format = {});

    /// True: cells() are those of the next record; false: there is none. A Problem names line and
    /// character, counted from 1. After one, reading goes on behind the faulty line, unless
    /// finished().
    Result<bool> next();

    /// Of the record read last; they last until the next call.
    [[nodiscard]] const std::vector<std::string_view>& cells() const { return m_cells; }
    /// The line on which that record begins, from 1.
    [[nodiscard]] std::int64_t line() const { return m_line; }
    /// Bytes taken in so far.
    [[nodiscard]] std::int64_t bytesRead() const { return m_bytesRead; }
    /// Nothing more can be read.
    [[nodiscard]] bool finished() const { return m_finished; }

  private:
    struct Span { // of one cell, in bytes from the record's start
        std::size_t begin = 0;
        std::size_t end = 0;
        bool quoted = false;
        bool doubled = false; // holds doubled quotes
    };
    enum class Stop { cell, record };

    [[nodiscard]] const char* data() const { return m_buffer.data() + m_begin; }
    char* data() { return m_buffer.data() + m_begin; }
    [[nodiscard]] std::size_t have() const { return m_end - m_begin; }
    bool fill();
    bool available(std::size_t at) { return at < have() || fill(); }

    Result<bool> readRecord();
    Result<Stop> plainCell(std::size_t& at);
    Result<Stop> quotedCell(std::size_t& at);
    Result<Stop> stopAfterCell(std::size_t& at);
    Outcome checkLength(std::size_t cellBegin, std::size_t at);
    Outcome checkText(std::size_t length);
    void makeCells();
    void passOverLine(std::size_t at);
    [[nodiscard]] Problem problemAt(std::size_t at, std::string what, std::string remedy) const;

    std::istream& m_source;
    std::string m_name;
    CsvFormat m_format;
    std::array<bool, 256> m_special{};
    std::vector<char> m_buffer;
    std::size_t m_begin = 0;  // of the record, in the buffer
    std::size_t m_end = 0;    // of what has been read
    std::size_t m_length = 0; // of the record read last, its line end included
    std::int64_t m_line = 1;
    std::int64_t m_lines = 0; // that the record read last takes
    std::int64_t m_bytesRead = 0;
    bool m_started = false;
    bool m_sourceEnded = false;
    bool m_finished = false;
    std::vector<Span> m_spans;
    std::vector<std::string_view> m_cells;
};

} // namespace pipwright
