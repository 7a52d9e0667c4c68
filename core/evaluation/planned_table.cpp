#include "core/evaluation/planned_table.h"

#include <algorithm>

namespace pipwright {

namespace {

void putOnSheet(std::vector<TasterSheet>& sheets, const Lot& lot, const Score& score) {
    auto sheet = std::find_if(sheets.begin(), sheets.end(), [&score](const TasterSheet& one) {
        return one.taster == score.taster;
    });
    if (sheet == sheets.end()) {
        sheets.push_back({score.taster, {}});
        sheet = std::prev(sheets.end());
    }
    sheet->lines.push_back({lot.servingCode, score});
}

/// In each taster's order; the sheets in the order the tasters were named, as their first lines
/// were made.
void sortSheets(std::vector<TasterSheet>& sheets) {
    for (TasterSheet& sheet : sheets) {
        std::stable_sort(
            sheet.lines.begin(), sheet.lines.end(), [](const SheetLine& a, const SheetLine& b) {
                return a.score.servingOrder.value_or(0) < b.score.servingOrder.value_or(0);
            });
    }
    std::stable_sort(sheets.begin(), sheets.end(), [](const TasterSheet& a, const TasterSheet& b) {
        return a.lines.front().score.id < b.lines.front().score.id;
    });
}

} // namespace

int TasterSheet::open() const {
    return static_cast<int>(std::count_if(
        lines.begin(), lines.end(), [](const SheetLine& line) { return !isWritten(line.score); }));
}

bool PlannedTable::allSheetsIn() const {
    return std::all_of(sheets.begin(), sheets.end(),
                       [](const TasterSheet& sheet) { return sheet.open() == 0; });
}

std::vector<Score> PlannedTable::unwritten() const {
    std::vector<Score> scores;
    for (const TasterSheet& sheet : sheets) {
        for (const SheetLine& line : sheet.lines) {
            if (!isWritten(line.score)) {
                scores.push_back(line.score);
            }
        }
    }
    return scores;
}

int PlannedTable::served() const {
    return static_cast<int>(std::count_if(lots.begin(), lots.end(),
                                          [](const Lot& lot) { return !lot.servingCode.empty(); }));
}

Result<std::optional<PlannedTable>> readPlannedTable(const Store& store, TastingId tasting) {
    auto keys = store.where<SealedKey>("tasting", tasting.uuid);
    if (!keys) {
        return keys.problem();
    }
    const auto held = store.get(tasting);
    if (!held) {
        return held.problem();
    }
    if (keys->empty() || !held->has_value()) {
        return std::optional<PlannedTable>{};
    }
    PlannedTable table;
    table.tasting = **held;
    table.key = keys->front();
    auto lots = store.where<Lot>("tasting", tasting.uuid);
    if (!lots) {
        return lots.problem();
    }
    table.lots = std::move(*lots);
    std::stable_sort(table.lots.begin(), table.lots.end(), [](const Lot& a, const Lot& b) {
        return a.servingCode.empty() != b.servingCode.empty() ? b.servingCode.empty()
                                                              : a.servingCode < b.servingCode;
    });
    for (const Lot& lot : table.lots) {
        const auto scores = store.where<Score>("lot", lot.id.uuid);
        if (!scores) {
            return scores.problem();
        }
        for (const Score& score : *scores) {
            if (score.voidReason.empty()) {
                putOnSheet(table.sheets, lot, score);
            }
        }
    }
    sortSheets(table.sheets);
    return std::optional(std::move(table));
}

Result<std::vector<std::string>> usedServingCodes(const Store& store, std::size_t most) {
    auto keys = store.all<SealedKey>();
    if (!keys) {
        return keys.problem();
    }
    std::vector<std::string> codes;
    for (auto key = keys->rbegin(); key != keys->rend() && codes.size() < most; ++key) {
        const auto lots = store.where<Lot>("tasting", key->tasting.uuid);
        if (!lots) {
            return lots.problem();
        }
        for (const Lot& lot : *lots) {
            if (!lot.servingCode.empty() && codes.size() < most) {
                codes.push_back(lot.servingCode);
            }
        }
    }
    return codes;
}

} // namespace pipwright
