#pragma once

#include "tests/layout/source_tree.h"

#include <cstddef>
#include <ostream>
#include <string>
#include <vector>

namespace pipwright::layout {

/// A place that breaks a rule.
struct Finding {
    std::string path;
    std::size_t line = 0; ///< 0 when the whole file or folder is meant
    std::string what;
};

using Findings = std::vector<Finding>;

/// A rule of the house. Its name is also that of its fixture, which must break it.
struct Rule {
    std::string name;
    std::string sentence; ///< what holds, for whoever broke it
    Findings (*find)(const SourceTree&) = nullptr;
};

/// What may include what.
std::vector<Rule> includeRules();
/// What may be written where.
std::vector<Rule> codeRules();
/// What a file, a folder and the root may be.
std::vector<Rule> fileRules();

/// All of them.
std::vector<Rule> allRules();

std::ostream& operator<<(std::ostream& out, const Finding& finding);
std::ostream& operator<<(std::ostream& out, const Rule& rule);

} // namespace pipwright::layout
