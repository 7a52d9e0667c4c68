#pragma once

#include "core/statistics/mixed_model_fit.h"

#include <cstddef>
#include <vector>

namespace pipwright {

/// The variances of a model with one residual, as free numbers of the order of 1 for a general
/// search: standard deviations for single variances, where 0 is an ordinary point; the Cholesky
/// factor of a covariance matrix; the logarithm for the residual, which is never 0. All in units
/// of a scale given. Held ones are left out.
class VarianceParameters {
  public:
    /// `scale` is a residual standard deviation.
    VarianceParameters(const MixedModel& model, double scale);

    [[nodiscard]] std::size_t count() const { return m_count; }
    /// A point to start from; variances at 0 are moved inside, as the criterion is flat there.
    [[nodiscard]] std::vector<double> startFrom(const VarianceValues& values) const;
    /// All variances, in the order of MixedFit::varianceComponents.
    [[nodiscard]] VarianceValues values(const std::vector<double>& parameters) const;
    /// The penalties of the priors (see VarianceChoice).
    [[nodiscard]] double penalty(const VarianceValues& values) const;
    /// Parameters that are single standard deviations of a random term, and may be set to 0.
    [[nodiscard]] std::vector<std::size_t> singleParameters() const;
    /// Whether each of the values is estimated.
    [[nodiscard]] std::vector<bool> estimated() const;

  private:
    /// One random term, or the residual.
    struct Block {
        VarianceChoice choice;
        std::size_t side = 1; ///< numbers a side of the covariance matrix
        bool residual = false;
        std::size_t firstParameter = 0;
        std::size_t firstValue = 0;

        [[nodiscard]] std::size_t size() const { return side * (side + 1) / 2; }
        [[nodiscard]] bool held() const { return choice.knowledge == VarianceKnowledge::held; }
    };
    void add(const VarianceChoice& choice, std::size_t side, bool residual);

    std::vector<Block> m_blocks;
    double m_scale;
    std::size_t m_count = 0;
    std::size_t m_values = 0;
};

} // namespace pipwright
