#include "core/statistics/lattice.h"

#include <algorithm>
#include <cmath>
#include <random>

namespace pipwright {

namespace {

std::vector<double> rootsOfPrimes(std::size_t count) {
    std::vector<unsigned> primes;
    for (unsigned candidate = 2; primes.size() < count; ++candidate) {
        const bool prime = std::none_of(primes.begin(), primes.end(),
                                        [&](unsigned p) { return candidate % p == 0; });
        if (prime) {
            primes.push_back(candidate);
        }
    }
    std::vector<double> roots;
    roots.reserve(count);
    for (const unsigned prime : primes) {
        const double root = std::sqrt(static_cast<double>(prime));
        roots.push_back(root - std::floor(root));
    }
    return roots;
}

} // namespace

ShiftedLattice::ShiftedLattice(std::size_t dimensions) : m_steps(rootsOfPrimes(dimensions)) {
    std::mt19937_64 generator(1958);
    for (std::size_t i = 0; i < dimensions * kShifts; ++i) {
        m_shifts.push_back(static_cast<double>(generator() >> 11) * 0x1p-53);
    }
}

void ShiftedLattice::point(std::size_t number, std::size_t shift,
                           std::vector<double>& coordinates) const {
    const std::size_t dimensions = m_steps.size();
    coordinates.resize(dimensions);
    for (std::size_t i = 0; i < dimensions; ++i) {
        const double raw =
            static_cast<double>(number) * m_steps[i] + m_shifts[shift * dimensions + i];
        const double folded = std::abs(2 * (raw - std::floor(raw)) - 1);
        coordinates[i] = std::clamp(folded, 1e-15, 1 - 1e-15);
    }
}

LatticeEstimate estimateFromShifts(const std::vector<double>& means) {
    const auto count = static_cast<double>(means.size());
    double sum = 0;
    for (const double mean : means) {
        sum += mean;
    }
    const double centre = sum / count;
    double squares = 0;
    for (const double mean : means) {
        squares += (mean - centre) * (mean - centre);
    }
    return {centre, 3 * std::sqrt(squares / (count * (count - 1)))};
}

} // namespace pipwright
