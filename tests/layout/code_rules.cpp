#include "tests/layout/rules.h"

#include <algorithm>
#include <regex>

namespace pipwright::layout {
namespace {

/// One finding for every match of the pattern in a text of the file.
void findMatches(const SourceFile& file, const std::string& text, const std::regex& pattern,
                 const std::string& what, Findings& findings) {
    for (std::sregex_iterator match(text.begin(), text.end(), pattern), end; match != end;
         ++match) {
        findings.push_back({file.path, file.lineAt(static_cast<std::size_t>(match->position())),
                            what + match->str()});
    }
}

/// SQL is spoken by the store alone; tests may look into a book on their own.
Findings sqlOutsideTheStore(const SourceTree& tree) {
    static const std::regex type(R"(\b(QSql|sqlite3)\w*)");
    static const std::regex statement(
        R"(^\s*(SELECT\s|INSERT\s+(OR\s+\w+\s+)?INTO\s|UPDATE\s+\w+\s+SET\b|DELETE\s+FROM\s|CREATE\s+(TEMP\s+)?(TABLE|INDEX|VIEW|TRIGGER)\b|DROP\s+TABLE\b|PRAGMA\s|BEGIN\s+IMMEDIATE\b|ATTACH\s|VACUUM\b))");
    Findings findings;
    for (const SourceFile& file : tree.files) {
        const bool isOurs = file.below("core") || file.below("ui") || file.below("app");
        if (!file.isCpp() || !isOurs || file.below("core/store")) {
            continue;
        }
        findMatches(file, file.code, type, "speaks to the database: ", findings);
        for (const Literal& literal : file.literals) {
            if (std::regex_search(literal.content, statement)) {
                findings.push_back({file.path, literal.line, "holds SQL: " + literal.content});
            }
        }
    }
    return findings;
}

/// Text that a call shows to the user, and that has not gone through tr(). It cannot see every way
/// text reaches the screen, but the usual ones.
Findings untranslatedText(const SourceTree& tree) {
    static const std::regex call(
        R"re(\b(setText|setWindowTitle|setTitle|setToolTip|setStatusTip|setWhatsThis|setAccessibleName|setAccessibleDescription|setPlaceholderText|setLabelText|setInformativeText|setTabText|addAction|addTab|addMenu|addRow|showMessage|QLabel|QPushButton|QToolButton|QCheckBox|QRadioButton|QGroupBox|QAction)\s*[({]\s*(QStringLiteral\s*\(|QLatin1String\s*[({]|QString::fromUtf8\s*\()?\s*u?8?"((\\.|[^"\\])*)")re");
    static const std::regex word("[A-Za-z]{2}");
    Findings findings;
    for (const SourceFile& file : tree.files) {
        if (!file.isCpp() || !file.below("ui")) {
            continue;
        }
        for (std::sregex_iterator match(file.code.begin(), file.code.end(), call), end;
             match != end; ++match) {
            const std::string shown = (*match)[3];
            if (std::regex_search(shown, word)) {
                findings.push_back({file.path,
                                    file.lineAt(static_cast<std::size_t>(match->position())),
                                    "shows \"" + shown + "\" without tr()"});
            }
        }
    }
    return findings;
}

Findings singletons(const SourceTree& tree) {
    static const std::regex accessor(
        R"(\bstatic\s+[\w:<>]+\s*[&*]\s*(instance|self|get|global|shared|theInstance)\s*\(\s*\))");
    static const std::regex macro(R"(\bQ_GLOBAL_STATIC\b)");
    Findings findings;
    for (const SourceFile& file : tree.files) {
        findMatches(file, file.bare, accessor, "is a singleton: ", findings);
        findMatches(file, file.bare, macro, "is a global object: ", findings);
    }
    return findings;
}

/// Words that say that something is yet to be done. They are put together here, or this file would
/// break its own rule.
Findings unfinishedWork(const SourceTree& tree) {
    static const std::regex mark(std::string("\\b(TO") + "DO|FIX" + "ME|XX" + "X|HA" + "CK)\\b");
    static const std::regex excuse(std::string("(not (yet )?impl") + "emented|coming so" +
                                       "on|lorem ip" + "sum|under constr" + "uction)",
                                   std::regex::icase);
    Findings findings;
    for (const SourceFile& file : tree.files) {
        if (file.isCpp() || file.path.ends_with("CMakeLists.txt")) {
            findMatches(file, file.text, mark, "leaves a mark: ", findings);
            findMatches(file, file.text, excuse, "says it is unfinished: ", findings);
        }
    }
    return findings;
}

/// Where each TEST of a file begins, and behind them the end of the file.
std::vector<std::size_t> testStarts(const SourceFile& file) {
    static const std::regex start(R"((^|\n)(TEST|TEST_F|TEST_P|TYPED_TEST|TYPED_TEST_P)\s*\()");
    std::vector<std::size_t> starts;
    for (std::sregex_iterator match(file.bare.begin(), file.bare.end(), start), end; match != end;
         ++match) {
        starts.push_back(static_cast<std::size_t>(match->position(2)));
    }
    starts.push_back(file.bare.size());
    return starts;
}

/// A test that expects nothing, or only what is always so, cannot fail. Helpers that expect count
/// when their name says so.
Findings testsThatCannotFail(const SourceTree& tree) {
    static const std::regex expectation(
        R"(\b(EXPECT|ASSERT)_|\bADD_FAILURE\b|\bFAIL\b|\b\w*([eE]xpect|[cC]heck|[aA]ssert|[vV]erify|[mM]ust|[cC]ompare|[hH]olds)\w*\s*\()");
    static const std::regex always(
        R"(\b(EXPECT|ASSERT)_TRUE\s*\(\s*true\s*\)|\b(EXPECT|ASSERT)_FALSE\s*\(\s*false\s*\)|\bSUCCEED\s*\(|\bDISABLED_\w+)");
    Findings findings;
    for (const SourceFile& file : tree.files) {
        if (!file.isCpp() || !file.below("tests")) {
            continue;
        }
        findMatches(file, file.bare, always, "always holds or never runs: ", findings);
        const std::vector<std::size_t> starts = testStarts(file);
        for (std::size_t i = 0; i + 1 < starts.size(); ++i) {
            const std::size_t open = std::min(file.bare.find('{', starts[i]), starts[i + 1]);
            const std::string body = file.bare.substr(open, starts[i + 1] - open);
            if (!std::regex_search(body, expectation)) {
                findings.push_back({file.path, file.lineAt(starts[i]), "expects nothing"});
            }
        }
    }
    return findings;
}

} // namespace

std::vector<Rule> codeRules() {
    return {
        {"sql_in_the_store", "SQL is spoken in core/store only.", sqlOutsideTheStore},
        {"translated_text", "What ui shows goes through tr().", untranslatedText},
        {"no_singletons", "Objects are handed over, never fetched from a global place.",
         singletons},
        {"finished_work", "What is committed is finished.", unfinishedWork},
        {"tests_can_fail", "Every test expects something that could be otherwise.",
         testsThatCannotFail},
    };
}

} // namespace pipwright::layout
