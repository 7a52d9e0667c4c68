#include "app/command.h"
#include "app/terminal.h"
#include "core/exchange/print/label_design.h"
#include "core/exchange/print/tree_papers.h"
#include "core/store/orchard_book.h"
#include "ui/print/paper_font.h"
#include "ui/print/pdf_writer.h"

namespace pipwright::app {

namespace {

QString stockList() {
    QString text;
    for (const LabelStock& stock : labelStocks()) {
        text += QStringLiteral("  %1  %2\n")
                    .arg(QString::fromStdString(stock.key), -22)
                    .arg(QString::fromStdString(stock.name));
    }
    return text;
}

/// The plants named on the command line by code, name or row/position; all growing ones when none.
Result<std::vector<Index>> plantsNamed(const OrchardView& view, const QStringList& names) {
    std::vector<Index> plants;
    if (names.isEmpty()) {
        for (Index plant = 0; plant < view.plants().size(); ++plant) {
            if (view.plants()[plant].state == PlantState::growing) {
                plants.push_back(plant);
            }
        }
        return plants;
    }
    for (const QString& name : names) {
        const auto before = plants.size();
        if (const auto genotype = view.genotypeCalled(name.toStdString())) {
            for (const Index plant : view.plantsOf(*genotype)) {
                plants.push_back(plant);
            }
        } else {
            for (Index plant = 0; plant < view.plants().size(); ++plant) {
                if (view.placeText(plant, false) == name.toStdString()) {
                    plants.push_back(plant);
                }
            }
        }
        if (plants.size() == before) {
            return Problem{ProblemCode::notFound, "no plant has that code, name or place.",
                           "Write a code as on its tag, or row/position.", name.toStdString()};
        }
    }
    return plants;
}

} // namespace

int labelsCommand(const QStringList& arguments) {
    QCommandLineParser parser;
    parser.setApplicationDescription(
        tr("Lays out the field labels of plants as a PDF. Print it at actual size, never \"fit to "
           "page\".\n\nStocks:\n") +
        stockList());
    parser.addPositionalArgument(QStringLiteral("BOOK"), tr("the book"));
    parser.addPositionalArgument(QStringLiteral("PDF"), tr("the file to write"));
    parser.addPositionalArgument(QStringLiteral("TREE..."),
                                 tr("codes or row/position; all growing plants when none"));
    const QCommandLineOption stockOption(QStringLiteral("stock"), tr("What to print on."),
                                         QStringLiteral("KEY"),
                                         QString::fromStdString(labelStocks().front().key));
    const QCommandLineOption start(QStringLiteral("start"),
                                   tr("First free label of a half-used sheet, from 1."),
                                   QStringLiteral("N"), QStringLiteral("1"));
    parser.addOptions({stockOption, start});
    if (const auto code = parsed(parser, QStringLiteral("labels"), arguments, 2, 100000)) {
        return *code;
    }
    const QStringList names = parser.positionalArguments();
    const auto stock = labelStock(parser.value(stockOption).toStdString());
    if (!stock) {
        complain(tr("--stock: there is no such stock. There are:\n%1").arg(stockList()));
        return kUsage;
    }
    const auto book = openBook(pathOf(names[0]), OpenMode::read);
    if (!book) {
        return fail(book.problem());
    }
    const auto view = OrchardView::load(**book);
    if (!view) {
        return fail(view.problem());
    }
    const auto plants = plantsNamed(**view, names.mid(2));
    if (!plants) {
        return fail(plants.problem());
    }
    std::vector<LabelText> labels;
    for (const Index plant : *plants) {
        labels.push_back(labelOf(**view, plant));
    }
    LabelRun run;
    run.startCell = parser.value(start).toInt() - 1;
    const auto matter = placeLabels(labels, *stock, run, ui::FontMeasure());
    if (!matter) {
        return fail(matter.problem());
    }
    for (const Misfit& misfit : matter->misfits) {
        complain(QString::fromStdString(sentenceOf(misfit)));
    }
    const Outcome written = ui::writePdf(matter->pages, tr("Field labels"), names[1]);
    if (!written) {
        return fail(written.problem());
    }
    say(tr("%1: %2 labels asked for, %3 remarks, %4 pages.")
            .arg(names[1])
            .arg(labels.size())
            .arg(matter->misfits.size())
            .arg(matter->pages.size()));
    return matter->misfits.empty() ? kDone : kFailed;
}

} // namespace pipwright::app
