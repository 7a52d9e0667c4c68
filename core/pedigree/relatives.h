#pragma once

#include "core/pedigree/pedigree.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace pipwright {

/// The ancestors of one genotype, laid out for drawing: generation 0 is the genotype itself,
/// generation g has 2^g places, and the parents of place p are the places 2p (seed parent) and
/// 2p + 1 (pollen parent) of the next generation. A place is empty where the parent is unknown.
class Ancestry {
  public:
    /// Generations 0 to `depth`; the depth is kept within 0 and 12.
    Ancestry(const Pedigree& pedigree, int genotype, int depth);

    [[nodiscard]] int depth() const { return static_cast<int>(m_generations.size()) - 1; }
    [[nodiscard]] const std::vector<std::optional<int>>& generation(int number) const {
        return m_generations.at(static_cast<std::size_t>(number));
    }

  private:
    std::vector<std::vector<std::optional<int>>> m_generations;
};

/// The nearest kin of one genotype, each list by index.
struct Relatives {
    std::vector<int> fullSibs;  ///< both parents known and the same, in either role
    std::vector<int> halfSibs;  ///< exactly one known parent in common, in either role
    std::vector<int> offspring; ///< in either role
};

Relatives relativesOf(const Pedigree& pedigree, int genotype);

} // namespace pipwright
