#include "core/statistics/orthant.h"

#include "core/statistics/distributions.h"
#include "core/statistics/lattice.h"
#include "core/statistics/quadrature.h"
#include "core/statistics/refusal.h"
#include "core/units/no_number.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <optional>
#include <utility>

namespace pipwright {

namespace {

constexpr std::size_t kMostQuantities = 200;

std::optional<Problem> faultOf(const JointNormal& quantities) {
    const std::size_t size = quantities.means.size();
    if (size == 0 || size > kMostQuantities) {
        return unusable("A joint probability is of 1 to 200 quantities.", "Ask for fewer.");
    }
    if (quantities.covariance.rows() != size || quantities.covariance.columns() != size) {
        return unusable("The means and the covariances are not of the same quantities.",
                        "Give one row and one column for each.");
    }
    for (const double mean : quantities.means) {
        if (!std::isfinite(mean)) {
            return unusable("A mean is not a finite number.", "Give one for each quantity.");
        }
    }
    if (!choleskyFactor(quantities.covariance, Definiteness::semidefinite)) {
        return unusable("These are no covariances: some combination of the quantities would have a "
                        "variance below 0, or a number is missing.",
                        "Check the variances and correlations.");
    }
    return std::nullopt;
}

/// P(lower < Z <= upper) without losing a far tail.
double between(double lower, double upper) {
    return lower > 0 ? standardNormalAbove(lower) - standardNormalAbove(upper)
                     : standardNormalBelow(upper) - standardNormalBelow(lower);
}

/// P(Z1 > h, Z2 > k) at correlation r. Its derivative in r is the bivariate density (Plackett 1954,
/// Biometrika 41:351-360); with r = sin(angle) the integrand stays bounded (Drezner & Wesolowsky
/// 1990).
double bothAbove(double h, double k, double r) {
    if (h == kInfinity || k == kInfinity) {
        return 0;
    }
    if (h == -kInfinity || k == -kInfinity) {
        return h == -kInfinity ? standardNormalAbove(k) : standardNormalAbove(h);
    }
    const auto slope = [&](double angle) {
        const double sine = std::sin(angle);
        const double cosine = std::cos(angle);
        return std::exp(-(h * h + k * k - 2 * h * k * sine) / (2 * cosine * cosine));
    };
    const double angle = std::asin(std::clamp(r, -1.0, 1.0));
    const double area = integrate(slope, 0, angle, 1e-14).value / (2 * std::numbers::pi);
    return std::max(0.0, standardNormalAbove(h) * standardNormalAbove(k) + area);
}

/// A rectangle around standardised quantities.
struct Box {
    std::vector<double> lower;
    std::vector<double> upper;
    DenseMatrix correlation;
};

double pairProbability(const Box& box) {
    const double r = box.correlation(0, 1);
    const auto corner = [&](double h, double k) { return bothAbove(h, k, r); };
    return std::clamp(corner(box.lower[0], box.lower[1]) - corner(box.upper[0], box.lower[1]) -
                          corner(box.lower[0], box.upper[1]) + corner(box.upper[0], box.upper[1]),
                      0.0, 1.0);
}

/// The box in standard units, quantities without variance settled: nothing when one of them lies
/// outside its limits.
std::optional<Box> standardised(const JointNormal& quantities, std::span<const double> lower,
                                std::span<const double> upper) {
    std::vector<std::size_t> kept;
    for (std::size_t i = 0; i < quantities.means.size(); ++i) {
        if (quantities.covariance(i, i) > 0) {
            kept.push_back(i);
        } else if (!(lower[i] < quantities.means[i] && quantities.means[i] <= upper[i])) {
            return std::nullopt;
        }
    }
    Box box;
    box.correlation = DenseMatrix(kept.size(), kept.size());
    for (std::size_t i = 0; i < kept.size(); ++i) {
        const double spread = std::sqrt(quantities.covariance(kept[i], kept[i]));
        box.lower.push_back((lower[kept[i]] - quantities.means[kept[i]]) / spread);
        box.upper.push_back((upper[kept[i]] - quantities.means[kept[i]]) / spread);
        for (std::size_t j = 0; j < kept.size(); ++j) {
            const double other = std::sqrt(quantities.covariance(kept[j], kept[j]));
            box.correlation(i, j) = quantities.covariance(kept[i], kept[j]) / (spread * other);
        }
    }
    return box;
}

void exchange(Box& box, DenseMatrix& factor, std::size_t a, std::size_t b) {
    if (a == b) {
        return;
    }
    std::swap(box.lower[a], box.lower[b]);
    std::swap(box.upper[a], box.upper[b]);
    for (std::size_t k = 0; k < box.correlation.rows(); ++k) {
        std::swap(box.correlation(a, k), box.correlation(b, k));
        std::swap(factor(a, k), factor(b, k));
    }
    for (std::size_t k = 0; k < box.correlation.rows(); ++k) {
        std::swap(box.correlation(k, a), box.correlation(k, b));
    }
}

/// The mean of a standard normal quantity kept between two limits.
double truncatedMean(double lower, double upper) {
    const double chance = between(lower, upper);
    if (chance < 1e-300) {
        return std::isfinite(lower) ? lower : (std::isfinite(upper) ? upper : 0);
    }
    return (standardNormalDensity(lower) - standardNormalDensity(upper)) / chance;
}

/// Cholesky with the variables so ordered that the least likely interval comes first, given the
/// expected values of those before (Gibson, Glasbey & Elston 1994).
DenseMatrix orderedFactor(Box& box) {
    const std::size_t size = box.lower.size();
    DenseMatrix factor(size, size);
    std::vector<double> expected(size, 0);
    const auto rest = [&](std::size_t i, std::size_t step) {
        double variance = 1;
        double mean = 0;
        for (std::size_t k = 0; k < step; ++k) {
            variance -= factor(i, k) * factor(i, k);
            mean += factor(i, k) * expected[k];
        }
        return std::pair{mean, variance > 1e-11 ? std::sqrt(variance) : 0.0};
    };
    for (std::size_t step = 0; step < size; ++step) {
        std::size_t chosen = step;
        double least = 2;
        for (std::size_t i = step; i < size; ++i) {
            const auto [mean, spread] = rest(i, step);
            const double chance = spread > 0 ? between((box.lower[i] - mean) / spread,
                                                       (box.upper[i] - mean) / spread)
                                             : 1.5; // settled by the others: last
            if (chance < least) {
                least = chance;
                chosen = i;
            }
        }
        exchange(box, factor, step, chosen);
        const auto [mean, spread] = rest(step, step);
        factor(step, step) = spread;
        if (spread == 0) {
            continue;
        }
        expected[step] =
            truncatedMean((box.lower[step] - mean) / spread, (box.upper[step] - mean) / spread);
        for (std::size_t i = step + 1; i < size; ++i) {
            double covariance = box.correlation(i, step);
            for (std::size_t k = 0; k < step; ++k) {
                covariance -= factor(i, k) * factor(step, k);
            }
            factor(i, step) = covariance / spread;
        }
    }
    return factor;
}

/// One point of Genz' (1992) transformed integrand: the product of conditional probabilities.
double genzProduct(const Box& box, const DenseMatrix& factor, const std::vector<double>& point,
                   std::vector<double>& drawn) {
    double product = 1;
    for (std::size_t i = 0; i < box.lower.size(); ++i) {
        double mean = 0;
        for (std::size_t k = 0; k < i; ++k) {
            mean += factor(i, k) * drawn[k];
        }
        const double spread = factor(i, i);
        if (spread == 0) {
            constexpr double kRounding = 1e-9;
            const bool inside = box.lower[i] < mean + kRounding && mean <= box.upper[i] + kRounding;
            drawn[i] = 0;
            product *= inside ? 1 : 0;
            continue;
        }
        const double from = (box.lower[i] - mean) / spread;
        const double to = (box.upper[i] - mean) / spread;
        const double chance = between(from, to);
        product *= chance;
        if (product == 0) {
            return 0;
        }
        if (i < point.size()) {
            // Drawn in the tail that keeps its digits.
            const double drawnValue =
                from > 0
                    ? standardNormalUpperQuantile(standardNormalAbove(to) + (1 - point[i]) * chance)
                    : standardNormalQuantile(standardNormalBelow(from) + point[i] * chance);
            drawn[i] = std::clamp(drawnValue, std::max(from, -38.0), std::min(to, 38.0));
        }
    }
    return product;
}

Estimate latticeProbability(Box box, const LatticeEffort& effort) {
    const DenseMatrix factor = orderedFactor(box);
    const std::size_t size = box.lower.size();
    const ShiftedLattice lattice(size - 1);
    std::vector<double> sums(ShiftedLattice::kShifts, 0);
    std::vector<double> point;
    std::vector<double> drawn(size, 0);
    std::size_t done = 0;
    LatticeEstimate estimate;
    for (std::size_t goal = 500; done < effort.mostPoints; goal *= 2) {
        goal = std::min(goal, effort.mostPoints);
        for (std::size_t shift = 0; shift < sums.size(); ++shift) {
            for (std::size_t n = done + 1; n <= goal; ++n) {
                lattice.point(n, shift, point);
                sums[shift] += genzProduct(box, factor, point, drawn);
            }
        }
        done = goal;
        std::vector<double> means = sums;
        for (double& mean : means) {
            mean /= static_cast<double>(done);
        }
        estimate = estimateFromShifts(means);
        if (estimate.error < effort.tolerance) {
            break;
        }
    }
    return {std::clamp(estimate.value, 0.0, 1.0), estimate.error};
}

// ---- the largest
// ---------------------------------------------------------------------------------

/// Clark (1961), eq. 2.
MaximumOutlook largerOfTwo(const JointNormal& two) {
    const double difference = two.means[0] - two.means[1];
    const double variance = two.covariance(0, 0) + two.covariance(1, 1) - 2 * two.covariance(0, 1);
    if (!(variance > 1e-14 * (two.covariance(0, 0) + two.covariance(1, 1)))) {
        const double first = difference == 0 ? .5 : (difference > 0 ? 1 : 0);
        return {{std::max(two.means[0], two.means[1]), 0}, {{first, 0}, {1 - first, 0}}};
    }
    const double spread = std::sqrt(variance);
    const double z = difference / spread;
    const double first = standardNormalBelow(z);
    const double second = standardNormalAbove(z);
    return {{two.means[0] * first + two.means[1] * second + spread * standardNormalDensity(z), 0},
            {{first, 0}, {second, 0}}};
}

/// Sums over the points of one shift.
struct MaximumSums {
    double maximum = 0;
    std::vector<double> best;
};

/// A point and its mirror image: the odd part of the error cancels.
void addPoint(const JointNormal& quantities, const DenseMatrix& factor,
              const std::vector<double>& normal, double sign, MaximumSums& sums) {
    double largest = -kInfinity;
    std::size_t best = 0;
    for (std::size_t i = 0; i < normal.size(); ++i) {
        double value = quantities.means[i];
        for (std::size_t k = 0; k <= i; ++k) {
            value += sign * factor(i, k) * normal[k];
        }
        if (value > largest) {
            largest = value;
            best = i;
        }
    }
    sums.maximum += largest;
    sums.best[best] += 1;
}

Estimate shiftEstimate(const std::vector<MaximumSums>& sums, double points, auto part) {
    std::vector<double> means;
    means.reserve(sums.size());
    for (const auto& shift : sums) {
        means.push_back(part(shift) / (2 * points));
    }
    const LatticeEstimate estimate = estimateFromShifts(means);
    return {estimate.value, estimate.error};
}

MaximumOutlook latticeMaximum(const JointNormal& quantities, const DenseMatrix& factor,
                              const LatticeEffort& effort) {
    const std::size_t size = quantities.means.size();
    const ShiftedLattice lattice(size);
    std::vector<MaximumSums> sums(ShiftedLattice::kShifts,
                                  MaximumSums{0, std::vector<double>(size, 0)});
    std::vector<double> point;
    MaximumOutlook outlook;
    std::size_t done = 0;
    for (std::size_t goal = 500; done < effort.mostPoints; goal *= 2) {
        goal = std::min(goal, effort.mostPoints);
        for (std::size_t shift = 0; shift < sums.size(); ++shift) {
            for (std::size_t n = done + 1; n <= goal; ++n) {
                lattice.point(n, shift, point);
                for (double& coordinate : point) {
                    coordinate = standardNormalQuantile(coordinate);
                }
                addPoint(quantities, factor, point, 1, sums[shift]);
                addPoint(quantities, factor, point, -1, sums[shift]);
            }
        }
        done = goal;
        outlook.mean = shiftEstimate(sums, static_cast<double>(done),
                                     [](const MaximumSums& s) { return s.maximum; });
        if (outlook.mean.error < effort.tolerance) {
            break;
        }
    }
    for (std::size_t i = 0; i < size; ++i) {
        outlook.bestChances.push_back(shiftEstimate(
            sums, static_cast<double>(done), [i](const MaximumSums& s) { return s.best[i]; }));
    }
    return outlook;
}

Problem badEffort() {
    return unusable("An error of 0 or no points at all cannot be had.",
                    "Give a tolerance above 0 and at least one point.");
}

bool isSound(const LatticeEffort& effort) {
    return effort.tolerance > 0 && effort.mostPoints > 0;
}

} // namespace

Result<Estimate> rectangleProbability(const JointNormal& quantities, std::span<const double> lower,
                                      std::span<const double> upper, const LatticeEffort& effort) {
    if (auto fault = faultOf(quantities)) {
        return *fault;
    }
    if (!isSound(effort)) {
        return badEffort();
    }
    if (lower.size() != quantities.means.size() || upper.size() != quantities.means.size()) {
        return unusable("There must be one pair of limits for each quantity.", "Give them all.");
    }
    for (std::size_t i = 0; i < lower.size(); ++i) {
        if (!(lower[i] <= upper[i])) {
            return unusable("A lower limit lies above its upper one, or is not a number.",
                            "Give limits in order.");
        }
        if (lower[i] == upper[i]) {
            return Estimate{0, 0};
        }
    }
    auto box = standardised(quantities, lower, upper);
    if (!box) {
        return Estimate{0, 0};
    }
    switch (box->lower.size()) {
    case 0:
        return Estimate{1, 0};
    case 1:
        return Estimate{between(box->lower[0], box->upper[0]), 0};
    case 2:
        return Estimate{pairProbability(*box), 0};
    default:
        return latticeProbability(std::move(*box), effort);
    }
}

Result<Estimate> orthantProbability(const JointNormal& quantities, const LatticeEffort& effort) {
    const std::vector<double> lower(quantities.means.size(), 0);
    const std::vector<double> upper(quantities.means.size(), kInfinity);
    return rectangleProbability(quantities, lower, upper, effort);
}

Result<MaximumOutlook> maximumOutlook(const JointNormal& quantities, const LatticeEffort& effort) {
    if (auto fault = faultOf(quantities)) {
        return *fault;
    }
    if (!isSound(effort)) {
        return badEffort();
    }
    if (quantities.means.size() == 1) {
        return MaximumOutlook{{quantities.means[0], 0}, {{1, 0}}};
    }
    if (quantities.means.size() == 2) {
        return largerOfTwo(quantities);
    }
    return latticeMaximum(
        quantities, *choleskyFactor(quantities.covariance, Definiteness::semidefinite), effort);
}

} // namespace pipwright
