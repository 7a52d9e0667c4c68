#include "core/pedigree/pedigree.h"
#include "tests/core/pedigree/families.h"

#include <algorithm>
#include <set>

namespace pipwright {
namespace {

TEST(Pedigree, ParentsComeFirst) {
    const std::uint64_t seed = 1922;
    SCOPED_TRACE("seed " + std::to_string(seed));
    std::mt19937_64 random{seed};
    for (int round = 0; round < 300; ++round) {
        const auto pedigree = Pedigree::of(randomParents(random, 1 + round % 40), letterOf);
        ASSERT_TRUE(pedigree.ok()) << pedigree.problem().sentence();
        const auto& order = pedigree->parentsFirst();
        ASSERT_EQ(std::set<int>(order.begin(), order.end()).size(),
                  static_cast<std::size_t>(pedigree->size()));
        const auto generation = generations(*pedigree);
        for (int child = 0; child < pedigree->size(); ++child) {
            EXPECT_EQ(order[static_cast<std::size_t>(pedigree->rankOf(child))], child);
            const Parents& both = pedigree->parentsOf(child);
            int latest = -1;
            for (const auto parent : {both.seed, both.pollen}) {
                if (parent) {
                    EXPECT_LT(pedigree->rankOf(*parent), pedigree->rankOf(child));
                    latest = std::max(latest, generation[static_cast<std::size_t>(*parent)]);
                }
            }
            EXPECT_EQ(generation[static_cast<std::size_t>(child)], latest + 1);
        }
    }
}

TEST(Pedigree, NamesTheRing) {
    // B is a parent of C, C of D, D of B; A stands outside and E hangs on.
    const auto pedigree = Pedigree::of({{}, {0, 3}, {1, {}}, {0, 2}, {3, 0}}, letterOf);
    ASSERT_FALSE(pedigree.ok());
    EXPECT_EQ(pedigree.problem().what,
              "B would be its own ancestor: B is a parent of C is a parent "
              "of D is a parent of B.");
    EXPECT_FALSE(pedigree.problem().remedy.empty());
}

TEST(Pedigree, ItsOwnParentIsARing) {
    const auto pedigree = Pedigree::of({{0, {}}}, letterOf);
    ASSERT_FALSE(pedigree.ok());
    EXPECT_EQ(pedigree.problem().what, "A would be its own ancestor: A is a parent of A.");
}

TEST(Pedigree, ALongRingIsToldShort) {
    std::vector<Parents> parents;
    for (int i = 0; i < 50000; ++i) {
        parents.push_back({(i + 1) % 50000, {}});
    }
    const auto pedigree = Pedigree::of(parents, letterOf);
    ASSERT_FALSE(pedigree.ok());
    EXPECT_LT(pedigree.problem().what.size(), 600U);
    EXPECT_EQ(ringAmong(parents)->size(), 50000U);
}

TEST(Pedigree, EveryMemberOfARingIsAParentOfTheNext) {
    const std::uint64_t seed = 5;
    SCOPED_TRACE("seed " + std::to_string(seed));
    std::mt19937_64 random{seed};
    int rings = 0;
    for (int round = 0; round < 500; ++round) {
        auto parents = randomParents(random, 20);
        parents[random() % 20].seed = static_cast<int>(random() % 20); // perhaps a younger one
        const auto ring = ringAmong(parents);
        EXPECT_EQ(ring.has_value(), !Pedigree::of(parents, letterOf).ok());
        if (!ring) {
            continue;
        }
        ++rings;
        EXPECT_EQ(std::set<int>(ring->begin(), ring->end()).size(), ring->size());
        for (std::size_t i = 0; i < ring->size(); ++i) {
            const int child = (*ring)[(i + 1) % ring->size()];
            const Parents& both = parents[static_cast<std::size_t>(child)];
            EXPECT_TRUE(both.seed == (*ring)[i] || both.pollen == (*ring)[i]);
        }
    }
    EXPECT_GT(rings, 50);
    EXPECT_LT(rings, 450);
}

TEST(Pedigree, RefusesAParentThatIsNotThere) {
    const auto pedigree = Pedigree::of({{}, {0, 7}}, letterOf);
    ASSERT_FALSE(pedigree.ok());
    EXPECT_EQ(pedigree.problem().what, "A parent of B is not among the genotypes.");
    EXPECT_FALSE(Pedigree::of({{-1, {}}}, letterOf).ok());
}

TEST(Pedigree, AVeryDeepOneIsNoMatter) {
    std::vector<Parents> parents{{}};
    for (int i = 1; i < 200000; ++i) {
        parents.push_back({i - 1, {}});
    }
    const auto pedigree = Pedigree::of(parents, letterOf);
    ASSERT_TRUE(pedigree.ok());
    EXPECT_EQ(generations(*pedigree).back(), 199999);
}

TEST(Pedigree, MayBeEmpty) {
    const auto pedigree = Pedigree::of({}, letterOf);
    ASSERT_TRUE(pedigree.ok());
    EXPECT_EQ(pedigree->size(), 0);
    EXPECT_TRUE(generations(*pedigree).empty());
}

} // namespace
} // namespace pipwright
