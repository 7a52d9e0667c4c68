#include "tests/layout/source_file.h"

#include <algorithm>
#include <cctype>
#include <regex>
#include <sstream>
#include <utility>

namespace pipwright::layout {
namespace {

bool isWordCharacter(char c) {
    return std::isalnum(static_cast<unsigned char>(c)) != 0 || c == '_';
}

/// Walks once through a C++ text and blanks what is comment or literal.
class Scanner {
  public:
    explicit Scanner(SourceFile& file) : m_file(file), m_text(file.text) {
        m_file.code = m_text;
        m_file.bare = m_text;
    }

    void run() {
        while (m_at < m_text.size()) {
            if (m_text.compare(m_at, 2, "//") == 0) {
                blankComment(endOfLine());
            } else if (m_text.compare(m_at, 2, "/*") == 0) {
                const std::size_t end = m_text.find("*/", m_at + 2);
                blankComment(end == std::string::npos ? m_text.size() : end + 2);
            } else if (m_text[m_at] == '"') {
                takeString();
            } else if (m_text[m_at] == '\'' && !separatesDigits()) {
                blankLiteral(m_at + 1, endOfQuoted('\''));
            } else {
                ++m_at;
            }
        }
    }

  private:
    [[nodiscard]] std::size_t endOfLine() const {
        const std::size_t end = m_text.find('\n', m_at);
        return end == std::string::npos ? m_text.size() : end;
    }

    void blankComment(std::size_t end) {
        for (; m_at < end; ++m_at) {
            if (m_text[m_at] != '\n') {
                m_file.code[m_at] = ' ';
                m_file.bare[m_at] = ' ';
            }
        }
    }

    /// Blanks [begin, end) and goes on behind the closing mark at `end`.
    void blankLiteral(std::size_t begin, std::size_t end, std::size_t markSize = 1) {
        for (std::size_t i = begin; i < end; ++i) {
            if (m_text[i] != '\n') {
                m_file.bare[i] = ' ';
            }
        }
        m_at = end + markSize;
    }

    [[nodiscard]] std::size_t endOfQuoted(char quote) const {
        std::size_t i = m_at + 1;
        while (i < m_text.size() && m_text[i] != quote && m_text[i] != '\n') {
            i += m_text[i] == '\\' ? 2 : 1;
        }
        return std::min(i, m_text.size());
    }

    /// Whether the quote at hand stands inside a number such as 1'000.
    [[nodiscard]] bool separatesDigits() const {
        std::size_t begin = m_at;
        while (begin > 0 && (isWordCharacter(m_text[begin - 1]) || m_text[begin - 1] == '\'')) {
            --begin;
        }
        return begin < m_at && std::isdigit(static_cast<unsigned char>(m_text[begin])) != 0;
    }

    void takeString() {
        std::size_t begin = m_at + 1;
        std::size_t end = 0;
        std::size_t markSize = 1;
        if (m_at > 0 && m_text[m_at - 1] == 'R') {
            const std::size_t open = m_text.find('(', m_at);
            if (open == std::string::npos) {
                m_at = m_text.size();
                return;
            }
            const std::string close = ")" + m_text.substr(begin, open - begin) + "\"";
            begin = open + 1;
            markSize = close.size();
            end = std::min(m_text.find(close, begin), m_text.size());
        } else {
            end = endOfQuoted('"');
        }
        m_file.literals.push_back({m_text.substr(begin, end - begin), m_file.lineAt(m_at)});
        blankLiteral(begin, end, markSize);
    }

    SourceFile& m_file;
    const std::string& m_text;
    std::size_t m_at = 0;
};

void findIncludes(SourceFile& file) {
    static const std::regex pattern(R"(^\s*#\s*include\s*([<"])([^>"]+)[>"])");
    std::istringstream lines(file.code);
    std::string line;
    for (std::size_t number = 1; std::getline(lines, line); ++number) {
        std::smatch match;
        if (line.find("include") != std::string::npos && std::regex_search(line, match, pattern)) {
            file.includes.push_back({match[2], match[1] == "<", number});
        }
    }
}

} // namespace

bool SourceFile::isCpp() const {
    return path.ends_with(".cpp") || path.ends_with(".h");
}

bool SourceFile::isHeader() const {
    return path.ends_with(".h");
}

bool SourceFile::below(std::string_view folder) const {
    return path.size() > folder.size() && path.starts_with(folder) && path[folder.size()] == '/';
}

std::vector<std::string> SourceFile::parts() const {
    std::vector<std::string> result;
    std::istringstream words(path);
    for (std::string word; std::getline(words, word, '/');) {
        result.push_back(word);
    }
    return result;
}

std::size_t SourceFile::lineAt(std::size_t offset) const {
    const auto end = text.begin() + static_cast<std::ptrdiff_t>(std::min(offset, text.size()));
    return 1 + static_cast<std::size_t>(std::count(text.begin(), end, '\n'));
}

std::size_t SourceFile::lineCount() const {
    const auto breaks = static_cast<std::size_t>(std::count(text.begin(), text.end(), '\n'));
    return breaks + (!text.empty() && text.back() != '\n' ? 1 : 0);
}

SourceFile takeApart(std::string path, std::string text) {
    SourceFile file;
    file.path = std::move(path);
    file.text = std::move(text);
    if (file.isCpp()) {
        Scanner(file).run();
        findIncludes(file);
    }
    return file;
}

} // namespace pipwright::layout
