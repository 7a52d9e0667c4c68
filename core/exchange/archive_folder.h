#pragma once

#include "core/exchange/archive_format.h"
#include "core/units/result.h"
#include "core/units/sha256.h"

#include <filesystem>
#include <memory>
#include <string>
#include <string_view>

namespace pipwright {

/// A file of an archive while it is written: text is gathered, and goes to the disk in large
/// pieces, hashed on the way.
class ArchiveFile {
  public:
    /// `name` within the folder; a folder in it is made.
    static Result<ArchiveFile> create(const std::filesystem::path& folder, std::string_view name);
    ~ArchiveFile();
    ArchiveFile(ArchiveFile&& other) noexcept;
    ArchiveFile& operator=(ArchiveFile&&) = delete;
    ArchiveFile(const ArchiveFile&) = delete;
    ArchiveFile& operator=(const ArchiveFile&) = delete;

    /// What is still to be written; append to it. Stays at its place while the file is moved.
    [[nodiscard]] std::string& text() { return *m_text; }
    /// Writes when enough has gathered.
    Outcome flush();
    /// Writes the rest and waits until the disk has it. `records` of the answer is not set.
    Result<ArchivedFile> close();

  private:
    ArchiveFile(int descriptor, std::string name);
    Outcome write();

    int m_descriptor;
    std::string m_name;
    std::unique_ptr<std::string> m_text = std::make_unique<std::string>();
    std::unique_ptr<Sha256> m_hash = std::make_unique<Sha256>();
    std::int64_t m_bytes = 0;
};

/// Where an archive is to stand, and the folder beside it in which it is made.
class ArchiveFolder {
  public:
    /// Refuses a folder that holds anything but an archive.
    static Result<ArchiveFolder> prepare(const std::filesystem::path& folder);
    /// Takes the working folder away, with what was in the place before it was exchanged.
    ~ArchiveFolder();
    ArchiveFolder(ArchiveFolder&& other) noexcept;
    ArchiveFolder& operator=(ArchiveFolder&&) = delete;
    ArchiveFolder(const ArchiveFolder&) = delete;
    ArchiveFolder& operator=(const ArchiveFolder&) = delete;

    [[nodiscard]] const std::filesystem::path& workingFolder() const { return m_working; }
    /// Exchanges the working folder for what stood in the place, in one step.
    Outcome putInPlace();

  private:
    ArchiveFolder(std::filesystem::path place, std::filesystem::path working);

    std::filesystem::path m_place;
    std::filesystem::path m_working;
};

/// The whole of a file; a Problem when it cannot be read or is larger than `most` bytes.
Result<std::string> contentOf(const std::filesystem::path& file, std::uintmax_t most);

/// SHA-256 of a file, read in pieces; nothing when it cannot be read.
std::optional<std::string> hashOfFile(const std::filesystem::path& file);

} // namespace pipwright
