#include "core/pedigree/relationship.h"
#include "core/pedigree/triploids.h"
#include "tests/core/pedigree/families.h"

namespace pipwright {
namespace {

using From = Triploid::TwoSetsFrom;

/// A and B, their triploid child C, D of C and A, E of A and B, F of D and E.
Pedigree familyOfATriploid() {
    return pedigreeOf({{0, 0}, {0, 0}, {1, 2}, {3, 1}, {1, 2}, {4, 5}});
}

double shareOf(const Contributions& contributions, int founder) {
    for (const FounderShare& part : contributions.founders) {
        if (part.founder == founder) {
            return part.share;
        }
    }
    return 0;
}

TEST(Triploids, HaveTwoThirdsOfOneParent) {
    const Pedigree pedigree = familyOfATriploid();
    const std::vector<Triploid> one{{2, From::seedParent}};
    const Triploids triploids{pedigree, one};
    const auto own = founderContributions(pedigree, triploids, 2);
    EXPECT_NEAR(shareOf(own, 0), 2.0 / 3, 1e-12);
    EXPECT_NEAR(shareOf(own, 1), 1.0 / 3, 1e-12);
    const auto ofChild = founderContributions(pedigree, triploids, 3);
    EXPECT_NEAR(shareOf(ofChild, 0), 0.5 + 1.0 / 3, 1e-12);
    EXPECT_NEAR(shareOf(founderContributions(pedigree, triploids, 4), 0), 0.5, 1e-12);
}

TEST(Triploids, HalvesWhereTheGiverIsNotKnown) {
    const Pedigree pedigree = familyOfATriploid();
    const std::vector<Triploid> one{{2, From::unknown}};
    const Triploids triploids{pedigree, one};
    EXPECT_NEAR(shareOf(founderContributions(pedigree, triploids, 2), 0), 0.5, 1e-12);
    EXPECT_TRUE(triploids.hasUnsureShares(2));
    EXPECT_FALSE(triploids.hasUnsureShares(3));
}

TEST(Triploids, SharesOfAnUnknownParentAreUnknown) {
    const auto pedigree = pedigreeOf({{0, 0}, {1, 0}});
    const std::vector<Triploid> one{{1, From::pollenParent}};
    const auto contributions = founderContributions(pedigree, Triploids{pedigree, one}, 1);
    EXPECT_NEAR(shareOf(contributions, 0), 1.0 / 3, 1e-12);
    EXPECT_NEAR(contributions.unknown, 2.0 / 3, 1e-12);
}

TEST(Triploids, WhatDescendsFromThemHasNoF) {
    const Pedigree pedigree = familyOfATriploid();
    const std::vector<Triploid> one{{2, From::seedParent}};
    const Triploids triploids{pedigree, one};
    const auto traced = inbreeding(pedigree);
    EXPECT_EQ(triploids.triploidBehind(2), 2);
    EXPECT_EQ(triploids.triploidBehind(5), 2);
    EXPECT_EQ(triploids.triploidBehind(4), std::nullopt);
    const auto diploid = inbreedingOfCross(pedigree, triploids, traced, 0, 4, letterOf);
    ASSERT_TRUE(diploid.ok());
    EXPECT_NEAR(*diploid, 0.25, 1e-12);
    const auto direct = inbreedingOfCross(pedigree, triploids, traced, 0, 2, letterOf);
    ASSERT_FALSE(direct.ok());
    EXPECT_EQ(direct.problem().what,
              "C is a triploid; F is defined for diploids and is not computed here.");
    const auto later = inbreedingOfCross(pedigree, triploids, traced, 5, 0, letterOf);
    ASSERT_FALSE(later.ok());
    EXPECT_EQ(later.problem().what, "F descends from the triploid C; F is defined for diploids "
                                    "and is not computed here.");
}

TEST(Triploids, LeaveTheMatrixWithTheirSeedlings) {
    const Pedigree pedigree = familyOfATriploid();
    const std::vector<Triploid> one{{2, From::seedParent}};
    const Pedigree rest = withoutSeedlingsOf(pedigree, Triploids{pedigree, one});
    EXPECT_EQ(rest.parentsOf(2), (Parents{0, 1}));
    EXPECT_EQ(rest.parentsOf(3), (Parents{std::nullopt, 0}));
    EXPECT_NEAR(RelationshipMatrix{rest}.at(3, 1), 0, 1e-12);
}

} // namespace
} // namespace pipwright
