#include "core/units/text.h"

#include <gtest/gtest.h>
#include <string>

namespace pipwright {
namespace {

// RFC 3629, section 7: the three examples of well-formed UTF-8, and section 10: the overlong forms
// that a reader must not take for a slash or the null character.
TEST(TextCheck, TellsWellFormedUtf8) {
    EXPECT_EQ(firstBadUtf8("\x41\xE2\x89\xA2\xCE\x91\x2E"), std::nullopt);
    EXPECT_EQ(characterCount("\x41\xE2\x89\xA2\xCE\x91\x2E"), 4U);
    EXPECT_EQ(firstBadUtf8("\xED\x95\x9C\xEA\xB5\xAD\xEC\x96\xB4"), std::nullopt);
    EXPECT_EQ(characterCount("\xED\x95\x9C\xEA\xB5\xAD\xEC\x96\xB4"), 3U);
    EXPECT_EQ(firstBadUtf8("\xE6\x97\xA5\xE6\x9C\xAC\xE8\xAA\x9E"), std::nullopt);
    EXPECT_EQ(firstBadUtf8("\xC0\x80"), 0U);
    EXPECT_EQ(firstBadUtf8("\x2F\xC0\xAE\x2E\x2F"), 1U);
}

} // namespace
} // namespace pipwright
