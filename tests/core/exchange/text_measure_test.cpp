#include "core/exchange/print/text_measure.h"
#include "tests/core/exchange/mark_text.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <random>

namespace pipwright {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

/// Width for so many characters at 10 points.
Micrometres roomFor(int characters) {
    return fromPoints(characters * 6.0);
}

std::vector<std::string> flow(const std::string& text, int characters,
                              LongWords longWords = LongWords::breakUp) {
    return flowText(text, 10.0, false, roomFor(characters), longWords, kMeasure);
}

TEST(FlowText, NothingHasNoLines) {
    EXPECT_THAT(flow("", 10), IsEmpty());
    EXPECT_THAT(flow(" \n ", 10), IsEmpty());
}

TEST(FlowText, BreaksAtBlanksAndAtLineBreaks) {
    EXPECT_THAT(flow("three drops, one hurt", 12), ElementsAre("three drops,", "one hurt"));
    EXPECT_THAT(flow("one\ntwo", 12), ElementsAre("one", "two"));
}

TEST(FlowText, BreaksUpWordsOnlyWhenAllowed) {
    EXPECT_THAT(flow("a abcdefgh", 5), ElementsAre("a", "abcde", "fgh"));
    EXPECT_THAT(flow("a abcdefgh", 5, LongWords::stayWhole), ElementsAre("a", "abcdefgh"));
}

TEST(FlowText, NeverCutsACharacterInTwo) {
    EXPECT_THAT(flow("äöüß", 3), ElementsAre("äöü", "ß"));
}

TEST(FlowText, GoesOnEvenWhereNotOneCharacterHasRoom) {
    EXPECT_THAT(flow("abc", 0), ElementsAre("a", "b", "c"));
}

TEST(FlowText, LosesNoCharacterAndKeepsToTheWidth) {
    constexpr unsigned kSeed = 20260822;
    std::mt19937 random(kSeed);
    for (int round = 0; round < 500; ++round) {
        std::string text;
        std::string withoutBlanks;
        for (int i = 0; i < 60; ++i) {
            const bool isBlank = random() % 5 == 0;
            const char letter = static_cast<char>('a' + random() % 26);
            text += isBlank ? ' ' : letter;
            withoutBlanks += isBlank ? std::string() : std::string(1, letter);
        }
        const int room = 1 + static_cast<int>(random() % 20);
        std::string all;
        for (const std::string& line : flow(text, room)) {
            EXPECT_LE(kMeasure.width(line, 10.0, false), roomFor(room)) << "seed " << kSeed;
            all += line;
        }
        std::erase(all, ' ');
        EXPECT_EQ(all, withoutBlanks) << "seed " << kSeed;
    }
}

} // namespace
} // namespace pipwright
