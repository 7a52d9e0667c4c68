#include "core/exchange/archive_folder.h"

#include <algorithm>
#include <cerrno>
#include <cstdio>
#include <cstring>
#include <fcntl.h>
#include <fstream>
#include <set>
#include <unistd.h>
#include <vector>

namespace pipwright {

namespace {

namespace fs = std::filesystem;

constexpr std::size_t kPiece = std::size_t{1} << 20U;

Problem cannotWrite(const std::string& where, int error) {
    const bool full = error == ENOSPC || error == EDQUOT;
    return {ProblemCode::unwritable,
            full ? "the disk is full." : std::string(std::strerror(error)) + ".",
            full ? "Make room, or choose another disk." : "Choose a folder that you may write to.",
            where};
}

Problem notAnArchive(const fs::path& folder, const std::string& what) {
    return {ProblemCode::conflict, what, "Choose a new or empty folder, or an older archive.",
            folder.string()};
}

/// The names that may stand in the folder of an archive; nothing when it is none.
std::optional<std::set<std::string>> namesOfArchive(const fs::path& folder) {
    const auto text = contentOf(folder / kManifestFile, std::uintmax_t{256} << 20U);
    if (!text) {
        return std::nullopt;
    }
    const auto manifest = readManifest(*text);
    if (!manifest) {
        return std::nullopt;
    }
    std::set<std::string> names{std::string(kManifestFile)};
    for (const auto& file : manifest->files) {
        names.insert(file.name);
    }
    return names;
}

Outcome checkPlace(const fs::path& folder) {
    std::error_code error;
    const auto status = fs::status(folder, error);
    if (!fs::exists(status)) {
        return {};
    }
    if (!fs::is_directory(status)) {
        return notAnArchive(folder, "a file of that name stands there.");
    }
    if (fs::is_empty(folder, error) && !error) {
        return {};
    }
    const auto names = namesOfArchive(folder);
    if (!names) {
        return notAnArchive(folder, "the folder holds something that is not an archive.");
    }
    for (fs::recursive_directory_iterator at(folder, error), end; !error && at != end;
         at.increment(error)) {
        const auto name = at->path().lexically_relative(folder).generic_string();
        if (!names->contains(name) && name != kPhotoFolder) {
            return notAnArchive(folder, "beside the archive the folder holds " + name + ".");
        }
    }
    return error ? Outcome(notAnArchive(folder, "the folder cannot be read.")) : Outcome{};
}

void syncFolder(const fs::path& folder) {
    const int descriptor = ::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    if (descriptor >= 0) {
        ::fsync(descriptor);
        ::close(descriptor);
    }
}

} // namespace

ArchiveFile::ArchiveFile(int descriptor, std::string name)
    : m_descriptor(descriptor), m_name(std::move(name)) {}

ArchiveFile::ArchiveFile(ArchiveFile&& other) noexcept
    : m_descriptor(std::exchange(other.m_descriptor, -1)), m_name(std::move(other.m_name)),
      m_text(std::move(other.m_text)), m_hash(std::move(other.m_hash)), m_bytes(other.m_bytes) {}

ArchiveFile::~ArchiveFile() {
    if (m_descriptor >= 0) {
        ::close(m_descriptor);
    }
}

Result<ArchiveFile> ArchiveFile::create(const fs::path& folder, std::string_view name) {
    const fs::path path = folder / name;
    std::error_code error;
    fs::create_directories(path.parent_path(), error);
    const int descriptor = ::open(path.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0666);
    if (descriptor < 0) {
        return cannotWrite(std::string(name), errno);
    }
    return ArchiveFile(descriptor, std::string(name));
}

Outcome ArchiveFile::write() {
    m_hash->add(*m_text);
    m_bytes += static_cast<std::int64_t>(m_text->size());
    std::string_view rest = *m_text;
    while (!rest.empty()) {
        const auto written = ::write(m_descriptor, rest.data(), rest.size());
        if (written < 0 && errno != EINTR) {
            return cannotWrite(m_name, errno);
        }
        rest.remove_prefix(written > 0 ? static_cast<std::size_t>(written) : 0);
    }
    m_text->clear();
    return {};
}

Outcome ArchiveFile::flush() {
    return m_text->size() < kPiece ? Outcome{} : write();
}

Result<ArchivedFile> ArchiveFile::close() {
    if (auto outcome = write(); !outcome) {
        return outcome.problem();
    }
    const int synced = ::fsync(m_descriptor);
    const int closed = ::close(std::exchange(m_descriptor, -1));
    if (synced != 0 || closed != 0) {
        return cannotWrite(m_name, errno);
    }
    return ArchivedFile{m_name, std::nullopt, m_bytes, hexOf(m_hash->finish())};
}

ArchiveFolder::ArchiveFolder(fs::path place, fs::path working)
    : m_place(std::move(place)), m_working(std::move(working)) {}

ArchiveFolder::ArchiveFolder(ArchiveFolder&& other) noexcept
    : m_place(std::move(other.m_place)), m_working(std::exchange(other.m_working, {})) {}

ArchiveFolder::~ArchiveFolder() {
    if (!m_working.empty()) {
        std::error_code error;
        fs::remove_all(m_working, error);
    }
}

Result<ArchiveFolder> ArchiveFolder::prepare(const fs::path& folder) {
    std::error_code error;
    fs::path place = fs::weakly_canonical(fs::absolute(folder, error), error);
    if (!place.has_filename()) {
        place = place.parent_path();
    }
    if (auto outcome = checkPlace(place); !outcome) {
        return outcome.problem();
    }
    fs::create_directories(place.parent_path(), error);
    // A name of its own: two archives of the same folder at once must not meet.
    std::string pattern =
        (place.parent_path() / ("." + place.filename().string() + ".XXXXXX")).string();
    if (::mkdtemp(pattern.data()) == nullptr) {
        return cannotWrite(place.parent_path().string(), errno);
    }
    ArchiveFolder prepared(place, pattern);
    fs::permissions(pattern,
                    fs::perms::group_read | fs::perms::group_exec | fs::perms::others_read |
                        fs::perms::others_exec,
                    fs::perm_options::add, error);
    return prepared;
}

Outcome ArchiveFolder::putInPlace() {
    syncFolder(m_working);
    std::error_code error;
    const bool empty = fs::is_empty(m_place, error) || error;
    if (empty) {
        fs::remove(m_place, error); // rename(2) wants it gone or empty; it is
        if (::rename(m_working.c_str(), m_place.c_str()) != 0) {
            return cannotWrite(m_place.string(), errno);
        }
        m_working.clear();
    } else if (::renameat2(AT_FDCWD, m_working.c_str(), AT_FDCWD, m_place.c_str(),
                           RENAME_EXCHANGE) != 0) {
        // A file system that cannot exchange two names: aside, then in.
        const fs::path aside = m_working.string() + ".old";
        if (::rename(m_place.c_str(), aside.c_str()) != 0) {
            return cannotWrite(m_place.string(), errno);
        }
        if (::rename(m_working.c_str(), m_place.c_str()) != 0) {
            const int reason = errno;
            fs::rename(aside, m_place, error);
            return cannotWrite(m_place.string(), reason);
        }
        m_working = aside;
    }
    syncFolder(m_place.parent_path());
    return {};
}

Result<std::string> contentOf(const fs::path& file, std::uintmax_t most) {
    std::error_code error;
    const auto size = fs::file_size(file, error);
    if (error || size > most) {
        return Problem{error ? ProblemCode::notFound : ProblemCode::badInput,
                       error ? "the file is not there." : "the file is too large to be right.",
                       "Look whether the folder is complete.", file.filename().string()};
    }
    std::ifstream stream(file, std::ios::binary);
    std::string content(size, '\0');
    stream.read(content.data(), static_cast<std::streamsize>(size));
    if (static_cast<std::uintmax_t>(stream.gcount()) != size) {
        return Problem{ProblemCode::unreadable, "the file cannot be read to its end.",
                       "Check the disk, or copy the file anew.", file.filename().string()};
    }
    return content;
}

std::optional<std::string> hashOfFile(const fs::path& file) {
    std::ifstream stream(file, std::ios::binary);
    Sha256 hash;
    std::vector<char> piece(kPiece);
    while (stream) {
        stream.read(piece.data(), static_cast<std::streamsize>(piece.size()));
        hash.add({piece.data(), static_cast<std::size_t>(stream.gcount())});
    }
    return stream.bad() || !stream.eof() ? std::nullopt : std::optional(hexOf(hash.finish()));
}

} // namespace pipwright
