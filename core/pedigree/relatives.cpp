#include "core/pedigree/relatives.h"

#include <algorithm>

namespace pipwright {

namespace {

bool isParent(const Parents& both, std::optional<int> genotype) {
    return genotype && (both.seed == genotype || both.pollen == genotype);
}

bool sameCross(const Parents& one, const Parents& other) {
    return one.seed && one.pollen &&
           (one == other || (one.seed == other.pollen && one.pollen == other.seed));
}

} // namespace

Ancestry::Ancestry(const Pedigree& pedigree, int genotype, int depth) {
    constexpr int kDeepest = 12; // 4,096 places in the last generation
    m_generations.push_back({genotype});
    for (int number = 1; number <= std::min(depth, kDeepest); ++number) {
        std::vector<std::optional<int>> places;
        places.reserve(m_generations.back().size() * 2);
        for (const std::optional<int> child : m_generations.back()) {
            const Parents both = child ? pedigree.parentsOf(*child) : Parents{};
            places.push_back(both.seed);
            places.push_back(both.pollen);
        }
        m_generations.push_back(std::move(places));
    }
}

Relatives relativesOf(const Pedigree& pedigree, int genotype) {
    Relatives relatives;
    const Parents own = pedigree.parentsOf(genotype);
    for (int other = 0; other < pedigree.size(); ++other) {
        const Parents both = pedigree.parentsOf(other);
        if (isParent(both, genotype)) {
            relatives.offspring.push_back(other);
        }
        if (other == genotype) {
            continue;
        }
        if (sameCross(own, both)) {
            relatives.fullSibs.push_back(other);
        } else if (isParent(both, own.seed) || isParent(both, own.pollen)) {
            relatives.halfSibs.push_back(other);
        }
    }
    return relatives;
}

} // namespace pipwright
