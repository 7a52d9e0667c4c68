#include "core/exchange/print/qr_code.h"
#include "core/units/uuid.h"

#include <algorithm>
#include <cstdlib>
#include <gtest/gtest.h>

namespace pipwright {
namespace {

TEST(QrCode, TakesThePlantsLabelCode) {
    const auto code = makeLabelQrCode(Uuid::named("a plant").labelCode());
    ASSERT_TRUE(code.ok());
    EXPECT_EQ(code->modules, 25);
    EXPECT_EQ(code->isDark.size(), 625U);
    EXPECT_EQ(labelCodeSide(0.5_mm), 16.5_mm);
}

TEST(QrCode, HasItsThreeFinderPatternsAndNotAFourth) {
    const auto code = makeQrCode("AT17-014");
    ASSERT_TRUE(code.ok());
    const auto isFinderAt = [&](int top, int left) {
        for (int row = 0; row < 7; ++row) {
            for (int column = 0; column < 7; ++column) {
                const int ring = std::max(std::abs(row - 3), std::abs(column - 3));
                if (code->dark(top + row, left + column) != (ring != 2)) {
                    return false;
                }
            }
        }
        return true;
    };
    EXPECT_TRUE(isFinderAt(0, 0));
    EXPECT_TRUE(isFinderAt(0, 18));
    EXPECT_TRUE(isFinderAt(18, 0));
    EXPECT_FALSE(isFinderAt(18, 18));
}

TEST(QrCode, DifferentPlantsHaveDifferentCodes) {
    const auto one = makeLabelQrCode(Uuid::named("one").labelCode());
    const auto other = makeLabelQrCode(Uuid::named("other").labelCode());
    EXPECT_NE(one->isDark, other->isDark);
}

TEST(QrCode, RefusesWhatItCannotHoldAndSaysWhatItCan) {
    for (const std::string text : {"", "lower case", "ÄPFEL"}) {
        const auto code = makeQrCode(text);
        ASSERT_FALSE(code.ok()) << text;
        EXPECT_EQ(code.problem().code, ProblemCode::badInput);
        EXPECT_FALSE(code.problem().remedy.empty());
    }
}

TEST(QrCode, RefusesALabelCodeThatIsNone) {
    const std::string right = Uuid::named("a plant").labelCode();
    EXPECT_FALSE(makeLabelQrCode(right.substr(1)).ok());
    EXPECT_FALSE(makeLabelQrCode(right + "A").ok());
    EXPECT_FALSE(makeLabelQrCode("0" + right.substr(1)).ok()); // base 32 has no zero
    EXPECT_FALSE(makeLabelQrCode(" " + right).ok());
}

} // namespace
} // namespace pipwright
