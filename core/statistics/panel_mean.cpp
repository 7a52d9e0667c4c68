#include "core/statistics/panel_mean.h"

#include "core/statistics/distributions.h"
#include "core/statistics/refusal.h"

#include <algorithm>
#include <cmath>

namespace pipwright {

Result<MeanInterval> meanInterval(std::span<const double> scores, double confidence) {
    if (scores.size() < 2) {
        return unusable("One score says nothing of its own uncertainty.", "Ask another taster.");
    }
    if (!(confidence > 0 && confidence < 1)) {
        return unusable("A confidence must lie between 0 and 1.", "Give one that does.");
    }
    if (!std::all_of(scores.begin(), scores.end(), [](double s) { return std::isfinite(s); })) {
        return unusable("A score is not a finite number.", "Leave out what was not scored.");
    }
    const auto n = static_cast<double>(scores.size());
    MeanInterval interval;
    for (const double score : scores) {
        interval.mean += score / n;
    }
    double squares = 0;
    for (const double score : scores) {
        squares += (score - interval.mean) * (score - interval.mean);
    }
    interval.deviation = std::sqrt(squares / (n - 1));
    const auto t = quantile(StudentDistribution{n - 1}, (1 + confidence) / 2);
    if (!t) {
        return t.problem();
    }
    const double reach = *t * interval.deviation / std::sqrt(n);
    interval.low = interval.mean - reach;
    interval.high = interval.mean + reach;
    return interval;
}

Result<ShrunkMean> shrunkMean(double ownMean, int records, double populationMean,
                              double geneticVariance, double residualVariance) {
    if (!std::isfinite(ownMean) || !std::isfinite(populationMean) || records < 0) {
        return unusable("A mean is not a finite number, or the count is negative.",
                        "Give both means and the number of records.");
    }
    if (!(std::isfinite(geneticVariance) && geneticVariance >= 0) ||
        !(std::isfinite(residualVariance) && residualVariance >= 0) ||
        geneticVariance + residualVariance <= 0) {
        return unusable("Variances must be 0 or more, and one of them above 0.", "Give both.");
    }
    const double weight =
        records == 0 ? 0 : geneticVariance / (geneticVariance + residualVariance / records);
    return ShrunkMean{populationMean + weight * (ownMean - populationMean), weight,
                      std::sqrt(geneticVariance * (1 - weight))};
}

} // namespace pipwright
