#include "core/exchange/plain_table.h"

#include "core/exchange/archive_faults.h"
#include "core/exchange/csv_reader.h"
#include "core/units/text.h"

#include <algorithm>
#include <fstream>
#include <set>
#include <sstream>

namespace pipwright {

namespace {

constexpr std::size_t kMostLines = 1'000'000;
constexpr std::size_t kSniffed = 16'384; // bytes
constexpr std::size_t kMostFaults = 100;

CsvFormat formatWith(char delimiter) {
    CsvFormat format;
    format.delimiter = delimiter;
    format.quotesInside = true;
    format.cellLimit = std::size_t{1} << 20U;
    format.recordLimit = std::size_t{4} << 20U;
    return format;
}

bool isBlank(const std::vector<std::string_view>& cells) {
    return std::all_of(cells.begin(), cells.end(),
                       [](std::string_view cell) { return trimmed(cell).empty(); });
}

std::vector<std::string> headingsFrom(const std::vector<std::string_view>& cells) {
    std::vector<std::string> headings;
    std::set<std::string> taken;
    for (const auto cell : cells) {
        std::string heading(trimmed(cell));
        if (heading.empty()) {
            heading = "column " + std::to_string(headings.size() + 1);
        }
        std::string unique = heading;
        for (int number = 2; !taken.insert(unique).second; ++number) {
            unique = heading + " (" + std::to_string(number) + ")";
        }
        headings.push_back(std::move(unique));
    }
    return headings;
}

void takeLine(PlainTable& table, const CsvReader& reader) {
    std::vector<std::string> cells(reader.cells().begin(), reader.cells().end());
    while (cells.size() > table.headings.size() && trimmed(cells.back()).empty()) {
        cells.pop_back();
    }
    if (cells.size() > table.headings.size()) {
        table.faults.push_back(
            {ProblemCode::badInput,
             "the line has " + std::to_string(cells.size()) + " cells, more than the " +
                 std::to_string(table.headings.size()) + " headings.",
             "Give every column a heading, or put a cell that holds the delimiter between quotes.",
             placeInTable(table.name, reader.line())});
        return;
    }
    cells.resize(table.headings.size());
    table.lines.push_back({reader.line(), std::move(cells)});
}

Result<PlainTable> readFrom(std::istream& stream, const std::string& name, char delimiter) {
    PlainTable table;
    table.name = name;
    table.delimiter = delimiter;
    CsvReader reader(stream, name, formatWith(delimiter));
    while (!reader.finished()) {
        const auto more = reader.next();
        if (!more) {
            if (table.headings.empty() || table.faults.size() == kMostFaults) {
                return more.problem(); // no table at all
            }
            table.faults.push_back(more.problem());
            continue;
        }
        if (!*more) {
            break;
        }
        if (isBlank(reader.cells())) {
            continue;
        }
        if (table.headings.empty()) {
            table.headings = headingsFrom(reader.cells());
            continue;
        }
        if (table.lines.size() == kMostLines) {
            return Problem{ProblemCode::badInput, "the table has more than 1,000,000 lines.",
                           "Cut it into several tables.", name};
        }
        takeLine(table, reader);
    }
    if (table.headings.empty()) {
        return Problem{ProblemCode::badInput, "there is no table in it.",
                       "Paste or choose a table whose first line names its columns.", name};
    }
    return table;
}

/// How well a delimiter cuts: columns of the first line, if the following ones mostly agree.
std::size_t worthOf(std::string_view text, char delimiter) {
    std::istringstream stream{std::string(text)};
    CsvReader reader(stream, "", formatWith(delimiter));
    std::size_t columns = 0;
    std::size_t lines = 0;
    std::size_t agreeing = 0;
    for (auto more = reader.next(); more && *more; more = reader.next()) {
        if (isBlank(reader.cells())) {
            continue;
        }
        columns = lines == 0 ? reader.cells().size() : columns;
        agreeing += reader.cells().size() == columns ? 1 : 0;
        ++lines;
    }
    return columns > 1 && agreeing * 2 > lines ? columns * agreeing : 0;
}

} // namespace

char sniffedDelimiter(std::string_view text) {
    std::string_view start = text.substr(0, kSniffed);
    if (start.size() < text.size()) {
        start = start.substr(0, start.rfind('\n') + 1); // whole lines only
    }
    char best = ',';
    std::size_t bestWorth = 0;
    for (const char delimiter : {'\t', ';', ','}) {
        if (const std::size_t worth = worthOf(start, delimiter); worth > bestWorth) {
            best = delimiter;
            bestWorth = worth;
        }
    }
    return best;
}

Result<PlainTable> readTable(std::string_view text, const std::string& name,
                             std::optional<char> delimiter) {
    std::istringstream stream{std::string(text)};
    return readFrom(stream, name, delimiter.value_or(sniffedDelimiter(text)));
}

Result<PlainTable> readTableFile(const std::filesystem::path& file, std::optional<char> delimiter) {
    std::ifstream stream(file, std::ios::binary);
    const std::string name = file.filename().string();
    if (!stream) {
        return Problem{ProblemCode::unreadable, "the file cannot be opened.",
                       "Check its name, and that you may read it.", name};
    }
    if (!delimiter) {
        std::string start(kSniffed, '\0');
        stream.read(start.data(), static_cast<std::streamsize>(start.size()));
        start.resize(static_cast<std::size_t>(stream.gcount()));
        delimiter = sniffedDelimiter(
            start.size() < kSniffed ? start
                                    : std::string_view(start).substr(0, start.rfind('\n') + 1));
        stream.clear();
        stream.seekg(0);
    }
    return readFrom(stream, name, *delimiter);
}

} // namespace pipwright
