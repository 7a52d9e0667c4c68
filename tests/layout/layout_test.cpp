#include "tests/layout/rules.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <set>
#include <string>

namespace pipwright::layout {
namespace {

namespace fs = std::filesystem;

const fs::path kRoot = PIPWRIGHT_SOURCE_DIR;
const fs::path kFixtures = kRoot / "tests/layout/fixtures";

bool names(const Findings& findings, const std::string& path) {
    return std::any_of(findings.begin(), findings.end(),
                       [&path](const Finding& finding) { return finding.path == path; });
}

class LayoutRule : public testing::TestWithParam<Rule> {};

TEST_P(LayoutRule, IsKept) {
    const Findings findings = GetParam().find(readTree(kRoot, kRoot));
    for (const Finding& finding : findings) {
        ADD_FAILURE() << finding << "\n  " << GetParam().sentence;
    }
}

// A rule that finds nothing in a tree made to break it would never find anything.
TEST_P(LayoutRule, FindsItsFixture) {
    const fs::path fixture = kFixtures / GetParam().name;
    ASSERT_TRUE(fs::is_directory(fixture)) << "the rule has no fixture that breaks it";
    const Findings findings = GetParam().find(readTree(fixture, kRoot));
    EXPECT_FALSE(findings.empty());
}

// In a fixture every file called bad_ breaks the rule, and every file called fine_ comes close to
// it without breaking it.
TEST_P(LayoutRule, TellsBadFromFine) {
    const SourceTree tree = readTree(kFixtures / GetParam().name, kRoot);
    const Findings findings = GetParam().find(tree);
    for (const SourceFile& file : tree.files) {
        const std::string name = file.parts().back();
        if (name.starts_with("bad_")) {
            EXPECT_TRUE(names(findings, file.path)) << file.path << " was not found";
        } else if (name.starts_with("fine_")) {
            EXPECT_FALSE(names(findings, file.path)) << file.path << " was found";
        }
    }
}

INSTANTIATE_TEST_SUITE_P(All, LayoutRule, testing::ValuesIn(allRules()),
                         [](const auto& tested) { return tested.param.name; });

TEST(LayoutRules, HaveDifferentNames) {
    std::set<std::string> seen;
    for (const Rule& rule : allRules()) {
        EXPECT_TRUE(seen.insert(rule.name).second) << rule.name;
    }
}

TEST(LayoutRules, HaveNoFixtureLeftOver) {
    std::set<std::string> known;
    for (const Rule& rule : allRules()) {
        known.insert(rule.name);
    }
    for (const auto& entry : fs::directory_iterator(kFixtures)) {
        EXPECT_TRUE(known.contains(entry.path().filename().string())) << entry.path();
    }
}

TEST(LayoutTree, IsReadWhole) {
    const SourceTree tree = readTree(kRoot, kRoot);
    EXPECT_GT(tree.files.size(), 50U);
    EXPECT_TRUE(tree.coreArrows.contains("units"));
    EXPECT_TRUE(tree.uiArrows.contains("shell"));
    for (const SourceFile& file : tree.files) {
        EXPECT_FALSE(file.path.starts_with("build")) << file.path;
        EXPECT_FALSE(file.below("tests/layout/fixtures")) << file.path;
    }
}

// The scripts and the fuzz seeds are named after what they do, so only their rights can tell.
TEST(LayoutTree, ScriptsCanBeRun) {
    for (const char* script : {"app/run", "tests/run", "tests/long", ".ci/run"}) {
        ASSERT_TRUE(fs::exists(kRoot / script)) << script;
        EXPECT_NE(fs::status(kRoot / script).permissions() & fs::perms::owner_exec, fs::perms::none)
            << script;
    }
}

} // namespace
} // namespace pipwright::layout
