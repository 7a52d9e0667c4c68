#pragma once

#include "core/season/date.h"

#include <gtest/gtest.h>
#include <ostream>
#include <string_view>

namespace pipwright {

inline void PrintTo(Date date, std::ostream* out) {
    *out << date.iso();
}

/// A day that the test knows to exist.
inline Date day(std::string_view iso) {
    return Date::fromIso(iso).value();
}

} // namespace pipwright
