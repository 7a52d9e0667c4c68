#include "core/plan/possible_alleles.h"

#include <algorithm>
#include <map>

namespace pipwright {

namespace {

constexpr int kGenerations = 3;

class PossibilityReader {
  public:
    PossibilityReader(const OrchardView& view, const Store& store) : m_view(view), m_store(store) {}

    Result<std::vector<SClass>> of(Index genotype, int generations) const {
        const auto kept = m_store.get(m_view.genotypes()[genotype].id);
        if (!kept) {
            return kept.problem();
        }
        if (*kept && !(*kept)->selfAlleles.empty()) {
            const auto written = SGenotype::read((*kept)->selfAlleles);
            return written ? std::vector<SClass>{{*written, 1.0}} : std::vector<SClass>{};
        }
        const ParentsOf parents = m_view.parentsOf(genotype);
        if (generations == 0 || !parents.seed || !parents.pollen) {
            return std::vector<SClass>{};
        }
        auto seed = of(*parents.seed, generations - 1);
        if (!seed || seed->empty()) {
            return seed;
        }
        auto pollen = of(*parents.pollen, generations - 1);
        if (!pollen || pollen->empty()) {
            return pollen;
        }
        return childrenOf(*seed, *pollen);
    }

  private:
    static std::vector<SClass> childrenOf(const std::vector<SClass>& seed,
                                          const std::vector<SClass>& pollen) {
        std::map<SGenotype, double> shares;
        double all = 0;
        for (const SClass& mother : seed) {
            for (const SClass& father : pollen) {
                // A pair that gives no seedlings is not the pair that gave this one.
                for (const SClass& child :
                     compatibilityOf(mother.genotype, father.genotype).seedlings) {
                    const double share = mother.share * father.share * child.share;
                    shares[child.genotype] += share;
                    all += share;
                }
            }
        }
        std::vector<SClass> classes;
        for (const auto& [genotype, share] : shares) {
            classes.push_back({genotype, share / all});
        }
        std::stable_sort(
            classes.begin(), classes.end(),
            [](const SClass& one, const SClass& other) { return one.share > other.share; });
        return classes;
    }

    const OrchardView& m_view;
    const Store& m_store;
};

} // namespace

Result<std::vector<SClass>> possibleAlleles(const OrchardView& view, const Store& store,
                                            Index genotype) {
    return PossibilityReader(view, store).of(genotype, kGenerations);
}

PossiblePollen possiblePollen(std::span<const SClass> seedParent,
                              std::span<const SClass> pollenParent) {
    PossiblePollen pollen;
    for (const SClass& seed : seedParent) {
        for (const SClass& father : pollenParent) {
            const SCompatibility pair = compatibilityOf(seed.genotype, father.genotype);
            pollen.acceptedLow = std::min(pollen.acceptedLow, pair.acceptedLow);
            pollen.acceptedHigh = std::max(pollen.acceptedHigh, pair.acceptedHigh);
            pollen.acceptedMean +=
                seed.share * father.share * (pair.acceptedLow + pair.acceptedHigh) / 2;
        }
    }
    return pollen;
}

} // namespace pipwright
