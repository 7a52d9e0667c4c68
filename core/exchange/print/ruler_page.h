#pragma once

#include "core/exchange/print/page.h"
#include "core/exchange/print/paper_words.h"
#include "core/exchange/print/text_measure.h"

namespace pipwright {

/// A page with a ruler across and one down, to see whether the printer keeps the size: 100 mm
/// each, or as many whole centimetres as the page has room for; on a low label only the one
/// across. The ticks stand at millimetres.
Page rulerPage(PaperSize paper, const PaperWords& words, const TextMeasure& measure);

} // namespace pipwright
