#include "ui/compare/compare_paper.h"

#include "ui/compare/compare_words.h"
#include "ui/compare/paper_drawings.h"
#include "ui/print/print_words.h"

#include <QCoreApplication>

namespace pipwright::ui {

namespace {

struct PaperTexts {
    Q_DECLARE_TR_FUNCTIONS(pipwright::ui::ComparePaper)
};

constexpr int kMostOnUpright = 4; ///< more trees than this lie across the paper

} // namespace

PrintedTable comparedOnPaper(const CompareModel& model, Date today, const QString& bookName) {
    PrintedTable table;
    table.title = PaperTexts::tr("Trees side by side").toStdString();
    table.subtitle = PaperTexts::tr("%1, as the book stood on %2")
                         .arg(bookName.isEmpty() ? PaperTexts::tr("book not named") : bookName,
                              QString::fromStdString(today.iso()))
                         .toStdString();
    table.words = translatedPaperWords();
    if (model.columnCount() > kMostOnUpright) {
        table.paper = table.paper.turned();
    }
    table.columns.push_back({{}, 1.0, Align::left});
    for (int column = 0; column < model.columnCount(); ++column) {
        table.columns.push_back(
            {model.headerData(column, Qt::Horizontal, Qt::DisplayRole).toString().toStdString(),
             1.3, Align::left});
    }
    for (int row = 0; row < model.rowCount(); ++row) {
        const CompareRow& shown = model.row(row);
        PrintedRow printed;
        printed.isSection = shown.kind == CompareKind::section;
        printed.cells.push_back(shown.title.simplified().toStdString());
        for (int column = 0; column < model.columnCount() && !printed.isSection; ++column) {
            const CompareCell& cell = model.cell(row, column);
            QString words = shown.kind == CompareKind::head
                                ? cell.words.section(QLatin1Char('\n'), 1)
                                : cell.words;
            if (!cell.difference.isEmpty()) {
                words += QLatin1Char('\n') + cell.difference;
            }
            printed.cells.push_back(words.toStdString());
        }
        printed.drawingHeight = drawingHeightOnPaper(model, row);
        printed.drawing = [&model, row](std::size_t column, const PaperBox& box) {
            return drawnOnPaper(model, row, static_cast<int>(column) - 1, box);
        };
        if (shown.kind != CompareKind::photos) {
            table.rows.push_back(std::move(printed));
        }
    }
    table.notes.push_back(
        PaperTexts::tr(
            "Window: a line is one crop year, the oldest on top, broken when its end was not "
            "seen; the bar is the usual window. Scores: filled fair, open not fair or "
            "unclear; round blind, on its corner sighted, square not known; below them the "
            "mean of the fair scores with its standard error. Traits: the mean, from its "
            "lowest to its highest value.")
            .toStdString());
    table.notes.push_back(legendWords().toStdString());
    return table;
}

} // namespace pipwright::ui
