#include "core/store/orchard_book.h"

#include "core/store/book_place.h"
#include "core/store/migrator.h"
#include "core/store/sqlite_store.h"
#include "core/store/update_copy.h"
#include "core/store/writer_lock.h"

namespace pipwright {

namespace {

Outcome checkFile(const std::filesystem::path& file) {
    std::error_code error;
    const auto status = std::filesystem::status(file, error);
    if (!std::filesystem::exists(status)) {
        return Problem{ProblemCode::notFound, "there is no such file.",
                       "Look for the book where it was last kept.", file.string()};
    }
    if (!std::filesystem::is_regular_file(status)) {
        return Problem{ProblemCode::unreadable, "this is a folder or a device, not a book.",
                       "Choose a file whose name ends in .orchard.", file.string()};
    }
    if (std::filesystem::file_size(file, error) == 0) {
        return Problem{ProblemCode::unreadable, "the file is empty; it is not an orchard book.",
                       "Delete it and make a new book, or restore a dated copy.", file.string()};
    }
    return {};
}

/// A book on a read-only medium has no log beside it and can be read as it lies.
bool liesStill(const std::filesystem::path& file) {
    std::filesystem::path log = file;
    log += "-wal";
    std::error_code error;
    const bool hasLog = std::filesystem::exists(log, error);
    return !hasLog && !checkWritable(file);
}

} // namespace

namespace {

Result<std::unique_ptr<SqliteStore>> readingStore(const std::filesystem::path& file,
                                                  std::span<const Migration> migrations) {
    if (auto outcome = checkFile(file); !outcome) {
        return outcome.problem();
    }
    auto connection = Connection::open(file, liesStill(file) ? Access::readStill : Access::read);
    if (!connection) {
        return connection.problem();
    }
    const auto version = schemaVersion(**connection, migrations);
    if (!version) {
        return version.problem();
    }
    if (*version < migrations.back().version) {
        return Problem{ProblemCode::unreadable,
                       "the book is of an older version and must be brought up to date first.",
                       "Open it for writing once; a copy is kept.", file.string()};
    }
    return SqliteStore::over(std::move(*connection), nullptr);
}

} // namespace

Result<std::unique_ptr<OrchardBook>> openForReading(const std::filesystem::path& file,
                                                    std::span<const Migration> migrations) {
    auto store = readingStore(file, migrations);
    if (!store) {
        return store.problem();
    }
    return std::unique_ptr<OrchardBook>(std::move(*store));
}

Result<std::unique_ptr<OrchardBook>>
openAside(const std::filesystem::path& file,
          const std::shared_ptr<const std::atomic<bool>>& writerWaits) {
    auto store = readingStore(file, releasedMigrations());
    if (!store) {
        return store.problem();
    }
    if (auto outcome = (*store)->readAside(writerWaits); !outcome) {
        return outcome.problem();
    }
    return std::unique_ptr<OrchardBook>(std::move(*store));
}

Result<std::unique_ptr<OrchardBook>> openForWriting(const std::filesystem::path& file,
                                                    std::span<const Migration> migrations) {
    if (auto outcome = checkFile(file); !outcome) {
        return outcome.problem();
    }
    if (auto outcome = checkWritable(file); !outcome) {
        return outcome.problem();
    }
    auto lock = WriterLock::take(file);
    if (!lock) {
        return lock.problem();
    }
    auto connection = Connection::open(file, Access::write);
    if (!connection) {
        return connection.problem();
    }
    const auto version = schemaVersion(**connection, migrations);
    if (!version) {
        return version.problem();
    }
    if (auto outcome = prepareForWriting(**connection); !outcome) {
        return outcome.problem();
    }
    std::filesystem::path kept;
    if (*version < migrations.back().version) {
        auto copy = keepCopyBeforeUpdate(**connection, *version);
        if (!copy) {
            return copy.problem();
        }
        kept = std::move(*copy);
        if (auto outcome = migrate(**connection, migrations); !outcome) {
            return outcome.problem();
        }
    }
    auto store = SqliteStore::over(std::move(*connection), std::move(*lock));
    if (!store) {
        return store.problem();
    }
    (*store)->setCopyBeforeUpdate(std::move(kept));
    return std::unique_ptr<OrchardBook>(std::move(*store));
}

Result<std::unique_ptr<OrchardBook>> openBook(const std::filesystem::path& file, OpenMode mode) {
    return mode == OpenMode::read ? openForReading(file, releasedMigrations())
                                  : openForWriting(file, releasedMigrations());
}

Result<std::unique_ptr<OrchardBook>> createBook(const std::filesystem::path& file) {
    std::error_code error;
    if (std::filesystem::exists(file, error)) {
        return Problem{ProblemCode::conflict, "there is already a file of that name.",
                       "Choose another name; nothing was overwritten.", file.string()};
    }
    auto lock = WriterLock::take(file);
    if (!lock) {
        return lock.problem();
    }
    // Made under another name, so that a crash leaves no half book under this one.
    std::filesystem::path part = file;
    part += ".new";
    std::filesystem::remove(part, error);
    {
        auto connection = Connection::open(part, Access::create);
        auto outcome = connection ? migrate(**connection, releasedMigrations())
                                  : Outcome{connection.problem()};
        if (!outcome) {
            connection = Problem{};
            std::filesystem::remove(part, error);
            return outcome.problem();
        }
    }
    std::filesystem::rename(part, file, error);
    if (error) {
        std::filesystem::remove(part, error);
        return Problem{ProblemCode::unwritable, "the file cannot be made.",
                       "Check that you may write to this folder.", file.string()};
    }
    lock = Problem{}; // opening takes it anew
    return openForWriting(file, releasedMigrations());
}

} // namespace pipwright
