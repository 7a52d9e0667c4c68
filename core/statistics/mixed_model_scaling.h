#pragma once

#include "core/statistics/mixed_model_counts.h"

#include <cstdint>
#include <span>
#include <vector>

namespace pipwright {

/// The variances of a model at one point of the search.
struct VarianceState {
    /// Of each random term a k x k matrix L with S = L L', row by row. Being nearly 0 means nothing
    /// special to the equations below: L may hold columns of zeros, or be 0.
    std::vector<std::vector<double>> factors;
    std::vector<double> residual; ///< of each group

    [[nodiscard]] double covariance(std::size_t term, std::int32_t width, std::int32_t row,
                                    std::int32_t column) const;
    void multiply(double scale); ///< all variances
};

/// The mixed model equations for effects v in units of their own standard deviations, u = L v:
///
///     C = [ L'Z'R^-1 Z L + G0^-1   L'Z'R^-1 X ]     G0^-1 the relationships alone
///         [ X'R^-1 Z L             X'R^-1 X   ]
///
/// which stay well behaved when a variance is 0, and whose determinant gives the likelihood:
/// |C| |G0| |R| = |V| |X'V^-1 X| (Bates et al. 2015, section 3; Henderson 1975).
class ScaledEquations {
  public:
    /// `dropped` marks fixed unknowns that are held at 0.
    ScaledEquations(const ModelRecords& records, const EquationCounts& counts,
                    std::vector<bool> dropped);

    /// The numbers of C, in the order of the pattern.
    void assemble(const VarianceState& state, std::vector<double>& values) const;
    /// L' applied to a right-hand side W'R^-1 t.
    void scaleSide(const VarianceState& state, std::span<double> side) const;
    /// u = L v, in place; fixed effects stay.
    void toEffects(const VarianceState& state, std::span<double> effects) const;
    /// Numbers of the inverse of C, in the order of the pattern, turned into those of effects.
    void inverseToEffects(const VarianceState& state, std::span<double> inverse) const;
    /// G0^-1 d for `count` vectors at once, numbers of one unknown together; 0 for fixed effects.
    void precisionTimes(std::span<const double> vectors, std::int32_t count,
                        std::span<double> products) const;
    /// C d likewise.
    void equationsTimes(std::span<const double> values, std::span<const double> vectors,
                        std::int32_t count, std::span<double> products) const;

    [[nodiscard]] const std::vector<bool>& dropped() const { return m_dropped; }

  private:
    /// Turns every k x k block B of rows of term r and columns of term c into M_r' B M_c.
    void transform(const std::vector<const double*>& matrices, std::span<double> values) const;
    void transformColumns(const DesignFamily& family, const double* matrix,
                          std::span<double> values) const;

    const ModelRecords& m_records;
    const EquationCounts& m_counts;
    std::vector<bool> m_dropped;
    std::vector<std::int32_t> m_termOf; ///< of each unknown; -1 for fixed ones
    bool m_single = true;               ///< every random term has one effect a level
};

} // namespace pipwright
