#include "core/store/connection.h"

#include <QFile>
#include <QSqlDriver>
#include <QSqlError>
#include <QUrl>
#include <QVariant>

#include <atomic>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <sqlite3.h>
#include <sys/stat.h>

namespace pipwright {

namespace {

QString freshName() {
    static std::atomic<int> count = 0;
    return QStringLiteral("orchard-book-%1").arg(++count);
}

std::string fileName(const std::filesystem::path& file) {
    return file.filename().string();
}

} // namespace

Connection::Connection(std::filesystem::path file, Access access)
    : m_file(std::move(file)), m_name(freshName()),
      m_database(QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), m_name)),
      m_thread(std::this_thread::get_id()) {
    QString options = QStringLiteral("QSQLITE_BUSY_TIMEOUT=2000");
    QString name = QFile::decodeName(m_file.c_str());
    if (access == Access::read || access == Access::readStill) {
        options += QStringLiteral(";QSQLITE_OPEN_READONLY");
    }
    if (access == Access::readStill) {
        options += QStringLiteral(";QSQLITE_OPEN_URI");
        name =
            QUrl::fromLocalFile(name).toString(QUrl::FullyEncoded) + QStringLiteral("?immutable=1");
    }
    m_database.setConnectOptions(options);
    m_database.setDatabaseName(name);
}

Connection::~Connection() {
    assertThread();
    m_database.close();
    m_database = QSqlDatabase();
    QSqlDatabase::removeDatabase(m_name);
}

Result<std::unique_ptr<Connection>> Connection::open(const std::filesystem::path& file,
                                                     Access access) {
    std::unique_ptr<Connection> connection(new Connection(file, access));
    if (auto outcome = connection->openDatabase(access); !outcome) {
        return outcome.problem();
    }
    return connection;
}

Outcome Connection::openDatabase(Access access) {
    if (!m_database.isValid()) {
        return Problem{ProblemCode::internal, "the SQLite driver of Qt is missing.",
                       "Install the package libqt6sql6-sqlite.", fileName(m_file)};
    }
    if (access != Access::create) {
        std::error_code error;
        if (!std::filesystem::is_regular_file(m_file, error)) {
            return Problem{ProblemCode::notFound, "there is no such file.",
                           "Look for the book where it was last kept.", m_file.string()};
        }
    }
    if (!m_database.open()) {
        const QByteArray reason = m_database.lastError().databaseText().toUtf8();
        return Problem{
            ProblemCode::unreadable, "the file cannot be opened (" + reason.toStdString() + ").",
            "Check that you may read the file and write to its folder.", m_file.string()};
    }
    const QVariant handle = m_database.driver()->handle();
    if (std::strcmp(handle.typeName(), "sqlite3*") == 0) {
        m_handle = *static_cast<sqlite3* const*>(handle.constData());
    }
    const auto version = text("SELECT sqlite_version()");
    if (!version) {
        return version.problem();
    }
    if (m_handle == nullptr || *version != sqlite3_libversion()) {
        return Problem{ProblemCode::internal,
                       "Qt uses another SQLite library than Pipwright was built with.",
                       "Install Qt and SQLite from the same distribution.", *version};
    }
    if (auto outcome = run("PRAGMA foreign_keys = ON; PRAGMA trusted_schema = OFF;"); !outcome) {
        return outcome;
    }
    const auto keys = number("PRAGMA foreign_keys");
    if (!keys || *keys != 1) {
        return Problem{ProblemCode::internal, "SQLite does not check references here.",
                       "Install the SQLite library of your distribution.", fileName(m_file)};
    }
    struct stat facts {};
    if (::stat(m_file.c_str(), &facts) == 0) {
        m_device = facts.st_dev;
        m_inode = facts.st_ino;
    }
    return {};
}

bool Connection::isStillThere() const {
    struct stat facts {};
    return ::stat(m_file.c_str(), &facts) == 0 && facts.st_dev == m_device &&
           facts.st_ino == m_inode;
}

void Connection::assertThread() const {
    if (std::this_thread::get_id() != m_thread) {
        std::fputs("A connection to the orchard book was used by a thread that did not open it.\n",
                   stderr);
        std::abort();
    }
}

const QSqlDatabase& Connection::database() const {
    assertThread();
    return m_database;
}

sqlite3* Connection::handle() const {
    assertThread();
    return m_handle;
}

Outcome Connection::run(std::string_view script) const {
    const std::string text(script); // SQLite wants its end marked
    const char* rest = text.c_str();
    while (*rest != '\0') {
        sqlite3_stmt* statement = nullptr;
        int code = sqlite3_prepare_v2(handle(), rest, -1, &statement, &rest);
        if (code == SQLITE_OK && statement == nullptr) {
            continue; // blanks or a remark
        }
        while (code == SQLITE_OK || code == SQLITE_ROW) {
            code = sqlite3_step(statement);
        }
        if (code != SQLITE_DONE) {
            Problem failed = problem();
            sqlite3_finalize(statement);
            return failed;
        }
        sqlite3_finalize(statement);
    }
    return {};
}

Result<std::int64_t> Connection::number(std::string_view sql) const {
    auto found = text(sql);
    if (!found) {
        return found.problem();
    }
    return std::int64_t{std::strtoll(found->c_str(), nullptr, 10)};
}

Result<std::string> Connection::text(std::string_view sql) const {
    sqlite3_stmt* statement = nullptr;
    int code =
        sqlite3_prepare_v2(handle(), sql.data(), static_cast<int>(sql.size()), &statement, nullptr);
    if (code == SQLITE_OK) {
        code = sqlite3_step(statement);
    }
    if (code != SQLITE_ROW && code != SQLITE_DONE) {
        Problem failed = problem();
        sqlite3_finalize(statement);
        return failed;
    }
    const auto* found = code == SQLITE_ROW ? sqlite3_column_text(statement, 0) : nullptr;
    std::string value = found == nullptr ? "" : reinterpret_cast<const char*>(found);
    sqlite3_finalize(statement);
    return value;
}

void Connection::makeWayFor(std::shared_ptr<const std::atomic<bool>> flag) {
    constexpr int kStepsBetweenLooks = 1000; // well below a millisecond
    m_wayFor = std::move(flag);
    const auto isUp = [](void* up) {
        return static_cast<const std::atomic<bool>*>(up)->load() ? 1 : 0;
    };
    // SQLite hands the pointer back to a function that may change what it points to; this does not.
    sqlite3_progress_handler(handle(), kStepsBetweenLooks, isUp,
                             const_cast<std::atomic<bool>*>(m_wayFor.get())); // NOLINT
}

Problem Connection::problem() const {
    return problem(sqlite3_extended_errcode(handle()), sqlite3_errmsg(handle()));
}

Problem Connection::problem(int code, const std::string& message) const {
    const std::string where = fileName(m_file);
    const std::string said = " (" + message + ").";
    switch (code & 0xFF) {
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
        return {ProblemCode::busy, "another program is writing to the book.",
                "Close the other program, or wait a moment, and try again.", where};
    case SQLITE_INTERRUPT:
        return {ProblemCode::busy, "the reading made way for an edit.", "Read again.", where};
    case SQLITE_FULL:
        return {ProblemCode::unwritable, "the disk is full; nothing of this was written.",
                "Make room on the disk and try again.", where};
    case SQLITE_READONLY:
        return {ProblemCode::unwritable, "the book cannot be written to" + said,
                "Copy the book to a folder you may write to, or open it for reading only.", where};
    case SQLITE_IOERR:
        return {ProblemCode::unwritable, "the disk did not take or give what was asked for" + said,
                "Check that the disk is still there and has room, then open the book again.",
                where};
    case SQLITE_CANTOPEN:
        return {ProblemCode::unreadable, "the file cannot be opened" + said,
                "Check that you may read the file and write to its folder.", where};
    case SQLITE_NOTADB:
        return {ProblemCode::unreadable, "this is not an orchard book.",
                "Choose a file whose name ends in .orchard.", where};
    case SQLITE_CORRUPT:
        return {ProblemCode::damaged, "the file is damaged" + said,
                "Restore a dated copy; the damaged file is kept aside.", where};
    case SQLITE_CONSTRAINT:
        return {ProblemCode::conflict, "the book's rules do not allow this" + said,
                "Look at it again and repeat the edit.", where};
    default:
        return {ProblemCode::internal, "the book's storage failed" + said, "Please report this.",
                where};
    }
}

} // namespace pipwright
