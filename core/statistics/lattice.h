#pragma once

#include <cstddef>
#include <vector>

namespace pipwright {

/// Points that fill the unit cube evenly, for integrals in many dimensions: Richtmyer's lattice
/// (fractional parts of multiples of the square roots of the primes), shifted at random with a
/// fixed seed and folded (baker's transformation), as in Genz & Bretz (2009), Computation of
/// Multivariate Normal and t Probabilities, section 4.2. The same points every time.
class ShiftedLattice {
  public:
    explicit ShiftedLattice(std::size_t dimensions);

    /// Point `number` (from 1) under shift `shift`; each coordinate strictly between 0 and 1.
    void point(std::size_t number, std::size_t shift, std::vector<double>& coordinates) const;

    static constexpr std::size_t kShifts = 12;

  private:
    std::vector<double> m_steps;
    std::vector<double> m_shifts; ///< kShifts rows
};

/// Mean and error of one value a shift: three standard errors of the mean (Genz & Bretz 2009).
struct LatticeEstimate {
    double value = 0;
    double error = 0;
};
LatticeEstimate estimateFromShifts(const std::vector<double>& means);

} // namespace pipwright
