#pragma once

#include "ui/rows/map_scene.h"

#include <QPolygonF>
#include <QRectF>

#include <optional>
#include <utility>
#include <vector>

namespace pipwright::ui {

/// Along a row, places stand one beside the other by their ordinal, or where the tape says.
enum class PlaceSpacing { byOrder, byTape };

/// How large the map is drawn. All in logical pixels of the widget.
struct MapScale {
    double cellWidth = 14;
    double rowPitch = 20; ///< from one row to the next, alley included
    double heading = 28;  ///< height of a site's heading

    bool operator==(const MapScale&) const = default;
};

/// Where each cell lies, in units of one place along the row, and from there in logical pixels of
/// a scale. The origin is the corner of the first heading, without ruler and row names.
class MapLayout {
  public:
    struct Slot {
        float left = 0;  ///< in places
        float width = 1; ///< in places
        std::uint8_t part = 0;
        std::uint8_t parts = 1; ///< plants that share the place, drawn one below the other
    };

    MapLayout() : MapLayout(nullptr, PlaceSpacing::byOrder) {}
    MapLayout(ScenePointer scene, PlaceSpacing spacing);

    [[nodiscard]] const MapScene& scene() const { return *m_scene; }
    [[nodiscard]] const ScenePointer& scenePointer() const { return m_scene; }
    [[nodiscard]] PlaceSpacing spacing() const { return m_spacing; }
    [[nodiscard]] const Slot& slot(CellIndex cell) const { return m_slots[cell]; }
    /// Length of the longest row, in places.
    [[nodiscard]] double columns() const { return m_columns; }
    /// Metres that one place stands for when spaced by tape; 0 when nothing was measured.
    [[nodiscard]] double metresPerPlace() const { return m_metresPerPlace; }

    [[nodiscard]] QSizeF contentSize(const MapScale& scale) const;
    [[nodiscard]] double rowTop(std::uint32_t row, const MapScale& scale) const;
    [[nodiscard]] double headingTop(std::uint32_t site, const MapScale& scale) const;
    /// The cell's box, alley included.
    [[nodiscard]] QRectF cellRect(CellIndex cell, const MapScale& scale) const;
    /// Nothing above, below or on a heading.
    [[nodiscard]] std::optional<std::uint32_t> rowAt(double y, const MapScale& scale) const;
    /// First and one-past-last row that lie between the two heights, at least partly.
    [[nodiscard]] std::pair<std::uint32_t, std::uint32_t> rowsBetween(double top, double bottom,
                                                                      const MapScale& scale) const;
    [[nodiscard]] std::optional<CellIndex> cellAt(QPointF point, const MapScale& scale) const;
    /// First and one-past-last cell of a row between two places, at least partly.
    [[nodiscard]] std::pair<CellIndex, CellIndex> cellsBetween(std::uint32_t row, double left,
                                                               double right) const;
    /// The cell of a row whose middle is nearest to a place; nothing in a row without cells.
    [[nodiscard]] std::optional<CellIndex> nearest(std::uint32_t row, double place) const;
    /// Cells of which a part lies in the rectangle.
    [[nodiscard]] std::vector<CellIndex> cellsIn(const QRectF& area, const MapScale& scale) const;
    /// Cells whose middle lies in the polygon.
    [[nodiscard]] std::vector<CellIndex> cellsIn(const QPolygonF& lasso,
                                                 const MapScale& scale) const;

  private:
    void placeByOrder(const MapRow& row);
    void placeByTape(const MapRow& row);
    void sharePlaces(const MapRow& row);

    ScenePointer m_scene;
    PlaceSpacing m_spacing;
    std::vector<Slot> m_slots;
    double m_columns = 0;
    double m_metresPerPlace = 0;
};

} // namespace pipwright::ui
