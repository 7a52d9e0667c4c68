#pragma once

#include "core/evaluation/merit/verdict.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

/// What would settle it: how far tastings not yet held can be expected to move the probability
/// that a seedling beats a benchmark.
///
/// Merits, tasters, trees and what else a new score shares with old ones are jointly normal given
/// the book (means and covariances of the fitted equations); new lots, sittings and crop years add
/// terms of their own at the model's variances. So the difference d, given the scores y to come,
/// has a mean that is itself normal around today's, with the variance
///     r^2 = cov(d, y)' var(y)^-1 cov(d, y),
/// and loses as much of its own (preposterior analysis, Raiffa & Schlaifer 1961, Applied
/// Statistical Decision Theory, ch. 5).
namespace pipwright {

/// A tasting that could be held.
struct TastingPlan {
    int sittings = 1;           ///< a crop year
    int cropYears = 1;          ///< so many in a row
    bool thisYear = true;       ///< the first of them is the crop year running, else the next one
    int lots = 1;               ///< fair ones of the seedling, a sitting
    bool withReference = false; ///< as many of the benchmark, at the same sittings
    int tasters = 1;            ///< those with most scores first, strangers after them
    bool blind = true;

    bool operator==(const TastingPlan&) const = default;
    /// Scores to be given.
    [[nodiscard]] int scores() const {
        return sittings * cropYears * lots * tasters * (withReference ? 2 : 1);
    }
    /// Held at one table on one day.
    [[nodiscard]] bool isOneSitting() const { return sittings == 1 && cropYears == 1; }
};

/// Tastings worth weighing: a fair bite in the row, a fair lot, a pair with the benchmark by one
/// taster and by three, three fair lots next crop year, a pair next crop year, two crop years of
/// pairs.
std::vector<TastingPlan> usualPlans();
/// "one fair lot beside the benchmark, 3 tasters, blind, this crop year".
std::string wordsOf(const TastingPlan& plan);

/// What a plan promises.
struct SettlingPower {
    TastingPlan plan;
    double now = 0;          ///< P(better than the reference) today
    double meanSpread = 0;   ///< r: by how much the difference will move, points (one sd)
    double errorAfter = 0;   ///< standard error of the difference afterwards, points
    double expectedMove = 0; ///< E|P afterwards - P now|
    double flipChance = 0;   ///< P(it comes to lie on the other side of a threshold)
    double reliabilityAfter = 0;
};

/// Which rung is asked about.
struct SettlingQuestion {
    Index genotype = 0;
    Index reference = 0;
    CropYear cropYear;              ///< the one running
    std::vector<double> thresholds; ///< of P(better), between which the verdict stays the same
    UncertainValue ahead;           ///< as the verdict has it
    bool ownSeedling = true;        ///< hope clings to it when it is not tasted blind
};
/// The rung a verdict hangs on: the floor while it decides between cull and watch, the best once
/// the floor is passed. Nothing without a rung.
std::optional<SettlingQuestion> openQuestion(const SeedlingVerdict& verdict,
                                             const VerdictThresholds& thresholds,
                                             CropYear cropYear);

/// One for each plan, in their order. Costs a few passes through the equations, some milliseconds
/// with 40,000 scores.
/// Problem badInput: a genotype the model does not have, a plan without scores or with over 200.
Result<std::vector<SettlingPower>> settlingPowers(const MeritModel& model,
                                                  const SettlingQuestion& question,
                                                  std::span<const TastingPlan> plans);
/// The one that moves the probability most among those held at one sitting; nothing of none. One of
/// the next crop year must move it by 0.02 more than one of this year to be worth the wait.
std::optional<std::size_t> bestNextSitting(const std::vector<SettlingPower>& powers);

/// How a name comes nearer, a crop year of pairs with the benchmark at a time.
struct YearOutlook {
    int cropYears = 0; ///< from the next one on
    double reliability = 0;
    double errorAfter = 0;
    double reachChance = 0; ///< P(P(better) will have come to `threshold` or more)
};
/// For 1 to `years` crop years with one sitting each. Problem as settlingPowers.
Result<std::vector<YearOutlook>> yearsToSettle(const MeritModel& model,
                                               const SettlingQuestion& question, double threshold,
                                               int tasters, int years = 5);

} // namespace pipwright
