#include "core/statistics/order_statistics.h"

#include "core/statistics/distributions.h"
#include "core/statistics/quadrature.h"
#include "core/statistics/refusal.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace pipwright {

namespace {

constexpr std::int64_t kLargestSample = 1'000'000'000'000;
/// Beyond this no density of an order statistic has anything left.
constexpr double kFarOut = 37;

std::optional<Problem> faultOf(std::int64_t rank, std::int64_t size) {
    if (size < 1 || size > kLargestSample || rank < 1 || rank > size) {
        return unusable("There is no such place in a sample of this size.",
                        "Ask for place 1 (the largest) to the size of the sample, which can be at "
                        "most 10^12.");
    }
    return std::nullopt;
}

/// Mean of `quantity` at the `rank`-th largest of `size`: its density is proportional to
/// (1 - F)^(rank-1) F^(size-rank) f (David & Nagaraja 2003, Order Statistics, eq. 2.1.6).
template <typename Quantity>
double meanAtOrderStatistic(std::int64_t rank, std::int64_t size, const Quantity& quantity) {
    const auto above = static_cast<double>(rank - 1);
    const auto below = static_cast<double>(size - rank);
    const auto logDensity = [&](double z) {
        double sum = -.5 * z * z;
        sum += above > 0 ? above * std::log(standardNormalAbove(z)) : 0;
        sum += below > 0 ? below * std::log(standardNormalBelow(z)) : 0;
        return sum;
    };
    return meanUnder(logDensity, quantity, -kFarOut, kFarOut);
}

} // namespace

Result<double> expectedOrderStatistic(std::int64_t rank, std::int64_t size) {
    if (auto fault = faultOf(rank, size)) {
        return *fault;
    }
    if (2 * rank == size + 1) {
        return 0.0; // the middle one, by symmetry
    }
    return meanAtOrderStatistic(rank, size, [](double z) { return z; });
}

Result<double> expectedMaximum(std::int64_t size) {
    return expectedOrderStatistic(1, size);
}

Result<double> expectedMeanOfBest(std::int64_t best, std::int64_t size) {
    if (auto fault = faultOf(best, size)) {
        return *fault;
    }
    if (best == size) {
        return 0.0;
    }
    // A value z is among the best when fewer than `best` of the others exceed it. Integrating
    // z f(z) P(fewer than `best` exceed z) by parts leaves the mean height of the normal curve at
    // the `best`-th largest of the others.
    const double height = meanAtOrderStatistic(best, size - 1, standardNormalDensity);
    return static_cast<double>(size) / static_cast<double>(best) * height;
}

Result<double> blomScore(std::int64_t rank, std::int64_t size) {
    if (auto fault = faultOf(rank, size)) {
        return *fault;
    }
    const auto n = static_cast<double>(size);
    return standardNormalUpperQuantile((static_cast<double>(rank) - .375) / (n + .25));
}

Result<double> rangeProbability(double range, int size) {
    if (size < 2 || size > 1000) {
        return unusable("A range needs at least two values.", "Ask for 2 to 1000 values.");
    }
    if (std::isnan(range)) {
        return unusable("The range asked about is not a number.", "Give a number.");
    }
    if (range <= 0) {
        return 0.0;
    }
    // P(R <= w) = k int f(z) [F(z + w) - F(z)]^(k-1) dz, z the smallest of the k.
    constexpr double kEdge = 9;
    const auto density = [&](double z) {
        return standardNormalDensity(z) *
               std::pow(standardNormalAbove(z) - standardNormalAbove(z + range), size - 1);
    };
    return std::min(1.0, size * integrate(density, -kEdge, kEdge, 1e-13).value);
}

Result<double> rangeQuantile(double probability, int size) {
    if (!(probability > 0 && probability < 1)) {
        return unusable("A probability must lie between 0 and 1.", "Give one that does.");
    }
    if (const auto tried = rangeProbability(1, size); !tried) {
        return tried.problem();
    }
    double low = 0;
    double high = 40;
    for (int i = 0; i < 50; ++i) {
        const double middle = (low + high) / 2;
        (*rangeProbability(middle, size) < probability ? low : high) = middle;
    }
    return (low + high) / 2;
}

} // namespace pipwright
