#pragma once

#include <string>
#include <utility>
#include <vector>

namespace pipwright {

/// A pedigree with its additive relationships and their inverse as computed outside.
struct KnownRelationships {
    std::string name;
    /// Seed and pollen parent, 0 for an unknown one; the first member is number 1.
    std::vector<std::pair<int, int>> parents;
    std::vector<double> relationships; ///< A: its lower triangle, row by row
    std::vector<double> inverse;       ///< of A, the same way; ten decimals
};

const std::vector<KnownRelationships>& knownRelationships();

} // namespace pipwright
