#include "ui/merit/merit_paper.h"

#include "ui/merit/merit_table_model.h"
#include "ui/print/print_words.h"

#include <QCoreApplication>

#include <array>

namespace pipwright::ui {

namespace {

struct MeritPaperTexts {
    Q_DECLARE_TR_FUNCTIONS(pipwright::ui::MeritPaper)
};

struct PaperColumn {
    int column;
    double share;
};
constexpr std::array kPaperColumns = {
    PaperColumn{MeritTableModel::tree, 1.2},        PaperColumn{MeritTableModel::slot, 1.3},
    PaperColumn{MeritTableModel::merit, 1.0},       PaperColumn{MeritTableModel::aboveFloor, 0.9},
    PaperColumn{MeritTableModel::aboveBest, 0.9},   PaperColumn{MeritTableModel::aboveMargin, 0.9},
    PaperColumn{MeritTableModel::reliability, 0.8}, PaperColumn{MeritTableModel::evidence, 1.8},
    PaperColumn{MeritTableModel::suggestion, 1.0},  PaperColumn{MeritTableModel::reason, 3.2},
};

} // namespace

PrintedTable rankingOnPaper(const QAbstractItemModel& ranking, Date today, const QString& bookName,
                            const QString& shown) {
    PrintedTable table;
    table.title = MeritPaperTexts::tr("Merit against the benchmarks").toStdString();
    table.subtitle = MeritPaperTexts::tr("%1, as the book stood on %2. %3")
                         .arg(bookName.isEmpty() ? MeritPaperTexts::tr("book not named") : bookName,
                              QString::fromStdString(today.iso()), shown)
                         .toStdString();
    table.words = translatedPaperWords();
    table.paper = table.paper.turned();
    for (const PaperColumn& one : kPaperColumns) {
        table.columns.push_back(
            {ranking.headerData(one.column, Qt::Horizontal).toString().toStdString(), one.share,
             Align::left});
    }
    for (int row = 0; row < ranking.rowCount(); ++row) {
        PrintedRow printed;
        for (const PaperColumn& one : kPaperColumns) {
            printed.cells.push_back(ranking.index(row, one.column).data().toString().toStdString());
        }
        table.rows.push_back(std::move(printed));
    }
    table.notes.push_back(
        MeritPaperTexts::tr("Merit: liking in points, 1 to 9, as a fair, prime, fresh lot would "
                            "show it to an average taster in an average year; ± one standard "
                            "error. P: chance to be better than that benchmark of its slot. "
                            "Reliability: 0 nothing known, 1 all known.")
            .toStdString());
    return table;
}

} // namespace pipwright::ui
