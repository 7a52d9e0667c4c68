#include "ui/shell/workbench.h"

#include "core/exchange/print/tree_papers.h"
#include "ui/book/merit_desk.h"
#include "ui/book/merit_settings.h"
#include "ui/book/open_book.h"
#include "ui/compare/compare_place.h"
#include "ui/crosses/crosses_place.h"
#include "ui/grafting/grafting_place.h"
#include "ui/merit/merit_place.h"
#include "ui/print/paper_place.h"
#include "ui/rows/rows_place.h"
#include "ui/season/season_place.h"
#include "ui/shell/finder.h"
#include "ui/tasting/tastings_place.h"
#include "ui/tree/condition_form.h"
#include "ui/tree/tree_sheet.h"
#include "ui/widgets/finder_line.h"
#include "ui/widgets/icons.h"
#include "ui/widgets/navigation_rail.h"
#include "ui/widgets/notice_bar.h"
#include "ui/widgets/number_text.h"
#include "ui/widgets/status_line.h"
#include "ui/widgets/theme.h"

#include <QHBoxLayout>
#include <QSplitter>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace pipwright::ui {

namespace {

constexpr int kSheetWidth = 400;

} // namespace

Workbench::Workbench(std::unique_ptr<OpenBook> book, QWidget* parent)
    : QWidget(parent), m_book(std::move(book)) {
    build();
    connectParts();
    goTo(QStringLiteral("rows"));
    tellSelection();
    tellToday();
    tellUndo();
}

Workbench::~Workbench() {
    // The places look at the book: they go before it.
    delete m_splitter;
}

void Workbench::build() {
    m_meritDesk = std::make_unique<MeritDesk>(
        *m_book, MeritQuestion{std::nullopt, std::nullopt, keptChoices().choices()});
    m_rail = new NavigationRail;
    m_places = new QStackedWidget;
    const auto add = [this](const char* key, IconName iconName, const QString& title,
                            QWidget* place) {
        m_rail->addPlace(QString::fromLatin1(key), iconName, title);
        m_places->addWidget(place);
    };
    m_rows = new RowsPlace(*m_book);
    m_tastings = new TastingsPlace(*m_book);
    m_compare = new ComparePlace(*m_book);
    m_merit = new MeritPlace(*m_book, *m_meritDesk);
    m_season = new SeasonPlace(*m_book);
    m_crosses = new CrossesPlace(*m_book);
    m_grafting = new GraftingPlace(*m_book);
    m_paper = new PaperPlace(*m_book);
    add("rows", IconName::rows, tr("Rows"), m_rows);
    add("tastings", IconName::tastings, tr("Tastings"), m_tastings);
    add("compare", IconName::compare, tr("Compare"), m_compare);
    add("merit", IconName::merit, tr("Merit"), m_merit);
    add("season", IconName::season, tr("Season"), m_season);
    add("crosses", IconName::crosses, tr("Crosses"), m_crosses);
    add("grafting", IconName::grafting, tr("Grafting"), m_grafting);
    add("paper", IconName::paper, tr("Paper"), m_paper);
    m_sheet = new TreeSheet(*m_book);
    m_sheet->setMeritDesk(m_meritDesk.get());

    m_finder = new FinderLine;
    m_finder->setPlaceholder(tr("Find a tree, row/place, family, word or command (Ctrl+K or /)"));
    m_finder->setProvider([this](const QString& text) { return foundIn(*m_book, text); });
    m_notice = new NoticeBar;
    m_notice->hide();

    auto* middle = new QWidget;
    auto* column = new QVBoxLayout(middle);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    auto* top = new QHBoxLayout;
    top->setContentsMargins(lightTheme().space, lightTheme().gap, lightTheme().space,
                            lightTheme().gap);
    top->addWidget(m_finder, 1);
    column->addLayout(top);
    column->addWidget(m_notice);
    column->addWidget(m_places, 1);

    m_splitter = new QSplitter(Qt::Horizontal);
    m_splitter->setChildrenCollapsible(false);
    m_splitter->addWidget(middle);
    m_splitter->addWidget(m_sheet);
    m_splitter->setStretchFactor(0, 1);
    m_splitter->setStretchFactor(1, 0);
    m_splitter->setSizes({900, kSheetWidth});

    m_status = new StatusLine;
    auto* across = new QHBoxLayout;
    across->setContentsMargins(0, 0, 0, 0);
    across->setSpacing(0);
    across->addWidget(m_rail);
    across->addWidget(m_splitter, 1);
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->setSpacing(0);
    whole->addLayout(across, 1);
    whole->addWidget(m_status);
}

void Workbench::connectParts() {
    connect(m_rail, &NavigationRail::placeChosen, this, &Workbench::goTo);
    connect(m_finder, &FinderLine::chosen, this, &Workbench::takeFound);
    connect(m_finder, &FinderLine::dismissed, this,
            [this] { m_places->currentWidget()->setFocus(Qt::OtherFocusReason); });
    connect(m_rows, &RowsPlace::findRequested, this, &Workbench::find);
    connect(m_rows, &RowsPlace::treeActivated, this, [this] {
        foldSheet(false);
        m_sheet->setFocus(Qt::OtherFocusReason);
    });
    connect(m_tastings, &TastingsPlace::conditionWanted, this,
            [this](const Lot& lot, const Date& tasted) {
                foldSheet(false);
                m_sheet->beginCondition({lot, tasted});
            });
    connect(m_compare, &ComparePlace::treeActivated, this, [this] {
        foldSheet(false);
        m_sheet->setFocus(Qt::OtherFocusReason);
    });
    connect(m_merit, &MeritPlace::treeActivated, this, [this] {
        foldSheet(false);
        m_sheet->setFocus(Qt::OtherFocusReason);
    });
    connect(m_sheet, &TreeSheet::meritWanted, this, [this] { goTo(QStringLiteral("merit")); });
    connect(m_rows, &RowsPlace::hintWanted, m_status, &StatusLine::hint);
    connect(m_rows, &RowsPlace::filterWordsChanged, this,
            [this] { m_status->setFilter(m_rows->filterWords()); });
    connect(m_rows, &RowsPlace::contextMenuWanted, this, &Workbench::contextMenuWanted);
    connect(m_rows, &RowsPlace::importWanted, this, &Workbench::importWanted);
    connect(m_status, &StatusLine::filterCleared, m_rows, &RowsPlace::clearFilter);
    connect(m_status, &StatusLine::undoWanted, m_book.get(), &OpenBook::undo);
    connect(m_status, &StatusLine::todayWanted, this, &Workbench::todayWanted);
    connect(m_book.get(), &OpenBook::selectionChanged, this, &Workbench::tellSelection);
    connect(m_book.get(), &OpenBook::currentTreeChanged, this, &Workbench::tellSelection);
    connect(m_book.get(), &OpenBook::viewChanged, this, &Workbench::tellSelection);
    connect(m_book.get(), &OpenBook::todayChanged, this, &Workbench::tellToday);
    connect(m_book.get(), &OpenBook::undoChanged, this, &Workbench::tellUndo);
    connect(m_book.get(), &OpenBook::problemMet, m_notice, [this](const Problem& problem) {
        m_saysBeside = false;
        m_notice->tell(problem);
    });
    for (const auto moment : {&OpenBook::currentTreeChanged, &OpenBook::selectionChanged,
                              &OpenBook::laidBesideChanged, &OpenBook::undoChanged}) {
        connect(m_book.get(), moment, this, &Workbench::passOverBeside);
    }
    connect(this, &Workbench::placeChanged, this, &Workbench::passOverBeside);
}

void Workbench::goTo(const QString& place) {
    const auto at = m_rail->places().indexOf(place);
    if (at < 0) {
        return;
    }
    m_rail->setCurrent(place);
    m_places->setCurrentIndex(static_cast<int>(at));
    m_places->currentWidget()->setFocus(Qt::OtherFocusReason);
    Q_EMIT placeChanged(place);
}

QString Workbench::place() const {
    return m_rail->current();
}

QString Workbench::currentTree() const {
    if (const auto plant = m_book->currentPlant()) {
        return QString::fromStdString(m_book->view()->plants()[*plant].id.uuid.text());
    }
    if (const auto genotype = m_book->currentGenotype()) {
        return QString::fromStdString(m_book->view()->genotypes()[*genotype].id.uuid.text());
    }
    return {};
}

void Workbench::goOnWith(const QString& place, const QString& tree) {
    if (const auto id = Uuid::fromText(tree.toStdString())) {
        const auto view = m_book->view();
        if (const auto plant = view->plant(PlantId(*id)); plant && !view->plants()[*plant].erased) {
            m_book->selectPlant(*plant);
        } else if (const auto genotype = view->genotype(GenotypeId(*id))) {
            m_book->selectGenotype(*genotype);
        }
    }
    goTo(place);
}

void Workbench::find(const QString& begin) {
    m_finder->begin(begin);
}

void Workbench::foldSheet(bool folded) {
    m_sheet->setVisible(!folded);
}

bool Workbench::isSheetFolded() const {
    return m_sheet->isHidden();
}

QByteArray Workbench::splitterState() const {
    return m_splitter->saveState();
}

void Workbench::restoreSplitter(const QByteArray& state) {
    m_splitter->restoreState(state);
}

void Workbench::layBeside() {
    const auto genotype = m_book->currentGenotype();
    const auto& beside = m_book->laidBeside();
    if (!genotype) {
        return;
    }
    if (std::find(beside.begin(), beside.end(), *genotype) == beside.end()) {
        const auto view = m_book->view();
        for (const Index plant : m_book->selection()) {
            if (const auto other = view->plants()[plant].genotype; other && *other != *genotype) {
                m_book->layBeside(*other);
            }
        }
        m_book->layBeside(*genotype);
        const int count = static_cast<int>(m_book->laidBeside().size());
        m_notice->say(NoticeBar::Kind::word,
                      tr("%n genotype(s) laid side by side.", nullptr, count),
                      tr("Press C again to look at them."));
        m_saysBeside = true;
        return;
    }
    goTo(QStringLiteral("compare"));
}

void Workbench::passOverBeside() {
    if (m_saysBeside) {
        m_saysBeside = false;
        m_notice->close();
    }
}

void Workbench::labelSelection() {
    std::vector<Index> plants = m_book->selection();
    if (plants.empty() && m_book->currentPlant()) {
        plants.push_back(*m_book->currentPlant());
    }
    m_paper->showLabels(plants);
    goTo(QStringLiteral("paper"));
}

void Workbench::walkingSheet() {
    std::vector<Index> plants = m_book->selection();
    if (plants.size() < 2) {
        plants = m_rows->shownPlants();
    }
    m_paper->showWalk(plants);
    goTo(QStringLiteral("paper"));
}

void Workbench::tellSelection() {
    const auto view = m_book->view();
    QString words;
    if (m_book->selection().size() > 1) {
        words = tr("%n tree(s) selected", nullptr, static_cast<int>(m_book->selection().size()));
    } else if (const auto plant = m_book->currentPlant()) {
        words = QString::fromStdString(view->plantCode(*plant) + "  " + view->placeText(*plant));
    } else if (const auto genotype = m_book->currentGenotype()) {
        words = QString::fromStdString(view->genotypes()[*genotype].called());
    }
    m_status->setSelection(words);
}

void Workbench::tellToday() {
    m_status->setToday(dateText(m_book->today()), m_book->todayIsFixed());
}

void Workbench::tellUndo() {
    m_status->setUndo(withLocalDates(m_book->undoSentence().value_or(QString())));
}

void Workbench::takeFound(const QString& id) {
    const FoundTarget target = foundTarget(*m_book, id);
    if (target.plant) {
        m_book->selectPlant(target.plant);
        m_places->currentWidget()->setFocus(Qt::OtherFocusReason);
    } else if (target.genotype) {
        m_book->selectGenotype(*target.genotype);
        m_places->currentWidget()->setFocus(Qt::OtherFocusReason);
    } else if (!target.command.isEmpty()) {
        Q_EMIT commandWanted(target.command);
    }
}

} // namespace pipwright::ui
