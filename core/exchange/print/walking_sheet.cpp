#include "core/exchange/print/walking_sheet.h"

#include "core/exchange/print/page_flow.h"
#include "core/exchange/print/strokes.h"

#include <algorithm>
#include <array>
#include <map>

namespace pipwright {

namespace {

constexpr Micrometres kWalkingMargin = 8_mm;
constexpr Micrometres kHead = 15_mm;
constexpr Micrometres kWalkingFoot = 11_mm;
constexpr Micrometres kTickSide = 5_mm;
constexpr Micrometres kTextStart = 7.5_mm;
constexpr Micrometres kMarkStep = 10_mm;
constexpr int kMarks = 5;
constexpr Micrometres kRowGap = 1.4_mm;
constexpr Micrometres kFrame = 0.2_mm;
constexpr double kCodePoints = 12.0;
constexpr double kMarkPoints = 6.5;
constexpr double kCautionPoints = 7.0;
constexpr std::size_t kMostNoteLines = 6;

class WalkingPages {
  public:
    WalkingPages(const WalkingSheet& sheet, const TextMeasure& measure)
        : m_sheet(sheet), m_measure(measure),
          m_flow(sheet.paper, kWalkingMargin, kHead, kWalkingFoot) {}

    PrintedMatter lay(const std::vector<WalkingTree>& trees) && {
        bool isOutward = true;
        for (std::size_t i = 0; i < trees.size(); ++i) {
            const bool isNewSite = i == 0 || trees[i].site != trees[i - 1].site;
            const bool isNewRow = isNewSite || trees[i].rowOrder != trees[i - 1].rowOrder ||
                                  trees[i].row != trees[i - 1].row;
            isOutward = isNewSite || (isNewRow ? !isOutward : isOutward);
            if (isNewSite) {
                turnPage(trees[i].site);
            }
            layTree(trees[i], i, isNewRow, isOutward);
        }
        for (std::size_t page = 0; page < m_flow.pageCount(); ++page) {
            addHeadAndFoot(page);
        }
        return {std::move(m_flow.pages()), std::move(m_misfits)};
    }

  private:
    [[nodiscard]] Micrometres marksLeft() const {
        return m_flow.left() + m_flow.width() - kMarkStep * kMarks;
    }
    [[nodiscard]] Micrometres textLeft() const { return m_flow.left() + kTextStart; }
    [[nodiscard]] Micrometres textWidth() const { return marksLeft() - 2_mm - textLeft(); }

    void turnPage(const std::string& site) {
        m_flow.turnPage();
        m_sites.push_back(site);
    }

    std::vector<std::string> flow(const std::string& text, double points, bool bold,
                                  Micrometres width) {
        return flowText(text, points, bold, width, LongWords::breakUp, m_measure);
    }

    std::vector<std::string> noteLines(const WalkingTree& tree, std::size_t index) {
        std::vector<std::string> lines = flow(tree.lastNote, kTextPoints, false, textWidth());
        if (lines.size() > kMostNoteLines) {
            Misfit misfit;
            misfit.index = index;
            misfit.name = tree.code;
            misfit.field = PrintedField::note;
            misfit.reason = MisfitReason::tooManyLines;
            misfit.text = tree.lastNote;
            misfit.linesNeeded = static_cast<int>(lines.size());
            misfit.linesOfRoom = static_cast<int>(kMostNoteLines);
            m_misfits.push_back(std::move(misfit));
            lines.resize(kMostNoteLines - 1);
            lines.push_back(m_sheet.words.moreInBook);
        }
        return lines;
    }

    /// Code and place share the first line when both fit on it.
    std::vector<Mark> headLines(const WalkingTree& tree, Micrometres top, Micrometres& height) {
        const auto codeLines = flow(tree.code, kCodePoints, true, textWidth());
        const Micrometres codeWidth = m_measure.width(tree.code, kCodePoints, true) + 3_mm;
        std::string beside = tree.place;
        if (!tree.expected.empty()) {
            beside +=
                (beside.empty() ? "" : " · ") + filledIn(m_sheet.words.expected, tree.expected);
        }
        const Micrometres besideWidth = m_measure.width(beside, kTextPoints, false);
        std::vector<Mark> marks = linesInBox(codeLines, {textLeft(), top, textWidth(), {}},
                                             kCodePoints, true, Align::left);
        height = lineHeight(kCodePoints) * static_cast<int>(codeLines.size());
        if (codeLines.size() == 1 && codeWidth + besideWidth <= textWidth()) {
            marks.emplace_back(TextMark{
                {textLeft() + codeWidth, top, textWidth() - codeWidth, lineHeight(kCodePoints)},
                beside,
                kTextPoints,
                false,
                Align::left});
            return marks;
        }
        append(marks, flow(beside, kTextPoints, false, textWidth()), top, height);
        return marks;
    }

    void append(std::vector<Mark>& marks, const std::vector<std::string>& lines, Micrometres top,
                Micrometres& height) const {
        for (Mark& mark : linesInBox(lines, {textLeft(), top + height, textWidth(), {}},
                                     kTextPoints, false, Align::left)) {
            marks.push_back(std::move(mark));
        }
        height += lineHeight(kTextPoints) * static_cast<int>(lines.size());
    }

    void layTree(const WalkingTree& tree, std::size_t index, bool isNewRow, bool isOutward) {
        const auto notes = noteLines(tree, index);
        Micrometres height;
        headLines(tree, {}, height);
        height += lineHeight(kTextPoints) * static_cast<int>(notes.size());
        height = std::max(height, kTickSide);
        const Micrometres rowTitle = 6.5_mm;
        if (!m_flow.hasRoomFor(height + kRowGap * 2 + (isNewRow ? rowTitle : 0_mm))) {
            turnPage(tree.site);
        }
        if (isNewRow || m_flow.isAtTop()) {
            layRowTitle(tree, isOutward, rowTitle);
        }
        m_flow.moveDown(kRowGap);
        const Micrometres top = m_flow.y();
        Micrometres used;
        std::vector<Mark> marks = headLines(tree, top, used);
        append(marks, notes, top, used);
        for (Mark& mark : marks) {
            m_flow.add(std::move(mark));
        }
        layBoxes(top);
        m_flow.moveDown(height + kRowGap);
        m_flow.add(LineMark{
            {m_flow.left(), m_flow.y()}, {m_flow.left() + m_flow.width(), m_flow.y()}, kHairline});
    }

    void layRowTitle(const WalkingTree& tree, bool isOutward, Micrometres height) {
        const PaperBox band{m_flow.left(), m_flow.y(), m_flow.width(), height};
        m_flow.add(FillMark{band, 8});
        const std::string& pattern = isOutward ? m_sheet.words.rowOutward : m_sheet.words.rowBack;
        m_flow.add(TextMark{{band.x + 1_mm, band.y, textWidth() + kTextStart, height},
                            filledIn(pattern, tree.row),
                            kTextPoints,
                            true,
                            Align::left});
        const PaperWords& words = m_sheet.words;
        const std::array<const std::string*, kMarks> heads{&words.notYet, &words.ripening,
                                                           &words.ripe, &words.over, &words.gone};
        Micrometres x = marksLeft();
        for (const std::string* head : heads) {
            layMarkHead(*head, {x, band.y, kMarkStep, height});
            x += kMarkStep;
        }
        m_flow.moveDown(height);
    }

    void layMarkHead(const std::string& head, PaperBox box) {
        const auto lines = flow(head, kMarkPoints, false, box.width - 0.4_mm);
        const Micrometres all = lineHeight(kMarkPoints) * static_cast<int>(lines.size());
        box.y += (box.height - all) / 2;
        for (Mark& mark : linesInBox(lines, box, kMarkPoints, false, Align::centre)) {
            m_flow.add(std::move(mark));
        }
    }

    void layBoxes(Micrometres top) {
        m_flow.add(FrameMark{{m_flow.left(), top, kTickSide, kTickSide}, kFrame});
        for (int mark = 0; mark < kMarks; ++mark) {
            const Micrometres x = marksLeft() + kMarkStep * mark + (kMarkStep - kTickSide) / 2;
            m_flow.add(FrameMark{{x, top, kTickSide, kTickSide}, kFrame});
        }
    }

    void addHeadAndFoot(std::size_t page) {
        std::vector<Mark>& marks = m_flow.pages()[page].marks;
        const Micrometres left = m_flow.left();
        const Micrometres right = left + m_flow.width();
        const auto site = flow(m_sites[page], 14.0, true, m_flow.width() - 40_mm);
        if (!site.empty()) {
            marks.emplace_back(TextMark{{left, kWalkingMargin, m_flow.width() - 40_mm, 7_mm},
                                        site.front(),
                                        14.0,
                                        true,
                                        Align::left});
            for (Mark& mark : linesInBox({site.begin() + 1, site.end()},
                                         {left, kWalkingMargin + 7_mm, m_flow.width() - 40_mm, {}},
                                         kTextPoints, true, Align::left)) {
                marks.push_back(std::move(mark));
            }
        }
        marks.emplace_back(TextMark{{right - 38_mm, kWalkingMargin, 38_mm, 7_mm},
                                    m_sheet.date.iso(),
                                    11.0,
                                    true,
                                    Align::right});
        marks.emplace_back(pageNumber(m_sheet.words, page + 1, m_flow.pageCount(),
                                      {right - 38_mm, kWalkingMargin + 7_mm, 38_mm, 4_mm}));
        const Micrometres ruleY = m_flow.bodyBottom() + 2_mm;
        marks.emplace_back(LineMark{{left, ruleY}, {right, ruleY}, kFrame});
        const auto caution = flow(m_sheet.words.fallenFruit, kCautionPoints, false, m_flow.width());
        for (Mark& mark : linesInBox(caution, {left, ruleY + 0.8_mm, m_flow.width(), {}},
                                     kCautionPoints, false, Align::left)) {
            marks.push_back(std::move(mark));
        }
    }

    const WalkingSheet& m_sheet;
    const TextMeasure& m_measure;
    PageFlow m_flow;
    std::vector<std::string> m_sites; ///< of each page
    std::vector<Misfit> m_misfits;
};

} // namespace

std::vector<WalkingTree> inWalkingOrder(std::vector<WalkingTree> trees) {
    std::map<std::string, std::size_t> siteOrder;
    for (const WalkingTree& tree : trees) {
        siteOrder.emplace(tree.site, siteOrder.size());
    }
    const auto sameRow = [](const WalkingTree& a, const WalkingTree& b) {
        return a.site == b.site && a.rowOrder == b.rowOrder && a.row == b.row;
    };
    std::stable_sort(trees.begin(), trees.end(), [&](const WalkingTree& a, const WalkingTree& b) {
        if (a.site != b.site) {
            return siteOrder.at(a.site) < siteOrder.at(b.site);
        }
        if (a.rowOrder != b.rowOrder) {
            return a.rowOrder < b.rowOrder;
        }
        return a.row != b.row ? a.row < b.row : a.alongRow < b.alongRow;
    });
    bool isOutward = true;
    for (auto first = trees.begin(); first != trees.end();) {
        const auto last = std::find_if(
            first, trees.end(), [&](const WalkingTree& tree) { return !sameRow(*first, tree); });
        const bool isNewSite = first == trees.begin() || first->site != std::prev(first)->site;
        isOutward = isNewSite || !isOutward;
        if (!isOutward) {
            std::reverse(first, last);
        }
        first = last;
    }
    return trees;
}

PrintedMatter layOutWalkingSheets(const WalkingSheet& sheet, const TextMeasure& measure) {
    return WalkingPages(sheet, measure).lay(inWalkingOrder(sheet.trees));
}

} // namespace pipwright
