#include "ui/rows/map_layout.h"

#include <algorithm>
#include <cmath>

namespace pipwright::ui {

namespace {

/// The middle one of the distances between neighbouring places that were both measured.
double medianSpacing(const MapScene& scene) {
    std::vector<double> steps;
    for (const MapRow& row : scene.rows()) {
        const auto cells = scene.cellsOf(row);
        for (std::size_t i = 1; i < cells.size(); ++i) {
            const int places = cells[i].ordinal - cells[i - 1].ordinal;
            if (places > 0 && cells[i].tapeMetres && cells[i - 1].tapeMetres) {
                const double metres = static_cast<double>(*cells[i].tapeMetres) -
                                      static_cast<double>(*cells[i - 1].tapeMetres);
                steps.push_back(metres / places);
            }
        }
    }
    std::erase_if(steps, [](double step) { return step <= 0; });
    if (steps.empty()) {
        return 0;
    }
    const auto middle = steps.begin() + static_cast<std::ptrdiff_t>(steps.size() / 2);
    std::nth_element(steps.begin(), middle, steps.end());
    return *middle;
}

/// Steps that a float holds exactly, so that one cell ends where the next begins.
double onGrid(double places) {
    return std::round(places * 64) / 64;
}

/// Metres of every cell of a row: measured where known, else from the neighbours.
std::vector<double> metresOf(std::span<const MapCell> cells, double step) {
    std::vector<double> metres(cells.size());
    std::optional<std::size_t> known;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        if (!cells[i].tapeMetres) {
            continue;
        }
        metres[i] = static_cast<double>(*cells[i].tapeMetres);
        const std::size_t from = known ? *known + 1 : 0;
        for (std::size_t between = from; between < i; ++between) {
            const double places = cells[i].ordinal - cells[between].ordinal;
            if (known) {
                const double all = std::max(1, cells[i].ordinal - cells[*known].ordinal);
                metres[between] = metres[i] - (metres[i] - metres[*known]) * places / all;
            } else {
                metres[between] = metres[i] - step * places;
            }
        }
        known = i;
    }
    const std::size_t rest = known ? *known + 1 : 0;
    const double start = known ? metres[*known] - step * cells[*known].ordinal : 0;
    for (std::size_t i = rest; i < cells.size(); ++i) {
        metres[i] = start + step * cells[i].ordinal;
    }
    return metres;
}

} // namespace

MapLayout::MapLayout(ScenePointer scene, PlaceSpacing spacing)
    : m_scene(scene ? std::move(scene) : std::make_shared<const MapScene>()), m_spacing(spacing),
      m_slots(m_scene->cells().size()) {
    if (spacing == PlaceSpacing::byTape) {
        m_metresPerPlace = medianSpacing(*m_scene);
    }
    for (const MapRow& row : m_scene->rows()) {
        if (m_metresPerPlace > 0) {
            placeByTape(row);
        } else {
            placeByOrder(row);
        }
        sharePlaces(row);
    }
}

void MapLayout::placeByOrder(const MapRow& row) {
    const auto cells = m_scene->cellsOf(row);
    const int first = cells.empty() ? 1 : std::min(1, cells.front().ordinal);
    for (std::size_t i = 0; i < cells.size(); ++i) {
        const int place = cells[i].ordinal - first;
        m_slots[row.firstCell + i].left = static_cast<float>(place);
        m_columns = std::max(m_columns, place + 1.0);
    }
}

void MapLayout::placeByTape(const MapRow& row) {
    const auto cells = m_scene->cellsOf(row);
    const std::vector<double> metres = metresOf(cells, m_metresPerPlace);
    double reached = 0;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        Slot& slot = m_slots[row.firstCell + i];
        if (i > 0 && cells[i].ordinal == cells[i - 1].ordinal) {
            slot = m_slots[row.firstCell + i - 1];
            continue;
        }
        // A plant stands in the middle of its cell; crowded plants get narrower cells.
        std::size_t next = i + 1;
        while (next < cells.size() && cells[next].ordinal == cells[i].ordinal) {
            ++next;
        }
        const double here = metres[i] / m_metresPerPlace;
        const double room = next < cells.size() ? metres[next] / m_metresPerPlace - here : 1.0;
        const double left = onGrid(std::max(reached, here));
        const double width = onGrid(std::clamp(here + room - left, 0.25, 1.0));
        slot.left = static_cast<float>(left);
        slot.width = static_cast<float>(width);
        reached = left + width;
    }
    m_columns = std::max(m_columns, reached);
    if (row.lengthMetres) {
        m_columns = std::max(m_columns, *row.lengthMetres / m_metresPerPlace);
    }
}

void MapLayout::sharePlaces(const MapRow& row) {
    const auto cells = m_scene->cellsOf(row);
    std::size_t first = 0;
    while (first < cells.size()) {
        std::size_t last = first;
        while (last + 1 < cells.size() && cells[last + 1].ordinal == cells[first].ordinal) {
            ++last;
        }
        const std::size_t parts = std::min<std::size_t>(last - first + 1, 255);
        for (std::size_t i = first; i <= last; ++i) {
            Slot& slot = m_slots[row.firstCell + i];
            slot.part = static_cast<std::uint8_t>(std::min(i - first, parts - 1));
            slot.parts = static_cast<std::uint8_t>(parts);
        }
        first = last + 1;
    }
}

QSizeF MapLayout::contentSize(const MapScale& scale) const {
    return {m_columns * scale.cellWidth,
            static_cast<double>(m_scene->sites().size()) * scale.heading +
                static_cast<double>(m_scene->rows().size()) * scale.rowPitch};
}

double MapLayout::rowTop(std::uint32_t row, const MapScale& scale) const {
    const double headings = m_scene->rows()[row].site + 1.0;
    return headings * scale.heading + row * scale.rowPitch;
}

double MapLayout::headingTop(std::uint32_t site, const MapScale& scale) const {
    return site * scale.heading + m_scene->sites()[site].firstRow * scale.rowPitch;
}

QRectF MapLayout::cellRect(CellIndex cell, const MapScale& scale) const {
    const Slot& slot = m_slots[cell];
    const double part = scale.rowPitch / slot.parts;
    return {static_cast<double>(slot.left) * scale.cellWidth,
            rowTop(m_scene->rowOf(cell), scale) + slot.part * part,
            static_cast<double>(slot.width) * scale.cellWidth, part};
}

std::optional<std::uint32_t> MapLayout::rowAt(double y, const MapScale& scale) const {
    const auto sites = m_scene->sites();
    for (std::uint32_t site = 0; site < sites.size(); ++site) {
        const double top = headingTop(site, scale) + scale.heading;
        const double bottom = top + sites[site].rowCount * scale.rowPitch;
        if (y >= top && y < bottom) {
            const auto within = static_cast<std::uint32_t>((y - top) / scale.rowPitch);
            return sites[site].firstRow + std::min(within, sites[site].rowCount - 1);
        }
    }
    return std::nullopt;
}

std::pair<std::uint32_t, std::uint32_t> MapLayout::rowsBetween(double top, double bottom,
                                                               const MapScale& scale) const {
    const auto count = static_cast<std::uint32_t>(m_scene->rows().size());
    std::uint32_t first = 0;
    std::uint32_t end = count;
    // Rows lie in the order of their numbers, so both ends are found by halving.
    std::uint32_t low = 0;
    std::uint32_t high = count;
    while (low < high) {
        const std::uint32_t middle = (low + high) / 2;
        (rowTop(middle, scale) + scale.rowPitch <= top) ? low = middle + 1 : high = middle;
    }
    first = low;
    high = count;
    while (low < high) {
        const std::uint32_t middle = (low + high) / 2;
        (rowTop(middle, scale) < bottom) ? low = middle + 1 : high = middle;
    }
    end = low;
    return {first, end};
}

std::pair<CellIndex, CellIndex> MapLayout::cellsBetween(std::uint32_t row, double left,
                                                        double right) const {
    const MapRow& facts = m_scene->rows()[row];
    const auto begin = m_slots.begin() + facts.firstCell;
    const auto end = begin + facts.cellCount;
    const auto first = std::partition_point(begin, end, [left](const Slot& slot) {
        return static_cast<double>(slot.left) + static_cast<double>(slot.width) <= left;
    });
    const auto last = std::partition_point(
        first, end, [right](const Slot& slot) { return static_cast<double>(slot.left) < right; });
    return {static_cast<CellIndex>(first - m_slots.begin()),
            static_cast<CellIndex>(last - m_slots.begin())};
}

std::optional<CellIndex> MapLayout::cellAt(QPointF point, const MapScale& scale) const {
    const auto row = rowAt(point.y(), scale);
    if (!row) {
        return std::nullopt;
    }
    const double place = point.x() / scale.cellWidth;
    const auto [first, end] = cellsBetween(*row, place, std::nextafter(place, place + 1));
    for (CellIndex cell = first; cell < end; ++cell) {
        if (cellRect(cell, scale).contains(point) || m_slots[cell].parts == 1) {
            return cell;
        }
    }
    return std::nullopt;
}

std::optional<CellIndex> MapLayout::nearest(std::uint32_t row, double place) const {
    const MapRow& facts = m_scene->rows()[row];
    std::optional<CellIndex> best;
    double bestDistance = 0;
    const auto middleOf = [this](CellIndex cell) {
        return static_cast<double>(m_slots[cell].left) +
               static_cast<double>(m_slots[cell].width) / 2;
    };
    const CellIndex around = cellsBetween(row, place, place).first;
    const CellIndex first = around > facts.firstCell ? around - 1 : facts.firstCell;
    const CellIndex end = std::min(around + 2, facts.firstCell + facts.cellCount);
    for (CellIndex cell = first; cell < end; ++cell) {
        const double distance = std::abs(middleOf(cell) - place);
        if (!best || distance < bestDistance) {
            best = cell;
            bestDistance = distance;
        }
    }
    return best;
}

std::vector<CellIndex> MapLayout::cellsIn(const QRectF& area, const MapScale& scale) const {
    std::vector<CellIndex> found;
    const auto [firstRow, endRow] = rowsBetween(area.top(), area.bottom(), scale);
    for (std::uint32_t row = firstRow; row < endRow; ++row) {
        const auto [first, end] =
            cellsBetween(row, area.left() / scale.cellWidth, area.right() / scale.cellWidth);
        for (CellIndex cell = first; cell < end; ++cell) {
            if (m_slots[cell].parts == 1 || cellRect(cell, scale).intersects(area)) {
                found.push_back(cell);
            }
        }
    }
    return found;
}

std::vector<CellIndex> MapLayout::cellsIn(const QPolygonF& lasso, const MapScale& scale) const {
    std::vector<CellIndex> found = cellsIn(lasso.boundingRect(), scale);
    std::erase_if(found, [&](CellIndex cell) {
        return !lasso.containsPoint(cellRect(cell, scale).center(), Qt::OddEvenFill);
    });
    return found;
}

} // namespace pipwright::ui
