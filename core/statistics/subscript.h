#pragma once

#include <cstddef>
#include <cstdint>

namespace pipwright {

/// A number of a row, column or level, counted from 0, as what a vector is asked with.
constexpr std::size_t at(std::int32_t index) {
    return static_cast<std::size_t>(index);
}

} // namespace pipwright
