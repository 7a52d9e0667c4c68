#pragma once

#include "tests/layout/source_file.h"

#include <filesystem>
#include <map>
#include <set>
#include <string>
#include <vector>

namespace pipwright::layout {

/// "folder: folders it may include", as core/dependencies.txt and ui/dependencies.txt say it.
using Arrows = std::map<std::string, std::set<std::string>>;

/// The repository, or a fixture in its shape, read whole.
struct SourceTree {
    std::vector<SourceFile> files;     ///< by path
    std::vector<std::string> topLevel; ///< the entries at the root, without what is ignored
    Arrows coreArrows;
    Arrows uiArrows;
};

/// Reads a tree. A fixture without tables of its own is judged by those of `tables`.
/// What is built, drawn or ignored is left out, and so are the fixtures of these tests.
SourceTree readTree(const std::filesystem::path& root, const std::filesystem::path& tables);

/// Reads a table of arrows; lines that begin with '#' are remarks.
Arrows readArrows(const std::filesystem::path& table);

} // namespace pipwright::layout
