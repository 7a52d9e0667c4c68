#include "core/exchange/book_table.h"

#include "core/exchange/csv_writer.h"
#include "core/history/record.h"

namespace pipwright {

std::string tableText(const BookTable& table, TableForm form) {
    std::string text;
    CsvWriter writer(text, form == TableForm::tabs ? '\t' : ',');
    for (const auto& heading : table.headings) {
        writer.cell(guardedCell(heading));
    }
    writer.endRecord();
    for (const auto& line : table.lines) {
        for (const auto& cell : line) {
            if (const auto* words = std::get_if<std::string>(&cell)) {
                writer.cell(guardedCell(*words));
            } else if (const auto* number = std::get_if<double>(&cell)) {
                writer.cell(textOf(Value{*number}));
            } else {
                writer.cell("");
            }
        }
        writer.endRecord();
    }
    return text;
}

} // namespace pipwright
