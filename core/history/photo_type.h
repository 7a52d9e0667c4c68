#pragma once

#include "core/history/record.h"

#include <string_view>

namespace pipwright {

/// How a picture is kept: its media type and the ending of its file name.
struct PhotoType {
    std::string_view mediaType;
    std::string_view ending;
};

/// Reads the first bytes; a Problem for anything but PNG, JPEG and SVG.
Result<PhotoType> photoTypeOf(std::string_view bytes);

} // namespace pipwright
