#pragma once

#include "core/store/sqlite_store.h"
#include "core/store/transaction.h"

#include <unordered_map>

namespace pipwright {

/// Fills an empty book in one transaction: references are checked here instead of row by row, and
/// the indexes are built once at the end. Private to core/store.
class SqliteStore::Load final : public BulkLoad {
  public:
    static Result<std::unique_ptr<BulkLoad>> begin(SqliteStore& store);
    ~Load() override;

    Outcome add(const Record& record) override;
    Outcome add(const JournalEntry& entry) override;
    Outcome finish() override;

  private:
    /// A record that was added, or only referred to so far.
    struct Known {
        std::int64_t key = 0;
        bool isThere = false;
        Kind firstReferrer = Kind::bookFacts;
    };

    explicit Load(SqliteStore& store) : m_store(store) {}
    Outcome open();
    Outcome dropIndexes();
    Outcome checkAllThere() const;
    Result<std::int64_t> keyFor(const Record& record);
    Result<std::optional<std::int64_t>> keyOfReferred(Kind kind, const Uuid& id, Kind referrer);
    void end();

    SqliteStore& m_store;
    std::unique_ptr<Transaction> m_transaction;
    std::vector<std::string> m_indexes; ///< their CREATE statements
    std::array<std::unordered_map<Uuid, Known>, kKindCount> m_known;
    std::array<std::int64_t, kKindCount> m_nextKey{};
    std::array<std::optional<StatementPool::Lent>, kKindCount> m_inserters;
    std::int64_t m_position = 0;
    bool m_failed = false;
};

} // namespace pipwright
