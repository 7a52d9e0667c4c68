#include "core/statistics/sparse_symmetric.h"

#include <algorithm>
#include <cmath>
#include <string>
#include <utility>

namespace pipwright {

namespace {

Problem badEntries(std::string what) {
    return {ProblemCode::badInput, std::move(what), "Build the matrix anew from its entries.", ""};
}

} // namespace

Result<SparseSymmetric> SparseSymmetric::fromEntries(std::int32_t size,
                                                     std::span<const SymmetricEntry> entries) {
    if (size < 0) {
        return badEntries("A matrix cannot have a negative size.");
    }
    const auto columns = static_cast<std::size_t>(size);
    // Count, place, then sort and add up within each column; the diagonals come first of all.
    std::vector<std::int64_t> starts(columns + 1, 1);
    starts[0] = 0;
    for (const SymmetricEntry& entry : entries) {
        if (entry.row < 0 || entry.row >= size || entry.column < 0 || entry.column >= size) {
            return badEntries("An entry lies outside the matrix.");
        }
        if (!std::isfinite(entry.value)) {
            return badEntries("An entry of the matrix is not a finite number.");
        }
        ++starts[static_cast<std::size_t>(std::min(entry.row, entry.column)) + 1];
    }
    for (std::size_t column = 0; column < columns; ++column) {
        starts[column + 1] += starts[column];
    }
    std::vector<std::pair<std::int32_t, double>> placed(static_cast<std::size_t>(starts.back()));
    std::vector<std::int64_t> next(starts.begin(), starts.end() - 1);
    for (std::int32_t column = 0; column < size; ++column) {
        placed[static_cast<std::size_t>(next[static_cast<std::size_t>(column)]++)] = {column, 0.0};
    }
    for (const SymmetricEntry& entry : entries) {
        const auto [low, high] = std::minmax(entry.row, entry.column);
        placed[static_cast<std::size_t>(next[static_cast<std::size_t>(low)]++)] = {high,
                                                                                   entry.value};
    }
    SparseSymmetric matrix;
    matrix.m_columnStarts.resize(columns + 1);
    for (std::size_t column = 0; column < columns; ++column) {
        const auto first = placed.begin() + starts[column];
        const auto last = placed.begin() + starts[column + 1];
        std::stable_sort(first, last, [](const auto& one, const auto& other) {
            return one.first < other.first;
        });
        std::int32_t previous = -1;
        for (auto entry = first; entry != last; ++entry) {
            if (entry->first == previous) {
                matrix.m_values.back() += entry->second;
            } else {
                matrix.m_rows.push_back(entry->first);
                matrix.m_values.push_back(entry->second);
                previous = entry->first;
            }
        }
        matrix.m_columnStarts[column + 1] = static_cast<std::int64_t>(matrix.m_rows.size());
    }
    return matrix;
}

Result<SparseSymmetric> SparseSymmetric::fromColumns(std::vector<std::int64_t> columnStarts,
                                                     std::vector<std::int32_t> rows,
                                                     std::vector<double> values) {
    if (columnStarts.empty() || columnStarts.front() != 0 || rows.size() != values.size() ||
        columnStarts.back() != static_cast<std::int64_t>(rows.size())) {
        return badEntries("The columns of the matrix do not add up.");
    }
    const auto size = static_cast<std::int32_t>(columnStarts.size()) - 1;
    for (std::int32_t column = 0; column < size; ++column) {
        const std::int64_t first = columnStarts[static_cast<std::size_t>(column)];
        const std::int64_t last = columnStarts[static_cast<std::size_t>(column) + 1];
        if (first < 0 || last <= first || last > columnStarts.back() ||
            rows[static_cast<std::size_t>(first)] != column) {
            return badEntries("A column of the matrix does not begin with its diagonal.");
        }
        for (std::int64_t place = first + 1; place < last; ++place) {
            const auto here = static_cast<std::size_t>(place);
            if (rows[here] <= rows[here - 1] || rows[here] >= size) {
                return badEntries("The rows of a column do not rise within the matrix.");
            }
        }
    }
    if (!std::all_of(values.begin(), values.end(), [](double v) { return std::isfinite(v); })) {
        return badEntries("An entry of the matrix is not a finite number.");
    }
    SparseSymmetric matrix;
    matrix.m_columnStarts = std::move(columnStarts);
    matrix.m_rows = std::move(rows);
    matrix.m_values = std::move(values);
    return matrix;
}

double SparseSymmetric::at(std::int32_t row, std::int32_t column) const {
    const auto [low, high] = std::minmax(row, column);
    const auto first = m_rows.begin() + m_columnStarts[static_cast<std::size_t>(low)];
    const auto last = m_rows.begin() + m_columnStarts[static_cast<std::size_t>(low) + 1];
    const auto found = std::lower_bound(first, last, high);
    return found != last && *found == high
               ? m_values[static_cast<std::size_t>(found - m_rows.begin())]
               : 0.0;
}

std::vector<double> SparseSymmetric::times(std::span<const double> vector) const {
    std::vector<double> product(static_cast<std::size_t>(size()), 0.0);
    for (std::size_t column = 0; column < product.size(); ++column) {
        auto place = static_cast<std::size_t>(m_columnStarts[column]);
        const auto last = static_cast<std::size_t>(m_columnStarts[column + 1]);
        product[column] += m_values[place] * vector[column];
        for (++place; place < last; ++place) {
            const auto row = static_cast<std::size_t>(m_rows[place]);
            product[row] += m_values[place] * vector[column];
            product[column] += m_values[place] * vector[row];
        }
    }
    return product;
}

} // namespace pipwright
