#pragma once

#include "core/exchange/archive_faults.h"
#include "core/exchange/cell_reading.h"
#include "core/exchange/plain_table.h"
#include "core/exchange/table_recipe.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace pipwright {

/// Where each field of a recipe stands in a table.
class ColumnPlan {
  public:
    /// A Problem when a column is not in the table, or two fill the same field.
    static Result<ColumnPlan> of(const PlainTable& table, const TableRecipe& recipe);

    [[nodiscard]] bool has(TableField field) const { return m_columns.contains(field); }
    [[nodiscard]] const std::string& heading(TableField field) const;

  private:
    friend class LineCells;
    struct Column {
        std::size_t at = 0;
        std::string heading;
        std::map<std::string, std::string> spellings; // by wordKey
    };
    std::map<TableField, Column> m_columns;
};

/// The cells of one line by the field they fill. What cannot be read becomes a fault of the line.
class LineCells {
  public:
    LineCells(const PlainTable& table, const PlainTable::Line& line, const TableRecipe& recipe,
              const ColumnPlan& columns, std::vector<Problem>& faults)
        : m_table(table), m_line(line), m_recipe(recipe), m_columns(columns), m_faults(faults),
          m_faultsBefore(faults.size()) {}

    /// The cell without blanks around it, its spelling exchanged by the recipe; "" when there is no
    /// such column.
    [[nodiscard]] std::string text(TableField field) const;
    /// The cell as it stood.
    [[nodiscard]] std::string typed(TableField field) const;
    [[nodiscard]] bool isEmpty(TableField field) const { return text(field).empty(); }

    std::optional<InexactDate> date(TableField field);
    /// One day, not after today.
    std::optional<Date> day(TableField field, Date today);
    std::optional<double> number(TableField field);
    std::optional<std::int64_t> wholeNumber(TableField field);
    template <typename Enum>
    Enum word(TableField field) {
        return isEmpty(field)
                   ? Enum::unknown
                   : taken(field, readCellWord<Enum>(text(field))).value_or(Enum::unknown);
    }

    void fault(TableField field, std::string what, std::string remedy);
    [[nodiscard]] bool good() const { return m_faults.size() == m_faultsBefore; }
    [[nodiscard]] const TableRecipe& recipe() const { return m_recipe; }
    [[nodiscard]] std::int64_t number() const { return m_line.number; }
    /// "line 12, column Mark", as observations keep it.
    [[nodiscard]] std::string placeOf(TableField field) const;
    [[nodiscard]] const std::string& tableName() const { return m_table.name; }

  private:
    template <typename T>
    std::optional<T> taken(TableField field, Result<T> result) {
        if (result) {
            return std::move(*result);
        }
        fault(field, result.problem().what, result.problem().remedy);
        return std::nullopt;
    }

    const PlainTable& m_table;
    const PlainTable::Line& m_line;
    const TableRecipe& m_recipe;
    const ColumnPlan& m_columns;
    std::vector<Problem>& m_faults;
    std::size_t m_faultsBefore;
};

} // namespace pipwright
