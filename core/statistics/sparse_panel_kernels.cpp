#include "core/statistics/sparse_panel_kernels.h"

#include <algorithm>
#include <cmath>

// The product kernel follows Goto & van de Geijn (2008), ACM Trans. Math. Softw. 34(3):12: both
// operands are repacked into strips that stay in the caches while a small tile of the result is
// held in registers.

#if defined(__x86_64__) && (defined(__GNUC__) || defined(__clang__))
#define PIPWRIGHT_WIDE_KERNELS 1
#endif

namespace pipwright::panels {

namespace {

constexpr std::size_t kInnerBlock = 256; // repacked strips of this depth fit the second cache
constexpr std::size_t kRowBlock = 192;
constexpr std::size_t kSmallProduct = 4096; // below this many multiplications packing costs more

template <int Width>
struct Lane {
    typedef double Vector __attribute__((vector_size(Width * sizeof(double))));
};

#define PIPWRIGHT_INLINE __attribute__((always_inline)) inline

/// Strips of `Tile` rows of a (rows x inner) block, one strip after the other, short ones padded.
template <std::size_t Tile>
PIPWRIGHT_INLINE void pack(const double* source, std::size_t stride, std::size_t rows,
                           std::size_t inner, double* packed) {
    for (std::size_t row = 0; row < rows; row += Tile) {
        const std::size_t height = rows - row < Tile ? rows - row : Tile;
        for (std::size_t depth = 0; depth < inner; ++depth) {
            const double* column = source + row + depth * stride;
            if (height == Tile) {
                for (std::size_t i = 0; i < Tile; ++i) {
                    packed[i] = column[i];
                }
            } else {
                for (std::size_t i = 0; i < Tile; ++i) {
                    packed[i] = i < height ? column[i] : 0.0;
                }
            }
            packed += Tile;
        }
    }
}

/// One tile: target -= left strip * right strip'.
template <int Width, int Vectors, int Columns>
PIPWRIGHT_INLINE void tile(double* target, std::size_t stride, const double* left,
                           const double* right, std::size_t inner, std::size_t rows,
                           std::size_t columns) {
    using Vector = typename Lane<Width>::Vector;
    constexpr std::size_t kRows = Width * Vectors;
    Vector sum[Columns][Vectors] = {};
    for (std::size_t depth = 0; depth < inner; ++depth) {
        Vector factor[Vectors];
        for (int v = 0; v < Vectors; ++v) {
            __builtin_memcpy(&factor[v], left + v * Width, sizeof(Vector));
        }
        for (int column = 0; column < Columns; ++column) {
            const double other = right[column];
            for (int v = 0; v < Vectors; ++v) {
                sum[column][v] += factor[v] * other;
            }
        }
        left += kRows;
        right += Columns;
    }
    if (rows == kRows && columns == static_cast<std::size_t>(Columns)) {
        for (std::size_t column = 0; column < static_cast<std::size_t>(Columns); ++column) {
            for (std::size_t v = 0; v < static_cast<std::size_t>(Vectors); ++v) {
                double* place = target + column * stride + v * Width;
                Vector before;
                __builtin_memcpy(&before, place, sizeof(Vector));
                before -= sum[column][v];
                __builtin_memcpy(place, &before, sizeof(Vector));
            }
        }
        return;
    }
    double edge[Columns][kRows];
    for (int column = 0; column < Columns; ++column) {
        for (int v = 0; v < Vectors; ++v) {
            __builtin_memcpy(&edge[column][v * Width], &sum[column][v], sizeof(Vector));
        }
    }
    for (std::size_t column = 0; column < columns; ++column) {
        for (std::size_t row = 0; row < rows; ++row) {
            target[row + column * stride] -= edge[column][row];
        }
    }
}

template <int Width, int Vectors, int Columns>
PIPWRIGHT_INLINE void largeProduct(Block target, ConstBlock left, ConstBlock right,
                                   std::size_t rows, std::size_t columns, std::size_t inner,
                                   bool lowerOnly, double* packedLeft, double* packedRight) {
    constexpr std::size_t kRows = Width * Vectors;
    constexpr std::size_t kColumns = Columns;
    for (std::size_t depth = 0; depth < inner; depth += kInnerBlock) {
        const std::size_t part = inner - depth < kInnerBlock ? inner - depth : kInnerBlock;
        pack<kColumns>(right.first + depth * right.stride, right.stride, columns, part,
                       packedRight);
        for (std::size_t block = 0; block < rows; block += kRowBlock) {
            const std::size_t height = rows - block < kRowBlock ? rows - block : kRowBlock;
            pack<kRows>(left.first + block + depth * left.stride, left.stride, height, part,
                        packedLeft);
            for (std::size_t column = 0; column < columns; column += kColumns) {
                if (lowerOnly && block + height <= column) {
                    break;
                }
                const std::size_t width = columns - column < kColumns ? columns - column : kColumns;
                for (std::size_t row = 0; row < height; row += kRows) {
                    const std::size_t tall = height - row < kRows ? height - row : kRows;
                    if (lowerOnly && block + row + tall <= column) {
                        continue;
                    }
                    tile<Width, Vectors, Columns>(
                        target.first + block + row + column * target.stride, target.stride,
                        packedLeft + row * part, packedRight + column * part, part, tall, width);
                }
            }
        }
    }
}

PIPWRIGHT_INLINE void smallProduct(Block target, ConstBlock left, ConstBlock right,
                                   std::size_t rows, std::size_t columns, std::size_t inner,
                                   bool lowerOnly) {
    for (std::size_t column = 0; column < columns; ++column) {
        double* place = target.first + column * target.stride;
        const std::size_t first = lowerOnly ? column : 0;
        for (std::size_t depth = 0; depth < inner; ++depth) {
            const double factor = right.first[column + depth * right.stride];
            const double* source = left.first + depth * left.stride;
            for (std::size_t row = first; row < rows; ++row) {
                place[row] -= source[row] * factor;
            }
        }
    }
}

PIPWRIGHT_INLINE void spread(ConstBlock lowerRows, std::size_t columns, const Placement& placement,
                             const ParentFront& parent, double* work) {
    const std::size_t count = placement.count;
    for (std::size_t j = 0; j < count; ++j) {
        const auto column = static_cast<std::size_t>(placement.place[j]);
        // Shifted so that the front's own row numbers can be used in either part.
        double* target = column < parent.pivots
                             ? parent.panel.first + column * parent.panel.stride
                             : parent.remainder.first +
                                   (column - parent.pivots) * parent.remainder.stride -
                                   parent.pivots;
        const double* source = lowerRows.first;
        const double* values = work;
        double scale = 1;
        if (columns == 1) {
            values = source;
            scale = source[j];
        } else {
            for (std::size_t i = j; i < count; ++i) {
                work[i] = source[i] * source[j];
            }
            for (std::size_t depth = 1; depth < columns; ++depth) {
                const double* next = source + depth * lowerRows.stride;
                const double factor = next[j];
                for (std::size_t i = j; i < count; ++i) {
                    work[i] += next[i] * factor;
                }
            }
        }
        std::size_t i = j;
        for (; i < placement.contiguousFrom; ++i) {
            target[placement.place[i]] -= values[i] * scale;
        }
        if (i < count) {
            double* run = target + placement.place[i] - i;
            for (; i < count; ++i) {
                run[i] -= values[i] * scale;
            }
        }
    }
}

PIPWRIGHT_INLINE double quadratic(ConstBlock source, const Placement& placement,
                                  const double* vector, double* product) {
    const std::size_t count = placement.count;
    double total = 0;
    for (std::size_t j = 0; j < count; ++j) {
        const double* column =
            source.first + static_cast<std::size_t>(placement.place[j]) * source.stride;
        const double own = column[placement.place[j]];
        double below = 0;
        const double factor = vector[j];
        std::size_t i = j + 1;
        for (; i < placement.contiguousFrom; ++i) {
            const double value = column[placement.place[i]];
            below += value * vector[i];
            if (product != nullptr) {
                product[i] += value * factor;
            }
        }
        if (i < count) {
            const double* run = column + placement.place[i] - i;
            if (product != nullptr) {
                for (std::size_t k = i; k < count; ++k) {
                    product[k] += run[k] * factor;
                }
            }
            double part[4] = {0, 0, 0, 0};
            for (; i + 4 <= count; i += 4) {
                for (std::size_t lane = 0; lane < 4; ++lane) {
                    part[lane] += run[i + lane] * vector[i + lane];
                }
            }
            for (; i < count; ++i) {
                below += run[i] * vector[i];
            }
            below += (part[0] + part[1]) + (part[2] + part[3]);
        }
        if (product != nullptr) {
            product[j] += own * factor + below;
        }
        total += factor * (own * factor + 2 * below);
    }
    return total;
}

/// The loops in one width.
struct Kernels {
    void (*large)(Block, ConstBlock, ConstBlock, std::size_t, std::size_t, std::size_t, bool,
                  double*, double*);
    void (*small)(Block, ConstBlock, ConstBlock, std::size_t, std::size_t, std::size_t, bool);
    void (*spread)(ConstBlock, std::size_t, const Placement&, const ParentFront&, double*);
    double (*quadratic)(ConstBlock, const Placement&, const double*, double*);
};

#define PIPWRIGHT_KERNELS(name, attribute, width, vectors, columns)                                \
    attribute void name##Large(Block target, ConstBlock left, ConstBlock right, std::size_t rows,  \
                               std::size_t wide, std::size_t inner, bool lowerOnly,                \
                               double* packedLeft, double* packedRight) {                          \
        largeProduct<width, vectors, columns>(target, left, right, rows, wide, inner, lowerOnly,   \
                                              packedLeft, packedRight);                            \
    }                                                                                              \
    attribute void name##Small(Block target, ConstBlock left, ConstBlock right, std::size_t rows,  \
                               std::size_t wide, std::size_t inner, bool lowerOnly) {              \
        smallProduct(target, left, right, rows, wide, inner, lowerOnly);                           \
    }                                                                                              \
    attribute void name##Spread(ConstBlock lowerRows, std::size_t wide,                            \
                                const Placement& placement, const ParentFront& parent,             \
                                double* work) {                                                    \
        spread(lowerRows, wide, placement, parent, work);                                          \
    }                                                                                              \
    attribute double name##Quadratic(ConstBlock source, const Placement& placement,                \
                                     const double* vector, double* product) {                      \
        return quadratic(source, placement, vector, product);                                      \
    }                                                                                              \
    constexpr Kernels name = {name##Large, name##Small, name##Spread, name##Quadratic};

PIPWRIGHT_KERNELS(kNarrow, , 2, 2, 4)
#ifdef PIPWRIGHT_WIDE_KERNELS
PIPWRIGHT_KERNELS(kWide, __attribute__((target("avx2,fma"))), 4, 2, 6)
PIPWRIGHT_KERNELS(kWidest, __attribute__((target("avx512f,avx512dq,avx512vl,avx2,fma"))), 8, 3, 8)
#endif

void grow(std::vector<double>& room, std::size_t size) {
    if (room.size() < size) {
        room.resize(size);
    }
}

const Kernels& kernels() {
    static const Kernels chosen = [] {
#ifdef PIPWRIGHT_WIDE_KERNELS
        if (__builtin_cpu_supports("avx512f") && __builtin_cpu_supports("avx512dq") &&
            __builtin_cpu_supports("avx512vl")) {
            return kWidest;
        }
        if (__builtin_cpu_supports("avx2") && __builtin_cpu_supports("fma")) {
            return kWide;
        }
#endif
        return kNarrow;
    }();
    return chosen;
}

} // namespace

void subtractProduct(Block target, ConstBlock left, ConstBlock right, std::size_t rows,
                     std::size_t columns, std::size_t inner, bool lowerOnly, Space& space) {
    if (rows * columns * inner < kSmallProduct || columns < 4 || rows < 4) {
        kernels().small(target, left, right, rows, columns, inner, lowerOnly);
        return;
    }
    constexpr std::size_t kPadding = 32;
    const std::size_t depth = std::min(inner, kInnerBlock);
    const std::size_t leftRoom = (std::min(rows, kRowBlock) + kPadding) * depth;
    const std::size_t rightRoom = (columns + kPadding) * depth;
    grow(space.left, leftRoom);
    grow(space.right, rightRoom);
    kernels().large(target, left, right, rows, columns, inner, lowerOnly, space.left.data(),
                    space.right.data());
}

bool factorisePanel(Block panel, std::size_t rows, std::size_t columns, double smallestPivot,
                    Space& space) {
    constexpr std::size_t kBlock = 32;
    for (std::size_t begin = 0; begin < columns; begin += kBlock) {
        const std::size_t end = std::min(begin + kBlock, columns);
        double* corner = panel.first + begin + begin * panel.stride;
        if (begin > 0) {
            const ConstBlock before{panel.first + begin, panel.stride};
            subtractProduct({corner, panel.stride}, before, before, rows - begin, end - begin,
                            begin, true, space);
        }
        for (std::size_t column = begin; column < end; ++column) {
            double* pivotColumn = panel.first + column * panel.stride;
            const double pivot = pivotColumn[column];
            if (!(pivot > smallestPivot)) {
                return false;
            }
            const double root = std::sqrt(pivot);
            const double inverse = 1 / root;
            pivotColumn[column] = root;
            for (std::size_t row = column + 1; row < rows; ++row) {
                pivotColumn[row] *= inverse;
            }
            if (column + 1 < end) {
                const std::size_t next = column + 1;
                const ConstBlock source{pivotColumn + next, panel.stride};
                kernels().small({panel.first + next + next * panel.stride, panel.stride}, source,
                                source, rows - next, end - next, 1, true);
            }
        }
    }
    return true;
}

void invertTriangle(ConstBlock triangle, Block inverse, std::size_t size, Space& space) {
    // Column block by column block: below a diagonal block, L X = 0 is solved forwards, the
    // products with what is known already taken in one go.
    constexpr std::size_t kBlock = 32;
    grow(space.block, kBlock * size);
    double* turned = space.block.data();
    for (std::size_t begin = 0; begin < size; begin += kBlock) {
        const std::size_t end = std::min(begin + kBlock, size);
        const std::size_t width = end - begin;
        for (std::size_t column = begin; column < end; ++column) {
            std::fill_n(inverse.first + column * inverse.stride, size, 0.0);
            inverse.first[column + column * inverse.stride] = 1;
        }
        for (std::size_t top = begin; top < size; top += kBlock) {
            const std::size_t bottom = std::min(top + kBlock, size);
            double* part = inverse.first + top + begin * inverse.stride;
            if (top > begin) {
                subtractProduct({part, inverse.stride},
                                {triangle.first + top + begin * triangle.stride, triangle.stride},
                                {turned, width}, bottom - top, width, top - begin, false, space);
            }
            for (std::size_t column = 0; column < width; ++column) {
                double* values = part + column * inverse.stride;
                for (std::size_t row = 0; row < bottom - top; ++row) {
                    const double* below = triangle.first + top + (top + row) * triangle.stride;
                    const double value = values[row] / below[row];
                    values[row] = value;
                    for (std::size_t next = row + 1; next < bottom - top; ++next) {
                        values[next] -= value * below[next];
                    }
                    turned[column + (top - begin + row) * width] = value;
                }
            }
        }
    }
}

void squareTriangle(ConstBlock triangle, Block target, std::size_t size, Space& space) {
    constexpr std::size_t kBlock = 96;
    if (size == 1) {
        target.first[0] = triangle.first[0] * triangle.first[0];
        return;
    }
    // X' is needed with its columns along memory; minus the product is subtracted.
    grow(space.block, size * size);
    double* turned = space.block.data();
    for (std::size_t column = 0; column < size; ++column) {
        for (std::size_t row = 0; row < size; ++row) {
            turned[column + row * size] =
                row < column ? 0.0 : triangle.first[row + column * triangle.stride];
        }
        std::fill_n(target.first + column * target.stride, size, 0.0);
    }
    for (std::size_t begin = 0; begin < size; begin += kBlock) {
        const std::size_t end = std::min(begin + kBlock, size);
        // Rows `begin` to `end` of the result (columns up to `end`) need X from row `begin` on.
        subtractProduct({target.first + begin, target.stride},
                        {turned + begin + begin * size, size}, {turned + begin * size, size},
                        end - begin, end, size - begin, false, space);
    }
    for (std::size_t column = 0; column < size; ++column) {
        for (std::size_t row = column; row < size; ++row) {
            const double value = -target.first[row + column * target.stride];
            target.first[row + column * target.stride] = value;
            target.first[column + row * target.stride] = value;
        }
    }
}

void spreadUpdate(ConstBlock lowerRows, std::size_t columns, const Placement& placement,
                  const ParentFront& parent, Space& space) {
    grow(space.block, placement.count);
    kernels().spread(lowerRows, columns, placement, parent, space.block.data());
}

void spreadRemainder(ConstBlock remainder, const Placement& placement, const ParentFront& parent) {
    for (std::size_t j = 0; j < placement.count; ++j) {
        const auto column = static_cast<std::size_t>(placement.place[j]);
        double* target = column < parent.pivots
                             ? parent.panel.first + column * parent.panel.stride
                             : parent.remainder.first +
                                   (column - parent.pivots) * parent.remainder.stride -
                                   parent.pivots;
        const double* source = remainder.first + j * remainder.stride;
        std::size_t i = j;
        for (; i < placement.contiguousFrom; ++i) {
            target[placement.place[i]] += source[i];
        }
        if (i < placement.count) {
            double* run = target + placement.place[i] - i;
            for (; i < placement.count; ++i) {
                run[i] += source[i];
            }
        }
    }
}

void gatherSymmetric(ConstBlock source, const Placement& placement, Block target) {
    for (std::size_t j = 0; j < placement.count; ++j) {
        const double* column =
            source.first + static_cast<std::size_t>(placement.place[j]) * source.stride;
        double* place = target.first + j * target.stride;
        for (std::size_t i = 0; i < placement.contiguousFrom; ++i) {
            place[i] = column[placement.place[i]];
        }
        if (placement.contiguousFrom < placement.count) {
            std::copy_n(column + placement.place[placement.contiguousFrom],
                        placement.count - placement.contiguousFrom,
                        place + placement.contiguousFrom);
        }
    }
}

double gatherQuadratic(ConstBlock source, const Placement& placement, const double* vector,
                       double* product) {
    return kernels().quadratic(source, placement, vector, product);
}

} // namespace pipwright::panels
