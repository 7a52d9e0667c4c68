#pragma once

#include "core/pedigree/pedigree.h"

#include <span>
#include <vector>

namespace pipwright {

/// The additive relationships of a pedigree of any size, as the sparse factors of A = T D T'
/// (Henderson 1976): T holds the share of each ancestor's genes, and is never made but walked
/// over, since its inverse has only a 1 and two halves a row; D is the Mendelian sampling.
/// Diploid; unknown parents are unrelated to everybody. It takes 16 bytes a genotype beside the
/// pedigree's own 8.
class RelationshipFactors {
  public:
    explicit RelationshipFactors(Pedigree pedigree);

    [[nodiscard]] int size() const { return m_pedigree.size(); }
    [[nodiscard]] const Pedigree& pedigree() const { return m_pedigree; }
    /// F of each genotype.
    [[nodiscard]] const std::vector<double>& inbreedings() const { return m_inbreedings; }
    /// D, in units of the additive variance.
    [[nodiscard]] const std::vector<double>& mendelianSamplings() const { return m_sampling; }

    /// The relationship of two genotypes: twice their coancestry; 1 + F of one with itself.
    [[nodiscard]] double at(int one, int other) const;
    /// A times a vector of size() numbers, in two walks over the pedigree (Colleau 2002).
    [[nodiscard]] std::vector<double> times(std::span<const double> vector) const;
    /// The relationships of one genotype to all.
    [[nodiscard]] std::vector<double> column(int genotype) const;
    /// ln |A|; minus infinity when a genotype's parents leave it nothing to vary by.
    [[nodiscard]] double logDeterminant() const;

  private:
    Pedigree m_pedigree;
    std::vector<double> m_inbreedings;
    std::vector<double> m_sampling;
};

} // namespace pipwright
