#pragma once

#include "core/exchange/print/page.h"
#include "core/exchange/print/paper_words.h"

#include <string>
#include <vector>

namespace pipwright {

/// Fills pages from top to bottom. Heads and feet are added by the caller when all pages are
/// known; their heights are kept free here.
class PageFlow {
  public:
    PageFlow(PaperSize paper, Micrometres margin, Micrometres headHeight, Micrometres footHeight);

    [[nodiscard]] Micrometres left() const { return m_margin; }
    [[nodiscard]] Micrometres width() const { return m_paper.width - m_margin * 2; }
    [[nodiscard]] Micrometres bodyTop() const { return m_margin + m_head; }
    [[nodiscard]] Micrometres bodyBottom() const { return m_paper.height - m_margin - m_foot; }
    [[nodiscard]] Micrometres bodyHeight() const { return bodyBottom() - bodyTop(); }
    [[nodiscard]] Micrometres y() const { return m_y; }
    [[nodiscard]] bool hasRoomFor(Micrometres height) const {
        return !m_pages.empty() && m_y + height <= bodyBottom();
    }
    [[nodiscard]] bool isAtTop() const { return m_y == bodyTop(); }

    void turnPage();
    void moveDown(Micrometres height) { m_y += height; }
    void add(Mark&& mark) { m_pages.back().marks.push_back(std::move(mark)); }

    [[nodiscard]] std::size_t pageCount() const { return m_pages.size(); }
    std::vector<Page>& pages() { return m_pages; }

  private:
    PaperSize m_paper;
    Micrometres m_margin;
    Micrometres m_head;
    Micrometres m_foot;
    Micrometres m_y;
    std::vector<Page> m_pages;
};

/// Text lines one under the other from the top of the box, each lineHeight(points) high.
std::vector<Mark> linesInBox(const std::vector<std::string>& lines, PaperBox box, double points,
                             bool bold, Align align);

/// "page 2 of 5" as a text mark in the box.
TextMark pageNumber(const PaperWords& words, std::size_t page, std::size_t pages, PaperBox box);

} // namespace pipwright
