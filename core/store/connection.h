#pragma once

#include "core/units/result.h"

#include <QSqlDatabase>

#include <atomic>
#include <cstdint>
#include <filesystem>
#include <memory>
#include <string>
#include <string_view>
#include <sys/types.h>
#include <thread>

struct sqlite3;

namespace pipwright {

/// How a connection may use the file.
enum class Access {
    create,   ///< reads and writes; the file is made if it is not there
    write,    ///< reads and writes
    read,     ///< only reads
    readStill ///< only reads, and nobody can write: a file on a read-only medium
};

/// A connection to one SQLite file through Qt SQL, with foreign keys on. It belongs to the thread
/// that opened it: Qt would let another thread use it without a word, so it ends the program
/// instead. Private to core/store.
class Connection {
  public:
    static Result<std::unique_ptr<Connection>> open(const std::filesystem::path& file,
                                                    Access access);
    ~Connection();
    Connection(const Connection&) = delete;
    Connection& operator=(const Connection&) = delete;

    /// Runs the statements of a script one after the other, cut apart by SQLite's own parser.
    Outcome run(std::string_view script) const;
    /// The first column of the first row.
    [[nodiscard]] Result<std::int64_t> number(std::string_view sql) const;
    [[nodiscard]] Result<std::string> text(std::string_view sql) const;

    /// What SQLite's last error on this connection means to the reader.
    [[nodiscard]] Problem problem() const;
    [[nodiscard]] Problem problem(int code, const std::string& message) const;

    [[nodiscard]] const QSqlDatabase& database() const;
    /// The handle below Qt's connection, for the rows of large tables.
    [[nodiscard]] sqlite3* handle() const;
    [[nodiscard]] const std::filesystem::path& file() const { return m_file; }
    /// Whether the file that was opened still lies at its place.
    [[nodiscard]] bool isStillThere() const;
    void assertThread() const;
    /// Ends every statement that runs on this connection while the flag is up.
    void makeWayFor(std::shared_ptr<const std::atomic<bool>> flag);

  private:
    Connection(std::filesystem::path file, Access access);
    Outcome openDatabase(Access access);

    std::filesystem::path m_file;
    QString m_name;
    std::shared_ptr<const std::atomic<bool>> m_wayFor;
    QSqlDatabase m_database;
    sqlite3* m_handle = nullptr;
    std::thread::id m_thread;
    dev_t m_device = 0;
    ino_t m_inode = 0;
};

} // namespace pipwright
