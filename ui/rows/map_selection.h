#pragma once

#include "ui/rows/map_scene.h"

#include <functional>
#include <span>
#include <vector>

namespace pipwright::ui {

/// A set of cells, held as sorted runs that neither touch nor overlap: a whole row costs as much
/// as one tree.
class MapSelection {
  public:
    struct Run {
        CellIndex first = 0;
        CellIndex last = 0; ///< inclusive
        bool operator==(const Run&) const = default;
    };

    MapSelection() = default;
    static MapSelection of(CellIndex cell) { return run(cell, cell); }
    /// All cells from one to the other, whichever comes first.
    static MapSelection run(CellIndex one, CellIndex other);
    /// All cells of the set.
    static MapSelection of(const CellSet& set);

    [[nodiscard]] bool isEmpty() const { return m_runs.empty(); }
    [[nodiscard]] std::size_t count() const;
    [[nodiscard]] bool contains(CellIndex cell) const;
    [[nodiscard]] std::span<const Run> runs() const { return m_runs; }

    void add(CellIndex cell) { unite(of(cell)); }
    void toggle(CellIndex cell);
    void unite(const MapSelection& other);
    void subtract(const MapSelection& other);
    /// Keeps the cells for which `keep` says so.
    void filter(const std::function<bool(CellIndex)>& keep);
    void forEach(const std::function<void(CellIndex)>& visit) const;

    bool operator==(const MapSelection&) const = default;

  private:
    std::vector<Run> m_runs;
};

/// The selection without gaps.
MapSelection treesOnly(MapSelection selection, const MapScene& scene);
/// The plants of the selected cells, in the order of the rows.
std::vector<Uuid> plantsOf(const MapSelection& selection, const MapScene& scene);
/// The cells of these plants; plants that do not stand in the scene are left out.
MapSelection selectionOf(std::span<const Uuid> plants, const MapScene& scene);

} // namespace pipwright::ui
