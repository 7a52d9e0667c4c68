#include "core/exchange/line_cells.h"

#include "core/exchange/csv_writer.h"

#include <algorithm>

namespace pipwright {

Result<ColumnPlan> ColumnPlan::of(const PlainTable& table, const TableRecipe& recipe) {
    ColumnPlan plan;
    const auto fields = tableFieldsOf(recipe.target);
    for (const auto& use : recipe.columns) {
        const auto at = std::find(table.headings.begin(), table.headings.end(), use.column);
        if (at == table.headings.end()) {
            return Problem{ProblemCode::badInput, "the table has no column \"" + use.column + "\".",
                           "Assign the columns of this table, or choose another recipe.",
                           table.name};
        }
        if (std::none_of(fields.begin(), fields.end(),
                         [&](const auto& info) { return info.field == use.field; })) {
            return Problem{ProblemCode::badInput,
                           "\"" + std::string(keyOf(use.field)) +
                               "\" has no place in a table of this sort.",
                           "Assign the column to another field, or to none.",
                           table.name + ", column " + use.column};
        }
        Column column{static_cast<std::size_t>(at - table.headings.begin()), use.column, {}};
        for (const auto& [from, to] : use.spellings) {
            column.spellings[wordKey(from)] = to;
        }
        if (!plan.m_columns.emplace(use.field, std::move(column)).second) {
            return Problem{ProblemCode::badInput,
                           "two columns are assigned to \"" + std::string(keyOf(use.field)) + "\".",
                           "Assign one of them to another field, or to none.",
                           table.name + ", column " + use.column};
        }
    }
    return plan;
}

const std::string& ColumnPlan::heading(TableField field) const {
    static const std::string none;
    const auto found = m_columns.find(field);
    return found == m_columns.end() ? none : found->second.heading;
}

std::string LineCells::typed(TableField field) const {
    const auto found = m_columns.m_columns.find(field);
    return found == m_columns.m_columns.end() ? "" : m_line.cells[found->second.at];
}

std::string LineCells::text(TableField field) const {
    const auto found = m_columns.m_columns.find(field);
    if (found == m_columns.m_columns.end()) {
        return "";
    }
    const std::string_view cell = withoutGuard(trimmed(m_line.cells[found->second.at]));
    if (!found->second.spellings.empty()) {
        const auto spelling = found->second.spellings.find(wordKey(cell));
        if (spelling != found->second.spellings.end()) {
            return spelling->second;
        }
    }
    return std::string(cell);
}

std::optional<InexactDate> LineCells::date(TableField field) {
    if (isEmpty(field)) {
        return std::nullopt;
    }
    return taken(field, readCellDate(text(field), m_recipe.dateOrder));
}

std::optional<Date> LineCells::day(TableField field, Date today) {
    const auto read = date(field);
    if (!read) {
        return std::nullopt;
    }
    if (!read->isOneDay()) {
        fault(field, "\"" + text(field) + "\" is not one day.", "Write the day, as 2026-08-22.");
        return std::nullopt;
    }
    if (read->from > today) {
        fault(field, "this day (" + read->from.iso() + ") lies after today.",
              "Correct it, or look whether the order of dates in the recipe is right.");
        return std::nullopt;
    }
    return read->from;
}

std::optional<double> LineCells::number(TableField field) {
    if (isEmpty(field)) {
        return std::nullopt;
    }
    return taken(field, readCellNumber(text(field), m_recipe.decimalMark));
}

std::optional<std::int64_t> LineCells::wholeNumber(TableField field) {
    if (isEmpty(field)) {
        return std::nullopt;
    }
    return taken(field, readCellWholeNumber(text(field)));
}

void LineCells::fault(TableField field, std::string what, std::string remedy) {
    m_faults.push_back({ProblemCode::badInput, std::move(what), std::move(remedy),
                        placeInTable(m_table.name, m_line.number, m_columns.heading(field))});
}

std::string LineCells::placeOf(TableField field) const {
    return "line " + std::to_string(m_line.number) + ", column " + m_columns.heading(field);
}

} // namespace pipwright
