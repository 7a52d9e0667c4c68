#pragma once

#include "ui/rows/map_painter.h"

#include <QRect>

#include <cmath>

namespace pipwright::ui {

/// A frame of the map in device pixels. All painting is done in these, so that every edge falls on
/// one.
struct MapPixels {
    double ratio;
    QPointF origin; ///< of the content
    QRect clip;
    int left; ///< right edge of the row names
    int top;  ///< lower edge of the ruler

    /// `logical` is what is to be painted, in logical pixels of the viewport.
    MapPixels(const MapFrame& frame, const QRect& logical)
        : ratio(frame.ratio),
          origin((QPointF(frame.rowNames, frame.ruler) - frame.scroll) * frame.ratio),
          clip(QRectF(QPointF(logical.topLeft()) * ratio, QSizeF(logical.size()) * ratio)
                   .toAlignedRect()),
          left(static_cast<int>(std::lround(frame.rowNames * ratio))),
          top(static_cast<int>(std::lround(frame.ruler * ratio))) {}

    [[nodiscard]] int x(double content) const {
        return static_cast<int>(std::lround(content * ratio + origin.x()));
    }
    [[nodiscard]] int y(double content) const {
        return static_cast<int>(std::lround(content * ratio + origin.y()));
    }
    /// Content coordinates of the clip.
    [[nodiscard]] QRectF content() const {
        return {(QPointF(clip.topLeft()) - origin) / ratio, QSizeF(clip.size()) / ratio};
    }
};

} // namespace pipwright::ui
