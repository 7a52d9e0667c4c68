#pragma once

#include "core/history/journal.h"
#include "core/history/record.h"
#include "core/season/date.h"
#include "core/units/result.h"

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace pipwright {

/// What the manifest calls an archive, and the version of its layout that we write: 1 the first,
/// 2 with the keys of planned sittings.
inline constexpr std::string_view kArchiveFormat = "pipwright-archive";
inline constexpr int kArchiveVersion = 2;

inline constexpr std::string_view kManifestFile = "manifest.json";
inline constexpr std::string_view kReadmeFile = "README.txt";
inline constexpr std::string_view kColumnsFile = "columns.csv";
inline constexpr std::string_view kEntriesFile = "journal_entry.csv";
inline constexpr std::string_view kChangesFile = "journal_change.csv";
inline constexpr std::string_view kPhotoFolder = "photos";

inline constexpr std::array<std::string_view, 8> kEntryColumns = {
    "position", "copy", "moment", "person", "kind", "target", "sentence", "digest"};
inline constexpr std::array<std::string_view, 6> kChangeColumns = {"position", "number", "kind",
                                                                   "record",   "before", "after"};

/// A file of the archive. `records` only for tables.
struct ArchivedFile {
    std::string name; ///< within the folder, with "/" before a photo's own name
    std::optional<std::int64_t> records;
    std::int64_t bytes = 0;
    std::string sha256;
};

/// What manifest.json says.
struct Manifest {
    int version = kArchiveVersion;
    std::optional<Date> workedOn;
    std::vector<ArchivedFile> files;
    std::vector<std::string> missingPhotos; ///< hashes whose picture was not beside the book

    [[nodiscard]] const ArchivedFile* find(std::string_view name) const;
};

std::string manifestText(const Manifest& manifest);
/// A Problem for what is no manifest of ours, and (ProblemCode::newer) for a newer layout.
Result<Manifest> readManifest(std::string_view text);

/// "plant.csv"
std::string fileNameOf(Kind kind);
/// The version of the layout that first had a table for it; older archives have none of the kind.
int firstVersionWith(Kind kind);
/// uuid and the fields, in order.
std::vector<std::string_view> headerOf(Kind kind);
/// columns.csv: table, column, type, refers_to, words, meaning of every column of every table.
std::string columnsTable();
std::string readmeText();

/// "2026-08-22T09:30:00.125Z". A moment outside the years 0000 to 9999 as plain milliseconds.
std::string momentText(std::int64_t milliseconds);
/// Reads what momentText wrote.
std::optional<std::int64_t> momentFromText(std::string_view text);

} // namespace pipwright
