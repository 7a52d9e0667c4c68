#include "core/statistics/sparse_structure.h"

#include "core/statistics/subscript.h"

#include <algorithm>
#include <numeric>
#include <utility>

namespace pipwright {

namespace {

/// Positions of nodes and their neighbours in an order of elimination.
struct OrderedGraph {
    const NodeGraph* graph;
    std::vector<std::int32_t> nodeAt;
    std::vector<std::int32_t> positionOf;

    OrderedGraph(const NodeGraph& source, std::vector<std::int32_t> order)
        : graph(&source), nodeAt(std::move(order)), positionOf(nodeAt.size()) {
        for (std::size_t position = 0; position < nodeAt.size(); ++position) {
            positionOf[at(nodeAt[position])] = static_cast<std::int32_t>(position);
        }
    }
};

/// The elimination tree of the first `free` positions: the parent of a column is the first row
/// below its diagonal in the factor; -1 where that is in the tail or nowhere (Liu 1990).
std::vector<std::int32_t> eliminationTree(const OrderedGraph& ordered, std::int32_t free) {
    std::vector<std::int32_t> parent(at(free), -1);
    std::vector<std::int32_t> ancestor(at(free), -1);
    for (std::int32_t column = 0; column < free; ++column) {
        for (const std::int32_t neighbour : ordered.graph->of(ordered.nodeAt[at(column)])) {
            std::int32_t node = ordered.positionOf[at(neighbour)];
            while (node != -1 && node < column) {
                const std::int32_t next = ancestor[at(node)];
                ancestor[at(node)] = column;
                if (next == -1) {
                    parent[at(node)] = column;
                }
                node = next;
            }
        }
    }
    return parent;
}

/// Where the largest of a node's subtrees goes.
enum class Largest {
    first, ///< few unfinished fronts are held at a time
    last,  ///< it stands next to its parent, which may join it
};

/// The positions so ordered that children come before their parents, subtree by subtree; parents
/// have higher numbers than their children already.
std::vector<std::int32_t> postorder(const std::vector<std::int32_t>& parent, Largest place) {
    const auto count = static_cast<std::int32_t>(parent.size());
    std::vector<std::int32_t> weight(parent.size() + 1, 1); // last: the forest
    weight.back() = count + 1;
    std::vector<std::int32_t> largest(parent.size() + 1, -1);
    const auto above = [&](std::int32_t node) {
        return parent[at(node)] == -1 ? parent.size() : at(parent[at(node)]);
    };
    for (std::int32_t node = 0; node < count; ++node) {
        if (parent[at(node)] != -1) {
            weight[at(parent[at(node)])] += weight[at(node)];
        }
        std::int32_t& known = largest[above(node)];
        if (known == -1 || weight[at(node)] > weight[at(known)]) {
            known = node;
        }
    }
    // Going down, each subtree knows its first number; the others' are handed out beside the
    // largest one's.
    std::vector<std::int32_t> start(parent.size() + 1, 0);
    std::vector<std::int32_t> used(parent.size() + 1, 0);
    std::vector<std::int32_t> order(parent.size());
    for (std::int32_t node = count - 1; node >= 0; --node) {
        const std::size_t up = above(node);
        const std::int32_t most = weight[at(largest[up])];
        if (largest[up] == node) {
            start[at(node)] =
                place == Largest::first ? start[up] : start[up] + weight[up] - 1 - most;
        } else {
            start[at(node)] = start[up] + used[up] + (place == Largest::first ? most : 0);
            used[up] += weight[at(node)];
        }
        order[at(start[at(node)] + weight[at(node)] - 1)] = node;
    }
    return order;
}

/// A supernode while it is found, in positions of nodes.
struct FrontDraft {
    std::int32_t first = 0;
    std::int32_t last = 0;
    bool leaf = true;               ///< no other front passes an update to it
    std::vector<std::int32_t> rows; ///< below the last column, rising
};

/// Whether a column with `rows` rows below it may join the front right before it, which then
/// carries some zeros: fewer fronts against more arithmetic, as Ashcraft & Grimes (1989), ACM
/// Trans. Math. Softw. 15:291-309, weigh it. A single leaf is cheap as it is.
bool worthJoining(const FrontDraft& before, std::size_t rows) {
    const auto columns = static_cast<std::size_t>(before.last - before.first + 1);
    const std::size_t zeros = (rows + 1 - before.rows.size()) * columns;
    const std::size_t all = (columns + 1) * (rows + 1);
    if (zeros <= 4) {
        return true;
    }
    if (before.leaf) {
        return zeros * 12 <= all;
    }
    return columns < 16 ? zeros * 3 <= all : columns < 64 ? zeros * 8 <= all : zeros * 16 <= all;
}

/// The fronts of the free columns, and from where on all is one dense tail.
struct Fronts {
    std::vector<FrontDraft> drafts;
    std::int32_t tailStart = 0;
};

Fronts findFronts(const OrderedGraph& ordered, std::int32_t free) {
    const auto count = static_cast<std::int32_t>(ordered.nodeAt.size());
    Fronts fronts;
    fronts.tailStart = free;
    std::vector<std::int32_t> seen(at(count), -1);
    std::vector<std::int32_t> lastChild(at(free), -1); // draft last linked to each column
    std::vector<std::int32_t> nextChild;               // of each draft, among its parent's
    const auto link = [&](std::size_t draft) {
        nextChild.resize(fronts.drafts.size(), -1);
        const std::vector<std::int32_t>& below = fronts.drafts[draft].rows;
        nextChild[draft] = -1;
        if (!below.empty() && below.front() < free) {
            nextChild[draft] = lastChild[at(below.front())];
            lastChild[at(below.front())] = static_cast<std::int32_t>(draft);
        }
    };
    std::vector<std::int32_t> rows;
    for (std::int32_t column = 0; column < free; ++column) {
        rows.clear();
        seen[at(column)] = column;
        const auto add = [&](std::int32_t position) {
            if (position > column && seen[at(position)] != column) {
                seen[at(position)] = column;
                rows.push_back(position);
            }
        };
        for (const std::int32_t neighbour : ordered.graph->of(ordered.nodeAt[at(column)])) {
            add(ordered.positionOf[at(neighbour)]);
        }
        for (std::int32_t child = lastChild[at(column)]; child != -1;
             child = nextChild[at(child)]) {
            for (const std::int32_t position : fronts.drafts[at(child)].rows) {
                add(position);
            }
        }
        const auto rest = static_cast<std::size_t>(count - column - 1);
        if (rows.size() * 10 >= rest * 9 && rest > 0) {
            fronts.tailStart = column; // all that is left is (nearly) full
            break;
        }
        std::sort(rows.begin(), rows.end());
        const bool hasChildren = lastChild[at(column)] != -1;
        if (!fronts.drafts.empty()) {
            FrontDraft& before = fronts.drafts.back();
            if (!before.rows.empty() && before.rows.front() == column &&
                worthJoining(before, rows.size())) {
                const auto own = static_cast<std::int32_t>(fronts.drafts.size()) - 1;
                const bool others = lastChild[at(column)] != own || nextChild[at(own)] != -1;
                before.last = column;
                before.leaf = before.leaf && !others;
                before.rows = rows;
                link(fronts.drafts.size() - 1);
                continue;
            }
        }
        fronts.drafts.push_back({column, column, !hasChildren, rows});
        link(fronts.drafts.size() - 1);
    }
    return fronts;
}

/// Puts the fronts into an order that holds few of them unfinished, and numbers their columns anew.
OrderedGraph arrangeFronts(const OrderedGraph& ordered, Fronts& fronts) {
    std::vector<std::int32_t> owner(at(fronts.tailStart));
    for (std::size_t draft = 0; draft < fronts.drafts.size(); ++draft) {
        std::fill(owner.begin() + fronts.drafts[draft].first,
                  owner.begin() + fronts.drafts[draft].last + 1, static_cast<std::int32_t>(draft));
    }
    std::vector<std::int32_t> parent;
    parent.reserve(fronts.drafts.size());
    for (const FrontDraft& draft : fronts.drafts) {
        const bool inside = !draft.rows.empty() && draft.rows.front() < fronts.tailStart;
        parent.push_back(inside ? owner[at(draft.rows.front())] : -1);
    }
    std::vector<std::int32_t> moved(ordered.nodeAt.size());
    std::iota(moved.begin(), moved.end(), 0);
    std::vector<std::int32_t> nodes = ordered.nodeAt;
    std::vector<FrontDraft> arranged;
    arranged.reserve(fronts.drafts.size());
    std::int32_t next = 0;
    for (const std::int32_t index : postorder(parent, Largest::first)) {
        FrontDraft& draft = fronts.drafts[at(index)];
        const std::int32_t first = next;
        for (std::int32_t column = draft.first; column <= draft.last; ++column) {
            moved[at(column)] = next;
            nodes[at(next++)] = ordered.nodeAt[at(column)];
        }
        draft.first = first;
        draft.last = next - 1;
        arranged.push_back(std::move(draft));
    }
    // Rows are ancestors of one another, so they still rise.
    for (FrontDraft& draft : arranged) {
        for (std::int32_t& row : draft.rows) {
            row = moved[at(row)];
        }
    }
    fronts.drafts = std::move(arranged);
    return {*ordered.graph, std::move(nodes)};
}

/// Turns node positions into positions of unknowns.
struct Expansion {
    std::vector<std::int32_t> firstPosition; ///< of the unknowns of each node position

    Expansion(const OrderedGraph& ordered, SparseStructure& structure) {
        firstPosition.reserve(ordered.nodeAt.size() + 1);
        structure.unknownAt.reserve(at(ordered.graph->firstUnknown.back()));
        for (const std::int32_t node : ordered.nodeAt) {
            firstPosition.push_back(static_cast<std::int32_t>(structure.unknownAt.size()));
            for (std::int32_t k = 0; k < ordered.graph->weight(node); ++k) {
                structure.unknownAt.push_back(ordered.graph->firstUnknown[at(node)] + k);
            }
        }
        firstPosition.push_back(static_cast<std::int32_t>(structure.unknownAt.size()));
        structure.positionOf.resize(structure.unknownAt.size());
        for (std::size_t position = 0; position < structure.unknownAt.size(); ++position) {
            structure.positionOf[at(structure.unknownAt[position])] =
                static_cast<std::int32_t>(position);
        }
    }
};

void expandFronts(const Fronts& fronts, const Expansion& expansion, SparseStructure& structure) {
    const auto& firstPosition = expansion.firstPosition;
    for (const FrontDraft& draft : fronts.drafts) {
        Supernode supernode;
        supernode.first = firstPosition[at(draft.first)];
        supernode.columns = firstPosition[at(draft.last) + 1] - supernode.first;
        supernode.rowStart = static_cast<std::int64_t>(structure.rows.size());
        for (const std::int32_t row : draft.rows) {
            for (std::int32_t position = firstPosition[at(row)];
                 position < firstPosition[at(row) + 1]; ++position) {
                structure.rows.push_back(position);
            }
        }
        supernode.rowCount = static_cast<std::int32_t>(
            static_cast<std::int64_t>(structure.rows.size()) - supernode.rowStart);
        structure.supernodes.push_back(supernode);
    }
    Supernode tail;
    tail.first = firstPosition[at(fronts.tailStart)];
    tail.columns = structure.size() - tail.first;
    tail.rowStart = static_cast<std::int64_t>(structure.rows.size());
    structure.supernodes.push_back(tail);
}

/// Finds each front's parent and the places of its rows there.
void linkFronts(SparseStructure& structure) {
    auto& supernodes = structure.supernodes;
    std::vector<std::int32_t> owner(at(structure.size()));
    for (std::size_t s = 0; s < supernodes.size(); ++s) {
        std::fill_n(owner.begin() + supernodes[s].first, supernodes[s].columns,
                    static_cast<std::int32_t>(s));
    }
    const auto tail = static_cast<std::int32_t>(supernodes.size()) - 1;
    structure.places.resize(structure.rows.size());
    for (std::int32_t s = 0; s < tail; ++s) {
        Supernode& child = supernodes[at(s)];
        const auto begin = static_cast<std::size_t>(child.rowStart);
        const std::size_t end = begin + at(child.rowCount);
        child.parent = child.rowCount == 0 ? tail : owner[at(structure.rows[begin])];
        Supernode& parent = supernodes[at(child.parent)];
        parent.hasChildren = true;
        auto search = static_cast<std::size_t>(parent.rowStart);
        for (std::size_t row = begin; row < end; ++row) {
            const std::int32_t position = structure.rows[row];
            if (position < parent.first + parent.columns) {
                structure.places[row] = position - parent.first;
                continue;
            }
            while (structure.rows[search] != position) {
                ++search;
            }
            structure.places[row] =
                parent.columns +
                static_cast<std::int32_t>(search - static_cast<std::size_t>(parent.rowStart));
        }
        child.contiguousFrom = std::max(child.rowCount - 1, 0);
        while (child.contiguousFrom > 0 &&
               structure.places[begin + at(child.contiguousFrom)] ==
                   structure.places[begin + at(child.contiguousFrom) - 1] + 1) {
            --child.contiguousFrom;
        }
    }
}

/// Hands out room in one stretch of memory to things that come and go, lowest free place first.
class RoomPlan {
  public:
    std::int64_t take(std::int64_t size) {
        std::int64_t start = 0;
        auto here = m_taken.begin();
        for (; here != m_taken.end(); ++here) {
            if (here->first - start >= size) {
                break;
            }
            start = here->second;
        }
        m_taken.insert(here, {start, start + size});
        m_most = std::max(m_most, start + size);
        return start;
    }
    void giveBack(std::int64_t start) {
        const auto here = std::find_if(m_taken.begin(), m_taken.end(),
                                       [start](const auto& part) { return part.first == start; });
        m_taken.erase(here);
    }
    [[nodiscard]] std::int64_t most() const { return m_most; }

  private:
    std::vector<std::pair<std::int64_t, std::int64_t>> m_taken; // rising
    std::int64_t m_most = 0;
};

void planRoom(SparseStructure& structure) {
    auto& supernodes = structure.supernodes;
    const auto tail = static_cast<std::int32_t>(supernodes.size()) - 1;
    RoomPlan updates;
    std::vector<std::int32_t> firstChild(supernodes.size(), -1);
    for (std::int32_t s = 0; s <= tail; ++s) {
        Supernode& supernode = supernodes[at(s)];
        supernode.panelStart = structure.panelSize;
        structure.panelSize += static_cast<std::int64_t>(supernode.columns) * supernode.height();
        for (std::int32_t column = 0; column < supernode.columns; ++column) {
            const double height = supernode.height() - column;
            structure.operations += height * height / 2;
        }
        if (s == tail) {
            break;
        }
        Supernode& parent = supernodes[at(supernode.parent)];
        if (firstChild[at(supernode.parent)] == -1) {
            firstChild[at(supernode.parent)] = s;
            if (parent.rowCount > 0) {
                parent.updateStart =
                    updates.take(static_cast<std::int64_t>(parent.rowCount) * parent.rowCount);
            }
        }
        if (supernode.updateStart >= 0) {
            updates.giveBack(supernode.updateStart);
        }
    }
    structure.updateSize = updates.most();
    RoomPlan inverses;
    for (std::int32_t s = tail; s >= 0; --s) {
        Supernode& supernode = supernodes[at(s)];
        if (supernode.hasChildren || s == tail) {
            supernode.inverseStart =
                inverses.take(static_cast<std::int64_t>(supernode.height()) * supernode.height());
        }
        if (s != tail && firstChild[at(supernode.parent)] == s) {
            inverses.giveBack(supernodes[at(supernode.parent)].inverseStart);
        }
    }
    structure.inverseSize = inverses.most();
}

} // namespace

NodeGraph nodeGraph(const SymmetricPattern& pattern, std::vector<std::int32_t> firstUnknown) {
    NodeGraph graph;
    graph.firstUnknown = std::move(firstUnknown);
    const auto nodes = static_cast<std::int32_t>(graph.firstUnknown.size()) - 1;
    std::vector<std::int32_t> nodeStarting(at(pattern.size()), -1);
    for (std::int32_t node = 0; node < nodes; ++node) {
        nodeStarting[at(graph.firstUnknown[at(node)])] = node;
    }
    const auto forEachPair = [&](auto&& take) {
        for (std::int32_t node = 0; node < nodes; ++node) {
            const std::size_t column = at(graph.firstUnknown[at(node)]);
            for (auto place = static_cast<std::size_t>(pattern.starts[column]);
                 place < static_cast<std::size_t>(pattern.starts[column + 1]); ++place) {
                const std::int32_t other = nodeStarting[at(pattern.rows[place])];
                if (other > node) {
                    take(node, other);
                }
            }
        }
    };
    std::vector<std::int64_t> next(at(nodes) + 1, 0);
    forEachPair([&](std::int32_t one, std::int32_t other) {
        ++next[at(one) + 1];
        ++next[at(other) + 1];
    });
    std::partial_sum(next.begin(), next.end(), next.begin());
    graph.starts = next;
    graph.neighbours.resize(static_cast<std::size_t>(next.back()));
    // Lower-numbered neighbours arrive first, in rising order, as the columns are passed.
    forEachPair([&](std::int32_t one, std::int32_t other) {
        graph.neighbours[static_cast<std::size_t>(next[at(other)]++)] = one;
    });
    forEachPair([&](std::int32_t one, std::int32_t other) {
        graph.neighbours[static_cast<std::size_t>(next[at(one)]++)] = other;
    });
    return graph;
}

SparseStructure structureFor(const NodeGraph& graph, const EliminationOrder& order) {
    const std::int32_t free = static_cast<std::int32_t>(order.nodes.size()) - order.tail;
    std::vector<std::int32_t> nodes = order.nodes;
    {
        const OrderedGraph given(graph, order.nodes);
        const std::vector<std::int32_t> post =
            postorder(eliminationTree(given, free), Largest::last);
        for (std::int32_t position = 0; position < free; ++position) {
            nodes[at(position)] = order.nodes[at(post[at(position)])];
        }
    }
    OrderedGraph ordered(graph, std::move(nodes));
    Fronts fronts = findFronts(ordered, free);
    ordered = arrangeFronts(ordered, fronts);
    SparseStructure structure;
    const Expansion expansion(ordered, structure);
    expandFronts(fronts, expansion, structure);
    linkFronts(structure);
    planRoom(structure);
    return structure;
}

} // namespace pipwright
