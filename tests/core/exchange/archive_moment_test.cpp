#include "core/exchange/archive_format.h"

#include <cstdint>
#include <gtest/gtest.h>
#include <limits>

namespace pipwright {
namespace {

TEST(ArchiveMoment, IsExactToTheMillisecondAndReadsBack) {
    EXPECT_EQ(momentText(0), "1970-01-01T00:00:00.000Z");
    EXPECT_EQ(momentText(-1), "1969-12-31T23:59:59.999Z");
    EXPECT_EQ(momentText(1'787'392'800'123), "2026-08-22T10:00:00.123Z");
    for (const std::int64_t moment :
         {std::int64_t{0}, std::int64_t{-1}, std::int64_t{1'787'392'800'123},
          std::numeric_limits<std::int64_t>::max(), std::numeric_limits<std::int64_t>::min()}) {
        EXPECT_EQ(momentFromText(momentText(moment)), moment);
    }
    EXPECT_FALSE(momentFromText("2026-02-30T10:00:00.000Z"));
    EXPECT_FALSE(momentFromText("2026-08-22T25:00:00.000Z"));
    EXPECT_FALSE(momentFromText(""));
}

} // namespace
} // namespace pipwright
