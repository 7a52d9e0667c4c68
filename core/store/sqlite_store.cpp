#include "core/store/sqlite_store.h"

#include "core/history/change_check.h"
#include "core/history/photo_type.h"
#include "core/store/book_place.h"
#include "core/store/place_of_kind.h"
#include "core/store/statement.h"
#include "core/store/transaction.h"
#include "core/units/sha256.h"

#include <chrono>

namespace pipwright {

namespace {

std::int64_t momentNow() {
    return std::chrono::duration_cast<std::chrono::milliseconds>(
               std::chrono::system_clock::now().time_since_epoch())
        .count();
}

bool isHash(const std::string& text) {
    return text.size() == 64 && text.find_first_not_of("0123456789abcdef") == std::string::npos;
}

/// Puts the flag up as long as it lives.
class Raised {
  public:
    Raised(std::atomic<bool>& flag, bool up) : m_flag(flag) { m_flag = up; }
    ~Raised() { m_flag = false; }
    Raised(const Raised&) = delete;
    Raised& operator=(const Raised&) = delete;

  private:
    std::atomic<bool>& m_flag;
};

} // namespace

/// The keys of the records one change set writes: those it makes get theirs before any row is
/// written, because records may refer to each other.
class SqliteStore::KeysOfSet {
  public:
    explicit KeysOfSet(const RecordTables& records) : m_records(records) {}

    Outcome take(const Change& change) {
        auto& known = m_keys[static_cast<std::size_t>(change.kind)];
        if (known.contains(change.record)) {
            return {};
        }
        auto key = m_records.keyOf(change.kind, change.record);
        if (!key) {
            return key.problem();
        }
        if (!key->has_value()) {
            auto& next = m_next[static_cast<std::size_t>(change.kind)];
            if (!next) {
                auto free = m_records.freeKey(change.kind);
                if (!free) {
                    return free.problem();
                }
                next = *free;
            }
            *key = (*next)++;
        }
        known.emplace(change.record, **key);
        return {};
    }

    Result<std::optional<std::int64_t>> operator()(Kind kind, const Uuid& id) const {
        const auto& known = m_keys[placeOf(kind)];
        const auto found = known.find(id);
        return found != known.end() ? Result(std::optional(found->second))
                                    : m_records.keyOf(kind, id);
    }

    [[nodiscard]] std::int64_t of(const Change& change) const {
        return m_keys[static_cast<std::size_t>(change.kind)].at(change.record);
    }

  private:
    const RecordTables& m_records;
    std::array<std::unordered_map<Uuid, std::int64_t>, kKindCount> m_keys;
    std::array<std::optional<std::int64_t>, kKindCount> m_next;
};

SqliteStore::SqliteStore(std::unique_ptr<Connection> connection, std::unique_ptr<WriterLock> lock)
    : m_lock(std::move(lock)), m_connection(std::move(connection)), m_pool(*m_connection),
      m_records(*m_connection, m_pool), m_journal(*m_connection, m_pool),
      m_finder(*m_connection, m_pool) {}

SqliteStore::~SqliteStore() = default;

Result<std::unique_ptr<SqliteStore>> SqliteStore::over(std::unique_ptr<Connection> connection,
                                                       std::unique_ptr<WriterLock> lock) {
    std::unique_ptr<SqliteStore> store(new SqliteStore(std::move(connection), std::move(lock)));
    if (auto outcome = store->begin(); !outcome) {
        return outcome.problem();
    }
    return store;
}

Outcome SqliteStore::begin() {
    if (auto outcome = m_finder.open(); !outcome) {
        return outcome;
    }
    return takeCopyName();
}

// A file that lies elsewhere than when it was last written to was copied by hand or restored.
// Its journal goes on under a new name, so that two copies never give one name to two entries.
Outcome SqliteStore::takeCopyName() {
    const auto copy = meta("copy");
    const auto file = meta("file");
    if (!copy || !file) {
        return copy ? file.problem() : copy.problem();
    }
    const auto known = copy->has_value() ? Uuid::fromText(**copy) : std::nullopt;
    m_copy = known.value_or(Uuid{});
    const std::string place = fingerprintOf(m_connection->file());
    if (isReadOnly() || (known && *file == place)) {
        return {};
    }
    m_copy = UuidMaker().make();
    auto transaction = Transaction::begin(*m_connection);
    if (!transaction) {
        return transaction.problem();
    }
    for (const auto& [name, value] :
         {std::pair<std::string_view, std::string>{"copy", m_copy.text()}, {"file", place}}) {
        if (auto outcome = setMeta(name, value); !outcome) {
            return outcome;
        }
    }
    return (*transaction)->commit();
}

// --- reading -------------------------------------------------------------------------------------

// A reader keeps uuids by key between scans; what another connection wrote makes them void.
void SqliteStore::noticeOthers() const {
    const auto version = m_connection->number("PRAGMA data_version");
    if (!version || *version != m_dataVersion) {
        m_dataVersion = version ? *version : -1;
        m_records.forgetKeys();
        m_undoLine.reset();
    }
}

Outcome SqliteStore::scan(Kind kind, const ScanRequest& request,
                          const std::function<bool(const Record&)>& take) const {
    noticeOthers();
    return m_records.scan(kind, request, take);
}

Result<std::optional<Record>> SqliteStore::find(Kind kind, const Uuid& id) const {
    return m_records.find(kind, id);
}

Result<std::int64_t> SqliteStore::count(Kind kind) const {
    return m_records.count(kind);
}

Result<std::vector<Found>> SqliteStore::findWords(std::string_view words, std::size_t limit) const {
    return m_finder.find(words, limit);
}

// --- writing -------------------------------------------------------------------------------------

Outcome SqliteStore::checkMayWrite() const {
    if (isReadOnly()) {
        return Problem{ProblemCode::unwritable, "the book is open for reading only.",
                       "Close it and open it for writing.", file().string()};
    }
    if (m_loading) {
        return Problem{ProblemCode::busy, "the book is being filled.", "Wait until that is done.",
                       file().string()};
    }
    return {};
}

Outcome SqliteStore::writeRow(const Change& change, KeysOfSet& keys) {
    const std::int64_t key = keys.of(change);
    const RecordTables::KeyFinder finder = [&keys](Kind kind, const Uuid& id) {
        return keys(kind, id);
    };
    switch (change.what) {
    case ChangeWhat::created:
        return m_records.insert(key, recordOf(change), finder);
    case ChangeWhat::edited:
        return m_records.update(key, change, finder);
    case ChangeWhat::erased:
        return m_records.erase(change.kind, key);
    }
    return {};
}

Outcome SqliteStore::writeRows(const JournalEntry& entry) {
    auto after = checkChanges(
        entry.changes, [this](Kind kind, const Uuid& id) { return m_records.find(kind, id); });
    if (!after) {
        return after.problem();
    }
    KeysOfSet keys(m_records);
    for (const Change& change : entry.changes) {
        if (auto outcome = keys.take(change); !outcome) {
            return outcome;
        }
    }
    for (const Change& change : entry.changes) {
        if (auto outcome = writeRow(change, keys); !outcome) {
            return outcome;
        }
    }
    for (const auto& change : entry.changes) {
        const auto& record = after->at(change.record);
        const std::int64_t key = keys.of(change);
        if (auto outcome = m_finder.remove(change.kind, key); !outcome) {
            return outcome;
        }
        if (record) {
            if (auto outcome = m_finder.add(key, *record); !outcome) {
                return outcome;
            }
            continue;
        }
        const auto referrer = m_records.referrerOf(change.kind, key);
        if (!referrer) {
            return referrer.problem();
        }
        if (referrer->has_value()) {
            return Problem{ProblemCode::conflict,
                           "other records still refer to this one (" + **referrer + ").",
                           "Take those back first.",
                           std::string(nameOf(change.kind)) + " " + change.record.text()};
        }
    }
    return {};
}

Result<JournalEntry> SqliteStore::write(JournalEntry entry, const Stamp& stamp) {
    const Raised writerWaits(*m_writerWaits, !hasLog());
    auto transaction = Transaction::begin(*m_connection);
    if (!transaction) {
        return transaction.problem();
    }
    m_records.forgetKeys();
    if (auto outcome = writeRows(entry); !outcome) {
        return outcome.problem();
    }
    const auto newest = m_journal.newest();
    if (!newest) {
        return newest.problem();
    }
    entry.position = *newest + 1;
    entry.copy = m_copy;
    entry.moment = stamp.moment != 0 ? stamp.moment : momentNow();
    if (auto outcome = m_journal.add(entry); !outcome) {
        return outcome.problem();
    }
    if (auto outcome = (*transaction)->commit(); !outcome) {
        return outcome.problem();
    }
    if (m_undoLine) {
        m_undoLine->note(entry.position, entry.kind, entry.target);
    }
    return entry;
}

Result<JournalEntry> SqliteStore::apply(const ChangeSet& set, const Stamp& stamp) {
    if (auto outcome = checkMayWrite(); !outcome) {
        return outcome.problem();
    }
    JournalEntry entry;
    entry.person = set.person ? set.person : stamp.person;
    entry.sentence = set.sentence;
    entry.changes = set.changes;
    return write(std::move(entry), stamp);
}

Result<JournalEntry> SqliteStore::again(EntryKind kind, const Stamp& stamp) {
    if (auto outcome = checkMayWrite(); !outcome) {
        return outcome.problem();
    }
    const auto line = undoLine();
    if (!line) {
        return line.problem();
    }
    const bool undoing = kind == EntryKind::undo;
    const auto target = undoing ? (*line)->undoable() : (*line)->redoable();
    if (!target) {
        return Problem{ProblemCode::notFound,
                       undoing ? "there is nothing to undo." : "there is nothing to redo.",
                       "Make an edit first.", ""};
    }
    auto original = m_journal.at(*target);
    if (!original) {
        return original.problem();
    }
    JournalEntry entry;
    entry.kind = kind;
    entry.target = target;
    entry.person = stamp.person;
    entry.sentence = original->sentence;
    entry.changes = undoing ? inverseOf(original->changes) : std::move(original->changes);
    return write(std::move(entry), stamp);
}

Result<JournalEntry> SqliteStore::undo(const Stamp& stamp) {
    return again(EntryKind::undo, stamp);
}

Result<JournalEntry> SqliteStore::redo(const Stamp& stamp) {
    return again(EntryKind::redo, stamp);
}

// --- history -------------------------------------------------------------------------------------

std::int64_t SqliteStore::position() const {
    const auto newest = m_journal.newest();
    return newest ? *newest : 0;
}

Result<const UndoLine*> SqliteStore::undoLine() const {
    noticeOthers();
    if (!m_undoLine) {
        auto line = m_journal.undoLine();
        if (!line) {
            return line.problem();
        }
        m_undoLine = std::move(*line);
    }
    return &*m_undoLine;
}

std::optional<std::string> SqliteStore::sentenceOf(bool undo) const {
    const auto line = undoLine();
    if (!line) {
        return std::nullopt;
    }
    const auto target = undo ? (*line)->undoable() : (*line)->redoable();
    if (!target) {
        return std::nullopt;
    }
    auto sentence = m_journal.sentenceAt(*target);
    return sentence ? std::optional(std::move(*sentence)) : std::nullopt;
}

std::optional<std::string> SqliteStore::undoSentence() const {
    return sentenceOf(true);
}

std::optional<std::string> SqliteStore::redoSentence() const {
    return sentenceOf(false);
}

Result<std::vector<JournalEntry>> SqliteStore::journal(const JournalRequest& request) const {
    return m_journal.read(request);
}

// --- beside the records --------------------------------------------------------------------------

Result<std::optional<std::string>> SqliteStore::meta(std::string_view name) const {
    auto statement =
        Statement::prepare(*m_connection, "SELECT value FROM book_meta WHERE name = :name");
    if (!statement) {
        return statement.problem();
    }
    if (auto outcome = statement->bind("name", name).execute(); !outcome) {
        return outcome.problem();
    }
    return statement->next() ? std::optional(statement->text(0)) : std::nullopt;
}

Outcome SqliteStore::setMeta(std::string_view name, std::string_view value) {
    auto statement = Statement::prepare(
        *m_connection, "INSERT INTO book_meta (name, value) VALUES (:name, :value) "
                       "ON CONFLICT (name) DO UPDATE SET value = excluded.value");
    if (!statement) {
        return statement.problem();
    }
    return statement->bind("name", name).bind("value", value).execute();
}

std::optional<Date> SqliteStore::workedOn() const {
    const auto day = meta("worked_on");
    return day && day->has_value() ? Date::fromIso(**day) : std::nullopt;
}

Outcome SqliteStore::setWorkedOn(Date day) {
    if (auto outcome = checkMayWrite(); !outcome) {
        return outcome;
    }
    auto transaction = Transaction::begin(*m_connection);
    if (!transaction) {
        return transaction.problem();
    }
    if (auto outcome = setMeta("worked_on", day.iso()); !outcome) {
        return outcome;
    }
    return (*transaction)->commit();
}

Result<PhotoFile> SqliteStore::addPhoto(std::string_view bytes) {
    // Pictures lie beside the file, so they may come while it is being filled: then none is
    // missing once it is full.
    if (auto outcome = checkMayWrite(); !outcome && !m_loading) {
        return outcome.problem();
    }
    const auto type = photoTypeOf(bytes);
    if (!type) {
        return type.problem();
    }
    PhotoFile photo{hexOf(sha256(bytes)), std::string(type->mediaType)};
    const auto folder = photosFolder(file());
    std::error_code error;
    std::filesystem::create_directories(folder, error);
    const auto target = folder / (photo.sha256 + std::string(type->ending));
    if (std::filesystem::exists(target, error) &&
        std::filesystem::file_size(target, error) == bytes.size()) {
        return photo;
    }
    if (auto outcome = writeWhole(target, bytes); !outcome) {
        return outcome.problem();
    }
    return photo;
}

Result<std::string> SqliteStore::photoBytes(const std::string& sha256Text) const {
    if (isHash(sha256Text)) {
        for (const char* ending : {".jpg", ".png", ".svg"}) {
            const auto path = photosFolder(file()) / (sha256Text + ending);
            std::error_code error;
            if (std::filesystem::exists(path, error)) {
                return readWhole(path);
            }
        }
    }
    return Problem{ProblemCode::notFound, "the picture is not beside the book.",
                   "Put the file back into the folder " + photosFolder(file()).string() + ".",
                   sha256Text};
}

// --- how edits reach the disk --------------------------------------------------------------------

Outcome prepareForWriting(const Connection& connection) {
    // A book copied to a network share may still say "wal": it is always set anew.
    const bool safe = !unsafeForLog(connection.file());
    const auto mode =
        connection.text(safe ? "PRAGMA journal_mode = WAL" : "PRAGMA journal_mode = DELETE");
    if (!mode) {
        return mode.problem();
    }
    if (safe && *mode != "wal") {
        const auto fallback = connection.text("PRAGMA journal_mode = DELETE");
        if (!fallback) {
            return fallback.problem();
        }
    }
    return connection.run("PRAGMA synchronous = FULL; PRAGMA cache_size = -16000;");
}

bool SqliteStore::hasLog() const {
    const auto mode = m_connection->text("PRAGMA journal_mode");
    return mode && *mode == "wal";
}

OrchardBook::Readers SqliteStore::readers() const {
    return [file = file(), flag = std::shared_ptr<const std::atomic<bool>>(m_writerWaits)] {
        return openAside(file, flag);
    };
}

Outcome SqliteStore::readAside(const std::shared_ptr<const std::atomic<bool>>& writerWaits) {
    if (hasLog()) { // one state of the book for all that is read from here
        return m_connection->run("BEGIN");
    }
    m_connection->makeWayFor(writerWaits);
    return {};
}

std::string SqliteStore::journalModeWords() const {
    if (hasLog()) {
        return "Every edit is written to a log beside the book and is safe on the disk before the "
               "next one (write-ahead log, full syncing).";
    }
    const auto unsafe = unsafeForLog(file());
    return "Every edit is written to the book itself and is safe on the disk before the next one "
           "(rollback journal, full syncing)" +
           (unsafe ? ", because the book lies on " + *unsafe + "." : std::string("."));
}

} // namespace pipwright
