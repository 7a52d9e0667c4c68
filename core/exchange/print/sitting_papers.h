#pragma once

#include "core/evaluation/planned_table.h"
#include "core/exchange/print/tasting_sheets.h"

#include <functional>
#include <string>

namespace pipwright {

/// The condition of a lot in words.
using ConditionWords = std::function<std::string(const Lot&)>;

/// The sheets of a planned sitting; paper and words are left as they are by default.
TastingSheets tastingSheetsOf(const OrchardView& view, const PlannedTable& table);

/// Its key. `twice` and `again` say why a lot is there: the hidden benchmark, a repeat.
SittingKeyPaper sittingKeyOf(const OrchardView& view, const PlannedTable& table,
                             const ConditionWords& condition, const std::string& twice,
                             const std::string& again);

} // namespace pipwright
