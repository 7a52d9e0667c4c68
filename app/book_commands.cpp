#include "app/command.h"
#include "app/terminal.h"
#include "core/exchange/archive.h"
#include "core/history/new_book.h"
#include "core/store/book_check.h"
#include "core/store/orchard_book.h"

#include <system_error>

namespace pipwright::app {

namespace {

/// Takes a book that did not come to be away again.
void removeBook(const std::filesystem::path& file) {
    std::error_code ignored;
    for (const char* ending : {"", "-wal", "-shm", "-journal"}) {
        std::filesystem::remove(file.string() + ending, ignored);
    }
    auto photos = file;
    photos.replace_extension(".photos");
    std::filesystem::remove_all(photos, ignored);
}

void report(const ImportReport& report, bool dryRun) {
    for (const KindCount& count : report.counts) {
        if (count.read > 0 || count.skipped > 0) {
            QString line = QStringLiteral("  %1: %2")
                               .arg(QString::fromUtf8(nameOf(count.kind).data(),
                                                      qsizetype(nameOf(count.kind).size())))
                               .arg(count.read);
            if (count.skipped > 0) {
                line += tr(", %1 left out").arg(count.skipped);
            }
            say(line);
        }
    }
    say(tr("  journal entries: %1, photos: %2").arg(report.entries).arg(report.photos));
    for (const std::string& notice : report.notices) {
        say(QString::fromStdString(notice));
    }
    for (const Problem& fault : report.faults) {
        complain(QString::fromStdString(fault.sentence()));
    }
    if (!report.moreFaults().empty()) {
        complain(QString::fromStdString(report.moreFaults()));
    }
    if (dryRun) {
        say(report.faultCount == 0
                ? tr("Dry run: nothing is wrong, nothing was written.")
                : tr("Dry run: %1 faults, nothing was written.").arg(report.faultCount));
    } else if (!report.written) {
        complain(tr("Nothing was imported: %1 faults. Repair the lines, or use --skip-faulty.")
                     .arg(report.faultCount));
    }
}

} // namespace

int newCommand(const QStringList& arguments) {
    QCommandLineParser parser;
    parser.setApplicationDescription(tr("Makes an empty orchard book with the shipped traits."));
    parser.addPositionalArgument(QStringLiteral("BOOK"), tr("the file to make, NAME.orchard"));
    const QCommandLineOption title(QStringLiteral("title"), tr("Title of the book."),
                                   QStringLiteral("TITLE"), tr("My orchard"));
    const QCommandLineOption owner(QStringLiteral("owner"), tr("Whose breeding work it is."),
                                   QStringLiteral("NAME"));
    parser.addOptions({title, owner});
    if (const auto code = parsed(parser, QStringLiteral("new"), arguments, 1, 1)) {
        return *code;
    }
    const auto file = pathOf(parser.positionalArguments().first());
    auto book = createBook(file);
    if (!book) {
        return fail(book.problem());
    }
    UuidMaker ids;
    const auto entry = (*book)->apply(
        newBook(parser.value(title).toStdString(), parser.value(owner).toStdString(), ids), {});
    if (!entry) {
        book->reset();
        removeBook(file);
        return fail(entry.problem());
    }
    say(tr("%1 is ready.").arg(parser.positionalArguments().first()));
    return kDone;
}

int importArchive(const QString& bookName, const QString& folder, const ArchiveJob& job) {
    ImportOptions options;
    options.dryRun = job.dryRun;
    options.skipFaulty = job.skipFaulty;
    options.takeChanged = job.takeChanged;
    const auto file = pathOf(bookName);
    const bool existed = std::filesystem::exists(file);
    auto book = existed ? openBook(file) : createBook(file);
    if (!book) {
        return fail(book.problem());
    }
    const auto result = readArchive(pathOf(folder), **book, options, progressOn(tr("reading")));
    const bool keep = existed || (result && result->written);
    if (!keep) {
        book->reset();
        removeBook(file);
    }
    if (!result) {
        return fail(result.problem());
    }
    report(*result, options.dryRun);
    if (result->written) {
        say(tr("%1 is ready.").arg(bookName));
    }
    const bool good = options.dryRun ? result->faultCount == 0 : result->written;
    return good ? kDone : kFailed;
}

int archiveCommand(const QStringList& arguments) {
    QCommandLineParser parser;
    parser.setApplicationDescription(
        tr("Writes a whole book as a folder of plain tables, pictures and history included."));
    parser.addPositionalArgument(QStringLiteral("BOOK"), tr("the book"));
    parser.addPositionalArgument(QStringLiteral("DIR"),
                                 tr("the folder: new, empty, or an older archive"));
    if (const auto code = parsed(parser, QStringLiteral("archive"), arguments, 2, 2)) {
        return *code;
    }
    const QStringList names = parser.positionalArguments();
    auto book = openBook(pathOf(names[0]), OpenMode::read);
    if (!book) {
        return fail(book.problem());
    }
    const auto result = writeArchive(**book, pathOf(names[1]), progressOn(tr("writing")));
    if (!result) {
        return fail(result.problem());
    }
    for (const std::string& notice : result->notices) {
        complain(QString::fromStdString(notice));
    }
    say(tr("%1: %2 records, %3 journal entries, %4 photos, %5 bytes.")
            .arg(names[1])
            .arg(result->records)
            .arg(result->entries)
            .arg(result->photos)
            .arg(result->bytes));
    return kDone;
}

int checkCommand(const QStringList& arguments) {
    QCommandLineParser parser;
    parser.setApplicationDescription(
        tr("Checks a book: file, references, finder, pictures by hash, and that the journal leads "
           "to the content."));
    parser.addPositionalArgument(QStringLiteral("BOOK"), tr("the book"));
    if (const auto code = parsed(parser, QStringLiteral("check"), arguments, 1, 1)) {
        return *code;
    }
    const auto result = checkBook(pathOf(parser.positionalArguments().first()));
    if (!result) {
        return fail(result.problem());
    }
    for (const CheckFinding& finding : result->findings) {
        complain(QStringLiteral("%1: %2").arg(QString::fromStdString(finding.step),
                                              QString::fromStdString(finding.sentence)));
    }
    say(tr("%1 records, %2 journal entries (%3 replayed), %4 photos: %5")
            .arg(result->records)
            .arg(result->entries)
            .arg(result->entriesReplayed)
            .arg(result->photos)
            .arg(result->sound() ? tr("sound") : tr("%1 findings").arg(result->findings.size())));
    return result->sound() ? kDone : kFailed;
}

} // namespace pipwright::app
