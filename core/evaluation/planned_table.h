#pragma once

#include "core/evaluation/orchard_view.h"

#include <optional>
#include <string>
#include <vector>

namespace pipwright {

/// A line of a taster's sheet: a lot under its code, and what he wrote.
struct SheetLine {
    std::string code;
    Score score;
};

/// One taster's sheet, in his order.
struct TasterSheet {
    PersonId taster;
    std::vector<SheetLine> lines;

    /// Lines on which nothing stands yet.
    [[nodiscard]] int open() const;
};

/// A sitting that was planned, as it stands in the book.
struct PlannedTable {
    Tasting tasting;
    SealedKey key;
    std::vector<Lot> lots; ///< those with a code by code, then those only looked at
    std::vector<TasterSheet> sheets;

    [[nodiscard]] bool isSealed() const { return !key.opened.has_value(); }
    /// Something stands on every line of every sheet.
    [[nodiscard]] bool allSheetsIn() const;
    [[nodiscard]] std::vector<Score> unwritten() const;
    /// Lots with a code.
    [[nodiscard]] int served() const;
};

/// Nothing when the tasting was not planned: it has no key.
Result<std::optional<PlannedTable>> readPlannedTable(const Store& store, TastingId tasting);

/// Codes of planned sittings, newest first, at most `most`.
Result<std::vector<std::string>> usedServingCodes(const Store& store, std::size_t most);

} // namespace pipwright
