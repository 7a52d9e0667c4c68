#include "core/statistics/sparse_cholesky.h"

#include "core/statistics/subscript.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace pipwright {

using panels::Block;
using panels::ConstBlock;

FactorPlan::FactorPlan(const SymmetricPattern& pattern, SparseStructure structure,
                       std::span<const std::int64_t> wanted)
    : m_structure(std::move(structure)), m_panelPlace(pattern.rows.size()) {
    const SparseStructure& shape = m_structure;
    // Sorted by column of the order: every number belongs to the earlier of its two positions.
    std::vector<std::int64_t> next(at(shape.size()) + 1, 0);
    const auto forEachNumber = [&](auto&& take) {
        for (std::int32_t column = 0; column < pattern.size(); ++column) {
            const std::int32_t one = shape.positionOf[at(column)];
            for (auto place = static_cast<std::size_t>(pattern.starts[at(column)]);
                 place < static_cast<std::size_t>(pattern.starts[at(column) + 1]); ++place) {
                take(place, one, shape.positionOf[at(pattern.rows[place])]);
            }
        }
    };
    forEachNumber([&](std::size_t, std::int32_t one, std::int32_t other) {
        ++next[at(std::min(one, other)) + 1];
    });
    for (std::size_t position = 0; position < at(shape.size()); ++position) {
        next[position + 1] += next[position];
    }
    std::vector<std::pair<std::int32_t, std::int32_t>> sorted(pattern.rows.size());
    forEachNumber([&](std::size_t place, std::int32_t one, std::int32_t other) {
        sorted[static_cast<std::size_t>(next[at(std::min(one, other))]++)] = {
            std::max(one, other), static_cast<std::int32_t>(place)};
    });
    std::vector<std::int64_t> slotOf(wanted.empty() ? 0 : pattern.rows.size(), -1);
    for (std::size_t slot = 0; slot < wanted.size(); ++slot) {
        slotOf[static_cast<std::size_t>(wanted[slot])] = static_cast<std::int64_t>(slot);
    }
    std::vector<std::int32_t> inFront(at(shape.size()), 0);
    std::int64_t here = 0;
    m_wantedStart.push_back(0);
    for (const Supernode& supernode : shape.supernodes) {
        for (std::int32_t column = 0; column < supernode.columns; ++column) {
            inFront[at(supernode.first + column)] = column;
        }
        for (std::int32_t row = 0; row < supernode.rowCount; ++row) {
            inFront[at(shape.rows[static_cast<std::size_t>(supernode.rowStart) + at(row)])] =
                supernode.columns + row;
        }
        bool offDiagonal = false;
        for (std::int32_t column = 0; column < supernode.columns; ++column) {
            for (; here < next[at(supernode.first + column)]; ++here) {
                const auto [row, place] = sorted[static_cast<std::size_t>(here)];
                const std::int64_t inPanel =
                    static_cast<std::int64_t>(column) * supernode.height() + inFront[at(row)];
                m_panelPlace[at(place)] = supernode.panelStart + inPanel;
                if (!wanted.empty() && slotOf[at(place)] >= 0) {
                    m_wanted.push_back({inPanel, slotOf[at(place)]});
                    offDiagonal = offDiagonal || row != supernode.first + column;
                }
            }
        }
        m_wantedStart.push_back(static_cast<std::int64_t>(m_wanted.size()));
        m_wantsOffDiagonal.push_back(offDiagonal);
    }
}

SparseCholesky::SparseCholesky(const FactorPlan& plan) : m_plan(&plan) {}

panels::Placement SparseCholesky::placement(const Supernode& supernode) const {
    return {m_plan->m_structure.places.data() + supernode.rowStart, at(supernode.rowCount),
            at(supernode.contiguousFrom)};
}

bool SparseCholesky::factorise(std::span<const double> values) {
    const SparseStructure& shape = m_plan->m_structure;
    m_panels.assign(static_cast<std::size_t>(shape.panelSize), 0.0);
    m_updates.resize(static_cast<std::size_t>(shape.updateSize));
    for (std::size_t place = 0; place < values.size(); ++place) {
        m_panels[static_cast<std::size_t>(m_plan->m_panelPlace[place])] = values[place];
    }
    std::vector<bool> begun(shape.supernodes.size(), false);
    const auto count = static_cast<std::int32_t>(shape.supernodes.size());
    for (std::int32_t index = 0; index < count; ++index) {
        const Supernode& supernode = shape.supernodes[at(index)];
        const Block panel{m_panels.data() + supernode.panelStart, at(supernode.height())};
        if (!panels::factorisePanel(panel, at(supernode.height()), at(supernode.columns), 0.0,
                                    m_space)) {
            return false;
        }
        if (supernode.rowCount == 0) {
            continue;
        }
        const Supernode& parent = shape.supernodes[at(supernode.parent)];
        if (!begun[at(supernode.parent)]) {
            begun[at(supernode.parent)] = true;
            if (parent.updateStart >= 0) {
                std::fill_n(m_updates.begin() + parent.updateStart,
                            static_cast<std::int64_t>(parent.rowCount) * parent.rowCount, 0.0);
            }
        }
        const panels::ParentFront front{
            {m_panels.data() + parent.panelStart, at(parent.height())},
            {parent.updateStart >= 0 ? m_updates.data() + parent.updateStart : nullptr,
             at(parent.rowCount)},
            at(parent.columns)};
        const ConstBlock below{panel.first + supernode.columns, panel.stride};
        const bool passesOn = begun[at(index)];
        if (passesOn || supernode.columns > 8) {
            eliminate(supernode);
        }
        if (!passesOn && supernode.columns <= 8) {
            panels::spreadUpdate(below, at(supernode.columns), placement(supernode), front,
                                 m_space);
        } else {
            const double* remainder =
                passesOn ? m_updates.data() + supernode.updateStart : m_front.data();
            panels::spreadRemainder({remainder, at(supernode.rowCount)}, placement(supernode),
                                    front);
        }
    }
    return true;
}

void SparseCholesky::eliminate(const Supernode& supernode) {
    const std::size_t rows = at(supernode.rowCount);
    double* remainder = nullptr;
    if (supernode.updateStart >= 0) {
        remainder = m_updates.data() + supernode.updateStart;
    } else {
        m_front.assign(rows * rows, 0.0);
        remainder = m_front.data();
    }
    const ConstBlock below{m_panels.data() + supernode.panelStart + supernode.columns,
                           at(supernode.height())};
    panels::subtractProduct({remainder, rows}, below, below, rows, rows, at(supernode.columns),
                            true, m_space);
}

double SparseCholesky::logDeterminant(std::int32_t withoutLast) const {
    const std::int32_t last = m_plan->size() - withoutLast;
    double sum = 0;
    for (const Supernode& supernode : m_plan->m_structure.supernodes) {
        // Products of a few pivots at a time cost one logarithm for all of them.
        double product = 1;
        for (std::int32_t column = 0; column < supernode.columns; ++column) {
            if (supernode.first + column >= last) {
                break;
            }
            product *= m_panels[static_cast<std::size_t>(supernode.panelStart) +
                                at(column) * (at(supernode.height()) + 1)];
            if (!(product > 1e-100 && product < 1e100)) {
                sum += std::log(product);
                product = 1;
            }
        }
        sum += std::log(product);
    }
    return 2 * sum;
}

std::vector<double> SparseCholesky::inOrder(std::span<const double> sides,
                                            std::size_t width) const {
    const SparseStructure& shape = m_plan->m_structure;
    std::vector<double> work(sides.size());
    for (std::size_t position = 0; position < at(shape.size()); ++position) {
        std::copy_n(sides.data() + at(shape.unknownAt[position]) * width, width,
                    work.data() + position * width);
    }
    return work;
}

// L z = P b, columns in order.
void SparseCholesky::solveForwards(std::span<double> work, std::size_t width) const {
    const SparseStructure& shape = m_plan->m_structure;
    for (const Supernode& supernode : shape.supernodes) {
        const std::int32_t* rows = shape.rows.data() + supernode.rowStart;
        for (std::int32_t column = 0; column < supernode.columns; ++column) {
            const double* values =
                m_panels.data() + supernode.panelStart + at(column) * at(supernode.height());
            double* own = work.data() + at(supernode.first + column) * width;
            const double inverse = 1 / values[column];
            for (std::size_t k = 0; k < width; ++k) {
                own[k] *= inverse;
            }
            for (std::int32_t row = column + 1; row < supernode.height(); ++row) {
                const std::int32_t position =
                    row < supernode.columns ? supernode.first + row : rows[row - supernode.columns];
                double* target = work.data() + at(position) * width;
                const double factor = values[row];
                for (std::size_t k = 0; k < width; ++k) {
                    target[k] -= factor * own[k];
                }
            }
        }
    }
}

// L' P x = z, columns in reverse.
void SparseCholesky::solveBackwards(std::span<double> work, std::size_t width) const {
    const SparseStructure& shape = m_plan->m_structure;
    for (auto supernode = shape.supernodes.rbegin(); supernode != shape.supernodes.rend();
         ++supernode) {
        const std::int32_t* rows = shape.rows.data() + supernode->rowStart;
        for (std::int32_t column = supernode->columns - 1; column >= 0; --column) {
            const double* values =
                m_panels.data() + supernode->panelStart + at(column) * at(supernode->height());
            double* own = work.data() + at(supernode->first + column) * width;
            for (std::int32_t row = column + 1; row < supernode->height(); ++row) {
                const std::int32_t position = row < supernode->columns
                                                  ? supernode->first + row
                                                  : rows[row - supernode->columns];
                const double* source = work.data() + at(position) * width;
                const double factor = values[row];
                for (std::size_t k = 0; k < width; ++k) {
                    own[k] -= factor * source[k];
                }
            }
            const double inverse = 1 / values[column];
            for (std::size_t k = 0; k < width; ++k) {
                own[k] *= inverse;
            }
        }
    }
}

void SparseCholesky::solve(std::span<double> sides, std::int32_t count) const {
    const SparseStructure& shape = m_plan->m_structure;
    const std::size_t width = at(count);
    std::vector<double> work = inOrder(sides, width);
    solveForwards(work, width);
    solveBackwards(work, width);
    for (std::size_t position = 0; position < at(shape.size()); ++position) {
        std::copy_n(work.data() + position * width, width,
                    sides.data() + at(shape.unknownAt[position]) * width);
    }
}

void SparseCholesky::subtractProducts(std::span<const double> sides, std::int32_t count,
                                      std::span<double> products) const {
    const std::size_t width = at(count);
    std::vector<double> work = inOrder(sides, width);
    solveForwards(work, width);
    for (std::size_t position = 0; position < at(m_plan->size()); ++position) {
        const double* numbers = work.data() + position * width;
        for (std::size_t row = 0; row < width; ++row) {
            for (std::size_t column = 0; column < width; ++column) {
                products[row * width + column] -= numbers[row] * numbers[column];
            }
        }
    }
}

void SparseCholesky::releaseRoom() {
    m_updates = {};
    m_inverses = {};
    m_front = {};
    m_triangle = {};
    m_turned = {};
    m_space = {};
}

} // namespace pipwright
