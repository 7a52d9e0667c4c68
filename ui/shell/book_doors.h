#pragma once

#include "core/units/result.h"
#include "ui/book/open_book.h"

#include <QString>
#include <QStringList>

#include <functional>
#include <memory>
#include <vector>

namespace pipwright::ui {

/// A dated copy of a book, as the window lists it.
struct BookCopy {
    QString path;
    QString madeAt; ///< "2026-08-22 18:05"
    qint64 bytes = 0;
};

/// What a check found.
struct CheckWords {
    QString summary;
    QStringList findings; ///< none: the book is sound
};

/// What an archive brought in, or why not.
struct ArchiveWords {
    bool done = false;
    QString summary;
    QStringList faults; ///< each with file, line, column and remedy
};

/// The ways to and from a file, as the window needs them. The window knows nothing of how books
/// are stored; the program gives it one of these. All functions are plain and slow ones are called
/// on a worker; `progress` gets 0 to 1 and returns false to stop.
class BookDoors {
  public:
    using ShareDone = std::function<bool(double)>;

    virtual ~BookDoors() = default;

    virtual Result<std::unique_ptr<OpenBook>> open(const QString& path) = 0;
    /// For looking only, also while somebody else writes: every edit is refused.
    virtual Result<std::unique_ptr<OpenBook>> openToRead(const QString& path) = 0;
    virtual Result<std::unique_ptr<OpenBook>> create(const QString& path, const QString& title,
                                                     const QString& owner) = 0;
    /// Makes (or finds) the sample orchard in the user's data folder and gives its path.
    virtual Result<QString> sampleBook(const ShareDone& progress) = 0;

    virtual Result<ArchiveWords> writeArchive(const QString& book, const QString& folder,
                                              const ShareDone& progress) = 0;
    /// Rebuilds a book that must not exist yet.
    virtual Result<ArchiveWords> readArchive(const QString& folder, const QString& book,
                                             bool skipFaulty, const ShareDone& progress) = 0;
    virtual Result<CheckWords> check(const QString& book, const ShareDone& progress) = 0;

    /// Makes a dated copy if the journal moved since the last.
    virtual Outcome keepCopy(const QString& book) = 0;
    virtual std::vector<BookCopy> copies(const QString& book) = 0;
    /// The book must be closed. Gives the path under which what stood there was kept.
    virtual Result<QString> restore(const QString& book, const QString& copy) = 0;
    /// How edits reach the disk, in a sentence.
    virtual QString durabilityWords(const OpenBook& book) = 0;
};

} // namespace pipwright::ui
