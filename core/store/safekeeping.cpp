#include "core/store/safekeeping.h"

#include "core/store/book_place.h"
#include "core/store/migrator.h"
#include "core/store/statement.h"
#include "core/store/update_copy.h"
#include "core/store/writer_lock.h"

#include <algorithm>
#include <array>
#include <ctime>

namespace pipwright {

namespace {

constexpr std::string_view kPattern = "0000-00-00-0000"; // 0 is a digit

std::string localMinute() {
    const std::time_t now = std::time(nullptr);
    std::tm parts{};
    ::localtime_r(&now, &parts);
    std::array<char, 32> text{};
    std::strftime(text.data(), text.size(), "%Y-%m-%d-%H%M", &parts);
    return text.data();
}

/// The date in "NAME-2026-08-22-1805.orchard"; nothing for other files.
std::optional<std::string> dateIn(const std::filesystem::path& file, const std::string& name) {
    const std::string stem = file.stem().string();
    if (file.extension() != ".orchard" || !stem.starts_with(name + "-") ||
        stem.size() != name.size() + 1 + kPattern.size()) {
        return std::nullopt;
    }
    const std::string date = stem.substr(name.size() + 1);
    for (std::size_t i = 0; i < kPattern.size(); ++i) {
        const bool digit = date[i] >= '0' && date[i] <= '9';
        if (kPattern[i] == '0' ? !digit : date[i] != kPattern[i]) {
            return std::nullopt;
        }
    }
    return date;
}

std::string readable(const std::string& date) {
    return date.substr(0, 10) + " " + date.substr(11, 2) + ":" + date.substr(13, 2);
}

Result<std::int64_t> positionIn(const std::filesystem::path& file, Access access) {
    const auto connection = Connection::open(file, access);
    if (!connection) {
        return connection.problem();
    }
    return (*connection)->number("SELECT coalesce(max(position), 0) FROM journal_entry");
}

Outcome copyInto(const Connection& connection, const std::filesystem::path& target) {
    std::filesystem::path part = target;
    part += ".part";
    std::error_code error;
    std::filesystem::create_directories(target.parent_path(), error);
    std::filesystem::remove(part, error);
    auto statement = Statement::prepare(connection, "VACUUM INTO :file");
    if (!statement) {
        return statement.problem();
    }
    auto outcome = statement->bind("file", part.string()).execute();
    if (outcome) {
        outcome = settle(part);
    }
    if (outcome) {
        std::filesystem::rename(part, target, error);
        outcome =
            error ? Outcome{Problem{ProblemCode::unwritable, "the copy cannot be put away.",
                                    "Check that you may write to this folder.", target.string()}}
                  : settle(target.parent_path());
    }
    if (!outcome) {
        std::filesystem::remove(part, error);
    }
    return outcome;
}

void thinOut(const std::filesystem::path& book) {
    const auto copies = datedCopies(book);
    for (std::size_t i = kCopiesKept; i < copies.size(); ++i) {
        std::error_code ignored; // a copy that cannot be removed harms nobody
        std::filesystem::remove(copies[i].file, ignored);
    }
}

/// A name in the folder of copies that is not yet taken.
std::filesystem::path freeName(const std::filesystem::path& book, const std::string& ending) {
    const auto folder = copiesFolder(book);
    const std::string stem = book.stem().string() + "-" + localMinute() + ending;
    auto file = folder / (stem + ".orchard");
    for (int i = 2; std::filesystem::exists(file); ++i) {
        file = folder / (stem + "-" + std::to_string(i) + ".orchard");
    }
    return file;
}

Outcome checkIsBook(const std::filesystem::path& copy) {
    const auto connection = Connection::open(copy, Access::read);
    if (!connection) {
        return connection.problem();
    }
    const auto version = schemaVersion(**connection, releasedMigrations());
    if (!version) {
        return version.problem();
    }
    return checkIntegrity(**connection);
}

std::filesystem::path withEnding(std::filesystem::path file, const char* ending) {
    file += ending;
    return file;
}

/// Copies the file as it lies, with its log if it has one: also a damaged one.
Result<std::filesystem::path> keepAside(const std::filesystem::path& book) {
    const auto aside = freeName(book, "-before-restore");
    std::error_code error;
    std::filesystem::create_directories(aside.parent_path(), error);
    for (const char* ending : {"", "-wal"}) {
        const auto from = withEnding(book, ending);
        if (!std::filesystem::exists(from, error)) {
            continue;
        }
        std::filesystem::copy_file(from, withEnding(aside, ending), error);
        if (error) {
            return Problem{ProblemCode::unwritable,
                           "the book as it is cannot be kept aside (" + error.message() + ").",
                           "Make room on the disk and try again; nothing was changed.",
                           aside.string()};
        }
        if (auto outcome = settle(withEnding(aside, ending)); !outcome) {
            return outcome.problem();
        }
    }
    return aside;
}

} // namespace

std::vector<DatedCopy> datedCopies(const std::filesystem::path& book) {
    std::vector<DatedCopy> copies;
    std::error_code error;
    for (const auto& entry : std::filesystem::directory_iterator(copiesFolder(book), error)) {
        const auto date = dateIn(entry.path(), book.stem().string());
        if (!date) {
            continue;
        }
        DatedCopy copy;
        copy.file = entry.path();
        copy.madeAt = readable(*date);
        copy.bytes = static_cast<std::int64_t>(entry.file_size(error));
        const auto position = positionIn(copy.file, Access::readStill);
        copy.position = position ? *position : -1;
        copies.push_back(std::move(copy));
    }
    std::sort(copies.begin(), copies.end(), [](const DatedCopy& left, const DatedCopy& right) {
        return left.madeAt > right.madeAt;
    });
    return copies;
}

Result<std::optional<DatedCopy>> keepDatedCopy(const std::filesystem::path& book) {
    const auto connection = Connection::open(book, Access::read);
    if (!connection) {
        return connection.problem();
    }
    if (const auto version = schemaVersion(**connection, releasedMigrations()); !version) {
        return version.problem();
    }
    const auto position =
        (*connection)->number("SELECT coalesce(max(position), 0) FROM journal_entry");
    if (!position) {
        return position.problem();
    }
    const auto earlier = datedCopies(book);
    if (!earlier.empty() && earlier.front().position == *position) {
        return std::optional<DatedCopy>{};
    }
    // A second copy within the minute takes the first one's place: rename is whole or not at all.
    const std::string date = localMinute();
    const auto target = copiesFolder(book) / (book.stem().string() + "-" + date + ".orchard");
    if (auto outcome = copyInto(**connection, target); !outcome) {
        return outcome.problem();
    }
    thinOut(book);
    DatedCopy copy;
    copy.file = target;
    copy.madeAt = readable(date);
    std::error_code error;
    copy.bytes = static_cast<std::int64_t>(std::filesystem::file_size(target, error));
    const auto kept = positionIn(target, Access::readStill);
    copy.position = kept ? *kept : *position;
    return std::optional(std::move(copy));
}

Result<std::filesystem::path> restoreCopy(const std::filesystem::path& book,
                                          const std::filesystem::path& copy) {
    if (auto outcome = checkIsBook(copy); !outcome) {
        return outcome.problem();
    }
    auto lock = WriterLock::take(book);
    if (!lock) {
        return lock.problem();
    }
    auto aside = keepAside(book);
    if (!aside) {
        return aside;
    }
    const auto part = withEnding(book, ".restoring");
    std::error_code error;
    std::filesystem::remove(part, error);
    std::filesystem::copy_file(copy, part, error);
    auto outcome =
        error ? Outcome{Problem{ProblemCode::unwritable,
                                "the copy cannot be read or written (" + error.message() + ").",
                                "Make room on the disk and try again; nothing was changed.",
                                part.string()}}
              : settle(part);
    if (!outcome) {
        std::filesystem::remove(part, error);
        return outcome.problem();
    }
    // The old log must not be taken for the new file's; what it held is kept aside.
    std::filesystem::remove(withEnding(book, "-wal"), error);
    std::filesystem::remove(withEnding(book, "-shm"), error);
    std::filesystem::rename(part, book, error);
    if (error) {
        return Problem{ProblemCode::unwritable, "the copy cannot be put in the book's place.",
                       "Check that you may write to this folder; the book is kept aside as " +
                           aside->string() + ".",
                       book.string()};
    }
    if (auto settled = settle(std::filesystem::absolute(book).parent_path()); !settled) {
        return settled.problem();
    }
    return aside;
}

Result<std::filesystem::path> keepCopyBeforeUpdate(const Connection& connection, int version) {
    auto target = freeName(connection.file(), "-version-" + std::to_string(version));
    if (auto outcome = copyInto(connection, target); !outcome) {
        return outcome.problem();
    }
    return target;
}

} // namespace pipwright
