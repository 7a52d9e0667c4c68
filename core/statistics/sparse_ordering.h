#pragma once

#include "core/statistics/sparse_structure.h"

#include <cstdint>
#include <vector>

namespace pipwright {

/// Chooses an order of elimination and gives the shape of the factor it leads to.
///
/// In this order:
///  1. Nodes coupled with a large share of all others (tasters, years), and the last `lastNodes`
///     nodes (the fixed effects), stand at the end as a dense tail.
///  2. Nodes with few neighbours that are all neighbours of each other are eliminated at once, as
///     they bring no new couplings: plants first, then seedlings without progeny, then parents.
///  3. What is left is eliminated by independent nodes first when that leaves a nearly full rest
///     anyhow; else by approximate minimum degree (Amestoy, Davis & Duff 1996), and also by nested
///     dissection (Karypis & Kumar 1998) when the arithmetic predicted for repeated factorisation
///     is large beside the cost of dissecting. The shape with the fewest operations wins.
/// The result depends on nothing but the graph.
SparseStructure chooseStructure(const NodeGraph& graph, std::int32_t lastNodes);

} // namespace pipwright
