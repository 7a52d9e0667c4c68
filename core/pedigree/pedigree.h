#pragma once

#include "core/units/result.h"

#include <functional>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace pipwright {

/// The parents of one genotype; either may be unknown, and both may be the same (selfing).
struct Parents {
    std::optional<int> seed;
    std::optional<int> pollen;

    bool operator==(const Parents&) const = default;
};

/// What a genotype is called in a message.
using GenotypeName = std::function<std::string(int)>;

/// A ring of genotypes, each a child of the one before it and the first a child of the last;
/// nothing when nobody is their own ancestor. A parent that is no index of the list is ignored.
std::optional<std::vector<int>> ringAmong(std::span<const Parents> parents);

/// Who descends from whom, by dense indices 0 to size - 1. Nobody is their own ancestor, so
/// whatever is asked of a Pedigree has an answer.
class Pedigree {
  public:
    Pedigree() = default;
    /// Refuses a ring, naming its members, and a parent that is no index of the list.
    static Result<Pedigree> of(std::vector<Parents> parents, const GenotypeName& nameOf);

    [[nodiscard]] int size() const { return static_cast<int>(m_parents.size()); }
    [[nodiscard]] const Parents& parentsOf(int genotype) const {
        return m_parents.at(static_cast<std::size_t>(genotype));
    }
    /// Every genotype once, parents before their children.
    [[nodiscard]] const std::vector<int>& parentsFirst() const { return m_order; }
    /// Where the genotype stands in parentsFirst().
    [[nodiscard]] int rankOf(int genotype) const {
        return m_rank.at(static_cast<std::size_t>(genotype));
    }

  private:
    std::vector<Parents> m_parents;
    std::vector<int> m_order;
    std::vector<int> m_rank;
};

/// The generation of each genotype: 0 without known parents, else one more than the later parent.
std::vector<int> generations(const Pedigree& pedigree);

} // namespace pipwright
