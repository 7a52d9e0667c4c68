#pragma once

#include "core/exchange/archive.h"
#include "core/history/new_book.h"
#include "core/store/book_check.h"
#include "core/store/orchard_book.h"
#include "core/store/safekeeping.h"
#include "ui/shell/book_doors.h"

#include <memory>
#include <utility>

namespace pipwright::test {

/// The window's ways to real files, without the program around them.
class TestDoors final : public ui::BookDoors {
  public:
    Result<std::unique_ptr<ui::OpenBook>> open(const QString& path) override {
        return opened(openBook(path.toStdString()), path);
    }
    Result<std::unique_ptr<ui::OpenBook>> openToRead(const QString& path) override {
        return opened(openBook(path.toStdString(), OpenMode::read), path);
    }
    Result<std::unique_ptr<ui::OpenBook>> create(const QString& path, const QString& title,
                                                 const QString& owner) override {
        auto book = createBook(path.toStdString());
        if (!book) {
            return book.problem();
        }
        UuidMaker ids;
        if (const auto entry =
                (*book)->apply(newBook(title.toStdString(), owner.toStdString(), ids), {});
            !entry) {
            return entry.problem();
        }
        return opened(std::move(book), path);
    }
    Result<QString> sampleBook(const ShareDone&) override { return samplePath; }
    Result<ui::ArchiveWords> writeArchive(const QString& book, const QString& folder,
                                          const ShareDone&) override {
        auto reader = openBook(book.toStdString(), OpenMode::read);
        if (!reader) {
            return reader.problem();
        }
        const auto report = pipwright::writeArchive(**reader, folder.toStdString());
        if (!report) {
            return report.problem();
        }
        ui::ArchiveWords words;
        words.done = true;
        words.summary = QString::number(report->records);
        return words;
    }
    Result<ui::ArchiveWords> readArchive(const QString&, const QString&, bool,
                                         const ShareDone&) override {
        return Problem{ProblemCode::notFound, "not asked for here.", "Use another test.", ""};
    }
    Result<ui::CheckWords> check(const QString& book, const ShareDone&) override {
        const auto report = checkBook(book.toStdString());
        if (!report) {
            return report.problem();
        }
        ui::CheckWords words;
        for (const auto& finding : report->findings) {
            words.findings << QString::fromStdString(finding.sentence);
        }
        words.summary = QString::number(report->records);
        return words;
    }
    Outcome keepCopy(const QString& book) override {
        const auto copy = keepDatedCopy(book.toStdString());
        return copy ? Outcome{} : Outcome{copy.problem()};
    }
    std::vector<ui::BookCopy> copies(const QString& book) override {
        std::vector<ui::BookCopy> all;
        for (const DatedCopy& copy : datedCopies(book.toStdString())) {
            all.push_back({QString::fromStdString(copy.file.string()),
                           QString::fromStdString(copy.madeAt), copy.bytes});
        }
        return all;
    }
    Result<QString> restore(const QString& book, const QString& copy) override {
        const auto kept = restoreCopy(book.toStdString(), copy.toStdString());
        return kept ? Result<QString>(QString::fromStdString(kept->string()))
                    : Result<QString>(kept.problem());
    }
    QString durabilityWords(const ui::OpenBook&) override { return {}; }

    QString samplePath;

  private:
    static Result<std::unique_ptr<ui::OpenBook>> opened(Result<std::unique_ptr<OrchardBook>> book,
                                                        const QString& path) {
        if (!book) {
            return book.problem();
        }
        return ui::OpenBook::open(std::move(*book), path,
                                  [path]() -> Result<std::unique_ptr<Store>> {
                                      auto reader = openBook(path.toStdString(), OpenMode::read);
                                      if (!reader) {
                                          return reader.problem();
                                      }
                                      return std::unique_ptr<Store>(std::move(*reader));
                                  });
    }
};

} // namespace pipwright::test
