#include "core/pedigree/relatives.h"
#include "tests/core/pedigree/families.h"

namespace pipwright {
namespace {

using Indices = std::vector<int>;
using Places = std::vector<std::optional<int>>;

// 1 and 2 are founders; 3 and 4 their children, 5 of the same cross the other way round;
// 6 is 1 open pollinated; 7 is 3 selfed; 8 is 3 with 1 again.
Pedigree family() {
    return pedigreeOf({{0, 0}, {0, 0}, {1, 2}, {1, 2}, {2, 1}, {1, 0}, {3, 3}, {3, 1}});
}

TEST(Ancestry, LaysOutParentsUnderTheirChildren) {
    const Ancestry ancestry{family(), 7, 3};
    EXPECT_EQ(ancestry.depth(), 3);
    EXPECT_EQ(ancestry.generation(0), (Places{7}));
    EXPECT_EQ(ancestry.generation(1), (Places{2, 0}));
    EXPECT_EQ(ancestry.generation(2), (Places{0, 1, {}, {}}));
    EXPECT_EQ(ancestry.generation(3), Places(8));
}

TEST(Ancestry, KeepsItsDepthWithinReason) {
    EXPECT_EQ(Ancestry(family(), 7, -3).depth(), 0);
    EXPECT_EQ(Ancestry(family(), 7, 1000).depth(), 12);
}

TEST(Relatives, TellsFullFromHalfSibs) {
    const Relatives of3 = relativesOf(family(), 2);
    EXPECT_EQ(of3.fullSibs, (Indices{3, 4})) << "the reciprocal cross counts";
    EXPECT_EQ(of3.halfSibs, (Indices{5, 7}));
    EXPECT_EQ(of3.offspring, (Indices{6, 7}));
}

TEST(Relatives, OpenPollinatedSeedlingsOfOneTreeAreHalfSibs) {
    const Pedigree open = pedigreeOf({{0, 0}, {1, 0}, {1, 0}, {0, 1}, {0, 0}});
    EXPECT_EQ(relativesOf(open, 1).fullSibs, Indices{});
    EXPECT_EQ(relativesOf(open, 1).halfSibs, (Indices{2, 3}));
    EXPECT_EQ(relativesOf(open, 4).halfSibs, Indices{}) << "two founders share nothing known";
    EXPECT_EQ(relativesOf(open, 0).offspring, (Indices{1, 2, 3}));
}

TEST(Relatives, SelfedSeedlingsAreFullSibs) {
    const Pedigree selfed = pedigreeOf({{0, 0}, {1, 1}, {1, 1}});
    EXPECT_EQ(relativesOf(selfed, 1).fullSibs, (Indices{2}));
    EXPECT_EQ(relativesOf(selfed, 0).offspring, (Indices{1, 2}));
}

} // namespace
} // namespace pipwright
