#include "core/statistics/mixed_model_axes.h"

#include <Eigen/Dense>

namespace pipwright {

namespace {

using Square = Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, Eigen::RowMajor>;

Eigen::Map<const Square> view(const std::vector<double>& matrix, std::int32_t width) {
    return {matrix.data(), width, width};
}

std::vector<double> list(const Square& matrix) {
    return {matrix.data(), matrix.data() + matrix.size()};
}

} // namespace

std::optional<std::vector<double>> axisRotation(const std::vector<double>& said,
                                                const std::vector<double>& solution,
                                                std::int32_t width, double nothing, double little) {
    constexpr double kStraight = 1e-3;
    const Eigen::SelfAdjointEigenSolver<Square> axes(view(said, width));
    const auto diagonal = view(said, width).diagonal().array();
    const Eigen::Index silent = (axes.eigenvalues().array() < nothing).count();
    const Eigen::Index known = (diagonal < 2 * nothing).count();
    // An axis on its way to 0 shrinks fastest when it is a column.
    const double least = axes.eigenvalues()(0);
    const bool shrinking = least < little && diagonal.minCoeff() > 2 * least + nothing;
    if (!shrinking && (silent == 0 || (silent == known && silent < 2))) {
        return std::nullopt;
    }
    Square rotation = axes.eigenvectors();
    if (silent > 1) {
        const Square slope =
            rotation.transpose() * (view(said, width) - view(solution, width)) * rotation;
        const Eigen::SelfAdjointEigenSolver<Square> among(
            Square(slope.topLeftCorner(silent, silent)));
        rotation.leftCols(silent) = (rotation.leftCols(silent) * among.eigenvectors()).eval();
    }
    if ((rotation.array().abs() < kStraight || rotation.array().abs() > 1 - kStraight).all()) {
        return std::nullopt; // they are columns already
    }
    return list(rotation);
}

std::vector<double> squareProduct(const std::vector<double>& left, const std::vector<double>& right,
                                  std::int32_t width) {
    return list(view(left, width) * view(right, width));
}

std::vector<double> boundedRoot(const std::vector<double>& matrix, std::int32_t width, double least,
                                double most) {
    const Eigen::SelfAdjointEigenSolver<Square> axes(view(matrix, width));
    const Eigen::VectorXd roots = axes.eigenvalues().cwiseMax(least).cwiseMin(most).cwiseSqrt();
    return list(axes.eigenvectors() * roots.asDiagonal() * axes.eigenvectors().transpose());
}

} // namespace pipwright
