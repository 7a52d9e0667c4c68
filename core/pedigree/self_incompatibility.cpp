#include "core/pedigree/self_incompatibility.h"

#include "core/units/digits.h"
#include "core/units/text.h"

#include <algorithm>
#include <utility>

namespace pipwright {

namespace {

bool isLetter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}

bool isS(char c) {
    return c == 's' || c == 'S';
}

/// "2", "16b", "f", "4'": what may follow the S.
bool isAlleleName(std::string_view name) {
    constexpr std::size_t kLongest = 6;
    constexpr std::size_t kLongestWithoutNumber = 2;
    return !name.empty() && name.size() <= kLongest &&
           (isDigit(name.front()) || name.size() <= kLongestWithoutNumber) &&
           std::all_of(name.begin(), name.end(),
                       [](char c) { return isLetter(c) || isDigit(c) || c == '\''; });
}

/// Cuts "S2S5 / 28" at every separator and before every S that a name can follow.
std::vector<std::string_view> words(std::string_view text) {
    std::vector<std::string_view> found;
    std::size_t first = 0;
    const auto end = [&](std::size_t at) {
        if (at > first) {
            found.push_back(text.substr(first, at - first));
        }
    };
    for (std::size_t at = 0; at < text.size(); ++at) {
        const bool separates = std::string_view(" ,;/|\t").find(text[at]) != std::string_view::npos;
        if (separates || isS(text[at])) {
            end(at);
            first = separates ? at + 1 : at;
        }
    }
    end(text.size());
    return found;
}

std::optional<SAllele> alleleFrom(std::string_view word) {
    if (isS(word.front())) {
        word.remove_prefix(1);
    }
    if (word == "?") {
        return SAllele{};
    }
    if (!isAlleleName(word)) {
        return std::nullopt;
    }
    std::string name(word);
    for (char& c : name) {
        c = c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    }
    return SAllele{std::move(name)};
}

bool standsBefore(const SAllele& one, const SAllele& other) {
    if (one.isKnown() != other.isKnown()) {
        return one.isKnown();
    }
    return naturalOrder(one.name, other.name) < 0;
}

/// Whether two alleles are the same, as far as is known.
enum class Same { no, perhaps, yes };

Same sameAs(const SAllele& one, const SAllele& other) {
    if (!one.isKnown() || !other.isKnown()) {
        return Same::perhaps;
    }
    return one == other ? Same::yes : Same::no;
}

Same isAmong(const SAllele& one, const std::vector<SAllele>& alleles) {
    Same found = Same::no;
    for (const SAllele& other : alleles) {
        found = std::max(found, sameAs(one, other));
    }
    return found;
}

SCompatibility::Kind kindOf(double low, double high) {
    if (low != high) {
        return SCompatibility::Kind::notKnown;
    }
    return high == 0  ? SCompatibility::Kind::incompatible
           : low == 1 ? SCompatibility::Kind::compatible
                      : SCompatibility::Kind::semiCompatible;
}

/// Adds a class, or its share to that of the same genotype.
void add(std::vector<SClass>& classes, SGenotype genotype, double share) {
    const auto found = std::find_if(classes.begin(), classes.end(),
                                    [&](const SClass& one) { return one.genotype == genotype; });
    if (found == classes.end()) {
        classes.push_back({std::move(genotype), share});
    } else {
        found->share += share;
    }
}

/// The ways a child's alleles can be parted into those of the seed and of the pollen parent.
class Inheritance {
  public:
    Inheritance(const std::vector<SAllele>& child, const SGenotype* seed, const SGenotype* pollen)
        : m_child(child), m_seed(seed), m_pollen(pollen) {
        // Each number is a choice of the alleles that came from the seed parent.
        for (unsigned choice = 1; choice + 1 < (1U << child.size()); ++choice) {
            const auto fromSeed = chosen(choice, true);
            const auto fromPollen = chosen(choice, false);
            const bool seedFits = canGive(seed, fromSeed);
            const bool pollenFits = canGive(pollen, fromPollen);
            m_seedFits |= seedFits;
            m_pollenFits |= pollenFits;
            if (seedFits && pollenFits) {
                m_bothFit = true;
                m_pollenGrew |= grew(fromPollen);
            }
        }
    }

    [[nodiscard]] std::optional<SInconsistency::Kind> fault() const {
        using Kind = SInconsistency::Kind;
        if (m_pollenGrew) {
            return std::nullopt;
        }
        return m_bothFit       ? Kind::neededRejectedPollen
               : !m_seedFits   ? Kind::notFromSeedParent
               : !m_pollenFits ? Kind::notFromPollenParent
                               : Kind::notFromBoth;
    }

  private:
    [[nodiscard]] std::vector<SAllele> chosen(unsigned choice, bool fromSeed) const {
        std::vector<SAllele> some;
        for (std::size_t at = 0; at < m_child.size(); ++at) {
            if (((choice >> at & 1U) != 0) == fromSeed) {
                some.push_back(m_child[at]);
            }
        }
        return some;
    }

    static bool canGive(const SGenotype* parent, const std::vector<SAllele>& some) {
        return parent == nullptr || std::all_of(some.begin(), some.end(), [&](const SAllele& one) {
                   return isAmong(one, parent->alleles()) != Same::no;
               });
    }

    /// A grain with two alleles grows when either would: the style must not know both.
    [[nodiscard]] bool grew(const std::vector<SAllele>& fromPollen) const {
        return m_seed == nullptr ||
               std::any_of(fromPollen.begin(), fromPollen.end(), [&](const SAllele& one) {
                   return isAmong(one, m_seed->alleles()) != Same::yes;
               });
    }

    const std::vector<SAllele>& m_child;
    const SGenotype* m_seed;
    const SGenotype* m_pollen;
    bool m_seedFits = false;
    bool m_pollenFits = false;
    bool m_bothFit = false;
    bool m_pollenGrew = false;
};

} // namespace

SGenotype::SGenotype(std::vector<SAllele> alleles) : m_alleles(std::move(alleles)) {
    std::sort(m_alleles.begin(), m_alleles.end(), standsBefore);
}

Result<SGenotype> SGenotype::read(std::string_view text) {
    constexpr std::size_t kMost = 3;
    const std::string remedy = "Write two alleles, or the three of a triploid, as S2 S5.";
    std::vector<SAllele> alleles;
    for (const std::string_view word : words(trimmed(text))) {
        const auto allele = alleleFrom(word);
        if (!allele) {
            return Problem{ProblemCode::badInput, "\"" + std::string(word) + "\" is no S allele.",
                           remedy, ""};
        }
        alleles.push_back(*allele);
    }
    if (alleles.empty() || alleles.size() > kMost) {
        return Problem{ProblemCode::badInput,
                       alleles.empty() ? "No S allele is given."
                                       : "More S alleles are given than a triploid has.",
                       remedy, ""};
    }
    if (alleles.size() == 1) {
        alleles.emplace_back();
    }
    return SGenotype{std::move(alleles)};
}

bool SGenotype::isFullyKnown() const {
    return std::all_of(m_alleles.begin(), m_alleles.end(),
                       [](const SAllele& one) { return one.isKnown(); });
}

std::string SGenotype::text() const {
    std::string text;
    for (const SAllele& allele : m_alleles) {
        text += (text.empty() ? "S" : " S") + (allele.isKnown() ? allele.name : "?");
    }
    return text;
}

SCompatibility compatibilityOf(const SGenotype& seedParent, const SGenotype& pollenParent) {
    SCompatibility result;
    result.triploidSeedParent = seedParent.isTriploid();
    if (pollenParent.isTriploid()) {
        result.kind = SCompatibility::Kind::triploidPollen;
        return result;
    }
    double low = 0;
    double high = 0;
    std::vector<SAllele> accepted;
    for (const SAllele& allele : pollenParent.alleles()) {
        const Same rejected = isAmong(allele, seedParent.alleles());
        low += rejected == Same::no ? 0.5 : 0;
        high += rejected == Same::yes ? 0 : 0.5;
        if (rejected == Same::no) {
            accepted.push_back(allele);
        }
    }
    result.acceptedLow = low;
    result.acceptedHigh = high;
    result.kind = kindOf(low, high);
    if (result.triploidSeedParent || !seedParent.isFullyKnown() || !pollenParent.isFullyKnown()) {
        return result;
    }
    for (const SAllele& fromSeed : seedParent.alleles()) {
        for (const SAllele& fromPollen : accepted) {
            add(result.seedlings, SGenotype{{fromSeed, fromPollen}},
                0.5 / static_cast<double>(accepted.size()));
        }
    }
    return result;
}

SCompatibility compatibilityOfSelfing() {
    SCompatibility result;
    result.kind = SCompatibility::Kind::incompatible;
    result.acceptedHigh = 0;
    return result;
}

std::vector<SInconsistency> sInconsistencies(const Pedigree& pedigree,
                                             std::span<const std::optional<SGenotype>> genotypes) {
    const auto of = [&](std::optional<int> genotype) -> const SGenotype* {
        const auto* found = genotype ? &genotypes[static_cast<std::size_t>(*genotype)] : nullptr;
        return found != nullptr && *found ? &**found : nullptr;
    };
    std::vector<SInconsistency> faults;
    for (int child = 0; child < pedigree.size(); ++child) {
        const SGenotype* own = of(child);
        const Parents both = pedigree.parentsOf(child);
        if (own == nullptr || (of(both.seed) == nullptr && of(both.pollen) == nullptr)) {
            continue;
        }
        const Inheritance inheritance{own->alleles(), of(both.seed), of(both.pollen)};
        if (const auto fault = inheritance.fault()) {
            faults.push_back({child, *fault});
        }
    }
    return faults;
}

} // namespace pipwright
