#include "core/exchange/print/ruler_page.h"

#include "core/exchange/print/page_flow.h"

#include <algorithm>

namespace pipwright {

namespace {

constexpr Micrometres kTickLine = 0.1_mm;

int wholeCentimetres(Micrometres length) {
    return std::clamp(length.count / 10000, 0, 10);
}

/// How long the tick at a millimetre is: 5 mm at centimetres, 3.5 at halves, 2 between.
Micrometres tickLength(int millimetre) {
    if (millimetre % 10 == 0) {
        return 5_mm;
    }
    return millimetre % 5 == 0 ? 3.5_mm : 2_mm;
}

void addRuler(Page& page, PaperPoint zero, int lengthInMm, bool isAcross) {
    const auto along = [&](Micrometres distance, Micrometres aside) {
        return isAcross ? PaperPoint{zero.x + distance, zero.y + aside}
                        : PaperPoint{zero.x + aside, zero.y + distance};
    };
    page.marks.emplace_back(LineMark{along({}, {}), along(1_mm * lengthInMm, {}), kTickLine});
    for (int mm = 0; mm <= lengthInMm; ++mm) {
        const Micrometres distance = 1_mm * mm;
        page.marks.emplace_back(
            LineMark{along(distance, {}), along(distance, tickLength(mm)), kTickLine});
        if (mm % 10 == 0 && mm > 0) {
            const PaperPoint end = along(distance, 5_mm);
            const PaperBox box = isAcross ? PaperBox{end.x - 4_mm, end.y + 0.3_mm, 8_mm, 3_mm}
                                          : PaperBox{end.x + 0.7_mm, end.y - 1.5_mm, 8_mm, 3_mm};
            page.marks.emplace_back(TextMark{box, std::to_string(mm), 7.0, false,
                                             isAcross ? Align::centre : Align::left});
        }
    }
}

} // namespace

Page rulerPage(PaperSize paper, const PaperWords& words, const TextMeasure& measure) {
    const bool isSmall = paper.width < 120_mm || paper.height < 120_mm;
    const Micrometres margin = isSmall ? 3_mm : 15_mm;
    const int across = wholeCentimetres(paper.width - margin * 2 - 4_mm) * 10;
    const Micrometres downTop = margin + 11_mm; // clear of the figures of the other ruler
    const int down = wholeCentimetres(paper.height - margin - downTop) * 10;
    Page page{paper, {}};
    addRuler(page, {margin, margin}, across, true);
    if (down > 0) {
        addRuler(page, {margin, downTop}, down, false);
    }

    const PaperBox box{
        margin + 20_mm, downTop + 1_mm, std::min(paper.width - margin * 2 - 20_mm, 95_mm), {}};
    const double titlePoints = isSmall ? 8.0 : 16.0;
    const double textPoints = isSmall ? 6.0 : 10.0;
    std::vector<std::string> advice =
        flowText(filledIn(words.rulerAdvice, std::to_string(across)), textPoints, false, box.width,
                 LongWords::breakUp, measure);
    const Micrometres room = paper.height - margin - box.y - lineHeight(titlePoints);
    if (lineHeight(textPoints) * static_cast<int>(advice.size()) > room) {
        return page; // The ruler alone says enough where the words have no room.
    }
    for (Mark& mark : linesInBox({words.rulerTitle}, box, titlePoints, true, Align::left)) {
        page.marks.push_back(std::move(mark));
    }
    PaperBox below = box;
    below.y += lineHeight(titlePoints) + 1_mm;
    for (Mark& mark : linesInBox(advice, below, textPoints, false, Align::left)) {
        page.marks.push_back(std::move(mark));
    }
    return page;
}

} // namespace pipwright
