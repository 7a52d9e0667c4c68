#pragma once

#include "ui/widgets/theme.h"

#include <QIcon>
#include <QString>

#include <array>

namespace pipwright::ui {

/// The icons we drew, by what they stand for.
enum class IconName {
    rows,
    tastings,
    compare,
    season,
    crosses,
    grafting,
    paper,
    note,
    bite,
    walk,
    observation,
    decision,
    graftWish,
    label,
    photo,
    undo,
    redo,
    find,
    open,
    create,
    sample,
    filter,
    zoomIn,
    zoomOut,
    zoomFit,
    list,
    map,
    legend,
    print,
    save,
    table,
    history,
    settings,
    help,
    warning,
    check,
    close,
    fold,
    unfold,
    tree,
    benchmark,
    leaf,
    calendar,
    merit,
};

constexpr std::size_t kIconCount = 44;

/// Follows the application's theme by itself and is sharp at every scale.
QIcon icon(IconName name);
/// In the colours of one theme, for paper or a preview.
QIcon icon(IconName name, const Theme& theme);
/// The drawing with the theme's ink and leaf in it; empty when it is missing from the program.
QByteArray iconDrawing(IconName name, const Theme& theme);

} // namespace pipwright::ui
