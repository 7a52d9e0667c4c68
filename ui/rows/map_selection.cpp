#include "ui/rows/map_selection.h"

#include <algorithm>

namespace pipwright::ui {

namespace {

void append(std::vector<MapSelection::Run>& runs, MapSelection::Run run) {
    if (!runs.empty() && run.first <= runs.back().last + 1) {
        runs.back().last = std::max(runs.back().last, run.last);
    } else {
        runs.push_back(run);
    }
}

} // namespace

MapSelection MapSelection::run(CellIndex one, CellIndex other) {
    MapSelection selection;
    selection.m_runs.push_back({std::min(one, other), std::max(one, other)});
    return selection;
}

MapSelection MapSelection::of(const CellSet& set) {
    MapSelection selection;
    for (std::size_t cell = 0; cell < set.size(); ++cell) {
        if (set[cell]) {
            const auto index = static_cast<CellIndex>(cell);
            append(selection.m_runs, {index, index});
        }
    }
    return selection;
}

std::size_t MapSelection::count() const {
    std::size_t sum = 0;
    for (const Run& run : m_runs) {
        sum += run.last - run.first + 1;
    }
    return sum;
}

bool MapSelection::contains(CellIndex cell) const {
    const auto after =
        std::upper_bound(m_runs.begin(), m_runs.end(), cell,
                         [](CellIndex wanted, const Run& run) { return wanted < run.first; });
    return after != m_runs.begin() && cell <= std::prev(after)->last;
}

void MapSelection::toggle(CellIndex cell) {
    if (contains(cell)) {
        subtract(of(cell));
    } else {
        add(cell);
    }
}

void MapSelection::unite(const MapSelection& other) {
    std::vector<Run> merged;
    merged.reserve(m_runs.size() + other.m_runs.size());
    auto mine = m_runs.begin();
    auto theirs = other.m_runs.begin();
    while (mine != m_runs.end() || theirs != other.m_runs.end()) {
        const bool takeMine =
            theirs == other.m_runs.end() || (mine != m_runs.end() && mine->first <= theirs->first);
        append(merged, takeMine ? *mine++ : *theirs++);
    }
    m_runs = std::move(merged);
}

void MapSelection::subtract(const MapSelection& other) {
    std::vector<Run> left;
    auto hole = other.m_runs.begin();
    for (Run run : m_runs) {
        while (hole != other.m_runs.end() && hole->last < run.first) {
            ++hole;
        }
        bool gone = false;
        for (auto next = hole; next != other.m_runs.end() && next->first <= run.last; ++next) {
            if (next->first > run.first) {
                left.push_back({run.first, next->first - 1});
            }
            gone = next->last >= run.last;
            if (gone) {
                break;
            }
            run.first = next->last + 1;
        }
        if (!gone) {
            left.push_back(run);
        }
    }
    m_runs = std::move(left);
}

void MapSelection::filter(const std::function<bool(CellIndex)>& keep) {
    std::vector<Run> kept;
    for (const Run& run : m_runs) {
        for (CellIndex cell = run.first; cell <= run.last; ++cell) {
            if (keep(cell)) {
                append(kept, {cell, cell});
            }
        }
    }
    m_runs = std::move(kept);
}

void MapSelection::forEach(const std::function<void(CellIndex)>& visit) const {
    for (const Run& run : m_runs) {
        for (CellIndex cell = run.first; cell <= run.last; ++cell) {
            visit(cell);
        }
    }
}

MapSelection treesOnly(MapSelection selection, const MapScene& scene) {
    selection.filter([&scene](CellIndex cell) { return !scene.cells()[cell].isGap(); });
    return selection;
}

std::vector<Uuid> plantsOf(const MapSelection& selection, const MapScene& scene) {
    std::vector<Uuid> plants;
    selection.forEach([&](CellIndex cell) {
        if (!scene.cells()[cell].isGap()) {
            plants.push_back(scene.cells()[cell].plant);
        }
    });
    return plants;
}

MapSelection selectionOf(std::span<const Uuid> plants, const MapScene& scene) {
    CellSet set(scene.cells().size(), false);
    for (const Uuid& plant : plants) {
        if (const auto cell = scene.find(plant)) {
            set[*cell] = true;
        }
    }
    return MapSelection::of(set);
}

} // namespace pipwright::ui
