#include "core/exchange/print/paper.h"
#include "core/exchange/print/qr_code.h"
#include "core/units/uuid.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace pipwright {
namespace {

// ISO 216:2007, A series, millimetres: A4 210 x 297, A5 148 x 210; each size is the one before
// it halved across its longer side, rounded down to whole millimetres.
TEST(PaperSizes, AreThoseOfIso216) {
    EXPECT_EQ(kA4, (PaperSize{210_mm, 297_mm}));
    EXPECT_EQ(kA5, (PaperSize{148_mm, 210_mm}));
    EXPECT_EQ(kA5.height, kA4.width);
    EXPECT_EQ(kA5.width.count / 1000, kA4.height.count / 1000 / 2);
}

// ANSI/ASME Y14.1: size A is 8.5 x 11 inches; the inch is 25.4 mm by the agreement of 1959.
TEST(PaperSizes, LetterIsEightAndAHalfByElevenInches) {
    EXPECT_EQ(kLetter, (PaperSize{millimetres(8.5 * 25.4), millimetres(11 * 25.4)}));
}

// ISO/IEC 18004, capacities: version 2 level Q holds 29 alphanumeric characters; 25 modules a
// side (17 + 4 x version), 4 modules of quiet zone.
TEST(QrCapacity, VersionTwoLevelQHoldsTwentyNineCharacters) {
    const auto full = makeQrCode(std::string(29, 'Z'));
    ASSERT_TRUE(full.ok());
    EXPECT_EQ(full->modules, 17 + 4 * 2);
    EXPECT_EQ(kQuietModules, 4);
    EXPECT_FALSE(makeQrCode(std::string(30, 'Z')).ok());
    EXPECT_FALSE(makeQrCode(std::string(5000, 'Z')).ok());
}

// The same from the table of data codewords: 22 in version 2-Q, so 176 bits less 4 of mode and 9
// of count; two characters take 11 bits, a last one 6.
TEST(QrCapacity, AgreesWithTheBitsOfTheStandard) {
    const int bits = 22 * 8 - 4 - 9;
    int characters = bits / 11 * 2;
    characters += bits % 11 >= 6 ? 1 : 0;
    EXPECT_EQ(characters, 29);
    EXPECT_TRUE(makeQrCode(std::string(static_cast<std::size_t>(characters), '7')).ok());
}

// ISO/IEC 18004, format information: the error level is the first two of the 15 bits beside the
// upper left finder, masked with 10; level Q is 11, so the modules are light, dark.
TEST(QrFormat, SaysLevelQ) {
    const auto code = makeQrCode("ORCHARD BOOK 2026");
    ASSERT_TRUE(code.ok());
    EXPECT_FALSE(code->dark(8, 0));
    EXPECT_TRUE(code->dark(8, 1));
}

// ISO/IEC 18004: timing patterns run in row and column 6, dark at even numbers; one dark module
// stands at (4 x version + 9, 8).
TEST(QrFormat, HasTimingPatternsAndTheDarkModule) {
    const auto code = makeQrCode("ORCHARD BOOK 2026");
    ASSERT_TRUE(code.ok());
    for (int i = 8; i <= 16; ++i) {
        EXPECT_EQ(code->dark(6, i), i % 2 == 0) << i;
        EXPECT_EQ(code->dark(i, 6), i % 2 == 0) << i;
    }
    EXPECT_TRUE(code->dark(4 * 2 + 9, 8));
}

// RFC 4648, section 10, test vectors: BASE32("fooba") = "MZXW6YTB", BASE32("f") = "MY======".
TEST(LabelCode, IsBase32OfRfc4648WithoutPadding) {
    const std::string_view bytes = "foobafoobafoobaf";
    Uuid uuid;
    std::copy(bytes.begin(), bytes.end(), uuid.bytes.begin());
    EXPECT_EQ(uuid.labelCode(), "MZXW6YTBMZXW6YTBMZXW6YTBMY");
    EXPECT_EQ(Uuid::fromLabelCode("MZXW6YTBMZXW6YTBMZXW6YTBMY"), uuid);
}

} // namespace
} // namespace pipwright
