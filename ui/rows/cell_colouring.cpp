#include "ui/rows/cell_colouring.h"

namespace pipwright::ui {

namespace {

QColor toned(ColourScale scale, double tone, const Theme& theme) {
    return scale == ColourScale::twoEnded ? balanceColour(2 * tone - 1, theme).fill
                                          : rampColour(tone, theme).fill;
}

QColor between(const QColor& from, const QColor& to, double share) {
    QColor top = to;
    top.setAlphaF(static_cast<float>(share));
    return blended(top, from);
}

} // namespace

std::optional<QColor> CellColouring::fill(CellIndex cell, const Theme& theme) const {
    const auto index = entry(cell);
    if (!index) {
        return std::nullopt;
    }
    return toneOf.empty() ? entryFill(*index, theme)
                          : toned(scale, static_cast<double>(toneOf[cell]), theme);
}

std::optional<QColor> CellColouring::entryFill(std::size_t index, const Theme& theme) const {
    return ui::entryFill(legend[index], index, scale, theme);
}

std::optional<QColor> entryFill(const LegendEntry& entry, std::size_t index, ColourScale scale,
                                const Theme& theme) {
    switch (scale) {
    case ColourScale::stages:
        return stageFill(entry.stage, theme);
    case ColourScale::categories:
        return categoricalColour(index, theme).fill;
    case ColourScale::ramp:
    case ColourScale::twoEnded:
        return toned(scale, entry.tone, theme);
    }
    return std::nullopt;
}

CellSet CellColouring::cellsOf(std::size_t index) const {
    CellSet set(entryOf.size(), false);
    for (std::size_t cell = 0; cell < entryOf.size(); ++cell) {
        set[cell] = entryOf[cell] == index;
    }
    return set;
}

std::optional<QColor> stageFill(Stage stage, const Theme& theme) {
    // Between surface and leaf: deeper is darker on paper and brighter on a dark ground.
    switch (stage) {
    case Stage::bearing:
        return between(theme.surface, theme.leaf, 0.22);
    case Stage::watched:
    case Stage::parent:
        return between(theme.surface, theme.leaf, 0.46);
    case Stage::selection:
        return between(theme.surface, theme.leaf, 0.80);
    case Stage::advanced:
    case Stage::named:
    case Stage::released:
        return theme.leaf;
    default:
        return std::nullopt;
    }
}

} // namespace pipwright::ui
