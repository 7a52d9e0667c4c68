#include "app/file_doors.h"

#include "app/terminal.h"
#include "app/text.h"
#include "core/exchange/archive.h"
#include "core/history/new_book.h"
#include "core/store/book_check.h"
#include "core/store/orchard_book.h"
#include "core/store/safekeeping.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QStandardPaths>

namespace pipwright::app {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(pipwright::app::FileDoors)
};

/// The day the sample orchard's story has come to: 22 August 2026.
const Date kSampleToday = *Date::of(2026, 8, 22);

Progress stepsOf(const ui::BookDoors::ShareDone& share) {
    if (!share) {
        return {};
    }
    return [share](std::int64_t done, std::int64_t total) {
        return share(static_cast<double>(done) / static_cast<double>(total));
    };
}

ui::OpenBook::OpenReader readersOf(const OrchardBook& writer) {
    return [open = writer.readers()]() -> Result<std::unique_ptr<Store>> {
        auto book = open();
        if (!book) {
            return book.problem();
        }
        return std::unique_ptr<Store>(std::move(*book));
    };
}

Result<std::unique_ptr<ui::OpenBook>> opened(Result<std::unique_ptr<OrchardBook>> book,
                                             const QString& path) {
    if (!book) {
        return book.problem();
    }
    auto readers = readersOf(**book);
    return ui::OpenBook::open(std::move(*book), path, std::move(readers));
}

} // namespace

FileDoors::FileDoors(QString sampleArchive, QString dataFolder)
    : m_sampleArchive(std::move(sampleArchive)), m_dataFolder(std::move(dataFolder)) {}

Result<std::unique_ptr<ui::OpenBook>> FileDoors::open(const QString& path) {
    return onItsDay(opened(openBook(pathOf(path)), path));
}

Result<std::unique_ptr<ui::OpenBook>> FileDoors::openToRead(const QString& path) {
    return onItsDay(opened(openBook(pathOf(path), OpenMode::read), path));
}

Result<std::unique_ptr<ui::OpenBook>>
FileDoors::onItsDay(Result<std::unique_ptr<ui::OpenBook>> book) const {
    QFile facts(m_sampleArchive + QStringLiteral("/book_facts.csv"));
    if (book && facts.open(QIODevice::ReadOnly) &&
        facts.readAll().contains((*book)->view()->facts().id.uuid.text().c_str())) {
        (*book)->setToday(kSampleToday);
    }
    return book;
}

Result<std::unique_ptr<ui::OpenBook>> FileDoors::create(const QString& path, const QString& title,
                                                        const QString& owner) {
    auto book = createBook(pathOf(path));
    if (!book) {
        return book.problem();
    }
    UuidMaker ids;
    const auto entry = (*book)->apply(newBook(title.toStdString(), owner.toStdString(), ids), {});
    if (!entry) {
        return entry.problem();
    }
    return opened(std::move(book), path);
}

Result<QString> FileDoors::sampleBook(const ShareDone& progress) {
    const QString path = m_dataFolder + QStringLiteral("/sample.orchard");
    if (QFileInfo::exists(path)) {
        return path;
    }
    if (!QDir().mkpath(m_dataFolder)) {
        return Problem{ProblemCode::unwritable, "the folder for the sample cannot be made.",
                       "Make room on the disk or look at the rights of the folder.",
                       m_dataFolder.toStdString()};
    }
    auto words = readArchive(m_sampleArchive, path, false, progress);
    if (!words) {
        return words.problem();
    }
    if (!words->done) {
        return Problem{ProblemCode::damaged, "the sample orchard that came along is damaged.",
                       "Install Pipwright again.", m_sampleArchive.toStdString()};
    }
    return path;
}

Result<ui::ArchiveWords> FileDoors::writeArchive(const QString& book, const QString& folder,
                                                 const ShareDone& progress) {
    const auto reader = openBook(pathOf(book), OpenMode::read);
    if (!reader) {
        return reader.problem();
    }
    const auto report = pipwright::writeArchive(**reader, pathOf(folder), stepsOf(progress));
    if (!report) {
        return report.problem();
    }
    ui::ArchiveWords words;
    words.done = true;
    words.summary = Words::tr("The archive holds %1 records, %2 journal entries and %3 photos.")
                        .arg(report->records)
                        .arg(report->entries)
                        .arg(report->photos);
    for (const std::string& notice : report->notices) {
        words.faults << text(notice);
    }
    return words;
}

Result<ui::ArchiveWords> FileDoors::readArchive(const QString& folder, const QString& book,
                                                bool skipFaulty, const ShareDone& progress) {
    if (QFileInfo::exists(book)) {
        return Problem{ProblemCode::conflict, "a file of that name is there already.",
                       "Choose another name.", book.toStdString()};
    }
    auto target = createBook(pathOf(book));
    if (!target) {
        return target.problem();
    }
    ImportOptions options;
    options.skipFaulty = skipFaulty;
    auto report = pipwright::readArchive(pathOf(folder), **target, options, stepsOf(progress));
    target->reset();
    if (!report || !report->written) {
        for (const char* ending : {"", "-wal", "-shm", "-journal"}) {
            QFile::remove(book + QString::fromLatin1(ending));
        }
        const QFileInfo file(book);
        QDir(file.path() + QLatin1Char('/') + file.completeBaseName() + QStringLiteral(".photos"))
            .removeRecursively();
    }
    if (!report) {
        return report.problem();
    }
    ui::ArchiveWords words;
    words.done = report->written;
    words.summary =
        report->written
            ? Words::tr("The book is rebuilt, with %1 journal entries.").arg(report->entries)
            : Words::tr("Nothing was imported: %n fault(s) in the archive.", nullptr,
                        static_cast<int>(report->faultCount));
    for (const Problem& fault : report->faults) {
        words.faults << text(fault.sentence());
    }
    return words;
}

Result<ui::CheckWords> FileDoors::check(const QString& book, const ShareDone& progress) {
    const auto report = checkBook(pathOf(book), [&progress](const std::string&, double done) {
        return !progress || progress(done);
    });
    if (!report) {
        return report.problem();
    }
    ui::CheckWords words;
    words.summary = report->sound()
                        ? Words::tr("The book is sound: %1 records, %2 journal entries replayed, "
                                    "%3 photos.")
                              .arg(report->records)
                              .arg(report->entriesReplayed)
                              .arg(report->photos)
                        : Words::tr("The check found %n thing(s) wrong.", nullptr,
                                    static_cast<int>(report->findings.size()));
    for (const CheckFinding& finding : report->findings) {
        words.findings << text(finding.step + ": " + finding.sentence);
    }
    return words;
}

Outcome FileDoors::keepCopy(const QString& book) {
    const auto copy = keepDatedCopy(pathOf(book));
    return copy ? Outcome{} : Outcome{copy.problem()};
}

std::vector<ui::BookCopy> FileDoors::copies(const QString& book) {
    std::vector<ui::BookCopy> all;
    for (const DatedCopy& copy : datedCopies(pathOf(book))) {
        all.push_back({text(copy.file.string()), text(copy.madeAt), copy.bytes});
    }
    return all;
}

Result<QString> FileDoors::restore(const QString& book, const QString& copy) {
    const auto kept = restoreCopy(pathOf(book), pathOf(copy));
    if (!kept) {
        return kept.problem();
    }
    return text(kept->string());
}

QString FileDoors::durabilityWords(const ui::OpenBook& book) {
    const auto* file = dynamic_cast<const OrchardBook*>(&book.store());
    return file == nullptr ? QString() : text(file->journalModeWords());
}

QString sampleArchiveFolder() {
    const QString installed = QStandardPaths::locate(QStandardPaths::AppDataLocation,
                                                     QStringLiteral("sample-data/orchard"),
                                                     QStandardPaths::LocateDirectory);
    return installed.isEmpty() ? QStringLiteral(PIPWRIGHT_SAMPLE_FOLDER) : installed;
}

} // namespace pipwright::app
