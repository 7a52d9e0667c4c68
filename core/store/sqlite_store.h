#pragma once

#include "core/store/connection.h"
#include "core/store/finder.h"
#include "core/store/journal_table.h"
#include "core/store/orchard_book.h"
#include "core/store/record_table.h"
#include "core/store/row_statement.h"
#include "core/store/writer_lock.h"

#include <atomic>
#include <memory>
#include <unordered_map>

namespace pipwright {

/// The store's promises kept in SQLite. Private to core/store.
class SqliteStore final : public OrchardBook {
  public:
    /// Takes up a connection to a file whose schema is up to date. Without a lock it only reads.
    static Result<std::unique_ptr<SqliteStore>> over(std::unique_ptr<Connection> connection,
                                                     std::unique_ptr<WriterLock> lock);
    ~SqliteStore() override;

    Outcome scan(Kind kind, const ScanRequest& request,
                 const std::function<bool(const Record&)>& take) const override;
    Result<std::optional<Record>> find(Kind kind, const Uuid& id) const override;
    Result<std::int64_t> count(Kind kind) const override;
    Result<std::vector<Found>> findWords(std::string_view words, std::size_t limit) const override;

    Result<JournalEntry> apply(const ChangeSet& set, const Stamp& stamp) override;
    Result<JournalEntry> undo(const Stamp& stamp) override;
    Result<JournalEntry> redo(const Stamp& stamp) override;
    Result<std::unique_ptr<BulkLoad>> beginLoad() override;

    std::int64_t position() const override;
    std::optional<std::string> undoSentence() const override;
    std::optional<std::string> redoSentence() const override;
    Result<std::vector<JournalEntry>> journal(const JournalRequest& request) const override;

    std::optional<Date> workedOn() const override;
    Outcome setWorkedOn(Date day) override;
    Result<PhotoFile> addPhoto(std::string_view bytes) override;
    Result<std::string> photoBytes(const std::string& sha256) const override;

    const std::filesystem::path& file() const override { return m_connection->file(); }
    bool isReadOnly() const override { return m_lock == nullptr; }
    Uuid copy() const override { return m_copy; }
    std::string journalModeWords() const override;
    Readers readers() const override;
    std::filesystem::path copyBeforeUpdate() const override { return m_copyBeforeUpdate; }
    void setCopyBeforeUpdate(std::filesystem::path kept) { m_copyBeforeUpdate = std::move(kept); }

    [[nodiscard]] const Connection& connection() const { return *m_connection; }
    /// What this book promises a reader it handed out: see OrchardBook::readers.
    Outcome readAside(const std::shared_ptr<const std::atomic<bool>>& writerWaits);

  private:
    class Load;
    class KeysOfSet;

    SqliteStore(std::unique_ptr<Connection> connection, std::unique_ptr<WriterLock> lock);
    Outcome begin();
    Outcome takeCopyName();
    Outcome checkMayWrite() const;
    Result<JournalEntry> write(JournalEntry entry, const Stamp& stamp);
    Outcome writeRows(const JournalEntry& entry);
    Outcome writeRow(const Change& change, KeysOfSet& keys);
    Outcome writeFinder(const JournalEntry& entry);
    Result<JournalEntry> again(EntryKind kind, const Stamp& stamp);
    Result<std::optional<std::string>> meta(std::string_view name) const;
    Outcome setMeta(std::string_view name, std::string_view value);
    Result<const UndoLine*> undoLine() const;
    void noticeOthers() const;
    std::optional<std::string> sentenceOf(bool undo) const;
    bool hasLog() const;

    // The lock goes last, after the connection is closed.
    std::unique_ptr<WriterLock> m_lock;
    std::unique_ptr<Connection> m_connection;
    mutable StatementPool m_pool;
    RecordTables m_records;
    mutable JournalTable m_journal;
    Finder m_finder;
    Uuid m_copy;
    std::filesystem::path m_copyBeforeUpdate;
    bool m_loading = false;
    /// Up while this book wants to write and readers would keep it waiting.
    std::shared_ptr<std::atomic<bool>> m_writerWaits = std::make_shared<std::atomic<bool>>(false);
    mutable std::int64_t m_dataVersion = -1; ///< SQLite's mark of what others have written
    mutable std::optional<UndoLine> m_undoLine;
};

/// A reader as OrchardBook::readers promises it, of a book that puts up the flag to write.
Result<std::unique_ptr<OrchardBook>>
openAside(const std::filesystem::path& file,
          const std::shared_ptr<const std::atomic<bool>>& writerWaits);

/// Sets the connection up for writing: a write-ahead log where that is safe, and full syncing.
Outcome prepareForWriting(const Connection& connection);

} // namespace pipwright
