#pragma once

#include "core/exchange/archive_faults.h"
#include "core/exchange/archive_records.h"
#include "core/exchange/csv_reader.h"
#include "core/history/journal.h"

#include <filesystem>
#include <fstream>
#include <functional>
#include <optional>

namespace pipwright {

/// Takes up an entry of the journal with its changes. A Problem ends the reading.
using EntrySink = std::function<Outcome(const JournalEntry&)>;

/// The two tables of the journal, read side by side. A faulty entry is handed on as an entry
/// without changes that says so, a faulty change is left out, so that the positions still count
/// 1, 2, 3 ...
class ArchiveJournal {
  public:
    ArchiveJournal(const std::filesystem::path& folder, FaultList& faults);

    Outcome read(const EntrySink& sink, const BytesRead& bytes);

    [[nodiscard]] std::int64_t entries() const { return m_entries; }
    [[nodiscard]] std::int64_t changes() const { return m_changes; }

  private:
    struct ReadChange {
        std::int64_t position = 0;
        std::optional<Change> change; // nothing: faulty
    };

    bool openTable(CsvReader& table, std::string_view name,
                   std::span<const std::string_view> header);
    /// Fills m_entry; false when something in the line is wrong, which is then told.
    bool parseEntry();
    Outcome checkEntry() const;
    void gatherChanges();
    void tellLeftOver();
    std::optional<ReadChange> nextChange();
    Result<Change> parseChange();
    void fault(Problem problem, std::string place);

    FaultList& m_faults;
    std::ifstream m_entryStream;
    std::ifstream m_changeStream;
    CsvReader m_entryTable;
    CsvReader m_changeTable;
    bool m_hasEntries = false;
    bool m_hasChanges = false;
    JournalEntry m_entry;
    std::optional<ReadChange> m_ahead; // read, but of a later entry
    std::int64_t m_entries = 0;
    std::int64_t m_changes = 0;
    Uuid m_lastCopy;
};

} // namespace pipwright
