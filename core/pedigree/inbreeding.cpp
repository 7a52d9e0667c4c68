#include "core/pedigree/inbreeding.h"

#include "core/pedigree/ancestor_trace.h"
#include "core/pedigree/breeding_stock.h"
#include "core/pedigree/cross_inbreeding.h"

#include <cstddef>
#include <unordered_map>

namespace pipwright {

namespace {

double mendelianPart(const Pedigree& pedigree, int genotype,
                     const std::vector<double>& inbreedings) {
    const Parents both = pedigree.parentsOf(genotype);
    if (!both.seed && !both.pollen) {
        return pedigree.founderVariance(genotype);
    }
    const auto of = [&](std::optional<int> parent) {
        return parent ? inbreedings[static_cast<std::size_t>(*parent)] : -1.0;
    };
    return 0.5 - (of(both.seed) + of(both.pollen)) / 4;
}

} // namespace

std::vector<double> inbreeding(const Pedigree& pedigree) {
    const BreedingStock stock = breedingStockOf(pedigree);
    std::vector<double> result = spreadOverLitters(stock, static_cast<std::size_t>(pedigree.size()),
                                                   inbreedingOfCrosses(pedigree, stock), 0);
    for (int pool = pedigree.firstPool(); pool < pedigree.size(); ++pool) {
        result[static_cast<std::size_t>(pool)] = pedigree.founderVariance(pool) - 1;
    }
    return result;
}

std::vector<double> mendelianSampling(const Pedigree& pedigree,
                                      const std::vector<double>& inbreedings) {
    std::vector<double> result;
    result.reserve(static_cast<std::size_t>(pedigree.size()));
    for (int genotype = 0; genotype < pedigree.size(); ++genotype) {
        result.push_back(mendelianPart(pedigree, genotype, inbreedings));
    }
    return result;
}

double coancestry(const Pedigree& pedigree, const std::vector<double>& inbreedings, int one,
                  int other) {
    AncestorTrace trace{pedigree};
    std::unordered_map<int, double> sharesOfOne;
    trace.add(one, 1);
    trace.run([&](int ancestor, double share) { sharesOfOne.emplace(ancestor, share); });
    double relationship = 0; // a = T D T', for two rows of T
    trace.add(other, 1);
    trace.run([&](int ancestor, double share) {
        const auto found = sharesOfOne.find(ancestor);
        if (found != sharesOfOne.end()) {
            relationship += found->second * share * mendelianPart(pedigree, ancestor, inbreedings);
        }
    });
    return relationship / 2;
}

Contributions founderContributions(const Pedigree& pedigree, int genotype) {
    return contributionsTo(pedigree, genotype, [](int) { return std::pair{0.5, 0.5}; });
}

} // namespace pipwright
