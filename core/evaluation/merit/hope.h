#pragma once

#include "core/evaluation/merit/merit_model.h"

#include <string>

/// How much a breeder favours his own children.
namespace pipwright {

/// What own seedlings gain when the taster knows what he eats, less what benchmarks gain by it:
/// the interaction in
///     y = own + sighted + own x sighted + genotype + taster + sitting + lot + e
/// (fixed the first three, random the others, variances by restricted likelihood), on scores freed
/// of what the merit model takes the state of the fruit to be worth. Points.
struct HopeGap {
    UncertainValue gap;
    double low = 0;
    double high = 0; ///< 95 %
    int ownSighted = 0;
    int ownBlind = 0;
    int benchmarkSighted = 0;
    int benchmarkBlind = 0;

    [[nodiscard]] bool beyondDoubt() const { return low > 0 || high < 0; }
};

/// Problem badInput, as a sentence: no model of liking, or fewer than two scores of own seedlings
/// or of benchmarks, sighted or blind.
Result<HopeGap> hopeGap(const OrchardView& view, const MeritModel& model);
/// Scores of these are of own seedlings; `isBenchmark` of the others are held against them.
struct HopeSides {
    std::vector<bool> own;       ///< by genotype
    std::vector<bool> benchmark; ///< by genotype
};
Result<HopeGap> hopeGap(const HopeSides& sides, const MeritModel& model);

/// "Own seedlings get 0.4 points more when it is known what they are (95 %: 0.1 to 0.7; 120 sighted
/// and 35 blind scores)."
std::string sentenceOf(const HopeGap& gap);

} // namespace pipwright
