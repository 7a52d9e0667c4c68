#pragma once

#include "core/exchange/print/tasting_sheets.h"
#include "core/plan/sitting_plan.h"

#include <QString>

/// What a planned sitting says, in the window's language.
namespace pipwright::ui {

/// One sentence, as core/plan says it in English.
QString planRemarkWords(const PlanRemark& remark);

/// The cautions of tasting fruit from the row.
QString tastingCaution();

/// The fixed words of sheets and keys.
SittingWords translatedSittingWords();

} // namespace pipwright::ui
