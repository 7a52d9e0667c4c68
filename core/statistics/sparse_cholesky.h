#pragma once

#include "core/statistics/sparse_panel_kernels.h"
#include "core/statistics/sparse_structure.h"

#include <cstdint>
#include <span>
#include <vector>

namespace pipwright {

/// The shape of a factor joined to the pattern it came from: where each number of the matrix goes.
/// Made once; any number of factors share it.
class FactorPlan {
  public:
    /// `wanted` names places of the pattern (indices into its rows, rising) whose numbers of the
    /// inverse will be asked for.
    FactorPlan(const SymmetricPattern& pattern, SparseStructure structure,
               std::span<const std::int64_t> wanted);

    [[nodiscard]] const SparseStructure& structure() const { return m_structure; }
    [[nodiscard]] std::int32_t size() const { return m_structure.size(); }
    [[nodiscard]] std::int64_t wantedCount() const {
        return static_cast<std::int64_t>(m_wanted.size());
    }

  private:
    friend class SparseCholesky;
    /// One wanted number of the inverse.
    struct Wanted {
        std::int64_t inPanel = 0; ///< offset within its panel
        std::int64_t slot = 0;    ///< index in the list of wanted places
    };

    SparseStructure m_structure;
    std::vector<std::int64_t> m_panelPlace;  ///< of each number of the pattern
    std::vector<Wanted> m_wanted;            ///< by supernode
    std::vector<std::int64_t> m_wantedStart; ///< of each supernode, one more at the end
    std::vector<bool> m_wantsOffDiagonal;    ///< of each supernode
};

/// The factor L of a symmetric positive definite matrix, C = P' L L' P, front by front: the
/// multifrontal method (Duff & Reid 1983, ACM Trans. Math. Softw. 9:302-325) with each front adding
/// its update straight to its parent's.
class SparseCholesky {
  public:
    explicit SparseCholesky(const FactorPlan& plan);

    /// Factorises the matrix whose pattern the plan was made of. False when it is not positive
    /// definite to working precision.
    bool factorise(std::span<const double> values);

    /// ln of the determinant of the first `size - withoutLast` positions of the order.
    [[nodiscard]] double logDeterminant(std::int32_t withoutLast = 0) const;

    /// Solves C x = b for several b at once, in place. Numbers of one unknown stand together:
    /// unknown i of right-hand side k at [i * count + k].
    void solve(std::span<double> sides, std::int32_t count) const;

    /// products -= B' C^-1 B for right-hand sides B laid out as in solve; a count x count
    /// matrix. Half the cost of solving.
    void subtractProducts(std::span<const double> sides, std::int32_t count,
                          std::span<double> products) const;

    /// The wanted numbers of the inverse of C without its last `withoutLast` positions (numbers of
    /// those come out as 0), by the recursion of Takahashi, Fagan & Chin (1973), Proc. 8th PICA
    /// Conf.: from the last front down, each needs only its parent's part of the inverse.
    void inverse(std::span<double> wanted, std::int32_t withoutLast = 0);

    /// Frees the room for fronts, which only factorise and inverse need.
    void releaseRoom();

  private:
    void eliminate(const Supernode& supernode);
    void solveForwards(std::span<double> work, std::size_t width) const;
    void solveBackwards(std::span<double> work, std::size_t width) const;
    [[nodiscard]] std::vector<double> inOrder(std::span<const double> sides,
                                              std::size_t width) const;
    void invertTail(const Supernode& tail, std::int32_t withoutLast);
    void invertFront(const Supernode& supernode, std::int32_t index, std::span<double> wanted);
    void invertSingle(const Supernode& supernode, std::int32_t index, std::span<double> wanted);
    [[nodiscard]] panels::Placement placement(const Supernode& supernode) const;

    const FactorPlan* m_plan;
    std::vector<double> m_panels;
    std::vector<double> m_updates;
    std::vector<double> m_inverses;
    std::vector<double> m_front;    // of a front nobody below needs
    std::vector<double> m_triangle; // inverse of the panel's own triangle
    std::vector<double> m_turned;
    panels::Space m_space;
};

} // namespace pipwright
