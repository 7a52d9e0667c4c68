#include "app/command.h"
#include "app/terminal.h"
#include "core/exchange/plain_table.h"
#include "core/exchange/table_import.h"
#include "core/store/orchard_book.h"

#include <QDate>
#include <QFileInfo>

namespace pipwright::app {

namespace {

Date systemDay() {
    const QDate now = QDate::currentDate();
    return Date::of(now.year(), static_cast<unsigned>(now.month()),
                    static_cast<unsigned>(now.day()))
        .value_or(Date{});
}

Result<TableRecipe> recipeNamed(const Store& store, const QString& name) {
    const auto recipes = store.all<Recipe>();
    if (!recipes) {
        return recipes.problem();
    }
    QStringList known;
    for (const Recipe& recipe : *recipes) {
        if (QString::fromStdString(recipe.name).compare(name, Qt::CaseInsensitive) == 0) {
            return tableRecipe(recipe);
        }
        known << QString::fromStdString(recipe.name);
    }
    return Problem{ProblemCode::notFound, "the book has no recipe of that name.",
                   known.isEmpty()
                       ? "Assign the columns once in the window (Book > Bring in a table) and keep "
                         "them as a recipe."
                       : "It has: " + known.join(QStringLiteral(", ")).toStdString() + ".",
                   name.toStdString()};
}

struct TableJob {
    QString book;
    QString file;
    QString recipe;
    Date today;
    bool dryRun = false;
    bool skipFaulty = false;
};

void reportPlan(const ImportPlan& plan) {
    for (const Problem& fault : plan.faults) {
        complain(QString::fromStdString(fault.sentence()));
    }
    say(tr("%1 lines: %2 new, %3 in the book already, %4 faulty")
            .arg(plan.lines.size())
            .arg(plan.created)
            .arg(plan.matched)
            .arg(plan.faulty));
}

int importTable(const TableJob& job) {
    auto book = openBook(pathOf(job.book), job.dryRun ? OpenMode::read : OpenMode::write);
    if (!book) {
        return fail(book.problem());
    }
    const auto table = readTableFile(pathOf(job.file));
    if (!table) {
        return fail(table.problem());
    }
    const auto recipe = recipeNamed(**book, job.recipe);
    if (!recipe) {
        return fail(recipe.problem());
    }
    UuidMaker ids;
    PlanOptions options;
    options.skipFaulty = job.skipFaulty;
    const auto plan = planImport(*table, *recipe, **book, job.today, ids, options);
    if (!plan) {
        return fail(plan.problem());
    }
    reportPlan(*plan);
    if (job.dryRun) {
        say(tr("Dry run: nothing was written."));
        return plan->faults.empty() ? kDone : kFailed;
    }
    if (!plan->faults.empty() && !job.skipFaulty) {
        complain(tr("Nothing was brought in. Repair the lines, or use --skip-faulty."));
        return kFailed;
    }
    if (plan->changes.empty()) {
        say(tr("There is nothing new in it."));
        return kDone;
    }
    const auto entry = (*book)->apply(plan->changes, {});
    if (!entry) {
        return fail(entry.problem());
    }
    say(tr("Done: %1. One undo in the window takes it back.")
            .arg(QString::fromStdString(entry->sentence)));
    return kDone;
}

} // namespace

int importCommand(const QStringList& arguments) {
    QCommandLineParser parser;
    parser.setApplicationDescription(
        tr("Rebuilds a book from an archive folder (the book is made), or brings a table into a "
           "book by a recipe kept in it."));
    parser.addPositionalArgument(QStringLiteral("BOOK"), tr("the book"));
    parser.addPositionalArgument(QStringLiteral("SOURCE"),
                                 tr("the folder of an archive, or a CSV or TSV file"));
    const QCommandLineOption recipe(QStringLiteral("recipe"),
                                    tr("The named recipe that says what each column is."),
                                    QStringLiteral("NAME"));
    const QCommandLineOption dryRun(QStringLiteral("dry-run"), tr("Only looks, writes nothing."));
    const QCommandLineOption skip(QStringLiteral("skip-faulty"),
                                  tr("Leaves faulty lines out, and what depends on them."));
    const QCommandLineOption today(QStringLiteral("today"),
                                   tr("The day taken as today, for records without a date."),
                                   QStringLiteral("DATE"));
    const QCommandLineOption changed(
        QStringLiteral("take-changed"),
        tr("Takes tables of an archive that were edited after it was written."));
    parser.addOptions({recipe, dryRun, skip, changed, today});
    if (const auto code = parsed(parser, QStringLiteral("import"), arguments, 2, 2)) {
        return *code;
    }
    const QStringList names = parser.positionalArguments();
    if (!QFileInfo::exists(names[1])) {
        return fail({ProblemCode::notFound, "there is no such file or folder.", "Look at the name.",
                     names[1].toStdString()});
    }
    if (QFileInfo(names[1]).isDir()) {
        return importArchive(names[0], names[1],
                             {parser.isSet(dryRun), parser.isSet(skip), parser.isSet(changed)});
    }
    TableJob job{
        names[0],          names[1], parser.value(recipe), systemDay(), parser.isSet(dryRun),
        parser.isSet(skip)};
    if (!parser.isSet(recipe)) {
        complain(tr("pipwright import: a table needs --recipe NAME. See 'pipwright import "
                    "--help'."));
        return kUsage;
    }
    if (parser.isSet(today)) {
        const auto day = Date::fromIso(parser.value(today).toStdString());
        if (!day) {
            complain(tr("--today: \"%1\" is not a day. Write it as 2026-08-22.")
                         .arg(parser.value(today)));
            return kUsage;
        }
        job.today = *day;
    }
    return importTable(job);
}

} // namespace pipwright::app
