#include "core/history/searchable.h"

#include <algorithm>
#include <array>

namespace pipwright {

bool isSearchable(Kind kind, std::size_t field) {
    constexpr std::array<std::string_view, 15> kNotWords = {
        "key",        "sha256",       "media_type",  "columns",     "time_zone",
        "unit",       "unit_typed",   "source_file", "source_cell", "source_sheet",
        "instrument", "health_notes", "uses",        "typed",       "serving_code"};
    const FieldInfo& info = fieldsOf(kind)[field];
    return info.type == FieldType::text &&
           std::find(kNotWords.begin(), kNotWords.end(), info.name) == kNotWords.end();
}

} // namespace pipwright
