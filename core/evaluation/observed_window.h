#pragma once

#include "core/orchard/traits.h"

#include <optional>
#include <span>

namespace pipwright {

/// When the fruit of one crop year was seen ripe, as far as the walks tell: it became ripe after
/// `stillGreen` and by `firstRipe`, and was good until `lastRipe`, over by `over`.
struct ObservedWindow {
    std::optional<Date> stillGreen; ///< last walk that found it not ripe
    std::optional<Date> firstRipe;  ///< first walk that found it ripe
    std::optional<Date> lastRipe;   ///< last walk that found it ripe
    std::optional<Date> over;       ///< first walk that found it over or gone

    [[nodiscard]] bool empty() const { return !stillGreen && !firstRipe && !over; }
    bool operator==(const ObservedWindow&) const = default;
};

/// Reads the walk marks among the observations (of one crop year and one plant or genotype).
/// Void ones are passed over; days "first ripe" and "last good on tree" count as marks.
ObservedWindow observedWindow(std::span<const Observation> observations);

} // namespace pipwright
