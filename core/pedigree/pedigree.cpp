#include "core/pedigree/pedigree.h"

#include <algorithm>

namespace pipwright {

namespace {

enum class Mark { untouched, open, done };

/// A walk from children to parents, without recursion since a pedigree may be deep.
class Walk {
  public:
    explicit Walk(std::span<const Parents> parents)
        : m_parents(parents), m_marks(parents.size(), Mark::untouched) {
        m_order.reserve(parents.size());
    }

    void run() {
        for (int start = 0; start < static_cast<int>(m_parents.size()) && m_ring.empty(); ++start) {
            if (markOf(start) == Mark::untouched) {
                climbFrom(start);
            }
        }
    }

    /// Parents first; of use when there is no ring.
    std::vector<int>& order() { return m_order; }
    /// Parent first; empty when there is none.
    [[nodiscard]] const std::vector<int>& ring() const { return m_ring; }

  private:
    struct Step {
        int genotype;
        std::size_t next = 0; // the parent to look at next
    };

    Mark& markOf(int genotype) { return m_marks[static_cast<std::size_t>(genotype)]; }

    bool isIndex(std::optional<int> parent) const {
        return parent && *parent >= 0 && *parent < static_cast<int>(m_parents.size());
    }

    void climbFrom(int start) {
        std::vector<Step> path{{start}};
        markOf(start) = Mark::open;
        while (!path.empty()) {
            Step& step = path.back();
            if (step.next == 2) {
                markOf(step.genotype) = Mark::done;
                m_order.push_back(step.genotype);
                path.pop_back();
                continue;
            }
            const Parents& both = m_parents[static_cast<std::size_t>(step.genotype)];
            const std::optional<int> parent = step.next++ == 0 ? both.seed : both.pollen;
            if (!isIndex(parent) || markOf(*parent) == Mark::done) {
                continue;
            }
            if (markOf(*parent) == Mark::open) {
                keepRing(path, *parent);
                return;
            }
            markOf(*parent) = Mark::open;
            path.push_back({*parent});
        }
    }

    void keepRing(const std::vector<Step>& path, int first) {
        // The path climbs from child to parent and ends at a child of its own member `first`.
        m_ring.push_back(first);
        for (auto step = path.rbegin(); step->genotype != first; ++step) {
            m_ring.push_back(step->genotype);
        }
    }

    std::span<const Parents> m_parents;
    std::vector<Mark> m_marks;
    std::vector<int> m_order;
    std::vector<int> m_ring;
};

Problem ringProblem(const std::vector<int>& ring, const GenotypeName& nameOf) {
    constexpr std::size_t kMostNamed = 12;
    std::string what = nameOf(ring.front()) + " would be its own ancestor: ";
    const std::size_t named = std::min(ring.size(), kMostNamed);
    for (std::size_t i = 0; i < named; ++i) {
        what += nameOf(ring[i]) + " is a parent of ";
    }
    if (named < ring.size()) {
        what += "(" + std::to_string(ring.size() - named) + " more) and so of ";
    }
    return {ProblemCode::badInput, what + nameOf(ring.front()) + ".",
            "Correct one of these parents, or leave it unknown.", ""};
}

} // namespace

std::optional<std::vector<int>> ringAmong(std::span<const Parents> parents) {
    Walk walk{parents};
    walk.run();
    if (walk.ring().empty()) {
        return std::nullopt;
    }
    return walk.ring();
}

Result<Pedigree> Pedigree::of(std::vector<Parents> parents, const GenotypeName& nameOf) {
    const int size = static_cast<int>(parents.size());
    for (int child = 0; child < size; ++child) {
        const Parents& both = parents[static_cast<std::size_t>(child)];
        for (const std::optional<int> parent : {both.seed, both.pollen}) {
            if (parent && (*parent < 0 || *parent >= size)) {
                return Problem{ProblemCode::badInput,
                               "A parent of " + nameOf(child) + " is not among the genotypes.",
                               "Add the parent, or leave it unknown.", ""};
            }
        }
    }
    Walk walk{parents};
    walk.run();
    if (!walk.ring().empty()) {
        return ringProblem(walk.ring(), nameOf);
    }
    Pedigree pedigree;
    pedigree.m_order = std::move(walk.order());
    pedigree.m_rank.resize(parents.size());
    for (int rank = 0; rank < size; ++rank) {
        const int genotype = pedigree.m_order[static_cast<std::size_t>(rank)];
        pedigree.m_rank[static_cast<std::size_t>(genotype)] = rank;
    }
    pedigree.m_parents = std::move(parents);
    return pedigree;
}

std::vector<int> generations(const Pedigree& pedigree) {
    std::vector<int> result(static_cast<std::size_t>(pedigree.size()), 0);
    for (const int genotype : pedigree.parentsFirst()) {
        int& generation = result[static_cast<std::size_t>(genotype)];
        const Parents& both = pedigree.parentsOf(genotype);
        for (const std::optional<int> parent : {both.seed, both.pollen}) {
            if (parent) {
                generation = std::max(generation, result[static_cast<std::size_t>(*parent)] + 1);
            }
        }
    }
    return result;
}

} // namespace pipwright
