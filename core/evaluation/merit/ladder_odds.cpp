#include "core/evaluation/merit/ladder_odds.h"

#include "core/statistics/distributions.h"
#include "core/statistics/lattice.h"
#include "core/statistics/orthant.h"

#include <algorithm>
#include <cmath>

namespace pipwright {

namespace {

constexpr std::size_t kPointsAShift = 43;

Problem noLadder() {
    return {ProblemCode::badInput, "The benchmarks' merits do not fit together.",
            "Fit the merit again.", "benchmarks"};
}

} // namespace

double chanceAboveZero(double mean, double variance) {
    if (variance > 1e-12) {
        return standardNormalBelow(mean / std::sqrt(variance));
    }
    return mean > 0 ? 1.0 : (mean < 0 ? 0.0 : 0.5);
}

Result<LadderOdds> LadderOdds::of(std::vector<double> means, DenseMatrix covariance) {
    if (means.empty() || covariance.rows() != means.size() || !covariance.isFinite()) {
        return noLadder();
    }
    auto factor = choleskyFactor(covariance, Definiteness::semidefinite);
    if (!factor) {
        return noLadder();
    }
    LadderOdds odds;
    const std::size_t size = means.size();
    odds.m_means = std::move(means);
    odds.m_covariance = std::move(covariance);
    odds.m_factor = std::move(*factor);
    if (size < 3) {
        return odds;
    }
    const ShiftedLattice lattice(size);
    std::vector<double> point;
    for (std::size_t shift = 0; shift < ShiftedLattice::kShifts; ++shift) {
        for (std::size_t number = 1; number <= kPointsAShift; ++number) {
            lattice.point(number, shift, point);
            std::transform(point.begin(), point.end(), point.begin(), standardNormalQuantile);
            double bar = -1e300;
            for (std::size_t i = 0; i < size; ++i) {
                double merit = odds.m_means[i];
                for (std::size_t k = 0; k <= i; ++k) {
                    merit += odds.m_factor(i, k) * point[k];
                }
                bar = std::max(bar, merit);
            }
            odds.m_points.insert(odds.m_points.end(), point.begin(), point.end());
            odds.m_bars.push_back(bar);
        }
    }
    return odds;
}

double LadderOdds::aboveAll(double mean, double variance, std::span<const double> together) const {
    if (size() >= 3) {
        return overLattice(mean, variance, together);
    }
    JointNormal ahead{{}, DenseMatrix(size(), size())};
    for (std::size_t i = 0; i < size(); ++i) {
        ahead.means.push_back(mean - m_means[i]);
        for (std::size_t k = 0; k < size(); ++k) {
            ahead.covariance(i, k) = variance - together[i] - together[k] + m_covariance(i, k);
        }
    }
    if (size() == 1) {
        return chanceAboveZero(ahead.means[0], ahead.covariance(0, 0));
    }
    const auto chance = orthantProbability(ahead);
    // Rounding alone can spoil covariances of nearly the same quantities: then the harder one.
    return chance ? chance->value
                  : std::min(chanceAboveZero(ahead.means[0], ahead.covariance(0, 0)),
                             chanceAboveZero(ahead.means[1], ahead.covariance(1, 1)));
}

double LadderOdds::overLattice(double mean, double variance,
                               std::span<const double> together) const {
    // The seedling is mean + w'z + rest, with z the point and L w = together.
    std::vector<double> weights(size(), 0.0);
    double rest = variance;
    for (std::size_t i = 0; i < size(); ++i) {
        double sum = together[i];
        for (std::size_t k = 0; k < i; ++k) {
            sum -= m_factor(i, k) * weights[k];
        }
        weights[i] = m_factor(i, i) > 1e-9 ? sum / m_factor(i, i) : 0.0;
        rest -= weights[i] * weights[i];
    }
    const double scale = rest > 1e-12 ? 1 / std::sqrt(rest) : 1e9;
    double sum = 0;
    for (std::size_t point = 0; point < m_bars.size(); ++point) {
        const double* z = &m_points[point * size()];
        double merit = mean;
        for (std::size_t i = 0; i < size(); ++i) {
            merit += weights[i] * z[i];
        }
        sum += standardNormalBelow((merit - m_bars[point]) * scale);
    }
    return sum / static_cast<double>(m_bars.size());
}

} // namespace pipwright
