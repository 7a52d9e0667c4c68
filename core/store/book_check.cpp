#include "core/store/book_check.h"

#include "core/history/digest.h"
#include "core/store/migrator.h"
#include "core/store/orchard_book.h"
#include "core/store/sqlite_store.h"
#include "core/units/sha256.h"

#include <map>

namespace pipwright {

namespace {

constexpr std::size_t kMostFindings = 100; // a damaged book would fill the screen
constexpr std::size_t kEntriesAtOnce = 200;

using RecordName = std::pair<Kind, Uuid>;

std::string wordsOf(const RecordName& name) {
    return std::string(nameOf(name.first)) + " " + name.second.text();
}

/// One check of one book.
class Check {
  public:
    Check(const SqliteStore& store, const CheckProgress& progress)
        : m_store(store), m_progress(progress) {}

    Result<CheckReport> run() {
        for (const auto step : {&Check::file, &Check::content, &Check::finder, &Check::photos,
                                &Check::journal, &Check::undoLine}) {
            if (auto outcome = (this->*step)(); !outcome) {
                return outcome.problem();
            }
        }
        return std::move(m_report);
    }

  private:
    Outcome tell(const std::string& step, double done) const {
        if (m_progress && !m_progress(step, done)) {
            return Problem{ProblemCode::cancelled, "the check was stopped.",
                           "Start it again when there is time.", m_store.file().string()};
        }
        return {};
    }

    void found(const char* step, std::string sentence) {
        if (m_report.findings.size() < kMostFindings) {
            m_report.findings.push_back({step, std::move(sentence)});
        }
    }

    /// Each row of the statement is a finding.
    Outcome findingsOf(const char* step, const std::string& sql) {
        auto rows = RowStatement::prepare(m_store.connection(), sql);
        if (!rows) {
            found(step, rows.problem().sentence());
            return {};
        }
        while (true) {
            const auto more = rows->step();
            if (!more) {
                found(step, more.problem().sentence());
                return {};
            }
            if (!*more) {
                return {};
            }
            if (rows->text(0) != "ok") {
                found(step, std::string(rows->text(0)));
            }
        }
    }

    Outcome file() {
        if (auto outcome = tell("file", 0.0); !outcome) {
            return outcome;
        }
        if (auto outcome = findingsOf("file", "PRAGMA integrity_check(20)"); !outcome) {
            return outcome;
        }
        if (auto outcome = tell("references", 0.0); !outcome) {
            return outcome;
        }
        return findingsOf("references",
                          "SELECT \"table\" || ', row ' || rowid || ', refers to no ' || parent "
                          "FROM pragma_foreign_key_check LIMIT 20");
    }

    Outcome content() {
        for (const Kind kind : kAllKinds) {
            const double part = static_cast<double>(kind) / static_cast<double>(kKindCount);
            if (auto outcome = tell("records", part); !outcome) {
                return outcome;
            }
            bool stopped = false;
            auto outcome = m_store.scan(kind, {}, [&](const Record& record) {
                m_digest.add(record);
                if (const auto checked = checkRecord(record); !checked) {
                    found("records",
                          wordsOf({kind, record.id}) + ": " + checked.problem().sentence());
                }
                stopped = ++m_report.records % 10'000 == 0 && !tell("records", part);
                return !stopped;
            });
            if (stopped) {
                return tell("records", part);
            }
            if (!outcome) {
                found("records", outcome.problem().sentence());
            }
        }
        m_report.digest = m_digest.text();
        return {};
    }

    Outcome finder() {
        if (auto outcome = tell("finder", 0.0); !outcome) {
            return outcome;
        }
        std::int64_t expected = 0;
        for (const Kind kind : kAllKinds) {
            ScanRequest request;
            const auto& fields = fieldsOf(kind);
            for (std::size_t i = 0; i < fields.size(); ++i) {
                if (fields[i].type == FieldType::text) {
                    request.fields.push_back(i);
                }
            }
            if (request.fields.empty()) {
                continue;
            }
            static_cast<void>(m_store.scan(kind, request, [&expected](const Record& record) {
                expected += finderWords(record).empty() ? 0 : 1;
                return true;
            }));
        }
        const auto there = m_store.connection().number("SELECT count(*) FROM finder_docsize");
        if (!there || *there != expected) {
            found("finder", "the finder knows " + std::to_string(there ? *there : 0) +
                                " records with words, but the book has " +
                                std::to_string(expected) + ".");
        }
        return {};
    }

    Outcome photos() {
        const auto photos = m_store.all<Photo>();
        if (!photos) {
            found("photos", photos.problem().sentence());
            return {};
        }
        std::map<std::string, bool> seen;
        for (const Photo& photo : *photos) {
            if (!seen.emplace(photo.sha256, true).second) {
                continue;
            }
            const double part =
                static_cast<double>(seen.size()) / static_cast<double>(photos->size());
            if (auto outcome = tell("photos", part); !outcome) {
                return outcome;
            }
            const auto bytes = m_store.photoBytes(photo.sha256);
            if (!bytes) {
                found("photos", bytes.problem().sentence());
            } else if (hexOf(sha256(*bytes)) != photo.sha256) {
                found("photos", photo.sha256 + ": the picture's bytes are not those it was kept "
                                               "with; put the original back.");
            }
            ++m_report.photos;
        }
        return {};
    }

    Outcome journal() {
        m_report.entries = m_store.position();
        JournalRequest request;
        request.limit = kEntriesAtOnce;
        while (true) {
            const double done = m_report.entries == 0
                                    ? 1.0
                                    : static_cast<double>(m_report.entriesReplayed) /
                                          static_cast<double>(m_report.entries);
            if (auto outcome = tell("journal", done); !outcome) {
                return outcome;
            }
            const auto entries = m_store.journal(request);
            if (!entries) {
                found("journal", entries.problem().sentence());
                return {};
            }
            for (const JournalEntry& entry : *entries) {
                if (entry.kind == EntryKind::baseline) {
                    if (m_digest.text() != entry.digest) {
                        found("journal", "replayed back to entry " +
                                             std::to_string(entry.position) +
                                             ", the content is not the one that was laid there.");
                    }
                    return {};
                }
                takeBack(entry);
            }
            if (entries->size() < kEntriesAtOnce) {
                break;
            }
            request.before = entries->back().position;
        }
        if (m_digest != Digest{}) {
            found("journal", "replayed back to its beginning, the journal leaves records that it "
                             "does not know the making of.");
        }
        return {};
    }

    void takeBack(const JournalEntry& entry) {
        ++m_report.entriesReplayed;
        if (entry.position != m_report.entries + 1 - m_report.entriesReplayed) {
            found("journal", "entry " +
                                 std::to_string(m_report.entries + 1 - m_report.entriesReplayed) +
                                 " is missing.");
        }
        for (auto change = entry.changes.rbegin(); change != entry.changes.rend(); ++change) {
            takeBack(entry, *change);
        }
    }

    void takeBack(const JournalEntry& entry, const Change& change) {
        const RecordName name(change.kind, change.record);
        std::optional<Record>& record = asOfNow(name);
        const std::string where = "entry " + std::to_string(entry.position) + ", " + wordsOf(name);
        if (change.what == ChangeWhat::erased) {
            if (record) {
                found("journal", where + ": was taken away, but is there.");
                return;
            }
            record = recordOf(change);
            m_digest.add(*record);
            return;
        }
        if (!record) {
            found("journal", where + ": was written, but is not there.");
            return;
        }
        m_digest.remove(*record);
        for (const FieldChange& field : change.fields) {
            if (record->values[field.field] != field.after) {
                found("journal",
                      where + ", field " + std::string(fieldsOf(change.kind)[field.field].name) +
                          ": \"" + textOf(record->values[field.field]) + "\" stands there, but \"" +
                          textOf(field.after) + "\" was written last.");
            }
            record->values[field.field] = field.before;
        }
        if (change.what == ChangeWhat::created) {
            record.reset();
        } else {
            m_digest.add(*record);
        }
    }

    /// The record as the replay has it so far.
    std::optional<Record>& asOfNow(const RecordName& name) {
        const auto known = m_replayed.find(name);
        if (known != m_replayed.end()) {
            return known->second;
        }
        auto record = m_store.find(name.first, name.second);
        return m_replayed[name] = record ? std::move(*record) : std::nullopt;
    }

    /// Each undo must have taken back the newest edit that stood, each redo done the newest again.
    Outcome undoLine() {
        if (auto outcome = tell("undo", 0.0); !outcome) {
            return outcome;
        }
        JournalRequest request;
        request.newestFirst = false;
        request.withChanges = false;
        UndoLine line;
        while (true) {
            const auto entries = m_store.journal(request);
            if (!entries) {
                found("undo", entries.problem().sentence());
                return {};
            }
            for (const JournalEntry& entry : *entries) {
                const bool wrong =
                    (entry.kind == EntryKind::undo && line.undoable() != entry.target) ||
                    (entry.kind == EntryKind::redo && line.redoable() != entry.target);
                if (wrong) {
                    found("undo", "entry " + std::to_string(entry.position) +
                                      " takes back or repeats an edit that was not next.");
                }
                line.note(entry.position, entry.kind, entry.target);
            }
            if (entries->size() < request.limit) {
                return {};
            }
            request.after = entries->back().position;
        }
    }

    const SqliteStore& m_store;
    const CheckProgress& m_progress;
    CheckReport m_report;
    Digest m_digest;
    std::map<RecordName, std::optional<Record>> m_replayed;
};

} // namespace

Result<CheckReport> checkBook(const std::filesystem::path& file, const CheckProgress& progress) {
    auto book = openBook(file, OpenMode::read);
    if (!book) {
        return book.problem();
    }
    // openBook makes nothing else.
    const auto& store = static_cast<const SqliteStore&>(**book);
    // One view of the book for all steps, while somebody else may be writing.
    if (auto outcome = store.connection().run("BEGIN"); !outcome) {
        return outcome.problem();
    }
    auto report = Check(store, progress).run();
    static_cast<void>(store.connection().run("ROLLBACK"));
    return report;
}

} // namespace pipwright
