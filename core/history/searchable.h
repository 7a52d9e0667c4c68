#pragma once

#include "core/history/record.h"

namespace pipwright {

/// Whether the finder looks into this field: texts, but not keys, hashes, files or health notes.
bool isSearchable(Kind kind, std::size_t field);

} // namespace pipwright
