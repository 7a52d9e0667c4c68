#pragma once

#include "core/history/store.h"
#include "core/units/uuid.h"

#include <string>

namespace pipwright::sample {

/// Writes the breeder's edits into the book, each at the day and minute it was made. The first
/// edit the book refuses is kept in outcome(); nothing is written after it.
class Scribe {
  public:
    Scribe(Store& store, std::uint64_t seed);

    /// Moves the clock on to this minute (UTC); it never goes back.
    void wake(Date day, int minute);
    [[nodiscard]] Date today() const { return m_today; }

    void setWriter(PersonId person) { m_writer = person; }
    void begin(std::string sentence);
    void rename(std::string sentence) { m_set.sentence = std::move(sentence); }
    [[nodiscard]] bool nothingYet() const { return m_set.empty(); }

    /// Names a new record and adds it to the change set begun.
    template <typename Thing>
    Thing add(Thing thing) {
        thing.id = Id<Thing>(m_ids.make());
        m_set.create(thing);
        return thing;
    }
    template <typename Thing, typename Edit>
    void edit(Thing& thing, Edit change) {
        const Thing before = thing;
        change(thing);
        m_set.edit(before, thing);
    }
    /// Applies the change set; one without changes leaves no trace.
    void finish();
    /// Takes back the last edit, a minute later.
    void undo();
    void redo();
    /// The first edit of every book.
    void openBook(const std::string& title, const std::string& owner);
    void keepPhoto(Photo photo, const std::string& bytes);
    void workedOn(Date day);

    [[nodiscard]] const Outcome& outcome() const { return m_outcome; }

  private:
    void note(const Outcome& outcome);
    Stamp stamp();

    Store& m_store;
    std::int64_t m_moment = 0;
    UuidMaker m_ids;
    Date m_today;
    std::optional<PersonId> m_writer;
    ChangeSet m_set;
    Outcome m_outcome;
};

/// A day that exists; the sample names no other.
inline Date on(int year, unsigned month, unsigned day) {
    return Date::of(year, month, day).value();
}

/// "15 August 2026"
std::string spoken(Date day);

} // namespace pipwright::sample
