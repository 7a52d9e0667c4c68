#pragma once

#include "core/statistics/mixed_model_fit.h"

#include <cstddef>
#include <vector>

/// A mixed model solved the slow way: the covariance matrix of all records written down and
/// inverted, generalised least squares, and BLUP as G Z' V^-1 (y - X b). It shares no formula with
/// Henderson's equations, and no code with the library.
namespace pipwright::dense {

struct Matrix {
    std::size_t rows = 0;
    std::size_t columns = 0;
    std::vector<double> cells{};

    Matrix() = default;
    Matrix(std::size_t rowCount, std::size_t columnCount)
        : rows(rowCount), columns(columnCount), cells(rowCount * columnCount) {}
    double& at(std::size_t row, std::size_t column) { return cells[row * columns + column]; }
    [[nodiscard]] double at(std::size_t row, std::size_t column) const {
        return cells[row * columns + column];
    }
};

Matrix transposed(const Matrix& matrix);
Matrix product(const Matrix& left, const Matrix& right);
/// Of a symmetric positive definite matrix.
Matrix inverseOf(const Matrix& matrix, double* logDeterminant = nullptr);

struct Answer {
    double criterion = 0;
    std::vector<double> fixed{}; ///< as MixedFit::fixedEffects; 0 where dropped
    std::vector<bool> dropped{};
    std::vector<double> random{}; ///< term by term, level by level, effect by effect
    /// Of the prediction errors of all fixed, then all random effects; 0 where dropped.
    Matrix errorCovariance{};
};

/// Everything at the variances given, in the order of MixedFit::varianceComponents. The records
/// must all be usable.
Answer solve(const MixedModel& model, const VarianceValues& variances, LikelihoodKind likelihood);

} // namespace pipwright::dense
