#include "core/exchange/print/page_flow.h"

#include "core/exchange/print/text_measure.h"

namespace pipwright {

PageFlow::PageFlow(PaperSize paper, Micrometres margin, Micrometres headHeight,
                   Micrometres footHeight)
    : m_paper(paper), m_margin(margin), m_head(headHeight), m_foot(footHeight),
      m_y(margin + headHeight) {}

void PageFlow::turnPage() {
    m_pages.push_back({m_paper, {}});
    m_y = bodyTop();
}

std::vector<Mark> linesInBox(const std::vector<std::string>& lines, PaperBox box, double points,
                             bool bold, Align align) {
    std::vector<Mark> marks;
    box.height = lineHeight(points);
    for (const std::string& line : lines) {
        marks.emplace_back(TextMark{box, line, points, bold, align});
        box.y += box.height;
    }
    return marks;
}

TextMark pageNumber(const PaperWords& words, std::size_t page, std::size_t pages, PaperBox box) {
    return {box, filledIn(words.pageOf, std::to_string(page), std::to_string(pages)), 8.0, false,
            Align::right};
}

} // namespace pipwright
