#pragma once

#include "core/exchange/print/label_design.h"
#include "core/exchange/print/paper_words.h"

#include <QString>

namespace pipwright::ui {

/// The words on paper in the window's language.
PaperWords translatedPaperWords();

/// "Hang tags, 90 x 25 mm: A4 to cut, 2 x 11".
QString stockName(const LabelStock& stock);

/// Who, what and why, with the millimetres: one sentence.
QString misfitSentence(const Misfit& misfit);

} // namespace pipwright::ui
