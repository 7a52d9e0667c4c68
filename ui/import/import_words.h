#pragma once

#include "core/exchange/table_import.h"

#include <QString>

namespace pipwright::ui {

/// The words of an import in the window's language.
QString targetWord(RecipeTarget target);
QString fieldWord(TableField field);
QString fateWord(LineFate fate);

} // namespace pipwright::ui
