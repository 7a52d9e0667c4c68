#pragma once

#include "core/statistics/dense_matrix.h"
#include "core/units/result.h"

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

namespace pipwright {

/// How often two fruits were tasted against each other, and how it went. The first is the one
/// presented first.
struct PairRecord {
    std::size_t first = 0;
    std::size_t second = 0;
    double firstPreferred = 0; ///< times
    double secondPreferred = 0;
    double ties = 0; ///< no preference
};

/// Which parts the model has.
struct PairedModel {
    bool orderEffect = false; ///< whether being presented first helps
    /// Standard deviation of a normal prior on every ability (log scale, around 0); without one,
    /// abilities are by maximum likelihood.
    std::optional<double> priorDeviation{};
};

/// Abilities from paired comparisons: Bradley & Terry (1952, Biometrika 39:324-345), with ties
/// after Davidson (1970, J. Am. Stat. Assoc. 65:317-328) and, if asked, an order effect after
/// Davidson & Beaver (1977, Biometrics 33:693-702). With abilities l_i on the log scale, order
/// effect g and tie parameter d, the first is preferred in proportion to exp(l_1 + g), the second
/// to exp(l_2), and a tie comes in proportion to exp(d + (l_1 + l_2 + g)/2); d is estimated when
/// there are ties, else there are none in the model.
struct PairedComparison {
    std::vector<double> abilities{};     ///< log scale; without a prior, fruit 0 stands at 0
    DenseMatrix covariance{};            ///< of the abilities
    std::optional<double> orderEffect{}; ///< log scale
    std::optional<double> orderEffectError{};
    std::optional<double> tieParameter{}; ///< d
    double logLikelihood = 0;             ///< without the constant of the orders of the tastings
    double deviance = 0;                  ///< against the table as it is
    int degreesOfFreedom = 0;             ///< of the deviance
    bool commonScale = true; ///< false when only the prior holds parts of the fruits together

    /// Difference of two abilities and its standard error.
    [[nodiscard]] double difference(std::size_t first, std::size_t second) const;
    [[nodiscard]] double differenceError(std::size_t first, std::size_t second) const;
    /// Abilities as shares that add to 1 (Bradley & Terry's pi).
    [[nodiscard]] std::vector<double> shares() const;
};

/// Problem: no comparisons, a fruit against itself or beyond `fruits`, counts that are negative or
/// not finite, a prior not above 0; without a prior also fruits that cannot be placed: some were
/// never compared with the others, directly or through others, or won or lost everything (Ford
/// 1957); a prior then helps.
Result<PairedComparison> pairedComparison(std::span<const PairRecord> records, std::size_t fruits,
                                          const PairedModel& model = {});

} // namespace pipwright
