#pragma once

#include "core/pedigree/pedigree.h"

#include <cstddef>
#include <utility>
#include <vector>

namespace pipwright {

/// The additive relationship a of every pair of genotypes (twice their coancestry; 1 + F on the
/// diagonal). It takes n (n + 1) / 2 numbers: 5 MB for 1,100 genotypes.
class RelationshipMatrix {
  public:
    /// By the tabular method, parents first (Henderson 1976). Diploid; unknown parents unrelated.
    explicit RelationshipMatrix(const Pedigree& pedigree);

    [[nodiscard]] int size() const { return m_size; }
    [[nodiscard]] double at(int one, int other) const { return m_cells[cellOf(one, other)]; }

  private:
    static std::size_t cellOf(int one, int other) {
        const auto low = static_cast<std::size_t>(one < other ? one : other);
        const auto high = static_cast<std::size_t>(one < other ? other : one);
        return high * (high + 1) / 2 + low;
    }

    int m_size;
    std::vector<double> m_cells;
};

} // namespace pipwright
