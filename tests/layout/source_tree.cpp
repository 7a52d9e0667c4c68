#include "tests/layout/source_tree.h"

#include <algorithm>
#include <array>
#include <cstdio>
#include <fstream>
#include <iterator>
#include <sstream>

namespace pipwright::layout {
namespace {

namespace fs = std::filesystem;

std::string contentOf(const fs::path& path) {
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}

/// What is made by building and running stands in these folders of the root.
bool isMade(const std::string& name) {
    return name == "build" || name.starts_with("build-") || name == "out" || name == ".git";
}

bool isBinary(const fs::path& path) {
    static const std::set<std::string> endings{".png", ".jpg", ".jpeg", ".pdf", ".orchard",
                                               ".ttf", ".qm",  ".ico",  ".gz"};
    return endings.contains(path.extension().string());
}

std::vector<SourceFile> filesBelow(const fs::path& root) {
    std::vector<SourceFile> files;
    auto walk = fs::recursive_directory_iterator(root);
    for (auto entry = fs::begin(walk); entry != fs::end(walk); ++entry) {
        const std::string path = fs::relative(entry->path(), root).generic_string();
        if (entry->is_directory()) {
            const bool isTop = path.find('/') == std::string::npos;
            if ((isTop && isMade(path)) || path == "tests/layout/fixtures" ||
                path == "tests/fuzz/corpus") {
                entry.disable_recursion_pending();
            }
        } else if (entry->is_regular_file() && !isBinary(entry->path())) {
            files.push_back(takeApart(path, contentOf(entry->path())));
        }
    }
    std::sort(files.begin(), files.end(),
              [](const SourceFile& a, const SourceFile& b) { return a.path < b.path; });
    return files;
}

/// The entries git keeps or would keep; nothing when there is no git or it will not answer.
std::set<std::string> keptByGit(const fs::path& root) {
    std::set<std::string> entries;
    if (!fs::exists(root / ".git")) {
        return entries;
    }
    const std::string command =
        "git -C '" + root.string() + "' ls-files --cached --others --exclude-standard 2>/dev/null";
    if (FILE* pipe = popen(command.c_str(), "r")) {
        std::string output;
        std::array<char, 4096> piece{};
        while (const std::size_t count = fread(piece.data(), 1, piece.size(), pipe)) {
            output.append(piece.data(), count);
        }
        if (pclose(pipe) == 0) {
            std::istringstream lines(output);
            for (std::string line; std::getline(lines, line);) {
                entries.insert(line.substr(0, line.find('/')));
            }
        }
    }
    return entries;
}

std::vector<std::string> topLevelOf(const fs::path& root) {
    std::set<std::string> entries = keptByGit(root);
    if (entries.empty()) {
        for (const auto& entry : fs::directory_iterator(root)) {
            if (!isMade(entry.path().filename().string())) {
                entries.insert(entry.path().filename().string());
            }
        }
    }
    return {entries.begin(), entries.end()};
}

} // namespace

Arrows readArrows(const fs::path& table) {
    Arrows arrows;
    std::istringstream lines(contentOf(table));
    for (std::string line; std::getline(lines, line);) {
        const std::size_t colon = line.find(':');
        if (line.starts_with('#') || colon == std::string::npos) {
            continue;
        }
        std::set<std::string>& targets = arrows[line.substr(0, colon)];
        std::istringstream words(line.substr(colon + 1));
        for (std::string word; words >> word;) {
            targets.insert(word);
        }
    }
    return arrows;
}

SourceTree readTree(const fs::path& root, const fs::path& tables) {
    const auto tableOf = [&](const char* name) {
        return readArrows(fs::exists(root / name) ? root / name : tables / name);
    };
    return {filesBelow(root), topLevelOf(root), tableOf("core/dependencies.txt"),
            tableOf("ui/dependencies.txt")};
}

} // namespace pipwright::layout
