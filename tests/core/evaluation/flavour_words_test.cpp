#include "core/evaluation/merit/flavour_words.h"
#include "core/units/text.h"
#include "tests/support/tasted_orchard.h"

#include <gtest/gtest.h>
#include <set>

namespace pipwright {
namespace {

std::string keysIn(std::string_view text) {
    std::string keys;
    for (const std::size_t word : flavoursIn(text)) {
        keys += (keys.empty() ? "" : " ") + std::string(flavourGlossary()[word].key);
    }
    return keys;
}

TEST(FlavourWordsTest, TheGlossaryIsWhole) {
    const auto glossary = flavourGlossary();
    EXPECT_GE(glossary.size(), 30U);
    EXPECT_LE(glossary.size(), 50U);
    std::set<std::string_view> keys;
    std::set<std::string_view> anchors;
    for (std::size_t i = 0; i < glossary.size(); ++i) {
        const FlavourWord& word = glossary[i];
        EXPECT_TRUE(keys.insert(word.key).second) << word.key;
        EXPECT_TRUE(anchors.insert(word.anchor).second) << word.anchor;
        EXPECT_FALSE(word.meaning.empty());
        EXPECT_EQ(flavourCalled(word.key), i);
        EXPECT_EQ(foldedForSearch(word.stems), word.stems) << word.key;
    }
    EXPECT_FALSE(flavourCalled("purple").has_value());
}

TEST(FlavourWordsTest, FindsWordsWithTheirEndings) {
    EXPECT_EQ(keysIn("Sweet, crisp; juicier than last year"), "sweet crisp juicy");
    EXPECT_EQ(keysIn("SÜSS und saftig, knackiger Biss"), "sweet crisp juicy");
    EXPECT_EQ(keysIn("süßlich, sehr mehlig"), "sweet mealy");
    EXPECT_EQ(keysIn("sweetness of honey, a hint of anise"), "sweet honey anise");
    EXPECT_EQ(keysIn("säuerlich mit Zitrone"), "sour citrus");
    EXPECT_EQ(keysIn(""), "");
    EXPECT_EQ(keysIn("picked after rain"), "");
    // A word that only begins alike is another word.
    EXPECT_EQ(keysIn("pearl, winery, nutmeg, sweetheart, roster"), "");
}

TEST(FlavourWordsTest, WhatIsDeniedDoesNotCount) {
    EXPECT_EQ(keysIn("not sweet"), "");
    EXPECT_EQ(keysIn("not very sweet but crisp"), "crisp");
    EXPECT_EQ(keysIn("nicht süß, saftig"), "juicy");
    EXPECT_EQ(keysIn("ohne Aroma. Fest."), "firm");
    EXPECT_EQ(keysIn("no aroma, juicy and sour"), "sour juicy");
}

TEST(FlavourWordsTest, CountsEachTextOnce) {
    const auto counts =
        flavourCounts({{"sweet, sweet and sour", 2}, {"sour", 3}, {"nothing of note", 5}});
    ASSERT_EQ(counts.size(), 2U);
    EXPECT_EQ(counts[0], (FlavourCount{*flavourCalled("sour"), 5}));
    EXPECT_EQ(counts[1], (FlavourCount{*flavourCalled("sweet"), 2}));
}

LotWords wordsOn(std::uint8_t lot, std::uint8_t taster, std::string_view text) {
    LotWords words;
    words.lot.uuid.bytes[0] = lot;
    words.taster.uuid.bytes[0] = taster;
    words.words = flavoursIn(text);
    return words;
}

TEST(FlavourWordsTest, HoldsTastersAgainstEachOther) {
    const auto agreement =
        flavourAgreement({wordsOn(1, 1, "sweet"), wordsOn(1, 2, "sweet, mealy"),
                          wordsOn(2, 1, "sweet"), wordsOn(2, 2, "sour"), wordsOn(3, 1, "mealy"),
                          wordsOn(3, 2, "mealy"), wordsOn(4, 1, "crisp")});
    ASSERT_EQ(agreement.size(), 3U); // crisp was said of a lot only one wrote about
    for (const FlavourAgreement& one : agreement) {
        EXPECT_EQ(one.both + one.oneOnly + one.neither, 3);
        const std::string_view key = flavourGlossary()[one.word].key;
        EXPECT_EQ(one.both, key == "sour" ? 0 : 1) << key;
        EXPECT_EQ(one.oneOnly, 1) << key;
        EXPECT_NEAR(one.positive, key == "sour" ? 0 : 2.0 / 3, 1e-12) << key;
    }
}

TEST(FlavourWordsTest, ReadsTheBook) {
    test::TastedOrchard orchard;
    const auto row = orchard.row(1);
    const auto tree = orchard.seedling(row, 1, "AT17-001");
    orchard.bite(tree, 7, "2025-09-12", Origin::pickedRipe, "sweet and juicy");
    orchard.bite(tree, 7, "2025-09-13");
    const auto said = lotWords(orchard.store());
    ASSERT_TRUE(said.ok());
    ASSERT_EQ(said->size(), 1U);
    EXPECT_EQ(said->front().words.size(), 2U);
    EXPECT_EQ(said->front().taster, orchard.taster.id);
    EXPECT_TRUE(flavourAgreement(*said).empty()); // nobody else wrote
}

} // namespace
} // namespace pipwright
