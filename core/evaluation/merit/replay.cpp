#include "core/evaluation/merit/replay.h"

#include <algorithm>
#include <set>

namespace pipwright {

namespace {

/// Ten in a hundred, and at least one.
std::vector<Index> bestTenthOf(const BookEvaluation& now) {
    std::vector<const SeedlingVerdict*> tasted;
    for (const SeedlingVerdict& one : now.verdicts) {
        if (one.basis == MeritBasis::tasted) {
            tasted.push_back(&one);
        }
    }
    std::stable_sort(tasted.begin(), tasted.end(),
                     [](const SeedlingVerdict* a, const SeedlingVerdict* b) {
                         return a->merit.value > b->merit.value;
                     });
    std::vector<Index> best;
    for (std::size_t i = 0; i < (tasted.size() + 9) / 10; ++i) {
        best.push_back(tasted[i]->genotype);
    }
    return best;
}

bool wouldBeCulled(const SeedlingVerdict& verdict, const VerdictThresholds& thresholds,
                   double threshold) {
    return verdict.floor && verdict.basis == MeritBasis::tasted &&
           verdict.evidence.fairLots >= thresholds.fairLots && verdict.floor->below() >= threshold;
}

/// Whether more scores of it are known now.
bool tastedSince(const SeedlingVerdict& then, const BookEvaluation& now) {
    const SeedlingVerdict* later = now.verdictOn(then.genotype);
    return later != nullptr && later->evidence.records > then.evidence.records;
}

void addCulled(RegretRow& row, const SeedlingVerdict& then, const BookEvaluation& now,
               const std::set<Index>& best) {
    const bool since = tastedSince(then, now);
    row.culled.push_back(then.genotype);
    row.culledTastedSince += since ? 1 : 0;
    if (best.contains(then.genotype)) {
        row.regretted.push_back(then.genotype);
        row.regrettedTastedSince += since ? 1 : 0;
    }
}

} // namespace

Result<RegretTable> regretTable(const BookEvaluation& then, const BookEvaluation& now,
                                const VerdictThresholds& thresholds,
                                std::span<const double> tried) {
    if (!then.asOf || (now.asOf && *now.asOf < *then.asOf)) {
        return Problem{ProblemCode::badInput,
                       "Regret needs an evaluation as it stood and a later one.",
                       "Choose an earlier day.", "date"};
    }
    RegretTable table;
    table.asOf = *then.asOf;
    table.bestTenth = bestTenthOf(now);
    const std::set<Index> best(table.bestTenth.begin(), table.bestTenth.end());
    for (const double threshold : tried) {
        table.rows.push_back({threshold, {}, {}, 0, 0});
    }
    for (const SeedlingVerdict& one : then.verdicts) {
        if (one.stage == Stage::culled) {
            addCulled(table.decided, one, now, best);
            continue;
        }
        table.judgedThen += one.floor && one.basis == MeritBasis::tasted ? 1 : 0;
        for (RegretRow& row : table.rows) {
            if (wouldBeCulled(one, thresholds, row.threshold)) {
                addCulled(row, one, now, best);
            }
        }
    }
    return table;
}

} // namespace pipwright
