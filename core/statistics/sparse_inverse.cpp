#include "core/statistics/sparse_cholesky.h"
#include "core/statistics/subscript.h"

#include <algorithm>
#include <cmath>

// With L partitioned by a front into its own triangle L1 and the rows L2 below it, Y = L2 L1^-1 and
// Z2 the inverse at the rows below (a part of the parent's front), the inverse at the front is
//
//     Z21 = -Z2 Y,    Z1 = L1^-T L1^-1 + Y' Z2 Y = L1^-T L1^-1 - Y' Z21
//
// (Takahashi, Fagan & Chin 1973; in fronts: Campbell & Davis 1995, Univ. Florida TR-95-021).
namespace pipwright {

using panels::Block;
using panels::ConstBlock;

void SparseCholesky::inverse(std::span<double> wanted, std::int32_t withoutLast) {
    const SparseStructure& shape = m_plan->m_structure;
    m_inverses.resize(static_cast<std::size_t>(shape.inverseSize));
    const auto tail = static_cast<std::int32_t>(shape.supernodes.size()) - 1;
    invertTail(shape.supernodes[at(tail)], withoutLast);
    for (auto here = static_cast<std::size_t>(m_plan->m_wantedStart[at(tail)]);
         here < static_cast<std::size_t>(m_plan->m_wantedStart[at(tail) + 1]); ++here) {
        const FactorPlan::Wanted& one = m_plan->m_wanted[here];
        wanted[static_cast<std::size_t>(one.slot)] = m_inverses[static_cast<std::size_t>(
            shape.supernodes[at(tail)].inverseStart + one.inPanel)];
    }
    for (std::int32_t index = tail - 1; index >= 0; --index) {
        const Supernode& supernode = shape.supernodes[at(index)];
        if (supernode.columns == 1 && !supernode.hasChildren) {
            invertSingle(supernode, index, wanted);
        } else {
            invertFront(supernode, index, wanted);
        }
    }
}

void SparseCholesky::invertTail(const Supernode& tail, std::int32_t withoutLast) {
    const std::size_t size = at(tail.columns);
    const std::size_t kept = size - at(withoutLast);
    Block front{m_inverses.data() + tail.inverseStart, size};
    std::fill_n(front.first, size * size, 0.0);
    if (kept == 0) {
        return;
    }
    m_triangle.resize(kept * kept);
    panels::invertTriangle({m_panels.data() + tail.panelStart, size}, {m_triangle.data(), kept},
                           kept, m_space);
    panels::squareTriangle({m_triangle.data(), kept}, front, kept, m_space);
}

void SparseCholesky::invertFront(const Supernode& supernode, std::int32_t index,
                                 std::span<double> wanted) {
    const SparseStructure& shape = m_plan->m_structure;
    const std::size_t columns = at(supernode.columns);
    const std::size_t rows = at(supernode.rowCount);
    const std::size_t height = columns + rows;
    double* memory = nullptr;
    if (supernode.inverseStart >= 0) {
        memory = m_inverses.data() + supernode.inverseStart;
    } else {
        if (m_front.size() < height * height) {
            m_front.resize(height * height);
        }
        memory = m_front.data();
    }
    const Block front{memory, height};
    const ConstBlock panel{m_panels.data() + supernode.panelStart, height};
    if (m_triangle.size() < columns * columns) {
        m_triangle.resize(columns * columns);
    }
    const Block inverse{m_triangle.data(), columns};
    panels::invertTriangle(panel, inverse, columns, m_space);
    panels::squareTriangle({inverse.first, columns}, front, columns, m_space);
    if (rows > 0) {
        const Supernode& parent = shape.supernodes[at(supernode.parent)];
        const Block below{memory + columns + columns * height, height};
        panels::gatherSymmetric({m_inverses.data() + parent.inverseStart, at(parent.height())},
                                placement(supernode), below);
        // Minus Y', columns along memory: Y' = L1^-T L2', then Z21 = Z2 (-Y')' and its transpose.
        if (m_turned.size() < 2 * columns * rows) {
            m_turned.resize(2 * columns * rows);
        }
        std::fill_n(m_turned.begin(), columns * rows, 0.0);
        double* negativeTurned = m_turned.data();
        double* product = m_turned.data() + columns * rows;
        for (std::size_t column = 0; column < columns; ++column) {
            for (std::size_t row = 0; row < column; ++row) {
                std::swap(inverse.first[row + column * columns],
                          inverse.first[column + row * columns]);
            }
        }
        // (-Y') = -(L1^-T)(L2'): left L1^-T (now stored), right L2 (rows x columns).
        panels::subtractProduct({negativeTurned, columns}, {inverse.first, columns},
                                {panel.first + columns, height}, columns, rows, columns, false,
                                m_space);
        for (std::size_t column = 0; column < columns; ++column) {
            std::fill_n(memory + columns + column * height, rows, 0.0);
        }
        const Block corner{memory + columns, height};
        for (std::size_t place = 0; place < columns * rows; ++place) {
            negativeTurned[place] = -negativeTurned[place];
        }
        panels::subtractProduct(corner, {below.first, height}, {negativeTurned, columns}, rows,
                                columns, rows, false, m_space);
        for (std::size_t column = 0; column < columns; ++column) {
            for (std::size_t row = 0; row < rows; ++row) {
                product[column + row * columns] = corner.first[row + column * height];
                memory[column + (columns + row) * height] = corner.first[row + column * height];
            }
        }
        panels::subtractProduct(front, {negativeTurned, columns}, {product, columns}, columns,
                                columns, rows, false, m_space);
    }
    for (auto here = static_cast<std::size_t>(m_plan->m_wantedStart[at(index)]);
         here < static_cast<std::size_t>(m_plan->m_wantedStart[at(index) + 1]); ++here) {
        const FactorPlan::Wanted& one = m_plan->m_wanted[here];
        wanted[static_cast<std::size_t>(one.slot)] = memory[one.inPanel];
    }
}

void SparseCholesky::invertSingle(const Supernode& supernode, std::int32_t index,
                                  std::span<double> wanted) {
    const SparseStructure& shape = m_plan->m_structure;
    const auto first = static_cast<std::size_t>(m_plan->m_wantedStart[at(index)]);
    const auto last = static_cast<std::size_t>(m_plan->m_wantedStart[at(index) + 1]);
    if (first == last) {
        return;
    }
    const std::size_t rows = at(supernode.rowCount);
    const double* panel = m_panels.data() + supernode.panelStart;
    const double inverse = 1 / panel[0];
    const bool offDiagonal = m_plan->m_wantsOffDiagonal[at(index)];
    if (m_turned.size() < rows + 1) {
        m_turned.resize(rows + 1);
    }
    double* column = m_turned.data();
    if (offDiagonal) {
        std::fill_n(column + 1, rows, 0.0);
    }
    double quadratic = 0;
    if (rows > 0) {
        const Supernode& parent = shape.supernodes[at(supernode.parent)];
        quadratic = panels::gatherQuadratic(
            {m_inverses.data() + parent.inverseStart, at(parent.height())}, placement(supernode),
            panel + 1, offDiagonal ? column + 1 : nullptr);
    }
    column[0] = inverse * inverse * (1 + quadratic);
    for (std::size_t here = first; here < last; ++here) {
        const FactorPlan::Wanted& one = m_plan->m_wanted[here];
        const double value = column[one.inPanel];
        wanted[static_cast<std::size_t>(one.slot)] = one.inPanel == 0 ? value : -inverse * value;
    }
}

} // namespace pipwright
