#include "tests/layout/rules.h"

#include <regex>

namespace pipwright::layout {
namespace {

/// "store" for "core/store/book.h" and base "core"; empty when it lies elsewhere or directly in it.
std::string folderIn(const std::string& path, const std::string& base) {
    if (!path.starts_with(base + "/")) {
        return {};
    }
    const std::size_t begin = base.size() + 1;
    const std::size_t end = path.find('/', begin);
    return end == std::string::npos ? std::string() : path.substr(begin, end - begin);
}

bool startsWithAny(const std::string& text, std::initializer_list<const char*> beginnings) {
    for (const char* beginning : beginnings) {
        if (text.starts_with(beginning)) {
            return true;
        }
    }
    return false;
}

bool isQt(const Include& include) {
    static const std::regex pattern("^Qt?[A-Z]");
    return include.angled && std::regex_search(include.target, pattern);
}

/// Every include of the files below `base` that points to another folder of it without an arrow.
Findings againstArrows(const SourceTree& tree, const std::string& base, const Arrows& arrows) {
    Findings findings;
    for (const SourceFile& file : tree.files) {
        if (!file.isCpp() || !file.below(base)) {
            continue;
        }
        const std::string folder = folderIn(file.path, base);
        const auto known = arrows.find(folder);
        if (known == arrows.end()) {
            findings.push_back(
                {file.path, 0, "its folder is not in " + base + "/dependencies.txt"});
            continue;
        }
        for (const Include& include : file.includes) {
            const std::string target = folderIn(include.target, base);
            if (!target.empty() && target != folder && !known->second.contains(target)) {
                findings.push_back(
                    {file.path, include.line, "no arrow allows it to include " + include.target});
            }
        }
    }
    return findings;
}

Findings coreArrows(const SourceTree& tree) {
    Findings findings = againstArrows(tree, "core", tree.coreArrows);
    for (const SourceFile& file : tree.files) {
        for (const Include& include : file.includes) {
            if (file.below("core") && startsWithAny(include.target, {"ui/", "app/", "tests/"})) {
                findings.push_back({file.path, include.line, "core includes " + include.target});
            }
        }
    }
    return findings;
}

Findings uiArrows(const SourceTree& tree) {
    Findings findings = againstArrows(tree, "ui", tree.uiArrows);
    for (const SourceFile& file : tree.files) {
        for (const Include& include : file.includes) {
            if (file.below("ui") &&
                startsWithAny(include.target, {"core/store/", "app/", "tests/"})) {
                findings.push_back({file.path, include.line, "ui includes " + include.target});
            }
        }
    }
    return findings;
}

Findings qtInCore(const SourceTree& tree) {
    static const std::regex word(R"(\bQ(t::|[A-Z][a-z]\w+))");
    Findings findings;
    for (const SourceFile& file : tree.files) {
        if (!file.isCpp() || !file.below("core") || file.below("core/store")) {
            continue;
        }
        for (const Include& include : file.includes) {
            if (isQt(include)) {
                findings.push_back({file.path, include.line, "includes " + include.target});
            }
        }
        std::smatch match;
        if (std::regex_search(file.bare, match, word)) {
            findings.push_back({file.path, file.lineAt(static_cast<std::size_t>(match.position())),
                                "says " + match.str()});
        }
    }
    return findings;
}

/// The store's headers that name Qt are private to it; tests may look behind.
Findings privateStoreHeaders(const SourceTree& tree) {
    std::set<std::string> headersWithQt;
    for (const SourceFile& file : tree.files) {
        for (const Include& include : file.includes) {
            if (file.isHeader() && file.below("core/store") && isQt(include)) {
                headersWithQt.insert(file.path);
            }
        }
    }
    Findings findings;
    for (const SourceFile& file : tree.files) {
        if (file.below("core/store") || file.below("tests")) {
            continue;
        }
        for (const Include& include : file.includes) {
            if (headersWithQt.contains(include.target)) {
                findings.push_back({file.path, include.line,
                                    include.target + " names Qt and is private to core/store"});
            }
        }
    }
    return findings;
}

/// Findings for every include that `isBad` says something about.
template <typename Judge>
Findings judgeIncludes(const SourceTree& tree, Judge whatIsBad) {
    Findings findings;
    for (const SourceFile& file : tree.files) {
        for (const Include& include : file.includes) {
            if (const std::string what = whatIsBad(include); !what.empty()) {
                findings.push_back({file.path, include.line, what});
            }
        }
    }
    return findings;
}

Findings unrootedIncludes(const SourceTree& tree) {
    return judgeIncludes(tree, [](const Include& include) -> std::string {
        const bool isMade = include.target.ends_with(".moc");
        const bool isRooted =
            startsWithAny(include.target, {"core/", "ui/", "app/", "tests/", "sample-data/"});
        if (include.target.find("..") != std::string::npos) {
            return "climbs with ..: " + include.target;
        }
        if (!include.angled && !isMade && !isRooted) {
            return "does not begin at the root: " + include.target;
        }
        if (include.angled && isRooted) {
            return "our own file in angles: " + include.target;
        }
        return {};
    });
}

Findings moduleIncludes(const SourceTree& tree) {
    static const std::regex prefix("^Qt[A-Z][A-Za-z]*/");
    static const std::set<std::string> modules{
        "QtCore", "QtGui",        "QtWidgets", "QtSql", "QtCharts",       "QtSvg",   "QtSvgWidgets",
        "QtTest", "QtConcurrent", "QtNetwork", "QtXml", "QtPrintSupport", "QtOpenGL"};
    return judgeIncludes(tree, [](const Include& include) -> std::string {
        if (std::regex_search(include.target, prefix)) {
            return "names the module: " + include.target;
        }
        if (modules.contains(include.target)) {
            return "takes in a whole module: " + include.target;
        }
        return {};
    });
}

} // namespace

std::vector<Rule> includeRules() {
    return {
        {"core_arrows", "A folder of core includes only what core/dependencies.txt allows it.",
         coreArrows},
        {"ui_arrows",
         "A folder of ui includes only what ui/dependencies.txt allows it, never the "
         "store.",
         uiArrows},
        {"core_without_qt", "Only core/store knows Qt.", qtInCore},
        {"private_store_headers", "The headers of core/store that others include name no Qt.",
         privateStoreHeaders},
        {"rooted_includes", "Our own files are included from the root, in quotes, without '..'.",
         unrootedIncludes},
        {"qt_includes", "Qt is included class by class, without the module's name.",
         moduleIncludes},
    };
}

} // namespace pipwright::layout
