#pragma once

#include "core/history/store.h"

#include <optional>
#include <unordered_set>
#include <vector>

namespace pipwright::ui {

/// What the list of sittings needs of a tasting; thousands of them are kept.
struct TastingEntry {
    TastingId id;
    Date date;
    std::string title;
    Sight sight = Sight::unknown;
    TastingPlace place = TastingPlace::unknown;
};

/// All tastings of the book, newest first. Slow in a large book: call it on a worker.
Result<std::vector<TastingEntry>> readTastings(const Store& store);

/// Puts the tastings that these changes touch in, out, or right.
Outcome followChanges(std::vector<TastingEntry>& entries, const std::vector<Change>& changes,
                      const Store& store);

/// What the list shows.
enum class SittingsShown { atTheTable, inTheRow, all };

/// A line of the list: one sitting, or all bites that were taken in the row on one day.
struct SittingLine {
    Date date;
    std::string title;
    Sight sight = Sight::unknown;
    bool bites = false;
    std::vector<TastingId> tastings;
};

/// `only`: just the lines with one of these tastings; nothing for all.
std::vector<SittingLine> linesOf(const std::vector<TastingEntry>& entries, SittingsShown shown,
                                 const std::optional<std::unordered_set<Uuid>>& only);

} // namespace pipwright::ui
