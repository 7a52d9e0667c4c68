#include "core/exchange/archive_journal.h"

#include <algorithm>
#include <charconv>

namespace pipwright {

namespace {

constexpr std::int64_t kEntriesBetweenNews = 1024;

std::optional<std::int64_t> wholeNumber(std::string_view text) {
    std::int64_t number = 0;
    const char* const end = text.data() + text.size();
    const auto [stop, error] = std::from_chars(text.data(), end, number);
    return error == std::errc{} && stop == end && !text.empty() ? std::optional(number)
                                                                : std::nullopt;
}

Problem wrong(std::string_view column, std::string what, std::string remedy) {
    return {ProblemCode::badInput, std::move(what), std::move(remedy), std::string(column)};
}

Problem wrongCell(std::string_view column, std::string_view cell, std::string remedy) {
    return wrong(column, "\"" + std::string(cell) + "\" cannot stand here.", std::move(remedy));
}

constexpr std::string_view kUnreadable = "(this line of the archive could not be read)";

} // namespace

ArchiveJournal::ArchiveJournal(const std::filesystem::path& folder, FaultList& faults)
    : m_faults(faults), m_entryStream(folder / kEntriesFile, std::ios::binary),
      m_changeStream(folder / kChangesFile, std::ios::binary),
      m_entryTable(m_entryStream, std::string(kEntriesFile)),
      m_changeTable(m_changeStream, std::string(kChangesFile)) {}

void ArchiveJournal::fault(Problem problem, std::string place) {
    problem.where = std::move(place);
    m_faults.add(std::move(problem));
}

bool ArchiveJournal::openTable(CsvReader& table, std::string_view name,
                               std::span<const std::string_view> header) {
    std::string columns;
    for (const auto column : header) {
        columns += (columns.empty() ? "" : ",") + std::string(column);
    }
    const auto first = table.next();
    if (first && *first &&
        std::equal(header.begin(), header.end(), table.cells().begin(), table.cells().end())) {
        return true;
    }
    if (!first) {
        m_faults.add(first.problem());
    } else {
        fault({ProblemCode::badInput, "the columns are not those of this table.",
               "The first line must be: " + columns + ".", ""},
              placeInTable(name, 1));
    }
    return false;
}

Outcome ArchiveJournal::read(const EntrySink& sink, const BytesRead& bytes) {
    for (const auto& [stream, name] :
         {std::pair(&m_entryStream, kEntriesFile), std::pair(&m_changeStream, kChangesFile)}) {
        if (!*stream) {
            fault({ProblemCode::badInput, "the table is not there.",
                   "Look whether the folder is complete.", ""},
                  std::string(name));
        }
    }
    m_hasEntries = m_entryStream && openTable(m_entryTable, kEntriesFile, kEntryColumns);
    m_hasChanges = m_changeStream && openTable(m_changeTable, kChangesFile, kChangeColumns);
    std::int64_t told = 0;
    while (m_hasEntries && !m_entryTable.finished()) {
        const auto more = m_entryTable.next();
        if (more && !*more) {
            break;
        }
        m_entry = {};
        const bool good = more && parseEntry();
        if (!more) {
            m_faults.add(more.problem());
        }
        if (!good) {
            m_entry = {};
            m_entry.copy = m_lastCopy;
            m_entry.sentence = kUnreadable;
        }
        m_entry.position = ++m_entries;
        gatherChanges();
        m_lastCopy = m_entry.copy;
        if (auto outcome = sink(m_entry); !outcome) {
            return outcome;
        }
        const std::int64_t all = m_entryTable.bytesRead() + m_changeTable.bytesRead();
        if (m_entries % kEntriesBetweenNews == 0 && !bytes(all - std::exchange(told, all))) {
            return Problem{ProblemCode::cancelled, "the import was stopped.",
                           "Nothing was written; start again when it suits.", ""};
        }
    }
    tellLeftOver();
    return {};
}

bool ArchiveJournal::parseEntry() {
    const auto& cells = m_entryTable.cells();
    const auto tell = [this](const Problem& problem) {
        fault(problem, placeInTable(kEntriesFile, m_entryTable.line(), problem.where));
        return false;
    };
    if (cells.size() != kEntryColumns.size()) {
        return tell(wrong("", "the line has " + std::to_string(cells.size()) + " cells.",
                          "Give it " + std::to_string(kEntryColumns.size()) + " cells."));
    }
    const auto position = wholeNumber(cells[0]);
    const auto copy = Uuid::fromText(cells[1]);
    const auto moment = momentFromText(cells[2]);
    const auto person = Uuid::fromText(cells[3]);
    const auto kind = entryKindNamed(cells[4]);
    const auto target = wholeNumber(cells[5]);
    if (position != m_entries + 1) {
        return tell(wrongCell("position", cells[0],
                              "Number the entries 1, 2, 3 ... without gaps: here " +
                                  std::to_string(m_entries + 1) + "."));
    }
    if (!copy) {
        return tell(wrongCell("copy", cells[1], "Write a UUID of 36 characters."));
    }
    if (!moment) {
        return tell(wrongCell("moment", cells[2], "Write it as 2026-08-22T09:30:00.000Z."));
    }
    if (!person && !cells[3].empty()) {
        return tell(wrongCell("person", cells[3], "Write a person's id, or nothing."));
    }
    if (!kind) {
        return tell(wrongCell("kind", cells[4], "Use one of: edit, undo, redo, baseline."));
    }
    if (!target && !cells[5].empty()) {
        return tell(wrongCell("target", cells[5], "Write the position of an earlier entry."));
    }
    m_entry.position = *position;
    m_entry.copy = *copy;
    m_entry.moment = *moment;
    m_entry.person = person ? std::optional(PersonId(*person)) : std::nullopt;
    m_entry.kind = *kind;
    m_entry.target = target;
    m_entry.sentence = cells[6];
    m_entry.digest = cells[7];
    if (auto outcome = checkEntry(); !outcome) {
        return tell(outcome.problem());
    }
    return true;
}

Outcome ArchiveJournal::checkEntry() const {
    const bool takesBack = m_entry.kind == EntryKind::undo || m_entry.kind == EntryKind::redo;
    const bool earlier =
        m_entry.target && *m_entry.target >= 1 && *m_entry.target < m_entry.position;
    if (takesBack != m_entry.target.has_value() || (takesBack && !earlier)) {
        return wrong("target", "what this entry takes back or does again is not an earlier entry.",
                     "Write the position of an earlier entry for undo and redo, else nothing.");
    }
    if (m_entry.kind == EntryKind::baseline && m_entry.digest.empty()) {
        return wrong("digest", "a baseline stands here without the digest of its content.",
                     "Restore the line from the archive as it was written.");
    }
    return {};
}

void ArchiveJournal::gatherChanges() {
    while (m_hasChanges) {
        if (!m_ahead) {
            m_ahead = nextChange();
        }
        if (!m_ahead || m_ahead->position > m_entry.position) {
            return;
        }
        if (m_ahead->position < m_entry.position) {
            fault({ProblemCode::badInput, "the line is out of order.",
                   "Sort the lines by position and number.", ""},
                  placeInTable(kChangesFile, m_changeTable.line(), "position"));
        } else if (m_ahead->change) {
            m_entry.changes.push_back(std::move(*m_ahead->change));
            ++m_changes;
        }
        m_ahead.reset();
    }
}

/// Changes behind the last entry belong to none.
void ArchiveJournal::tellLeftOver() {
    while (m_hasEntries && m_hasChanges) {
        if (!m_ahead) {
            m_ahead = nextChange();
        }
        if (!m_ahead) {
            return;
        }
        fault({ProblemCode::badInput,
               "there is no entry " + std::to_string(m_ahead->position) + " in the journal.",
               "Restore the missing line of journal_entry.csv.", ""},
              placeInTable(kChangesFile, m_changeTable.line(), "position"));
        m_ahead.reset();
    }
}

std::optional<ArchiveJournal::ReadChange> ArchiveJournal::nextChange() {
    while (!m_changeTable.finished()) {
        const auto more = m_changeTable.next();
        if (!more) {
            m_faults.add(more.problem());
            continue;
        }
        if (!*more) {
            break;
        }
        const auto& cells = m_changeTable.cells();
        const auto position = wholeNumber(cells[0]);
        if (cells.size() != kChangeColumns.size() || !position) {
            fault({ProblemCode::badInput, "the line is not a change of the journal.",
                   "Give it " + std::to_string(kChangeColumns.size()) +
                       " cells, the first the position of its entry.",
                   ""},
                  placeInTable(kChangesFile, m_changeTable.line(), "position"));
            continue;
        }
        auto change = parseChange();
        if (!change) {
            const Problem& problem = change.problem();
            fault(problem, placeInTable(kChangesFile, m_changeTable.line(), problem.where));
            return ReadChange{*position, std::nullopt};
        }
        return ReadChange{*position, std::move(*change)};
    }
    return std::nullopt;
}

Result<Change> ArchiveJournal::parseChange() {
    const auto& cells = m_changeTable.cells();
    const auto kind = kindNamed(cells[2]);
    const auto record = Uuid::fromText(cells[3]);
    if (!wholeNumber(cells[1])) {
        return wrongCell("number", cells[1], "Number the changes of an entry 1, 2, 3 ...");
    }
    if (!kind) {
        return wrongCell("kind", cells[2], "Write the name of a table of this archive.");
    }
    if (!record) {
        return wrongCell("record", cells[3], "Write a UUID of 36 characters.");
    }
    auto change = changeFromJson(*kind, *record, cells[4], cells[5]);
    if (!change) {
        Problem problem = change.problem();
        problem.where = problem.where.empty() ? "after" : "after, field " + problem.where;
        return problem;
    }
    return change;
}

} // namespace pipwright
