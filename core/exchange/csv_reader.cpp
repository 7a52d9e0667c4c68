#include "core/exchange/csv_reader.h"

#include "core/units/text.h"

#include <algorithm>
#include <cstring>

namespace pipwright {

namespace {

constexpr std::size_t kBlock = std::size_t{256} << 10U;

std::int64_t lineEndsIn(const char* from, const char* to) {
    return std::count(from, to, '\n');
}

bool isAscii(const char* from, std::size_t size) {
    std::uint64_t seen = 0;
    for (; size >= 8; from += 8, size -= 8) {
        std::uint64_t word = 0;
        std::memcpy(&word, from, 8);
        seen |= word;
    }
    for (; size > 0; ++from, --size) {
        seen |= static_cast<unsigned char>(*from);
    }
    return (seen & 0x8080808080808080U) == 0;
}

std::string megabytes(std::size_t bytes) {
    return bytes >= (std::size_t{1} << 20U) ? std::to_string(bytes >> 20U) + " MB"
                                            : std::to_string(bytes) + " bytes";
}

std::string hexByte(char byte) {
    constexpr std::string_view digits = "0123456789ABCDEF";
    const auto value = static_cast<unsigned char>(byte);
    return {'0', 'x', digits[value >> 4U], digits[value & 0x0FU]};
}

} // namespace

CsvReader::CsvReader(std::istream& source, std::string name, CsvFormat format)
    : m_source(source), m_name(std::move(name)), m_format(format) {
    for (const char c : {'"', '\r', '\n', '\0', format.delimiter}) {
        m_special[static_cast<unsigned char>(c)] = true;
    }
}

bool CsvReader::fill() {
    if (m_sourceEnded) {
        return false;
    }
    if (m_begin > 0) {
        std::memmove(m_buffer.data(), m_buffer.data() + m_begin, have());
        m_end -= m_begin;
        m_begin = 0;
    }
    if (m_buffer.size() - m_end < kBlock) {
        m_buffer.resize(std::max(m_buffer.size() * 2, m_end + kBlock));
    }
    m_source.read(m_buffer.data() + m_end, static_cast<std::streamsize>(kBlock));
    const auto got = static_cast<std::size_t>(m_source.gcount());
    m_sourceEnded = got < kBlock;
    m_end += got;
    m_bytesRead += static_cast<std::int64_t>(got);
    return got > 0;
}

Result<bool> CsvReader::next() {
    m_begin += m_length;
    m_length = 0;
    m_line += m_lines;
    m_lines = 0;
    m_cells.clear();
    m_spans.clear();
    if (m_finished) {
        return false;
    }
    if (!m_started) {
        m_started = true;
        if (available(2) && std::string_view(data(), 3) == "\xEF\xBB\xBF") {
            m_begin += 3;
        }
    }
    if (!available(0)) {
        m_finished = true;
        if (m_source.bad()) {
            return Problem{ProblemCode::unreadable, "the file cannot be read to its end.",
                           "Check the disk, or copy the file anew.", m_name};
        }
        return false;
    }
    return readRecord();
}

Result<bool> CsvReader::readRecord() {
    std::size_t at = 0;
    for (;;) {
        const bool quoted = available(at) && data()[at] == '"';
        auto stop = quoted ? quotedCell(at) : plainCell(at);
        if (!stop) {
            const Problem& problem = stop.problem();
            passOverLine(at);
            return problem;
        }
        if (*stop == Stop::record) {
            break;
        }
    }
    m_length = at;
    m_lines = 1;
    for (const Span& span : m_spans) {
        if (span.quoted) {
            m_lines += lineEndsIn(data() + span.begin, data() + span.end);
        }
    }
    if (auto outcome = checkText(at); !outcome) {
        return outcome.problem();
    }
    makeCells();
    return true;
}

Result<CsvReader::Stop> CsvReader::plainCell(std::size_t& at) {
    const std::size_t begin = at;
    for (;;) {
        const char* from = data() + at;
        const char* const end = data() + have();
        while (from < end && !m_special[static_cast<unsigned char>(*from)]) {
            ++from;
        }
        at = static_cast<std::size_t>(from - data());
        if (auto outcome = checkLength(begin, at); !outcome) {
            return outcome.problem();
        }
        if (from == end) {
            if (fill()) {
                continue;
            }
            m_spans.push_back({begin, at, false, false});
            return Stop::record;
        }
        if (*from == '"') {
            if (m_format.quotesInside) {
                ++at;
                continue;
            }
            return problemAt(
                at, "a quote stands inside a cell that does not begin with one.",
                "Put the whole cell between quotes, and write each quote in it twice.");
        }
        if (*from == '\0') {
            return problemAt(at, "a byte of zero stands here: this is not a table of text.",
                             "Save the table as text, in UTF-8.");
        }
        m_spans.push_back({begin, at, false, false});
        return stopAfterCell(at);
    }
}

Result<CsvReader::Stop> CsvReader::quotedCell(std::size_t& at) {
    const std::size_t open = at;
    bool doubled = false;
    ++at;
    for (;;) {
        const void* found = at < have() ? std::memchr(data() + at, '"', have() - at) : nullptr;
        if (found == nullptr) {
            at = have();
            if (auto outcome = checkLength(open, at); !outcome) {
                return outcome.problem();
            }
            if (fill()) {
                continue;
            }
            m_finished = true;
            return problemAt(open, "the quote that opens here is never closed.",
                             "Close it, or write a quote inside a cell twice.");
        }
        at = static_cast<std::size_t>(static_cast<const char*>(found) - data());
        if (auto outcome = checkLength(open, at); !outcome) {
            return outcome.problem();
        }
        if (!available(at + 1) || data()[at + 1] != '"') {
            break;
        }
        doubled = true;
        at += 2;
    }
    m_spans.push_back({open + 1, at, true, doubled});
    ++at;
    return stopAfterCell(at);
}

Result<CsvReader::Stop> CsvReader::stopAfterCell(std::size_t& at) {
    if (!available(at)) {
        return Stop::record;
    }
    const char c = data()[at];
    if (c == m_format.delimiter) {
        ++at;
        return Stop::cell;
    }
    if (c == '\n') {
        ++at;
        return Stop::record;
    }
    if (c == '\r' && available(at + 1) && data()[at + 1] == '\n') {
        at += 2;
        return Stop::record;
    }
    if (c == '\r') {
        return problemAt(at, "a carriage return stands alone, without a line feed.",
                         "Save the table with line ends CRLF or LF.");
    }
    return problemAt(at, "something follows the quote that closes the cell.",
                     "Put a delimiter after it, or write a quote inside a cell twice.");
}

Outcome CsvReader::checkLength(std::size_t cellBegin, std::size_t at) {
    if (at - cellBegin > m_format.cellLimit) {
        return problemAt(cellBegin,
                         "the cell is longer than " + megabytes(m_format.cellLimit) + ".",
                         "Look whether a quote is missing, or whether this is a table at all.");
    }
    if (at > m_format.recordLimit) {
        return problemAt(0, "the record is longer than " + megabytes(m_format.recordLimit) + ".",
                         "Look whether a quote is missing, or whether this is a table at all.");
    }
    return {};
}

Outcome CsvReader::checkText(std::size_t length) {
    if (isAscii(data(), length)) {
        return {};
    }
    const auto bad = firstBadUtf8({data(), length});
    if (!bad) {
        return {};
    }
    return problemAt(*bad, "the byte " + hexByte(data()[*bad]) + " is not UTF-8.",
                     "Save the table as UTF-8.");
}

void CsvReader::makeCells() {
    for (const Span& span : m_spans) {
        char* const begin = data() + span.begin;
        char* end = data() + span.end;
        if (span.doubled) {
            char* to = begin;
            for (const char* from = begin; from < end; ++from) {
                *to++ = *from;
                from += *from == '"' ? 1 : 0;
            }
            end = to;
        }
        m_cells.emplace_back(begin, static_cast<std::size_t>(end - begin));
    }
}

void CsvReader::passOverLine(std::size_t at) {
    m_lines = lineEndsIn(data(), data() + std::min(at, have()));
    for (;;) {
        const std::size_t from = std::min(at, have());
        const auto* found =
            static_cast<const char*>(std::memchr(data() + from, '\n', have() - from));
        if (found != nullptr) {
            m_length = static_cast<std::size_t>(found - data()) + 1;
            ++m_lines;
            return;
        }
        m_begin = m_end; // junk is not kept
        at = 0;
        if (!fill()) {
            m_finished = true;
            return;
        }
    }
}

Problem CsvReader::problemAt(std::size_t at, std::string what, std::string remedy) const {
    const char* const place = data() + at;
    const char* lineStart = place;
    while (lineStart > data() && lineStart[-1] != '\n') {
        --lineStart;
    }
    const auto character =
        characterCount({lineStart, static_cast<std::size_t>(place - lineStart)}) + 1;
    return {ProblemCode::badInput, std::move(what), std::move(remedy),
            m_name + ", line " + std::to_string(m_line + lineEndsIn(data(), place)) +
                ", character " + std::to_string(character)};
}

} // namespace pipwright
