#include "core/exchange/csv_reader.h"
#include "core/exchange/csv_writer.h"
#include "core/exchange/plain_table.h"
#include "core/units/text.h"
#include "tests/fuzz/must.h"

#include <cstddef>
#include <cstdint>
#include <sstream>
#include <string>
#include <string_view>
#include <vector>

using namespace pipwright;
using pipwright::fuzz::must;

namespace {

using Records = std::vector<std::vector<std::string>>;

/// All records that can be read, and how many complaints there were.
Records read(std::string_view text, const CsvFormat& format, std::size_t& complaints) {
    std::istringstream stream{std::string(text)};
    CsvReader reader(stream, "fuzz", format);
    Records records;
    std::int64_t line = 0;
    while (!reader.finished()) {
        const auto more = reader.next();
        if (!more) {
            ++complaints;
            must(more.problem().where.starts_with("fuzz, line "), "a complaint says where");
            must(!more.problem().remedy.empty(), "a complaint says what to do");
        } else if (*more) {
            must(reader.line() > line, "lines go up");
            line = reader.line();
            records.emplace_back(reader.cells().begin(), reader.cells().end());
        }
    }
    return records;
}

void tryFormat(std::string_view input, const CsvFormat& format) {
    std::size_t complaints = 0;
    const Records records = read(input, format, complaints);
    std::string text;
    CsvWriter writer(text, format.delimiter);
    for (const auto& record : records) {
        must(!record.empty(), "a record has a cell");
        for (const auto& cell : record) {
            must(!firstBadUtf8(cell).has_value(), "a cell is UTF-8");
            must(cell.size() <= format.cellLimit, "a cell keeps the limit");
            must(withoutGuard(guardedCell(cell)) == cell || withoutGuard(cell) != cell,
                 "a guard comes off again");
            writer.cell(cell);
        }
        writer.endRecord();
    }
    std::size_t none = 0;
    CsvFormat roomy;
    roomy.delimiter = format.delimiter;
    must(read(text, roomy, none) == records && none == 0, "what was read and written reads back");
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string_view input(reinterpret_cast<const char*>(data), size);
    CsvFormat format;
    tryFormat(input, format);
    format.delimiter = '\t';
    format.quotesInside = true;
    tryFormat(input, format);
    format.delimiter = ';';
    format.cellLimit = 16;
    format.recordLimit = 64;
    tryFormat(input, format);
    if (const auto table = readTable(input, "fuzz")) {
        for (const auto& line : table->lines) {
            must(line.cells.size() == table->headings.size(), "a line is as long as the headings");
        }
    }
    return 0;
}
