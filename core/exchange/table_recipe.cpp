#include "core/exchange/table_recipe.h"

#include "core/units/text.h"

#include <algorithm>
#include <array>
#include <nlohmann/json.hpp>

namespace pipwright {

namespace {

using Json = nlohmann::ordered_json;
using enum TableField;

constexpr std::array kFields = {
    TableFieldInfo{code, "code", "code of the tree"},
    TableFieldInfo{name, "name", "name, if it has one"},
    TableFieldInfo{tag, "tag", "what the tag says, if not the code"},
    TableFieldInfo{site, "site", "name of the site"},
    TableFieldInfo{row, "row", "number or name of the row"},
    TableFieldInfo{place, "position", "place in the row, counted from its start"},
    TableFieldInfo{rowAndPlace, "row/position", "row and place together, as 3/14"},
    TableFieldInfo{distance, "distance", "tape distance from the start of the row, metres"},
    TableFieldInfo{cross, "cross", "code of the cross"},
    TableFieldInfo{seedParent, "seed parent", "mother; ? for unknown"},
    TableFieldInfo{pollenParent, "pollen parent",
                   "father; open for open pollination, ? for unknown"},
    TableFieldInfo{year, "year", "year of the bloom"},
    TableFieldInfo{planted, "planted", "day or year of planting"},
    TableFieldInfo{stage, "stage", "where the genotype stands: juvenile, bearing, selection ..."},
    TableFieldInfo{species, "species", "species"},
    TableFieldInfo{notes, "notes", "anything else"},
    TableFieldInfo{date, "date", "day"},
    TableFieldInfo{taster, "taster", "who tasted, name or initials"},
    TableFieldInfo{liking, "liking", "liking, 1 to 9, halves allowed"},
    TableFieldInfo{words, "words", "free words"},
    TableFieldInfo{verdict, "verdict", "what the taster would do with it"},
    TableFieldInfo{setting, "setting", "tasted at a table or in the row"},
    TableFieldInfo{taken, "taken", "day the fruit was picked or lifted"},
    TableFieldInfo{origin, "origin", "picked or fallen"},
    TableFieldInfo{bag, "bag", "bag the fruit grew in"},
    TableFieldInfo{soundness, "soundness", "sound or hurt, and by what"},
    TableFieldInfo{storage, "storage", "where the fruit lay since"},
    TableFieldInfo{daysOnCounter, "days on counter", "days at room temperature"},
    TableFieldInfo{daysInFridge, "days in fridge", "days in the refrigerator"},
    TableFieldInfo{daysInCellar, "days in cellar", "days in the cellar"},
    TableFieldInfo{ripeness, "ripeness", "ripeness as eaten"},
    TableFieldInfo{fruits, "fruits", "number of fruits"},
    TableFieldInfo{canopyPlace, "canopy place", "place on the tree"},
    TableFieldInfo{cropLoad, "crop load", "crop load of the tree"},
    TableFieldInfo{cropNumber, "crop number", "1 for the tree's first crop"},
    TableFieldInfo{mark, "mark", "not yet, ripening, ripe, over or gone"},
    TableFieldInfo{drops, "drops", "fruit on the ground: none, few, some or many"},
};

std::vector<TableField> namesOf(RecipeTarget target) {
    switch (target) {
    case RecipeTarget::trees:
        return {code,       row,          place, rowAndPlace, distance, site,    name, cross,
                seedParent, pollenParent, year,  planted,     stage,    species, tag,  notes};
    case RecipeTarget::parents:
        return {code, seedParent, pollenParent, year, cross};
    case RecipeTarget::scores:
        return {code,   tag,         row,      place,         rowAndPlace,  site,         date,
                taster, liking,      words,    verdict,       setting,      taken,        origin,
                bag,    soundness,   storage,  daysOnCounter, daysInFridge, daysInCellar, ripeness,
                fruits, canopyPlace, cropLoad, cropNumber};
    case RecipeTarget::walkMarks:
        return {code, tag, row, place, rowAndPlace, site, date, mark, drops, words, taster};
    case RecipeTarget::unknown:
        break;
    }
    return {};
}

constexpr std::array<std::string_view, 3> kOrders = {"year-month-day", "day-month-year",
                                                     "month-day-year"};

Problem notARecipe(std::string what) {
    return {ProblemCode::damaged, std::move(what), "Assign the columns anew and save the recipe.",
            "recipe"};
}

std::string textIn(const Json& json, const char* key) {
    return json.contains(key) && json[key].is_string() ? json[key].get<std::string>() : "";
}

Result<ColumnUse> columnFrom(const Json& json) {
    const auto field = tableFieldOf(textIn(json, "field"));
    if (!json.is_object() || !field) {
        return notARecipe("it fills a field that this Pipwright does not know.");
    }
    ColumnUse use{textIn(json, "column"), *field, {}};
    if (json.contains("spellings") && json["spellings"].is_object()) {
        for (const auto& [from, to] : json["spellings"].items()) {
            if (to.is_string()) {
                use.spellings[from] = to.get<std::string>();
            }
        }
    }
    return use;
}

} // namespace

std::vector<TableFieldInfo> tableFieldsOf(RecipeTarget target) {
    std::vector<TableFieldInfo> infos;
    for (const TableField field : namesOf(target)) {
        infos.push_back(kFields[static_cast<std::size_t>(field)]);
    }
    return infos;
}

std::string_view keyOf(TableField field) {
    return kFields[static_cast<std::size_t>(field)].key;
}

std::optional<TableField> tableFieldOf(std::string_view key) {
    for (const auto& info : kFields) {
        if (info.key == key) {
            return info.field;
        }
    }
    return std::nullopt;
}

Recipe storedRecipe(const TableRecipe& recipe, RecipeId id) {
    Json json;
    json["columns"] = Json::array();
    for (const auto& use : recipe.columns) {
        Json column{{"column", use.column}, {"field", keyOf(use.field)}};
        if (!use.spellings.empty()) {
            column["spellings"] = use.spellings;
        }
        json["columns"].push_back(std::move(column));
    }
    json["dates"] = kOrders[static_cast<std::size_t>(recipe.dateOrder)];
    json["decimal_mark"] = std::string(1, recipe.decimalMark);
    json["site"] = recipe.site;
    json["taster"] = recipe.taster;
    json["date"] = recipe.date ? recipe.date->iso() : "";
    json["setting"] = keyOf(recipe.setting);
    Recipe stored;
    stored.id = id;
    stored.name = recipe.name;
    stored.target = recipe.target;
    stored.columns = json.dump(-1, ' ', false, Json::error_handler_t::replace);
    stored.notes = recipe.notes;
    return stored;
}

Result<TableRecipe> tableRecipe(const Recipe& stored) {
    const Json json = Json::parse(stored.columns, nullptr, false);
    if (!json.is_object() || !json.contains("columns") || !json["columns"].is_array()) {
        return notARecipe("its columns cannot be read.");
    }
    TableRecipe recipe;
    recipe.name = stored.name;
    recipe.target = stored.target;
    recipe.notes = stored.notes;
    for (const auto& column : json["columns"]) {
        auto use = columnFrom(column);
        if (!use) {
            return use.problem();
        }
        recipe.columns.push_back(std::move(*use));
    }
    const auto order = std::find(kOrders.begin(), kOrders.end(), textIn(json, "dates"));
    if (order != kOrders.end()) {
        recipe.dateOrder = static_cast<DateOrder>(order - kOrders.begin());
    }
    recipe.decimalMark = textIn(json, "decimal_mark") == "," ? ',' : '.';
    recipe.site = textIn(json, "site");
    recipe.taster = textIn(json, "taster");
    recipe.date = Date::fromIso(textIn(json, "date"));
    recipe.setting = fromKey<TastingPlace>(textIn(json, "setting")).value_or(TastingPlace::unknown);
    return recipe;
}

TableRecipe recipeFromHeadings(RecipeTarget target, const std::vector<std::string>& headings) {
    TableRecipe recipe;
    recipe.target = target;
    for (const auto& info : tableFieldsOf(target)) {
        const auto found = std::find_if(headings.begin(), headings.end(), [&](const auto& heading) {
            return foldedForSearch(heading) == info.key;
        });
        if (found != headings.end()) {
            recipe.columns.push_back({*found, info.field, {}});
        }
    }
    return recipe;
}

} // namespace pipwright
