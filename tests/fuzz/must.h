#pragma once

#include <cstdio>
#include <cstdlib>

namespace pipwright::fuzz {

/// Ends the process where a promise is broken, so that the input that broke it is kept.
inline void must(bool held, const char* promise) {
    if (!held) {
        std::fprintf(stderr, "broken promise: %s\n", promise);
        std::abort();
    }
}

} // namespace pipwright::fuzz
