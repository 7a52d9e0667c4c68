#pragma once

#include "core/history/store.h"
#include "core/store/row_statement.h"

#include <array>
#include <optional>
#include <vector>

namespace pipwright {

/// The uuid of every record of a kind by its key in the file.
using UuidByKey = std::vector<Uuid>;

/// The tables of the records: what the schema says of a kind is said by fieldsOf(kind), so there is
/// one class for all of them. References are keys inside and uuids outside. Private to core/store.
class RecordTables {
  public:
    RecordTables(const Connection& connection, StatementPool& pool)
        : m_connection(&connection), m_pool(&pool) {}

    Outcome scan(Kind kind, const ScanRequest& request,
                 const std::function<bool(const Record&)>& take) const;
    Result<std::optional<Record>> find(Kind kind, const Uuid& id) const;
    Result<std::int64_t> count(Kind kind) const;

    /// The key of a record; nothing when there is none.
    Result<std::optional<std::int64_t>> keyOf(Kind kind, const Uuid& id) const;
    /// A key that no record of the kind has.
    Result<std::int64_t> freeKey(Kind kind) const;

    /// What stands for a value in the file: the key of what is referred to.
    using KeyFinder = std::function<Result<std::optional<std::int64_t>>(Kind, const Uuid&)>;
    Outcome insert(std::int64_t key, const Record& record, const KeyFinder& keys);
    /// The statement that adds a record of the kind, and its use: for many of them.
    Result<StatementPool::Lent> inserterOf(Kind kind);
    static Outcome insertBy(RowStatement& inserter, std::int64_t key, const Record& record,
                            const KeyFinder& keys);
    Outcome update(std::int64_t key, const Change& change, const KeyFinder& keys);
    Outcome erase(Kind kind, std::int64_t key);
    /// Some record that refers to this one, "score 018f..."; nothing when there is none.
    Result<std::optional<std::string>> referrerOf(Kind kind, std::int64_t key) const;

    /// Forgets the uuids kept by key: the content has changed.
    void forgetKeys() const;

  private:
    using Uuids = std::shared_ptr<const UuidByKey>; // a scan holds on to those it began with

    Result<Uuids> uuidsOf(Kind kind) const;
    Result<std::vector<Uuids>> uuidsFor(Kind kind, const std::vector<std::size_t>& fields) const;
    Outcome scanAll(Kind kind, const std::vector<std::size_t>& fields,
                    const std::function<bool(const Record&)>& take) const;
    Outcome scanWhere(Kind kind, const std::vector<std::size_t>& fields,
                      const std::pair<std::size_t, Value>& where,
                      const std::function<bool(const Record&)>& take) const;

    const Connection* m_connection;
    StatementPool* m_pool;
    mutable std::array<Uuids, kKindCount> m_uuids;
};

/// A name of the schema as SQL takes it, whatever its word means there.
std::string sqlName(std::string_view name);

} // namespace pipwright
