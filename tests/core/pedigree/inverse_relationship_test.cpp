#include "core/pedigree/inbreeding.h"
#include "core/pedigree/inverse_relationship.h"
#include "core/pedigree/relationship.h"
#include "core/pedigree/relationship_factors.h"
#include "tests/core/pedigree/families.h"

#include <cmath>

namespace pipwright {
namespace {

LevelPrecision inverseOf(const Pedigree& pedigree) {
    return inverseRelationship(pedigree, inbreeding(pedigree), letterOf).value();
}

/// ln |A| by eliminating, from the whole matrix.
double logDeterminantOf(const RelationshipMatrix& table) {
    const auto size = static_cast<std::size_t>(table.size());
    std::vector<std::vector<double>> rest(size, std::vector<double>(size));
    for (std::size_t row = 0; row < size; ++row) {
        for (std::size_t column = 0; column < size; ++column) {
            rest[row][column] = table.at(static_cast<int>(row), static_cast<int>(column));
        }
    }
    double sum = 0;
    for (std::size_t pivot = 0; pivot < size; ++pivot) {
        sum += std::log(rest[pivot][pivot]);
        for (std::size_t row = pivot + 1; row < size; ++row) {
            const double times = rest[row][pivot] / rest[pivot][pivot];
            for (std::size_t column = pivot; column < size; ++column) {
                rest[row][column] -= times * rest[pivot][column];
            }
        }
    }
    return sum;
}

TEST(InverseRelationship, TimesTheRelationshipsIsTheIdentity) {
    const std::uint64_t seed = 1975;
    SCOPED_TRACE("seed " + std::to_string(seed));
    std::mt19937_64 random{seed};
    for (int round = 0; round < 150; ++round) {
        const auto pedigree = Pedigree::of(randomParents(random, 1 + round % 50), letterOf).value();
        const RelationshipMatrix table{pedigree};
        const LevelPrecision inverse = inverseOf(pedigree);
        for (int column = 0; column < pedigree.size(); ++column) {
            std::vector<double> relationships;
            for (int row = 0; row < pedigree.size(); ++row) {
                relationships.push_back(table.at(row, column));
            }
            const auto product = inverse.matrix.times(relationships);
            for (int row = 0; row < pedigree.size(); ++row) {
                EXPECT_NEAR(product[static_cast<std::size_t>(row)], row == column ? 1 : 0, 1e-10);
            }
            EXPECT_NEAR(inverse.relationshipDiagonal->at(static_cast<std::size_t>(column)),
                        table.at(column, column), 1e-12);
        }
        EXPECT_NEAR(*inverse.logDeterminant, -logDeterminantOf(table), 1e-9);
    }
}

TEST(InverseRelationship, MayBeEmptyOrHaveFoundersOnly) {
    EXPECT_EQ(inverseOf(pedigreeOf({})).matrix.size(), 0);
    const LevelPrecision inverse = inverseOf(pedigreeOf({{0, 0}, {0, 0}}));
    EXPECT_EQ(inverse.matrix.at(0, 0), 1);
    EXPECT_EQ(inverse.matrix.at(1, 0), 0);
    EXPECT_EQ(*inverse.logDeterminant, 0);
}

TEST(InverseRelationship, IsRefusedWhenNothingIsLeftToVary) {
    std::vector<Parents> parents{{}};
    for (int i = 1; i < 100; ++i) {
        parents.push_back({i - 1, i - 1});
    }
    const auto pedigree = Pedigree::of(parents, letterOf).value();
    const auto inverse = inverseRelationship(pedigree, inbreeding(pedigree), letterOf);
    ASSERT_FALSE(inverse.ok());
    EXPECT_NE(inverse.problem().what.find("wholly inbred"), std::string::npos);
    EXPECT_FALSE(inverse.problem().remedy.empty());
}

TEST(RelationshipFactors, MultiplyLikeTheTable) {
    const std::uint64_t seed = 409;
    SCOPED_TRACE("seed " + std::to_string(seed));
    std::mt19937_64 random{seed};
    for (int round = 0; round < 60; ++round) {
        const RelationshipFactors factors{
            Pedigree::of(randomParents(random, 1 + round % 30), letterOf).value()};
        const RelationshipMatrix table{factors.pedigree()};
        EXPECT_NEAR(factors.logDeterminant(), logDeterminantOf(table), 1e-9);
        for (int one = 0; one < factors.size(); ++one) {
            const auto column = factors.column(one);
            for (int other = 0; other < factors.size(); ++other) {
                EXPECT_NEAR(column[static_cast<std::size_t>(other)], table.at(one, other), 1e-12);
                EXPECT_NEAR(factors.at(one, other), table.at(one, other), 1e-12);
            }
        }
    }
}

} // namespace
} // namespace pipwright
