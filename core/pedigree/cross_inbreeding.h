#pragma once

#include "core/pedigree/breeding_stock.h"

#include <vector>

namespace pipwright {

/// The inbreeding F of the seedlings of each cross of the stock.
///
/// F of a cross is half the relationship of its parents, and the relationships of one parent to
/// all its mates are a column of A = T D T'. They are found by two walks over the ancestors, up
/// with T' and down again with T, without ever making A (Colleau 2002, An indirect approach to
/// the extensive calculation of relationship coefficients, Genetics Selection Evolution 34:409).
/// Several columns are walked together: every parent whose ancestors' F are known takes part.
std::vector<double> inbreedingOfCrosses(const Pedigree& pedigree, const BreedingStock& stock);

} // namespace pipwright
