#include "core/pedigree/pedigree.h"

#include <algorithm>
#include <limits>
#include <numeric>

namespace pipwright {

namespace {

enum class Mark : unsigned char { untouched, open, done };

/// A walk from children to parents, without recursion since a pedigree may be deep.
class Walk {
  public:
    Walk(std::span<const std::int32_t> seed, std::span<const std::int32_t> pollen)
        : m_seed(seed), m_pollen(pollen), m_marks(seed.size(), Mark::untouched) {
        m_order.reserve(seed.size());
    }

    void run() {
        for (int start = 0; start < static_cast<int>(m_seed.size()) && m_ring.empty(); ++start) {
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
        int next = 0; // the parent to look at next
    };

    Mark& markOf(int genotype) { return m_marks[static_cast<std::size_t>(genotype)]; }

    void climbFrom(int start) {
        m_path.assign(1, {start});
        markOf(start) = Mark::open;
        while (!m_path.empty()) {
            Step& step = m_path.back();
            if (step.next == 2) {
                markOf(step.genotype) = Mark::done;
                m_order.push_back(step.genotype);
                m_path.pop_back();
                continue;
            }
            const std::int32_t parent =
                (step.next++ == 0 ? m_seed : m_pollen)[static_cast<std::size_t>(step.genotype)];
            if (parent == kUnknownParent || markOf(parent) == Mark::done) {
                continue;
            }
            if (markOf(parent) == Mark::open) {
                keepRing(parent);
                return;
            }
            markOf(parent) = Mark::open;
            m_path.push_back({parent});
        }
    }

    void keepRing(int first) {
        // The path climbs from child to parent and ends at a child of its own member `first`.
        m_ring.push_back(first);
        for (auto step = m_path.rbegin(); step->genotype != first; ++step) {
            m_ring.push_back(step->genotype);
        }
    }

    std::span<const std::int32_t> m_seed;
    std::span<const std::int32_t> m_pollen;
    std::vector<Mark> m_marks;
    std::vector<Step> m_path;
    std::vector<int> m_order;
    std::vector<int> m_ring;
};

struct Columns {
    ParentColumn seed;
    ParentColumn pollen;
};

/// The parents as columns. What is no index of the list becomes `outside`.
Columns columnsOf(std::span<const Parents> parents, std::int32_t outside) {
    const auto size = static_cast<int>(parents.size());
    const auto inColumn = [&](std::optional<int> parent) {
        return !parent ? kUnknownParent : *parent >= 0 && *parent < size ? *parent : outside;
    };
    Columns columns;
    columns.seed.reserve(parents.size());
    columns.pollen.reserve(parents.size());
    for (const Parents& both : parents) {
        columns.seed.push_back(inColumn(both.seed));
        columns.pollen.push_back(inColumn(both.pollen));
    }
    return columns;
}

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
    const Columns columns = columnsOf(parents, kUnknownParent);
    Walk walk{columns.seed, columns.pollen};
    walk.run();
    if (walk.ring().empty()) {
        return std::nullopt;
    }
    return walk.ring();
}

Result<Pedigree> Pedigree::of(const std::vector<Parents>& parents, const GenotypeName& nameOf) {
    constexpr std::int32_t kOutside = std::numeric_limits<std::int32_t>::max();
    Columns columns = columnsOf(parents, kOutside);
    return ofColumns(std::move(columns.seed), std::move(columns.pollen), nameOf);
}

Result<Pedigree> Pedigree::ofColumns(ParentColumn seed, ParentColumn pollen,
                                     const GenotypeName& nameOf) {
    if (seed.size() != pollen.size() ||
        seed.size() >= static_cast<std::size_t>(std::numeric_limits<std::int32_t>::max())) {
        return Problem{ProblemCode::badInput,
                       "The columns of seed and pollen parents do not go together.",
                       "Give both as many lines as there are genotypes.", ""};
    }
    const auto size = static_cast<std::int32_t>(seed.size());
    for (std::size_t child = 0; child < seed.size(); ++child) {
        if (seed[child] < kUnknownParent || seed[child] >= size || pollen[child] < kUnknownParent ||
            pollen[child] >= size) {
            return Problem{ProblemCode::badInput,
                           "A parent of " + nameOf(static_cast<int>(child)) +
                               " is not among the genotypes.",
                           "Add the parent, or leave it unknown.", ""};
        }
    }
    Pedigree pedigree;
    pedigree.m_seed = std::move(seed);
    pedigree.m_pollen = std::move(pollen);
    pedigree.m_firstPool = size;
    if (pedigree.isSortedAlready()) {
        return pedigree;
    }
    Walk walk{pedigree.m_seed, pedigree.m_pollen};
    walk.run();
    if (!walk.ring().empty()) {
        return ringProblem(walk.ring(), nameOf);
    }
    pedigree.m_order = std::move(walk.order());
    pedigree.m_rank.resize(pedigree.m_order.size());
    for (std::int32_t rank = 0; rank < size; ++rank) {
        const int genotype = pedigree.m_order[static_cast<std::size_t>(rank)];
        pedigree.m_rank[static_cast<std::size_t>(genotype)] = rank;
    }
    return pedigree;
}

bool Pedigree::isSortedAlready() const {
    bool sorted = true; // without a branch, so that the loop is a fast one
    for (std::size_t child = 0; child < m_seed.size(); ++child) {
        const auto number = static_cast<std::int32_t>(child);
        sorted &= (m_seed[child] < number) & (m_pollen[child] < number);
    }
    return sorted;
}

std::vector<int> Pedigree::parentsFirst() const {
    if (!m_order.empty()) {
        return m_order;
    }
    std::vector<int> order(m_seed.size());
    std::iota(order.begin(), order.end(), 0);
    return order;
}

Pedigree Pedigree::withoutChildrenOf(const std::function<bool(int)>& isOne) const {
    Pedigree rest(*this); // ranks stay right where links are left out
    for (ParentColumn* parents : {&rest.m_seed, &rest.m_pollen}) {
        for (std::int32_t& parent : *parents) {
            if (parent != kUnknownParent && isOne(parent)) {
                parent = kUnknownParent;
            }
        }
    }
    return rest;
}

double Pedigree::founderVariance(int genotype) const {
    return genotype < m_firstPool
               ? 1.0
               : m_poolVariance.at(static_cast<std::size_t>(genotype - m_firstPool));
}

std::vector<int> generations(const Pedigree& pedigree) {
    std::vector<int> result(static_cast<std::size_t>(pedigree.size()), 0);
    for (const int genotype : pedigree.parentsFirst()) {
        int& generation = result[static_cast<std::size_t>(genotype)];
        const Parents both = pedigree.parentsOf(genotype);
        for (const std::optional<int> parent : {both.seed, both.pollen}) {
            if (parent) {
                generation = std::max(generation, result[static_cast<std::size_t>(*parent)] + 1);
            }
        }
    }
    return result;
}

} // namespace pipwright
