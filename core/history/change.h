#pragma once

#include "core/history/record.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace pipwright {

/// A field's value before and after. `field` indexes fieldsOf(kind).
struct FieldChange {
    std::size_t field = 0;
    Value before;
    Value after;

    bool operator==(const FieldChange&) const = default;
};

enum class ChangeWhat { created, edited, erased };

/// What happens to one record. A created record lists all its fields with their values after, an
/// erased one (only ever the undoing of a creation) all its fields with their values before.
struct Change {
    ChangeWhat what = ChangeWhat::edited;
    Kind kind = Kind::bookFacts;
    Uuid record;
    std::vector<FieldChange> fields;

    bool operator==(const Change&) const = default;
};

/// Changes that succeed or fail together, with the sentence that names them to the user
/// ("Note on AT17-014").
struct ChangeSet {
    std::string sentence;
    std::optional<PersonId> person;
    std::vector<Change> changes;

    [[nodiscard]] bool empty() const { return changes.empty(); }

    /// Adds a new record; its id must be set (see UuidMaker).
    template <typename Thing>
    void create(const Thing& thing) {
        add(creationOf(toRecord(thing)));
    }
    /// Adds what differs between the two; nothing when nothing does.
    template <typename Thing>
    void edit(const Thing& before, const Thing& after) {
        addEdit(toRecord(before), toRecord(after));
    }
    /// Adds the taking away of a record that was created by mistake and that nothing refers to.
    template <typename Thing>
    void erase(const Thing& thing) {
        add(erasureOf(toRecord(thing)));
    }

    void add(Change change) { changes.push_back(std::move(change)); }
    void addEdit(const Record& before, const Record& after);

    static Change creationOf(const Record& record);
    static Change erasureOf(const Record& record);
};

/// The changes that take these back: last first, before and after exchanged.
std::vector<Change> inverseOf(const std::vector<Change>& changes);

/// The record a creation makes, or an erasure takes away.
Record recordOf(const Change& change);

/// The values of one side of a change as a JSON object, {"code":"AT17-014","ordinal":14}, in the
/// order of the fields; "" when that side does not exist (before a creation, after an erasure).
std::string beforeAsJson(const Change& change);
std::string afterAsJson(const Change& change);
std::string asJson(const Record& record);

/// Rebuilds a change from the two JSON objects. The Problem names the field.
Result<Change> changeFromJson(Kind kind, const Uuid& record, std::string_view before,
                              std::string_view after);

} // namespace pipwright
