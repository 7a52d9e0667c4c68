#pragma once

#include "core/history/store.h"

#include <cstdint>

namespace pipwright::sample {

/// How large a book for measuring speed is to be.
struct LargeBook {
    std::int64_t trees = 100'000;
    std::int64_t scores = 1'000'000;
    std::uint64_t seed = 1;
};

/// Fills an empty book with so many planted seedlings and scores of their lots, with walk marks and
/// decisions in proportion. The content comes without history: its journal is one baseline.
Outcome makeLargeBook(Store& store, const LargeBook& wanted);

} // namespace pipwright::sample
