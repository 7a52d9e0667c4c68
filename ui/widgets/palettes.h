#pragma once

#include "ui/widgets/theme.h"

#include <QColor>
#include <QString>

#include <cstddef>

namespace pipwright::ui {

/// A fill with what it needs to be seen and written on.
struct MarkColour {
    QColor fill;
    QColor outline; ///< at least 3:1 against the theme's surface
    QColor text;    ///< at least 4.5:1 against the fill
};

/// Outline and text for any fill on the surface of the theme.
MarkColour markColour(const QColor& fill, const Theme& theme);

constexpr std::size_t kCategoricalCount = 8;

/// Eight hues that colour-blind eyes tell apart (Okabe & Ito 2008, "Color Universal Design");
/// black becomes pale ink in the dark theme. From the ninth on the hues begin again and only the
/// letter tells them apart.
MarkColour categoricalColour(std::size_t index, const Theme& theme);
/// The letter that goes with the colour: A to Z, then AA, AB ...
QString categoricalLetter(std::size_t index);

/// Perceptually even ramp from little (0, deep blue) to much (1, yellow): cividis (Nuñez, Anderton
/// & Renslow 2018, PLoS ONE 13: e0199239), between its published values in twelve equal steps.
MarkColour rampColour(double share, const Theme& theme);

/// Two-ended: -1 is orange (worse), 0 neither, 1 is blue (better).
MarkColour balanceColour(double balance, const Theme& theme);

} // namespace pipwright::ui
