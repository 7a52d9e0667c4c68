#include "core/exchange/csv_writer.h"

#include <charconv>

namespace pipwright {

namespace {

constexpr std::string_view kByteOrderMark = "\xEF\xBB\xBF";
constexpr std::string_view kFormulaStarts = "=+-@\t\r\n";

bool isNumber(std::string_view text) {
    const bool plus = text.starts_with('+') && !text.starts_with("+-");
    const std::string_view digits = plus ? text.substr(1) : text;
    double number = 0;
    const auto [stop, error] =
        std::from_chars(digits.data(), digits.data() + digits.size(), number);
    return error == std::errc{} && stop == digits.data() + digits.size() &&
           digits.find_first_not_of("0123456789.eE+-") == std::string_view::npos;
}

} // namespace

CsvWriter::CsvWriter(std::string& out, char delimiter) : m_out(out), m_delimiter(delimiter) {}

bool CsvWriter::needsQuotes(std::string_view text) const {
    for (const char c : text) {
        if (c == m_delimiter || c == '"' || static_cast<unsigned char>(c) < 0x20) {
            return true;
        }
    }
    // Unquoted, it would be taken for the mark of the file.
    return m_first && text.starts_with(kByteOrderMark);
}

void CsvWriter::cell(std::string_view text) {
    m_lastEmpty = text.empty();
    if (m_cells > 0) {
        m_out += m_delimiter;
    }
    if (!needsQuotes(text)) {
        m_out += text;
    } else {
        m_out += '"';
        for (std::size_t quote = text.find('"'); quote != std::string_view::npos;
             quote = text.find('"')) {
            m_out += text.substr(0, quote + 1);
            m_out += '"';
            text.remove_prefix(quote + 1);
        }
        m_out += text;
        m_out += '"';
    }
    m_first = false;
    ++m_cells;
}

void CsvWriter::endRecord() {
    if (m_cells == 1 && m_lastEmpty) {
        m_out += "\"\""; // a bare line end would read as no record at all
    }
    m_out += "\r\n";
    m_cells = 0;
}

void CsvWriter::record(std::span<const std::string_view> cells) {
    for (const auto text : cells) {
        cell(text);
    }
    endRecord();
}

std::string guardedCell(std::string_view text) {
    const bool formula = !text.empty() && kFormulaStarts.find(text.front()) != text.npos;
    return formula && !isNumber(text) ? "'" + std::string(text) : std::string(text);
}

std::string_view withoutGuard(std::string_view text) {
    const bool guarded =
        text.size() > 1 && text.front() == '\'' && kFormulaStarts.find(text[1]) != text.npos;
    return guarded ? text.substr(1) : text;
}

} // namespace pipwright
