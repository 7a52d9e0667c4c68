#include "core/pedigree/inbreeding.h"

#include "core/pedigree/ancestor_queue.h"
#include "core/pedigree/breeding_stock.h"
#include "core/pedigree/cross_inbreeding.h"

#include <algorithm>
#include <unordered_map>

namespace pipwright {

namespace {

/// Expected share of each ancestor's genes in a genotype (a row of Henderson's T), found by
/// going through the ancestors from the youngest. The work space is made once for many rows.
class AncestorTrace {
  public:
    explicit AncestorTrace(const Pedigree& pedigree)
        : m_pedigree(pedigree), m_share(static_cast<std::size_t>(pedigree.size()), 0.0),
          m_youngest(pedigree.size()) {}

    /// Adds a genotype to start from; its own share is then `share`.
    void add(std::optional<int> genotype, double share) {
        if (!genotype || share == 0) { // a share may become too small for a number
            return;
        }
        double& held = m_share[static_cast<std::size_t>(*genotype)];
        if (held == 0) { // not on the way yet
            m_youngest.insert(m_pedigree.rankOf(*genotype));
        }
        held += share;
    }

    /// Calls visit(ancestor, share) for each, the youngest first, and is empty afterwards.
    template <typename Visit>
    void run(Visit visit) {
        for (int rank = m_youngest.takeHighest(); rank >= 0; rank = m_youngest.takeHighest()) {
            const int ancestor = m_pedigree.atRank(rank);
            double& held = m_share[static_cast<std::size_t>(ancestor)];
            const double share = held;
            held = 0;
            const Parents both = m_pedigree.parentsOf(ancestor);
            add(both.seed, share / 2);
            add(both.pollen, share / 2);
            visit(ancestor, share);
        }
    }

  private:
    const Pedigree& m_pedigree;
    std::vector<double> m_share;
    AncestorQueue m_youngest;
};

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
    Contributions result;
    AncestorTrace trace{pedigree};
    trace.add(genotype, 1);
    trace.run([&](int ancestor, double share) {
        const Parents both = pedigree.parentsOf(ancestor);
        if (!both.seed && !both.pollen) {
            result.founders.push_back({ancestor, share});
        } else if (!both.seed || !both.pollen) {
            result.unknown += share / 2;
        }
    });
    std::sort(result.founders.begin(), result.founders.end(),
              [](const FounderShare& left, const FounderShare& right) {
                  return left.share != right.share ? left.share > right.share
                                                   : left.founder < right.founder;
              });
    return result;
}

} // namespace pipwright
