#pragma once

#include "core/pedigree/pedigree.h"

#include <cstddef>
#include <cstdint>
#include <vector>

namespace pipwright {

/// A pedigree brought down to what its inbreeding hangs on: the members that are somebody's
/// parent, and the distinct crosses. Full sibs are equally inbred, and a member that is nobody's
/// parent is nobody's ancestor: an orchard of a million seedlings may have a thousand parents.
///
/// Parents have numbers of their own here, older generations first. Each cross is kept by the
/// one of its parents that has more litters, so that few parents keep all crosses.
struct BreedingStock {
    /// Full sibs that stand beside each other in the pedigree: members first to end - 1.
    struct Litter {
        std::int32_t first;
        std::int32_t end;
        std::int32_t cross;
    };

    std::vector<std::int32_t> members; ///< the genotype of each parent
    ParentColumn seed;                 ///< a parent's own parents, by number among the parents
    ParentColumn pollen;
    std::vector<std::int32_t> ownCross; ///< of each parent; -1 when one of its parents is unknown
    std::vector<std::int32_t> crossStarts; ///< crosses kept by parent p: [p], up to [p + 1]
    std::vector<std::int32_t> mates;       ///< the other parent of each cross
    std::vector<Litter> litters; ///< all members of two known parents, in the pedigree's order
};

BreedingStock breedingStockOf(const Pedigree& pedigree);

/// A number for each genotype, when it is the same for the children of a cross; `otherwise` for
/// those with an unknown parent.
std::vector<double> spreadOverLitters(const BreedingStock& stock, std::size_t genotypes,
                                      const std::vector<double>& ofCross, double otherwise);

} // namespace pipwright
