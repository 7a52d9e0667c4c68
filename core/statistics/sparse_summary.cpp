#include "core/statistics/sparse_cholesky.h"
#include "core/statistics/sparse_ordering.h"
#include "core/statistics/sparse_symmetric.h"

#include <numeric>

namespace pipwright {

Result<InverseSummary> summariseInverse(const SparseSymmetric& matrix) {
    InverseSummary summary;
    if (matrix.size() == 0) {
        return summary;
    }
    const SymmetricPattern pattern{matrix.columnStarts(), matrix.rows()};
    std::vector<std::int32_t> nodes(static_cast<std::size_t>(matrix.size()) + 1);
    std::iota(nodes.begin(), nodes.end(), 0);
    const std::vector<std::int64_t> diagonal(matrix.columnStarts().begin(),
                                             matrix.columnStarts().end() - 1);
    const FactorPlan plan(pattern, chooseStructure(nodeGraph(pattern, std::move(nodes)), 0),
                          diagonal);
    SparseCholesky factor(plan);
    if (!factor.factorise(matrix.values())) {
        return Problem{ProblemCode::badInput, "The precision matrix is not positive definite.",
                       "Build it from the pedigree anew.", ""};
    }
    summary.logDeterminant = factor.logDeterminant();
    summary.diagonal.resize(diagonal.size());
    factor.inverse(summary.diagonal);
    return summary;
}

} // namespace pipwright
