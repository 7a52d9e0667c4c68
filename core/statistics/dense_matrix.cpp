#include "core/statistics/dense_matrix.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace pipwright {

namespace {

/// Pivots below this part of their diagonal entry are rounding.
constexpr double kPivotTolerance = 1e-11;

/// Cholesky by rows. `stop` receives the row whose pivot is not above the tolerance.
DenseMatrix factorRows(const DenseMatrix& matrix, bool allowZero,
                       std::optional<std::size_t>& stop) {
    const std::size_t size = matrix.rows();
    DenseMatrix lower(size, size);
    for (std::size_t i = 0; i < size; ++i) {
        for (std::size_t j = 0; j < i; ++j) {
            double rest = matrix(i, j);
            for (std::size_t k = 0; k < j; ++k) {
                rest -= lower(i, k) * lower(j, k);
            }
            lower(i, j) = lower(j, j) > 0 ? rest / lower(j, j) : 0;
        }
        double pivot = matrix(i, i);
        for (std::size_t k = 0; k < i; ++k) {
            pivot -= lower(i, k) * lower(i, k);
        }
        const double smallest = kPivotTolerance * std::abs(matrix(i, i));
        if (!(pivot > smallest)) {
            if (!allowZero || !(pivot >= -100 * smallest) || matrix(i, i) < 0) {
                stop = i;
                return lower;
            }
            pivot = 0;
        }
        lower(i, i) = std::sqrt(pivot);
    }
    return lower;
}

} // namespace

DenseMatrix::DenseMatrix(const std::vector<std::vector<double>>& rows)
    : DenseMatrix(rows.size(), rows.empty() ? 0 : rows.front().size()) {
    for (std::size_t i = 0; i < m_rows; ++i) {
        std::copy_n(rows[i].begin(), std::min(m_columns, rows[i].size()),
                    m_values.begin() + static_cast<std::ptrdiff_t>(i * m_columns));
    }
}

bool DenseMatrix::isFinite() const {
    return std::all_of(m_values.begin(), m_values.end(),
                       [](double value) { return std::isfinite(value); });
}

bool DenseMatrix::isSymmetric() const {
    if (m_rows != m_columns) {
        return false;
    }
    for (std::size_t i = 0; i < m_rows; ++i) {
        for (std::size_t j = 0; j < i; ++j) {
            const double scale = std::sqrt(std::abs((*this)(i, i) * (*this)(j, j)));
            if (std::abs((*this)(i, j) - (*this)(j, i)) > 1e-9 * scale) {
                return false;
            }
        }
    }
    return true;
}

std::vector<double> DenseMatrix::times(std::span<const double> vector) const {
    std::vector<double> product(m_rows, 0);
    for (std::size_t i = 0; i < m_rows; ++i) {
        product[i] = dot(std::span(m_values).subspan(i * m_columns, m_columns), vector);
    }
    return product;
}

std::vector<double> DenseMatrix::transposedTimes(std::span<const double> vector) const {
    std::vector<double> product(m_columns, 0);
    for (std::size_t i = 0; i < m_rows; ++i) {
        for (std::size_t j = 0; j < m_columns; ++j) {
            product[j] += vector[i] * (*this)(i, j);
        }
    }
    return product;
}

double DenseMatrix::form(std::span<const double> left, std::span<const double> right) const {
    return dot(left, times(right));
}

double dot(std::span<const double> left, std::span<const double> right) {
    return std::inner_product(left.begin(), left.end(), right.begin(), 0.0);
}

std::optional<DenseMatrix> choleskyFactor(const DenseMatrix& matrix, Definiteness kind) {
    if (!matrix.isFinite() || !matrix.isSymmetric()) {
        return std::nullopt;
    }
    std::optional<std::size_t> stop;
    DenseMatrix lower = factorRows(matrix, kind == Definiteness::semidefinite, stop);
    if (stop) {
        return std::nullopt;
    }
    return lower;
}

std::optional<std::size_t> firstDependentRow(const DenseMatrix& matrix) {
    std::optional<std::size_t> stop;
    factorRows(matrix, false, stop);
    return stop;
}

std::optional<DenseMatrix> inverseOfPositive(const DenseMatrix& matrix) {
    const auto factor = choleskyFactor(matrix);
    if (!factor) {
        return std::nullopt;
    }
    const DenseMatrix& lower = *factor;
    const std::size_t size = matrix.rows();
    DenseMatrix lowerInverse(size, size);
    for (std::size_t column = 0; column < size; ++column) {
        for (std::size_t i = column; i < size; ++i) {
            double rest = i == column ? 1 : 0;
            for (std::size_t k = column; k < i; ++k) {
                rest -= lower(i, k) * lowerInverse(k, column);
            }
            lowerInverse(i, column) = rest / lower(i, i);
        }
    }
    DenseMatrix inverse(size, size);
    for (std::size_t i = 0; i < size; ++i) {
        for (std::size_t j = 0; j <= i; ++j) {
            double sum = 0;
            for (std::size_t k = i; k < size; ++k) {
                sum += lowerInverse(k, i) * lowerInverse(k, j);
            }
            inverse(i, j) = sum;
            inverse(j, i) = sum;
        }
    }
    return inverse;
}

} // namespace pipwright
