#include "core/statistics/sparse_cholesky.h"
#include "core/statistics/sparse_ordering.h"
#include "core/statistics/sparse_panel_kernels.h"
#include "core/statistics/sparse_symmetric.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <gtest/gtest.h>
#include <limits>
#include <random>
#include <set>
#include <string>
#include <vector>

namespace pipwright {
namespace {

/// A full symmetric matrix, for comparison.
struct Full {
    std::size_t size = 0;
    std::vector<double> numbers;

    explicit Full(std::size_t count) : size(count), numbers(count * count, 0.0) {}
    double& at(std::size_t row, std::size_t column) { return numbers[row * size + column]; }
    [[nodiscard]] double at(std::size_t row, std::size_t column) const {
        return numbers[row * size + column];
    }
};

/// The inverse by Gauss-Jordan without exchanges, and ln of the determinant; of the leading part.
double invert(Full& matrix, std::size_t part) {
    double logDeterminant = 0;
    for (std::size_t pivot = 0; pivot < part; ++pivot) {
        const double value = matrix.at(pivot, pivot);
        logDeterminant += std::log(value);
        matrix.at(pivot, pivot) = 1;
        for (std::size_t column = 0; column < part; ++column) {
            matrix.at(pivot, column) /= value;
        }
        for (std::size_t row = 0; row < part; ++row) {
            if (row == pivot) {
                continue;
            }
            const double factor = matrix.at(row, pivot);
            matrix.at(row, pivot) = 0;
            for (std::size_t column = 0; column < part; ++column) {
                matrix.at(row, column) -= factor * matrix.at(pivot, column);
            }
        }
    }
    return logDeterminant;
}

/// A random sparse positive definite matrix whose unknowns come in nodes of one or two, the last
/// `last` nodes coupled with all others on demand.
struct RandomMatrix {
    SymmetricPattern pattern;
    std::vector<double> values;
    std::vector<std::int32_t> firstUnknown{0};
    Full full{0};

    RandomMatrix(std::uint32_t seed, std::int32_t last, bool border, int density) {
        std::mt19937 engine(seed);
        const auto upTo = [&engine](std::int32_t count) {
            return static_cast<std::int32_t>(engine() % static_cast<std::uint32_t>(count));
        };
        const std::int32_t nodes = last + 4 + upTo(90);
        for (std::int32_t node = 0; node < nodes; ++node) {
            const std::int32_t weight = node < nodes - last && upTo(3) == 0 ? 2 : 1;
            firstUnknown.push_back(firstUnknown.back() + weight);
        }
        const auto size = static_cast<std::size_t>(firstUnknown.back());
        std::vector<std::set<std::int32_t>> columns(size);
        const auto couple = [&](std::int32_t one, std::int32_t other) {
            for (std::int32_t i = firstUnknown[static_cast<std::size_t>(one)];
                 i < firstUnknown[static_cast<std::size_t>(one) + 1]; ++i) {
                for (std::int32_t j = firstUnknown[static_cast<std::size_t>(other)];
                     j < firstUnknown[static_cast<std::size_t>(other) + 1]; ++j) {
                    columns[static_cast<std::size_t>(std::min(i, j))].insert(std::max(i, j));
                }
            }
        };
        for (std::int32_t node = 0; node < nodes; ++node) {
            couple(node, node);
            for (std::int32_t other = nodes - last; border && other < nodes; ++other) {
                couple(node, other);
            }
        }
        for (int pair = 0; pair < density * nodes; ++pair) {
            couple(upTo(nodes), upTo(nodes));
        }
        fill(columns, engine);
    }

  private:
    void fill(const std::vector<std::set<std::int32_t>>& columns, std::mt19937& engine) {
        const std::size_t size = columns.size();
        full = Full(size);
        std::uniform_real_distribution<double> between(-1, 1);
        std::vector<double> sums(size, 1.0);
        for (std::size_t column = 0; column < size; ++column) {
            for (const std::int32_t row : columns[column]) {
                const double value = between(engine);
                pattern.rows.push_back(row);
                values.push_back(value);
                if (static_cast<std::size_t>(row) != column) {
                    full.at(static_cast<std::size_t>(row), column) = value;
                    full.at(column, static_cast<std::size_t>(row)) = value;
                    sums[column] += std::abs(value);
                    sums[static_cast<std::size_t>(row)] += std::abs(value);
                }
            }
            pattern.starts.push_back(static_cast<std::int64_t>(pattern.rows.size()));
        }
        for (std::size_t column = 0; column < size; ++column) {
            full.at(column, column) = sums[column]; // the diagonal outweighs the rest
            values[static_cast<std::size_t>(pattern.starts[column])] = sums[column];
        }
    }
};

/// Compares everything a factor gives with the full inverse.
void expectFactor(const RandomMatrix& matrix, std::int32_t last) {
    std::vector<std::int64_t> all(matrix.pattern.rows.size());
    for (std::size_t place = 0; place < all.size(); ++place) {
        all[place] = static_cast<std::int64_t>(place);
    }
    const FactorPlan plan(
        matrix.pattern, chooseStructure(nodeGraph(matrix.pattern, matrix.firstUnknown), last), all);
    SparseCholesky factor(plan);
    ASSERT_TRUE(factor.factorise(matrix.values));
    const std::size_t size = matrix.full.size;
    for (const std::int32_t without : {0, last}) {
        Full inverse = matrix.full;
        const std::size_t part = size - static_cast<std::size_t>(without);
        const double logDeterminant = invert(inverse, part);
        EXPECT_NEAR(factor.logDeterminant(without), logDeterminant, 1e-9);
        std::vector<double> numbers(all.size());
        factor.inverse(numbers, without);
        for (std::size_t column = 0; column < size; ++column) {
            for (auto place = static_cast<std::size_t>(matrix.pattern.starts[column]);
                 place < static_cast<std::size_t>(matrix.pattern.starts[column + 1]); ++place) {
                const auto row = static_cast<std::size_t>(matrix.pattern.rows[place]);
                const double known = row < part && column < part ? inverse.at(row, column) : 0.0;
                EXPECT_NEAR(numbers[place], known, 1e-11);
            }
        }
        if (without == 0) {
            std::vector<double> sides(2 * size, 0.0); // unit vectors for the first and the last
            sides[0] = 1;
            sides[2 * size - 1] = 1;
            std::vector<double> products(4, 0.0);
            factor.subtractProducts(sides, 2, products);
            factor.solve(sides, 2);
            for (std::size_t row = 0; row < size; ++row) {
                EXPECT_NEAR(sides[2 * row], inverse.at(row, 0), 1e-11);
                EXPECT_NEAR(sides[2 * row + 1], inverse.at(row, size - 1), 1e-11);
            }
            EXPECT_NEAR(products[1], -inverse.at(0, size - 1), 1e-11);
        }
    }
}

TEST(SparseCholesky, GivesWhatTheFullMatrixGives) {
    for (std::uint32_t seed = 100; seed < 160; ++seed) {
        SCOPED_TRACE("seed " + std::to_string(seed));
        const auto last = static_cast<std::int32_t>(seed % 4);
        expectFactor(RandomMatrix(seed, last, seed % 2 == 0, static_cast<int>(seed % 5) + 1), last);
    }
}

TEST(SparseCholesky, RefusesWhatIsNotPositiveDefinite) {
    RandomMatrix matrix(7, 1, false, 2);
    matrix.values[0] = -1;
    const FactorPlan plan(matrix.pattern,
                          chooseStructure(nodeGraph(matrix.pattern, matrix.firstUnknown), 1), {});
    EXPECT_FALSE(SparseCholesky(plan).factorise(matrix.values));
    matrix.values[0] = std::numeric_limits<double>::quiet_NaN();
    EXPECT_FALSE(SparseCholesky(plan).factorise(matrix.values));
}

/// Two crossed factors as mixed models have them: every level of the first meets `each` of the
/// second, taken from one of `blocks` separate groups.
NodeGraph crossed(std::int32_t first, std::int32_t second, std::int32_t each, std::int32_t blocks) {
    std::mt19937 engine(11);
    SymmetricPattern pattern;
    std::vector<std::int32_t> nodes{0};
    for (std::int32_t node = 0; node < first + second; ++node) {
        std::set<std::int32_t> rows{node};
        const std::int32_t width = second / blocks;
        for (std::int32_t k = 0; node < first && k < each; ++k) {
            rows.insert(first + (node % blocks) * width +
                        static_cast<std::int32_t>(engine() % static_cast<std::uint32_t>(width)));
        }
        pattern.rows.insert(pattern.rows.end(), rows.begin(), rows.end());
        pattern.starts.push_back(static_cast<std::int64_t>(pattern.rows.size()));
        nodes.push_back(node + 1);
    }
    return nodeGraph(pattern, nodes);
}

TEST(SparseOrdering, EliminatesTheLargeFactorFirst) {
    // Well mixed: 600 levels against 30 need about 600 x 10^2 / 2 + 30^3 / 6 operations.
    const SparseStructure structure = chooseStructure(crossed(600, 30, 10, 1), 0);
    EXPECT_LT(structure.operations, 60'000);
}

TEST(SparseOrdering, FindsSeparateParts) {
    // Ten groups of 60 levels, each a problem of its own; as one dense tail it would be 600^3 / 6.
    const SparseStructure structure = chooseStructure(crossed(6000, 600, 12, 10), 0);
    EXPECT_LT(structure.operations, 3'000'000);
}

TEST(SparseOrdering, IsAPermutation) {
    const SparseStructure structure = chooseStructure(crossed(300, 80, 4, 2), 3);
    std::vector<std::int32_t> seen = structure.unknownAt;
    std::sort(seen.begin(), seen.end());
    for (std::size_t unknown = 0; unknown < seen.size(); ++unknown) {
        EXPECT_EQ(seen[unknown], static_cast<std::int32_t>(unknown));
        EXPECT_EQ(structure.unknownAt[static_cast<std::size_t>(structure.positionOf[unknown])],
                  static_cast<std::int32_t>(unknown));
    }
    EXPECT_EQ(structure.unknownAt.back(), 379); // the last nodes stay last
}

TEST(PanelKernels, ProductsOfAllShapes) {
    std::mt19937 engine(5);
    std::uniform_real_distribution<double> between(-1, 1);
    panels::Space space;
    for (const std::size_t rows : {1U, 7U, 25U, 200U}) {
        for (const std::size_t columns : {1U, 5U, 9U, 64U}) {
            for (const std::size_t inner : {1U, 3U, 40U, 300U}) {
                std::vector<double> left(rows * inner);
                std::vector<double> right(columns * inner);
                std::generate(left.begin(), left.end(), [&] { return between(engine); });
                std::generate(right.begin(), right.end(), [&] { return between(engine); });
                std::vector<double> target(rows * columns, 1.0);
                panels::subtractProduct({target.data(), rows}, {left.data(), rows},
                                        {right.data(), columns}, rows, columns, inner, false,
                                        space);
                for (std::size_t row = 0; row < rows; ++row) {
                    for (std::size_t column = 0; column < columns; ++column) {
                        double known = 1;
                        for (std::size_t k = 0; k < inner; ++k) {
                            known -= left[row + k * rows] * right[column + k * columns];
                        }
                        ASSERT_NEAR(target[row + column * rows], known, 1e-12);
                    }
                }
            }
        }
    }
}

TEST(SparseSymmetric, AddsEntriesOfEitherTriangle) {
    const std::vector<SymmetricEntry> entries{{0, 1, 2}, {1, 0, 3}, {2, 2, 4}, {0, 0, 1}};
    const auto matrix = SparseSymmetric::fromEntries(3, entries);
    ASSERT_TRUE(matrix.ok());
    EXPECT_EQ(matrix->at(1, 0), 5);
    EXPECT_EQ(matrix->at(0, 1), 5);
    EXPECT_EQ(matrix->at(1, 1), 0);
    EXPECT_EQ(matrix->at(2, 0), 0);
    EXPECT_EQ(matrix->times(std::vector<double>{1, 2, 3}), (std::vector<double>{11, 5, 12}));
}

TEST(SparseSymmetric, RefusesBrokenMatrices) {
    const double nan = std::numeric_limits<double>::quiet_NaN();
    EXPECT_FALSE(SparseSymmetric::fromEntries(-1, {}).ok());
    const auto fromOne = [](std::int32_t size, SymmetricEntry entry) {
        return SparseSymmetric::fromEntries(size, std::vector<SymmetricEntry>{entry}).ok();
    };
    EXPECT_FALSE(fromOne(2, {0, 2, 1}));
    EXPECT_FALSE(fromOne(2, {-1, 0, 1}));
    EXPECT_FALSE(fromOne(2, {0, 0, nan}));
    EXPECT_TRUE(SparseSymmetric::fromColumns({0, 2, 3}, {0, 1, 1}, {2, 1, 2}).ok());
    EXPECT_FALSE(SparseSymmetric::fromColumns({0, 2, 3}, {1, 0, 1}, {2, 1, 2}).ok());
    EXPECT_FALSE(SparseSymmetric::fromColumns({0, 2, 3}, {0, 2, 1}, {2, 1, 2}).ok());
    EXPECT_FALSE(SparseSymmetric::fromColumns({0, 3, 2}, {0, 1}, {2, 1}).ok());
    EXPECT_FALSE(SparseSymmetric::fromColumns({}, {}, {}).ok());
    EXPECT_FALSE(SparseSymmetric::fromColumns({0, 1}, {0}, {nan}).ok());
}

TEST(SparseSymmetric, SummaryOfTheInverse) {
    // [4 2; 2 3]: determinant 8, inverse [3 -2; -2 4] / 8.
    const auto matrix = SparseSymmetric::fromEntries(
        2, std::vector<SymmetricEntry>{{0, 0, 4}, {1, 0, 2}, {1, 1, 3}});
    const auto summary = summariseInverse(*matrix);
    ASSERT_TRUE(summary.ok());
    EXPECT_NEAR(summary->logDeterminant, std::log(8), 1e-14);
    EXPECT_NEAR(summary->diagonal[0], 0.375, 1e-15);
    EXPECT_NEAR(summary->diagonal[1], 0.5, 1e-15);
    EXPECT_TRUE(summariseInverse(SparseSymmetric()).ok());
    const auto flat = SparseSymmetric::fromEntries(
        2, std::vector<SymmetricEntry>{{0, 0, 1}, {1, 0, 1}, {1, 1, 1}});
    EXPECT_FALSE(summariseInverse(*flat).ok());
}

} // namespace
} // namespace pipwright
