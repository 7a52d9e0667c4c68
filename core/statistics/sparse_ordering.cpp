#include "core/statistics/sparse_ordering.h"

#include "core/statistics/subscript.h"

#include <Eigen/OrderingMethods>
#include <Eigen/SparseCore>
#include <algorithm>
#include <cmath>
#include <metis.h>
#include <numeric>
#include <optional>

namespace pipwright {

namespace {

/// The state of an order being built: which nodes still wait, and how many waiting neighbours
/// each has.
struct Waiting {
    const NodeGraph& graph;
    std::vector<bool> waits;
    std::vector<std::int32_t> degree;
    std::vector<std::int32_t> order; ///< nodes eliminated so far

    explicit Waiting(const NodeGraph& source)
        : graph(source), waits(at(source.size()), true), degree(at(source.size())) {
        for (std::int32_t node = 0; node < source.size(); ++node) {
            degree[at(node)] = static_cast<std::int32_t>(source.of(node).size());
        }
    }
    void remove(std::int32_t node) {
        waits[at(node)] = false;
        for (const std::int32_t neighbour : graph.of(node)) {
            --degree[at(neighbour)];
        }
    }
};

/// Step 1: takes the nodes of the dense tail out, most coupled last.
std::vector<std::int32_t> takeTail(Waiting& waiting, std::int32_t lastNodes) {
    const std::int32_t count = waiting.graph.size();
    const double limit = std::max(16.0, 10 * std::sqrt(static_cast<double>(count)));
    std::vector<std::int32_t> tail;
    for (std::int32_t node = 0; node < count - lastNodes; ++node) {
        if (waiting.degree[at(node)] > limit) {
            tail.push_back(node);
        }
    }
    for (std::int32_t node = count - lastNodes; node < count; ++node) {
        tail.push_back(node);
    }
    for (const std::int32_t node : tail) {
        waiting.remove(node);
    }
    return tail;
}

/// Whether all waiting neighbours of a node are neighbours of each other; looks at few only.
bool isSimplicial(const Waiting& waiting, std::int32_t node) {
    constexpr std::int32_t kMostNeighbours = 4;
    if (waiting.degree[at(node)] > kMostNeighbours) {
        return false;
    }
    std::int32_t found[kMostNeighbours];
    std::int32_t count = 0;
    for (const std::int32_t neighbour : waiting.graph.of(node)) {
        if (waiting.waits[at(neighbour)]) {
            found[count++] = neighbour;
        }
    }
    for (std::int32_t one = 0; one < count; ++one) {
        for (std::int32_t other = one + 1; other < count; ++other) {
            // Look through the shorter list.
            std::int32_t small = found[one];
            std::int32_t large = found[other];
            if (waiting.graph.of(small).size() > waiting.graph.of(large).size()) {
                std::swap(small, large);
            }
            const auto list = waiting.graph.of(small);
            if (!std::binary_search(list.begin(), list.end(), large)) {
                return false;
            }
        }
    }
    return true;
}

/// Step 2: eliminates what brings no new couplings, again and again.
void peel(Waiting& waiting) {
    std::vector<std::int32_t> queue;
    for (std::int32_t node = 0; node < waiting.graph.size(); ++node) {
        if (waiting.waits[at(node)]) {
            queue.push_back(node);
        }
    }
    for (std::size_t next = 0; next < queue.size(); ++next) {
        const std::int32_t node = queue[next];
        if (!waiting.waits[at(node)] || !isSimplicial(waiting, node)) {
            continue;
        }
        waiting.remove(node);
        waiting.order.push_back(node);
        for (const std::int32_t neighbour : waiting.graph.of(node)) {
            if (waiting.waits[at(neighbour)] && neighbour < node) {
                queue.push_back(neighbour);
            }
        }
    }
}

/// The nodes that still wait, as a graph of their own.
struct Core {
    std::vector<std::int32_t> nodes;
    std::vector<std::int32_t> starts{0};
    std::vector<std::int32_t> neighbours;

    explicit Core(const Waiting& waiting) {
        std::vector<std::int32_t> number(at(waiting.graph.size()), -1);
        for (std::int32_t node = 0; node < waiting.graph.size(); ++node) {
            if (waiting.waits[at(node)]) {
                number[at(node)] = size();
                nodes.push_back(node);
            }
        }
        for (const std::int32_t node : nodes) {
            for (const std::int32_t neighbour : waiting.graph.of(node)) {
                if (number[at(neighbour)] >= 0) {
                    neighbours.push_back(number[at(neighbour)]);
                }
            }
            starts.push_back(static_cast<std::int32_t>(neighbours.size()));
        }
    }
    [[nodiscard]] std::int32_t size() const { return static_cast<std::int32_t>(nodes.size()); }
    [[nodiscard]] std::span<const std::int32_t> of(std::int32_t node) const {
        return {neighbours.data() + starts[at(node)], at(starts[at(node) + 1] - starts[at(node)])};
    }
};

/// A large set of nodes no two of which are neighbours, those with few neighbours first; the rest
/// after them.
struct Split {
    std::vector<std::int32_t> independent;
    std::vector<std::int32_t> rest;
};

Split splitIndependent(const Core& core) {
    std::vector<std::int32_t> byDegree(at(core.size()));
    std::iota(byDegree.begin(), byDegree.end(), 0);
    std::stable_sort(byDegree.begin(), byDegree.end(), [&](std::int32_t one, std::int32_t other) {
        return core.of(one).size() < core.of(other).size();
    });
    std::vector<std::int8_t> state(at(core.size()), 0); // 1 independent, 2 neighbour of one
    Split split;
    for (const std::int32_t node : byDegree) {
        if (state[at(node)] != 0) {
            continue;
        }
        state[at(node)] = 1;
        split.independent.push_back(node);
        for (const std::int32_t neighbour : core.of(node)) {
            state[at(neighbour)] = 2;
        }
    }
    for (std::int32_t node = 0; node < core.size(); ++node) {
        if (state[at(node)] == 2) {
            split.rest.push_back(node);
        }
    }
    return split;
}

/// The share of pairs of the rest that eliminating the independent nodes couples, from an even
/// sample of its members.
double coupledShare(const Core& core, const Split& split) {
    constexpr std::size_t kSample = 64;
    if (split.rest.size() < 2) {
        return 1;
    }
    std::vector<std::int32_t> seen(at(core.size()), -1);
    std::vector<bool> isRest(at(core.size()), false);
    for (const std::int32_t node : split.rest) {
        isRest[at(node)] = true;
    }
    const std::size_t samples = std::min(kSample, split.rest.size());
    double met = 0;
    for (std::size_t sample = 0; sample < samples; ++sample) {
        const std::int32_t node = split.rest[sample * split.rest.size() / samples];
        const auto mark = [&](std::int32_t other) {
            if (other != node && isRest[at(other)] && seen[at(other)] != node) {
                seen[at(other)] = node;
                met += 1;
            }
        };
        for (const std::int32_t neighbour : core.of(node)) {
            mark(neighbour);
            if (!isRest[at(neighbour)]) {
                for (const std::int32_t second : core.of(neighbour)) {
                    mark(second);
                }
            }
        }
    }
    return met / (static_cast<double>(samples) * static_cast<double>(split.rest.size() - 1));
}

std::vector<std::int32_t> minimumDegree(const Core& core) {
    Eigen::SparseMatrix<char, Eigen::ColMajor, int> matrix(core.size(), core.size());
    matrix.resizeNonZeros(static_cast<Eigen::Index>(core.neighbours.size()));
    std::copy(core.starts.begin(), core.starts.end(), matrix.outerIndexPtr());
    std::copy(core.neighbours.begin(), core.neighbours.end(), matrix.innerIndexPtr());
    std::fill_n(matrix.valuePtr(), core.neighbours.size(), static_cast<char>(1));
    Eigen::PermutationMatrix<Eigen::Dynamic, Eigen::Dynamic, int> permutation;
    Eigen::internal::minimum_degree_ordering(matrix, permutation);
    const auto& indices = permutation.indices();
    return {indices.data(), indices.data() + core.size()};
}

std::optional<std::vector<std::int32_t>> nestedDissection(const Core& core) {
    static_assert(sizeof(idx_t) == sizeof(std::int32_t));
    idx_t count = core.size();
    std::vector<idx_t> starts = core.starts;
    std::vector<idx_t> neighbours = core.neighbours;
    std::vector<idx_t> order(at(count));
    std::vector<idx_t> inverse(at(count));
    idx_t options[METIS_NOPTIONS];
    METIS_SetDefaultOptions(options);
    options[METIS_OPTION_NUMBERING] = 0;
    options[METIS_OPTION_SEED] = 1;
    options[METIS_OPTION_NSEPS] = 1;
    if (METIS_NodeND(&count, starts.data(), neighbours.data(), nullptr, options, order.data(),
                     inverse.data()) != METIS_OK) {
        return std::nullopt;
    }
    return order;
}

/// The whole order: what was peeled, the core in the order given, the tail.
EliminationOrder complete(const Waiting& waiting, const Core& core,
                          const std::vector<std::int32_t>& coreOrder,
                          const std::vector<std::int32_t>& tail, std::size_t coreInTail) {
    EliminationOrder order;
    order.nodes = waiting.order;
    for (const std::int32_t node : coreOrder) {
        order.nodes.push_back(core.nodes[at(node)]);
    }
    order.nodes.insert(order.nodes.end(), tail.begin(), tail.end());
    order.tail = static_cast<std::int32_t>(tail.size() + coreInTail);
    return order;
}

} // namespace

SparseStructure chooseStructure(const NodeGraph& graph, std::int32_t lastNodes) {
    // Rough costs on any machine of today: an operation of a dense kernel against an edge handled
    // by an ordering, and how often a factor is made in a fit (with its inverse, three times).
    constexpr double kOperationsPerEdge = 6000;
    constexpr double kFactorisations = 24;
    constexpr double kNearlyFull = 0.55;
    constexpr std::int32_t kSmallRest = 48;

    Waiting waiting(graph);
    const std::vector<std::int32_t> tail = takeTail(waiting, lastNodes);
    peel(waiting);
    const Core core(waiting);
    if (core.size() == 0) {
        return structureFor(graph, complete(waiting, core, {}, tail, 0));
    }
    const Split split = splitIndependent(core);
    if (static_cast<std::int32_t>(split.rest.size()) <= kSmallRest ||
        coupledShare(core, split) > kNearlyFull) {
        std::vector<std::int32_t> order = split.independent;
        order.insert(order.end(), split.rest.begin(), split.rest.end());
        return structureFor(graph, complete(waiting, core, order, tail, split.rest.size()));
    }
    SparseStructure best =
        structureFor(graph, complete(waiting, core, minimumDegree(core), tail, 0));
    if (best.operations * kFactorisations >
        kOperationsPerEdge * static_cast<double>(core.neighbours.size())) {
        if (const auto order = nestedDissection(core)) {
            SparseStructure other = structureFor(graph, complete(waiting, core, *order, tail, 0));
            if (other.operations < best.operations) {
                best = std::move(other);
            }
        }
    }
    return best;
}

} // namespace pipwright
