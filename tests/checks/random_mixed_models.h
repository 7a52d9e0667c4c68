#pragma once

#include "core/statistics/mixed_model_fit.h"

#include <cstdint>
#include <random>

/// Mixed models thrown by dice, the same ones for the same seed.
namespace pipwright {

/// Numbers that do not depend on a library's idea of a distribution.
class Dice {
  public:
    explicit Dice(std::uint64_t seed) : m_engine(seed) {}
    int upTo(int count) { return static_cast<int>(m_engine() % static_cast<unsigned>(count)); }
    bool oneIn(int count) { return upTo(count) == 0; }
    double between(double low, double high) {
        return low + (high - low) * static_cast<double>(m_engine() >> 11) * 0x1p-53;
    }
    double normal() {
        double sum = 0;
        for (int i = 0; i < 12; ++i) {
            sum += between(-.5, .5);
        }
        return sum;
    }
    std::mt19937_64& engine() { return m_engine; }

  private:
    std::mt19937_64 m_engine;
};

/// Any mixture of what a model can have: fixed factors and covariates, some of them collinear,
/// random terms with slopes or a pedigree, levels without records, weights, residual groups. The
/// response is noise.
MixedModel randomModel(Dice& dice);

/// Variances for it, some of them 0.
VarianceValues randomVariances(Dice& dice, const MixedModel& model);

/// An animal model of so many members of a pedigree with selfings, three records a member, with
/// tasters and years, simulated with real differences.
MixedModel randomAnimalModel(Dice& dice, int size);

} // namespace pipwright
