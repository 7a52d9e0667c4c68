#include "ui/tasting/sitting_list.h"

#include <algorithm>

namespace pipwright::ui {

namespace {

bool isBefore(const TastingEntry& one, const TastingEntry& other) {
    return one.date != other.date ? one.date > other.date : one.id.uuid > other.id.uuid;
}

TastingEntry entryOf(const Tasting& tasting) {
    return {tasting.id, tasting.date, tasting.title, tasting.sight, tasting.place};
}

} // namespace

Result<std::vector<TastingEntry>> readTastings(const Store& store) {
    ScanRequest request;
    for (const auto* name : {"date", "title", "sight", "place"}) {
        if (const auto field = fieldIndex(Kind::tasting, name)) {
            request.fields.push_back(*field);
        }
    }
    std::vector<TastingEntry> entries;
    const Outcome outcome = store.scan(Kind::tasting, request, [&entries](const Record& record) {
        entries.push_back(entryOf(fromRecord<Tasting>(record)));
        return true;
    });
    if (!outcome) {
        return outcome.problem();
    }
    std::sort(entries.begin(), entries.end(), isBefore);
    return entries;
}

Outcome followChanges(std::vector<TastingEntry>& entries, const std::vector<Change>& changes,
                      const Store& store) {
    for (const Change& change : changes) {
        if (change.kind != Kind::tasting) {
            continue;
        }
        const TastingId id(change.record);
        std::erase_if(entries, [id](const TastingEntry& entry) { return entry.id == id; });
        auto tasting = store.get(id);
        if (!tasting) {
            return tasting.problem();
        }
        if (tasting->has_value()) {
            const TastingEntry entry = entryOf(**tasting);
            entries.insert(std::lower_bound(entries.begin(), entries.end(), entry, isBefore),
                           entry);
        }
    }
    return {};
}

std::vector<SittingLine> linesOf(const std::vector<TastingEntry>& entries, SittingsShown shown,
                                 const std::optional<std::unordered_set<Uuid>>& only) {
    std::vector<SittingLine> lines;
    std::optional<std::size_t> bitesOfDay; // the line that gathers the bites of the day at hand
    for (const TastingEntry& entry : entries) {
        const bool bite = entry.place == TastingPlace::row;
        if ((bite && shown == SittingsShown::atTheTable) ||
            (!bite && shown == SittingsShown::inTheRow) ||
            (only && only->count(entry.id.uuid) == 0)) {
            continue;
        }
        if (bite && bitesOfDay && lines[*bitesOfDay].date == entry.date) {
            lines[*bitesOfDay].tastings.push_back(entry.id);
            continue;
        }
        if (bite) {
            bitesOfDay = lines.size();
        }
        lines.push_back(
            {entry.date, bite ? std::string{} : entry.title, entry.sight, bite, {entry.id}});
    }
    return lines;
}

} // namespace pipwright::ui
