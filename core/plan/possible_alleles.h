#pragma once

#include "core/evaluation/orchard_view.h"
#include "core/history/store.h"
#include "core/pedigree/self_incompatibility.h"
#include "core/units/result.h"

#include <span>
#include <vector>

namespace pipwright {

/// The S genotypes that a genotype may have, the likeliest first: the one that is written down;
/// else what its parents can give, as far back as the alleles are written down (three generations
/// at most). Empty when nothing follows: an unknown parent, a triploid, alleles that cannot be
/// read. Problem: the store fails.
Result<std::vector<SClass>> possibleAlleles(const OrchardView& view, const Store& store,
                                            Index genotype);

/// What becomes of the pollen when one or both of the two are known by their possibilities only.
struct PossiblePollen {
    double acceptedLow = 1;  ///< part of the pollen that is accepted, at the worst of the pairs ...
    double acceptedHigh = 0; ///< ... at the best ...
    double acceptedMean = 0; ///< ... and with each pair weighed by how likely it is
};

/// Over all pairs; none of the two lists may be empty.
PossiblePollen possiblePollen(std::span<const SClass> seedParent,
                              std::span<const SClass> pollenParent);

} // namespace pipwright
