#include "core/store/book_place.h"

#include <cerrno>
#include <cstring>
#include <fcntl.h>
#include <fstream>
#include <iterator>
#include <sys/stat.h>
#include <sys/vfs.h>
#include <unistd.h>

namespace pipwright {

namespace {

std::filesystem::path beside(const std::filesystem::path& book, const char* ending) {
    std::filesystem::path folder = book;
    folder.replace_extension(ending);
    return folder;
}

Problem failed(const std::filesystem::path& file, int error) {
    const bool full = error == ENOSPC || error == EDQUOT;
    return {ProblemCode::unwritable,
            full ? "the disk is full; nothing of this was written."
                 : "it cannot be written (" + std::string(std::strerror(error)) + ").",
            full ? "Make room on the disk and try again."
                 : "Check that you may write to this folder.",
            file.string()};
}

struct FileSystem {
    unsigned long type;
    const char* words;
};

// Numbers of statfs(2).
constexpr FileSystem kUnsafe[] = {
    {0x6969, "a network share (NFS)"},
    {0x517B, "a network share (SMB)"},
    {0xFF534D42, "a network share (CIFS)"},
    {0xFE534D42, "a network share (SMB)"},
    {0x65735546, "a folder kept by a program (FUSE)"},
    {0x01021997, "a folder of another machine (9P)"},
    {0x00C36400, "a network share (Ceph)"},
    {0x5346414F, "a network share (AFS)"},
    {0x73757245, "a network share (Coda)"},
    {0x564C, "a network share (NCP)"},
    {0x7461636F, "a shared disk (OCFS2)"},
    {0x01161970, "a shared disk (GFS2)"},
    {0x0BD00BD0, "a network share (Lustre)"},
};

} // namespace

std::filesystem::path photosFolder(const std::filesystem::path& book) {
    return beside(book, ".photos");
}

std::filesystem::path copiesFolder(const std::filesystem::path& book) {
    return beside(book, ".copies");
}

std::optional<std::string> unsafeFileSystem(unsigned long type) {
    for (const FileSystem& system : kUnsafe) {
        if (system.type == type) {
            return system.words;
        }
    }
    return std::nullopt;
}

std::optional<std::string> unsafeForLog(const std::filesystem::path& book) {
    struct statfs facts {};
    if (::statfs(book.c_str(), &facts) != 0) {
        return "a file system that does not say what it is";
    }
    // Some types are signed and some are not: compare the 32 bits.
    return unsafeFileSystem(static_cast<unsigned long>(facts.f_type) & 0xFFFFFFFFUL);
}

std::string fingerprintOf(const std::filesystem::path& file) {
    struct stat facts {};
    if (::stat(file.c_str(), &facts) != 0) {
        return {};
    }
    return std::to_string(facts.st_dev) + ":" + std::to_string(facts.st_ino);
}

Outcome checkWritable(const std::filesystem::path& file) {
    const auto folder = std::filesystem::absolute(file).parent_path();
    for (const auto& path : {file, folder}) {
        if (::faccessat(AT_FDCWD, path.c_str(), W_OK, AT_EACCESS) != 0) {
            return Problem{ProblemCode::unwritable,
                           path == file ? "you may not write to this file."
                                        : "you may not write to this folder.",
                           "Copy the book to a folder you may write to, or open it for reading "
                           "only.",
                           path.string()};
        }
    }
    return {};
}

Outcome settle(const std::filesystem::path& path) {
    const int descriptor = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
    if (descriptor < 0) {
        return failed(path, errno);
    }
    const int error = ::fsync(descriptor) == 0 ? 0 : errno;
    ::close(descriptor);
    return error == 0 ? Outcome{} : Outcome{failed(path, error)};
}

Outcome writeWhole(const std::filesystem::path& target, std::string_view bytes) {
    std::filesystem::path part = target;
    part += ".part";
    const int descriptor = ::open(part.c_str(), O_WRONLY | O_CREAT | O_TRUNC | O_CLOEXEC, 0644);
    if (descriptor < 0) {
        return failed(target, errno);
    }
    int error = 0;
    while (!bytes.empty() && error == 0) {
        const auto written = ::write(descriptor, bytes.data(), bytes.size());
        if (written >= 0) {
            bytes.remove_prefix(static_cast<std::size_t>(written));
        } else if (errno != EINTR) {
            error = errno;
        }
    }
    if (error == 0 && ::fsync(descriptor) != 0) {
        error = errno;
    }
    ::close(descriptor);
    if (error == 0 && ::rename(part.c_str(), target.c_str()) != 0) {
        error = errno;
    }
    if (error != 0) {
        ::unlink(part.c_str());
        return failed(target, error);
    }
    return settle(target.parent_path().empty() ? "." : target.parent_path());
}

Result<std::string> readWhole(const std::filesystem::path& file) {
    std::ifstream stream(file, std::ios::binary);
    std::string bytes((std::istreambuf_iterator<char>(stream)), std::istreambuf_iterator<char>());
    if (!stream.is_open() || stream.bad()) {
        return Problem{ProblemCode::unreadable, "the file cannot be read.",
                       "Check that it is there and that you may read it.", file.string()};
    }
    return bytes;
}

} // namespace pipwright
