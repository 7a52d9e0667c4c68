#pragma once

#include "core/history/store.h"
#include "core/store/row_statement.h"

#include <array>

namespace pipwright {

/// The finder line's table (FTS5): the words of every record, kept in the transaction that changes
/// the record. Private to core/store.
class Finder {
  public:
    Finder(const Connection& connection, StatementPool& pool)
        : m_connection(&connection), m_pool(&pool) {}

    /// Reads which number stands for which kind; once, before all else.
    Outcome open();

    Outcome add(std::int64_t key, const Record& record);
    Outcome remove(Kind kind, std::int64_t key);
    [[nodiscard]] Result<std::vector<Found>> find(std::string_view words, std::size_t limit) const;

  private:
    [[nodiscard]] std::int64_t rowOf(Kind kind, std::int64_t key) const;

    const Connection* m_connection;
    StatementPool* m_pool;
    std::array<std::int64_t, kKindCount> m_numbers{};
};

/// What the finder knows of a record: its searchable texts, one after the other.
std::string finderWords(const Record& record);

} // namespace pipwright
