#pragma once

#include "core/units/result.h"

#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

namespace pipwright {

/// One number of a symmetric matrix; (row, column) and (column, row) name the same one.
struct SymmetricEntry {
    std::int32_t row = 0;
    std::int32_t column = 0;
    double value = 0;
};

/// A sparse symmetric matrix: its lower triangle, column by column, rows rising within a column.
/// Every diagonal entry is stored. Value type; always valid once made.
class SparseSymmetric {
  public:
    /// The empty matrix, of size 0.
    SparseSymmetric() : m_columnStarts{0} {}

    /// From entries in any order and either triangle; entries of the same place are added.
    /// Diagonal entries that are missing are stored as 0.
    /// Problem badInput: negative size, a row or column outside the matrix, a value that is not a
    /// finite number.
    static Result<SparseSymmetric> fromEntries(std::int32_t size,
                                               std::span<const SymmetricEntry> entries);

    /// From a lower triangle by columns: the rows of column j stand at
    /// [columnStarts[j], columnStarts[j + 1]), rising, the diagonal first.
    /// Problem badInput: anything that breaks this.
    static Result<SparseSymmetric> fromColumns(std::vector<std::int64_t> columnStarts,
                                               std::vector<std::int32_t> rows,
                                               std::vector<double> values);

    [[nodiscard]] std::int32_t size() const {
        return static_cast<std::int32_t>(m_columnStarts.size()) - 1;
    }
    [[nodiscard]] const std::vector<std::int64_t>& columnStarts() const { return m_columnStarts; }
    [[nodiscard]] const std::vector<std::int32_t>& rows() const { return m_rows; }
    [[nodiscard]] const std::vector<double>& values() const { return m_values; }

    /// The number at (row, column), 0 where none is stored.
    [[nodiscard]] double at(std::int32_t row, std::int32_t column) const;

    /// The product with a vector of `size()` numbers.
    [[nodiscard]] std::vector<double> times(std::span<const double> vector) const;

  private:
    std::vector<std::int64_t> m_columnStarts;
    std::vector<std::int32_t> m_rows;
    std::vector<double> m_values;
};

/// What a factorisation tells of a positive definite matrix Q.
struct InverseSummary {
    double logDeterminant = 0;    ///< ln |Q|
    std::vector<double> diagonal; ///< of the inverse of Q
};

/// ln |Q| and the diagonal of the inverse of Q, by sparse Cholesky factors and the sparse inverse
/// (Takahashi, Fagan & Chin 1973). Problem badInput when Q is not positive definite.
Result<InverseSummary> summariseInverse(const SparseSymmetric& matrix);

} // namespace pipwright
