#include "app/command.h"
#include "app/figure_table.h"
#include "app/terminal.h"
#include "app/text.h"
#include "core/evaluation/merit/book_evaluation.h"
#include "core/evaluation/merit/hope.h"
#include "core/evaluation/merit/keeping_by_genotype.h"
#include "core/evaluation/merit/tasters.h"
#include "core/evaluation/merit/verdict_words.h"
#include "core/store/orchard_book.h"
#include "ui/book/merit_settings.h"

#include <QDate>

#include <algorithm>
#include <array>
#include <cmath>

namespace pipwright::app {

namespace {

constexpr double kNinetyFive = 1.959964;
using Form = FigureTable::Form;

/// What all these commands take.
struct MeritRequest {
    QString book;
    QString trait;
    std::optional<Date> asOf;
    double goodFrom = 5;
    Form form = Form::text;
};

/// A book opened to be read, and its view.
struct OpenedBook {
    std::unique_ptr<Store> store;
    OrchardView::Pointer view;
};

Result<OpenedBook> openedToRead(const QString& path) {
    auto book = openBook(pathOf(path), OpenMode::read);
    if (!book) {
        return book.problem();
    }
    const auto bare = OrchardView::load(**book);
    const auto view = bare ? (*bare)->withEvidence(**book) : bare;
    if (!view) {
        return view.problem();
    }
    return OpenedBook{std::move(*book), *view};
}

template <typename Number>
QVariant known(const std::optional<Number>& number) {
    return number ? QVariant(*number) : QVariant();
}

/// Nothing, and the exit code in `code`, when the command should not go on.
std::optional<MeritRequest> requestOf(QCommandLineParser& parser, const QString& command,
                                      const QStringList& arguments, int& code) {
    parser.addPositionalArgument(QStringLiteral("BOOK"), tr("the book"));
    const QCommandLineOption asOf(QStringLiteral("as-of"),
                                  tr("As the book stood on that day, as 2026-08-22."),
                                  QStringLiteral("DAY"));
    const QCommandLineOption csv(QStringLiteral("csv"), tr("A table for a spreadsheet."));
    const QCommandLineOption json(QStringLiteral("json"), tr("Figures for another program."));
    parser.addOptions({asOf, csv, json});
    if (const auto ended = parsed(parser, command, arguments, 1, 1)) {
        code = *ended;
        return std::nullopt;
    }
    code = kUsage;
    MeritRequest request;
    request.book = parser.positionalArguments().first();
    if (parser.isSet(asOf)) {
        request.asOf = Date::fromIso(parser.value(asOf).toStdString());
        if (!request.asOf) {
            complain(tr("--as-of: \"%1\" is not a day. Write it as 2026-08-22.")
                         .arg(parser.value(asOf)));
            return std::nullopt;
        }
    }
    if (parser.isSet(csv) && parser.isSet(json)) {
        complain(tr("--csv and --json: choose one of them."));
        return std::nullopt;
    }
    request.form = parser.isSet(csv) ? Form::csv : parser.isSet(json) ? Form::json : Form::text;
    return request;
}

Date today() {
    const QDate day = QDate::currentDate();
    return *Date::of(day.year(), day.month(), day.day());
}

Result<TraitRecords> recordsFor(const OpenedBook& book, const MeritRequest& request) {
    if (request.trait.isEmpty() || request.trait == QLatin1String("liking")) {
        const auto ledger = TastingLedger::read(*book.store);
        if (!ledger) {
            return ledger.problem();
        }
        return ledger->likings(*book.view, request.asOf);
    }
    const std::string wanted = request.trait.toStdString();
    const Trait* trait = book.view->traitByKey(wanted);
    for (const Trait& one : book.view->traits()) {
        trait = trait == nullptr && one.name == wanted ? &one : trait;
    }
    if (trait == nullptr) {
        return Problem{ProblemCode::notFound, "The book has no trait \"" + wanted + "\".",
                       "Name it as the dictionary does, or leave it out for liking.", "trait"};
    }
    return observedRecords(*book.view, *book.store, trait->id, request.asOf);
}

Result<MeritModel> modelFor(const OpenedBook& book, const MeritRequest& request) {
    auto records = recordsFor(book, request);
    if (!records) {
        return records.problem();
    }
    return MeritModel::fit(*book.view, std::move(*records));
}

QString termWords(const MeritModel& model) {
    static constexpr std::array kNames = {
        "genotype", "genotype x crop year", "tree", "lot", "taster", "sitting", "crop year"};
    QStringList parts;
    for (const TermReport& term : model.terms()) {
        if (term.footing == TermFooting::absent) {
            continue;
        }
        parts.append(QStringLiteral("%1 %2%3")
                         .arg(QString::fromLatin1(kNames.at(static_cast<std::size_t>(term.term))))
                         .arg(std::sqrt(term.variance), 0, 'f', 2)
                         .arg(term.footing == TermFooting::assumed ? QStringLiteral(" (assumed)")
                                                                   : QString()));
    }
    return tr("Standard deviations: %1, a single score %2.")
        .arg(parts.join(QStringLiteral(", ")))
        .arg(std::sqrt(model.residualVariance()), 0, 'f', 2);
}

int printMerits(const MeritRequest& request) {
    const auto book = openedToRead(request.book);
    if (!book) {
        return fail(book.problem());
    }
    const auto model = modelFor(*book, request);
    if (!model) {
        return fail(model.problem());
    }
    FigureTable table({{QStringLiteral("code"), tr("code")},
                       {QStringLiteral("name"), tr("name")},
                       {QStringLiteral("merit"), tr("merit"), 2},
                       {QStringLiteral("standard_error"), tr("+/-"), 2},
                       {QStringLiteral("low_95"), tr("95 % from"), 2},
                       {QStringLiteral("high_95"), tr("to"), 2},
                       {QStringLiteral("reliability"), tr("reliability"), 2},
                       {QStringLiteral("raw_mean"), tr("raw mean"), 2},
                       {QStringLiteral("scores"), tr("scores")},
                       {QStringLiteral("fair_lots"), tr("fair lots")},
                       {QStringLiteral("lots"), tr("lots")},
                       {QStringLiteral("tasters"), tr("tasters")},
                       {QStringLiteral("crop_years"), tr("years")}});
    std::vector<const GenotypeMerit*> order;
    for (const GenotypeMerit& one : model->merits()) {
        if (one.seen()) {
            order.push_back(&one);
        }
    }
    std::stable_sort(order.begin(), order.end(),
                     [](const auto* a, const auto* b) { return a->merit.value > b->merit.value; });
    for (const GenotypeMerit* one : order) {
        const GenotypeEntry& genotype = book->view->genotypes()[one->genotype];
        const double reach = kNinetyFive * one->merit.standardError;
        table.row({text(genotype.code), text(genotype.name), one->merit.value,
                   one->merit.standardError, one->merit.value - reach, one->merit.value + reach,
                   one->reliability, one->rawMean, one->records, one->fairLots, one->lots,
                   one->tasters, one->cropYears});
    }
    const int leftOut = model->records().leftOut;
    table.note(tr("Merit of %1 in %2: what a fair, prime, fresh lot would show an average taster "
                  "on an average day of an average year, from %3 scores.")
                   .arg(request.trait.isEmpty() ? tr("liking") : request.trait,
                        model->records().isLiking() ? tr("points of 9") : tr("its own unit"))
                   .arg(model->records().records.size()));
    table.note(termWords(*model));
    if (leftOut > 0) {
        table.note(tr("%1 scores are of fruit that is linked to no genotype.").arg(leftOut));
    }
    if (!model->converged()) {
        table.note(tr("The variances did not settle; take the figures with care."));
    }
    table.print(request.form);
    return kDone;
}

QVariant chanceOf(const std::optional<RungOdds>& rung) {
    return rung ? QVariant(100 * rung->above) : QVariant();
}

int printVerdicts(const MeritRequest& request) {
    const auto book = openedToRead(request.book);
    if (!book) {
        return fail(book.problem());
    }
    const auto ledger = TastingLedger::read(*book->store);
    if (!ledger) {
        return fail(ledger.problem());
    }
    EvaluationRequest asked;
    asked.day = request.asOf.value_or(today());
    asked.asItStood = request.asOf.has_value();
    asked.choices = ui::keptChoices().choices(); // the same as in the window
    const auto found = evaluateBook(*book->view, *book->store, *ledger, asked);
    if (!found) {
        return fail(found.problem());
    }
    FigureTable table(
        {{QStringLiteral("code"), tr("code")},
         {QStringLiteral("suggestion"), tr("suggestion")},
         {QStringLiteral("merit_points"), tr("merit"), 2},
         {QStringLiteral("low_95_points"), tr("95 % from"), 2},
         {QStringLiteral("high_95_points"), tr("to"), 2},
         {QStringLiteral("above_floor_percent"), tr("above floor %"), 0},
         {QStringLiteral("above_best_percent"), tr("above best %"), 0},
         {QStringLiteral("above_best_by_margin_percent"), tr("above best by the margin %"), 0},
         {QStringLiteral("evidence"), tr("evidence")},
         {QStringLiteral("reason"), tr("reason")}});
    for (const SeedlingVerdict& one : found->verdicts) {
        const bool hasMerit = one.basis != MeritBasis::none;
        const auto figure = [hasMerit](double value) {
            return hasMerit ? QVariant(value) : QVariant();
        };
        QString suggestion = text(std::string(keyOf(one.suggestion)));
        table.row({text(book->view->genotypes()[one.genotype].called()),
                   suggestion.replace(QLatin1Char('_'), QLatin1Char(' ')), figure(one.merit.value),
                   figure(one.ninetyFive.low), figure(one.ninetyFive.high), chanceOf(one.floor),
                   chanceOf(one.best),
                   one.best ? QVariant(100 * one.best->aboveByMargin) : QVariant(),
                   text(evidenceLine(one.evidence)),
                   text(reasonSentence(*book->view, one, asked.choices))});
    }
    table.note(tr("%1 fruited seedlings and selections, against the benchmarks of their own slot "
                  "in crop year %2. These are suggestions; no stage was changed.")
                   .arg(found->verdicts.size())
                   .arg(found->cropYear.year));
    const VerdictThresholds& set = asked.choices.thresholds;
    table.note(tr("Thresholds, as set in the window on this computer: margin %1 points; watched "
                  "from P(above the floor) %2 %; culled from P(below it) %3 %; backed up from "
                  "P(above the best) %4 %; talked of as a name from %5 % and %6 crop years.")
                   .arg(set.margin, 0, 'f', 1)
                   .arg(100 * set.watchAboveFloor, 0, 'f', 0)
                   .arg(100 * set.cullBelowFloor, 0, 'f', 0)
                   .arg(100 * set.backUpAboveBest, 0, 'f', 0)
                   .arg(100 * set.nameAboveBest, 0, 'f', 0)
                   .arg(set.nameCropYears));
    table.print(request.form);
    return kDone;
}

int printTasters(const MeritRequest& request) {
    const auto book = openedToRead(request.book);
    if (!book) {
        return fail(book.problem());
    }
    const auto model = modelFor(*book, request);
    if (!model) {
        return fail(model.problem());
    }
    const auto reports = tasterReports(*model);
    if (!reports) {
        return fail(reports.problem());
    }
    FigureTable table({{QStringLiteral("taster"), tr("taster")},
                       {QStringLiteral("scores"), tr("scores")},
                       {QStringLiteral("genotypes"), tr("genotypes")},
                       {QStringLiteral("level_points"), tr("level"), 2},
                       {QStringLiteral("level_error_points"), tr("+/-"), 2},
                       {QStringLiteral("spread_points"), tr("spread"), 2},
                       {QStringLiteral("noise_points"), tr("noise"), 2},
                       {QStringLiteral("repeat_points"), tr("repeat"), 2},
                       {QStringLiteral("repeat_low_95"), tr("95 % from"), 2},
                       {QStringLiteral("repeat_high_95"), tr("to"), 2},
                       {QStringLiteral("between_genotypes_percent"), tr("between fruit %"), 0}});
    for (const TasterAccount& one : reports->tasters) {
        const Person* person = book->view->person(one.taster);
        const std::string name = person == nullptr ? "somebody" : person->name;
        const auto repeated = [&one](double PointSpread::*figure) {
            return one.repeat ? QVariant((*one.repeat).*figure) : QVariant();
        };
        table.row({text(name), one.scores, one.genotypes, one.level.value, one.level.standardError,
                   one.spread, one.noise, repeated(&PointSpread::deviation),
                   repeated(&PointSpread::low), repeated(&PointSpread::high),
                   one.discrimination ? QVariant(100 * one.discrimination->share) : QVariant()});
        table.note(text(sentenceOf(one, name)));
    }
    table.note(reports->agreement
                   ? text(sentenceOf(*reports->agreement))
                   : tr("No two tasters scored three of the same lots, so agreement is unknown."));
    const auto hope = hopeGap(*book->view, *model);
    table.note(text(hope ? sentenceOf(*hope) : hope.problem().sentence()));
    table.print(request.form);
    return kDone;
}

int printKeeping(const MeritRequest& request) {
    const auto book = openedToRead(request.book);
    if (!book) {
        return fail(book.problem());
    }
    const auto model = modelFor(*book, request);
    if (!model) {
        return fail(model.problem());
    }
    KeepingChoices choices;
    choices.goodFrom = request.goodFrom;
    const auto keeping = keepingByGenotype(*model, choices);
    if (!keeping) {
        return fail(keeping.problem());
    }
    FigureTable table({{QStringLiteral("code"), tr("code")},
                       {QStringLiteral("path"), tr("path")},
                       {QStringLiteral("fresh_points"), tr("fresh"), 2},
                       {QStringLiteral("fresh_error_points"), tr("+/-"), 2},
                       {QStringLiteral("slope_points_a_day"), tr("a day"), 4},
                       {QStringLiteral("slope_error"), tr("+/-"), 4},
                       {QStringLiteral("days_good"), tr("days good"), 0},
                       {QStringLiteral("half_good_days"), tr("half good"), 0},
                       {QStringLiteral("scores"), tr("scores")},
                       {QStringLiteral("lots"), tr("lots")},
                       {QStringLiteral("longest_days"), tr("longest"), 0}});
    for (const GenotypeKeeping& one : keeping->curves) {
        table.row({text(book->view->genotypes()[one.genotype].called()),
                   text(std::string(keyOf(one.path))), one.fresh.value, one.fresh.standardError,
                   one.slope.value, one.slope.standardError, known(one.daysGood),
                   known(one.halfGood), one.scores, one.lots, one.longest});
    }
    table.note(tr("Days good: until fewer than %1 % of the lots are liked %2 points or more; a "
                  "dash: longer than %3 days.")
                   .arg(100 * choices.share, 0, 'f', 0)
                   .arg(choices.goodFrom, 0, 'f', 1)
                   .arg(choices.mostDays));
    table.print(request.form);
    return kDone;
}

} // namespace

int meritCommand(const QStringList& arguments) {
    QCommandLineParser parser;
    parser.setApplicationDescription(
        tr("Ranks everything tasted by its merit: the scores freed of taster, sitting, year and "
           "the state of the fruit, with what parents and sibs lend, and how sure that is."));
    const QCommandLineOption trait(QStringLiteral("trait"),
                                   tr("A trait with numbers or ordered states, by key or name; "
                                      "liking when left out."),
                                   QStringLiteral("TRAIT"));
    parser.addOption(trait);
    int code = kDone;
    auto request = requestOf(parser, QStringLiteral("merit"), arguments, code);
    if (!request) {
        return code;
    }
    request->trait = parser.value(trait);
    return printMerits(*request);
}

int verdictCommand(const QStringList& arguments) {
    QCommandLineParser parser;
    parser.setApplicationDescription(
        tr("Holds every fruited seedling against the benchmarks of its own slot and says what the "
           "figures suggest. It changes nothing."));
    int code = kDone;
    const auto request = requestOf(parser, QStringLiteral("verdict"), arguments, code);
    return request ? printVerdicts(*request) : code;
}

int tastersCommand(const QStringList& arguments) {
    QCommandLineParser parser;
    parser.setApplicationDescription(
        tr("Says how high each taster scores, how well each repeats and tells fruit apart, how far "
           "they agree, and what own seedlings gain when their names are known."));
    int code = kDone;
    const auto request = requestOf(parser, QStringLiteral("tasters"), arguments, code);
    return request ? printTasters(*request) : code;
}

int keepingCommand(const QStringList& arguments) {
    QCommandLineParser parser;
    parser.setApplicationDescription(
        tr("Says how fast each genotype loses on each way of keeping it, and for how many days it "
           "stays good."));
    const QCommandLineOption goodFrom(QStringLiteral("good-from"),
                                      tr("Liking that still counts as good, 1 to 9."),
                                      QStringLiteral("POINTS"), QStringLiteral("5"));
    parser.addOption(goodFrom);
    int code = kDone;
    auto request = requestOf(parser, QStringLiteral("keeping"), arguments, code);
    if (!request) {
        return code;
    }
    bool isNumber = false;
    request->goodFrom = parser.value(goodFrom).toDouble(&isNumber);
    if (!isNumber || !(request->goodFrom >= 1 && request->goodFrom <= 9)) {
        complain(tr("--good-from: write a number from 1 to 9."));
        return kUsage;
    }
    return printKeeping(*request);
}

} // namespace pipwright::app
