#pragma once

#include <cstdint>
#include <optional>
#include <vector>

/// Turning and stretching of the k x k matrix L of a random term's covariance S = L L'. All
/// matrices have their rows in a row.
namespace pipwright {

/// How to turn L so that the axes of which the data say (next to) nothing become columns of it, and
/// the gradient has no covariances among those of which they say nothing: an orthogonal matrix, or
/// nothing when L is best left as it is. `said` is q I - T and `solution` U (see
/// RestrictedLikelihood); below `nothing` an axis is as good as 0, below `little` it is on its way.
std::optional<std::vector<double>> axisRotation(const std::vector<double>& said,
                                                const std::vector<double>& solution,
                                                std::int32_t width, double nothing, double little);

/// The product of two k x k matrices.
std::vector<double> squareProduct(const std::vector<double>& left, const std::vector<double>& right,
                                  std::int32_t width);

/// The symmetric root of a symmetric matrix, its eigenvalues held between two bounds: it moves S
/// to L (I + D) L' and leaves axes that D does not name where they are.
std::vector<double> boundedRoot(const std::vector<double>& matrix, std::int32_t width, double least,
                                double most);

} // namespace pipwright
