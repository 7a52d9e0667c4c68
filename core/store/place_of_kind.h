#pragma once

#include "core/orchard/kinds.h"

#include <cstddef>

namespace pipwright {

/// Where a kind stands in an array that has a place for each.
constexpr std::size_t placeOf(Kind kind) {
    return static_cast<std::size_t>(kind);
}

} // namespace pipwright
