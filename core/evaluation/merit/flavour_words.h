#pragma once

#include "core/evaluation/comparison.h"
#include "core/history/store.h"

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

/// Words tasters use for fruit, with an anchor each so that two people mean the same by one of
/// them; found in free text, counted, and held against each other.
namespace pipwright {

enum class FlavourGroup { taste, aroma, texture, skin, fault };

/// A word of the glossary. `anchor` is something anybody can buy or picture.
struct FlavourWord {
    std::string_view key;
    FlavourGroup group = FlavourGroup::taste;
    std::string_view english;
    std::string_view german;
    std::string_view meaning;
    std::string_view anchor;
    /// Beginnings of words that stand for it, folded (foldedForSearch), blanks between them.
    std::string_view stems;
};

/// All of them, in the order of their groups.
std::span<const FlavourWord> flavourGlossary();
std::optional<std::size_t> flavourCalled(std::string_view key);

/// The words of the glossary (their places, rising, each once) that a text uses. A word counts when
/// it is a stem, or a stem with an English or German ending (-s, -y, -ness, -ish, -er, -est, -ed,
/// -ing, -ly; -e, -en, -er, -es, -em, -ig, -lich, -keit and what they join to). Denied words do
/// not count: after no, not, without, nicht, kein, ohne, with at most one word between ("not very
/// sweet"), up to the next comma, stop or "but". Compounds are not taken apart.
std::vector<std::size_t> flavoursIn(std::string_view text);

/// How often a word was used.
struct FlavourCount {
    std::size_t word = 0; ///< place in the glossary
    int times = 0;

    bool operator==(const FlavourCount&) const = default;
};
/// Of one genotype, as Compare shows it; the most used first.
std::vector<FlavourCount> flavourCounts(const std::vector<SaidWords>& said);

/// What one taster said of one lot.
struct LotWords {
    LotId lot;
    PersonId taster;
    std::vector<std::size_t> words;
};
/// From every score with words that is not void, the words found in it; sittings whose key is
/// sealed tell nothing yet.
Result<std::vector<LotWords>> lotWords(const Store& store);

/// Whether two tasters who both wrote of a lot used the same word for it.
struct FlavourAgreement {
    std::size_t word = 0;
    int both = 0;    ///< pairs of tasters and a lot where both used it
    int oneOnly = 0; ///< where one did
    int neither = 0;
    /// Chance that the other used it too when one did: 2a / (2a + b + c) (Cicchetti & Feinstein
    /// 1990, J. Clin. Epidemiol. 43:551-558).
    double positive = 0;
    /// Agreement beyond chance, 1 full, 0 none (Cohen 1960, Educ. Psychol. Meas. 20:37-46, with
    /// either of a pair as the first); nothing when the word is used always or never.
    std::optional<double> kappa;
};
/// Of each word that was used of a lot which two tasters wrote about; most used first.
std::vector<FlavourAgreement> flavourAgreement(const std::vector<LotWords>& said);

} // namespace pipwright
