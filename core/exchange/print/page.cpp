#include "core/exchange/print/page.h"

#include <cstdio>

namespace pipwright {

namespace {

std::string tenths(Micrometres length) {
    char text[32];
    std::snprintf(text, sizeof text, "%.1f mm", inMillimetres(length));
    return text;
}

std::string wordFor(PrintedField field) {
    switch (field) {
    case PrintedField::code:
        return "the code";
    case PrintedField::cross:
        return "the cross";
    case PrintedField::yearAndPlace:
        return "year and place";
    case PrintedField::extra:
        return "the further lines";
    case PrintedField::plantCode:
        return "the label code";
    case PrintedField::note:
        return "the last note";
    }
    return "a field";
}

} // namespace

std::string sentenceOf(const Misfit& misfit) {
    std::string start =
        (misfit.name.empty() ? "Label " + std::to_string(misfit.index + 1) : misfit.name) + ": " +
        wordFor(misfit.field);
    switch (misfit.reason) {
    case MisfitReason::tooWide:
        return start + " \"" + misfit.text + "\" is " + tenths(misfit.needed) +
               " wide; there is room for " + tenths(misfit.room) + ".";
    case MisfitReason::tooManyLines:
        return start + " \"" + misfit.text + "\" needs " + std::to_string(misfit.linesNeeded) +
               " lines; there is room for " + std::to_string(misfit.linesOfRoom) + ".";
    case MisfitReason::noField:
        return start + " \"" + misfit.text + "\" has no room on this stock.";
    case MisfitReason::notACode:
        return start + " \"" + misfit.text + "\" cannot be drawn as a QR code.";
    case MisfitReason::missing:
        return start + " is empty.";
    }
    return start;
}

} // namespace pipwright
