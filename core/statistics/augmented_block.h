#pragma once

#include "core/statistics/dense_matrix.h"
#include "core/units/result.h"

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

namespace pipwright {

/// One value of an entry (tree, fruit) under a condition (block, taster).
struct EntryRecord {
    std::size_t entry = 0;
    std::size_t block = 0;
    double value = 0;
};

/// Entries compared as if all had stood in every block: least squares of y = entry + block, blocks
/// summing to 0. With every check tree in every block the block effects are those of Federer (1956,
/// Hawaiian Planters' Record 55:191-208; 1961, Biometrics 17:447-473), the block's mean of the
/// checks less their grand mean; checks missing in a block do no harm. With tasters for blocks it
/// is the correction for tasters who score high or low throughout.
///
/// Standard errors are the exact ones of least squares. For a new tree against a check mean in all
/// r blocks with c checks that is sqrt(MSE (1 + 1/r + 1/c - 1/(rc))); the much printed form with
/// + 1/(rc) is too large.
class BlockAdjustment {
  public:
    /// Problem: no records, a value that is not finite, an entry or block beyond the counts, one
    /// without a record, or parts of the trial that share no entry (named by their blocks).
    static Result<BlockAdjustment> of(std::span<const EntryRecord> records, std::size_t entries,
                                      std::size_t blocks);

    /// Of each block, summing to 0.
    [[nodiscard]] const std::vector<double>& blockEffects() const { return m_blockEffects; }
    /// Of each entry: its mean without the effects of its blocks.
    [[nodiscard]] const std::vector<double>& adjustedMeans() const { return m_adjustedMeans; }
    /// Mean square error; nothing without residual degrees of freedom (no repeated checks).
    [[nodiscard]] std::optional<double> residualVariance() const { return m_residualVariance; }
    [[nodiscard]] int residualDegrees() const { return m_residualDegrees; }
    /// Standard error of the difference of two adjusted means. Problem: no such entry, or nothing
    /// to estimate the error from.
    [[nodiscard]] Result<double> differenceError(std::size_t first, std::size_t second) const;

  private:
    BlockAdjustment() = default;
    /// Fills the replicates and shares; gives the plain mean of each entry.
    std::vector<double> countRecords(std::span<const EntryRecord> records, std::size_t entries,
                                     std::size_t blocks);
    /// Normal equations of the blocks with the entries eliminated. Their rows sum to 0; adding 1 to
    /// every place makes them regular and picks the solution that sums to 0.
    [[nodiscard]] DenseMatrix blockEquations(std::span<const EntryRecord> records,
                                             std::size_t blocks) const;

    std::vector<double> m_blockEffects;
    std::vector<double> m_adjustedMeans;
    std::vector<double> m_replicates; ///< records of each entry
    DenseMatrix m_shares;             ///< of each entry's records, by block
    DenseMatrix m_blockCovariance;    ///< in units of the residual variance
    std::optional<double> m_residualVariance;
    int m_residualDegrees = 0;
};

} // namespace pipwright
