#pragma once

#include "core/pedigree/pedigree.h"

#include <utility>
#include <vector>

namespace pipwright {

/// The coefficient of inbreeding F of each genotype, 0 to 1, by tracing each family's ancestors
/// from the youngest (Meuwissen and Luo 1992, Genetics Selection Evolution 24:305). An unknown
/// parent, also an open pollination, counts as unrelated to everybody and not inbred. Diploid.
std::vector<double> inbreeding(const Pedigree& pedigree);

/// The part of the additive variance that the parents' own do not explain (Mendelian sampling),
/// in units of the additive variance: 1/2 - (F_seed + F_pollen) / 4, where F of an unknown parent
/// is -1 (Quaas 1976). `inbreedings` is what inbreeding() gave.
std::vector<double> mendelianSampling(const Pedigree& pedigree,
                                      const std::vector<double>& inbreedings);

/// The coancestry of two genotypes: the chance that an allele drawn from the one is by descent
/// the one drawn from the other. It is the inbreeding of the seedlings of their cross; that of a
/// genotype with itself is that of its selfed seedlings, (1 + F) / 2.
double coancestry(const Pedigree& pedigree, const std::vector<double>& inbreedings, int one,
                  int other);

/// How much of a genotype is expected to come from a founder.
struct FounderShare {
    int founder;
    double share; ///< 0 to 1
};

/// Where a genotype comes from; the shares and the unknown part sum to 1.
struct Contributions {
    std::vector<FounderShare> founders; ///< the largest first; a founder has no known parent
    double unknown = 0;                 ///< from unknown parents of ancestors with one known
};

Contributions founderContributions(const Pedigree& pedigree, int genotype);

} // namespace pipwright
