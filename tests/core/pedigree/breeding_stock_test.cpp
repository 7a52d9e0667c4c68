#include "core/pedigree/ancestor_queue.h"
#include "core/pedigree/breeding_stock.h"
#include "core/pedigree/inbreeding.h"
#include "core/pedigree/relationship.h"
#include "tests/core/pedigree/families.h"

#include <algorithm>
#include <numeric>
#include <set>

namespace pipwright {
namespace {

TEST(AncestorQueue, GivesEachNumberOnceFromTheHighest) {
    const std::uint64_t seed = 64;
    SCOPED_TRACE("seed " + std::to_string(seed));
    std::mt19937_64 random{seed};
    for (const int bound : {1, 63, 64, 65, 4096, 4097, 20000}) {
        AncestorQueue queue{bound};
        std::set<int> waiting;
        for (int round = 0; round < 300; ++round) {
            const int number = static_cast<int>(random() % static_cast<unsigned>(bound));
            queue.insert(number);
            waiting.insert(number);
            if (random() % 3 == 0) {
                EXPECT_EQ(queue.takeHighest(), *waiting.rbegin());
                waiting.erase(std::prev(waiting.end()));
            }
        }
        for (auto number = waiting.rbegin(); number != waiting.rend(); ++number) {
            EXPECT_EQ(queue.takeHighest(), *number);
        }
        EXPECT_EQ(queue.takeHighest(), -1);
    }
}

TEST(BreedingStock, KeepsEachParentAndEachCrossOnce) {
    const std::uint64_t seed = 2002;
    SCOPED_TRACE("seed " + std::to_string(seed));
    std::mt19937_64 random{seed};
    for (int round = 0; round < 200; ++round) {
        const auto parents = randomParents(random, 1 + round % 60);
        const auto pedigree = Pedigree::of(parents, letterOf).value();
        const BreedingStock stock = breedingStockOf(pedigree);
        std::set<int> someParent;
        std::set<std::pair<int, int>> crosses;
        for (const Parents& both : parents) {
            someParent.insert(both.seed.value_or(-1));
            someParent.insert(both.pollen.value_or(-1));
            if (both.seed && both.pollen) {
                crosses.insert(std::minmax(*both.seed, *both.pollen));
            }
        }
        someParent.erase(-1);
        EXPECT_EQ(std::set<int>(stock.members.begin(), stock.members.end()), someParent);
        EXPECT_EQ(stock.members.size(), someParent.size());
        EXPECT_EQ(stock.mates.size(), crosses.size());
        for (std::size_t parent = 0; parent < stock.members.size(); ++parent) {
            EXPECT_LT(stock.seed[parent], static_cast<int>(parent));
            EXPECT_LT(stock.pollen[parent], static_cast<int>(parent));
        }
        std::vector<double> number(stock.mates.size());
        std::iota(number.begin(), number.end(), 0.0);
        const auto ofChild = spreadOverLitters(stock, parents.size(), number, -1);
        for (std::size_t child = 0; child < parents.size(); ++child) {
            const bool bothKnown = parents[child].seed && parents[child].pollen;
            EXPECT_EQ(ofChild[child] < 0, !bothKnown);
        }
    }
}

/// Families of sibs over some generations, from few parents, as in an orchard.
std::vector<Parents> orchardShaped(std::mt19937_64& random, int generations, int families) {
    std::vector<Parents> parents(12);
    for (int generation = 0; generation < generations; ++generation) {
        const auto older = parents.size();
        for (int family = 0; family < families; ++family) {
            const Parents both{static_cast<int>(random() % older),
                               static_cast<int>(random() % older)};
            parents.insert(parents.end(), 1 + random() % 7, both);
        }
    }
    return parents;
}

TEST(BreedingStock, ItsInbreedingIsThatOfTheTable) {
    const std::uint64_t seed = 34;
    SCOPED_TRACE("seed " + std::to_string(seed));
    std::mt19937_64 random{seed};
    for (int round = 0; round < 12; ++round) {
        const auto pedigree = Pedigree::of(orchardShaped(random, 2 + round, 14), letterOf).value();
        const RelationshipMatrix table{pedigree};
        const auto quick = inbreeding(pedigree);
        double highest = 0;
        for (int member = 0; member < pedigree.size(); ++member) {
            const double known = table.at(member, member) - 1;
            EXPECT_NEAR(quick[static_cast<std::size_t>(member)], known, kHardlyRounded);
            highest = std::max(highest, known);
        }
        EXPECT_GT(highest, 0.2) << "a pedigree that tests nothing";
    }
}

TEST(BreedingStock, NumbersOfGenotypesDoNotMatter) {
    const std::uint64_t seed = 1001;
    SCOPED_TRACE("seed " + std::to_string(seed));
    std::mt19937_64 random{seed};
    for (int round = 0; round < 20; ++round) {
        const auto parents = orchardShaped(random, 6, 10);
        std::vector<int> newNumber(parents.size());
        std::iota(newNumber.begin(), newNumber.end(), 0);
        std::shuffle(newNumber.begin(), newNumber.end(), random);
        const auto renumbered = [&](std::optional<int> one) {
            return one ? std::optional{newNumber[static_cast<std::size_t>(*one)]} : one;
        };
        std::vector<Parents> shuffled(parents.size());
        for (std::size_t member = 0; member < parents.size(); ++member) {
            // Who was seed and who was pollen parent does not matter either.
            shuffled[static_cast<std::size_t>(newNumber[member])] = {
                renumbered(parents[member].pollen), renumbered(parents[member].seed)};
        }
        const auto before = inbreeding(Pedigree::of(parents, letterOf).value());
        const auto after = inbreeding(Pedigree::of(shuffled, letterOf).value());
        for (std::size_t member = 0; member < parents.size(); ++member) {
            EXPECT_DOUBLE_EQ(before[member], after[static_cast<std::size_t>(newNumber[member])]);
        }
    }
}

TEST(BreedingStock, ColumnsThatDoNotGoTogetherAreRefused) {
    EXPECT_FALSE(Pedigree::ofColumns({-1, 0}, {-1}, letterOf).ok());
    EXPECT_FALSE(Pedigree::ofColumns({-1, 2}, {-1, 0}, letterOf).ok());
    EXPECT_FALSE(Pedigree::ofColumns({-1, 0}, {-2, 0}, letterOf).ok());
    const auto sorted = Pedigree::ofColumns({-1, 0}, {-1, 0}, letterOf);
    ASSERT_TRUE(sorted.ok());
    EXPECT_EQ(sorted->parentsFirst(), (std::vector<int>{0, 1}));
    const auto reversed = Pedigree::ofColumns({1, -1}, {-1, -1}, letterOf);
    ASSERT_TRUE(reversed.ok());
    EXPECT_EQ(reversed->parentsFirst(), (std::vector<int>{1, 0}));
    EXPECT_EQ(reversed->rankOf(1), 0);
    EXPECT_EQ(reversed->atRank(0), 1);
}

} // namespace
} // namespace pipwright
