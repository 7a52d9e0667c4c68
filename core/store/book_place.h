#pragma once

#include "core/units/result.h"

#include <filesystem>
#include <optional>
#include <string>

namespace pipwright {

/// NAME.photos and NAME.copies beside NAME.orchard.
std::filesystem::path photosFolder(const std::filesystem::path& book);
std::filesystem::path copiesFolder(const std::filesystem::path& book);

/// What the file system below the book is called ("a network share"), when a write-ahead log is
/// not safe there: its readers and writers must share memory. Private to core/store.
std::optional<std::string> unsafeForLog(const std::filesystem::path& book);
/// The same by the file system's number, as statfs gives it.
std::optional<std::string> unsafeFileSystem(unsigned long type);

/// Where a file lies, "device:inode": a copy lies elsewhere. Empty when it cannot be told.
std::string fingerprintOf(const std::filesystem::path& file);

/// A Problem when the file or its folder cannot be written.
Outcome checkWritable(const std::filesystem::path& file);

/// Puts a file or folder safely on the disk (fsync).
Outcome settle(const std::filesystem::path& path);

/// Writes the bytes to a file beside the target, settles it and renames it into place, so that
/// the target is there as a whole or not at all.
Outcome writeWhole(const std::filesystem::path& target, std::string_view bytes);

/// The bytes of a file.
Result<std::string> readWhole(const std::filesystem::path& file);

} // namespace pipwright
