#pragma once

#include "core/history/change.h"

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace pipwright {

/// What an entry of the journal is: an edit, the taking back of one, its doing again, or the laying
/// of a baseline (content that came without history; `digest` says which).
enum class EntryKind { edit, undo, redo, baseline };

std::string_view nameOf(EntryKind kind);
std::optional<EntryKind> entryKindNamed(std::string_view name);

/// One entry of the journal. (copy, position) is its name among all copies of a book.
struct JournalEntry {
    std::int64_t position = 0;      ///< 1, 2, 3 ... in this book
    Uuid copy;                      ///< the copy of the book it was written in
    std::int64_t moment = 0;        ///< milliseconds since 1970 UTC
    std::optional<PersonId> person; ///< who, if the book knows
    EntryKind kind = EntryKind::edit;
    std::optional<std::int64_t> target; ///< the position undone or redone
    std::string sentence;
    std::string digest;          ///< of a baseline: the content's digest (see Digest)
    std::vector<Change> changes; ///< may be left empty when only the list is asked for
};

/// What the next undo and redo would do. Linear: a new edit ends what could be redone. It follows
/// from the journal alone, so it outlives a restart; it ends at the last baseline.
class UndoLine {
  public:
    /// Takes up the next entry of the journal, in order.
    void note(std::int64_t position, EntryKind kind, std::optional<std::int64_t> target);

    /// Position of the edit that undo would take back; nothing when there is none.
    [[nodiscard]] std::optional<std::int64_t> undoable() const;
    /// Position of the edit that redo would do again; nothing when there is none.
    [[nodiscard]] std::optional<std::int64_t> redoable() const;

  private:
    std::vector<std::int64_t> m_done;
    std::vector<std::int64_t> m_undone;
};

} // namespace pipwright
