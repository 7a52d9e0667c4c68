#include "core/pedigree/inbreeding.h"
#include "core/pedigree/inverse_relationship.h"
#include "core/pedigree/relationship.h"
#include "core/pedigree/relationship_factors.h"
#include "tests/checks/relationship_matrices.h"
#include "tests/checks/tolerances.h"
#include "tests/core/pedigree/families.h"

#include <cmath>

namespace pipwright {
namespace {

TEST(RelationshipCheck, MatrixFactorsAndInverseOfEveryKnownPedigree) {
    for (const KnownRelationships& known : knownRelationships()) {
        SCOPED_TRACE(known.name);
        const RelationshipFactors factors{pedigreeOf(known.parents)};
        const RelationshipMatrix table{factors.pedigree()};
        const auto inverse =
            inverseRelationship(factors.pedigree(), factors.inbreedings(), letterOf).value();
        ASSERT_EQ(known.relationships.size(), known.inverse.size());
        std::size_t at = 0;
        for (int row = 0; row < table.size(); ++row) {
            for (int column = 0; column <= row; ++column, ++at) {
                SCOPED_TRACE(std::to_string(row + 1) + ", " + std::to_string(column + 1));
                const double relationship = known.relationships.at(at);
                EXPECT_NEAR(table.at(row, column), relationship, kClosedForm);
                EXPECT_NEAR(factors.at(row, column), relationship, kClosedForm);
                EXPECT_NEAR(inverse.matrix.at(row, column), known.inverse.at(at), kClosedForm);
            }
            EXPECT_NEAR(factors.inbreedings()[static_cast<std::size_t>(row)],
                        known.relationships.at(at - 1) - 1, kClosedForm);
            EXPECT_NEAR(inverse.relationshipDiagonal->at(static_cast<std::size_t>(row)),
                        known.relationships.at(at - 1), kClosedForm);
        }
        EXPECT_EQ(at, known.relationships.size());
    }
}

/// The determinant of A by hand: the product of D.
TEST(RelationshipCheck, DeterminantOfSelfingThenOpenPollination) {
    // D = 1, 1, .5, .5, .25, .625, .5.
    const RelationshipFactors factors{
        pedigreeOf({{0, 0}, {0, 0}, {1, 2}, {3, 3}, {4, 4}, {4, 0}, {6, 3}})};
    EXPECT_NEAR(factors.logDeterminant(), std::log(.5 * .5 * .25 * .625 * .5), kClosedForm);
    const auto inverse =
        inverseRelationship(factors.pedigree(), factors.inbreedings(), letterOf).value();
    EXPECT_NEAR(*inverse.logDeterminant, -factors.logDeterminant(), kClosedForm);
}

// Henderson's rules where a parent counts twice: the diagonal of a selfed line, and of the one
// selfed and then open pollinated.
TEST(RelationshipCheck, SelfingCountsItsParentTwice) {
    const auto line = pedigreeOf({{0, 0}, {1, 1}, {2, 2}, {3, 3}});
    const auto inverse = inverseRelationship(line, inbreeding(line), letterOf).value();
    const std::vector<double> diagonal{3, 6, 12, 8};
    const std::vector<double> beside{-2, -4, -8};
    for (int i = 0; i < 4; ++i) {
        EXPECT_NEAR(inverse.matrix.at(i, i), diagonal[static_cast<std::size_t>(i)], kClosedForm);
    }
    for (int i = 0; i < 3; ++i) {
        EXPECT_NEAR(inverse.matrix.at(i + 1, i), beside[static_cast<std::size_t>(i)], kClosedForm);
    }
}

// Mrode (2014), example 4.1. The inverse printed on page 64 shows other numbers in rows 2, 3 and 5
// (1.5, 1.83, -.67), as if the second parent of member 5 were unknown; the solutions printed with
// it need that parent known. Rows 1, 4, 6, 7 and 8 agree; the others are held to the pedigree.
TEST(RelationshipCheck, MrodeExample41PrintedRows) {
    const auto pedigree =
        pedigreeOf({{0, 0}, {0, 0}, {0, 0}, {1, 2}, {3, 2}, {1, 5}, {3, 4}, {1, 7}});
    const auto inverse = inverseRelationship(pedigree, inbreeding(pedigree), letterOf).value();
    const std::vector<double> firstRow{2.5, .5, 0, -1, .5, -1, .5, -1};
    for (int column = 0; column < 8; ++column) {
        EXPECT_NEAR(inverse.matrix.at(0, column), firstRow[static_cast<std::size_t>(column)],
                    kClosedForm);
    }
    EXPECT_NEAR(inverse.matrix.at(1, 1), 2, kClosedForm);
    EXPECT_NEAR(inverse.matrix.at(2, 2), 2, kClosedForm);
    EXPECT_NEAR(inverse.matrix.at(4, 4), 2.5, kClosedForm);
}

} // namespace
} // namespace pipwright
