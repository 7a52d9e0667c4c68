#include "core/history/journal.h"

namespace pipwright {

std::string_view nameOf(EntryKind kind) {
    switch (kind) {
    case EntryKind::edit:
        return "edit";
    case EntryKind::undo:
        return "undo";
    case EntryKind::redo:
        return "redo";
    case EntryKind::baseline:
        return "baseline";
    }
    return "edit";
}

std::optional<EntryKind> entryKindNamed(std::string_view name) {
    for (const auto kind :
         {EntryKind::edit, EntryKind::undo, EntryKind::redo, EntryKind::baseline}) {
        if (nameOf(kind) == name) {
            return kind;
        }
    }
    return std::nullopt;
}

void UndoLine::note(std::int64_t position, EntryKind kind, std::optional<std::int64_t> target) {
    switch (kind) {
    case EntryKind::edit:
        m_done.push_back(position);
        m_undone.clear();
        break;
    case EntryKind::undo:
        if (!m_done.empty()) {
            m_undone.push_back(target.value_or(m_done.back()));
            m_done.pop_back();
        }
        break;
    case EntryKind::redo:
        if (!m_undone.empty()) {
            m_done.push_back(target.value_or(m_undone.back()));
            m_undone.pop_back();
        }
        break;
    case EntryKind::baseline:
        m_done.clear();
        m_undone.clear();
        break;
    }
}

std::optional<std::int64_t> UndoLine::undoable() const {
    return m_done.empty() ? std::nullopt : std::optional(m_done.back());
}

std::optional<std::int64_t> UndoLine::redoable() const {
    return m_undone.empty() ? std::nullopt : std::optional(m_undone.back());
}

} // namespace pipwright
