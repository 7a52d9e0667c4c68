#include "core/statistics/fitted_means.h"

#include "core/units/no_number.h"

#include <cstddef>
#include <limits>

namespace pipwright {

namespace {

/// Adds the effects of one fixed term, whose columns begin at `estimates`.
void addFixed(std::vector<double>& means, const FixedTerm& term, const FixedEffect* estimates) {
    const bool isFactor = !term.levels.ofRecord.empty();
    const std::int32_t first = isFactor && term.coding == FixedCoding::treatment ? 1 : 0;
    for (std::size_t record = 0; record < means.size(); ++record) {
        const std::int32_t level = isFactor ? term.levels.ofRecord[record] : 0;
        if (level < 0) {
            means[record] = kNaN;
        } else {
            const double times = term.covariate.empty() ? 1 : term.covariate[record];
            const double effect = level < first ? 0 : estimates[level - first].estimate;
            means[record] += times * effect;
        }
    }
}

void addRandom(std::vector<double>& means, const RandomTerm& term, const RandomEffects& effects) {
    for (std::size_t record = 0; record < means.size(); ++record) {
        const std::int32_t level = term.levels.ofRecord[record];
        if (level < 0) {
            continue;
        }
        std::int32_t effect = 0;
        if (term.intercept) {
            means[record] += effects.prediction(level, effect++);
        }
        for (const std::vector<double>& covariate : term.covariates) {
            means[record] += covariate[record] * effects.prediction(level, effect++);
        }
    }
}

} // namespace

std::vector<double> fittedMeans(const MixedModel& model, const MixedFit& fit) {
    const FixedEffect* next = fit.fixedEffects().data();
    std::vector<double> means(model.response.size(), model.intercept ? (next++)->estimate : 0);
    for (const FixedTerm& term : model.fixed) {
        addFixed(means, term, next);
        next += term.columnCount();
    }
    for (std::size_t term = 0; term < model.random.size(); ++term) {
        addRandom(means, model.random[term], fit.randomEffects()[term]);
    }
    return means;
}

} // namespace pipwright
