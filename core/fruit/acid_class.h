#pragma once

#include "core/fruit/juice.h"

#include <optional>

namespace pipwright {

/// How sour a juice is, in words for the table and the kitchen (malic acid; classes as printed
/// on yorkshireapples.co.uk). A soft guide: sugar and aroma decide as much.
enum class JuiceAcidity {
    veryLow,  ///< below 1 g/L
    low,      ///< to 3.5
    medium,   ///< to 6
    high,     ///< to 9, still for the table
    veryHigh, ///< above: for cooking
};

/// Nothing for negative values and NaN.
std::optional<JuiceAcidity> juiceAcidity(GramsPerLitre malic);

/// The four kinds of cider apples of Barker (Long Ashton, 1903), by 4.5 g/L of acid and 2 g/L of
/// tannin.
enum class CiderKind { sweet, bittersweet, bittersharp, sharp };

/// Nothing on a limit itself, which the classes leave open, and for values below nothing.
std::optional<CiderKind> ciderKind(GramsPerLitre malic, GramsPerLitre tannin);

} // namespace pipwright
