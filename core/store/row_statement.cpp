#include "core/store/row_statement.h"

#include <cstring>
#include <sqlite3.h>

namespace pipwright {

Result<RowStatement> RowStatement::prepare(const Connection& connection, const std::string& sql) {
    sqlite3_stmt* statement = nullptr;
    if (sqlite3_prepare_v3(connection.handle(), sql.c_str(), static_cast<int>(sql.size() + 1),
                           SQLITE_PREPARE_PERSISTENT, &statement, nullptr) != SQLITE_OK) {
        return connection.problem();
    }
    return RowStatement(connection, statement);
}

RowStatement::RowStatement(RowStatement&& other) noexcept
    : m_connection(other.m_connection), m_statement(std::exchange(other.m_statement, nullptr)),
      m_bindFault(other.m_bindFault) {}

RowStatement& RowStatement::operator=(RowStatement&& other) noexcept {
    std::swap(m_connection, other.m_connection);
    std::swap(m_statement, other.m_statement);
    std::swap(m_bindFault, other.m_bindFault);
    return *this;
}

RowStatement::~RowStatement() {
    sqlite3_finalize(m_statement);
}

void RowStatement::bindNull(int place) {
    m_bindFault |= sqlite3_bind_null(m_statement, place);
}

void RowStatement::bind(int place, std::int64_t value) {
    m_bindFault |= sqlite3_bind_int64(m_statement, place, value);
}

void RowStatement::bind(int place, double value) {
    m_bindFault |= sqlite3_bind_double(m_statement, place, value);
}

void RowStatement::bind(int place, std::string_view value) {
    m_bindFault |= sqlite3_bind_text64(m_statement, place, value.empty() ? "" : value.data(),
                                       value.size(), SQLITE_STATIC, SQLITE_UTF8);
}

void RowStatement::bind(int place, const Uuid& value) {
    m_bindFault |= sqlite3_bind_blob(m_statement, place, value.bytes.data(),
                                     static_cast<int>(value.bytes.size()), SQLITE_TRANSIENT);
}

Result<bool> RowStatement::step() {
    if (m_bindFault != SQLITE_OK) {
        m_bindFault = SQLITE_OK;
        return m_connection->problem(SQLITE_RANGE, "a value could not be bound");
    }
    const int code = sqlite3_step(m_statement);
    if (code == SQLITE_ROW) {
        return true;
    }
    if (code == SQLITE_DONE) {
        return false;
    }
    return m_connection->problem();
}

Outcome RowStatement::run() {
    m_connection->assertThread();
    auto row = step();
    if (!row) {
        Problem problem = row.problem();
        reset();
        return problem;
    }
    sqlite3_reset(m_statement);
    return {};
}

void RowStatement::reset() {
    sqlite3_reset(m_statement);
    sqlite3_clear_bindings(m_statement);
}

bool RowStatement::isNull(int column) const {
    return sqlite3_column_type(m_statement, column) == SQLITE_NULL;
}

std::int64_t RowStatement::integer(int column) const {
    return sqlite3_column_int64(m_statement, column);
}

double RowStatement::number(int column) const {
    return sqlite3_column_double(m_statement, column);
}

std::string_view RowStatement::text(int column) const {
    const auto* text = reinterpret_cast<const char*>(sqlite3_column_text(m_statement, column));
    return text == nullptr ? std::string_view{}
                           : std::string_view(text, static_cast<std::size_t>(
                                                        sqlite3_column_bytes(m_statement, column)));
}

Uuid RowStatement::uuid(int column) const {
    Uuid uuid;
    const void* bytes = sqlite3_column_blob(m_statement, column);
    if (bytes != nullptr && sqlite3_column_bytes(m_statement, column) == 16) {
        std::memcpy(uuid.bytes.data(), bytes, uuid.bytes.size());
    }
    return uuid;
}

StatementPool::Lent::Lent(StatementPool& pool, std::string sql, RowStatement statement)
    : m_pool(&pool), m_sql(std::move(sql)), m_statement(std::move(statement)) {}

StatementPool::Lent::~Lent() {
    if (m_pool.pool != nullptr) {
        m_statement.reset();
        m_pool.pool->m_idle[m_sql].push_back(std::move(m_statement));
    }
}

Result<StatementPool::Lent> StatementPool::lend(const std::string& sql) {
    m_connection->assertThread();
    const auto found = m_idle.find(sql);
    if (found != m_idle.end() && !found->second.empty()) {
        RowStatement statement = std::move(found->second.back());
        found->second.pop_back();
        return Lent(*this, sql, std::move(statement));
    }
    auto statement = RowStatement::prepare(*m_connection, sql);
    if (!statement) {
        return statement.problem();
    }
    return Lent(*this, sql, std::move(*statement));
}

} // namespace pipwright
