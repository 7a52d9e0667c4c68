#pragma once

#include "core/history/store.h"

#include <array>
#include <map>

namespace pipwright {

/// The same promises in plain memory: for tests, for trying an import, for replaying a journal.
class MemoryStore final : public Store {
  public:
    /// An empty book that writes entries under this copy id. `moment` is asked when a stamp has
    /// none.
    explicit MemoryStore(
        const Uuid& copy = Uuid::named("memory"),
        std::function<std::int64_t()> moment = [] { return std::int64_t{0}; });

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

    std::optional<Date> workedOn() const override { return m_workedOn; }
    Outcome setWorkedOn(Date day) override;
    Result<PhotoFile> addPhoto(std::string_view bytes) override;
    Result<std::string> photoBytes(const std::string& sha256) const override;

  private:
    class Load;
    using Table = std::map<Uuid, Record>;

    Result<JournalEntry> write(JournalEntry entry, const Stamp& stamp);
    Result<JournalEntry> again(EntryKind kind, std::optional<std::int64_t> target,
                               const Stamp& stamp);
    [[nodiscard]] bool isReferredTo(const Record& record) const;

    Uuid m_copy;
    std::function<std::int64_t()> m_moment;
    std::array<Table, kKindCount> m_tables;
    std::vector<JournalEntry> m_journal;
    UndoLine m_undoLine;
    std::optional<Date> m_workedOn;
    std::map<std::string, std::string> m_photos;
};

} // namespace pipwright
