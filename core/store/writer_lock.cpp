#include "core/store/writer_lock.h"

#include <array>
#include <cerrno>
#include <cstring>
#include <fcntl.h>
#include <string>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

namespace pipwright {

namespace {

std::string hostName() {
    std::array<char, 256> name{};
    return ::gethostname(name.data(), name.size() - 1) == 0 ? name.data() : "an unknown machine";
}

std::string holderOf(int descriptor) {
    std::array<char, 400> text{};
    const auto size = ::pread(descriptor, text.data(), text.size() - 1, 0);
    return size > 0 ? std::string(text.data(), static_cast<std::size_t>(size))
                    : std::string("another program");
}

bool isStillNamed(int descriptor, const std::filesystem::path& file) {
    struct stat held {};
    struct stat named {};
    return ::fstat(descriptor, &held) == 0 && ::stat(file.c_str(), &named) == 0 &&
           held.st_ino == named.st_ino && held.st_dev == named.st_dev;
}

void writeHolder(int descriptor) {
    const std::string holder = "process " + std::to_string(::getpid()) + " on " + hostName();
    if (::ftruncate(descriptor, 0) == 0) {
        // Only words for the other program; the lock holds without them.
        static_cast<void>(::pwrite(descriptor, holder.data(), holder.size(), 0) < 0);
    }
}

} // namespace

Result<std::unique_ptr<WriterLock>> WriterLock::take(const std::filesystem::path& book) {
    std::filesystem::path file = book;
    file += "-lock";
    while (true) {
        const int descriptor = ::open(file.c_str(), O_RDWR | O_CREAT | O_CLOEXEC, 0644);
        if (descriptor < 0) {
            return Problem{ProblemCode::unwritable,
                           "the folder of the book cannot be written to (" +
                               std::string(std::strerror(errno)) + ").",
                           "Copy the book to a folder you may write to, or open it for reading "
                           "only.",
                           book.string()};
        }
        const int failed = ::flock(descriptor, LOCK_EX | LOCK_NB) == 0 ? 0 : errno;
        if (failed == EWOULDBLOCK) {
            const std::string holder = holderOf(descriptor);
            ::close(descriptor);
            return Problem{ProblemCode::busy,
                           "the book is open for writing in another window (" + holder + ").",
                           "Close it there, or open the book for reading only.", book.string()};
        }
        if (failed != 0 || isStillNamed(descriptor, file)) {
            // Some network shares know no such locks; there SQLite's own must do.
            writeHolder(descriptor);
            return std::unique_ptr<WriterLock>(new WriterLock(std::move(file), descriptor));
        }
        ::close(descriptor); // its last holder took the name away meanwhile
    }
}

WriterLock::~WriterLock() {
    std::error_code ignored;
    std::filesystem::remove(m_file, ignored);
    ::close(m_descriptor);
}

} // namespace pipwright
