#pragma once

#include "core/pedigree/pedigree.h"
#include "core/statistics/mixed_model.h"
#include "core/units/result.h"

#include <vector>

namespace pipwright {

/// The inverse of the additive relationship matrix, written down directly from the pedigree by
/// the rules of Henderson (1976), with inbreeding (Quaas 1976): for each genotype of Mendelian
/// sampling D, with alpha = 1 / D, add alpha to its own diagonal, -alpha / 2 between it and each
/// known parent, alpha / 4 between the known parents in every order. A selfed genotype's parent
/// counts twice: -alpha between the two, alpha to the parent's diagonal.
///
/// One level a genotype, in the pedigree's order, with ln |A^-1| and the 1 + F of each, ready to
/// be the precision of a random term. `inbreedings` is what inbreeding() gave.
/// Problem: a genotype whose parents are both wholly inbred, so that A has no inverse.
Result<LevelPrecision> inverseRelationship(const Pedigree& pedigree,
                                           const std::vector<double>& inbreedings,
                                           const GenotypeName& nameOf);

} // namespace pipwright
