#pragma once

#include "core/units/result.h"

#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace pipwright {

/// A dated copy of a book, NAME.copies/NAME-YYYY-MM-DD-HHMM.orchard (local time).
struct DatedCopy {
    std::filesystem::path file;
    std::string madeAt;         ///< "2026-08-22 18:05"
    std::int64_t bytes = 0;     ///< size of the file
    std::int64_t position = -1; ///< newest journal entry in it; -1 when it cannot be read
};

/// How many dated copies are kept; older ones go when a new one is there.
inline constexpr std::size_t kCopiesKept = 10;

/// The dated copies of a book, newest first. Copies from before an update are not among them.
std::vector<DatedCopy> datedCopies(const std::filesystem::path& book);

/// Makes a dated copy if the journal has moved since the newest one, and lets the oldest go.
/// Nothing when it has not moved. Uses a connection of its own: call it on any thread, also while
/// the book is open for writing.
Result<std::optional<DatedCopy>> keepDatedCopy(const std::filesystem::path& book);

/// Puts a copy in the book's place; the book must be closed (`busy` when it is not). What stood
/// there is kept aside first, in the folder of copies; the result is its path. The book's journal
/// goes on under a new copy name.
Result<std::filesystem::path> restoreCopy(const std::filesystem::path& book,
                                          const std::filesystem::path& copy);

} // namespace pipwright
