#pragma once

#include "core/exchange/print/page.h"
#include "core/exchange/print/text_measure.h"

#include <string>
#include <vector>

namespace pipwright {

/// Every character is 0.6 of the size wide, in bold 0.7.
class RuleMeasure : public TextMeasure {
  public:
    [[nodiscard]] Micrometres width(const std::string& text, double points,
                                    bool bold) const override {
        int characters = 0;
        for (const char byte : text) {
            characters += (static_cast<unsigned char>(byte) & 0xC0U) != 0x80U ? 1 : 0;
        }
        return fromPoints(characters * points * (bold ? 0.7 : 0.6));
    }
};

inline const RuleMeasure kMeasure;

/// Marks as lines of text in micrometres, for comparing with what is expected.
struct MarkText {
    static std::string numbers(std::initializer_list<Micrometres> lengths) {
        std::string text;
        for (const Micrometres length : lengths) {
            text += ' ' + std::to_string(length.count);
        }
        return text;
    }
    static std::string box(const PaperBox& box) {
        return numbers({box.x, box.y, box.width, box.height});
    }
    std::string operator()(const TextMark& mark) const {
        const std::string tenths = std::to_string(static_cast<int>(mark.points * 10.0 + 0.5));
        return "text" + box(mark.box) + ' ' + tenths + (mark.bold ? " bold " : " plain ") +
               mark.text;
    }
    std::string operator()(const LineMark& mark) const {
        return "line" + numbers({mark.from.x, mark.from.y, mark.to.x, mark.to.y, mark.thickness});
    }
    std::string operator()(const FillMark& mark) const {
        return "fill" + box(mark.box) + ' ' + std::to_string(mark.inkPercent);
    }
    std::string operator()(const FrameMark& mark) const {
        return "frame" + box(mark.box) + numbers({mark.thickness});
    }
    std::string operator()(const CircleMark& mark) const {
        return "circle" + numbers({mark.centre.x, mark.centre.y, mark.diameter, mark.thickness});
    }
    std::string operator()(const PolygonMark& mark) const {
        std::string text = "polygon";
        for (const PaperPoint& corner : mark.corners) {
            text += numbers({corner.x, corner.y});
        }
        return text + numbers({mark.thickness});
    }
    std::string operator()(const CodeMark& mark) const {
        return "code" + numbers({mark.corner.x, mark.corner.y, mark.module}) + ' ' + mark.code.text;
    }
};

inline std::vector<std::string> marksAsText(const Page& page) {
    std::vector<std::string> lines;
    for (const Mark& mark : page.marks) {
        lines.push_back(std::visit(MarkText{}, mark));
    }
    return lines;
}

/// The texts of a page in the order in which they were placed.
inline std::vector<std::string> textsOf(const Page& page) {
    std::vector<std::string> texts;
    for (const Mark& mark : page.marks) {
        if (const auto* text = std::get_if<TextMark>(&mark)) {
            texts.push_back(text->text);
        }
    }
    return texts;
}

} // namespace pipwright
