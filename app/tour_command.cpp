#include "app/command.h"
#include "app/file_doors.h"
#include "app/terminal.h"
#include "core/exchange/print/label_design.h"
#include "core/exchange/print/tree_papers.h"
#include "ui/book/open_book.h"
#include "ui/print/paper_font.h"
#include "ui/print/paper_place.h"
#include "ui/print/pdf_writer.h"
#include "ui/rows/row_map.h"
#include "ui/rows/rows_place.h"
#include "ui/shell/main_window.h"
#include "ui/shell/shell_settings.h"
#include "ui/shell/workbench.h"
#include "ui/tasting/plan_page.h"
#include "ui/tasting/taster_row.h"
#include "ui/tasting/tastings_place.h"
#include "ui/tree/entry_strip.h"
#include "ui/tree/tree_sheet.h"

#include <QApplication>
#include <QDir>
#include <QElapsedTimer>
#include <QPixmap>
#include <QProcess>
#include <QPushButton>
#include <QTemporaryDir>
#include <QThreadPool>

namespace pipwright::app {

namespace {

constexpr int kWaitMilliseconds = 20000;
constexpr std::size_t kLabels = 21;
constexpr std::size_t kPlannedTrees = 7;

/// Lets the window work until the evidence has come and all is painted.
void settle(ui::MainWindow& window) {
    QElapsedTimer timer;
    timer.start();
    while (timer.elapsed() < kWaitMilliseconds) {
        QApplication::processEvents(QEventLoop::AllEvents, 50);
        const bool idle = QThreadPool::globalInstance()->activeThreadCount() == 0;
        if (idle && window.workbench() != nullptr &&
            window.workbench()->book().view()->hasEvidence()) {
            break;
        }
    }
    for (int i = 0; i < 20; ++i) {
        QApplication::processEvents(QEventLoop::AllEvents, 20);
    }
}

/// The growing tree that has most to show: most lots tasted, then most years.
std::optional<Index> tellingTree(const OrchardView& view) {
    std::optional<Index> best;
    const auto worth = [&view](Index plant) {
        const GenotypeFacts& facts = view.factsOfPlant(plant);
        return facts.lots + 3 * view.plantFacts(plant).photos + facts.openWishes;
    };
    for (Index plant = 0; plant < view.plants().size(); ++plant) {
        const PlantEntry& entry = view.plants()[plant];
        const bool own = entry.genotype && !view.genotypes()[*entry.genotype].benchmark;
        if (own && entry.position && entry.state == PlantState::growing &&
            (!best || worth(plant) > worth(*best))) {
            best = plant;
        }
    }
    return best;
}

class Tour {
  public:
    Tour(QString folder, int scale) : m_folder(std::move(folder)), m_scale(scale) {}

    Outcome draw(const QString& book) {
        QTemporaryDir data;
        FileDoors doors(sampleArchiveFolder(), data.path());
        ui::applyLanguage(*qApp, ui::ShellSettings().language());
        for (const auto theme : {ui::ThemeChoice::light, ui::ThemeChoice::dark}) {
            ui::applyTheme(*qApp, theme);
            ui::MainWindow window(doors, m_today);
            window.resize(1366, 768);
            window.show();
            m_theme = ui::keyOf(theme);
            settleStart();
            if (auto outcome = keep(window, QStringLiteral("start")); !outcome) {
                return outcome;
            }
            if (!window.openBook(book)) {
                return Problem{ProblemCode::unreadable, "the book could not be opened.",
                               "Open it in the window to see the reason.", book.toStdString()};
            }
            if (auto outcome = drawPlaces(window); !outcome) {
                return outcome;
            }
        }
        return {};
    }

    void setToday(std::optional<Date> today) { m_today = today; }

  private:
    static void settleStart() {
        for (int i = 0; i < 10; ++i) {
            QApplication::processEvents(QEventLoop::AllEvents, 20);
        }
    }

    Outcome keep(QWidget& window, const QString& name) {
        const QString path = QStringLiteral("%1/%2-%3-%4.png")
                                 .arg(m_folder, name, m_theme,
                                      m_scale == 1 ? QStringLiteral("100") : QStringLiteral("200"));
        if (!window.grab().save(path)) {
            return Problem{ProblemCode::unwritable, "a picture cannot be written.",
                           "Make room on the disk or choose another folder.", path.toStdString()};
        }
        return {};
    }

    Outcome drawPlaces(ui::MainWindow& window) {
        settle(window);
        ui::Workbench& bench = *window.workbench();
        ui::OpenBook& book = bench.book();
        bench.goTo(QStringLiteral("rows")); // wherever the book was left
        const auto tree = tellingTree(*book.view());
        if (tree) {
            book.selectPlant(tree);
        }
        settle(window);
        if (auto outcome = keep(window, QStringLiteral("rows")); !outcome) {
            return outcome;
        }
        bench.rows()->colourBy(QStringLiteral("liking"));
        for (int i = 0; i < 6; ++i) {
            bench.rows()->map()->zoomBy(1.5);
        }
        settle(window);
        if (auto outcome = keep(window, QStringLiteral("rows-near")); !outcome) {
            return outcome;
        }
        bench.rows()->showAsList(true);
        settle(window);
        if (auto outcome = keep(window, QStringLiteral("rows-list")); !outcome) {
            return outcome;
        }
        bench.rows()->showAsList(false);
        bench.sheet()->begin(ui::EntryKind::bite);
        settle(window);
        if (auto outcome = keep(window, QStringLiteral("bite")); !outcome) {
            return outcome;
        }
        bench.sheet()->strip()->leave();
        if (tree) {
            book.setLaidBeside({});
        }
        for (const char* place :
             {"tastings", "compare", "merit", "season", "crosses", "grafting"}) {
            bench.goTo(QString::fromLatin1(place));
            settle(window);
            if (auto outcome = keep(window, QString::fromLatin1(place)); !outcome) {
                return outcome;
            }
        }
        if (auto outcome = drawPlan(window); !outcome) {
            return outcome;
        }
        return drawPapers(window);
    }

    /// A sitting as it is planned, of the first trees that were tasted; it is not kept.
    Outcome drawPlan(ui::MainWindow& window) {
        ui::Workbench& bench = *window.workbench();
        const auto view = bench.book().view();
        std::vector<Index> tasted;
        for (const Index plant : bench.rows()->shownPlants()) {
            if (tasted.size() < kPlannedTrees && view->factsOfPlant(plant).fairLots > 0) {
                tasted.push_back(plant);
            }
        }
        const auto before = bench.book().selection();
        bench.book().setSelection(tasted);
        bench.goTo(QStringLiteral("tastings"));
        bench.tastings()->planSitting();
        ui::PlanPage& plan = *bench.tastings()->planPage();
        plan.treesButton()->click();
        if (plan.benchmarkButton()->isVisibleTo(&plan)) {
            plan.benchmarkButton()->click();
        }
        std::vector<PersonId> tasters;
        for (const Person& person : view->persons()) {
            if (person.tastes) {
                tasters.push_back(person.id);
            }
        }
        plan.tasters()->setChosen(tasters);
        settle(window);
        const Outcome outcome = keep(window, QStringLiteral("plan"));
        plan.startAgain();
        Q_EMIT plan.leftAlone();
        bench.book().setSelection(before);
        return outcome;
    }

    Outcome drawPapers(ui::MainWindow& window) {
        ui::Workbench& bench = *window.workbench();
        const auto plants = bench.rows()->shownPlants();
        std::vector<Index> some;
        const auto view = bench.book().view();
        for (const Index plant : plants) {
            if (some.size() < kLabels && view->plants()[plant].state == PlantState::growing) {
                some.push_back(plant);
            }
        }
        bench.paper()->showLabels(some);
        bench.goTo(QStringLiteral("paper"));
        settle(window);
        if (auto outcome = keep(window, QStringLiteral("labels")); !outcome) {
            return outcome;
        }
        bench.paper()->showWalk(some);
        settle(window);
        if (auto outcome = keep(window, QStringLiteral("walking-sheet")); !outcome) {
            return outcome;
        }
        return m_scale == 1 ? writePapers(bench.book(), some) : Outcome{};
    }

    Outcome writePapers(ui::OpenBook& book, const std::vector<Index>& plants) {
        const ui::FontMeasure measure;
        std::vector<LabelText> labels;
        for (const Index plant : plants) {
            labels.push_back(labelOf(*book.view(), plant));
        }
        LabelRun run;
        run.overflow = Overflow::leaveOutField;
        const auto sheet = placeLabels(labels, labelStocks().front(), run, measure);
        if (!sheet) {
            return sheet.problem();
        }
        if (auto outcome =
                ui::writePdf(sheet->pages, tr("Field labels"), m_folder + tr("/labels.pdf"));
            !outcome) {
            return outcome;
        }
        const auto walk = treesToWalk(*book.view(), book.store(), plants);
        if (!walk) {
            return walk.problem();
        }
        WalkingSheet walking;
        walking.trees = walk->trees;
        walking.date = book.today();
        return ui::writePdf(layOutWalkingSheets(walking, measure).pages, tr("Walking sheet"),
                            m_folder + tr("/walking-sheet.pdf"));
    }

    QString m_folder;
    QString m_theme;
    int m_scale;
    std::optional<Date> m_today;
};

/// Qt takes its scale at start, so each scale is a process of its own.
int drawScaled(const QString& book, const QString& folder, const QString& today, int scale) {
    QProcess process;
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    environment.insert(QStringLiteral("QT_SCALE_FACTOR"), QString::number(scale));
    process.setProcessEnvironment(environment);
    process.setProcessChannelMode(QProcess::ForwardedChannels);
    process.start(QApplication::applicationFilePath(),
                  {QStringLiteral("tour"), book, folder, QStringLiteral("--scale"),
                   QString::number(scale), QStringLiteral("--today"), today});
    process.waitForFinished(-1);
    return process.exitStatus() == QProcess::NormalExit ? process.exitCode() : kFailed;
}

} // namespace

int tourCommand(const QStringList& arguments) {
    QCommandLineParser parser;
    parser.setApplicationDescription(
        tr("Draws every screen of a book as PNG at 100 % and 200 %, light and dark, a sheet of "
           "labels and a walking sheet as PDF."));
    parser.addPositionalArgument(QStringLiteral("BOOK"), tr("the book"));
    parser.addPositionalArgument(QStringLiteral("DIR"), tr("the folder to draw into"));
    const QCommandLineOption scaleOption(QStringLiteral("scale"), tr("Only this scale: 1 or 2."),
                                         QStringLiteral("N"));
    const QCommandLineOption todayOption(QStringLiteral("today"), tr("The day taken as today."),
                                         QStringLiteral("DATE"), QStringLiteral("2026-08-22"));
    parser.addOptions({scaleOption, todayOption});
    if (const auto code = parsed(parser, QStringLiteral("tour"), arguments, 2, 2)) {
        return *code;
    }
    const QStringList names = parser.positionalArguments();
    const auto today = Date::fromIso(parser.value(todayOption).toStdString());
    if (!today) {
        complain(tr("--today: \"%1\" is not a day. Write it as 2026-08-22.")
                     .arg(parser.value(todayOption)));
        return kUsage;
    }
    if (!QDir().mkpath(names[1])) {
        return fail({ProblemCode::unwritable, "the folder cannot be made.",
                     "Choose another folder.", names[1].toStdString()});
    }
    if (!parser.isSet(scaleOption)) {
        for (const int scale : {1, 2}) {
            if (const int code = drawScaled(names[0], names[1], parser.value(todayOption), scale);
                code != kDone) {
                return code;
            }
        }
        say(tr("The tour is in %1.").arg(names[1]));
        return kDone;
    }
    Tour tour(names[1], parser.value(scaleOption).toInt());
    tour.setToday(today);
    const Outcome outcome = tour.draw(names[0]);
    return outcome ? static_cast<int>(kDone) : fail(outcome.problem());
}

} // namespace pipwright::app
