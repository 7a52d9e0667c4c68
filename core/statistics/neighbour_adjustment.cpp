#include "core/statistics/neighbour_adjustment.h"

#include "core/statistics/refusal.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <numeric>
#include <utility>

namespace pipwright {

namespace {

Problem notFinite() {
    return unusable("A value is not a finite number.", "Leave out what was not measured.");
}

double meanOf(std::span<const double> values) {
    return std::accumulate(values.begin(), values.end(), 0.0) / static_cast<double>(values.size());
}

/// Each value less the mean of its entry; seedlings less the mean of the seedlings.
std::vector<double> residualsOf(std::span<const PlantedValue> trees) {
    std::map<std::optional<std::size_t>, std::pair<double, double>> sums;
    for (const PlantedValue& tree : trees) {
        auto& [sum, count] = sums[tree.entry];
        sum += tree.value;
        count += 1;
    }
    std::vector<double> residuals;
    for (const PlantedValue& tree : trees) {
        const auto& [sum, count] = sums[tree.entry];
        residuals.push_back(tree.value - sum / count);
    }
    return residuals;
}

using Places = std::map<std::pair<int, int>, std::size_t>;

std::optional<double> neighbourMean(const PlantedValue& tree, const Places& places,
                                    const std::vector<double>& residuals) {
    constexpr std::array<std::pair<int, int>, 4> kSteps{{{0, 1}, {0, -1}, {1, 0}, {-1, 0}}};
    double sum = 0;
    int count = 0;
    for (const auto& [rows, positions] : kSteps) {
        const auto found = places.find({tree.row + rows, tree.position + positions});
        if (found != places.end()) {
            sum += residuals[found->second];
            ++count;
        }
    }
    return count > 0 ? std::optional(sum / count) : std::nullopt;
}

/// Slope of the residuals on the covariates, over trees that have one; nothing when it does not
/// vary.
std::optional<double> slopeOn(const std::vector<std::optional<double>>& covariates, double centre,
                              const std::vector<double>& residuals) {
    double products = 0;
    double squares = 0;
    double scale = 0;
    for (std::size_t i = 0; i < residuals.size(); ++i) {
        scale += residuals[i] * residuals[i];
        if (covariates[i]) {
            products += (*covariates[i] - centre) * residuals[i];
            squares += (*covariates[i] - centre) * (*covariates[i] - centre);
        }
    }
    return squares > 1e-20 * scale ? std::optional(products / squares) : std::nullopt;
}

} // namespace

Result<PapadakisAdjustment> papadakisAdjustment(std::span<const PlantedValue> trees, bool clamped) {
    Places places;
    for (std::size_t i = 0; i < trees.size(); ++i) {
        if (!std::isfinite(trees[i].value)) {
            return notFinite();
        }
        if (!places.emplace(std::pair{trees[i].row, trees[i].position}, i).second) {
            return unusable("Two values stand in one place.", "Give the mean of each place.");
        }
    }
    const std::vector<double> residuals = residualsOf(trees);
    std::vector<std::optional<double>> covariates;
    std::vector<double> known;
    for (const PlantedValue& tree : trees) {
        covariates.push_back(neighbourMean(tree, places, residuals));
        if (covariates.back()) {
            known.push_back(*covariates.back());
        }
    }
    if (known.size() < 3) {
        return unusable("Fewer than three trees have a neighbour.",
                        "Neighbours adjust nothing here; compare the trees as they are.");
    }
    const double centre = meanOf(known);
    const auto slope = slopeOn(covariates, centre, residuals);
    if (!slope) {
        return unusable("The neighbours do not differ, so there is nothing to adjust for.",
                        "Compare the trees as they are.");
    }
    PapadakisAdjustment adjustment;
    adjustment.slope = *slope;
    adjustment.usedSlope = clamped ? std::clamp(*slope, 0.0, 1.0) : *slope;
    for (std::size_t i = 0; i < trees.size(); ++i) {
        adjustment.covariates.push_back(covariates[i].value_or(centre));
        adjustment.adjusted.push_back(trees[i].value - adjustment.usedSlope *
                                                           (adjustment.covariates.back() - centre));
    }
    return adjustment;
}

Result<MovingMeanAdjustment> movingMeanAdjustment(std::span<const double> row, int reach) {
    if (row.size() < 2 || reach < 1) {
        return unusable("A moving mean needs at least two trees and a reach of at least one.",
                        "Give a longer row or a wider reach.");
    }
    if (!std::all_of(row.begin(), row.end(), [](double v) { return std::isfinite(v); })) {
        return notFinite();
    }
    const double whole = meanOf(row);
    const auto last = static_cast<std::ptrdiff_t>(row.size()) - 1;
    MovingMeanAdjustment adjustment;
    for (std::ptrdiff_t i = 0; i <= last; ++i) {
        const std::ptrdiff_t from = std::max<std::ptrdiff_t>(0, i - reach);
        const std::ptrdiff_t to = std::min(last, i + reach);
        double sum = 0;
        for (std::ptrdiff_t j = from; j <= to; ++j) {
            sum += j == i ? 0 : row[static_cast<std::size_t>(j)];
        }
        const double mean = sum / static_cast<double>(to - from);
        adjustment.movingMeans.push_back(mean);
        adjustment.adjusted.push_back(row[static_cast<std::size_t>(i)] - mean + whole);
    }
    return adjustment;
}

Result<std::vector<double>> checkLevels(std::span<const CheckValue> checks,
                                        std::span<const double> positions) {
    std::map<double, std::pair<double, double>> sums;
    for (const CheckValue& check : checks) {
        if (!std::isfinite(check.position) || !std::isfinite(check.value)) {
            return notFinite();
        }
        auto& [sum, count] = sums[check.position];
        sum += check.value;
        count += 1;
    }
    if (sums.empty()) {
        return unusable("No check tree stands in this row.",
                        "Nothing can be adjusted here; compare within the row only.");
    }
    std::vector<double> levels;
    for (const double position : positions) {
        if (!std::isfinite(position)) {
            return notFinite();
        }
        const auto level = [](auto check) { return check->second.first / check->second.second; };
        const auto after = sums.lower_bound(position);
        if (after == sums.begin() || (after != sums.end() && after->first == position)) {
            levels.push_back(level(after));
        } else if (after == sums.end()) {
            levels.push_back(level(std::prev(after)));
        } else {
            const auto before = std::prev(after);
            const double share = (position - before->first) / (after->first - before->first);
            levels.push_back(level(before) + share * (level(after) - level(before)));
        }
    }
    return levels;
}

} // namespace pipwright
