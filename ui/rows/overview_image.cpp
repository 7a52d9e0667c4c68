#include "ui/rows/overview_image.h"

#include "ui/rows/map_pixels.h"

#include <algorithm>
#include <cmath>
#include <cstring>

namespace pipwright::ui {

namespace {

/// Raster pictures of Qt end here; longer rows lose their far end in the overview only.
constexpr int kMostPixels = 32767;
/// Plants of one place that are told apart from afar.
constexpr int kMostParts = 4;

} // namespace

void OverviewImage::rebuild(const MapLayout& layout, QRgb ground, const ColourOf& colourOf) {
    const auto rows = layout.scene().rows();
    m_across = layout.metresPerPlace() > 0 ? 4 : 1;
    m_down = 1;
    for (CellIndex cell = 0; cell < layout.scene().cells().size(); ++cell) {
        m_down = std::max(m_down, std::min<int>(layout.slot(cell).parts, kMostParts));
    }
    const int width =
        std::clamp(static_cast<int>(std::ceil(layout.columns() * m_across)), 1, kMostPixels);
    const int height = std::clamp(static_cast<int>(rows.size()) * m_down, 1, kMostPixels);
    if (m_image.size() != QSize(width, height)) {
        m_image = QImage(width, height, QImage::Format_RGB32);
    }
    m_image.fill(ground);
    m_enlargedIsStale = true;
    for (std::uint32_t row = 0; row < rows.size(); ++row) {
        for (std::uint32_t i = 0; i < rows[row].cellCount; ++i) {
            const CellIndex cell = rows[row].firstCell + i;
            drawCell(layout, row, cell, colourOf(cell));
        }
    }
}

void OverviewImage::patch(const MapLayout& layout, std::span<const CellIndex> cells,
                          const ColourOf& colourOf) {
    m_enlargedIsStale = m_enlargedIsStale || !cells.empty();
    for (const CellIndex cell : cells) {
        drawCell(layout, layout.scene().rowOf(cell), cell, colourOf(cell));
    }
}

const QImage& OverviewImage::enlarged(const MapLayout& layout, const MapScale& scale,
                                      const MapPixels& pixels, QSize size, QRgb ground) {
    if (!m_enlargedIsStale && m_enlarged.size() == size && m_enlargedScale == scale &&
        m_enlargedOrigin == pixels.origin) {
        return m_enlarged;
    }
    m_enlargedIsStale = false;
    m_enlargedScale = scale;
    m_enlargedOrigin = pixels.origin;
    if (m_enlarged.size() != size) {
        m_enlarged = QImage(size, QImage::Format_RGB32);
    }
    m_enlarged.fill(ground);
    std::vector<int> edges;
    const double pixel = scale.cellWidth / m_across;
    for (int x = 0; x <= m_image.width(); ++x) {
        edges.push_back(std::clamp(pixels.x(x * pixel), 0, size.width()));
    }
    const auto rows = layout.scene().rows();
    for (std::uint32_t row = 0; row < rows.size(); ++row) {
        const int top = pixels.y(layout.rowTop(row, scale));
        const int bottom = pixels.y(layout.rowTop(row, scale) + scale.rowPitch);
        for (int part = 0; part < m_down; ++part) {
            enlargeRow(edges, static_cast<int>(row) * m_down + part,
                       top + (bottom - top) * part / m_down,
                       top + (bottom - top) * (part + 1) / m_down);
        }
    }
    return m_enlarged;
}

void OverviewImage::enlargeRow(std::span<const int> edges, int sourceRow, int from, int to) {
    const int first = std::max(0, from);
    const int end = std::min(m_enlarged.height(), to);
    if (first >= end || sourceRow >= m_image.height()) {
        return;
    }
    const auto* source = reinterpret_cast<const QRgb*>(m_image.constScanLine(sourceRow));
    auto* line = reinterpret_cast<QRgb*>(m_enlarged.scanLine(first));
    for (std::size_t x = 0; x + 1 < edges.size(); ++x) {
        std::fill(line + edges[x], line + edges[x + 1], source[x]);
    }
    const auto bytes = static_cast<std::size_t>(m_enlarged.bytesPerLine());
    for (int y = first + 1; y < end; ++y) {
        std::memcpy(m_enlarged.scanLine(y), line, bytes);
    }
}

void OverviewImage::drawCell(const MapLayout& layout, std::uint32_t row, CellIndex cell,
                             QRgb colour) {
    const MapLayout::Slot& slot = layout.slot(cell);
    const double from = static_cast<double>(slot.left);
    const int left = static_cast<int>(std::lround(from * m_across));
    const int right = std::max(left + 1, static_cast<int>(std::lround(
                                             (from + static_cast<double>(slot.width)) * m_across)));
    const int first = static_cast<int>(row) * m_down + slot.part * m_down / slot.parts;
    const int last =
        std::max(first + 1, static_cast<int>(row) * m_down + (slot.part + 1) * m_down / slot.parts);
    for (int y = first; y < std::min(last, m_image.height()); ++y) {
        auto* line = reinterpret_cast<QRgb*>(m_image.scanLine(y));
        const int end = std::min(right, m_image.width());
        std::fill(line + std::min(left, end), line + end, colour);
    }
}

} // namespace pipwright::ui
