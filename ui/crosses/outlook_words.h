#pragma once

#include "core/pedigree/segregation.h"
#include "core/plan/cross_outlook.h"
#include "core/plan/raising.h"

#include <QString>
#include <QStringList>

namespace pipwright::ui {

/// What the outlook of a cross says, in sentences.

/// Whether the pollen grows, and the S genotypes of the seedlings.
QString pollenText(const CrossOutlook& outlook);
/// F of the seedlings, and what it does not know.
QString inbreedingText(const CrossOutlook& outlook, const OrchardView& view);
/// "Ash Tarn 50 %, Russet Moor 25 %, unknown 25 %"; at most eight founders are named.
QString foundersText(const CrossOutlook& outlook, const OrchardView& view);
/// What to mind; empty when there is nothing.
QStringList warningTexts(const CrossOutlook& outlook, const OrchardView& view);

/// How many to raise, from what that is known.
QString raisingText(const RaisingAdvice& advice, const RaisingRecord& record);
/// Whether what was counted fits the expected ratio.
QString countedText(const SegregationTest& test, const std::vector<SegregationClass>& classes);

} // namespace pipwright::ui
