#pragma once

#include "core/orchard/words.h"
#include "core/units/result.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace pipwright {

/// The way a lot took between the tree and the mouth, in days, and as it was typed.
struct StoredPath {
    StoragePath path = StoragePath::unknown;
    std::optional<std::int64_t> daysOnCounter;
    std::optional<std::int64_t> daysInFridge;
    std::optional<std::int64_t> daysInCellar;
    std::string typed;
};

/// Reads a path typed with the thumb: a letter for the place and the days spent there, one behind
/// the other. c is the counter, f the fridge, l the cellar: "f5", "c2", "f14c3" (14 days in the
/// fridge, then 3 on the counter). Days may be missing ("f": in the fridge, nobody knows how
/// long); the same place twice adds up; blanks and capitals do not matter. "0" is straight off the
/// tree; nothing and "?" are unknown. The Problem says what else may be typed.
Result<StoredPath> readStoragePath(std::string_view typed);

/// What readStoragePath would read as the same, for a path that was never typed: "f14c3".
std::string storagePathText(const StoredPath& path);

} // namespace pipwright
