#include "tests/layout/rules.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <regex>
#include <string_view>

namespace pipwright::layout {
namespace {

constexpr std::size_t kLongestFile = 500; ///< lines of a source

Findings longFiles(const SourceTree& tree) {
    Findings findings;
    for (const SourceFile& file : tree.files) {
        if (file.isCpp() && file.lineCount() > kLongestFile) {
            findings.push_back({file.path, 0, std::to_string(file.lineCount()) + " lines"});
        }
    }
    return findings;
}

Findings unguardedHeaders(const SourceTree& tree) {
    Findings findings;
    for (const SourceFile& file : tree.files) {
        if (file.isHeader() && file.code.find("#pragma once") == std::string::npos) {
            findings.push_back({file.path, 0, "has no #pragma once"});
        }
    }
    return findings;
}

/// Whether the text at hand begins a path, and is not the middle of a longer one.
bool beginsPath(const std::string& text, std::size_t at) {
    if (at == 0) {
        return true;
    }
    const char before = text[at - 1];
    return std::string_view("._-~})%/").find(before) == std::string_view::npos &&
           std::isalnum(static_cast<unsigned char>(before)) == 0;
}

/// Paths of one machine. A script that asks mktemp for its folder may say where such folders are.
Findings machinePaths(const SourceTree& tree) {
    static constexpr std::array<const char*, 4> kFolders{"home", "root", "work", "tmp"};
    Findings findings;
    for (const SourceFile& file : tree.files) {
        const bool usesMktemp =
            file.text.starts_with("#!") && file.text.find("mktemp") != std::string::npos;
        for (const std::string folder : kFolders) {
            if (usesMktemp && folder == "tmp") {
                continue;
            }
            const std::string path = "/" + folder + "/";
            for (std::size_t at = file.text.find(path); at != std::string::npos;
                 at = file.text.find(path, at + 1)) {
                if (beginsPath(file.text, at)) {
                    findings.push_back({file.path, file.lineAt(at), "names " + path});
                }
            }
        }
    }
    return findings;
}

/// The root holds these and nothing else; entries that begin with a dot are the tools' own.
Findings strayEntries(const SourceTree& tree) {
    static const std::set<std::string> known{
        "CMakeLists.txt", "README.md", "DEVELOPERS.md", "LICENSE", "app",
        "core",           "ui",        "resources",     "tests",   "sample-data"};
    Findings findings;
    for (const std::string& entry : tree.topLevel) {
        if (!entry.starts_with('.') && !known.contains(entry)) {
            findings.push_back({entry, 0, "does not belong at the top level"});
        }
    }
    return findings;
}

/// The folders that can be reached from themselves.
Findings ringsOf(const Arrows& arrows, const std::string& table) {
    Findings findings;
    for (const auto& [start, targets] : arrows) {
        std::set<std::string> reached;
        std::vector<std::string> waiting(targets.begin(), targets.end());
        while (!waiting.empty()) {
            const std::string folder = waiting.back();
            waiting.pop_back();
            if (!arrows.contains(folder)) {
                findings.push_back({table, 0, "has an arrow to the unknown folder " + folder});
            } else if (reached.insert(folder).second) {
                const std::set<std::string>& next = arrows.at(folder);
                waiting.insert(waiting.end(), next.begin(), next.end());
            }
        }
        if (reached.contains(start)) {
            findings.push_back({table, 0, start + " depends on itself"});
        }
    }
    return findings;
}

Findings ringsOfArrows(const SourceTree& tree) {
    Findings findings = ringsOf(tree.coreArrows, "core/dependencies.txt");
    const Findings inUi = ringsOf(tree.uiArrows, "ui/dependencies.txt");
    findings.insert(findings.end(), inUi.begin(), inUi.end());
    return findings;
}

/// Whether the word stands in the list of test programs; a fixture may have no such list.
bool isInTestList(const SourceTree& tree, const std::string& word) {
    const auto list =
        std::find_if(tree.files.begin(), tree.files.end(),
                     [](const SourceFile& file) { return file.path == "tests/CMakeLists.txt"; });
    return list == tree.files.end() ||
           std::regex_search(list->text, std::regex("\\b" + word + "\\b"));
}

/// The tests mirror the tree: a folder with code and without a test of its own is found, and one
/// whose tests are never built.
Findings untestedFolders(const SourceTree& tree) {
    const auto hasCode = [&tree](const std::string& folder) {
        return std::any_of(tree.files.begin(), tree.files.end(), [&](const SourceFile& file) {
            return file.below(folder) && file.path.ends_with(".cpp");
        });
    };
    Findings findings;
    const auto look = [&](const Arrows& arrows, const std::string& base) {
        for (const auto& entry : arrows) {
            const std::string folder = base + "/" + entry.first;
            if (hasCode(folder) && !hasCode("tests/" + folder)) {
                findings.push_back({folder, 0, "has no test in tests/" + folder});
            } else if (hasCode(folder) && !isInTestList(tree, entry.first)) {
                findings.push_back({folder, 0, "is not listed in tests/CMakeLists.txt"});
            }
        }
    };
    look(tree.coreArrows, "core");
    look(tree.uiArrows, "ui");
    return findings;
}

} // namespace

std::vector<Rule> fileRules() {
    return {
        {"file_length", "A source has at most 500 lines.", longFiles},
        {"pragma_once", "Every header begins with #pragma once.", unguardedHeaders},
        {"no_machine_paths", "No file names a folder of one machine.", machinePaths},
        {"top_level", "The root holds the fixed entries only.", strayEntries},
        {"tables_without_rings", "The tables of arrows have no rings.", ringsOfArrows},
        {"folders_have_tests", "Every folder of core and ui has its tests.", untestedFolders},
    };
}

std::vector<Rule> allRules() {
    std::vector<Rule> rules;
    for (std::vector<Rule> some : {includeRules(), codeRules(), fileRules()}) {
        rules.insert(rules.end(), some.begin(), some.end());
    }
    return rules;
}

std::ostream& operator<<(std::ostream& out, const Finding& finding) {
    out << finding.path;
    if (finding.line > 0) {
        out << ':' << finding.line;
    }
    return out << ": " << finding.what;
}

std::ostream& operator<<(std::ostream& out, const Rule& rule) {
    return out << rule.name << " (" << rule.sentence << ')';
}

} // namespace pipwright::layout
