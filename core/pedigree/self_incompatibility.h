#pragma once

#include "core/pedigree/pedigree.h"
#include "core/units/result.h"

#include <compare>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

/// Gametophytic self-incompatibility, as of apple, pear, cherry and most plums: a pollen grain
/// does not grow in a style that holds its own S allele (Matsumoto 2014, International Journal of
/// Agronomy 2014:138271, review). No table of cultivars comes with the program: the alleles are
/// what the breeder wrote down. Sports of a cultivar have its alleles.
namespace pipwright {

/// An S allele by its name without the S ("5", "28", "16b"); empty when it is not known.
struct SAllele {
    std::string name;

    [[nodiscard]] bool isKnown() const { return !name.empty(); }
    auto operator<=>(const SAllele&) const = default;
};

struct SCompatibility;

/// The S alleles of a genotype: two, or the three of a triploid, in the order of their numbers.
class SGenotype {
  public:
    /// Reads "S2 S5", "S2S5", "2/5", "S5, S28", "S2 ?"; a single allele leaves the other unknown.
    /// Problem: none, more than three, or something that is no allele.
    static Result<SGenotype> read(std::string_view text);

    [[nodiscard]] const std::vector<SAllele>& alleles() const { return m_alleles; }
    [[nodiscard]] bool isTriploid() const { return m_alleles.size() > 2; }
    [[nodiscard]] bool isFullyKnown() const;
    /// "S2 S5", an unknown allele as "S?".
    [[nodiscard]] std::string text() const;

    auto operator<=>(const SGenotype&) const = default;

  private:
    explicit SGenotype(std::vector<SAllele> alleles);
    friend SCompatibility compatibilityOf(const SGenotype& seedParent,
                                          const SGenotype& pollenParent);

    std::vector<SAllele> m_alleles;
};

/// What part of the seedlings has an S genotype.
struct SClass {
    SGenotype genotype;
    double share; ///< 0 to 1
};

/// What becomes of pollen on a style.
struct SCompatibility {
    enum class Kind {
        incompatible,   ///< all pollen is rejected; few seeds, if any
        semiCompatible, ///< half of it is rejected
        compatible,
        notKnown,      ///< an allele that is not known would decide
        triploidPollen ///< poor pollen of odd chromosome numbers; nothing is predicted
    };

    Kind kind = Kind::notKnown;
    double acceptedLow = 0;  ///< part of the pollen that is accepted, at least ...
    double acceptedHigh = 1; ///< ... and at most; equal when all alleles that count are known
    /// The seed parent is a triploid: few good seeds, most seedlings with odd chromosome numbers.
    bool triploidSeedParent = false;
    /// Empty when it cannot be predicted: incompatible, a triploid parent, an unknown allele.
    std::vector<SClass> seedlings;
};

/// A cross of two genotypes of a self-incompatible species. Each allele of the pollen parent is in
/// half its pollen, and is rejected when the seed parent has it; every allele of the seed parent
/// meets every accepted one equally often.
SCompatibility compatibilityOf(const SGenotype& seedParent, const SGenotype& pollenParent);

/// Its own pollen on a genotype, whatever its alleles: incompatible.
SCompatibility compatibilityOfSelfing();

/// Something wrong between a genotype's S alleles and those of its parents in the pedigree.
struct SInconsistency {
    enum class Kind {
        notFromSeedParent,   ///< no allele in common with the seed parent
        notFromPollenParent, ///< none with the pollen parent
        notFromBoth,         ///< one with each, but not at once
        neededRejectedPollen ///< the allele from the pollen parent is one the seed parent rejects
    };

    int genotype;
    Kind kind;
};

/// Every genotype whose S alleles its recorded parents cannot have given: a parent, or an allele,
/// is wrong, or the species is not self-incompatible. What is not known contradicts nothing. A
/// triploid has two alleles of one parent.
/// `genotypes` holds one entry a member of the pedigree. Agreement does not prove a parentage.
std::vector<SInconsistency> sInconsistencies(const Pedigree& pedigree,
                                             std::span<const std::optional<SGenotype>> genotypes);

} // namespace pipwright
