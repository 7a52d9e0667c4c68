#include "core/history/photo_type.h"

namespace pipwright {

Result<PhotoType> photoTypeOf(std::string_view bytes) {
    if (bytes.starts_with("\x89PNG\r\n\x1a\n")) {
        return PhotoType{"image/png", ".png"};
    }
    if (bytes.starts_with("\xff\xd8\xff")) {
        return PhotoType{"image/jpeg", ".jpg"};
    }
    if (bytes.substr(0, 1000).find("<svg") != std::string_view::npos) {
        return PhotoType{"image/svg+xml", ".svg"};
    }
    return Problem{ProblemCode::badInput, "this file is not a picture the book can keep.",
                   "Use a PNG, JPEG or SVG file.", ""};
}

} // namespace pipwright
