#pragma once

#include "ui/rows/map_layout.h"

#include <QImage>

#include <functional>
#include <span>

namespace pipwright::ui {

struct MapPixels;

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

    /// Enlarges what a viewport sees of it, without smoothing and with every edge where the
    /// cells of the layout have it. `size` is in device pixels. Kept until something changes.
    const QImage& enlarged(const MapLayout& layout, const MapScale& scale, const MapPixels& pixels,
                           QSize size, QRgb ground);

    [[nodiscard]] const QImage& image() const { return m_image; }
    [[nodiscard]] int pixelsPerPlace() const { return m_across; }
    [[nodiscard]] int pixelsPerRow() const { return m_down; }

  private:
    void enlargeRow(std::span<const int> edges, int sourceRow, int from, int to);
    void drawCell(const MapLayout& layout, std::uint32_t row, CellIndex cell, QRgb colour);

    QImage m_image;
    QImage m_enlarged;
    bool m_enlargedIsStale = true;
    MapScale m_enlargedScale;
    QPointF m_enlargedOrigin;
    int m_across = 1;
    int m_down = 1;
};

} // namespace pipwright::ui
