#include "core/history/change.h"

#include <algorithm>
#include <nlohmann/json.hpp>

namespace pipwright {

namespace {

using Json = nlohmann::ordered_json;

Json jsonOf(const Value& value) {
    struct Writer {
        Json operator()(std::monostate) const { return nullptr; }
        Json operator()(std::int64_t number) const { return number; }
        Json operator()(double number) const { return number; }
        Json operator()(const std::string& text) const { return text; }
        Json operator()(const Uuid& uuid) const { return uuid.text(); }
    };
    return std::visit(Writer{}, value);
}

Result<Value> valueOf(const FieldInfo& field, const Json& json) {
    Value value;
    if (json.is_null()) {
        value = {};
    } else if (json.is_string() && field.type == FieldType::reference) {
        const auto uuid = Uuid::fromText(json.get<std::string>());
        value = uuid ? Value{*uuid} : Value{json.get<std::string>()};
    } else if (json.is_string()) {
        value = json.get<std::string>();
    } else if (json.is_number() && field.type == FieldType::number) {
        value = json.get<double>();
    } else if (json.is_number_integer()) {
        value = json.get<std::int64_t>();
    } else {
        return Problem{ProblemCode::damaged, "a value in the journal is of the wrong sort.",
                       "Restore an earlier copy, or repair the line.", std::string(field.name)};
    }
    if (auto outcome = checkValue(field, value); !outcome) {
        return outcome.problem();
    }
    return value;
}

std::string side(const Change& change, bool after) {
    Json object = Json::object();
    const auto& fields = fieldsOf(change.kind);
    for (const auto& field : change.fields) {
        object[std::string(fields[field.field].name)] = jsonOf(after ? field.after : field.before);
    }
    return object.dump(-1, ' ', false, Json::error_handler_t::replace);
}

Result<Json> parsedObject(std::string_view text) {
    Json json = Json::parse(text, nullptr, false);
    if (!json.is_object()) {
        return Problem{ProblemCode::damaged, "a journal line is not a JSON object.",
                       "Restore an earlier copy, or repair the line.", ""};
    }
    return json;
}

} // namespace

void ChangeSet::addEdit(const Record& before, const Record& after) {
    Change change{ChangeWhat::edited, before.kind, before.id, {}};
    for (std::size_t i = 0; i < before.values.size(); ++i) {
        if (before.values[i] != after.values[i]) {
            change.fields.push_back({i, before.values[i], after.values[i]});
        }
    }
    if (!change.fields.empty()) {
        add(std::move(change));
    }
}

Change ChangeSet::creationOf(const Record& record) {
    Change change{ChangeWhat::created, record.kind, record.id, {}};
    for (std::size_t i = 0; i < record.values.size(); ++i) {
        change.fields.push_back({i, Value{}, record.values[i]});
    }
    return change;
}

Change ChangeSet::erasureOf(const Record& record) {
    Change change{ChangeWhat::erased, record.kind, record.id, {}};
    for (std::size_t i = 0; i < record.values.size(); ++i) {
        change.fields.push_back({i, record.values[i], Value{}});
    }
    return change;
}

std::vector<Change> inverseOf(const std::vector<Change>& changes) {
    std::vector<Change> inverse(changes.rbegin(), changes.rend());
    for (Change& change : inverse) {
        if (change.what == ChangeWhat::created) {
            change.what = ChangeWhat::erased;
        } else if (change.what == ChangeWhat::erased) {
            change.what = ChangeWhat::created;
        }
        for (FieldChange& field : change.fields) {
            std::swap(field.before, field.after);
        }
    }
    return inverse;
}

Record recordOf(const Change& change) {
    Record record{change.kind, change.record, {}};
    record.values.resize(fieldsOf(change.kind).size());
    for (const auto& field : change.fields) {
        record.values[field.field] = change.what == ChangeWhat::erased ? field.before : field.after;
    }
    return record;
}

std::string beforeAsJson(const Change& change) {
    return change.what == ChangeWhat::created ? std::string{} : side(change, false);
}

std::string afterAsJson(const Change& change) {
    return change.what == ChangeWhat::erased ? std::string{} : side(change, true);
}

std::string asJson(const Record& record) {
    return side(ChangeSet::creationOf(record), true);
}

Result<Change> changeFromJson(Kind kind, const Uuid& record, std::string_view before,
                              std::string_view after) {
    Change change{ChangeWhat::edited, kind, record, {}};
    if (before.empty()) {
        change.what = ChangeWhat::created;
    } else if (after.empty()) {
        change.what = ChangeWhat::erased;
    }
    const auto& fields = fieldsOf(kind);
    for (const bool isAfter : {false, true}) {
        const auto text = isAfter ? after : before;
        if (text.empty()) {
            continue;
        }
        const auto object = parsedObject(text);
        if (!object) {
            return object.problem();
        }
        for (const auto& [name, json] : object->items()) {
            const auto index = fieldIndex(kind, name);
            if (!index) {
                return Problem{ProblemCode::damaged,
                               "the journal names a field that a " + std::string(nameOf(kind)) +
                                   " record does not have.",
                               "Restore an earlier copy, or open the book with the newer program.",
                               name};
            }
            auto value = valueOf(fields[*index], json);
            if (!value) {
                return value.problem();
            }
            auto at = std::find_if(change.fields.begin(), change.fields.end(),
                                   [&](const FieldChange& f) { return f.field == *index; });
            if (at == change.fields.end()) {
                change.fields.push_back({*index, Value{}, Value{}});
                at = std::prev(change.fields.end());
            }
            (isAfter ? at->after : at->before) = std::move(*value);
        }
    }
    return change;
}

} // namespace pipwright
