#pragma once

#include "core/pedigree/ancestor_queue.h"
#include "core/pedigree/inbreeding.h"
#include "core/pedigree/pedigree.h"

#include <algorithm>
#include <cstddef>
#include <optional>
#include <utility>
#include <vector>

namespace pipwright {

/// Expected share of each ancestor's genes in a genotype (a row of Henderson's T), found by
/// going through the ancestors from the youngest (Meuwissen and Luo 1992). The work space is made
/// once for many rows.
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
        m_youngest.insert(m_pedigree.rankOf(*genotype));
        m_share[static_cast<std::size_t>(*genotype)] += share;
    }

    /// Calls visit(ancestor, share) for each, the youngest first, and is empty afterwards.
    /// `partsOf(ancestor)` is what an ancestor has of its seed and of its pollen parent.
    template <typename PartsOf, typename Visit>
    void run(PartsOf partsOf, Visit visit) {
        for (int rank = m_youngest.takeHighest(); rank >= 0; rank = m_youngest.takeHighest()) {
            const int ancestor = m_pedigree.atRank(rank);
            double& held = m_share[static_cast<std::size_t>(ancestor)];
            const double share = held;
            held = 0;
            const Parents both = m_pedigree.parentsOf(ancestor);
            const std::pair<double, double> parts = partsOf(ancestor);
            add(both.seed, share * parts.first);
            add(both.pollen, share * parts.second);
            visit(ancestor, share);
        }
    }

    /// The same for diploids, who have a half of each parent.
    template <typename Visit>
    void run(Visit visit) {
        run([](int) { return std::pair{0.5, 0.5}; }, visit);
    }

  private:
    const Pedigree& m_pedigree;
    std::vector<double> m_share;
    AncestorQueue m_youngest;
};

/// Founder contributions, when `partsOf(ancestor)` is what an ancestor has of its parents.
template <typename PartsOf>
Contributions contributionsTo(const Pedigree& pedigree, int genotype, PartsOf partsOf) {
    Contributions result;
    AncestorTrace trace{pedigree};
    trace.add(genotype, 1);
    trace.run(partsOf, [&](int ancestor, double share) {
        const Parents both = pedigree.parentsOf(ancestor);
        const std::pair<double, double> parts = partsOf(ancestor);
        if (!both.seed && !both.pollen) {
            result.founders.push_back({ancestor, share});
        } else if (!both.seed || !both.pollen) {
            result.unknown += share * (both.seed ? parts.second : parts.first);
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
