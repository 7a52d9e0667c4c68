#include "ui/print/print_words.h"

#include <QCoreApplication>
#include <QLocale>

namespace pipwright::ui {

namespace {

class Print {
    Q_DECLARE_TR_FUNCTIONS(Print)
};

std::string utf8(const QString& text) {
    return text.toStdString();
}

QString millimetreText(Micrometres length) {
    const double mm = inMillimetres(length);
    const QString exact = QLocale().toString(mm, 'f', 1);
    return mm == static_cast<int>(mm) ? QLocale().toString(static_cast<int>(mm)) : exact;
}

QString kindName(const LabelDesign& design) {
    if (design.key == "hang_tag") {
        return Print::tr("Hang tag");
    }
    if (design.key == "branch_tag") {
        return Print::tr("Branch tag");
    }
    if (design.key == "loop_label") {
        return Print::tr("Loop label");
    }
    if (design.key == "pot_label") {
        return Print::tr("Pot label");
    }
    if (design.key == "row_post") {
        return Print::tr("Row post");
    }
    return Print::tr("Label");
}

QString paperName(PaperSize size) {
    if (size == kA4) {
        return Print::tr("A4");
    }
    if (size == kA4.turned()) {
        return Print::tr("A4 across");
    }
    return size == kLetter ? Print::tr("Letter") : QString();
}

QString fieldName(PrintedField field) {
    switch (field) {
    case PrintedField::code:
        return Print::tr("the code");
    case PrintedField::cross:
        return Print::tr("the cross");
    case PrintedField::yearAndPlace:
        return Print::tr("year and place");
    case PrintedField::extra:
        return Print::tr("the further lines");
    case PrintedField::plantCode:
        return Print::tr("the label code");
    case PrintedField::note:
        return Print::tr("the last note");
    }
    return {};
}

/// Long notes are named by their beginning.
QString beginning(const std::string& text) {
    constexpr qsizetype kMost = 60;
    const QString whole = QString::fromStdString(text).simplified();
    return whole.size() <= kMost ? whole : whole.left(kMost) + QStringLiteral("…");
}

} // namespace

PaperWords translatedPaperWords() {
    PaperWords words;
    words.pageOf = utf8(Print::tr("page %1 of %2"));
    words.notYet = utf8(Print::tr("not yet"));
    words.ripening = utf8(Print::tr("ripening"));
    words.ripe = utf8(Print::tr("ripe"));
    words.over = utf8(Print::tr("over"));
    words.gone = utf8(Print::tr("gone"));
    words.rowOutward = utf8(Print::tr("Row %1, from the zero stake"));
    words.rowBack = utf8(Print::tr("Row %1, back to the zero stake"));
    words.expected = utf8(Print::tr("expected: %1"));
    words.moreInBook = utf8(Print::tr("… more in the book"));
    words.fallenFruit =
        utf8(Print::tr("Fallen fruit can carry germs from animals: wash it, taste nothing rotten, "
                       "keep it out of raw juice. Taste nothing within the waiting time of a "
                       "spray."));
    words.rulerTitle = utf8(Print::tr("Ruler page"));
    words.rulerAdvice =
        utf8(Print::tr("Print at actual size (100 %), never \"fit to page\". Lay a ruler on the "
                       "line: it must measure %1 mm. If it does not, the labels will not lie "
                       "where they should."));
    return words;
}

QString stockName(const LabelStock& stock) {
    const QString label = Print::tr("%1, %2 x %3 mm", "kind, width, height")
                              .arg(kindName(stock.design), millimetreText(stock.design.width),
                                   millimetreText(stock.design.height));
    if (stock.cells() == 1) {
        return Print::tr("%1: single").arg(label);
    }
    const QString grid = stock.toCut ? Print::tr("%1: %2 to cut, %3 x %4", "label, paper, grid")
                                     : Print::tr("%1: %2, %3 x %4", "label, paper, grid");
    return grid.arg(label, paperName(stock.page)).arg(stock.columns).arg(stock.rows);
}

QString misfitSentence(const Misfit& misfit) {
    const QString name = misfit.name.empty()
                             ? Print::tr("Label %1").arg(QString::number(misfit.index + 1))
                             : QString::fromStdString(misfit.name);
    QString start = Print::tr("%1: %2", "tree, field").arg(name, fieldName(misfit.field));
    const QString text = beginning(misfit.text);
    switch (misfit.reason) {
    case MisfitReason::tooWide:
        return Print::tr("%1 is %2 mm wide, there is room for %3 mm. (%4)")
            .arg(start, QLocale().toString(inMillimetres(misfit.needed), 'f', 1),
                 QLocale().toString(inMillimetres(misfit.room), 'f', 1), text);
    case MisfitReason::tooManyLines:
        return Print::tr("%1 needs %2 lines, there is room for %3. (%4)")
            .arg(start)
            .arg(misfit.linesNeeded)
            .arg(misfit.linesOfRoom)
            .arg(text);
    case MisfitReason::noField:
        return Print::tr("%1 have no room on this stock. (%2)").arg(start, text);
    case MisfitReason::notACode:
        return Print::tr("%1 cannot be drawn as a QR code. (%2)").arg(start, text);
    case MisfitReason::missing:
        return Print::tr("%1 is empty.").arg(start);
    }
    return start;
}

} // namespace pipwright::ui
