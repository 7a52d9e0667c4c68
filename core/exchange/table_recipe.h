#pragma once

#include "core/orchard/orchard.h"
#include "core/units/result.h"

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace pipwright {

/// What a column of somebody's table can be.
enum class TableField {
    code,
    name,
    tag,
    site,
    row,
    place,
    rowAndPlace,
    distance,
    cross,
    seedParent,
    pollenParent,
    year,
    planted,
    stage,
    species,
    notes,
    date,
    taster,
    liking,
    words,
    verdict,
    setting,
    taken,
    origin,
    bag,
    soundness,
    storage,
    daysOnCounter,
    daysInFridge,
    daysInCellar,
    ripeness,
    fruits,
    canopyPlace,
    cropLoad,
    cropNumber,
    mark,
    drops
};

struct TableFieldInfo {
    TableField field = TableField::code;
    std::string_view key;     ///< in stored recipes
    std::string_view meaning; ///< in words, for the one who assigns columns
};

/// The fields a table of that sort may fill, the most important first.
std::vector<TableFieldInfo> tableFieldsOf(RecipeTarget target);
std::string_view keyOf(TableField field);
std::optional<TableField> tableFieldOf(std::string_view key);

/// Which number stands first in dates such as 3/8/2026.
enum class DateOrder { yearMonthDay, dayMonthYear, monthDayYear };

/// A column and the field it fills.
struct ColumnUse {
    std::string column; ///< its heading
    TableField field = TableField::code;
    /// What spellings in the cells stand for, as {"col", "ripening"}: case and blanks do not
    /// matter. Only whole cells are exchanged.
    std::map<std::string, std::string> spellings;

    bool operator==(const ColumnUse&) const = default;
};

/// How the lines of a table become records.
struct TableRecipe {
    std::string name;
    RecipeTarget target = RecipeTarget::trees;
    std::vector<ColumnUse> columns;
    DateOrder dateOrder = DateOrder::dayMonthYear;
    char decimalMark = '.';
    // For what the table does not say:
    std::string site;
    std::string taster;
    std::optional<Date> date;
    TastingPlace setting = TastingPlace::unknown;
    std::string notes; ///< what its scales mean, in words

    bool operator==(const TableRecipe&) const = default;
};

/// The recipe as the book keeps it, and back. The Problem says what in it cannot be right.
Recipe storedRecipe(const TableRecipe& recipe, RecipeId id);
Result<TableRecipe> tableRecipe(const Recipe& stored);

/// A first assignment: the columns whose heading is the name of a field.
TableRecipe recipeFromHeadings(RecipeTarget target, const std::vector<std::string>& headings);

} // namespace pipwright
