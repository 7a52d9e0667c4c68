#include "core/pedigree/inbreeding.h"
#include "core/pedigree/relationship.h"
#include "tests/core/pedigree/families.h"

#include <cmath>

namespace pipwright {
namespace {

TEST(Inbreeding, TracingAgreesWithTheTable) {
    const std::uint64_t seed = 1992;
    SCOPED_TRACE("seed " + std::to_string(seed));
    std::mt19937_64 random{seed};
    for (int round = 0; round < 200; ++round) {
        const auto pedigree = Pedigree::of(randomParents(random, 1 + round % 30), letterOf).value();
        const RelationshipMatrix table{pedigree};
        const auto traced = inbreeding(pedigree);
        for (int one = 0; one < pedigree.size(); ++one) {
            EXPECT_NEAR(traced[static_cast<std::size_t>(one)], table.at(one, one) - 1,
                        kHardlyRounded);
            for (int other = 0; other < pedigree.size(); ++other) {
                EXPECT_NEAR(coancestry(pedigree, traced, one, other), table.at(one, other) / 2,
                            kHardlyRounded);
            }
        }
    }
}

TEST(Inbreeding, CoancestryIsTheInbreedingOfTheSeedlings) {
    const std::uint64_t seed = 1976;
    SCOPED_TRACE("seed " + std::to_string(seed));
    std::mt19937_64 random{seed};
    for (int round = 0; round < 200; ++round) {
        auto parents = randomParents(random, 15);
        const auto before = Pedigree::of(parents, letterOf).value();
        const int one = static_cast<int>(random() % 15);
        const int other = static_cast<int>(random() % 15);
        parents.push_back({one, other});
        const auto after = Pedigree::of(parents, letterOf).value();
        EXPECT_NEAR(coancestry(before, inbreeding(before), one, other), inbreeding(after).back(),
                    kHardlyRounded);
    }
}

TEST(Inbreeding, OfManySelfingsNearsOne) {
    std::vector<Parents> parents{{}};
    // So many that climbing the line from each of them would take long.
    for (int i = 1; i < 50000; ++i) {
        parents.push_back({i - 1, i - 1});
    }
    const auto pedigree = Pedigree::of(parents, letterOf).value();
    const auto result = inbreeding(pedigree);
    EXPECT_NEAR(result[10], 1 - std::pow(0.5, 10), kHardlyRounded);
    EXPECT_EQ(result.back(), 1.0);
}

TEST(Inbreeding, SelfingsAmongCrossesAgreeWithTheTable) {
    const std::uint64_t seed = 2002;
    SCOPED_TRACE("seed " + std::to_string(seed));
    std::mt19937_64 random{seed};
    for (int round = 0; round < 200; ++round) {
        std::vector<Parents> parents{{}, {}, {}};
        while (parents.size() < 40) {
            // Half selfings, of the young rather than of the old, the rest crosses with any.
            const auto count = static_cast<int>(parents.size());
            const int one = count - 1 - static_cast<int>(random() % 3);
            const int other = random() % 2 == 0 ? one : static_cast<int>(random() % parents.size());
            parents.push_back({one, other});
        }
        const auto pedigree = Pedigree::of(parents, letterOf).value();
        const RelationshipMatrix table{pedigree};
        const auto traced = inbreeding(pedigree);
        for (int one = 0; one < pedigree.size(); ++one) {
            EXPECT_NEAR(traced[static_cast<std::size_t>(one)], table.at(one, one) - 1,
                        kHardlyRounded);
        }
    }
}

TEST(Inbreeding, SharesTooSmallForANumberAreLeftOut) {
    // Two lines cross and part again for so many generations, half of each lost to unknown
    // pollen, that the oldest share is below the smallest number while its paths double.
    std::vector<Parents> parents{{}, {}};
    for (int generation = 0; generation < 2400; ++generation) {
        const int one = static_cast<int>(parents.size()) - 2;
        const bool crosses = generation % 2 == 0;
        parents.push_back({one, crosses ? std::optional{one + 1} : std::nullopt});
        parents.push_back({one + 1, crosses ? std::optional{one} : std::nullopt});
    }
    const auto pedigree = Pedigree::of(parents, letterOf).value();
    const int last = pedigree.size() - 1;
    EXPECT_NEAR(coancestry(pedigree, inbreeding(pedigree), last, last), 0.5, kHardlyRounded);
    EXPECT_NEAR(founderContributions(pedigree, last).unknown, 1, kHardlyRounded);
}

TEST(FounderContributions, SumToOneAndAgreeWithTheTable) {
    const std::uint64_t seed = 314;
    SCOPED_TRACE("seed " + std::to_string(seed));
    std::mt19937_64 random{seed};
    for (int round = 0; round < 200; ++round) {
        const auto pedigree = Pedigree::of(randomParents(random, 20), letterOf).value();
        const RelationshipMatrix table{pedigree};
        const int genotype = static_cast<int>(random() % 20);
        const Contributions contributions = founderContributions(pedigree, genotype);
        double sum = contributions.unknown;
        for (const auto& part : contributions.founders) {
            // A founder's relationship to its descendant is what it contributes.
            EXPECT_NEAR(part.share, table.at(part.founder, genotype), kHardlyRounded);
            sum += part.share;
        }
        EXPECT_NEAR(sum, 1, kHardlyRounded);
    }
}

TEST(FounderContributions, TheLargestComesFirst) {
    const auto pedigree = pedigreeOf({{0, 0}, {0, 0}, {1, 2}, {3, 1}});
    const auto contributions = founderContributions(pedigree, 3);
    ASSERT_EQ(contributions.founders.size(), 2U);
    EXPECT_EQ(contributions.founders[0].founder, 0);
    EXPECT_DOUBLE_EQ(contributions.founders[0].share, 0.75);
    EXPECT_DOUBLE_EQ(contributions.founders[1].share, 0.25);
    EXPECT_EQ(contributions.unknown, 0);
    EXPECT_DOUBLE_EQ(founderContributions(pedigree, 0).founders.at(0).share, 1);
}

TEST(MendelianSampling, RebuildsTheDiagonal) {
    const std::uint64_t seed = 88;
    SCOPED_TRACE("seed " + std::to_string(seed));
    std::mt19937_64 random{seed};
    for (int round = 0; round < 100; ++round) {
        const auto pedigree = Pedigree::of(randomParents(random, 20), letterOf).value();
        const RelationshipMatrix table{pedigree};
        const auto part = mendelianSampling(pedigree, inbreeding(pedigree));
        for (int child = 0; child < pedigree.size(); ++child) {
            // Variance of a child = that of its parents' mean + its Mendelian sampling.
            const Parents& both = pedigree.parentsOf(child);
            double ofMean = 0;
            for (const auto one : {both.seed, both.pollen}) {
                for (const auto other : {both.seed, both.pollen}) {
                    ofMean += one && other ? table.at(*one, *other) / 4 : 0;
                }
            }
            EXPECT_NEAR(table.at(child, child), ofMean + part[static_cast<std::size_t>(child)],
                        kHardlyRounded);
        }
    }
}

} // namespace
} // namespace pipwright
