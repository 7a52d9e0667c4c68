#include "core/store/migrator.h"

#include "core/store/transaction.h"

namespace pipwright {

namespace {

Outcome checkReferences(const Connection& connection) {
    const auto broken =
        connection.text("SELECT \"table\" || ', row ' || rowid || ', refers to no ' "
                        "|| parent FROM pragma_foreign_key_check LIMIT 1");
    if (!broken) {
        return broken.problem();
    }
    if (!broken->empty()) {
        return Problem{ProblemCode::damaged,
                       "a record refers to one that is not there (" + *broken + ").",
                       "Restore a dated copy; the damaged file is kept aside.",
                       connection.file().filename().string()};
    }
    return {};
}

Outcome takeStep(const Connection& connection, const Migration& migration) {
    auto transaction = Transaction::begin(connection);
    if (!transaction) {
        return transaction.problem();
    }
    const std::string closing = "PRAGMA application_id = " + std::to_string(kApplicationId) +
                                "; PRAGMA user_version = " + std::to_string(migration.version) +
                                ";";
    for (const auto script : {migration.sql, std::string_view(closing)}) {
        if (auto outcome = connection.run(script); !outcome) {
            Problem problem = outcome.problem();
            problem.where += ", step " + std::string(migration.name);
            return problem;
        }
    }
    if (auto outcome = checkReferences(connection); !outcome) {
        return outcome;
    }
    return (*transaction)->commit();
}

} // namespace

Result<int> schemaVersion(const Connection& connection, std::span<const Migration> known) {
    const auto application = connection.number("PRAGMA application_id");
    if (!application) {
        return application.problem();
    }
    const std::string where = connection.file().string();
    if (*application != kApplicationId) {
        return Problem{ProblemCode::unreadable, "this is a database of another program.",
                       "Choose a file whose name ends in .orchard.", where};
    }
    const auto version = connection.number("PRAGMA user_version");
    if (!version) {
        return version.problem();
    }
    const int newest = known.empty() ? 0 : known.back().version;
    if (*version > newest) {
        return Problem{ProblemCode::newer,
                       "this book was written by a newer Pipwright (book version " +
                           std::to_string(*version) + "; this program knows up to " +
                           std::to_string(newest) + ").",
                       "Install the newer Pipwright to open it; nothing was changed.", where};
    }
    return static_cast<int>(*version);
}

Outcome migrate(const Connection& connection, std::span<const Migration> migrations) {
    const auto before = connection.number("PRAGMA user_version");
    if (!before) {
        return before.problem();
    }
    bool moved = false;
    for (const Migration& migration : migrations) {
        if (migration.version <= *before) {
            continue;
        }
        if (auto outcome = takeStep(connection, migration); !outcome) {
            return outcome;
        }
        moved = true;
    }
    return moved ? checkIntegrity(connection) : Outcome{};
}

Outcome checkIntegrity(const Connection& connection) {
    const auto words = connection.text("PRAGMA integrity_check(1)");
    if (!words) {
        return words.problem();
    }
    if (*words != "ok") {
        return Problem{ProblemCode::damaged, "the file is damaged (" + *words + ").",
                       "Restore a dated copy; the damaged file is kept aside.",
                       connection.file().filename().string()};
    }
    return checkReferences(connection);
}

} // namespace pipwright
