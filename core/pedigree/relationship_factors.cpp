#include "core/pedigree/relationship_factors.h"

#include "core/pedigree/inbreeding.h"

#include <cmath>
#include <cstddef>

namespace pipwright {

RelationshipFactors::RelationshipFactors(Pedigree pedigree)
    : m_pedigree(std::move(pedigree)), m_inbreedings(inbreeding(m_pedigree)),
      m_sampling(mendelianSampling(m_pedigree, m_inbreedings)) {}

double RelationshipFactors::at(int one, int other) const {
    return 2 * coancestry(m_pedigree, m_inbreedings, one, other);
}

std::vector<double> RelationshipFactors::times(std::span<const double> vector) const {
    std::vector<double> walked(vector.begin(), vector.end());
    const ParentColumn& seed = m_pedigree.seedParents();
    const ParentColumn& pollen = m_pedigree.pollenParents();
    const auto place = [](std::int32_t genotype) { return static_cast<std::size_t>(genotype); };
    for (int rank = size() - 1; rank >= 0; --rank) { // T', from the youngest
        const std::size_t child = place(m_pedigree.atRank(rank));
        for (const std::int32_t parent : {seed[child], pollen[child]}) {
            if (parent != kUnknownParent) {
                walked[place(parent)] += walked[child] / 2;
            }
        }
    }
    for (int rank = 0; rank < size(); ++rank) { // D, then T, from the oldest
        const std::size_t child = place(m_pedigree.atRank(rank));
        walked[child] *= m_sampling[child];
        for (const std::int32_t parent : {seed[child], pollen[child]}) {
            if (parent != kUnknownParent) {
                walked[child] += walked[place(parent)] / 2;
            }
        }
    }
    return walked;
}

std::vector<double> RelationshipFactors::column(int genotype) const {
    std::vector<double> one(static_cast<std::size_t>(size()), 0.0);
    one.at(static_cast<std::size_t>(genotype)) = 1;
    return times(one);
}

double RelationshipFactors::logDeterminant() const {
    double sum = 0;
    for (const double sampling : m_sampling) {
        sum += std::log(sampling);
    }
    return sum;
}

} // namespace pipwright
