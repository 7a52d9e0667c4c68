#include "core/pedigree/descent.h"
#include "core/pedigree/purdy.h"
#include "tests/core/pedigree/families.h"

namespace pipwright {
namespace {

std::string lineOf(const Pedigree& pedigree, int genotype, int generationsBack) {
    return writePurdy(descentOf(pedigree, genotype, generationsBack, letterOf,
                                [](int child) { return child == 5; }));
}

TEST(Descent, GoesBackAsFarAsAsked) {
    const auto pedigree = pedigreeOf({{0, 0}, {0, 0}, {1, 2}, {0, 0}, {3, 4}});
    EXPECT_EQ(lineOf(pedigree, 4, 0), "E");
    EXPECT_EQ(lineOf(pedigree, 4, 1), "C/D");
    EXPECT_EQ(lineOf(pedigree, 4, 2), "A/B//D");
    EXPECT_EQ(lineOf(pedigree, 4, 9), "A/B//D");
    EXPECT_EQ(lineOf(pedigree, 0, 3), "A") << "a founder is its name";
}

TEST(Descent, TellsOpenPollinationFromAnUnknownParent) {
    const auto pedigree = pedigreeOf({{0, 0}, {1, 0}, {0, 1}, {1, 1}, {2, 2}, {1, 0}});
    EXPECT_EQ(lineOf(pedigree, 1, 2), "A/?");
    EXPECT_EQ(lineOf(pedigree, 5, 2), "A/OP");
    EXPECT_EQ(lineOf(pedigree, 2, 2), "?/A");
    EXPECT_EQ(lineOf(pedigree, 3, 2), "A/self");
    EXPECT_EQ(lineOf(pedigree, 4, 2), "A/?//self");
}

TEST(Descent, ANameCrossedWithItselfIsASelfing) {
    EXPECT_EQ(Descent::cross(Descent::of("A"), Descent::of("A")),
              Descent::selfing(Descent::of("A")));
    const Descent unknown = Descent::nothingKnown();
    EXPECT_EQ(Descent::cross(unknown, unknown).form, Descent::Form::crossed)
        << "two unknown parents need not be the same";
    const Descent cross = Descent::cross(Descent::of("A"), Descent::of("B"));
    EXPECT_EQ(Descent::cross(cross, cross).form, Descent::Form::crossed)
        << "two seedlings of one cross are two";
}

} // namespace
} // namespace pipwright
