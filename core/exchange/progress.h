#pragma once

#include <cstdint>
#include <functional>

namespace pipwright {

/// Told now and then how much of the work is done (both in the same unit; `total` at least 1).
/// Returning false stops the work, which then ends with ProblemCode::cancelled.
using Progress = std::function<bool(std::int64_t done, std::int64_t total)>;

} // namespace pipwright
