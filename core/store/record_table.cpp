#include "core/store/record_table.h"

#include "core/store/place_of_kind.h"

#include <numeric>

namespace pipwright {

namespace {

std::vector<std::size_t> allFieldsOf(Kind kind) {
    std::vector<std::size_t> fields(fieldsOf(kind).size());
    std::iota(fields.begin(), fields.end(), std::size_t{0});
    return fields;
}

/// How the references of a row are read: as keys, or as the uuids behind them.
enum class References { asKeys, asUuids };

std::string columnsOf(Kind kind, const std::vector<std::size_t>& fields, References references) {
    std::string sql = "SELECT t.uuid";
    for (const std::size_t index : fields) {
        const FieldInfo& field = fieldsOf(kind)[index];
        const std::string column = "t." + sqlName(field.name);
        if (field.type == FieldType::reference && references == References::asUuids) {
            sql += ", (SELECT uuid FROM " + sqlName(nameOf(field.refersTo)) +
                   " WHERE id = " + column + ")";
        } else {
            sql += ", " + column;
        }
    }
    return sql + " FROM " + sqlName(nameOf(kind)) + " AS t";
}

void setText(Value& value, std::string_view text) {
    if (auto* held = std::get_if<std::string>(&value)) {
        held->assign(text); // keeps its room from the row before
    } else {
        value.emplace<std::string>(text);
    }
}

/// Reads a column into a value; references only where they are read as uuids.
void readValue(const RowStatement& row, int column, FieldType type, Value& value) {
    if (row.isNull(column)) {
        value = Value{};
        return;
    }
    switch (type) {
    case FieldType::text:
    case FieldType::date:
    case FieldType::word:
        setText(value, row.text(column));
        break;
    case FieldType::integer:
    case FieldType::flag:
        value = row.integer(column);
        break;
    case FieldType::number:
        value = row.number(column);
        break;
    case FieldType::reference:
        value = row.uuid(column);
        break;
    }
}

Outcome bindValue(RowStatement& row, int place, const FieldInfo& field, const Value& value,
                  const RecordTables::KeyFinder& keys) {
    if (const auto* text = std::get_if<std::string>(&value)) {
        row.bind(place, std::string_view(*text));
    } else if (const auto* whole = std::get_if<std::int64_t>(&value)) {
        row.bind(place, *whole);
    } else if (const auto* number = std::get_if<double>(&value)) {
        row.bind(place, *number);
    } else if (const auto* uuid = std::get_if<Uuid>(&value)) {
        const auto key = keys(field.refersTo, *uuid);
        if (!key) {
            return key.problem();
        }
        if (!key->has_value()) {
            return Problem{ProblemCode::conflict,
                           "it refers to a " + std::string(nameOf(field.refersTo)) +
                               " that is not in the book.",
                           "Add that record first, or leave the field empty.",
                           std::string(field.name)};
        }
        row.bind(place, **key);
    } else {
        row.bindNull(place);
    }
    return {};
}

} // namespace

std::string sqlName(std::string_view name) {
    return "\"" + std::string(name) + "\"";
}

void RecordTables::forgetKeys() const {
    for (auto& uuids : m_uuids) {
        uuids.reset();
    }
}

Result<RecordTables::Uuids> RecordTables::uuidsOf(Kind kind) const {
    auto& kept = m_uuids[placeOf(kind)];
    if (kept) {
        return kept;
    }
    auto rows = m_pool->lend("SELECT id, uuid FROM " + sqlName(nameOf(kind)) + " ORDER BY id");
    if (!rows) {
        return rows.problem();
    }
    auto uuids = std::make_shared<UuidByKey>();
    while (true) {
        const auto more = (*rows)->step();
        if (!more) {
            return more.problem();
        }
        if (!*more) {
            break;
        }
        const auto key = static_cast<std::size_t>((*rows)->integer(0));
        if (key >= uuids->size()) {
            uuids->resize(key + 1);
        }
        (*uuids)[key] = (*rows)->uuid(1);
    }
    kept = std::move(uuids);
    return kept;
}

Result<std::vector<RecordTables::Uuids>>
RecordTables::uuidsFor(Kind kind, const std::vector<std::size_t>& fields) const {
    std::vector<Uuids> all(fields.size());
    for (std::size_t i = 0; i < fields.size(); ++i) {
        const FieldInfo& field = fieldsOf(kind)[fields[i]];
        if (field.type == FieldType::reference) {
            auto uuids = uuidsOf(field.refersTo);
            if (!uuids) {
                return uuids.problem();
            }
            all[i] = std::move(*uuids);
        }
    }
    return all;
}

Outcome RecordTables::scan(Kind kind, const ScanRequest& request,
                           const std::function<bool(const Record&)>& take) const {
    const auto fields = request.fields.empty() ? allFieldsOf(kind) : request.fields;
    return request.where ? scanWhere(kind, fields, *request.where, take)
                         : scanAll(kind, fields, take);
}

// A whole table is read faster with the uuids looked up here than by a subquery a row.
Outcome RecordTables::scanAll(Kind kind, const std::vector<std::size_t>& fields,
                              const std::function<bool(const Record&)>& take) const {
    const auto& infos = fieldsOf(kind);
    const auto uuids = uuidsFor(kind, fields);
    if (!uuids) {
        return uuids.problem();
    }
    auto rows = m_pool->lend(columnsOf(kind, fields, References::asKeys) + " ORDER BY t.uuid");
    if (!rows) {
        return rows.problem();
    }
    RowStatement& row = **rows;
    Record record{kind, {}, std::vector<Value>(infos.size())};
    while (true) {
        const auto more = row.step();
        if (!more) {
            return more.problem();
        }
        if (!*more) {
            return {};
        }
        record.id = row.uuid(0);
        for (std::size_t i = 0; i < fields.size(); ++i) {
            const int column = static_cast<int>(i) + 1;
            Value& value = record.values[fields[i]];
            const UuidByKey* known = (*uuids)[i].get();
            if (known == nullptr) {
                readValue(row, column, infos[fields[i]].type, value);
            } else if (row.isNull(column)) {
                value = Value{};
            } else {
                const auto key = static_cast<std::size_t>(row.integer(column));
                value = key < known->size() ? (*known)[key] : Uuid{};
            }
        }
        if (!take(record)) {
            return {};
        }
    }
}

Outcome RecordTables::scanWhere(Kind kind, const std::vector<std::size_t>& fields,
                                const std::pair<std::size_t, Value>& where,
                                const std::function<bool(const Record&)>& take) const {
    const auto& infos = fieldsOf(kind);
    const FieldInfo& field = infos[where.first];
    const bool none = std::holds_alternative<std::monostate>(where.second);
    std::optional<std::int64_t> wanted;
    if (const auto* uuid = std::get_if<Uuid>(&where.second)) {
        auto key = keyOf(field.refersTo, *uuid);
        if (!key || !key->has_value()) {
            return key ? Outcome{} : Outcome{key.problem()};
        }
        wanted = *key;
    }
    auto rows =
        m_pool->lend(columnsOf(kind, fields, References::asUuids) + " WHERE t." +
                     sqlName(field.name) + (none ? " IS NULL" : " = ?") + " ORDER BY t.uuid");
    if (!rows) {
        return rows.problem();
    }
    RowStatement& row = **rows;
    const KeyFinder known = [&wanted](Kind, const Uuid&) { return Result(wanted); };
    if (!none) {
        if (auto outcome = bindValue(row, 1, field, where.second, known); !outcome) {
            return outcome;
        }
    }
    Record record{kind, {}, std::vector<Value>(infos.size())};
    while (true) {
        const auto more = row.step();
        if (!more || !*more) {
            return more ? Outcome{} : Outcome{more.problem()};
        }
        record.id = row.uuid(0);
        for (std::size_t i = 0; i < fields.size(); ++i) {
            readValue(row, static_cast<int>(i) + 1, infos[fields[i]].type,
                      record.values[fields[i]]);
        }
        if (!take(record)) {
            return {};
        }
    }
}

Result<std::optional<Record>> RecordTables::find(Kind kind, const Uuid& id) const {
    const auto fields = allFieldsOf(kind);
    auto rows = m_pool->lend(columnsOf(kind, fields, References::asUuids) + " WHERE t.uuid = ?");
    if (!rows) {
        return rows.problem();
    }
    (*rows)->bind(1, id);
    const auto more = (*rows)->step();
    if (!more) {
        return more.problem();
    }
    if (!*more) {
        return std::optional<Record>{};
    }
    Record record{kind, id, std::vector<Value>(fields.size())};
    for (const std::size_t field : fields) {
        readValue(**rows, static_cast<int>(field) + 1, fieldsOf(kind)[field].type,
                  record.values[field]);
    }
    return std::optional(std::move(record));
}

Result<std::int64_t> RecordTables::count(Kind kind) const {
    return m_connection->number("SELECT count(*) FROM " + sqlName(nameOf(kind)));
}

Result<std::optional<std::int64_t>> RecordTables::keyOf(Kind kind, const Uuid& id) const {
    auto rows = m_pool->lend("SELECT id FROM " + sqlName(nameOf(kind)) + " WHERE uuid = ?");
    if (!rows) {
        return rows.problem();
    }
    (*rows)->bind(1, id);
    const auto more = (*rows)->step();
    if (!more) {
        return more.problem();
    }
    return *more ? std::optional((*rows)->integer(0)) : std::nullopt;
}

Result<std::int64_t> RecordTables::freeKey(Kind kind) const {
    return m_connection->number("SELECT coalesce(max(id), 0) + 1 FROM " + sqlName(nameOf(kind)));
}

Result<StatementPool::Lent> RecordTables::inserterOf(Kind kind) {
    std::string names = "id, uuid";
    std::string places = "?, ?";
    for (const FieldInfo& field : fieldsOf(kind)) {
        names += ", " + sqlName(field.name);
        places += ", ?";
    }
    return m_pool->lend("INSERT INTO " + sqlName(nameOf(kind)) + " (" + names + ") VALUES (" +
                        places + ")");
}

Outcome RecordTables::insertBy(RowStatement& inserter, std::int64_t key, const Record& record,
                               const KeyFinder& keys) {
    const auto& fields = fieldsOf(record.kind);
    inserter.bind(1, key);
    inserter.bind(2, record.id);
    for (std::size_t i = 0; i < fields.size(); ++i) {
        if (auto outcome =
                bindValue(inserter, static_cast<int>(i) + 3, fields[i], record.values[i], keys);
            !outcome) {
            return outcome;
        }
    }
    return inserter.run();
}

Outcome RecordTables::insert(std::int64_t key, const Record& record, const KeyFinder& keys) {
    auto inserter = inserterOf(record.kind);
    return inserter ? insertBy(**inserter, key, record, keys) : Outcome{inserter.problem()};
}

Outcome RecordTables::update(std::int64_t key, const Change& change, const KeyFinder& keys) {
    if (change.fields.empty()) {
        return {};
    }
    const auto& fields = fieldsOf(change.kind);
    std::string sql = "UPDATE " + sqlName(nameOf(change.kind)) + " SET ";
    for (std::size_t i = 0; i < change.fields.size(); ++i) {
        sql += (i == 0 ? "" : ", ") + sqlName(fields[change.fields[i].field].name) + " = ?";
    }
    auto row = m_pool->lend(sql + " WHERE id = ?");
    if (!row) {
        return row.problem();
    }
    for (std::size_t i = 0; i < change.fields.size(); ++i) {
        if (auto outcome = bindValue(**row, static_cast<int>(i) + 1, fields[change.fields[i].field],
                                     change.fields[i].after, keys);
            !outcome) {
            return outcome;
        }
    }
    (*row)->bind(static_cast<int>(change.fields.size()) + 1, key);
    return (*row)->run();
}

Outcome RecordTables::erase(Kind kind, std::int64_t key) {
    auto row = m_pool->lend("DELETE FROM " + sqlName(nameOf(kind)) + " WHERE id = ?");
    if (!row) {
        return row.problem();
    }
    (*row)->bind(1, key);
    return (*row)->run();
}

Result<std::optional<std::string>> RecordTables::referrerOf(Kind kind, std::int64_t key) const {
    for (const Kind other : kAllKinds) {
        for (const FieldInfo& field : fieldsOf(other)) {
            if (field.type != FieldType::reference || field.refersTo != kind) {
                continue;
            }
            auto row = m_pool->lend("SELECT uuid FROM " + sqlName(nameOf(other)) + " WHERE " +
                                    sqlName(field.name) + " = ? LIMIT 1");
            if (!row) {
                return row.problem();
            }
            (*row)->bind(1, key);
            const auto more = (*row)->step();
            if (!more) {
                return more.problem();
            }
            if (*more) {
                return std::optional(std::string(nameOf(other)) + " " + (*row)->uuid(0).text());
            }
        }
    }
    return std::optional<std::string>{};
}

} // namespace pipwright
