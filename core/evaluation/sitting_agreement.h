#pragma once

#include "core/evaluation/sitting.h"
#include "core/statistics/rank_tests.h"

#include <optional>
#include <string>
#include <vector>

/// What a sitting is worth as a measurement, before anybody looks at who won.
namespace pipwright {

/// A standard deviation in points, with its interval by the chi-square distribution.
struct PointSpread {
    double deviation = 0;
    double low = 0;
    double high = 0; ///< 95 %
    int degreesOfFreedom = 0;
};

/// Whether the tasters put the lots in the same order.
struct SittingAgreement {
    int tasters = 0;
    int lots = 0;       ///< that every one of them gave a liking
    int leftOut = 0;    ///< served lots that one of them gave none
    FriedmanTest order; ///< of their likings: Kendall's W is `order.concordance`

    /// The exact one where it is known, else by chi-square.
    [[nodiscard]] double pValue() const { return order.exactPValue.value_or(order.pValue); }
};
/// Problem: fewer than two tasters or lots in common, everybody tying all.
Result<SittingAgreement> agreementOf(const Sitting& sitting);

/// How far the scores of one taster lie apart when the same fruit comes again under another code.
struct RepeatError {
    std::string name; ///< of the genotype
    int tasters = 0;  ///< who gave it two likings or more
    /// Root of the variance of one taster's likings of it, pooled over tasters: for two servings
    /// sqrt(sum d^2 / 2n) (Bland and Altman 1996, BMJ 312:1654).
    PointSpread spread;
    double meanLiking = 0;
    double largestGap = 0;
};
/// One for each genotype that was served more than once and scored twice by somebody.
std::vector<RepeatError> repeatErrors(const OrchardView& view, const Sitting& sitting);

/// A lot among the others, freed of how high each taster scores: its mean over tasters who are each
/// drawn to the same level, y = lot + taster + error by least squares.
struct RankedLot {
    std::size_t lot = 0; ///< in Sitting::lots
    double mean = 0;     ///< points
    double low = 0;
    double high = 0; ///< 95 %, by Student's t; equal to the mean when nothing can be said
    bool hasInterval = false;
    int likings = 0;
    int bestOnes = 0; ///< how many tasters named it among their best
    int firsts = 0;   ///< how many put it first
};

struct SittingRanking {
    std::vector<RankedLot> lots; ///< the best first
    /// What is left when lots and tasters are taken out; nothing with too few likings.
    std::optional<PointSpread> residual;
    /// Points between two means that a 95 % interval of their difference would just reach, for lots
    /// every taster scored.
    std::optional<double> leastDifference;
};
/// Problem: no likings at all, or lots that no chain of tasters links (they cannot be compared).
Result<SittingRanking> rankingOf(const Sitting& sitting);

} // namespace pipwright
