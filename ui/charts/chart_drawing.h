#pragma once

#include "core/statistics/chart_spec.h"
#include "ui/widgets/theme.h"

#include <QPointF>
#include <QRectF>
#include <QSizeF>
#include <QString>

#include <cstddef>
#include <memory>
#include <optional>
#include <vector>

class QPainter;

namespace pipwright::ui {

/// A mark that can be pointed at, and where it was drawn.
struct PlacedMark {
    std::size_t series = 0;
    std::size_t mark = 0;
    QRectF area;   ///< in the drawing's pixels
    QPointF point; ///< its middle
};

/// A chart laid out for a size and a theme: drawn as often as wanted on a screen, a picture or
/// paper, and asked what lies where.
class ChartDrawing {
  public:
    /// `shown` has one entry a series; hidden series keep their colour and the axes their range.
    ChartDrawing(const ChartSpec& spec, const std::vector<bool>& shown, QSizeF size,
                 const Theme& theme);
    ~ChartDrawing();
    ChartDrawing(const ChartDrawing&) = delete;
    ChartDrawing& operator=(const ChartDrawing&) = delete;

    /// Draws at the painter's origin. The series `highlighted` stands out, the others step back.
    void paint(QPainter& painter, std::optional<std::size_t> highlighted) const;
    [[nodiscard]] QRectF plotArea() const;
    /// Points and spans of the shown series, in the order of x, then of series.
    [[nodiscard]] const std::vector<PlacedMark>& marks() const;
    /// The nearest mark within reach of the place.
    [[nodiscard]] std::optional<std::size_t> markAt(QPointF place) const;

  private:
    class Scene;
    std::unique_ptr<Scene> m_scene;
};

} // namespace pipwright::ui
