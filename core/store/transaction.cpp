#include "core/store/transaction.h"

#include <sqlite3.h>

namespace pipwright {

Result<std::unique_ptr<Transaction>> Transaction::begin(const Connection& connection) {
    if (!connection.isStillThere()) {
        // SQLite would go on writing into a file that no longer has a name.
        return Problem{ProblemCode::unwritable,
                       "the file is no longer where it was opened; nothing was written.",
                       "Put the file back, or open the book at its new place.",
                       connection.file().string()};
    }
    if (auto outcome = connection.run("BEGIN IMMEDIATE"); !outcome) {
        return outcome.problem();
    }
    return std::unique_ptr<Transaction>(new Transaction(connection));
}

Transaction::~Transaction() {
    // After some errors (a full disk) SQLite has already taken the transaction back itself.
    if (m_open && sqlite3_get_autocommit(m_connection.handle()) == 0) {
        static_cast<void>(m_connection.run("ROLLBACK"));
    }
}

Outcome Transaction::commit() {
    auto outcome = m_connection.run("COMMIT");
    if (outcome) {
        m_open = false;
    }
    return outcome;
}

} // namespace pipwright
