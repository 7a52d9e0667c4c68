#pragma once

#include "core/pedigree/inbreeding.h"
#include "core/pedigree/pedigree.h"
#include "core/units/result.h"

#include <optional>
#include <span>
#include <utility>
#include <vector>

namespace pipwright {

/// A genotype with three sets of chromosomes: one parent gave two of them (an unreduced gamete).
struct Triploid {
    enum class TwoSetsFrom { unknown, seedParent, pollenParent };

    int genotype = 0;
    TwoSetsFrom from = TwoSetsFrom::unknown;
};

/// The triploids of a pedigree, and what they take away from it. The relationships of a pedigree
/// are those of diploids: a triploid has no coefficient F, and what it gives its few seedlings is
/// not half of it. So F of a triploid and of its descendants is not computed; of contributions
/// two thirds come from the parent that gave two sets, if it is known which one that was.
class Triploids {
  public:
    Triploids(const Pedigree& pedigree, std::span<const Triploid> triploids);

    [[nodiscard]] bool isTriploid(int genotype) const;
    /// The genotype itself if it is a triploid, else a triploid it descends from; nothing when
    /// it is a diploid of diploids.
    [[nodiscard]] std::optional<int> triploidBehind(int genotype) const;
    /// What a genotype has of its seed and of its pollen parent: halves, or two thirds and a
    /// third; halves as well when it is not known which parent gave two sets (then it is a sixth
    /// more or less).
    [[nodiscard]] std::pair<double, double> sharesOfParents(int genotype) const;
    /// Whether it is not known which parent gave two sets.
    [[nodiscard]] bool hasUnsureShares(int genotype) const;

  private:
    std::vector<int> m_behind; ///< by genotype; -1 when there is none
    std::vector<Triploid> m_triploids;
};

/// Founder contributions with the shares of triploids as they are.
Contributions founderContributions(const Pedigree& pedigree, const Triploids& triploids,
                                   int genotype);

/// F of the seedlings of a cross. Problem badInput, naming the triploid, when one stands behind
/// either parent. `inbreedings` is what inbreeding() gave.
Result<double> inbreedingOfCross(const Pedigree& pedigree, const Triploids& triploids,
                                 const std::vector<double>& inbreedings, int seedParent,
                                 int pollenParent, const GenotypeName& nameOf);

/// The pedigree as far as it is one of diploids: a triploid stays the child of its parents, but
/// its own seedlings have an unknown parent in its place. For relationship matrices.
Pedigree withoutSeedlingsOf(const Pedigree& pedigree, const Triploids& triploids);

} // namespace pipwright
