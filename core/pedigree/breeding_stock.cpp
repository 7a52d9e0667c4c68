#include "core/pedigree/breeding_stock.h"

#include <algorithm>
#include <utility>

namespace pipwright {

namespace {

using Numbers = std::vector<std::int32_t>;

/// How many litters each genotype has, as far as 255: enough to tell who has many. One byte a
/// genotype, as it is fresh memory that a large pedigree waits for.
class LitterCounts {
  public:
    explicit LitterCounts(const Pedigree& pedigree)
        : m_counts(static_cast<std::size_t>(pedigree.size()) + 1, 0) {
        const ParentColumn& seed = pedigree.seedParents();
        const ParentColumn& pollen = pedigree.pollenParents();
        for (std::size_t child = 0; child < seed.size(); ++child) {
            if (child == 0 || seed[child] != seed[child - 1] ||
                pollen[child] != pollen[child - 1]) {
                count(seed[child]);
                count(pollen[child]);
            }
        }
    }

    [[nodiscard]] unsigned of(std::int32_t genotype) const { return m_counts[placeOf(genotype)]; }

  private:
    // The unknown parent, -1, has the first place.
    static std::size_t placeOf(std::int32_t parent) { return static_cast<std::size_t>(parent) + 1; }

    void count(std::int32_t parent) {
        constexpr unsigned char kMany = 255;
        unsigned char& held = m_counts[placeOf(parent)];
        held = static_cast<unsigned char>(held + (held < kMany ? 1 : 0));
    }

    std::vector<unsigned char> m_counts;
};

/// Numbers the parents by generation.
class Numbering {
  public:
    Numbering(const Pedigree& pedigree, const LitterCounts& counts)
        : m_pedigree(pedigree),
          m_numberOf(static_cast<std::size_t>(pedigree.size()) + 1, kUnknownParent) {
        for (int rank = 0; rank < pedigree.size(); ++rank) {
            const std::int32_t member = pedigree.atRank(rank);
            if (counts.of(member) > 0) {
                m_members.push_back(member);
            }
        }
        const Numbers ends = sortByGeneration();
        for (std::size_t generation = 0, first = 0; generation + 1 < ends.size(); ++generation) {
            const auto end = static_cast<std::size_t>(ends[generation]);
            if (generation > 0) {
                putSibsTogether(first, end);
            }
            for (; first < end; ++first) {
                numberOf(m_members[first]) = static_cast<std::int32_t>(first);
            }
        }
    }

    [[nodiscard]] const Numbers& members() const { return m_members; }
    /// kUnknownParent for the unknown parent, and for who is nobody's parent.
    [[nodiscard]] std::int32_t of(std::int32_t genotype) const {
        return m_numberOf[static_cast<std::size_t>(genotype) + 1];
    }

  private:
    std::int32_t& numberOf(std::int32_t genotype) {
        return m_numberOf[static_cast<std::size_t>(genotype) + 1];
    }

    /// Sibs share ancestors, and so the walks over them.
    void putSibsTogether(std::size_t first, std::size_t end) {
        const auto parents = [this](std::int32_t member) {
            const auto at = static_cast<std::size_t>(member);
            const std::int32_t seed = of(m_pedigree.seedParents()[at]);
            const std::int32_t pollen = of(m_pedigree.pollenParents()[at]);
            return std::pair{std::max(seed, pollen), std::min(seed, pollen)};
        };
        std::sort(
            m_members.begin() + static_cast<std::ptrdiff_t>(first),
            m_members.begin() + static_cast<std::ptrdiff_t>(end),
            [&](std::int32_t one, std::int32_t other) { return parents(one) < parents(other); });
    }

    /// Returns where each generation ends.
    Numbers sortByGeneration() {
        // Until it has its number, a parent holds its generation there.
        Numbers next{0};
        for (const std::int32_t member : m_members) {
            const auto at = static_cast<std::size_t>(member);
            const std::int32_t generation =
                1 + std::max(of(m_pedigree.seedParents()[at]), of(m_pedigree.pollenParents()[at]));
            numberOf(member) = generation;
            const auto after = static_cast<std::size_t>(generation) + 1;
            if (after >= next.size()) {
                next.resize(after + 1, 0);
            }
            ++next[after];
        }
        for (std::size_t generation = 1; generation < next.size(); ++generation) {
            next[generation] += next[generation - 1];
        }
        Numbers sorted(m_members.size());
        for (const std::int32_t member : m_members) {
            auto& place = next[static_cast<std::size_t>(numberOf(member))];
            sorted[static_cast<std::size_t>(place++)] = member;
        }
        m_members = std::move(sorted);
        return next;
    }

    const Pedigree& m_pedigree;
    Numbers m_members;
    Numbers m_numberOf;
};

/// Finds the litters and the distinct crosses among them.
class CrossFinder {
  public:
    CrossFinder(const Pedigree& pedigree, const LitterCounts& counts, const Numbering& numbering,
                BreedingStock& stock)
        : m_pedigree(pedigree), m_counts(counts), m_numbering(numbering), m_stock(stock) {}

    void run() {
        findLitters();
        tellApart();
        for (std::int32_t& own : m_stock.ownCross) {
            own = own < 0 ? own : m_stock.litters[static_cast<std::size_t>(own)].cross;
        }
    }

  private:
    struct Pair {
        std::int32_t keeper;
        std::int32_t mate;
    };

    [[nodiscard]] Pair parentsOf(std::int32_t child) const {
        const std::int32_t seed = m_pedigree.seedParents()[static_cast<std::size_t>(child)];
        const std::int32_t pollen = m_pedigree.pollenParents()[static_cast<std::size_t>(child)];
        const Pair pair{m_numbering.of(seed), m_numbering.of(pollen)};
        const unsigned fromSeed = m_counts.of(seed);
        const unsigned fromPollen = m_counts.of(pollen);
        const bool seedKeeps =
            fromSeed != fromPollen ? fromSeed > fromPollen : pair.keeper < pair.mate;
        return seedKeeps ? pair : Pair{pair.mate, pair.keeper};
    }

    /// Until the crosses are known a parent's ownCross is its litter.
    void findLitters() {
        const ParentColumn& seed = m_pedigree.seedParents();
        const ParentColumn& pollen = m_pedigree.pollenParents();
        const auto size = static_cast<std::int32_t>(seed.size());
        m_stock.ownCross.assign(m_stock.members.size(), -1);
        m_starts.assign(m_stock.members.size() + 1, 0);
        for (std::int32_t child = 0; child < size;) {
            const auto at = static_cast<std::size_t>(child);
            std::int32_t end = child + 1;
            if (seed[at] == kUnknownParent || pollen[at] == kUnknownParent) {
                child = end;
                continue;
            }
            while (end < size && seed[static_cast<std::size_t>(end)] == seed[at] &&
                   pollen[static_cast<std::size_t>(end)] == pollen[at]) {
                ++end;
            }
            const auto litter = static_cast<std::int32_t>(m_stock.litters.size());
            for (std::int32_t sib = child; sib < end; ++sib) {
                if (m_numbering.of(sib) != kUnknownParent) {
                    m_stock.ownCross[static_cast<std::size_t>(m_numbering.of(sib))] = litter;
                }
            }
            ++m_starts[static_cast<std::size_t>(parentsOf(child).keeper) + 1];
            m_stock.litters.push_back({child, end, -1});
            child = end;
        }
    }

    void tellApart() {
        struct Birth {
            std::int32_t mate;
            std::int32_t litter;
        };
        const std::size_t parents = m_stock.members.size();
        for (std::size_t parent = 1; parent <= parents; ++parent) {
            m_starts[parent] += m_starts[parent - 1];
        }
        std::vector<Birth> births(m_stock.litters.size()); // keeper by keeper
        for (std::size_t litter = 0; litter < births.size(); ++litter) {
            const Pair pair = parentsOf(m_stock.litters[litter].first);
            std::int32_t& next = m_starts[static_cast<std::size_t>(pair.keeper)];
            births[static_cast<std::size_t>(next++)] = {pair.mate,
                                                        static_cast<std::int32_t>(litter)};
        }
        // Now m_starts says where the births of each parent end.
        m_stock.crossStarts.assign(1, 0);
        m_stock.crossStarts.reserve(parents + 1);
        Numbers crossWith(parents, -1); // a mate's newest cross; not this keeper's if before it
        std::size_t birth = 0;
        for (std::size_t keeper = 0; keeper < parents; ++keeper) {
            const auto first = static_cast<std::int32_t>(m_stock.mates.size());
            for (; birth < static_cast<std::size_t>(m_starts[keeper]); ++birth) {
                auto& cross = crossWith[static_cast<std::size_t>(births[birth].mate)];
                if (cross < first) {
                    cross = static_cast<std::int32_t>(m_stock.mates.size());
                    m_stock.mates.push_back(births[birth].mate);
                }
                m_stock.litters[static_cast<std::size_t>(births[birth].litter)].cross = cross;
            }
            m_stock.crossStarts.push_back(static_cast<std::int32_t>(m_stock.mates.size()));
        }
    }

    const Pedigree& m_pedigree;
    const LitterCounts& m_counts;
    const Numbering& m_numbering;
    BreedingStock& m_stock;
    Numbers m_starts;
};

} // namespace

BreedingStock breedingStockOf(const Pedigree& pedigree) {
    BreedingStock stock;
    const LitterCounts counts{pedigree};
    const Numbering numbering{pedigree, counts};
    stock.members = numbering.members();
    stock.seed.reserve(stock.members.size());
    stock.pollen.reserve(stock.members.size());
    for (const std::int32_t member : stock.members) {
        const auto at = static_cast<std::size_t>(member);
        stock.seed.push_back(numbering.of(pedigree.seedParents()[at]));
        stock.pollen.push_back(numbering.of(pedigree.pollenParents()[at]));
    }
    CrossFinder{pedigree, counts, numbering, stock}.run();
    return stock;
}

std::vector<double> spreadOverLitters(const BreedingStock& stock, std::size_t genotypes,
                                      const std::vector<double>& ofCross, double otherwise) {
    std::vector<double> result(genotypes, otherwise);
    for (const BreedingStock::Litter& litter : stock.litters) {
        std::fill(result.begin() + litter.first, result.begin() + litter.end,
                  ofCross[static_cast<std::size_t>(litter.cross)]);
    }
    return result;
}

} // namespace pipwright
