#pragma once

#include "ui/shell/book_doors.h"

namespace pipwright::app {

/// The window's ways to the disk: orchard books in SQLite files, archives as folders.
class FileDoors final : public ui::BookDoors {
  public:
    /// `sampleArchive` is the folder of the sample orchard, `dataFolder` where its book is made.
    FileDoors(QString sampleArchive, QString dataFolder);

    Result<std::unique_ptr<ui::OpenBook>> open(const QString& path) override;
    Result<std::unique_ptr<ui::OpenBook>> openToRead(const QString& path) override;
    Result<std::unique_ptr<ui::OpenBook>> create(const QString& path, const QString& title,
                                                 const QString& owner) override;
    Result<QString> sampleBook(const ShareDone& progress) override;
    Result<ui::ArchiveWords> writeArchive(const QString& book, const QString& folder,
                                          const ShareDone& progress) override;
    Result<ui::ArchiveWords> readArchive(const QString& folder, const QString& book,
                                         bool skipFaulty, const ShareDone& progress) override;
    Result<ui::CheckWords> check(const QString& book, const ShareDone& progress) override;
    Outcome keepCopy(const QString& book) override;
    std::vector<ui::BookCopy> copies(const QString& book) override;
    Result<QString> restore(const QString& book, const QString& copy) override;
    QString durabilityWords(const ui::OpenBook& book) override;

  private:
    /// The sample's story stands on one day: its book opens on it, wherever it was rebuilt to, and
    /// the bottom line says so.
    [[nodiscard]] Result<std::unique_ptr<ui::OpenBook>>
    onItsDay(Result<std::unique_ptr<ui::OpenBook>> book) const;

    QString m_sampleArchive;
    QString m_dataFolder;
};

/// Where the sample orchard's archive lies: installed beside the program's data, or in the source
/// folder the program was built from.
QString sampleArchiveFolder();

} // namespace pipwright::app
