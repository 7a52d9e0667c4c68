#pragma once

#include "core/store/connection.h"

#include <span>
#include <string_view>

namespace pipwright {

/// One step of the schema: its number, the file's name and its SQL. A released one never changes.
struct Migration {
    int version = 0;
    std::string_view name;
    std::string_view sql;
};

/// All that were ever released, 1, 2, 3 ... (core/store/migrations).
std::span<const Migration> releasedMigrations();

/// "PIPW": what the file says it is (PRAGMA application_id).
inline constexpr std::int64_t kApplicationId = 0x50495057;

/// The schema version of the file; a Problem when it is no orchard book, or one that a newer
/// Pipwright wrote than these migrations know. Reads only.
Result<int> schemaVersion(const Connection& connection, std::span<const Migration> known);

/// Brings the schema to the newest of these versions, each step in a transaction of its own that is
/// taken back when a statement or a reference fails. An empty file is made an orchard book. The
/// caller keeps a copy first. Private to core/store.
Outcome migrate(const Connection& connection, std::span<const Migration> migrations);

/// integrity_check and foreign_key_check; `damaged` with their first words when they find fault.
Outcome checkIntegrity(const Connection& connection);

} // namespace pipwright
