#include "core/history/record.h"
#include "core/orchard/dictionary.h"
#include "core/orchard/words.h"
#include "ui/book/book_words.h"
#include "ui/widgets/languages.h"

#include <QApplication>

#include <algorithm>
#include <gtest/gtest.h>
#include <string>

namespace pipwright::ui {
namespace {

bool isListed(std::string word) {
    std::replace(word.begin(), word.end(), '_', ' ');
    const auto all = shippedWords();
    return std::any_of(all.begin(), all.end(), [&word](const char* one) { return word == one; });
}

template <typename Word>
void expectListed() {
    for (const auto& [value, key] : Words<Word>::words) {
        EXPECT_TRUE(isListed(std::string(key))) << key;
    }
}

TEST(BookWords, EveryShippedNameIsListedForTranslation) {
    for (const Trait& trait : shippedTraits()) {
        EXPECT_TRUE(isListed(trait.name)) << trait.name;
    }
    for (const TraitState& state : shippedTraitStates()) {
        EXPECT_TRUE(isListed(state.name)) << state.name;
    }
    for (const Species& species : shippedSpecies()) {
        EXPECT_TRUE(isListed(species.name)) << species.name;
    }
}

TEST(BookWords, EveryKindAndFieldOfTheJournalIsListed) {
    for (const Kind kind : kAllKinds) {
        EXPECT_TRUE(isListed(std::string(nameOf(kind)))) << nameOf(kind);
        for (const FieldInfo& field : fieldsOf(kind)) {
            EXPECT_TRUE(isListed(std::string(field.name))) << nameOf(kind) << ": " << field.name;
        }
    }
    expectListed<Stage>();
    expectListed<PlantState>();
    expectListed<Origin>();
    expectListed<Ripeness>();
    expectListed<StoragePath>();
    expectListed<Verdict>();
    expectListed<Sight>();
}

TEST(BookWords, ShippedNamesAreTranslatedAndTheUsersOwnAreNot) {
    applyLanguage(*qApp, Language::german);
    Species apple = shippedSpecies().front();
    EXPECT_EQ(speciesName(apple), QStringLiteral("Apfel"));
    apple.name = "apple, the sweet ones";
    EXPECT_EQ(speciesName(apple), QStringLiteral("apple, the sweet ones"));
    Trait mine;
    mine.id = TraitId(Uuid::named("somebody's own"));
    mine.name = "scab";
    EXPECT_EQ(traitName(mine), QStringLiteral("scab"));
    EXPECT_EQ(journalWord("void_reason"), QStringLiteral("Grund der Ungültigkeit"));
    applyLanguage(*qApp, Language::english);
    EXPECT_EQ(journalWord("void_reason"), QStringLiteral("void reason"));
}

} // namespace
} // namespace pipwright::ui
