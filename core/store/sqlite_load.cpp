#include "core/store/sqlite_load.h"

#include "core/store/place_of_kind.h"

#include <algorithm>

namespace pipwright {

namespace {

/// Whether any record can refer to one of this kind; of the others no names need be kept.
bool isReferredTo(Kind kind) {
    static const auto referred = [] {
        std::array<bool, kKindCount> result{};
        for (const Kind any : kAllKinds) {
            for (const FieldInfo& field : fieldsOf(any)) {
                if (field.type == FieldType::reference) {
                    result[placeOf(field.refersTo)] = true;
                }
            }
        }
        return result;
    }();
    return referred[placeOf(kind)];
}

Problem givenTwice(const Record& record) {
    return {ProblemCode::badInput, "this id is given to two records.",
            "Give each record an id of its own.",
            std::string(nameOf(record.kind)) + " " + record.id.text()};
}

} // namespace

Result<std::unique_ptr<BulkLoad>> SqliteStore::Load::begin(SqliteStore& store) {
    std::unique_ptr<Load> load(new Load(store));
    if (auto outcome = load->open(); !outcome) {
        return outcome.problem();
    }
    return std::unique_ptr<BulkLoad>(std::move(load));
}

Outcome SqliteStore::Load::open() {
    const Connection& connection = *m_store.m_connection;
    std::int64_t records = m_store.position();
    for (const Kind kind : kAllKinds) {
        auto count = m_store.count(kind);
        if (!count) {
            return count.problem();
        }
        records += *count;
    }
    if (records != 0) {
        return Problem{ProblemCode::conflict, "the book is not empty.",
                       "Load into a new, empty book.", connection.file().string()};
    }
    // Only outside a transaction does SQLite take these; end() sets them back. The file is as good
    // as empty, so a rollback journal has next to nothing to keep, while a log would make every
    // page be written twice. With a reader about, the mode stays as it is.
    m_store.m_loading = true;
    static_cast<void>(connection.text("PRAGMA journal_mode = DELETE"));
    if (auto outcome = connection.run("PRAGMA foreign_keys = OFF; PRAGMA cache_size = -100000");
        !outcome) {
        return outcome;
    }
    auto transaction = Transaction::begin(connection);
    if (!transaction) {
        return transaction.problem();
    }
    m_transaction = std::move(*transaction);
    return dropIndexes();
}

Outcome SqliteStore::Load::dropIndexes() {
    std::vector<std::string> names;
    {
        auto rows = m_store.m_pool.lend(
            "SELECT name, sql FROM sqlite_schema WHERE type = 'index' AND sql IS NOT NULL");
        if (!rows) {
            return rows.problem();
        }
        while (true) {
            const auto more = (*rows)->step();
            if (!more) {
                return more.problem();
            }
            if (!*more) {
                break;
            }
            names.emplace_back((*rows)->text(0));
            m_indexes.emplace_back((*rows)->text(1));
        }
    }
    for (const std::string& name : names) {
        if (auto outcome = m_store.m_connection->run("DROP INDEX " + sqlName(name)); !outcome) {
            return outcome;
        }
    }
    return {};
}

SqliteStore::Load::~Load() {
    end();
}

void SqliteStore::Load::end() {
    if (!m_store.m_loading) {
        return;
    }
    for (auto& inserter : m_inserters) {
        inserter.reset();
    }
    m_transaction.reset();
    // A connection that did not check references would be worse than none: the next write asks.
    static_cast<void>(m_store.m_connection->run("PRAGMA foreign_keys = ON"));
    static_cast<void>(prepareForWriting(*m_store.m_connection));
    m_store.m_records.forgetKeys();
    m_store.m_undoLine.reset();
    m_store.m_loading = false;
}

Result<std::int64_t> SqliteStore::Load::keyFor(const Record& record) {
    auto& next = m_nextKey[placeOf(record.kind)];
    if (!isReferredTo(record.kind)) {
        return ++next;
    }
    Known& known = m_known[placeOf(record.kind)][record.id];
    if (known.isThere) {
        return givenTwice(record);
    }
    known.isThere = true;
    if (known.key == 0) {
        known.key = ++next;
    }
    return known.key;
}

Result<std::optional<std::int64_t>> SqliteStore::Load::keyOfReferred(Kind kind, const Uuid& id,
                                                                     Kind referrer) {
    Known& known = m_known[placeOf(kind)][id];
    if (known.key == 0) {
        known.key = ++m_nextKey[placeOf(kind)];
        known.firstReferrer = referrer;
    }
    return std::optional(known.key);
}

Outcome SqliteStore::Load::add(const Record& record) {
    if (auto outcome = checkRecord(record); !outcome) {
        m_failed = true;
        return outcome;
    }
    const auto key = keyFor(record);
    if (!key) {
        m_failed = true;
        return key.problem();
    }
    auto& inserter = m_inserters[placeOf(record.kind)];
    if (!inserter) {
        auto lent = m_store.m_records.inserterOf(record.kind);
        if (!lent) {
            return lent.problem();
        }
        inserter.emplace(std::move(*lent));
    }
    const RecordTables::KeyFinder keys = [this, &record](Kind kind, const Uuid& id) {
        return keyOfReferred(kind, id, record.kind);
    };
    auto outcome = RecordTables::insertBy(**inserter, *key, record, keys);
    if (outcome) {
        outcome = m_store.m_finder.add(*key, record);
    }
    if (!outcome) {
        m_failed = true;
        // Of the kinds nothing refers to, only the table itself knows which ids it has.
        return outcome.problem().code == ProblemCode::conflict && !isReferredTo(record.kind)
                   ? Outcome{givenTwice(record)}
                   : outcome;
    }
    return {};
}

Outcome SqliteStore::Load::add(const JournalEntry& entry) {
    if (entry.position != m_position + 1) {
        m_failed = true;
        return Problem{ProblemCode::badInput, "the journal has a gap or a double entry.",
                       "Number the entries 1, 2, 3 ... without gaps.",
                       "position " + std::to_string(entry.position)};
    }
    m_position = entry.position;
    auto outcome = m_store.m_journal.add(entry);
    m_failed = m_failed || !outcome;
    return outcome;
}

Outcome SqliteStore::Load::checkAllThere() const {
    for (const Kind kind : kAllKinds) {
        for (const auto& [id, known] : m_known[placeOf(kind)]) {
            if (!known.isThere) {
                return Problem{ProblemCode::badInput,
                               "a " + std::string(nameOf(known.firstReferrer)) +
                                   " refers to this record, which is not there.",
                               "Add that record, or leave the field empty.",
                               std::string(nameOf(kind)) + " " + id.text()};
            }
        }
    }
    return {};
}

Outcome SqliteStore::Load::finish() {
    if (m_failed || !m_transaction) {
        return Problem{ProblemCode::conflict,
                       "the book was not filled, because of the fault above.",
                       "Put the fault right and start again.", m_store.file().string()};
    }
    auto outcome = checkAllThere();
    for (std::size_t i = 0; i < m_indexes.size() && outcome; ++i) {
        outcome = m_store.m_connection->run(m_indexes[i]);
    }
    for (auto& inserter : m_inserters) {
        inserter.reset();
    }
    if (outcome) {
        outcome = m_transaction->commit();
    }
    m_failed = !outcome;
    end();
    if (outcome) {
        const auto keys = m_store.m_connection->number("PRAGMA foreign_keys");
        if (!keys || *keys != 1) {
            return Problem{ProblemCode::internal, "SQLite no longer checks references.",
                           "Close the book and open it again.", m_store.file().string()};
        }
    }
    return outcome;
}

Result<std::unique_ptr<BulkLoad>> SqliteStore::beginLoad() {
    if (auto outcome = checkMayWrite(); !outcome) {
        return outcome.problem();
    }
    return Load::begin(*this);
}

} // namespace pipwright
