#include "core/exchange/print/text_measure.h"

#include <string_view>

namespace pipwright {

namespace {

/// The length in bytes of the character at the start (a lead byte and what continues it).
std::size_t firstCharacter(std::string_view text) {
    std::size_t length = 1;
    while (length < text.size() && (static_cast<unsigned char>(text[length]) & 0xC0U) == 0x80U) {
        ++length;
    }
    return length;
}

class Flow {
  public:
    Flow(double points, bool bold, Micrometres width, LongWords longWords,
         const TextMeasure& measure)
        : m_points(points), m_bold(bold), m_width(width), m_longWords(longWords),
          m_measure(measure) {}

    void addWord(std::string_view word) {
        const std::string longer =
            m_line.empty() ? std::string(word) : m_line + ' ' + std::string(word);
        if (fits(longer)) {
            m_line = longer;
            return;
        }
        endLine();
        if (m_longWords == LongWords::stayWhole || fits(std::string(word))) {
            m_line = word;
            return;
        }
        breakUp(word);
    }

    void endLine() {
        if (!m_line.empty()) {
            m_lines.push_back(std::move(m_line));
            m_line.clear();
        }
    }

    std::vector<std::string> lines() && { return std::move(m_lines); }

  private:
    [[nodiscard]] bool fits(const std::string& text) const {
        return m_measure.width(text, m_points, m_bold) <= m_width;
    }

    void breakUp(std::string_view word) {
        while (!word.empty()) {
            const std::size_t length = firstCharacter(word);
            std::string longer = m_line + std::string(word.substr(0, length));
            if (!m_line.empty() && !fits(longer)) {
                endLine();
                continue;
            }
            m_line = std::move(longer);
            word.remove_prefix(length);
        }
    }

    double m_points;
    bool m_bold;
    Micrometres m_width;
    LongWords m_longWords;
    const TextMeasure& m_measure;
    std::string m_line;
    std::vector<std::string> m_lines;
};

} // namespace

std::vector<std::string> flowText(const std::string& text, double points, bool bold,
                                  Micrometres width, LongWords longWords,
                                  const TextMeasure& measure) {
    Flow flow(points, bold, width, longWords, measure);
    constexpr std::string_view kGaps = " \t\r\n\v\f";
    std::string_view rest = text;
    while (!rest.empty()) {
        const std::size_t gap = rest.find_first_of(kGaps);
        const std::string_view word = rest.substr(0, gap);
        if (!word.empty()) {
            flow.addWord(word);
        }
        if (gap == std::string_view::npos) {
            break;
        }
        if (rest[gap] == '\n') {
            flow.endLine();
        }
        rest.remove_prefix(gap + 1);
    }
    flow.endLine();
    return std::move(flow).lines();
}

} // namespace pipwright
