#pragma once

#include "ui/rows/map_layout.h"

#include <QImage>

#include <functional>
#include <span>

namespace pipwright::ui {

/// The whole map as a small picture: one pixel a cell (four along a place that is spaced by tape,
/// and as many down a place as plants share one anywhere in the scene). Drawn larger without
/// smoothing.
class OverviewImage {
  public:
    using ColourOf = std::function<QRgb(CellIndex)>;

    /// Draws all cells anew.
    void rebuild(const MapLayout& layout, QRgb ground, const ColourOf& colourOf);
    /// Draws only these cells anew; rebuild() must have been called for the same layout.
    void patch(const MapLayout& layout, std::span<const CellIndex> cells, const ColourOf& colourOf);

    [[nodiscard]] const QImage& image() const { return m_image; }
    [[nodiscard]] int pixelsPerPlace() const { return m_across; }
    [[nodiscard]] int pixelsPerRow() const { return m_down; }

  private:
    void drawCell(const MapLayout& layout, std::uint32_t row, CellIndex cell, QRgb colour);

    QImage m_image;
    int m_across = 1;
    int m_down = 1;
};

} // namespace pipwright::ui
