#pragma once

#include "core/exchange/progress.h"
#include "core/history/store.h"

#include <cstdint>
#include <filesystem>
#include <string>
#include <vector>

namespace pipwright {

/// What an archive holds.
struct ArchiveReport {
    std::int64_t records = 0;
    std::int64_t entries = 0; ///< of the journal
    std::int64_t photos = 0;
    std::int64_t bytes = 0;
    std::vector<std::string> notices; ///< pictures that are not beside the book
};

/// Writes the whole book as a folder of plain tables; the same book always becomes the same bytes.
/// The folder is new, empty, or an older archive, which is exchanged for the new one in one step;
/// any other content is refused. On a Problem, and when it is stopped, the folder is as it was.
Result<ArchiveReport> writeArchive(const Store& store, const std::filesystem::path& folder,
                                   const Progress& progress = {});

/// How an archive is read.
struct ImportOptions {
    bool dryRun = false;     ///< only look, write nothing
    bool skipFaulty = false; ///< leave out faulty lines, and what depends on them
    /// Take tables that were changed after the archive was written (their SHA-256 differs), as one
    /// does who has edited them on purpose. skipFaulty takes them too.
    bool takeChanged = false;
    std::size_t mostFaults = 100;       ///< kept in the report; the others are counted
    Uuid copy = UuidMaker().make();     ///< the copy that a baseline is laid in
    std::optional<std::int64_t> moment; ///< of that baseline; nothing: now
};

/// How many lines of a table were read, and how many of them were left out.
struct KindCount {
    Kind kind = Kind::bookFacts;
    std::int64_t read = 0;
    std::int64_t skipped = 0;
};

/// What reading an archive came to.
struct ImportReport {
    std::vector<KindCount> counts; ///< one for each kind
    std::int64_t entries = 0;      ///< of the journal
    std::int64_t changes = 0;
    std::int64_t photos = 0;
    std::vector<Problem> faults; ///< `where` is "plant.csv, line 12, column position"
    std::int64_t faultCount = 0; ///< all of them, those not kept included
    std::vector<std::string> notices;
    bool baselineLaid = false; ///< the history before it no longer leads to this content
    bool written = false;

    /// "and 17 more faults" when some were not kept, else "".
    [[nodiscard]] std::string moreFaults() const;
};

/// Rebuilds a book in an empty store. The history comes as it is and nothing is logged. Nothing is
/// written when there is any fault, unless options.skipFaulty. A Problem where it could not be
/// carried through: stopped, the store is not empty, the disk is full.
Result<ImportReport> readArchive(const std::filesystem::path& folder, Store& store,
                                 const ImportOptions& options = {}, const Progress& progress = {});

} // namespace pipwright
