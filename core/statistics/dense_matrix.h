#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

namespace pipwright {

/// A small full matrix, row by row.
class DenseMatrix {
  public:
    DenseMatrix() = default;
    DenseMatrix(std::size_t rows, std::size_t columns)
        : m_rows(rows), m_columns(columns), m_values(rows * columns, 0) {}
    /// Rows of equal length.
    explicit DenseMatrix(const std::vector<std::vector<double>>& rows);

    [[nodiscard]] std::size_t rows() const { return m_rows; }
    [[nodiscard]] std::size_t columns() const { return m_columns; }
    [[nodiscard]] double operator()(std::size_t row, std::size_t column) const {
        return m_values[row * m_columns + column];
    }
    double& operator()(std::size_t row, std::size_t column) {
        return m_values[row * m_columns + column];
    }
    [[nodiscard]] bool isFinite() const;
    /// Square and equal to its transpose up to rounding.
    [[nodiscard]] bool isSymmetric() const;
    /// this x vector; as long as rows().
    [[nodiscard]] std::vector<double> times(std::span<const double> vector) const;
    /// vector' x this; as long as columns().
    [[nodiscard]] std::vector<double> transposedTimes(std::span<const double> vector) const;
    /// left' x this x right.
    [[nodiscard]] double form(std::span<const double> left, std::span<const double> right) const;

    bool operator==(const DenseMatrix&) const = default;

  private:
    std::size_t m_rows = 0;
    std::size_t m_columns = 0;
    std::vector<double> m_values;
};

double dot(std::span<const double> left, std::span<const double> right);

/// Lower triangular L with L L' = matrix (Cholesky). The `semidefinite` kind lets a pivot be 0.
/// Nothing when the matrix is not positive (semi)definite up to rounding.
enum class Definiteness { positive, semidefinite };
std::optional<DenseMatrix> choleskyFactor(const DenseMatrix& matrix,
                                          Definiteness kind = Definiteness::positive);

/// The first row that depends on those before it (a pivot lost to rounding); nothing when the
/// symmetric matrix is positive definite.
std::optional<std::size_t> firstDependentRow(const DenseMatrix& matrix);

/// The inverse of a symmetric positive definite matrix; nothing when it is not.
std::optional<DenseMatrix> inverseOfPositive(const DenseMatrix& matrix);

} // namespace pipwright
