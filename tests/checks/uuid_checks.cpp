#include "core/units/uuid.h"

#include <cstdint>
#include <gtest/gtest.h>
#include <string>
#include <string_view>

namespace pipwright {
namespace {

// RFC 9562, appendix A.6: the example of a version 7 name, made at 2022-02-22 19:22:22 UTC,
// 1645557742000 milliseconds (0x017F22E279B0) since 1970.
constexpr std::string_view kVersion7 = "017F22E2-79B0-7CC3-98C4-DC0C0C07398F";
constexpr std::int64_t kMoment = 1645557742000;

unsigned versionOf(const Uuid& uuid) {
    return uuid.bytes[6] >> 4U;
}
unsigned variantOf(const Uuid& uuid) {
    return uuid.bytes[8] >> 6U;
}

TEST(UuidCheck, ReadsTheExampleOfVersion7) {
    const Uuid uuid = Uuid::fromText(kVersion7).value();
    EXPECT_EQ(versionOf(uuid), 7U);
    EXPECT_EQ(variantOf(uuid), 2U) << "RFC 9562, section 4.1: the two bits 10";
    EXPECT_EQ(uuid.text(), "017f22e2-79b0-7cc3-98c4-dc0c0c07398f");
}

TEST(UuidCheck, MakesNamesOfThatMomentInThatLayout) {
    UuidMaker maker{1, [] { return kMoment; }};
    for (int i = 0; i < 4000; ++i) {
        const Uuid uuid = maker.make();
        EXPECT_EQ(uuid.text().substr(0, 15), "017f22e2-79b0-7");
        EXPECT_EQ(variantOf(uuid), 2U);
    }
}

// RFC 9562, section 5.8: version 8 for names of one's own making; section 5.9: the nil name.
TEST(UuidCheck, NamedIsOfVersion8AndNilIsZero) {
    EXPECT_EQ(versionOf(Uuid::named("trait/liking")), 8U);
    EXPECT_EQ(variantOf(Uuid::named("trait/liking")), 2U);
    EXPECT_EQ(Uuid{}.text(), "00000000-0000-0000-0000-000000000000");
}

/// The bytes of the text, the rest zero.
Uuid holding(std::string_view text) {
    Uuid uuid;
    for (std::size_t i = 0; i < text.size(); ++i) {
        uuid.bytes[i] = static_cast<std::uint8_t>(text[i]);
    }
    return uuid;
}

// RFC 4648, section 10: BASE32("fooba") = "MZXW6YTB"; whole groups of five bytes do not depend on
// what follows. BASE32("f") = "MY======" gives the last character group of a single byte.
TEST(UuidCheck, LabelCodeIsBase32) {
    const Uuid uuid = holding("foobafoobafoobaf");
    EXPECT_EQ(uuid.labelCode(), "MZXW6YTBMZXW6YTBMZXW6YTBMY");
    EXPECT_EQ(Uuid::fromLabelCode("MZXW6YTBMZXW6YTBMZXW6YTBMY"), uuid);
}

// RFC 4648, section 6, table 3: value 0 is A, 25 is Z, 26 is 2, 31 is 7.
TEST(UuidCheck, LabelCodeUsesTheAlphabetInOrder) {
    EXPECT_EQ(Uuid{}.labelCode(), std::string(26, 'A'));
    Uuid counting; // the five-bit groups 0, 1, 2 ... 7, 24, 25 ... 31
    const std::uint8_t bytes[] = {0x00, 0x44, 0x32, 0x14, 0xC7, 0xC6, 0x75, 0xBE, 0x77, 0xDF};
    for (std::size_t i = 0; i < 10; ++i) {
        counting.bytes[i] = bytes[i];
    }
    EXPECT_EQ(counting.labelCode(), "ABCDEFGHYZ234567AAAAAAAAAA");
}

} // namespace
} // namespace pipwright
