#include "core/exchange/print/table_page.h"

#include "core/exchange/print/page_flow.h"
#include "core/exchange/print/strokes.h"

#include <algorithm>

namespace pipwright {

namespace {

constexpr Micrometres kTableMargin = 15_mm;
constexpr Micrometres kTableFoot = 7_mm;
constexpr Micrometres kPadding = 1_mm;
constexpr Micrometres kCellGap = 3_mm;
constexpr Micrometres kRule = 0.3_mm;

using Lines = std::vector<std::string>;

class TablePages {
  public:
    TablePages(const PrintedTable& table, const TextMeasure& measure)
        : m_table(table), m_measure(measure), m_flow(table.paper, kTableMargin, 0_mm, kTableFoot) {
        placeColumns();
        for (const PrintedColumn& column : table.columns) {
            m_headings.push_back(flow(column.heading, true, m_widths[m_headings.size()]));
        }
    }

    PrintedMatter lay() && {
        m_flow.turnPage();
        layTitle();
        layHeadings();
        for (const PrintedRow& row : m_table.rows) {
            row.isSection ? laySection(row) : layRow(row);
        }
        m_flow.moveDown(3_mm);
        for (const std::string& note : m_table.notes) {
            layNote(note);
        }
        for (std::size_t page = 0; page < m_flow.pageCount(); ++page) {
            addFoot(page);
        }
        return {std::move(m_flow.pages()), {}};
    }

  private:
    void placeColumns() {
        double shares = 0.0;
        for (const PrintedColumn& column : m_table.columns) {
            shares += std::max(column.share, 0.0);
        }
        Micrometres x = m_flow.left() + kPadding;
        const auto columns = static_cast<int>(m_table.columns.size());
        const Micrometres toShare =
            m_flow.width() - kPadding * 2 - kCellGap * std::max(columns - 1, 0);
        for (const PrintedColumn& column : m_table.columns) {
            const double part = shares > 0.0 ? std::max(column.share, 0.0) / shares : 1.0 / columns;
            const Micrometres width = millimetres(inMillimetres(toShare) * part);
            m_lefts.push_back(x);
            m_widths.push_back(width);
            x += width + kCellGap;
        }
    }

    Lines flow(const std::string& text, bool bold, Micrometres width) {
        return flowText(text, kTextPoints, bold, width, LongWords::breakUp, m_measure);
    }

    void addAll(std::vector<Mark> marks) {
        for (Mark& mark : marks) {
            m_flow.add(std::move(mark));
        }
    }

    void rule(Micrometres thickness) {
        m_flow.add(LineMark{
            {m_flow.left(), m_flow.y()}, {m_flow.left() + m_flow.width(), m_flow.y()}, thickness});
    }

    void layTitle() {
        const auto title = flowText(m_table.title, kTitlePoints, true, m_flow.width(),
                                    LongWords::breakUp, m_measure);
        addAll(linesInBox(title, {m_flow.left(), m_flow.y(), m_flow.width(), {}}, kTitlePoints,
                          true, Align::left));
        m_flow.moveDown(lineHeight(kTitlePoints) * static_cast<int>(title.size()) + 1_mm);
        const auto subtitle = flow(m_table.subtitle, false, m_flow.width());
        addAll(linesInBox(subtitle, {m_flow.left(), m_flow.y(), m_flow.width(), {}}, kTextPoints,
                          false, Align::left));
        m_flow.moveDown(lineHeight(kTextPoints) * static_cast<int>(subtitle.size()) + 4_mm);
    }

    static std::size_t mostLines(const std::vector<Lines>& cells) {
        std::size_t most = 0;
        for (const Lines& lines : cells) {
            most = std::max(most, lines.size());
        }
        return most;
    }

    /// The drawings of a row, side by side below its words; a page has room for them.
    void layDrawings(const PrintedRow& row) {
        m_flow.moveDown(kPadding);
        for (std::size_t column = 1; column < m_table.columns.size(); ++column) {
            addAll(row.drawing(column,
                               {m_lefts[column], m_flow.y(), m_widths[column], row.drawingHeight}));
        }
        m_flow.moveDown(row.drawingHeight + kPadding);
    }

    void layCells(const std::vector<Lines>& cells, bool allBold) {
        m_flow.moveDown(kPadding);
        for (std::size_t column = 0; column < cells.size(); ++column) {
            const bool bold = allBold || column == 0;
            addAll(linesInBox(cells[column], {m_lefts[column], m_flow.y(), m_widths[column], {}},
                              kTextPoints, bold, m_table.columns[column].align));
        }
        m_flow.moveDown(lineHeight(kTextPoints) * static_cast<int>(mostLines(cells)) + kPadding);
    }

    void layHeadings() {
        if (mostLines(m_headings) == 0) {
            return;
        }
        layCells(m_headings, true);
        rule(kRule);
    }

    void turnPage() {
        m_flow.turnPage();
        layHeadings();
    }

    [[nodiscard]] int linesOfRoom(Micrometres kept = {}) const {
        const Micrometres room = m_flow.bodyBottom() - m_flow.y() - kPadding * 2 - kept;
        return std::max(room.count / lineHeight(kTextPoints).count, 0);
    }

    void layRow(const PrintedRow& row) {
        std::vector<Lines> cells;
        for (std::size_t column = 0; column < m_table.columns.size(); ++column) {
            const std::string text = column < row.cells.size() ? row.cells[column] : std::string();
            cells.push_back(flow(text, column == 0, m_widths[column]));
        }
        const bool drawn = row.drawing && row.drawingHeight.count > 0;
        const Micrometres drawing = drawn ? row.drawingHeight + kPadding * 2 : Micrometres{};
        if (static_cast<int>(std::max<std::size_t>(mostLines(cells), 1)) > linesOfRoom(drawing)) {
            turnPage();
        }
        layInPieces(std::move(cells));
        if (drawn) {
            if (!m_flow.hasRoomFor(drawing)) { // its words alone filled the page
                turnPage();
            }
            layDrawings(row);
        }
        rule(kHairline);
    }

    void layInPieces(std::vector<Lines> cells) {
        while (static_cast<int>(mostLines(cells)) > linesOfRoom()) {
            // One line a page at the least, so that even a table with giant headings ends.
            const auto room = static_cast<std::size_t>(std::max(linesOfRoom(), 1));
            std::vector<Lines> piece;
            for (Lines& lines : cells) {
                const auto cut =
                    lines.begin() + static_cast<std::ptrdiff_t>(std::min(room, lines.size()));
                piece.emplace_back(lines.begin(), cut);
                lines.erase(lines.begin(), cut);
            }
            layCells(piece, false);
            if (mostLines(cells) == 0) {
                return;
            }
            turnPage();
        }
        layCells(cells, false);
    }

    void laySection(const PrintedRow& row) {
        const std::string title = row.cells.empty() ? std::string() : row.cells.front();
        const Lines lines = flow(title, true, m_flow.width() - 2_mm);
        const Micrometres height =
            lineHeight(kTextPoints) * static_cast<int>(lines.size()) + kPadding * 2;
        // A section title never stands alone at the foot of a page.
        if (!m_flow.hasRoomFor(height + lineHeight(kTextPoints) + kPadding * 2)) {
            turnPage();
        }
        m_flow.add(FillMark{{m_flow.left(), m_flow.y(), m_flow.width(), height}, 8});
        addAll(linesInBox(
            lines,
            {m_flow.left() + kPadding, m_flow.y() + kPadding, m_flow.width() - kPadding * 2, {}},
            kTextPoints, true, Align::left));
        m_flow.moveDown(height);
    }

    void layNote(const std::string& note) {
        for (const std::string& line : flow(note, false, m_flow.width())) {
            if (!m_flow.hasRoomFor(lineHeight(kTextPoints))) {
                m_flow.turnPage();
            }
            addAll(linesInBox({line}, {m_flow.left(), m_flow.y(), m_flow.width(), {}}, kTextPoints,
                              false, Align::left));
            m_flow.moveDown(lineHeight(kTextPoints));
        }
        m_flow.moveDown(1_mm);
    }

    void addFoot(std::size_t page) {
        const Micrometres y = m_flow.bodyBottom() + 3_mm;
        const Micrometres right = m_flow.left() + m_flow.width();
        m_flow.pages()[page].marks.emplace_back(pageNumber(
            m_table.words, page + 1, m_flow.pageCount(), {right - 60_mm, y, 60_mm, 4_mm}));
    }

    const PrintedTable& m_table;
    const TextMeasure& m_measure;
    PageFlow m_flow;
    std::vector<Micrometres> m_lefts;
    std::vector<Micrometres> m_widths;
    std::vector<Lines> m_headings;
};

} // namespace

PrintedMatter layOutTable(const PrintedTable& table, const TextMeasure& measure) {
    return TablePages(table, measure).lay();
}

} // namespace pipwright
