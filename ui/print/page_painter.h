#pragma once

#include "core/exchange/print/page.h"

#include <QPointF>

class QPainter;

namespace pipwright::ui {

/// How micrometres become device pixels: where the paper's top left corner is, and the scale.
struct PageScale {
    QPointF origin;
    double pixelsPerMillimetre = 1.0;

    static PageScale forResolution(int dotsPerInch) { return {{}, dotsPerInch / 25.4}; }
};

/// Draws the marks of a page in black on whatever is there; the paper itself is not drawn.
void paintPage(QPainter& painter, const Page& page, const PageScale& scale);

} // namespace pipwright::ui
