#pragma once

#include "core/history/record.h"
#include "core/store/connection.h"

#include <memory>
#include <string>
#include <unordered_map>
#include <vector>

struct sqlite3_stmt;

namespace pipwright {

/// A prepared statement on the handle below Qt's connection. A QVariant a cell would cost more than
/// the reading itself when a million rows go by; single statements use Statement. Places are
/// counted from 1, columns from 0. Private to core/store.
class RowStatement {
  public:
    static Result<RowStatement> prepare(const Connection& connection, const std::string& sql);
    RowStatement(RowStatement&& other) noexcept;
    RowStatement& operator=(RowStatement&& other) noexcept;
    ~RowStatement();

    // A place that cannot be bound shows as a Problem at the next step. Texts must live until then.
    void bindNull(int place);
    void bind(int place, std::int64_t value);
    void bind(int place, double value);
    void bind(int place, std::string_view value);
    void bind(int place, const Uuid& value);

    /// True when there is a row, false at the end.
    Result<bool> step();
    /// For statements that bring no rows: steps to the end and makes ready for the next.
    Outcome run();
    void reset();

    [[nodiscard]] bool isNull(int column) const;
    [[nodiscard]] std::int64_t integer(int column) const;
    [[nodiscard]] double number(int column) const;
    [[nodiscard]] std::string_view text(int column) const; ///< until the next step
    [[nodiscard]] Uuid uuid(int column) const;             ///< nil unless it holds 16 bytes

  private:
    RowStatement(const Connection& connection, sqlite3_stmt* statement)
        : m_connection(&connection), m_statement(statement) {}

    const Connection* m_connection;
    sqlite3_stmt* m_statement;
    int m_bindFault = 0;
};

/// Keeps prepared statements by their text. One that is in use (a scan inside a scan) is not given
/// out twice.
class StatementPool {
  public:
    explicit StatementPool(const Connection& connection) : m_connection(&connection) {}

    /// A statement that goes back to its pool, reset, when it is let go.
    class Lent {
      public:
        Lent(StatementPool& pool, std::string sql, RowStatement statement);
        Lent(Lent&&) noexcept = default;
        ~Lent();
        RowStatement* operator->() { return &m_statement; }
        RowStatement& operator*() { return m_statement; }

      private:
        struct GoneWithMove {
            StatementPool* pool;
            explicit GoneWithMove(StatementPool* of) : pool(of) {}
            GoneWithMove(GoneWithMove&& other) noexcept
                : pool(std::exchange(other.pool, nullptr)) {}
        };
        GoneWithMove m_pool;
        std::string m_sql;
        RowStatement m_statement;
    };

    Result<Lent> lend(const std::string& sql);
    void clear() { m_idle.clear(); }

  private:
    const Connection* m_connection;
    std::unordered_map<std::string, std::vector<RowStatement>> m_idle;
};

} // namespace pipwright
