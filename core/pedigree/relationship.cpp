#include "core/pedigree/relationship.h"

namespace pipwright {

RelationshipMatrix::RelationshipMatrix(const Pedigree& pedigree)
    : m_size(pedigree.size()),
      m_cells(static_cast<std::size_t>(m_size) * (static_cast<std::size_t>(m_size) + 1) / 2, 0.0) {
    const std::vector<int> order = pedigree.parentsFirst();
    for (std::size_t rank = 0; rank < order.size(); ++rank) {
        const int child = order[rank];
        const Parents both = pedigree.parentsOf(child);
        for (std::size_t older = 0; older < rank; ++older) {
            const double fromSeed = both.seed ? at(order[older], *both.seed) : 0;
            const double fromPollen = both.pollen ? at(order[older], *both.pollen) : 0;
            m_cells[cellOf(child, order[older])] = (fromSeed + fromPollen) / 2;
        }
        m_cells[cellOf(child, child)] =
            both.seed && both.pollen   ? 1 + at(*both.seed, *both.pollen) / 2
            : both.seed || both.pollen ? 1
                                       : pedigree.founderVariance(child);
    }
}

} // namespace pipwright
