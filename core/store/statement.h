#pragma once

#include "core/store/connection.h"
#include "core/units/uuid.h"

#include <QSqlQuery>
#include <QVariant>

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace pipwright {

/// A prepared statement with named placeholders (":name"). Qt takes names that do not exist in
/// silence and leaves missing ones NULL; this refuses both. Rows come forward only. Private to
/// core/store.
class Statement {
  public:
    static Result<Statement> prepare(const Connection& connection, std::string_view sql);
    Statement(Statement&&) = default;
    Statement& operator=(Statement&&) = default;

    Statement& bind(std::string_view name, std::int64_t value);
    Statement& bind(std::string_view name, std::string_view value);
    Statement& bind(std::string_view name, const Uuid& value);
    /// Binds NULL when there is no value.
    template <typename Inner>
    Statement& bind(std::string_view name, const std::optional<Inner>& value) {
        return value ? bind(name, *value) : bindNull(name);
    }
    Statement& bindNull(std::string_view name);

    /// Runs with what was bound since the last run; every placeholder must have been.
    Outcome execute();
    /// Steps to the next row; false at the end. `outcome()` says whether all rows were read.
    bool next();
    [[nodiscard]] Outcome outcome() const;

    [[nodiscard]] bool isNull(int column) const;
    [[nodiscard]] std::int64_t integer(int column) const;
    [[nodiscard]] std::string text(int column) const;
    /// Nothing when the column does not hold 16 bytes.
    [[nodiscard]] std::optional<Uuid> uuid(int column) const;

  private:
    Statement(const Connection& connection, QSqlQuery query, std::vector<std::string> names);
    Statement& bindVariant(std::string_view name, const QVariant& value);
    [[nodiscard]] Problem failure() const;

    const Connection* m_connection;
    QSqlQuery m_query;
    std::vector<std::string> m_names; ///< in the order of their places; a name may stand twice
    std::vector<bool> m_bound;
    std::string m_unknown;
};

} // namespace pipwright
