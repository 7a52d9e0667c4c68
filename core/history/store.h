#pragma once

#include "core/history/change.h"
#include "core/history/journal.h"
#include "core/units/result.h"

#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace pipwright {

/// Who does something, and when (milliseconds since 1970 UTC; 0 lets the store look at the clock).
struct Stamp {
    std::optional<PersonId> person;
    std::int64_t moment = 0;
};

/// Which records of a kind, and which of their fields, a scan reads.
struct ScanRequest {
    std::vector<std::size_t> fields;                    ///< empty: all
    std::optional<std::pair<std::size_t, Value>> where; ///< field equals value
};

/// Which entries of the journal.
struct JournalRequest {
    std::optional<std::pair<Kind, Uuid>> record; ///< only entries that touch this record
    std::int64_t after = 0;                      ///< only positions greater than this
    std::optional<std::int64_t> before;          ///< only positions smaller than this
    std::size_t limit = 1000;
    bool newestFirst = true;
    bool withChanges = true; ///< false leaves `changes` empty (a list for the screen)
};

/// A record found by the finder line.
struct Found {
    Kind kind = Kind::genotype;
    Uuid record;
    std::string text; ///< the text that matched, as stored
};

/// A picture of the book: its hash and media type.
struct PhotoFile {
    std::string sha256;
    std::string mediaType;
};

/// Fills an empty book as a whole, history included, without logging new edits. Either finish()
/// succeeds and all is there, or nothing is.
class BulkLoad {
  public:
    virtual ~BulkLoad() = default;
    virtual Outcome add(const Record& record) = 0;
    /// Entries in the order of their positions, with their changes.
    virtual Outcome add(const JournalEntry& entry) = 0;
    virtual Outcome finish() = 0;
};

/// The orchard book in domain words. Implemented in SQLite (core/store) and in memory
/// (MemoryStore); both keep the promises of tests/support/store_contract.h. One thread at a time.
class Store {
  public:
    virtual ~Store() = default;

    // --- reading ---------------------------------------------------------------------------

    /// Calls `take` for every record in the order of their ids until it returns false. Values of
    /// fields not asked for are monostate.
    virtual Outcome scan(Kind kind, const ScanRequest& request,
                         const std::function<bool(const Record&)>& take) const = 0;
    virtual Result<std::optional<Record>> find(Kind kind, const Uuid& id) const = 0;
    virtual Result<std::int64_t> count(Kind kind) const = 0;
    /// Records whose texts hold all the words (prefixes; accents and case folded), best first.
    virtual Result<std::vector<Found>> findWords(std::string_view words,
                                                 std::size_t limit) const = 0;

    template <typename Thing>
    Result<std::vector<Thing>> all() const {
        return collect<Thing>({});
    }
    /// Those whose field equals the value: where<Observation>("plant", plant.uuid).
    template <typename Thing>
    Result<std::vector<Thing>> where(std::string_view field, const Value& value) const {
        const auto index = fieldIndex(KindOf<Thing>::value, field);
        if (!index) {
            return Problem{ProblemCode::internal, "there is no field of that name.",
                           "Please report this.", std::string(field)};
        }
        ScanRequest request;
        request.where = {*index, value};
        return collect<Thing>(request);
    }
    template <typename Thing>
    Result<std::optional<Thing>> get(Id<Thing> id) const {
        auto record = find(KindOf<Thing>::value, id.uuid);
        if (!record) {
            return record.problem();
        }
        if (!record->has_value()) {
            return std::optional<Thing>{};
        }
        return std::optional<Thing>{fromRecord<Thing>(**record)};
    }

    // --- writing ---------------------------------------------------------------------------

    /// One transaction: checks every record, every `before` and every reference, writes the rows
    /// and the journal entry. On a Problem nothing has changed.
    virtual Result<JournalEntry> apply(const ChangeSet& set, const Stamp& stamp) = 0;
    /// Takes back, or does again, one change set; that is an entry of its own.
    virtual Result<JournalEntry> undo(const Stamp& stamp) = 0;
    virtual Result<JournalEntry> redo(const Stamp& stamp) = 0;
    /// Only on an empty book.
    virtual Result<std::unique_ptr<BulkLoad>> beginLoad() = 0;

    // --- history ---------------------------------------------------------------------------

    virtual std::int64_t position() const = 0;
    /// The sentence of what undo / redo would do; nothing when there is nothing.
    virtual std::optional<std::string> undoSentence() const = 0;
    virtual std::optional<std::string> redoSentence() const = 0;
    virtual Result<std::vector<JournalEntry>> journal(const JournalRequest& request) const = 0;

    // --- beside the records ------------------------------------------------------------------

    /// The day the book was last worked on; not part of the history.
    virtual std::optional<Date> workedOn() const = 0;
    virtual Outcome setWorkedOn(Date day) = 0;
    /// Keeps the picture's bytes beside the book, under their hash. The Photo record is a change
    /// of its own. May also be called while a load is going on.
    virtual Result<PhotoFile> addPhoto(std::string_view bytes) = 0;
    virtual Result<std::string> photoBytes(const std::string& sha256) const = 0;

  private:
    template <typename Thing>
    Result<std::vector<Thing>> collect(const ScanRequest& request) const {
        std::vector<Thing> things;
        auto outcome = scan(KindOf<Thing>::value, request, [&things](const Record& record) {
            things.push_back(fromRecord<Thing>(record));
            return true;
        });
        if (!outcome) {
            return outcome.problem();
        }
        return things;
    }
};

} // namespace pipwright
