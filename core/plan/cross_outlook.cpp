#include "core/plan/cross_outlook.h"

#include "core/pedigree/relationship_factors.h"
#include "core/pedigree/triploids.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <map>
#include <utility>

namespace pipwright {

namespace {

constexpr std::int64_t kTriploid = 3;

int numberOf(Index genotype) {
    return static_cast<int>(genotype);
}

class OutlookMaker {
  public:
    OutlookMaker(const OrchardView& view, const Store& store, const CrossOfTwo& cross)
        : m_view(view), m_store(store), m_cross(cross) {
        if (m_cross.pollination == Pollination::self && !m_cross.pollenParent) {
            m_cross.pollenParent = m_cross.seedParent;
        }
    }

    Result<CrossOutlook> make() {
        auto pedigree = m_view.pedigree();
        if (!pedigree) {
            return pedigree.problem();
        }
        if (const auto outcome = readAlleles(); !outcome) {
            return outcome.problem();
        }
        sayCompatibility();
        if (const auto outcome = sayPossible(); !outcome) {
            return outcome.problem();
        }
        if (const auto outcome = findContradictions(); !outcome) {
            return outcome.problem();
        }
        const Triploids triploids{*pedigree, triploidsOfTheBook()};
        sayKinship(std::move(*pedigree), triploids);
        for (const auto parent : bothParents()) {
            if (parent && triploids.isTriploid(numberOf(*parent))) {
                m_outlook.triploids.push_back(*parent);
            }
            if (parent && isTooYoung(*parent)) {
                m_outlook.tooYoung.push_back(*parent);
            }
        }
        return std::move(m_outlook);
    }

  private:
    [[nodiscard]] bool isSelfing() const {
        return m_cross.seedParent && m_cross.seedParent == m_cross.pollenParent;
    }

    /// A parent that is both only once.
    [[nodiscard]] std::array<std::optional<Index>, 2> bothParents() const {
        return {m_cross.seedParent, isSelfing() ? std::nullopt : m_cross.pollenParent};
    }

    [[nodiscard]] std::string nameOf(int genotype) const {
        return m_view.genotypes()[static_cast<Index>(genotype)].called();
    }

    [[nodiscard]] const Species* speciesOf(Index genotype) const {
        const auto& species = m_view.genotypes()[genotype].species;
        return species ? m_view.species(*species) : nullptr;
    }

    [[nodiscard]] std::optional<std::int64_t> ploidyOf(Index genotype) const {
        const Species* species = speciesOf(genotype);
        const auto& own = m_view.genotypes()[genotype].ploidy;
        return own ? own : species != nullptr ? species->ploidy : std::nullopt;
    }

    [[nodiscard]] std::vector<Triploid> triploidsOfTheBook() const {
        std::vector<Triploid> all;
        for (Index genotype = 0; genotype < m_view.genotypes().size(); ++genotype) {
            if (ploidyOf(genotype) == kTriploid) {
                all.push_back({numberOf(genotype), Triploid::TwoSetsFrom::unknown});
            }
        }
        return all;
    }

    // --- self-incompatibility -------------------------------------------------------------------

    Result<std::string> allelesOf(Index genotype) const {
        const auto found = m_store.get(m_view.genotypes()[genotype].id);
        if (!found) {
            return found.problem();
        }
        return *found ? (*found)->selfAlleles : std::string();
    }

    Outcome readAlleles() {
        for (auto [parent, text] : {std::pair{m_cross.seedParent, &m_outlook.seedAlleles},
                                    std::pair{m_cross.pollenParent, &m_outlook.pollenAlleles}}) {
            if (parent) {
                auto alleles = allelesOf(*parent);
                if (!alleles) {
                    return alleles.problem();
                }
                *text = std::move(*alleles);
            }
        }
        return {};
    }

    void sayCompatibility() {
        const Species* species = m_cross.seedParent ? speciesOf(*m_cross.seedParent) : nullptr;
        if (species != nullptr && species->selfCompatible == YesNo::yes) {
            m_outlook.sWord = SWord::notSelfIncompatible;
            return;
        }
        m_outlook.incompatibilityUnsure =
            species == nullptr || species->selfCompatible == YesNo::unknown;
        if (isSelfing()) {
            m_outlook.sWord = SWord::predicted;
            m_outlook.compatibility = compatibilityOfSelfing();
        } else if (!m_cross.pollenParent) {
            m_outlook.sWord = SWord::pollenUnknown;
        } else if (m_outlook.seedAlleles.empty() || m_outlook.pollenAlleles.empty()) {
            m_outlook.sWord = SWord::allelesMissing;
        } else {
            const auto seed = SGenotype::read(m_outlook.seedAlleles);
            const auto pollen = SGenotype::read(m_outlook.pollenAlleles);
            m_outlook.sWord = seed && pollen ? SWord::predicted : SWord::unreadable;
            if (seed && pollen) {
                m_outlook.compatibility = compatibilityOf(*seed, *pollen);
            }
        }
    }

    /// What follows from the parents of the two, where their own alleles are not written down.
    Outcome sayPossible() {
        if (m_outlook.sWord != SWord::allelesMissing) {
            return {};
        }
        for (auto [parent, possible] :
             {std::pair{m_cross.seedParent, &m_outlook.seedPossible},
              std::pair{m_cross.pollenParent, &m_outlook.pollenPossible}}) {
            if (parent) {
                auto classes = possibleAlleles(m_view, m_store, *parent);
                if (!classes) {
                    return classes.problem();
                }
                *possible = std::move(*classes);
            }
        }
        if (!m_outlook.seedPossible.empty() && !m_outlook.pollenPossible.empty()) {
            m_outlook.possible = possiblePollen(m_outlook.seedPossible, m_outlook.pollenPossible);
        }
        return {};
    }

    /// Seedlings of the cross whose own alleles do not go with those of the parents.
    Outcome findContradictions() {
        const auto seed = SGenotype::read(m_outlook.seedAlleles);
        const auto pollen = SGenotype::read(m_outlook.pollenAlleles);
        if (!m_cross.made || m_outlook.sWord == SWord::notSelfIncompatible || (!seed && !pollen)) {
            return {};
        }
        const auto orNothing = [](const Result<SGenotype>& read) {
            return read ? std::optional{*read} : std::nullopt;
        };
        const auto oneFamily =
            Pedigree::of({{}, {}, {0, isSelfing() ? 0 : 1}}, [](int) { return std::string(); });
        for (Index child = 0; child < m_view.genotypes().size(); ++child) {
            const GenotypeEntry& entry = m_view.genotypes()[child];
            if (entry.erased || entry.cross != m_cross.made) {
                continue;
            }
            const auto text = allelesOf(child);
            if (!text) {
                return text.problem();
            }
            const auto own = SGenotype::read(*text);
            const std::vector<std::optional<SGenotype>> genotypes{
                orNothing(seed), orNothing(pollen), orNothing(own)};
            if (own && !sInconsistencies(*oneFamily, genotypes).empty()) {
                m_outlook.contradicted.push_back(child);
            }
        }
        return {};
    }

    // --- kinship --------------------------------------------------------------------------------

    void sayKinship(Pedigree pedigree, const Triploids& triploids) {
        std::map<int, double> shares;
        for (const auto& parent : {m_cross.seedParent, m_cross.pollenParent}) {
            if (!parent) {
                m_outlook.unknownShare += 0.5;
                continue;
            }
            const auto given = founderContributions(pedigree, triploids, numberOf(*parent));
            m_outlook.unknownShare += given.unknown / 2;
            for (const FounderShare& part : given.founders) {
                shares[part.founder] += part.share / 2;
            }
            const auto behind = triploids.triploidBehind(numberOf(*parent));
            m_outlook.unsureShares |= behind && triploids.hasUnsureShares(*behind);
        }
        for (const auto& [founder, share] : shares) {
            m_outlook.founders.push_back({static_cast<Index>(founder), share});
        }
        std::stable_sort(m_outlook.founders.begin(), m_outlook.founders.end(),
                         [](const FounderPart& one, const FounderPart& other) {
                             return one.share > other.share;
                         });
        if (!m_cross.seedParent) {
            return;
        }
        const RelationshipFactors factors{std::move(pedigree)};
        if (m_cross.pollenParent) {
            const auto inbreeding = inbreedingOfCross(
                factors.pedigree(), triploids, factors.inbreedings(), numberOf(*m_cross.seedParent),
                numberOf(*m_cross.pollenParent), [this](int genotype) { return nameOf(genotype); });
            if (inbreeding) {
                m_outlook.inbreeding = *inbreeding;
            } else {
                m_outlook.noF = inbreeding.problem();
            }
        } else if (m_cross.pollination == Pollination::open) {
            m_outlook.anyFather = anyFather(factors, triploids);
        }
    }

    [[nodiscard]] AnyFather anyFather(const RelationshipFactors& factors,
                                      const Triploids& triploids) const {
        const Index mother = *m_cross.seedParent;
        const std::vector<double> relationships = factors.column(numberOf(mother));
        AnyFather any;
        for (Index father = 0; father < m_view.genotypes().size(); ++father) {
            if (father == mother || !mayPollinate(mother, father) ||
                triploids.isTriploid(numberOf(father))) {
                continue;
            }
            const double inbreeding = relationships[father] / 2;
            ++any.fathers;
            any.meanInbreeding += inbreeding;
            if (inbreeding > any.mostInbreeding) {
                any.mostInbreeding = inbreeding;
                any.nearest = father;
            }
        }
        any.meanInbreeding /= std::max(any.fathers, 1);
        return any;
    }

    [[nodiscard]] bool mayPollinate(Index mother, Index father) const {
        const GenotypeEntry& entry = m_view.genotypes()[father];
        const auto& plants = m_view.plantsOf(father);
        return !entry.erased && entry.species == m_view.genotypes()[mother].species &&
               std::any_of(plants.begin(), plants.end(), [this](Index plant) {
                   return m_view.plants()[plant].state == PlantState::growing;
               });
    }

    /// A seed of the same bloom, or of a later one, bears no flowers for this cross.
    [[nodiscard]] bool isTooYoung(Index parent) const {
        const auto& from = m_view.genotypes()[parent].cross;
        const Cross* own = from ? m_view.cross(*from) : nullptr;
        return own != nullptr && own->cropYear && m_cross.year &&
               own->cropYear->year >= m_cross.year->year;
    }

    const OrchardView& m_view;
    const Store& m_store;
    CrossOfTwo m_cross;
    CrossOutlook m_outlook;
};

} // namespace

Result<CrossOutlook> outlookOf(const OrchardView& view, const Store& store,
                               const CrossOfTwo& cross) {
    return OutlookMaker{view, store, cross}.make();
}

} // namespace pipwright
