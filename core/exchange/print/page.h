#pragma once

#include "core/exchange/print/paper.h"
#include "core/exchange/print/qr_code.h"

#include <string>
#include <variant>
#include <vector>

/// Printed matter as data: what stands where on which page. The origin is the top left corner
/// of the paper; nothing is rotated; everything is ink on white.
namespace pipwright {

struct PaperPoint {
    Micrometres x;
    Micrometres y;
    bool operator==(const PaperPoint&) const = default;
};

struct PaperBox {
    Micrometres x;
    Micrometres y;
    Micrometres width;
    Micrometres height;
    bool operator==(const PaperBox&) const = default;
    [[nodiscard]] constexpr Micrometres right() const { return x + width; }
    [[nodiscard]] constexpr Micrometres bottom() const { return y + height; }
};

enum class Align { left, centre, right };

/// One line of text. Its capitals stand midway between the top and the bottom of the box.
struct TextMark {
    PaperBox box;
    std::string text; ///< UTF-8
    double points = 10.0;
    bool bold = false;
    Align align = Align::left;
    bool operator==(const TextMark&) const = default;
};

/// A straight line with square ends; its thickness lies half to each side.
struct LineMark {
    PaperPoint from;
    PaperPoint to;
    Micrometres thickness;
    bool operator==(const LineMark&) const = default;
};

/// A filled rectangle; 100 is black.
struct FillMark {
    PaperBox box;
    int inkPercent = 100;
    bool operator==(const FillMark&) const = default;
};

/// The outline of a box; the line lies inside it.
struct FrameMark {
    PaperBox box;
    Micrometres thickness;
    bool operator==(const FrameMark&) const = default;
};

/// The outline of a circle; the line lies half to each side.
struct CircleMark {
    PaperPoint centre;
    Micrometres diameter;
    Micrometres thickness;
    bool operator==(const CircleMark&) const = default;
};

/// A closed outline; without thickness it is filled black. The line lies half to each side.
struct PolygonMark {
    std::vector<PaperPoint> corners;
    Micrometres thickness;
    bool operator==(const PolygonMark&) const = default;
};

/// A QR code; the corner is that of its quiet zone.
struct CodeMark {
    PaperPoint corner;
    Micrometres module;
    QrCode code;
    bool operator==(const CodeMark&) const = default;
};

using Mark =
    std::variant<TextMark, LineMark, FillMark, FrameMark, CircleMark, PolygonMark, CodeMark>;

struct Page {
    PaperSize size;
    std::vector<Mark> marks;
    bool operator==(const Page&) const = default;
};

/// What a piece of printed text is, so that a reader can be told which one did not fit.
enum class PrintedField { code, cross, yearAndPlace, extra, plantCode, note };

enum class MisfitReason {
    tooWide,      ///< longer than its line
    tooManyLines, ///< more lines than there is room for
    noField,      ///< this stock has no room for such a field
    notACode,     ///< cannot be encoded
    missing       ///< must not be empty
};

/// Something that could not be printed as it is.
struct Misfit {
    std::size_t index = 0; ///< which of the things given, counted from 0
    std::string name;      ///< its code
    PrintedField field = PrintedField::code;
    MisfitReason reason = MisfitReason::tooWide;
    std::string text;    ///< what did not fit
    Micrometres needed;  ///< for tooWide: the width of the text
    Micrometres room;    ///< for tooWide: the width of the line
    int linesNeeded = 0; ///< for tooManyLines
    int linesOfRoom = 0; ///< for tooManyLines
    bool operator==(const Misfit&) const = default;
};

/// English, for the terminal: "AT17-014: the cross is 71.2 mm wide; there is room for 60.0 mm."
std::string sentenceOf(const Misfit& misfit);

struct PrintedMatter {
    std::vector<Page> pages;
    std::vector<Misfit> misfits;
};

} // namespace pipwright
