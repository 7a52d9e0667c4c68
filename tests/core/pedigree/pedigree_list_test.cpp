#include "core/pedigree/pedigree_list.h"

#include <gtest/gtest.h>

namespace pipwright {
namespace {

std::string refusal(const std::vector<PedigreeLine>& lines) {
    const auto result = pedigreeOf(lines);
    return result ? "accepted" : result.problem().sentence();
}

TEST(PedigreeList, TakesChildrenBeforeParentsAndAddsFounders) {
    const std::vector<PedigreeLine> lines{{"Ash Tarn", "Russet Moor", "Lark", 2015},
                                          {"Lark", " Ember ", "", 2001},
                                          {"Quill", "", ""}};
    const auto result = pedigreeOf(lines);
    ASSERT_TRUE(result.ok()) << result.problem().sentence();
    EXPECT_EQ(result->names,
              (std::vector<std::string>{"Ash Tarn", "Lark", "Quill", "Russet Moor", "Ember"}));
    EXPECT_EQ(result->addedFounders, (std::vector<int>{3, 4}));
    EXPECT_EQ(result->pedigree.parentsOf(0), (Parents{3, 1}));
    EXPECT_EQ(result->pedigree.parentsOf(1), (Parents{4, std::nullopt}));
    EXPECT_EQ(result->pedigree.parentsOf(4), Parents{});
    EXPECT_EQ(result->find("Ember"), 4);
    EXPECT_EQ(result->find("Nobody"), std::nullopt);
}

TEST(PedigreeList, RefusesWhatCannotBe) {
    EXPECT_EQ(refusal({{"A", "", ""}, {" ", "A", ""}}),
              "line 2: This line has no name. Name the genotype, or leave the line out.");
    EXPECT_EQ(refusal({{"A", "", ""}, {"B", "", ""}, {"A ", "B", ""}}),
              "line 3: A stands here again; it is already on line 1. Keep one of the two lines, or "
              "rename one.");
    EXPECT_EQ(refusal({{"A", "B", ""}, {"B", "", "A"}}),
              "A would be its own ancestor: A is a parent of B is a parent of A. Correct one of "
              "these parents, or leave it unknown.");
    EXPECT_EQ(refusal({{"A", "A", ""}}), "A would be its own ancestor: A is a parent of A. Correct "
                                         "one of these parents, or leave it unknown.");
    EXPECT_EQ(refusal({{"A", "B", "", 2010}, {"B", "", "", 2012}}),
              "line 1: B of 2012 cannot be a parent of A of 2010. Correct a year or the parent.");
    EXPECT_EQ(refusal({{"A", "B", "", 2012}, {"B", "", "", 2012}}).substr(0, 7), "line 1:");
    EXPECT_EQ(refusal({{"A", "B", "", 2013}, {"B", "", "", 2012}}), "accepted");
    EXPECT_EQ(refusal({}), "accepted");
}

TEST(TooYoungParents, NamesASelfedParentOnce) {
    const auto pedigree = pedigreeOf(std::vector<PedigreeLine>{{"A", "B", "B"}, {"B", "", ""}});
    ASSERT_TRUE(pedigree.ok());
    const std::vector<std::optional<int>> years{2001, 2004};
    const auto found = tooYoungParents(pedigree->pedigree, years);
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].child, 0);
    EXPECT_EQ(found[0].parent, 1);
    const std::vector<std::optional<int>> unknown{2001, std::nullopt};
    EXPECT_TRUE(tooYoungParents(pedigree->pedigree, unknown).empty());
}

} // namespace
} // namespace pipwright
