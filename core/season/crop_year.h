#pragma once

#include <compare>

namespace pipwright {

/// The calendar year of the bloom that made the fruit, in both hemispheres. Fruit of crop year
/// 2025 may be picked in February 2026 in the south, or tasted from the cellar then in the north.
struct CropYear {
    int year = 0;

    auto operator<=>(const CropYear&) const = default;
};

} // namespace pipwright
