#include "core/pedigree/pollen_pools.h"

#include <cmath>
#include <cstddef>
#include <string>
#include <utility>

namespace pipwright {

namespace {

Problem refused(std::string what, std::string remedy) {
    return {ProblemCode::badInput, std::move(what), std::move(remedy), ""};
}

} // namespace

Result<Pedigree> withPollenPools(const Pedigree& pedigree, std::span<const PollenPool> pools,
                                 const GenotypeName& nameOf) {
    ParentColumn seed(pedigree.seedParents());
    ParentColumn pollen(pedigree.pollenParents());
    const int firstPool = pedigree.firstPool();
    std::vector<double> variances;
    for (int pool = firstPool; pool < pedigree.size(); ++pool) {
        variances.push_back(pedigree.founderVariance(pool));
    }
    for (const PollenPool& pool : pools) {
        if (!(pool.fathers >= 1) || !std::isfinite(pool.fathers)) {
            return refused("A pollen pool needs at least one father.",
                           "Give the number of trees whose pollen counted.");
        }
        const auto number = static_cast<std::int32_t>(seed.size());
        for (const int seedling : pool.seedlings) {
            if (seedling < 0 || seedling >= firstPool) {
                return refused("A seedling of a pollen pool is not among the genotypes.",
                               "Name seedlings of the pedigree.");
            }
            if (pollen[static_cast<std::size_t>(seedling)] != kUnknownParent) {
                return refused(nameOf(seedling) + " already has a pollen parent.",
                               "Leave it out of the pollen pool.");
            }
            pollen[static_cast<std::size_t>(seedling)] = number;
        }
        seed.push_back(kUnknownParent);
        pollen.push_back(kUnknownParent);
        variances.push_back(1 / pool.fathers);
    }
    auto result = Pedigree::ofColumns(std::move(seed), std::move(pollen), nameOf);
    if (result) {
        result->m_firstPool = firstPool;
        result->m_poolVariance = std::move(variances);
    }
    return result;
}

} // namespace pipwright
