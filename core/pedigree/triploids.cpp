#include "core/pedigree/triploids.h"

#include "core/pedigree/ancestor_trace.h"

#include <algorithm>
#include <cstddef>
#include <string>

namespace pipwright {

namespace {

constexpr int kNone = -1;

const Triploid* find(const std::vector<Triploid>& sorted, int genotype) {
    const auto found =
        std::lower_bound(sorted.begin(), sorted.end(), genotype,
                         [](const Triploid& one, int number) { return one.genotype < number; });
    return found != sorted.end() && found->genotype == genotype ? &*found : nullptr;
}

} // namespace

Triploids::Triploids(const Pedigree& pedigree, std::span<const Triploid> triploids)
    : m_behind(static_cast<std::size_t>(pedigree.size()), kNone),
      m_triploids(triploids.begin(), triploids.end()) {
    std::sort(
        m_triploids.begin(), m_triploids.end(),
        [](const Triploid& one, const Triploid& other) { return one.genotype < other.genotype; });
    for (const Triploid& one : m_triploids) {
        m_behind.at(static_cast<std::size_t>(one.genotype)) = one.genotype;
    }
    for (int rank = 0; rank < pedigree.size() && !m_triploids.empty(); ++rank) {
        const int child = pedigree.atRank(rank);
        int& behind = m_behind[static_cast<std::size_t>(child)];
        const Parents both = pedigree.parentsOf(child);
        for (const std::optional<int> parent : {both.seed, both.pollen}) {
            if (behind == kNone && parent) {
                behind = m_behind[static_cast<std::size_t>(*parent)];
            }
        }
    }
}

bool Triploids::isTriploid(int genotype) const {
    return find(m_triploids, genotype) != nullptr;
}

std::optional<int> Triploids::triploidBehind(int genotype) const {
    const int behind = m_behind.at(static_cast<std::size_t>(genotype));
    return behind == kNone ? std::nullopt : std::optional{behind};
}

std::pair<double, double> Triploids::sharesOfParents(int genotype) const {
    constexpr double kTwoSets = 2.0 / 3;
    const Triploid* triploid = find(m_triploids, genotype);
    if (triploid == nullptr || triploid->from == Triploid::TwoSetsFrom::unknown) {
        return {0.5, 0.5};
    }
    return triploid->from == Triploid::TwoSetsFrom::seedParent ? std::pair{kTwoSets, 1 - kTwoSets}
                                                               : std::pair{1 - kTwoSets, kTwoSets};
}

bool Triploids::hasUnsureShares(int genotype) const {
    const Triploid* triploid = find(m_triploids, genotype);
    return triploid != nullptr && triploid->from == Triploid::TwoSetsFrom::unknown;
}

Contributions founderContributions(const Pedigree& pedigree, const Triploids& triploids,
                                   int genotype) {
    return contributionsTo(pedigree, genotype, [&triploids](int ancestor) {
        return triploids.sharesOfParents(ancestor);
    });
}

Result<double> inbreedingOfCross(const Pedigree& pedigree, const Triploids& triploids,
                                 const std::vector<double>& inbreedings, int seedParent,
                                 int pollenParent, const GenotypeName& nameOf) {
    for (const int parent : {seedParent, pollenParent}) {
        if (const auto behind = triploids.triploidBehind(parent)) {
            const std::string who =
                *behind == parent
                    ? nameOf(parent) + " is a triploid"
                    : nameOf(parent) + " descends from the triploid " + nameOf(*behind);
            return Problem{ProblemCode::badInput,
                           who + "; F is defined for diploids and is not computed here.",
                           "Judge this cross by its parents' pedigrees.", ""};
        }
    }
    return coancestry(pedigree, inbreedings, seedParent, pollenParent);
}

Pedigree withoutSeedlingsOf(const Pedigree& pedigree, const Triploids& triploids) {
    return pedigree.withoutChildrenOf([&](int parent) { return triploids.isTriploid(parent); });
}

} // namespace pipwright
