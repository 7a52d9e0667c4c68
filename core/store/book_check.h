#pragma once

#include "core/units/result.h"

#include <cstdint>
#include <filesystem>
#include <functional>
#include <string>
#include <vector>

namespace pipwright {

/// What a check of a book looked at, and what it found wrong with it.
struct CheckFinding {
    std::string step;     ///< "file", "references", "finder", "photos", "journal", "undo"
    std::string sentence; ///< what is wrong, and where
};

/// The result of a check. No findings: the book is sound.
struct CheckReport {
    std::vector<CheckFinding> findings;
    std::int64_t records = 0; ///< records read
    std::int64_t entries = 0; ///< journal entries in the book
    std::int64_t entriesReplayed =
        0;                   ///< those replayed, back to the last baseline or the beginning
    std::int64_t photos = 0; ///< pictures whose bytes were hashed
    std::string digest;      ///< of the content as it stands (see Digest)

    [[nodiscard]] bool sound() const { return findings.empty(); }
};

/// Called with the step and how far it is (0 to 1); returning false stops the check.
using CheckProgress = std::function<bool(const std::string& step, double done)>;

/// Checks the whole book: the file's own structure, every reference, the finder, each picture by
/// its hash, and the journal, which is replayed backwards from the content: every value it says was
/// written last must stand there, and what remains at the last baseline must have its digest (or
/// be nothing at all). Reads only, on a connection of its own: call it on any thread. A Problem
/// when the book cannot be opened, or `cancelled`.
Result<CheckReport> checkBook(const std::filesystem::path& file,
                              const CheckProgress& progress = {});

} // namespace pipwright
