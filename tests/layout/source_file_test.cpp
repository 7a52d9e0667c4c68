#include "tests/layout/source_file.h"

#include <gtest/gtest.h>
#include <string>

namespace pipwright::layout {
namespace {

TEST(SourceFile, BlanksCommentsAndKeepsPlaces) {
    const SourceFile file = takeApart("a.cpp", "int a; // \"no\" literal\n/* b\n */ int c;\n");
    EXPECT_EQ(file.code, "int a;" + std::string(16, ' ') + "\n" + std::string(4, ' ') + "\n" +
                             std::string(3, ' ') + " int c;\n");
    EXPECT_EQ(file.code, file.bare);
    EXPECT_TRUE(file.literals.empty());
    EXPECT_EQ(file.lineAt(file.text.find("int c")), 3U);
    EXPECT_EQ(file.lineCount(), 3U);
}

TEST(SourceFile, TellsLiteralsFromCode) {
    const SourceFile file =
        takeApart("a.cpp", "f(\"a // \\\" b\", 'x', '\"', 1'000'000);\ng(u8\"c\");\n");
    ASSERT_EQ(file.literals.size(), 2U);
    EXPECT_EQ(file.literals[0].content, "a // \\\" b");
    EXPECT_EQ(file.literals[0].line, 1U);
    EXPECT_EQ(file.literals[1].content, "c");
    EXPECT_EQ(file.literals[1].line, 2U);
    EXPECT_EQ(file.bare, "f(\"         \", ' ', ' ', 1'000'000);\ng(u8\" \");\n");
    EXPECT_EQ(file.code, file.text);
}

TEST(SourceFile, ReadsRawLiterals) {
    const SourceFile file = takeApart("a.cpp", "f(R\"x(say \")\" // here)x\", 2); // end\n");
    ASSERT_EQ(file.literals.size(), 1U);
    EXPECT_EQ(file.literals[0].content, "say \")\" // here");
    EXPECT_NE(file.code.find(", 2);"), std::string::npos);
    EXPECT_EQ(file.code.find("end"), std::string::npos);
}

TEST(SourceFile, ListsIncludesButNotThoseInComments) {
    const SourceFile file = takeApart(
        "a.h", "#include \"core/units/id.h\"\n// #include <vector>\n#  include <map> // why\n");
    ASSERT_EQ(file.includes.size(), 2U);
    EXPECT_EQ(file.includes[0].target, "core/units/id.h");
    EXPECT_FALSE(file.includes[0].angled);
    EXPECT_EQ(file.includes[1].target, "map");
    EXPECT_TRUE(file.includes[1].angled);
    EXPECT_EQ(file.includes[1].line, 3U);
}

TEST(SourceFile, SurvivesTextThatEndsInTheMiddle) {
    EXPECT_EQ(takeApart("a.cpp", "f(\"open").literals.size(), 1U);
    EXPECT_EQ(takeApart("a.cpp", "f(R\"x(open").literals.size(), 1U);
    EXPECT_TRUE(takeApart("a.cpp", "R\"").literals.empty());
    EXPECT_EQ(takeApart("a.cpp", "/* open").code, std::string(7, ' '));
    EXPECT_EQ(takeApart("a.cpp", "'\\").bare.size(), 2U);
}

TEST(SourceFile, KnowsWhereItLies) {
    const SourceFile file = takeApart("core/store/book.h", "");
    EXPECT_TRUE(file.below("core/store"));
    EXPECT_TRUE(file.below("core"));
    EXPECT_FALSE(file.below("core/sto"));
    EXPECT_TRUE(file.isHeader());
    EXPECT_EQ(file.parts().back(), "book.h");
    EXPECT_EQ(file.lineCount(), 0U);
}

} // namespace
} // namespace pipwright::layout
