#include "core/store/journal_table.h"

namespace pipwright {

namespace {

Problem damaged(std::int64_t position, std::string what) {
    return {ProblemCode::damaged, std::move(what),
            "Restore a dated copy; the damaged file is kept aside.",
            "journal, entry " + std::to_string(position)};
}

Result<JournalEntry> entryOf(const RowStatement& row) {
    JournalEntry entry;
    entry.position = row.integer(0);
    entry.copy = row.uuid(1);
    entry.moment = row.integer(2);
    if (!row.isNull(3)) {
        entry.person = PersonId(row.uuid(3));
    }
    const auto kind = entryKindNamed(row.text(4));
    if (!kind) {
        return damaged(entry.position, "the entry is of a sort that nobody knows.");
    }
    entry.kind = *kind;
    if (!row.isNull(5)) {
        entry.target = row.integer(5);
    }
    entry.sentence = row.text(6);
    entry.digest = row.text(7);
    return entry;
}

constexpr const char* kColumns =
    "SELECT position, copy, moment, person, kind, target, sentence, digest FROM journal_entry ";

} // namespace

Result<std::int64_t> JournalTable::newest() const {
    auto row = m_pool->lend("SELECT coalesce(max(position), 0) FROM journal_entry");
    if (!row) {
        return row.problem();
    }
    const auto more = (*row)->step();
    if (!more) {
        return more.problem();
    }
    return (*row)->integer(0);
}

Result<UndoLine> JournalTable::undoLine() const {
    auto rows = m_pool->lend("SELECT position, kind, target FROM journal_entry WHERE position >= "
                             "(SELECT coalesce(max(position), 0) FROM journal_entry WHERE kind = "
                             "'baseline') ORDER BY position");
    if (!rows) {
        return rows.problem();
    }
    RowStatement& row = **rows;
    UndoLine line;
    while (true) {
        const auto more = row.step();
        if (!more) {
            return more.problem();
        }
        if (!*more) {
            return line;
        }
        const auto kind = entryKindNamed(row.text(1));
        if (!kind) {
            return damaged(row.integer(0), "the entry is of a sort that nobody knows.");
        }
        line.note(row.integer(0), *kind,
                  row.isNull(2) ? std::nullopt : std::optional(row.integer(2)));
    }
}

Result<std::vector<Change>> JournalTable::changesOf(std::int64_t position) const {
    auto rows = m_pool->lend("SELECT kind, record, before, after FROM journal_change WHERE entry = "
                             "? ORDER BY number");
    if (!rows) {
        return rows.problem();
    }
    RowStatement& row = **rows;
    row.bind(1, position);
    std::vector<Change> changes;
    while (true) {
        const auto more = row.step();
        if (!more) {
            return more.problem();
        }
        if (!*more) {
            return changes;
        }
        const auto kind = kindNamed(row.text(0));
        if (!kind) {
            return damaged(position, "the entry changes a record of a kind that nobody knows.");
        }
        auto change = changeFromJson(*kind, row.uuid(1), row.text(2), row.text(3));
        if (!change) {
            Problem problem = change.problem();
            problem.where = "journal, entry " + std::to_string(position) + ", " + problem.where;
            return problem;
        }
        changes.push_back(std::move(*change));
    }
}

Result<std::vector<JournalEntry>> JournalTable::read(const JournalRequest& request) const {
    std::string sql = std::string(kColumns) + "WHERE position > ?1 AND position < ?2 ";
    if (request.record) {
        sql += "AND position IN (SELECT entry FROM journal_change WHERE record = ?4 AND kind = "
               "?5) ";
    }
    sql += request.newestFirst ? "ORDER BY position DESC LIMIT ?3" : "ORDER BY position LIMIT ?3";
    auto rows = m_pool->lend(sql);
    if (!rows) {
        return rows.problem();
    }
    RowStatement& row = **rows;
    row.bind(1, request.after);
    row.bind(2, request.before.value_or(INT64_MAX));
    row.bind(3, static_cast<std::int64_t>(
                    std::min<std::size_t>(request.limit, static_cast<std::size_t>(INT64_MAX))));
    if (request.record) {
        row.bind(4, request.record->second);
        row.bind(5, nameOf(request.record->first));
    }
    std::vector<JournalEntry> entries;
    while (true) {
        const auto more = row.step();
        if (!more) {
            return more.problem();
        }
        if (!*more) {
            return entries;
        }
        auto entry = entryOf(row);
        if (!entry) {
            return entry.problem();
        }
        if (request.withChanges) {
            auto changes = changesOf(entry->position);
            if (!changes) {
                return changes.problem();
            }
            entry->changes = std::move(*changes);
        }
        entries.push_back(std::move(*entry));
    }
}

Result<JournalEntry> JournalTable::at(std::int64_t position) const {
    JournalRequest request;
    request.after = position - 1;
    request.before = position + 1;
    auto entries = read(request);
    if (!entries) {
        return entries.problem();
    }
    if (entries->empty()) {
        return damaged(position, "the entry is not there.");
    }
    return std::move(entries->front());
}

Result<std::string> JournalTable::sentenceAt(std::int64_t position) const {
    auto row = m_pool->lend("SELECT sentence FROM journal_entry WHERE position = ?");
    if (!row) {
        return row.problem();
    }
    (*row)->bind(1, position);
    const auto more = (*row)->step();
    if (!more) {
        return more.problem();
    }
    return *more ? Result(std::string((*row)->text(0)))
                 : Result<std::string>(damaged(position, "the entry is not there."));
}

Outcome JournalTable::add(const JournalEntry& entry) {
    auto row = m_pool->lend("INSERT INTO journal_entry (position, copy, moment, person, kind, "
                            "target, sentence, digest) VALUES (?, ?, ?, ?, ?, ?, ?, ?)");
    if (!row) {
        return row.problem();
    }
    (*row)->bind(1, entry.position);
    (*row)->bind(2, entry.copy);
    (*row)->bind(3, entry.moment);
    if (entry.person) {
        (*row)->bind(4, entry.person->uuid);
    }
    (*row)->bind(5, nameOf(entry.kind));
    if (entry.target) {
        (*row)->bind(6, *entry.target);
    }
    (*row)->bind(7, std::string_view(entry.sentence));
    (*row)->bind(8, std::string_view(entry.digest));
    if (auto outcome = (*row)->run(); !outcome) {
        return outcome;
    }
    auto line = m_pool->lend("INSERT INTO journal_change (entry, number, kind, record, before, "
                             "after) VALUES (?, ?, ?, ?, ?, ?)");
    if (!line) {
        return line.problem();
    }
    std::int64_t number = 0;
    for (const Change& change : entry.changes) {
        const std::string before = beforeAsJson(change);
        const std::string after = afterAsJson(change);
        (*line)->bind(1, entry.position);
        (*line)->bind(2, ++number);
        (*line)->bind(3, nameOf(change.kind));
        (*line)->bind(4, change.record);
        before.empty() ? (*line)->bindNull(5) : (*line)->bind(5, std::string_view(before));
        after.empty() ? (*line)->bindNull(6) : (*line)->bind(6, std::string_view(after));
        if (auto outcome = (*line)->run(); !outcome) {
            return outcome;
        }
    }
    return {};
}

} // namespace pipwright
