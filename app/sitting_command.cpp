#include "app/command.h"
#include "app/terminal.h"
#include "core/evaluation/planned_table.h"
#include "core/evaluation/sitting.h"
#include "core/evaluation/typed_tree.h"
#include "core/exchange/csv_writer.h"
#include "core/exchange/print/sitting_papers.h"
#include "core/history/planned_sitting_edits.h"
#include "core/history/sitting_edits.h"
#include "core/plan/serving_codes.h"
#include "core/plan/sitting_proposals.h"
#include "core/store/orchard_book.h"
#include "ui/book/orchard_words.h"
#include "ui/print/paper_font.h"
#include "ui/print/pdf_writer.h"
#include "ui/tasting/thumb_letters.h"

#include <QSaveFile>

#include <algorithm>

namespace pipwright::app {

namespace {

/// The options as they were typed.
struct SittingOptions {
    Date date;
    Sight sight = Sight::blind;
    std::vector<std::string> tasters;
    QString benchmark; ///< a name, "none", or empty for the one that is proposed
    bool repeat = false;
    std::uint64_t draw = 0;
    bool keep = false;
    std::string title;
    QString sheets;
    QString key;
    QString csv;
    PaperSize paper = kA4;
};

/// The condition behind the "=": a letter each for origin, ripeness and soundness ("?" for
/// unknown), then the way it was kept: "t4sf5".
Result<LotCondition> conditionTyped(const QString& typed) {
    LotCondition condition;
    const auto bad = [&typed] {
        return Problem{ProblemCode::badInput,
                       "\"" + typed.toStdString() + "\" is no condition of a lot.",
                       "Write origin, ripeness, soundness and where it was kept: t4sf5 is picked "
                       "ripe, prime, sound, five days in the fridge; ? for what is unknown.",
                       {}};
    };
    if (typed.isEmpty()) {
        return condition;
    }
    const auto origin = ui::originTyped(typed.mid(0, 1));
    const auto ripeness = ui::ripenessTyped(typed.mid(1, 1));
    const auto soundness = ui::soundnessTyped(typed.mid(2, 1));
    const auto path = readStoragePath(typed.mid(3).toStdString());
    if (!origin || !ripeness || !soundness || !path) {
        return bad();
    }
    condition.origin = *origin;
    condition.ripeness = *ripeness;
    condition.soundness = *soundness;
    putPath(*path, condition);
    return condition;
}

/// "AT17-014=t4sf5", "3/14", "Ash Tarn @ farm shop=?4s".
Result<LotToServe> lotTyped(const OrchardView& view, const QString& typed) {
    const auto fruit = fruitNamed(view, typed.section(QLatin1Char('='), 0, 0).toStdString());
    if (!fruit) {
        return fruit.problem();
    }
    auto condition = conditionTyped(typed.section(QLatin1Char('='), 1).trimmed());
    if (!condition) {
        return condition.problem();
    }
    LotToServe lot;
    if (fruit->tree.plant) {
        lot.plant = view.plants()[*fruit->tree.plant].id;
        lot.hemisphere = view.hemisphereOf(*fruit->tree.plant);
    } else if (fruit->tree.genotype) {
        lot.claimedGenotype = view.genotypes()[*fruit->tree.genotype].id;
    }
    lot.source = fruit->source;
    Lot named;
    named.plant = lot.plant;
    named.claimedGenotype = lot.claimedGenotype;
    named.source = lot.source;
    lot.name = fruitName(view, named);
    lot.condition = std::move(*condition);
    return lot;
}

/// People the book knows by name or initials; others are new.
struct NamedTasters {
    std::vector<Person> all;
    std::vector<Person> fresh;
};
NamedTasters tastersNamed(const OrchardView& view, const std::vector<std::string>& names,
                          UuidMaker& ids) {
    NamedTasters tasters;
    for (const std::string& name : names) {
        const auto& known = view.persons();
        const auto found = std::find_if(known.begin(), known.end(), [&name](const Person& one) {
            return one.name == name || (!one.initials.empty() && one.initials == name);
        });
        if (found != known.end()) {
            tasters.all.push_back(*found);
            continue;
        }
        Person fresh;
        fresh.id = PersonId(ids.make());
        fresh.name = name;
        fresh.tastes = true;
        tasters.all.push_back(fresh);
        tasters.fresh.push_back(fresh);
    }
    return tasters;
}

std::vector<Index> genotypesOf(const OrchardView& view, const std::vector<LotToServe>& lots) {
    std::vector<Index> genotypes;
    for (const LotToServe& one : lots) {
        Lot lot;
        lot.plant = one.plant;
        lot.claimedGenotype = one.claimedGenotype;
        if (const auto genotype = genotypeOf(view, lot)) {
            genotypes.push_back(*genotype);
        }
    }
    return genotypes;
}

Outcome addBenchmark(const OrchardView& view, const SittingOptions& options, SittingWish& wish) {
    if (options.benchmark == QLatin1String("none")) {
        return {};
    }
    if (!options.benchmark.isEmpty()) {
        auto lot = lotTyped(view, options.benchmark);
        if (!lot) {
            return lot.problem();
        }
        wish.benchmark = std::move(*lot);
        wish.benchmark->name = calledBenchmark(view, *wish.benchmark);
        return {};
    }
    if (const auto proposed = proposedBenchmark(view, genotypesOf(view, wish.lots))) {
        wish.benchmark = fruitOf(view, proposed->genotype);
        wish.benchmarkDays = proposed->daysLater;
    }
    return {};
}

Outcome addRepeat(const OrchardView& view, const Store& store, const SittingOptions& options,
                  SittingWish& wish) {
    auto sittings = store.all<Tasting>();
    if (!sittings) {
        return sittings.problem();
    }
    std::stable_sort(sittings->begin(), sittings->end(),
                     [](const Tasting& a, const Tasting& b) { return a.date > b.date; });
    const auto proposed =
        proposedRepeat(view, store, options.date, *sittings, genotypesOf(view, wish.lots));
    if (!proposed) {
        return proposed.problem();
    }
    if (proposed->has_value()) {
        wish.repeat = (*proposed)->lot;
        wish.repeatDays = (*proposed)->daysAgo;
    }
    return {};
}

/// The plan as a planned sitting that was read back, whether it is kept or not.
PlannedTable tableOf(const ChangeSet& set) {
    PlannedTable table;
    std::vector<Score> scores;
    for (const Change& change : set.changes) {
        const Record record = recordOf(change);
        switch (change.kind) {
        case Kind::tasting:
            table.tasting = fromRecord<Tasting>(record);
            break;
        case Kind::sealedKey:
            table.key = fromRecord<SealedKey>(record);
            break;
        case Kind::lot:
            table.lots.push_back(fromRecord<Lot>(record));
            break;
        case Kind::score:
            scores.push_back(fromRecord<Score>(record));
            break;
        default:
            break;
        }
    }
    for (const Score& score : scores) { // in the order of tasters and places
        if (table.sheets.empty() || table.sheets.back().taster != score.taster) {
            table.sheets.push_back({score.taster, {}});
        }
        const auto lot = std::find_if(table.lots.begin(), table.lots.end(),
                                      [&score](const Lot& one) { return one.id == score.lot; });
        table.sheets.back().lines.push_back({lot->servingCode, score});
    }
    return table;
}

Outcome writePapers(const OrchardView& view, const PlannedTable& table,
                    const std::vector<Person>& tasters, const SittingOptions& options) {
    const ui::FontMeasure measure;
    const QString day = QString::fromStdString(options.date.iso());
    const auto nameAll = [&tasters](std::vector<SheetTaster>& named) {
        for (std::size_t i = 0; i < named.size(); ++i) {
            named[i].name = tasters[i].name; // newcomers are not in the view yet
        }
    };
    if (!options.sheets.isEmpty()) {
        TastingSheets sheets = tastingSheetsOf(view, table);
        sheets.paper = options.paper;
        nameAll(sheets.tasters);
        const auto matter = layOutTastingSheets(sheets, measure);
        if (Outcome outcome =
                ui::writePdf(matter.pages, tr("Tasting sheets %1").arg(day), options.sheets);
            !outcome) {
            return outcome;
        }
    }
    if (!options.key.isEmpty()) {
        SittingKeyPaper key = sittingKeyOf(
            view, table, [](const Lot& lot) { return ui::conditionWords(lot).toStdString(); },
            "benchmark, twice", "served again");
        key.paper = options.paper;
        nameAll(key.tasters);
        const auto matter = layOutSittingKey(key, measure);
        return ui::writePdf(matter.pages, tr("Tasting key %1").arg(day), options.key);
    }
    return {};
}

/// taster, place, code: what stands on the sheets, and nothing of the key.
Outcome writeOrders(const PlannedTable& table, const std::vector<Person>& tasters,
                    const QString& path) {
    std::string text;
    CsvWriter csv(text);
    csv.record({"taster", "place", "code"});
    for (std::size_t taster = 0; taster < table.sheets.size(); ++taster) {
        std::int64_t place = 0;
        for (const SheetLine& line : table.sheets[taster].lines) {
            csv.record({tasters[taster].name, std::to_string(++place), line.code});
        }
    }
    QSaveFile file(path);
    const auto bytes = QByteArray::fromStdString(text);
    if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size() || !file.commit()) {
        return Problem{ProblemCode::unwritable, "the orders could not be written.",
                       "Choose another folder, or look whether the disk is full.",
                       path.toStdString()};
    }
    return {};
}

int planned(const SittingOptions& options, const QStringList& names) {
    auto book = openBook(pathOf(names[0]), options.keep ? OpenMode::write : OpenMode::read);
    if (!book) {
        return fail(book.problem());
    }
    const auto bare = OrchardView::load(**book);
    const auto view = bare ? (*bare)->withEvidence(**book) : bare;
    if (!view) {
        return fail(view.problem());
    }
    UuidMaker ids;
    const NamedTasters tasters = tastersNamed(**view, options.tasters, ids);
    SittingWish wish;
    wish.date = options.date;
    wish.sight = options.sight;
    wish.tasters = tasters.all;
    for (const QString& typed : names.mid(1)) {
        auto lot = lotTyped(**view, typed);
        if (!lot) {
            return fail(lot.problem());
        }
        wish.lots.push_back(std::move(*lot));
    }
    const auto used = usedServingCodes(**book, kMostCodesRemembered);
    if (!used) {
        return fail(used.problem());
    }
    wish.usedCodes = *used;
    wish.draw = options.draw > 0 ? options.draw
                                 : static_cast<std::uint64_t>(options.date.days()) + used->size();
    if (const Outcome outcome = addBenchmark(**view, options, wish); !outcome) {
        return fail(outcome.problem());
    }
    if (options.repeat) {
        if (const Outcome outcome = addRepeat(**view, **book, options, wish); !outcome) {
            return fail(outcome.problem());
        }
    }
    const auto plan = planSitting(wish);
    if (!plan) {
        return fail(plan.problem());
    }
    const EditContext context{options.date, std::nullopt, Hemisphere::unknown, &ids};
    const ChangeSet set =
        sittingPlanned(plannedSitting(*plan, options.title, tasters.fresh), context);
    const PlannedTable table = tableOf(set);
    for (std::size_t taster = 0; taster < table.sheets.size(); ++taster) {
        QString line = QString::fromStdString(tasters.all[taster].name) + QLatin1Char(':');
        for (const SheetLine& one : table.sheets[taster].lines) {
            line += QStringLiteral("  ") + QString::fromStdString(one.code);
        }
        say(line);
    }
    for (const PlanRemark& remark : plan->remarks) {
        const QString sentence = QString::fromStdString(sentenceOf(remark));
        remark.isWarning() ? complain(sentence) : say(sentence);
    }
    complain(QString::fromStdString(SittingWords().caution));
    if (options.keep) {
        if (const auto entry = (*book)->apply(set, {}); !entry) {
            return fail(entry.problem());
        }
        say(QString::fromStdString(set.sentence) + QLatin1Char('.'));
    }
    if (const Outcome outcome = writePapers(**view, table, tasters.all, options); !outcome) {
        return fail(outcome.problem());
    }
    if (!options.csv.isEmpty()) {
        if (const Outcome outcome = writeOrders(table, tasters.all, options.csv); !outcome) {
            return fail(outcome.problem());
        }
    }
    return kDone;
}

/// Nothing, and a complaint, when an option cannot be read.
std::optional<SittingOptions> optionsOf(const QCommandLineParser& parser) {
    SittingOptions options;
    const auto date = Date::fromIso(parser.value(QStringLiteral("date")).toStdString());
    if (!date) {
        complain(tr("--date: write the day of the sitting as 2026-08-22."));
        return std::nullopt;
    }
    options.date = *date;
    options.sight = parser.isSet(QStringLiteral("sighted")) ? Sight::sighted : Sight::blind;
    for (const QString& name : parser.values(QStringLiteral("taster"))) {
        options.tasters.push_back(name.trimmed().toStdString());
    }
    options.benchmark = parser.value(QStringLiteral("benchmark"));
    options.repeat = parser.isSet(QStringLiteral("repeat"));
    if (parser.isSet(QStringLiteral("draw"))) {
        bool isNumber = false;
        options.draw = parser.value(QStringLiteral("draw")).toUInt(&isNumber);
        if (!isNumber || options.draw == 0) {
            complain(tr("--draw: write a whole number above 0."));
            return std::nullopt;
        }
    }
    const QString paper = parser.value(QStringLiteral("paper")).toLower();
    if (paper != QLatin1String("a4") && paper != QLatin1String("letter")) {
        complain(tr("--paper: there is a4 and letter."));
        return std::nullopt;
    }
    options.paper = paper == QLatin1String("letter") ? kLetter : kA4;
    options.keep = parser.isSet(QStringLiteral("keep"));
    options.title = parser.value(QStringLiteral("title")).toStdString();
    options.sheets = parser.value(QStringLiteral("sheets"));
    options.key = parser.value(QStringLiteral("key"));
    options.csv = parser.value(QStringLiteral("csv"));
    return options;
}

} // namespace

int sittingCommand(const QStringList& arguments) {
    QCommandLineParser parser;
    parser.setApplicationDescription(
        tr("Plans a tasting: draws codes and an order for each taster, balanced for place and "
           "carry-over, hides the benchmark of that season twice, and lays out sheets and key as "
           "PDF.\n\nA lot is a code, a name or row/place, bought fruit with its source (\"Ash "
           "Tarn @ farm shop\"), and behind = its condition: origin, ripeness, soundness, where "
           "it was kept.\n  AT17-014=t4sf5   picked ripe, prime, sound, five days in the fridge\n"
           "The letters are those of the tasting sheet; ? is unknown."));
    parser.addPositionalArgument(QStringLiteral("BOOK"), tr("the book"));
    parser.addPositionalArgument(QStringLiteral("LOT..."), tr("fruit, each with its condition"));
    const auto value = [&parser](const char* name, const char* what, const char* word,
                                 const QString& usual = {}) {
        parser.addOption(QCommandLineOption(QString::fromLatin1(name), tr(what),
                                            QString::fromLatin1(word), usual));
    };
    value("date", "Day of the sitting, as 2026-08-22.", "DAY");
    value("taster", "Who tastes, by name or initials; once for each.", "NAME");
    value("benchmark", "Which one is hidden twice (a lot as below), or none; else it is proposed.",
          "LOT");
    value("draw", "Number the codes and orders are drawn from.", "N");
    value("title", "What the sitting is called.", "WORDS");
    value("sheets", "Write the sheets as a PDF.", "PDF");
    value("key", "Write the key as a PDF.", "PDF");
    value("csv", "Write taster, place, code as a table.", "CSV");
    value("paper", "a4 or letter.", "SIZE", QStringLiteral("a4"));
    parser.addOption({QStringLiteral("sighted"), tr("The tasters know what they eat.")});
    parser.addOption(
        {QStringLiteral("repeat"), tr("Serve a lot of the last sitting again, if one is fit.")});
    parser.addOption({QStringLiteral("keep"), tr("Put the plan into the book, its key sealed.")});
    if (const auto code = parsed(parser, QStringLiteral("sitting"), arguments, 2, 14)) {
        return *code;
    }
    const auto options = optionsOf(parser);
    return options ? planned(*options, parser.positionalArguments()) : kUsage;
}

} // namespace pipwright::app
