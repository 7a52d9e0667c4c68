#pragma once

#include "core/history/store.h"
#include "core/units/result.h"

#include <filesystem>
#include <functional>
#include <memory>
#include <string>

namespace pipwright {

/// How a book is opened.
enum class OpenMode {
    write, ///< one program at a time; older books are brought up to date, copied first
    read   ///< any number, also on other threads while one writes; writing gives a Problem
};

/// An orchard book in a file: a Store, and what only a file has. It belongs to the thread that
/// opened it; another thread opens the file once more, for reading.
class OrchardBook : public Store {
  public:
    [[nodiscard]] virtual const std::filesystem::path& file() const = 0;
    [[nodiscard]] virtual bool isReadOnly() const = 0;
    /// The name of this copy of the book, which its new journal entries carry.
    [[nodiscard]] virtual Uuid copy() const = 0;
    /// How edits reach the disk, and why so, as a sentence for the book's page.
    [[nodiscard]] virtual std::string journalModeWords() const = 0;
    /// The copy that was kept because opening brought an older book up to date; empty when it was
    /// not older.
    [[nodiscard]] virtual std::filesystem::path copyBeforeUpdate() const = 0;

    /// Opens further readers of this book, on any thread, also after this one is closed. With a
    /// write-ahead log a reader sees the book as it stood at its first question, whatever is
    /// written meanwhile. Without one it would keep the writer waiting, so its reading ends with a
    /// Problem (`busy`) when this book has something to write: read again after that.
    using Readers = std::function<Result<std::unique_ptr<OrchardBook>>()>;
    [[nodiscard]] virtual Readers readers() const = 0;
};

/// Opens a book. Problems: `notFound`, `unreadable` (no orchard book, or damaged beyond reading),
/// `newer`, `busy` (somebody else has it open for writing), `unwritable`.
Result<std::unique_ptr<OrchardBook>> openBook(const std::filesystem::path& file,
                                              OpenMode mode = OpenMode::write);

/// Makes an empty book where no file is yet, and opens it for writing. Problems: `conflict` when
/// something of that name is there, `unwritable`.
Result<std::unique_ptr<OrchardBook>> createBook(const std::filesystem::path& file);

} // namespace pipwright
