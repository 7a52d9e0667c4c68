#pragma once

#include "core/units/quantity.h"

namespace pipwright {

/// Of a crop or a crate; single fruits are weighed in Grams.
using Kilograms = Quantity<struct KilogramUnit>;

constexpr Grams toGrams(Kilograms mass) {
    return Grams{mass.number() * 1000};
}
constexpr Kilograms toKilograms(Grams mass) {
    return Kilograms{mass.number() / 1000};
}

} // namespace pipwright
