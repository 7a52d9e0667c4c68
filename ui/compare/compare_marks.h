#pragma once

#include "core/orchard/words.h"
#include "ui/widgets/theme.h"

#include <QPainter>
#include <QPointF>

namespace pipwright::ui {

/// Half the width of a score's mark, in logical pixels.
inline constexpr double kScoreDot = 3.5;

/// A score: round when tasted blind, on its corner when sighted, square when that is not known;
/// filled and green when fair, open and grey when not. Told apart in grey too.
void drawScore(QPainter& painter, const QPointF& at, Sight sight, bool fair, const Theme& theme);

/// The mean with its standard error on either side.
void drawMean(QPainter& painter, double left, double mean, double right, double base,
              const Theme& theme);

/// One crop year's window: a point where it was first seen ripe, a line to its end, dotted when the
/// end was not seen.
void drawYear(QPainter& painter, double first, double last, double y, bool endSeen,
              const Theme& theme);

/// The usual window.
void drawUsual(QPainter& painter, const QRectF& bar, const Theme& theme);

} // namespace pipwright::ui
