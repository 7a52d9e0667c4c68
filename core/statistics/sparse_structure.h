#pragma once

#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

/// How a sparse symmetric matrix is taken apart, before any number is known. Liu (1990), SIAM J.
/// Matrix Anal. Appl. 11:134-172; Liu (1992), SIAM Rev. 34:82-109; Davis (2006), Direct Methods
/// for Sparse Linear Systems.
namespace pipwright {

/// Where a symmetric matrix has numbers: its lower triangle by columns, rows rising, the diagonal
/// first.
struct SymmetricPattern {
    std::vector<std::int64_t> starts{0};
    std::vector<std::int32_t> rows;

    [[nodiscard]] std::int32_t size() const { return static_cast<std::int32_t>(starts.size()) - 1; }
};

/// Unknowns that belong together (the effects of one level) as the nodes of a graph: two are
/// neighbours when the matrix couples them.
struct NodeGraph {
    std::vector<std::int64_t> starts{0};
    std::vector<std::int32_t> neighbours;   ///< of each node, rising, without itself
    std::vector<std::int32_t> firstUnknown; ///< one more than there are nodes

    [[nodiscard]] std::int32_t size() const { return static_cast<std::int32_t>(starts.size()) - 1; }
    [[nodiscard]] std::int32_t weight(std::int32_t node) const {
        return firstUnknown[static_cast<std::size_t>(node) + 1] -
               firstUnknown[static_cast<std::size_t>(node)];
    }
    [[nodiscard]] std::span<const std::int32_t> of(std::int32_t node) const {
        const auto first = static_cast<std::size_t>(starts[static_cast<std::size_t>(node)]);
        const auto last = static_cast<std::size_t>(starts[static_cast<std::size_t>(node) + 1]);
        return {neighbours.data() + first, last - first};
    }
};

/// The graph of a pattern whose unknowns are grouped into nodes: node i holds the unknowns
/// firstUnknown[i] to firstUnknown[i + 1] - 1, which all have the same neighbours.
NodeGraph nodeGraph(const SymmetricPattern& pattern, std::vector<std::int32_t> firstUnknown);

/// An order of elimination: the nodes first to last; the last `tail` of them are treated as
/// coupled with everything (a dense tail).
struct EliminationOrder {
    std::vector<std::int32_t> nodes;
    std::int32_t tail = 0;
};

/// A run of columns with the same rows below them: a front when it is eliminated.
struct Supernode {
    std::int32_t first = 0;          ///< position of the first column
    std::int32_t columns = 0;        ///< c
    std::int32_t rowCount = 0;       ///< r: rows below the columns
    std::int32_t parent = -1;        ///< the front that takes the update; -1 for the last
    std::int32_t contiguousFrom = 0; ///< from this row on, the places in the parent follow closely
    bool hasChildren = false;
    std::int64_t rowStart = 0;      ///< of its rows, and of their places in the parent's front
    std::int64_t panelStart = 0;    ///< of its numbers: (c + r) x c, column by column
    std::int64_t updateStart = -1;  ///< room for the r x r remainder while factorising, if needed
    std::int64_t inverseStart = -1; ///< room for the (c + r) squared inverse front, if needed

    [[nodiscard]] std::int32_t height() const { return columns + rowCount; }
};

/// The shape of a factor: what depends on the pattern alone.
struct SparseStructure {
    std::vector<std::int32_t> unknownAt; ///< unknown at each position of the order
    std::vector<std::int32_t> positionOf;
    std::vector<Supernode> supernodes; ///< children before parents; the dense tail last
    std::vector<std::int32_t> rows;    ///< positions, of all supernodes
    std::vector<std::int32_t> places;  ///< beside rows: place within the parent's front
    std::int64_t panelSize = 0;        ///< numbers in the factor
    std::int64_t updateSize = 0;       ///< room for remainders
    std::int64_t inverseSize = 0;      ///< room for inverse fronts
    double operations = 0;             ///< multiplications of one factorisation, about

    [[nodiscard]] std::int32_t size() const { return static_cast<std::int32_t>(unknownAt.size()); }
};

/// The shape of the factor for an order of elimination.
SparseStructure structureFor(const NodeGraph& graph, const EliminationOrder& order);

} // namespace pipwright
