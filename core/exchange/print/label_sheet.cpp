#include "core/exchange/print/label_sheet.h"

#include "core/exchange/print/strokes.h"

#include <algorithm>
#include <utility>

namespace pipwright {

namespace {

constexpr Micrometres kHoleDiameter = 4_mm;

std::string yearAndPlaceOf(const LabelText& label) {
    if (label.year.empty() || label.place.empty()) {
        return label.year + label.place;
    }
    return label.year + " · " + label.place;
}

/// The paragraphs of a field.
std::vector<std::string> wordsFor(PrintedField field, const LabelText& label) {
    switch (field) {
    case PrintedField::code:
        return {label.code};
    case PrintedField::cross:
        return {label.cross};
    case PrintedField::yearAndPlace:
        return {yearAndPlaceOf(label)};
    case PrintedField::extra:
        return label.extraLines;
    case PrintedField::plantCode:
    case PrintedField::note:
        break;
    }
    return {};
}

std::string joined(const std::vector<std::string>& parts) {
    std::string all;
    for (const std::string& part : parts) {
        all += all.empty() ? part : " / " + part;
    }
    return all;
}

/// One label drawn at the origin.
struct DrawnLabel {
    std::vector<Mark> marks;
    std::vector<Misfit> misfits;
};

class LabelDrawing {
  public:
    LabelDrawing(const LabelText& label, std::size_t index, const LabelDesign& design,
                 const TextMeasure& measure)
        : m_label(label), m_index(index), m_design(design), m_measure(measure) {}

    DrawnLabel draw() && {
        bool hasRoomForExtra = false;
        for (const LabelFieldBox& field : m_design.fields) {
            hasRoomForExtra = hasRoomForExtra || field.field == PrintedField::extra;
            drawField(field);
        }
        if (!hasRoomForExtra && !joined(m_label.extraLines).empty()) {
            report(PrintedField::extra, MisfitReason::noField, joined(m_label.extraLines));
        }
        drawCode();
        m_drawn.marks.emplace_back(FrameMark{m_design.pencil, kHairline});
        if (m_design.hole) {
            m_drawn.marks.emplace_back(CircleMark{*m_design.hole, kHoleDiameter, kHairline});
        }
        return std::move(m_drawn);
    }

  private:
    Misfit& report(PrintedField field, MisfitReason reason, const std::string& text) {
        Misfit misfit;
        misfit.index = m_index;
        misfit.name = m_label.code;
        misfit.field = field;
        misfit.reason = reason;
        misfit.text = text;
        return m_drawn.misfits.emplace_back(std::move(misfit));
    }

    void drawField(const LabelFieldBox& field) {
        const std::vector<std::string> paragraphs = wordsFor(field.field, m_label);
        std::vector<std::string> lines;
        for (const std::string& paragraph : paragraphs) {
            const auto flowed = flowText(paragraph, field.points, field.bold, field.box.width,
                                         LongWords::stayWhole, m_measure);
            lines.insert(lines.end(), flowed.begin(), flowed.end());
        }
        if (field.field == PrintedField::code && lines.empty()) {
            report(field.field, MisfitReason::missing, "");
        }
        if (fits(field, lines, joined(paragraphs))) {
            placeLines(field, lines);
        }
    }

    bool fits(const LabelFieldBox& field, const std::vector<std::string>& lines,
              const std::string& whole) {
        // On a field of one line, words pushed to a second line are simply too wide.
        const std::string first = field.lines == 1 ? whole : std::string();
        Micrometres widest = m_measure.width(first, field.points, field.bold);
        for (const std::string& line : lines) {
            widest = std::max(widest, m_measure.width(line, field.points, field.bold));
        }
        if (widest > field.box.width) {
            Misfit& misfit = report(field.field, MisfitReason::tooWide, whole);
            misfit.needed = widest;
            misfit.room = field.box.width;
            return false;
        }
        if (static_cast<int>(lines.size()) > field.lines) {
            Misfit& misfit = report(field.field, MisfitReason::tooManyLines, whole);
            misfit.linesNeeded = static_cast<int>(lines.size());
            misfit.linesOfRoom = field.lines;
            return false;
        }
        return true;
    }

    void placeLines(const LabelFieldBox& field, const std::vector<std::string>& lines) {
        PaperBox box = field.box;
        box.height = field.box.height / field.lines;
        box.y = box.y - m_unused;
        for (const std::string& line : lines) {
            m_drawn.marks.emplace_back(TextMark{box, line, field.points, field.bold, Align::left});
            box.y += box.height;
        }
        if (field.field != PrintedField::code) {
            m_unused += box.height * (field.lines - static_cast<int>(lines.size()));
        }
    }

    void drawCode() {
        if (m_label.labelCode.empty()) {
            report(PrintedField::plantCode, MisfitReason::missing, "");
            return;
        }
        auto code = makeLabelQrCode(m_label.labelCode);
        if (!code) {
            report(PrintedField::plantCode, MisfitReason::notACode, m_label.labelCode);
            return;
        }
        m_drawn.marks.emplace_back(
            CodeMark{m_design.qrCorner, m_design.qrModule, std::move(code).value()});
    }

    const LabelText& m_label;
    std::size_t m_index;
    const LabelDesign& m_design;
    const TextMeasure& m_measure;
    DrawnLabel m_drawn;
    Micrometres m_unused; ///< empty lines so far: what follows moves up by them
};

void shift(PaperPoint& point, PaperPoint by) {
    point.x += by.x;
    point.y += by.y;
}

void shift(PaperBox& box, PaperPoint by) {
    box.x += by.x;
    box.y += by.y;
}

struct Shift {
    PaperPoint by;
    void operator()(LineMark& line) const {
        shift(line.from, by);
        shift(line.to, by);
    }
    void operator()(CircleMark& circle) const { shift(circle.centre, by); }
    void operator()(PolygonMark& polygon) const {
        for (PaperPoint& corner : polygon.corners) {
            shift(corner, by);
        }
    }
    void operator()(CodeMark& code) const { shift(code.corner, by); }
    template <typename Boxed>
    void operator()(Boxed& mark) const {
        shift(mark.box, by);
    }
};

bool mayNeverGoMissing(const Misfit& misfit) {
    return misfit.field == PrintedField::code || misfit.field == PrintedField::plantCode;
}

/// Little crosses where the cuts meet, so that a ruler can be laid from edge to edge.
void addCutMarks(Page& page, const LabelStock& stock) {
    const Micrometres arm = 1.5_mm;
    for (int row = 0; row <= stock.rows; ++row) {
        for (int column = 0; column <= stock.columns; ++column) {
            const Micrometres x = stock.first.x + stock.step.x * column;
            const Micrometres y = stock.first.y + stock.step.y * row;
            page.marks.emplace_back(LineMark{{x - arm, y}, {x + arm, y}, kHairline});
            page.marks.emplace_back(LineMark{{x, y - arm}, {x, y + arm}, kHairline});
        }
    }
}

} // namespace

Result<PrintedMatter> placeLabels(std::span<const LabelText> labels, const LabelStock& stock,
                                  const LabelRun& run, const TextMeasure& measure) {
    if (run.startCell < 0 || run.startCell >= stock.cells()) {
        return Problem{ProblemCode::badInput,
                       "There is no label " + std::to_string(run.startCell + 1) +
                           " on a sheet of " + std::to_string(stock.cells()) + ".",
                       "Start at a label from 1 to " + std::to_string(stock.cells()) + ".", ""};
    }
    PrintedMatter matter;
    int cell = run.startCell;
    for (std::size_t index = 0; index < labels.size(); ++index) {
        DrawnLabel drawn = LabelDrawing(labels[index], index, stock.design, measure).draw();
        const bool leaveOut =
            run.overflow == Overflow::leaveOutLabel
                ? !drawn.misfits.empty()
                : std::any_of(drawn.misfits.begin(), drawn.misfits.end(), mayNeverGoMissing);
        std::move(drawn.misfits.begin(), drawn.misfits.end(), std::back_inserter(matter.misfits));
        if (leaveOut) {
            continue;
        }
        if (matter.pages.empty() || cell == stock.cells()) {
            cell = matter.pages.empty() ? cell : 0;
            matter.pages.push_back({stock.page, {}});
            if (stock.toCut && run.cutMarks) {
                addCutMarks(matter.pages.back(), stock);
            }
        }
        for (Mark& mark : drawn.marks) {
            std::visit(Shift{stock.cornerOf(cell)}, mark);
            matter.pages.back().marks.push_back(std::move(mark));
        }
        ++cell;
    }
    return matter;
}

} // namespace pipwright
