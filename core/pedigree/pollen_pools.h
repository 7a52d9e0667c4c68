#pragma once

#include "core/pedigree/pedigree.h"
#include "core/units/result.h"

#include <span>
#include <vector>

namespace pipwright {

/// Pollen of whatever flew at one place and time, as the pollen parent of open-pollinated
/// seedlings.
struct PollenPool {
    /// To how many equally frequent, unrelated fathers the pollen amounts; 1 or more. One father
    /// makes full sibs of a tree's seedlings; very many make the half sibs of the usual rule.
    double fathers = 1;
    std::vector<int> seedlings; ///< by number; their pollen parent must be unknown
};

/// The pedigree with each pool as a further member at the end, the first pool first, and as the
/// pollen parent of its seedlings. Two pollen grains of a pool of n fathers are the same
/// father's with the chance 1 / n, so the pool's relationship to itself is 1 / n where that of a
/// founder is 1; its "F", 1 / n - 1, lies between that of a founder, 0, and that of an unknown
/// parent, -1 (compare the metafounders of Legarra and others 2015, Genetics 200:455).
/// Problem: less than one father, a seedling that is not in the pedigree, that already has a
/// pollen parent, that is in two pools or a pool itself.
Result<Pedigree> withPollenPools(const Pedigree& pedigree, std::span<const PollenPool> pools,
                                 const GenotypeName& nameOf);

} // namespace pipwright
