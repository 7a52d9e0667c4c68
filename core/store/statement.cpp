#include "core/store/statement.h"

#include <QSqlError>

#include <algorithm>
#include <cstring>

namespace pipwright {

namespace {

bool isNamePart(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '_';
}

/// A statement whose names are replaced by places.
struct Placed {
    std::string sql;
    std::vector<std::string> names;
};

Placed placed(std::string_view sql) {
    Placed result;
    char quote = '\0';
    for (std::size_t i = 0; i < sql.size(); ++i) {
        const char c = sql[i];
        if (quote != '\0') {
            quote = c == quote ? '\0' : quote;
        } else if (c == '\'' || c == '"') {
            quote = c;
        } else if (c == ':' && i + 1 < sql.size() && isNamePart(sql[i + 1])) {
            std::size_t end = i + 1;
            while (end < sql.size() && isNamePart(sql[end])) {
                ++end;
            }
            result.names.emplace_back(sql.substr(i + 1, end - i - 1));
            result.sql += '?';
            i = end - 1;
            continue;
        }
        result.sql += c;
    }
    return result;
}

QByteArray bytesOf(const Uuid& uuid) {
    return {reinterpret_cast<const char*>(uuid.bytes.data()),
            static_cast<qsizetype>(uuid.bytes.size())};
}

} // namespace

Statement::Statement(const Connection& connection, QSqlQuery query, std::vector<std::string> names)
    : m_connection(&connection), m_query(std::move(query)), m_names(std::move(names)),
      m_bound(m_names.size(), false) {}

Result<Statement> Statement::prepare(const Connection& connection, std::string_view sql) {
    Placed parts = placed(sql);
    QSqlQuery query(connection.database());
    query.setForwardOnly(true);
    const bool good = query.prepare(
        QString::fromUtf8(parts.sql.data(), static_cast<qsizetype>(parts.sql.size())));
    Statement statement(connection, std::move(query), std::move(parts.names));
    if (!good) {
        return statement.failure();
    }
    return statement;
}

Statement& Statement::bindVariant(std::string_view name, const QVariant& value) {
    bool known = false;
    for (std::size_t i = 0; i < m_names.size(); ++i) {
        if (m_names[i] == name) {
            m_query.bindValue(static_cast<int>(i), value);
            m_bound[i] = true;
            known = true;
        }
    }
    if (!known) {
        m_unknown = name;
    }
    return *this;
}

Statement& Statement::bind(std::string_view name, std::int64_t value) {
    return bindVariant(name, QVariant(static_cast<qlonglong>(value)));
}

Statement& Statement::bind(std::string_view name, std::string_view value) {
    // Never a null QString: Qt would store it as NULL instead of an empty text.
    return bindVariant(name,
                       value.empty()
                           ? QStringLiteral("")
                           : QString::fromUtf8(value.data(), static_cast<qsizetype>(value.size())));
}

Statement& Statement::bind(std::string_view name, const Uuid& value) {
    return bindVariant(name, bytesOf(value));
}

Statement& Statement::bindNull(std::string_view name) {
    return bindVariant(name, QVariant());
}

Outcome Statement::execute() {
    m_connection->assertThread();
    if (!m_unknown.empty()) {
        return Problem{ProblemCode::internal, "a statement has no placeholder of that name.",
                       "Please report this.", m_unknown};
    }
    const auto missing = std::find(m_bound.begin(), m_bound.end(), false);
    if (missing != m_bound.end()) {
        return Problem{ProblemCode::internal, "a placeholder of a statement was left empty.",
                       "Please report this.",
                       m_names[static_cast<std::size_t>(missing - m_bound.begin())]};
    }
    m_bound.assign(m_names.size(), false);
    return m_query.exec() ? Outcome{} : Outcome{failure()};
}

bool Statement::next() {
    m_connection->assertThread();
    return m_query.next();
}

Outcome Statement::outcome() const {
    return m_query.lastError().isValid() ? Outcome{failure()} : Outcome{};
}

Problem Statement::failure() const {
    const QSqlError error = m_query.lastError();
    const int code = error.nativeErrorCode().toInt();
    return m_connection->problem(code == 0 ? 1 : code, error.text().toStdString());
}

bool Statement::isNull(int column) const {
    return m_query.isNull(column);
}

std::int64_t Statement::integer(int column) const {
    return m_query.value(column).toLongLong();
}

std::string Statement::text(int column) const {
    return m_query.value(column).toString().toStdString();
}

std::optional<Uuid> Statement::uuid(int column) const {
    const QByteArray bytes = m_query.value(column).toByteArray();
    Uuid uuid;
    if (bytes.size() != static_cast<qsizetype>(uuid.bytes.size())) {
        return std::nullopt;
    }
    std::memcpy(uuid.bytes.data(), bytes.constData(), uuid.bytes.size());
    return uuid;
}

} // namespace pipwright
