#pragma once

#include "core/units/result.h"

#include <cstdint>
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

struct PollenPool;

/// One of the two parents of every genotype, by index.
using ParentColumn = std::vector<std::int32_t>;

/// What stands in a ParentColumn where the parent is unknown.
inline constexpr std::int32_t kUnknownParent = -1;

/// Who descends from whom, by dense indices 0 to size - 1. Nobody is their own ancestor, so
/// whatever is asked of a Pedigree has an answer.
class Pedigree {
  public:
    Pedigree() = default;
    /// Refuses a ring, naming its members, and a parent that is no index of the list.
    static Result<Pedigree> of(const std::vector<Parents>& parents, const GenotypeName& nameOf);
    /// The same from two columns of equal length; kUnknownParent where nobody is known.
    static Result<Pedigree> ofColumns(ParentColumn seed, ParentColumn pollen,
                                      const GenotypeName& nameOf);

    [[nodiscard]] int size() const { return static_cast<int>(m_seed.size()); }
    [[nodiscard]] Parents parentsOf(int genotype) const {
        const auto at = static_cast<std::size_t>(genotype);
        return {known(m_seed.at(at)), known(m_pollen.at(at))};
    }
    /// The parents as columns, kUnknownParent where nobody is known.
    [[nodiscard]] const ParentColumn& seedParents() const { return m_seed; }
    [[nodiscard]] const ParentColumn& pollenParents() const { return m_pollen; }

    /// Every genotype has a rank, 0 to size - 1, and parents stand before their children.
    [[nodiscard]] int atRank(int rank) const {
        return m_order.empty() ? rank : m_order[static_cast<std::size_t>(rank)];
    }
    [[nodiscard]] int rankOf(int genotype) const {
        return m_rank.empty() ? genotype : m_rank[static_cast<std::size_t>(genotype)];
    }
    /// Every genotype once, by rank.
    [[nodiscard]] std::vector<int> parentsFirst() const;

    /// The relationship of a member without known parents to itself: 1, but for a pollen pool
    /// (pollen_pools.h) the smaller, the more fathers it stands for.
    [[nodiscard]] double founderVariance(int genotype) const;
    /// The same members, to whom the given ones are no longer parents: unknown ones stand there.
    [[nodiscard]] Pedigree withoutChildrenOf(const std::function<bool(int)>& isOne) const;

    /// Pollen pools are the last members, from this one on; size() when there is none.
    [[nodiscard]] int firstPool() const { return m_firstPool; }

  private:
    friend Result<Pedigree> withPollenPools(const Pedigree& pedigree,
                                            std::span<const PollenPool> pools,
                                            const GenotypeName& nameOf);

    static std::optional<int> known(std::int32_t parent) {
        return parent == kUnknownParent ? std::nullopt : std::optional<int>{parent};
    }
    [[nodiscard]] bool isSortedAlready() const;

    ParentColumn m_seed;
    ParentColumn m_pollen;
    std::vector<int> m_order; ///< empty when everybody's rank is their own index
    std::vector<int> m_rank;
    int m_firstPool = 0; ///< pools stand last; equals the size when there is none
    std::vector<double> m_poolVariance;
};

/// The generation of each genotype: 0 without known parents, else one more than the later parent.
std::vector<int> generations(const Pedigree& pedigree);

} // namespace pipwright
