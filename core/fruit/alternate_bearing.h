#pragma once

#include "core/fruit/mass.h"
#include "core/units/result.h"

#include <optional>
#include <span>

namespace pipwright {

/// How strongly a tree bears in turns: the mean over successive crop years of
///     |later - earlier| / (later + earlier),
/// after Hoblyn, Grubb, Painter & Wates (1936), Journal of Pomology 14:39. 0 is the same crop every
/// year, 1 a crop every other year and nothing between. Crops that go up and down by chance have
/// an index too, so few pairs say little.
struct AlternateBearing {
    double index = 0;     ///< 0 to 1
    int pairs = 0;        ///< neighbouring years it stands on
    int pairsMissing = 0; ///< left out, as a year of the two was not weighed
    int pairsEmpty = 0;   ///< left out, as neither year had fruit
    /// From the spread of the pairs; only from two pairs on. Neighbouring pairs share a year, so it
    /// is a rough guide.
    std::optional<double> standardError;
};

/// The crops of successive crop years, one for each; nothing where a year was not weighed, which
/// is not the same as no fruit. A Problem for negative masses, NaN, and when no pair is left.
Result<AlternateBearing> alternateBearing(std::span<const std::optional<Kilograms>> crops);

} // namespace pipwright
