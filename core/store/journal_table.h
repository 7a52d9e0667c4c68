#pragma once

#include "core/history/store.h"
#include "core/store/row_statement.h"

namespace pipwright {

/// The journal's two tables. Private to core/store.
class JournalTable {
  public:
    JournalTable(const Connection& connection, StatementPool& pool)
        : m_connection(&connection), m_pool(&pool) {}

    /// The position of the newest entry; 0 when there is none.
    [[nodiscard]] Result<std::int64_t> newest() const;
    [[nodiscard]] Result<UndoLine> undoLine() const;
    [[nodiscard]] Result<std::vector<JournalEntry>> read(const JournalRequest& request) const;
    /// The entry at a position, with its changes.
    [[nodiscard]] Result<JournalEntry> at(std::int64_t position) const;
    [[nodiscard]] Result<std::string> sentenceAt(std::int64_t position) const;

    Outcome add(const JournalEntry& entry);

  private:
    [[nodiscard]] Result<std::vector<Change>> changesOf(std::int64_t position) const;

    const Connection* m_connection;
    StatementPool* m_pool;
};

} // namespace pipwright
