#include "core/exchange/print/tasting_sheets.h"

#include "core/exchange/print/page_flow.h"
#include "core/exchange/print/strokes.h"
#include "core/exchange/print/table_page.h"

#include <algorithm>

namespace pipwright {

namespace {

constexpr Micrometres kSheetMargin = 14_mm;
constexpr Micrometres kSheetRule = 0.2_mm;
constexpr Micrometres kNumberWidth = 10_mm;
constexpr Micrometres kCodeWidth = 26_mm;
constexpr Micrometres kLikingWidth = 24_mm;
constexpr Micrometres kMostRowHeight = 16_mm;
constexpr Micrometres kPauseHeight = 7.5_mm;
constexpr Micrometres kHeadRowHeight = 6_mm;
constexpr Micrometres kBestHeight = 21_mm;
constexpr double kSheetPoints = 9.5;
constexpr double kSheetCodePoints = 17.0;
constexpr double kSmallPoints = 8.0;

/// One sheet after the other; each is a page.
class SheetPages {
  public:
    SheetPages(const TastingSheets& sheets, const TextMeasure& measure)
        : m_sheets(sheets), m_measure(measure) {}

    PrintedMatter lay() && {
        for (const SheetTaster& taster : m_sheets.tasters) {
            layPage(taster);
        }
        return {std::move(m_pages), {}};
    }

  private:
    [[nodiscard]] Micrometres width() const { return m_sheets.paper.width - kSheetMargin * 2; }
    [[nodiscard]] Micrometres right() const { return kSheetMargin + width(); }

    void add(Mark mark) { m_pages.back().marks.push_back(std::move(mark)); }

    /// Running text at the pen; the pen goes below it.
    void write(const std::string& text, double points, bool bold, Micrometres room) {
        const auto lines = flowText(text, points, bold, room, LongWords::breakUp, m_measure);
        for (Mark& mark :
             linesInBox(lines, {kSheetMargin, m_y, room, {}}, points, bold, Align::left)) {
            add(std::move(mark));
        }
        m_y += lineHeight(points) * static_cast<int>(lines.size());
    }

    void layPage(const SheetTaster& taster) {
        m_pages.push_back({m_sheets.paper, {}});
        m_y = kSheetMargin;
        layHead(taster);
        layScale();
        const Micrometres foot = layCaution();
        layRows(taster, foot);
        layBest();
    }

    void layHead(const SheetTaster& taster) {
        const Micrometres beside = 45_mm;
        add(TextMark{{right() - beside, m_y, beside, lineHeight(kTitlePoints)},
                     m_sheets.date.iso(),
                     12.0,
                     true,
                     Align::right});
        write(filledIn(m_sheets.sittingWords.sheetOf, taster.name), kTitlePoints, true,
              width() - beside - 2_mm);
        write(m_sheets.title, kSheetPoints, false, width());
        m_y += 2_mm;
        write(m_sheets.sittingWords.howTo, kSheetPoints, false, width());
        m_y += 3_mm;
    }

    void layScale() {
        const Micrometres step = width() / 9;
        const Micrometres numbers = 6_mm;
        std::vector<std::vector<std::string>> words;
        std::size_t most = 0;
        for (const std::string& one : m_sheets.sittingWords.scale) {
            words.push_back(
                flowText(one, kSmallPoints, false, step - 1_mm, LongWords::breakUp, m_measure));
            most = std::max(most, words.back().size());
        }
        const Micrometres height =
            numbers + lineHeight(kSmallPoints) * static_cast<int>(most) + 1.5_mm;
        for (int number = 1; number <= 9; ++number) {
            const PaperBox box{kSheetMargin + step * (number - 1), m_y, step, numbers};
            if (number % 2 == 1) {
                add(FillMark{{box.x, m_y, step, height}, 6});
            }
            add(TextMark{box, std::to_string(number), 12.0, true, Align::centre});
            for (Mark& mark : linesInBox(words.at(static_cast<std::size_t>(number) - 1),
                                         {box.x + 0.5_mm, m_y + numbers, step - 1_mm, {}},
                                         kSmallPoints, false, Align::centre)) {
                add(std::move(mark));
            }
        }
        m_y += height + 3_mm;
    }

    /// At the foot of the page; gives where it begins.
    Micrometres layCaution() {
        const auto lines = flowText(m_sheets.sittingWords.caution, kSmallPoints, false, width(),
                                    LongWords::breakUp, m_measure);
        const Micrometres height = lineHeight(kSmallPoints) * static_cast<int>(lines.size());
        const Micrometres top = m_sheets.paper.height - kSheetMargin - height;
        add(LineMark{{kSheetMargin, top - 1.5_mm}, {right(), top - 1.5_mm}, kSheetRule});
        for (Mark& mark : linesInBox(lines, {kSheetMargin, top, width(), {}}, kSmallPoints, false,
                                     Align::left)) {
            add(std::move(mark));
        }
        return top - 3_mm;
    }

    [[nodiscard]] std::vector<std::string> lookOnlyLines() const {
        std::string names;
        for (const std::string& name : m_sheets.lookOnly) {
            names += (names.empty() ? "" : ", ") + name;
        }
        if (names.empty()) {
            return {};
        }
        return flowText(filledIn(m_sheets.sittingWords.lookOnly, names), kSheetPoints, false,
                        width(), LongWords::breakUp, m_measure);
    }

    void layRows(const SheetTaster& taster, Micrometres foot) {
        const auto look = lookOnlyLines();
        const int rows = static_cast<int>(taster.codes.size());
        Micrometres room = foot - m_y - kHeadRowHeight - kBestHeight -
                           lineHeight(kSheetPoints) * (static_cast<int>(look.size()) + 1);
        room = room - (m_sheets.pauseAfter > 0 ? kPauseHeight : 0_mm);
        const Micrometres height = std::min(kMostRowHeight, room / std::max(rows, 1));
        layColumnHeads();
        for (int row = 0; row < rows; ++row) {
            if (row > 0 && row == m_sheets.pauseAfter) {
                layPause();
            }
            layRow(row + 1, taster.codes[static_cast<std::size_t>(row)], height);
        }
        for (Mark& mark : linesInBox(look, {kSheetMargin, m_y + 2_mm, width(), {}}, kSheetPoints,
                                     false, Align::left)) {
            add(std::move(mark));
        }
        m_y += lineHeight(kSheetPoints) * static_cast<int>(look.size());
    }

    void layColumnHeads() {
        const SittingWords& words = m_sheets.sittingWords;
        const Micrometres top = m_y;
        const auto head = [&](Micrometres x, Micrometres room, const std::string& text) {
            add(TextMark{{x, top, room, kHeadRowHeight}, text, kSmallPoints, false, Align::left});
        };
        head(kSheetMargin, kNumberWidth, words.place);
        head(kSheetMargin + kNumberWidth, kCodeWidth, words.code);
        head(kSheetMargin + kNumberWidth + kCodeWidth, kLikingWidth, words.liking);
        head(wordsLeft(), right() - wordsLeft(), words.remarks);
        m_y += kHeadRowHeight;
        add(LineMark{{kSheetMargin, m_y}, {right(), m_y}, kSheetRule});
    }

    [[nodiscard]] Micrometres wordsLeft() const {
        return kSheetMargin + kNumberWidth + kCodeWidth + kLikingWidth;
    }

    void layPause() {
        const PaperBox band{kSheetMargin, m_y, width(), kPauseHeight};
        add(FillMark{band, 10});
        add(TextMark{band, m_sheets.sittingWords.pause, kSheetPoints, true, Align::centre});
        m_y += kPauseHeight;
    }

    void layRow(int number, const std::string& code, Micrometres height) {
        const Micrometres inset = 1.6_mm;
        add(TextMark{{kSheetMargin, m_y, kNumberWidth, height},
                     std::to_string(number),
                     kSheetPoints,
                     false,
                     Align::left});
        add(TextMark{{kSheetMargin + kNumberWidth, m_y, kCodeWidth, height},
                     code,
                     kSheetCodePoints,
                     true,
                     Align::left});
        add(FrameMark{
            {kSheetMargin + kNumberWidth + kCodeWidth, m_y + inset, 16_mm, height - inset * 2},
            kSheetRule});
        add(LineMark{
            {wordsLeft(), m_y + height - 2.2_mm}, {right(), m_y + height - 2.2_mm}, kHairline});
        m_y += height;
    }

    void layBest() {
        const SittingWords& words = m_sheets.sittingWords;
        m_y += 4_mm;
        add(TextMark{
            {kSheetMargin, m_y, 42_mm, 9_mm}, words.bestOnes, kSheetPoints, true, Align::left});
        const Micrometres step = (width() - 42_mm) / 3;
        for (int place = 0; place < 3; ++place) {
            const Micrometres x = kSheetMargin + 42_mm + step * place;
            add(TextMark{{x, m_y, 17_mm, 9_mm},
                         words.bestPlaces.at(static_cast<std::size_t>(place)),
                         kSmallPoints,
                         false,
                         Align::right});
            add(FrameMark{{x + 19_mm, m_y, 19_mm, 9_mm}, kSheetRule});
        }
    }

    const TastingSheets& m_sheets;
    const TextMeasure& m_measure;
    std::vector<Page> m_pages;
    Micrometres m_y;
};

} // namespace

PrintedMatter layOutTastingSheets(const TastingSheets& sheets, const TextMeasure& measure) {
    return SheetPages(sheets, measure).lay();
}

PrintedMatter layOutSittingKey(const SittingKeyPaper& key, const TextMeasure& measure) {
    const SittingWords& words = key.sittingWords;
    PrintedTable table;
    table.title = words.keyTitle;
    table.subtitle =
        key.date.iso() + (key.title.empty() ? "" : " · " + key.title) + ". " + words.keyAdvice;
    table.columns = {{words.code, 0.8},
                     {words.fruit, 1.6},
                     {words.where, 1.5},
                     {words.condition, 2.4},
                     {words.role, 1.5}};
    for (const KeyLine& line : key.lines) {
        table.rows.push_back({{line.code, line.fruit, line.where, line.condition, line.role}});
    }
    table.notes.push_back(words.orders + ":");
    for (const SheetTaster& taster : key.tasters) {
        std::string order;
        for (const std::string& code : taster.codes) {
            order += (order.empty() ? "" : " · ") + code;
        }
        table.notes.push_back(taster.name + ": " + order);
    }
    if (!key.draw.empty()) {
        table.notes.push_back(filledIn(words.drawn, key.draw));
    }
    table.paper = key.paper;
    table.words = key.words;
    return layOutTable(table, measure);
}

} // namespace pipwright
