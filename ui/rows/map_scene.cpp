#include "ui/rows/map_scene.h"

#include <QString>

#include <algorithm>
#include <numeric>
#include <utility>

namespace pipwright::ui {

std::optional<CellIndex> MapScene::find(const Uuid& plant) const {
    const auto found = std::lower_bound(
        m_byPlant.begin(), m_byPlant.end(), plant,
        [this](CellIndex cell, const Uuid& wanted) { return m_cells[cell].plant < wanted; });
    if (found == m_byPlant.end() || m_cells[*found].plant != plant) {
        return std::nullopt;
    }
    return *found;
}

std::uint32_t MapScene::rowOf(CellIndex cell) const {
    const auto after = std::upper_bound(
        m_rows.begin(), m_rows.end(), cell,
        [](CellIndex wanted, const MapRow& row) { return wanted < row.firstCell; });
    auto row = static_cast<std::uint32_t>(after - m_rows.begin()) - 1;
    // Rows without cells share their first cell with the row after them.
    while (row > 0 && m_rows[row].cellCount == 0) {
        --row;
    }
    return row;
}

ScenePointer MapScene::with(std::span<const CellStanding> looks) const {
    auto changed = std::make_shared<MapScene>(*this);
    for (const CellStanding& look : looks) {
        MapCell& cell = changed->m_cells[look.cell];
        cell.stage = look.stage;
        cell.state = look.state;
        cell.identity = look.identity;
        cell.marks = look.marks;
    }
    return changed;
}

void MapSceneBuilder::addSite(std::string name) {
    m_scene.m_sites.push_back(
        {std::move(name), static_cast<std::uint32_t>(m_scene.m_rows.size()), 0});
}

void MapSceneBuilder::addRow(RowFacts facts) {
    if (m_scene.m_sites.empty()) {
        addSite({});
    }
    MapRow row;
    row.site = static_cast<std::uint32_t>(m_scene.m_sites.size()) - 1;
    row.name = std::move(facts.name);
    row.lengthMetres = facts.lengthMetres;
    row.bearing = std::move(facts.bearing);
    row.firstCell = static_cast<CellIndex>(m_scene.m_cells.size());
    m_scene.m_rows.push_back(std::move(row));
    ++m_scene.m_sites.back().rowCount;
}

void MapSceneBuilder::addPlace(const PlaceFacts& facts) {
    if (m_scene.m_rows.empty() || m_scene.m_rows.back().site + 1 != m_scene.m_sites.size()) {
        addRow({});
    }
    MapCell cell;
    cell.plant = facts.plant;
    cell.ordinal = facts.ordinal;
    if (facts.tapeMetres) {
        cell.tapeMetres = static_cast<float>(*facts.tapeMetres);
        m_scene.m_hasTape = true;
    }
    cell.code = keep(facts.code);
    cell.shortCode = facts.shortCode == facts.code ? cell.code : keep(facts.shortCode);
    const std::string folded = QString::fromUtf8(facts.code).toCaseFolded().toUtf8().toStdString();
    cell.folded = folded == facts.code ? cell.code : keep(folded);
    cell.stage = facts.stage;
    cell.state = facts.state;
    cell.identity = facts.identity;
    cell.marks = facts.marks;
    m_scene.m_cells.push_back(cell);
    ++m_scene.m_rows.back().cellCount;
}

ScenePointer MapSceneBuilder::finish() {
    for (const MapRow& row : m_scene.m_rows) {
        sortRow(row);
    }
    for (CellIndex cell = 0; cell < m_scene.m_cells.size(); ++cell) {
        if (!m_scene.m_cells[cell].isGap()) {
            m_scene.m_byPlant.push_back(cell);
        }
    }
    std::sort(m_scene.m_byPlant.begin(), m_scene.m_byPlant.end(),
              [this](CellIndex left, CellIndex right) {
                  return m_scene.m_cells[left].plant < m_scene.m_cells[right].plant;
              });
    m_scene.m_cells.shrink_to_fit();
    m_scene.m_texts.shrink_to_fit();
    m_scene.m_byPlant.shrink_to_fit();
    return std::make_shared<const MapScene>(std::exchange(m_scene, MapScene{}));
}

TextRange MapSceneBuilder::keep(std::string_view text) {
    const TextRange range{static_cast<std::uint32_t>(m_scene.m_texts.size()),
                          static_cast<std::uint32_t>(text.size())};
    m_scene.m_texts.append(text);
    return range;
}

void MapSceneBuilder::sortRow(const MapRow& row) {
    const auto cells = std::span(m_scene.m_cells).subspan(row.firstCell, row.cellCount);
    std::stable_sort(cells.begin(), cells.end(), [](const MapCell& left, const MapCell& right) {
        return left.ordinal < right.ordinal;
    });
    for (std::size_t i = 1; i < cells.size(); ++i) {
        MapCell& before = cells[i - 1];
        MapCell& here = cells[i];
        if (before.ordinal == here.ordinal && !before.isGap() && !here.isGap()) {
            before.marks |= static_cast<std::uint8_t>(CellMark::secondPlant);
            here.marks |= static_cast<std::uint8_t>(CellMark::secondPlant);
        }
    }
}

} // namespace pipwright::ui
