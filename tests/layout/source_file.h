#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace pipwright::layout {

/// A string literal of a source: its content as it is written, and the line it begins on.
struct Literal {
    std::string content;
    std::size_t line = 0;
};

/// One #include of a source.
struct Include {
    std::string target; ///< what stands between the quotes or angles
    bool angled = false;
    std::size_t line = 0;
};

/// A text file of the repository. For C++ the comments and literals are told apart, so that a rule
/// about code is not misled by words.
struct SourceFile {
    std::string path; ///< from the root of the tree, with '/'
    std::string text;
    std::string code; ///< the text with its comments blanked out, at the same offsets
    std::string bare; ///< the code with the contents of its literals blanked out as well
    std::vector<Literal> literals;
    std::vector<Include> includes;

    /// Whether it is a .cpp or .h file.
    [[nodiscard]] bool isCpp() const;
    [[nodiscard]] bool isHeader() const;
    /// Whether it lies below the folder, e.g. "core/store".
    [[nodiscard]] bool below(std::string_view folder) const;
    /// The parts of its path: {"core", "units", "id.h"}.
    [[nodiscard]] std::vector<std::string> parts() const;
    /// The line of an offset into the text, counted from 1.
    [[nodiscard]] std::size_t lineAt(std::size_t offset) const;
    [[nodiscard]] std::size_t lineCount() const;
};

/// Takes a text apart; only C++ files get code, literals and includes.
SourceFile takeApart(std::string path, std::string text);

} // namespace pipwright::layout
