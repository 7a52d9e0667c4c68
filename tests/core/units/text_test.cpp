#include "core/units/text.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <random>
#include <string>
#include <vector>

namespace pipwright {
namespace {

std::vector<std::string> sorted(std::vector<std::string> texts) {
    std::sort(texts.begin(), texts.end(), NaturalLess{});
    return texts;
}

/// A text of pieces that are awkward to sort or to decode.
std::string randomText(std::mt19937_64& random) {
    static const std::vector<std::string> pieces = {
        "a",         "A",       "é",    "É",    "ß",
        "ss",        "Æ",       "0",    "00",   "1",
        "9",         "10",      "007",  " ",    "  ",
        "-",         "/",       "z",    "Ж",    "ж",
        "漢",        "🍎",       "\xFF", "\xC3", "\xED\xA0\x80",
        "e\xCC\x81", "\xC2\xA0"};
    std::string text;
    for (std::uint64_t count = random() % 6; count > 0; --count) {
        text += pieces[random() % pieces.size()];
    }
    return text;
}

TEST(Text, SortsNumbersByTheirValue) {
    EXPECT_EQ(sorted({"row 10", "row 2", "Row 1"}),
              (std::vector<std::string>{"Row 1", "row 2", "row 10"}));
    EXPECT_EQ(sorted({"21-100", "21-014", "9-3", "21-14b"}),
              (std::vector<std::string>{"9-3", "21-014", "21-14b", "21-100"}));
    EXPECT_TRUE(naturalOrder("99999999999999999999998", "99999999999999999999999") < 0);
    EXPECT_TRUE(naturalOrder("a" + std::string(254, '9'), "a1" + std::string(254, '0')) < 0);
    EXPECT_TRUE(naturalOrder("a" + std::string(255, '9'), "a1" + std::string(255, '0')) < 0);
    EXPECT_TRUE(naturalOrder("a" + std::string(600, '8'), "a" + std::string(600, '9')) < 0);
}

TEST(Text, SortsAccentedLettersByTheirBase) {
    EXPECT_EQ(
        sorted({"zeta", "Éclair", "Eclipse", "Ebony", "Ångström", "azure"}),
        (std::vector<std::string>{"Ångström", "azure", "Ebony", "Éclair", "Eclipse", "zeta"}));
}

TEST(Text, OnlyIdenticalTextsAreEqual) {
    EXPECT_TRUE(naturalOrder("row 2", "row 2") == 0);
    EXPECT_TRUE(naturalOrder("row 2", "row 02") != 0);
    EXPECT_TRUE(naturalOrder("Éclair", "Eclair") != 0);
    EXPECT_TRUE(naturalOrder("a b", "a  b") != 0);
}

TEST(Text, NaturalOrderIsATotalOrder) {
    const std::uint64_t seed = 20260822;
    SCOPED_TRACE("seed " + std::to_string(seed));
    std::mt19937_64 random{seed};
    for (int round = 0; round < 20000; ++round) {
        const std::string a = randomText(random);
        const std::string b = randomText(random);
        const std::string c = randomText(random);
        EXPECT_EQ(naturalOrder(a, b) == 0, a == b) << a << " | " << b;
        EXPECT_EQ(naturalOrder(a, b) < 0, naturalOrder(b, a) > 0) << a << " | " << b;
        if (naturalOrder(a, b) <= 0 && naturalOrder(b, c) <= 0) {
            EXPECT_TRUE(naturalOrder(a, c) <= 0) << a << " | " << b << " | " << c;
        }
        if (naturalSortKey(a) < naturalSortKey(b)) {
            EXPECT_TRUE(naturalOrder(a, b) < 0) << a << " | " << b;
        }
    }
}

TEST(Text, FoldsForSearching) {
    EXPECT_EQ(foldedForSearch("  Éclair\tD’Été "), "eclair d'ete");
    EXPECT_EQ(foldedForSearch("GROẞ Straße"), "gross strasse");
    EXPECT_EQ(foldedForSearch("Łódź Ørsted Þór Œuvre Æble"), "lodz orsted thor oeuvre aeble");
    EXPECT_EQ(foldedForSearch("Gala × Elstar"), "gala x elstar");
    EXPECT_EQ(foldedForSearch("e\xCC\x81t\xC3\xA9"), "ete") << "a combining accent";
    EXPECT_EQ(foldedForSearch("Ёлка ЖУК"), "ёлка жук");
    EXPECT_EQ(foldedForSearch("ΑΩ"), "αω");
    EXPECT_EQ(foldedForSearch("Nguyễn Ḿǎ"), "nguyen ma");
    EXPECT_EQ(foldedForSearch("4–5 kg÷"), "4-5 kg÷");
    EXPECT_EQ(foldedForSearch("漢字🍎"), "漢字🍎");
    EXPECT_EQ(foldedForSearch("a\xFFz"), "a\xFFz") << "a bad byte stays";
}

TEST(Text, FoldingTwiceChangesNothing) {
    const std::uint64_t seed = 7;
    SCOPED_TRACE("seed " + std::to_string(seed));
    std::mt19937_64 random{seed};
    for (int round = 0; round < 20000; ++round) {
        const std::string once = foldedForSearch(randomText(random));
        EXPECT_EQ(foldedForSearch(once), once);
    }
}

TEST(Text, TrimsAllBlanks) {
    EXPECT_EQ(trimmed(" \t a b \r\n"), "a b");
    EXPECT_EQ(trimmed("\xC2\xA0\xE2\x80\xAF"
                      "7\xC2\xA0"),
              "7");
    EXPECT_EQ(trimmed(" \t"), "");
    EXPECT_EQ(trimmed(""), "");
    EXPECT_EQ(trimmed("é"), "é");
    EXPECT_EQ(trimmed("\xA0"), "\xA0") << "a lone byte is no blank";
}

TEST(Text, SplitsAndKeepsEmptyParts) {
    using Parts = std::vector<std::string_view>;
    EXPECT_EQ(split("a,,b", ','), (Parts{"a", "", "b"}));
    EXPECT_EQ(split("", ','), (Parts{""}));
    EXPECT_EQ(split(",", ','), (Parts{"", ""}));
    EXPECT_EQ(split("abc", ','), (Parts{"abc"}));
}

TEST(Text, FindsTheFirstBadByte) {
    EXPECT_EQ(firstBadUtf8("Éclair 漢 🍎"), std::nullopt);
    EXPECT_EQ(firstBadUtf8(""), std::nullopt);
    EXPECT_EQ(firstBadUtf8("caf\xE9"), 3U) << "Latin-1";
    EXPECT_EQ(firstBadUtf8("ab\x80"), 2U) << "a continuation alone";
    EXPECT_EQ(firstBadUtf8("\xC3"), 0U) << "cut off";
    EXPECT_EQ(firstBadUtf8("a\xC0\x80"), 1U) << "overlong, two bytes";
    EXPECT_EQ(firstBadUtf8("a\xE0\x80\x80"), 1U) << "overlong, three bytes";
    EXPECT_EQ(firstBadUtf8("a\xF0\x80\x80\x80"), 1U) << "overlong, four bytes";
    EXPECT_EQ(firstBadUtf8("\xED\xA0\x80"), 0U) << "a surrogate";
    EXPECT_EQ(firstBadUtf8("\xF4\x90\x80\x80"), 0U) << "above U+10FFFF";
    EXPECT_EQ(firstBadUtf8("\xF4\x8F\xBF\xBF"), std::nullopt) << "U+10FFFF";
}

TEST(Text, CountsCharacters) {
    EXPECT_EQ(characterCount("Éa🍎"), 3U);
    EXPECT_EQ(characterCount("\xFF\xFE"), 2U);
    EXPECT_EQ(characterCount(""), 0U);
}

} // namespace
} // namespace pipwright
