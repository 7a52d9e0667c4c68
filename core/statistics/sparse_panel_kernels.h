#pragma once

#include <cstddef>
#include <cstdint>
#include <vector>

/// Dense arithmetic on the panels of a sparse factor. Matrices lie column by column; `stride` is
/// the distance from one column to the next. Of symmetric matrices the lower triangle counts.
/// The loops exist in three widths; the widest one this processor has is taken when the program
/// starts, so a program built anywhere runs everywhere.
namespace pipwright::panels {

/// Room for repacked operands, kept between calls.
struct Space {
    std::vector<double> left;
    std::vector<double> right;
    std::vector<double> block;
};

/// A part of a matrix somewhere in memory.
struct Block {
    double* first = nullptr;
    std::size_t stride = 0;
};
struct ConstBlock {
    const double* first = nullptr;
    std::size_t stride = 0;
};

/// target (rows x columns) -= left (rows x inner) * right' (right: columns x inner). With
/// `lowerOnly`, places above the diagonal may or may not be touched.
void subtractProduct(Block target, ConstBlock left, ConstBlock right, std::size_t rows,
                     std::size_t columns, std::size_t inner, bool lowerOnly, Space& space);

/// Cholesky factor of the first `columns` columns of a front of `rows` rows, in place. Returns
/// false when a pivot is not above `smallestPivot`.
bool factorisePanel(Block panel, std::size_t rows, std::size_t columns, double smallestPivot,
                    Space& space);

/// The inverse of a lower triangle of `size`, written to `inverse` (its upper triangle becomes 0).
void invertTriangle(ConstBlock triangle, Block inverse, std::size_t size, Space& space);

/// target = X'X for a lower triangle X of `size`, both triangles written.
void squareTriangle(ConstBlock triangle, Block target, std::size_t size, Space& space);

/// Where the rows of a front stand in its parent's front.
struct Placement {
    const std::int32_t* place = nullptr; ///< one a row, rising
    std::size_t count = 0;
    std::size_t contiguousFrom = 0; ///< from this row on the places are consecutive
};

/// The parent of a front: its first `pivots` columns are the panel, the rest the remainder, whose
/// row and column 0 are the front's row `pivots`.
struct ParentFront {
    Block panel;
    Block remainder;
    std::size_t pivots = 0;
};

/// parent -= panel rows * panel rows', added at their places: the update of a front that had none
/// to pass on.
void spreadUpdate(ConstBlock lowerRows, std::size_t columns, const Placement& placement,
                  const ParentFront& parent, Space& space);

/// parent += remainder of the child, at its places.
void spreadRemainder(ConstBlock remainder, const Placement& placement, const ParentFront& parent);

/// A sub-matrix of a symmetric matrix (both triangles) at the places given, both triangles.
void gatherSymmetric(ConstBlock source, const Placement& placement, Block target);

/// y' S y and, where `product` is given, S y, S the sub-matrix of a symmetric matrix (lower
/// triangle read) at the places given.
double gatherQuadratic(ConstBlock source, const Placement& placement, const double* vector,
                       double* product);

} // namespace pipwright::panels
