#pragma once

#include "core/evaluation/merit/book_evaluation.h"

#include <array>
#include <vector>

/// The date set back: what a rule would have culled then that is now among the best.
namespace pipwright {

/// Chances of being below the floor that are tried as a rule for culling.
inline constexpr std::array kTriedThresholds = {0.5, 0.6, 0.7, 0.8, 0.9, 0.95, 0.99};

/// What one rule would have done, or what was done.
struct RegretRow {
    double threshold = 0;         ///< cull from this P(below the floor) on
    std::vector<Index> culled;    ///< in the order of the view
    std::vector<Index> regretted; ///< of them, those now in the best tenth
    int culledTastedSince = 0;    ///< of the culled, those that later fruit has judged
    int regrettedTastedSince = 0; ///< of the regretted
};

struct RegretTable {
    Date asOf;
    int judgedThen = 0; ///< seedlings with a chance against a floor then, still in the running
    std::vector<Index> bestTenth; ///< of the seedlings tasted by now: highest expected merit first
    std::vector<RegretRow> rows;  ///< one for each threshold
    RegretRow decided;            ///< what the breeder had culled by then; its threshold is 0
};

/// From the evaluation as it stood and that of today. A rule asks for the fair lots the thresholds
/// ask for. Merits of today rest partly on the scores of then, so a seedling that was truly culled
/// could not prove the rule wrong: count those tasted since.
/// Problem badInput: the first evaluation is not set back, or the later one lies before it.
Result<RegretTable> regretTable(const BookEvaluation& then, const BookEvaluation& now,
                                const VerdictThresholds& thresholds,
                                std::span<const double> tried = kTriedThresholds);

} // namespace pipwright
