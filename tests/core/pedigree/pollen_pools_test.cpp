#include "core/pedigree/inbreeding.h"
#include "core/pedigree/inverse_relationship.h"
#include "core/pedigree/pollen_pools.h"
#include "core/pedigree/relationship.h"
#include "tests/core/pedigree/families.h"

#include <limits>

namespace pipwright {
namespace {

TEST(PollenPools, OneFatherMakesFullSibsAndManyMakeHalfSibs) {
    const auto open = pedigreeOf({{0, 0}, {1, 0}, {1, 0}});
    const auto kinship = [&](double fathers) {
        const std::vector<PollenPool> pools{{fathers, {1, 2}}};
        const Pedigree pooled = withPollenPools(open, pools, letterOf).value();
        return coancestry(pooled, inbreeding(pooled), 1, 2);
    };
    EXPECT_NEAR(kinship(1), 0.25, 1e-12);
    EXPECT_NEAR(kinship(5), (1 + 0.2) / 8, 1e-12);
    EXPECT_NEAR(kinship(1e12), 0.125, 1e-12);
    EXPECT_NEAR(coancestry(open, inbreeding(open), 1, 2), 0.125, 1e-12);
}

TEST(PollenPools, AgreeWithTheTableAndTheInverse) {
    const std::uint64_t seed = 455;
    SCOPED_TRACE("seed " + std::to_string(seed));
    std::mt19937_64 random{seed};
    for (int round = 0; round < 60; ++round) {
        const auto parents = randomParents(random, 24);
        std::vector<PollenPool> pools{{1.5, {}}, {4, {}}};
        for (int child = 0; child < 24; ++child) {
            if (!parents[static_cast<std::size_t>(child)].pollen) {
                pools[random() % 2].seedlings.push_back(child);
            }
        }
        const Pedigree pooled =
            withPollenPools(Pedigree::of(parents, letterOf).value(), pools, letterOf).value();
        ASSERT_EQ(pooled.size(), 26);
        const RelationshipMatrix table{pooled};
        const auto traced = inbreeding(pooled);
        const auto inverse = inverseRelationship(pooled, traced, letterOf).value();
        for (int one = 0; one < pooled.size(); ++one) {
            EXPECT_NEAR(traced[static_cast<std::size_t>(one)], table.at(one, one) - 1, 1e-12);
            std::vector<double> column;
            for (int other = 0; other < pooled.size(); ++other) {
                column.push_back(table.at(one, other));
                EXPECT_NEAR(coancestry(pooled, traced, one, other), table.at(one, other) / 2,
                            1e-12);
            }
            const auto product = inverse.matrix.times(column);
            for (int row = 0; row < pooled.size(); ++row) {
                EXPECT_NEAR(product[static_cast<std::size_t>(row)], row == one ? 1 : 0, 1e-10);
            }
        }
    }
}

TEST(PollenPools, AreRefusedWhenTheyMakeNoSense) {
    const auto pedigree = pedigreeOf({{0, 0}, {1, 0}, {1, 2}});
    const auto refusal = [&](const PollenPool& pool) {
        const auto result = withPollenPools(pedigree, std::vector{pool}, letterOf);
        return result ? "accepted" : result.problem().what;
    };
    EXPECT_EQ(refusal({0.5, {1}}), "A pollen pool needs at least one father.");
    EXPECT_EQ(refusal({std::numeric_limits<double>::quiet_NaN(), {1}}),
              "A pollen pool needs at least one father.");
    EXPECT_EQ(refusal({2, {7}}), "A seedling of a pollen pool is not among the genotypes.");
    EXPECT_EQ(refusal({2, {2}}), "C already has a pollen parent.");
    EXPECT_EQ(refusal({2, {1, 1}}), "B already has a pollen parent.");
    EXPECT_EQ(refusal({2, {1}}), "accepted");
}

} // namespace
} // namespace pipwright
