#include "core/history/memory_store.h"

#include "core/history/change_check.h"
#include "core/history/photo_type.h"
#include "core/history/searchable.h"
#include "core/units/sha256.h"
#include "core/units/text.h"

#include <algorithm>

namespace pipwright {

namespace {

std::size_t at(Kind kind) {
    return static_cast<std::size_t>(kind);
}

Problem nothingTo(const char* what) {
    return {ProblemCode::notFound, std::string("there is nothing to ") + what + ".",
            "Make an edit first.", ""};
}

bool holdsAllWords(const std::string& text, const std::vector<std::string>& words) {
    const std::string folded = " " + foldedForSearch(text);
    return std::all_of(words.begin(), words.end(), [&folded](const std::string& word) {
        return folded.find(" " + word) != std::string::npos;
    });
}

std::vector<std::string> wordsOf(std::string_view text) {
    std::vector<std::string> words;
    std::string word;
    for (const char c : foldedForSearch(text) + " ") {
        if (c != ' ') {
            word += c;
        } else if (!word.empty()) {
            words.push_back(std::move(word));
            word.clear();
        }
    }
    return words;
}

} // namespace

MemoryStore::MemoryStore(const Uuid& copy, std::function<std::int64_t()> moment)
    : m_copy(copy), m_moment(std::move(moment)) {}

Outcome MemoryStore::scan(Kind kind, const ScanRequest& request,
                          const std::function<bool(const Record&)>& take) const {
    for (const auto& [id, record] : m_tables[at(kind)]) {
        if (request.where && record.values[request.where->first] != request.where->second) {
            continue;
        }
        if (request.fields.empty()) {
            if (!take(record)) {
                break;
            }
            continue;
        }
        Record part{kind, id, std::vector<Value>(record.values.size())};
        for (const std::size_t field : request.fields) {
            part.values[field] = record.values[field];
        }
        if (!take(part)) {
            break;
        }
    }
    return {};
}

Result<std::optional<Record>> MemoryStore::find(Kind kind, const Uuid& id) const {
    const auto& table = m_tables[at(kind)];
    const auto found = table.find(id);
    return found == table.end() ? std::optional<Record>{} : std::optional<Record>{found->second};
}

Result<std::int64_t> MemoryStore::count(Kind kind) const {
    return static_cast<std::int64_t>(m_tables[at(kind)].size());
}

Result<std::vector<Found>> MemoryStore::findWords(std::string_view words, std::size_t limit) const {
    std::vector<Found> found;
    const auto wanted = wordsOf(words);
    if (wanted.empty()) {
        return found;
    }
    for (const Kind kind : kAllKinds) {
        for (const auto& [id, record] : m_tables[at(kind)]) {
            std::string text;
            for (std::size_t i = 0; i < record.values.size(); ++i) {
                const auto* part = std::get_if<std::string>(&record.values[i]);
                if (part != nullptr && isSearchable(kind, i) && !part->empty()) {
                    text += (text.empty() ? "" : " · ") + *part;
                }
            }
            if (!text.empty() && holdsAllWords(text, wanted)) {
                found.push_back({kind, id, text});
                if (found.size() == limit) {
                    return found;
                }
            }
        }
    }
    return found;
}

bool MemoryStore::isReferredTo(const Record& record) const {
    for (const Kind kind : kAllKinds) {
        const auto& fields = fieldsOf(kind);
        for (const auto& [id, other] : m_tables[at(kind)]) {
            for (std::size_t i = 0; i < fields.size(); ++i) {
                if (fields[i].type == FieldType::reference && fields[i].refersTo == record.kind &&
                    other.values[i] == Value{record.id}) {
                    return true;
                }
            }
        }
    }
    return false;
}

Result<JournalEntry> MemoryStore::write(JournalEntry entry, const Stamp& stamp) {
    auto after =
        checkChanges(entry.changes, [this](Kind kind, const Uuid& id) { return find(kind, id); });
    if (!after) {
        return after.problem();
    }
    std::vector<std::pair<Kind, std::optional<Record>>> kept; // what stood before, to step back to
    for (const Change& change : entry.changes) {
        auto& table = m_tables[at(change.kind)];
        const auto before = table.find(change.record);
        kept.emplace_back(change.kind,
                          before == table.end() ? std::nullopt : std::optional(before->second));
        const auto& record = after->at(change.record);
        if (record) {
            table[change.record] = *record;
        } else {
            table.erase(change.record);
        }
    }
    for (const Change& change : entry.changes) {
        if (change.what == ChangeWhat::erased && isReferredTo(recordOf(change))) {
            for (std::size_t i = kept.size(); i-- > 0;) {
                auto& table = m_tables[at(kept[i].first)];
                table.erase(entry.changes[i].record);
                if (kept[i].second) {
                    table[entry.changes[i].record] = *kept[i].second;
                }
            }
            return Problem{ProblemCode::conflict, "other records still refer to this one.",
                           "Take those back first.",
                           std::string(nameOf(change.kind)) + " " + change.record.text()};
        }
    }
    entry.position = position() + 1;
    entry.copy = m_copy;
    entry.moment = stamp.moment != 0 ? stamp.moment : m_moment();
    m_undoLine.note(entry.position, entry.kind, entry.target);
    m_journal.push_back(entry);
    return entry;
}

Result<JournalEntry> MemoryStore::apply(const ChangeSet& set, const Stamp& stamp) {
    JournalEntry entry;
    entry.person = set.person ? set.person : stamp.person;
    entry.sentence = set.sentence;
    entry.changes = set.changes;
    return write(std::move(entry), stamp);
}

Result<JournalEntry> MemoryStore::again(EntryKind kind, std::optional<std::int64_t> target,
                                        const Stamp& stamp) {
    if (!target) {
        return nothingTo(kind == EntryKind::undo ? "undo" : "redo");
    }
    const JournalEntry& original = m_journal[static_cast<std::size_t>(*target - 1)];
    JournalEntry entry;
    entry.kind = kind;
    entry.target = target;
    entry.person = stamp.person;
    entry.sentence = original.sentence;
    entry.changes = kind == EntryKind::undo ? inverseOf(original.changes) : original.changes;
    return write(std::move(entry), stamp);
}

Result<JournalEntry> MemoryStore::undo(const Stamp& stamp) {
    return again(EntryKind::undo, m_undoLine.undoable(), stamp);
}

Result<JournalEntry> MemoryStore::redo(const Stamp& stamp) {
    return again(EntryKind::redo, m_undoLine.redoable(), stamp);
}

std::int64_t MemoryStore::position() const {
    return m_journal.empty() ? 0 : m_journal.back().position;
}

std::optional<std::string> MemoryStore::undoSentence() const {
    const auto target = m_undoLine.undoable();
    return target ? std::optional(m_journal[static_cast<std::size_t>(*target - 1)].sentence)
                  : std::nullopt;
}

std::optional<std::string> MemoryStore::redoSentence() const {
    const auto target = m_undoLine.redoable();
    return target ? std::optional(m_journal[static_cast<std::size_t>(*target - 1)].sentence)
                  : std::nullopt;
}

Result<std::vector<JournalEntry>> MemoryStore::journal(const JournalRequest& request) const {
    std::vector<JournalEntry> entries;
    const auto take = [&](const JournalEntry& entry) {
        const bool inside =
            entry.position > request.after && (!request.before || entry.position < *request.before);
        const bool touches =
            !request.record ||
            std::any_of(entry.changes.begin(), entry.changes.end(), [&](const Change& change) {
                return change.kind == request.record->first &&
                       change.record == request.record->second;
            });
        if (inside && touches && entries.size() < request.limit) {
            entries.push_back(entry);
            if (!request.withChanges) {
                entries.back().changes.clear();
            }
        }
    };
    if (request.newestFirst) {
        std::for_each(m_journal.rbegin(), m_journal.rend(), take);
    } else {
        std::for_each(m_journal.begin(), m_journal.end(), take);
    }
    return entries;
}

Outcome MemoryStore::setWorkedOn(Date day) {
    m_workedOn = day;
    return {};
}

Result<PhotoFile> MemoryStore::addPhoto(std::string_view bytes) {
    auto type = photoTypeOf(bytes);
    if (!type) {
        return type.problem();
    }
    PhotoFile file{hexOf(sha256(bytes)), std::string(type->mediaType)};
    m_photos[file.sha256] = std::string(bytes);
    return file;
}

Result<std::string> MemoryStore::photoBytes(const std::string& sha256Text) const {
    const auto found = m_photos.find(sha256Text);
    if (found == m_photos.end()) {
        return Problem{ProblemCode::notFound, "the picture is not beside the book.",
                       "Put the file back into the folder of photos.", sha256Text};
    }
    return found->second;
}

/// Collects aside and takes its place in the store only when all of it holds.
class MemoryStore::Load final : public BulkLoad {
  public:
    explicit Load(MemoryStore& store) : m_store(store) {}

    Outcome add(const Record& record) override {
        if (auto outcome = checkRecord(record); !outcome) {
            return outcome;
        }
        if (!m_tables[at(record.kind)].emplace(record.id, record).second) {
            return Problem{ProblemCode::badInput, "this id is given to two records.",
                           "Give each record an id of its own.",
                           std::string(nameOf(record.kind)) + " " + record.id.text()};
        }
        return {};
    }

    Outcome add(const JournalEntry& entry) override {
        const std::int64_t expected = m_journal.empty() ? 1 : m_journal.back().position + 1;
        if (entry.position != expected) {
            return Problem{ProblemCode::badInput, "the journal has a gap or a double entry.",
                           "Number the entries 1, 2, 3 ... without gaps.",
                           "position " + std::to_string(entry.position)};
        }
        m_journal.push_back(entry);
        return {};
    }

    Outcome finish() override {
        for (const Kind kind : kAllKinds) {
            for (const auto& [id, record] : m_tables[at(kind)]) {
                if (auto outcome = checkReferences(record); !outcome) {
                    return outcome;
                }
            }
        }
        m_store.m_tables = std::move(m_tables);
        for (const JournalEntry& entry : m_journal) {
            m_store.m_undoLine.note(entry.position, entry.kind, entry.target);
        }
        m_store.m_journal = std::move(m_journal);
        return {};
    }

  private:
    Outcome checkReferences(const Record& record) const {
        const auto& fields = fieldsOf(record.kind);
        for (std::size_t i = 0; i < fields.size(); ++i) {
            const auto* target = std::get_if<Uuid>(&record.values[i]);
            if (target != nullptr && !m_tables[at(fields[i].refersTo)].contains(*target)) {
                return Problem{ProblemCode::badInput,
                               "it refers to a " + std::string(nameOf(fields[i].refersTo)) +
                                   " that is not there.",
                               "Add that record, or leave the field empty.",
                               std::string(nameOf(record.kind)) + " " + record.id.text() +
                                   ", field " + std::string(fields[i].name)};
            }
        }
        return {};
    }

    MemoryStore& m_store;
    std::array<Table, kKindCount> m_tables;
    std::vector<JournalEntry> m_journal;
};

Result<std::unique_ptr<BulkLoad>> MemoryStore::beginLoad() {
    const bool empty =
        m_journal.empty() && std::all_of(m_tables.begin(), m_tables.end(),
                                         [](const Table& table) { return table.empty(); });
    if (!empty) {
        return Problem{ProblemCode::conflict, "the book is not empty.",
                       "Load into a new, empty book.", ""};
    }
    return std::unique_ptr<BulkLoad>(std::make_unique<Load>(*this));
}

} // namespace pipwright
