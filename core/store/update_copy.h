#pragma once

#include "core/store/migrator.h"
#include "core/store/orchard_book.h"

#include <span>

namespace pipwright {

/// Keeps a copy of an older book in its folder of copies before it is brought up to date, as
/// NAME-YYYY-MM-DD-HHMM-version-N.orchard; it is never thinned out. Private to core/store.
Result<std::filesystem::path> keepCopyBeforeUpdate(const Connection& connection, int version);

// openBook with another list of migrations: for trying a list out.
Result<std::unique_ptr<OrchardBook>> openForWriting(const std::filesystem::path& file,
                                                    std::span<const Migration> migrations);
Result<std::unique_ptr<OrchardBook>> openForReading(const std::filesystem::path& file,
                                                    std::span<const Migration> migrations);

} // namespace pipwright
