#include "ui/tasting/tastings_place.h"

#include "core/evaluation/typed_tree.h"
#include "core/units/text.h"
#include "ui/book/open_book.h"
#include "ui/tasting/plan_page.h"
#include "ui/tasting/planned_page.h"
#include "ui/tasting/sitting_list_model.h"
#include "ui/tasting/sitting_page.h"
#include "ui/tasting/sitting_sheet.h"
#include "ui/tasting/sitting_view.h"
#include "ui/widgets/chip_row.h"
#include "ui/widgets/empty_place.h"
#include "ui/widgets/flow_text.h"
#include "ui/widgets/plain_table.h"
#include "ui/widgets/theme.h"

#include <QCoreApplication>
#include <QHeaderView>
#include <QLineEdit>
#include <QPushButton>
#include <QShortcut>
#include <QSplitter>
#include <QStackedWidget>
#include <QThreadPool>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>
#include <string>
#include <utility>

namespace pipwright::ui {

namespace {

constexpr int kListWidth = 330;
constexpr int kLeastList = 230;

/// Milliseconds after the last letter before it is looked for.
constexpr int kPause = 150;

/// Sittings that have a title.
using Titles = std::vector<std::pair<Uuid, std::string>>;

/// A title, which may be long, over the counts.
class TitleCells : public PaddedCells {
  public:
    using PaddedCells::PaddedCells;

  protected:
    void initStyleOption(QStyleOptionViewItem* option, const QModelIndex& index) const override {
        PaddedCells::initStyleOption(option, index);
        const QString both = index.data(SittingListModel::kTitleAndCounts).toString();
        constexpr int kAir = 16; // of the cell, left and right
        option->text = option->fontMetrics.elidedText(both.section(QLatin1Char('\n'), 0, 0),
                                                      Qt::ElideRight, option->rect.width() - kAir) +
                       QChar(QChar::LineSeparator) + both.section(QLatin1Char('\n'), 1);
    }
};

/// The tastings with fruit of the tree that was typed (of its plants, or claimed to be it), or with
/// the words in their title. Reads the book: meant for a worker.
Result<std::unordered_set<Uuid>> foundIn(const OrchardView& view, const Store& store,
                                         const Titles& titles, const std::string& typed) {
    std::unordered_set<Uuid> found;
    const auto add = [&](std::string_view field, const Uuid& id) -> Outcome {
        const auto lots = store.where<Lot>(field, id);
        if (!lots) {
            return lots.problem();
        }
        for (const Lot& lot : *lots) {
            found.insert(lot.tasting.uuid);
        }
        return {};
    };
    if (const auto tree = treeNamed(view, typed); tree && tree->genotype) {
        for (const Index plant : view.plantsOf(*tree->genotype)) {
            if (const Outcome outcome = add("plant", view.plants()[plant].id.uuid); !outcome) {
                return outcome.problem();
            }
        }
        const Uuid genotype = view.genotypes()[*tree->genotype].id.uuid;
        if (const Outcome outcome = add("claimed_genotype", genotype); !outcome) {
            return outcome.problem();
        }
    }
    const std::string wanted = foldedForSearch(typed);
    for (const auto& [id, title] : titles) {
        if (foldedForSearch(title).find(wanted) != std::string::npos) {
            found.insert(id);
        }
    }
    return found;
}

} // namespace

TastingsPlace::TastingsPlace(OpenBook& book, QWidget* parent) : QWidget(parent), m_book(book) {
    build();
    connectParts();
}

TastingsPlace::~TastingsPlace() {
    *m_alive = false;
}

void TastingsPlace::build() {
    const Theme& theme = lightTheme();
    m_shown = new ChipRow(tr("Which sittings are listed"));
    m_shown->setChips({{QStringLiteral("table"), tr("sittings"), {}, tr("at a table")},
                       {QStringLiteral("row"), tr("bites"), {}, tr("in the row, day by day")},
                       {QStringLiteral("all"), tr("both"), {}, {}}});
    m_shown->setChosen(QStringLiteral("table"));
    m_filter = new QLineEdit;
    m_filter->setAccessibleName(tr("Only sittings with this tree or title"));
    m_filter->setPlaceholderText(tr("only with this tree or title"));
    m_filter->setClearButtonEnabled(true);
    m_delay = new QTimer(this);
    m_delay->setSingleShot(true);
    m_delay->setInterval(kPause);
    m_words = new FlowText({}, FlowText::Weight::small);
    m_new = new QPushButton;
    m_planNew = new QPushButton;
    m_model = new SittingListModel(m_book.store(), this);
    m_list = new PlainTable(tr("Sittings"));
    m_list->setModel(m_model);
    m_list->setLinesPerRow(2);
    m_list->setItemDelegateForColumn(SittingListModel::what, new TitleCells(m_list));
    for (const int said : {SittingListModel::date, SittingListModel::lots,
                           SittingListModel::tasters, SittingListModel::sight}) {
        m_list->setColumnHidden(said, true); // below the title; copied as columns
    }
    m_list->setSelectionMode(QAbstractItemView::SingleSelection);
    // Only rows in sight decide the widths, so that no others are counted.
    m_list->horizontalHeader()->setResizeContentsPrecision(0);
    m_list->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    m_list->horizontalHeader()->setSectionResizeMode(SittingListModel::what, QHeaderView::Stretch);
    m_held = new SittingView(m_book);
    m_page = m_held->page();
    m_sheet = new SittingSheet(m_book);
    m_plan = new PlanPage(m_book);
    m_planned = new PlannedPage(m_book);
    m_empty =
        new EmptyPlace(IconName::tastings, tr("No sitting yet"),
                       tr("A sitting is a table of fruit and tasters. Write down one that was "
                          "held; bites are taken in the row with B on a tree."));
    m_empty->setFirstStep(tr("New sitting (Ctrl+E)"));
    m_right = new QStackedWidget;
    m_right->addWidget(m_empty);
    m_right->addWidget(m_held);
    m_right->addWidget(m_sheet);
    m_right->addWidget(m_plan);
    m_right->addWidget(m_planned);

    m_left = new QWidget;
    m_left->setMinimumWidth(kLeastList);
    auto* column = new QVBoxLayout(m_left);
    column->setContentsMargins(theme.space, theme.space, 0, 0);
    column->setSpacing(theme.gap);
    column->addWidget(m_new);
    column->addWidget(m_planNew);
    column->addWidget(m_shown);
    column->addWidget(m_filter);
    column->addWidget(m_words);
    column->addWidget(m_list, 1);
    auto* splitter = new QSplitter(Qt::Horizontal);
    splitter->setChildrenCollapsible(false);
    splitter->addWidget(m_left);
    splitter->addWidget(m_right);
    splitter->setStretchFactor(1, 1);
    splitter->setSizes({kListWidth, 2 * kListWidth});
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(splitter);
    setFocusProxy(m_list);
    nameButtons();
}

void TastingsPlace::connectParts() {
    // A sheet wants the whole width.
    connect(m_right, &QStackedWidget::currentChanged, this,
            [this] { m_left->setVisible(!isEntering()); });
    connect(m_shown, &ChipRow::choiceMade, this, &TastingsPlace::showLines);
    connect(m_filter, &QLineEdit::returnPressed, this, &TastingsPlace::findOnly);
    connect(m_filter, &QLineEdit::textChanged, this, [this](const QString& text) {
        if (text.isEmpty()) {
            findOnly();
        } else {
            m_delay->start();
        }
    });
    connect(m_delay, &QTimer::timeout, this, &TastingsPlace::findOnly);
    connect(m_new, &QPushButton::clicked, this, &TastingsPlace::newSitting);
    connect(m_planNew, &QPushButton::clicked, this, &TastingsPlace::planSitting);
    connect(m_empty, &EmptyPlace::firstStepWanted, this, &TastingsPlace::newSitting);
    connect(m_list->selectionModel(), &QItemSelectionModel::currentRowChanged, this, [this] {
        if (!isEntering()) { // who types goes on typing
            showChosen();
        }
    });
    connect(m_list, &PlainTable::clicked, this, &TastingsPlace::showChosen);
    connect(m_list, &PlainTable::wanted, this, [this] {
        showChosen();
        if (m_right->currentWidget() == m_planned) {
            m_planned->beginEntry();
        } else {
            m_held->takeFocus();
        }
    });
    connect(m_page, &SittingPage::conditionWanted, this, &TastingsPlace::conditionWanted);
    connect(m_sheet, &SittingSheet::kept, this, &TastingsPlace::closeSheet);
    connect(m_sheet, &SittingSheet::leftAlone, this, &TastingsPlace::closeSheet);
    connect(m_sheet, &SittingSheet::begunChanged, this, &TastingsPlace::nameButtons);
    connect(m_plan, &PlanPage::kept, this, [this](TastingId tasting) {
        m_shown->setChosen(QStringLiteral("table"));
        m_only.reset();
        showLines();
        if (const auto row = m_model->rowOf(tasting)) {
            m_list->setCurrentIndex(m_model->index(*row, 0));
        }
        showChosen();
        if (m_right->currentWidget() == m_planned) {
            m_planned->showPapers();
        }
    });
    connect(m_plan, &PlanPage::leftAlone, this, &TastingsPlace::closeSheet);
    connect(m_plan, &PlanPage::begunChanged, this, &TastingsPlace::nameButtons);
    connect(m_planned, &PlannedPage::leftAlone, this,
            [this] { m_list->setFocus(Qt::OtherFocusReason); });
    connect(m_planned, &PlannedPage::opened, this, [this] {
        showChosen();
        m_held->showResult();
        m_held->takeFocus();
    });
    connect(&m_book, &OpenBook::viewChanged, this, &TastingsPlace::follow);
    const auto onKey = [this](Qt::Key key, void (TastingsPlace::*what)()) {
        auto* shortcut = new QShortcut(QKeySequence(Qt::CTRL | key), this);
        shortcut->setContext(Qt::WidgetWithChildrenShortcut);
        connect(shortcut, &QShortcut::activated, this, what);
    };
    onKey(Qt::Key_E, &TastingsPlace::newSitting);
    onKey(Qt::Key_L, &TastingsPlace::planSitting);
}

SittingResult* TastingsPlace::result() const {
    return m_held->result();
}

bool TastingsPlace::isEntering() const {
    return m_right->currentWidget() == m_sheet || m_right->currentWidget() == m_plan;
}

void TastingsPlace::planSitting() {
    std::vector<Tasting> sittings;
    for (const TastingEntry& entry : m_entries) {
        if (entry.place == TastingPlace::table) {
            Tasting one;
            one.id = entry.id;
            one.date = entry.date;
            one.place = entry.place;
            sittings.push_back(std::move(one));
        }
    }
    m_right->setCurrentWidget(m_plan);
    m_plan->begin(std::move(sittings));
}

void TastingsPlace::newSitting() {
    m_right->setCurrentWidget(m_sheet);
    m_sheet->begin();
}

void TastingsPlace::closeSheet() {
    showChosen();
    m_list->setFocus(Qt::OtherFocusReason);
}

void TastingsPlace::nameButtons() {
    m_new->setText(m_sheet->isBegun() ? tr("Go on with the sitting (Ctrl+E)")
                                      : tr("New sitting (Ctrl+E)"));
    m_planNew->setText(m_plan->isBegun() ? tr("Go on with the plan (Ctrl+L)")
                                         : tr("Plan a sitting (Ctrl+L)"));
}

void TastingsPlace::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (m_stale) {
        refresh();
    }
}

void TastingsPlace::follow(const std::vector<Change>& changes) {
    m_missed.insert(m_missed.end(), changes.begin(), changes.end());
    m_stale = true;
    if (isVisible()) {
        refresh();
    }
}

void TastingsPlace::refresh() {
    m_stale = false;
    m_sheet->refresh();
    m_plan->refresh();
    if (m_reading) {
        return; // what is being read is compared with the journal when it arrives
    }
    if (!m_read) {
        m_missed.clear();
        readInBackground();
        return;
    }
    const std::int64_t position = m_book.store().position();
    if (position == *m_read) {
        m_missed.clear();
        refreshShown();
        return;
    }
    const std::vector<Change> changes = std::exchange(m_missed, {});
    if (changes.empty()) { // read anew by somebody: so do we
        readInBackground();
        return;
    }
    m_read = position;
    const bool sittings = std::any_of(changes.begin(), changes.end(), [](const Change& change) {
        return change.kind == Kind::tasting;
    });
    if (sittings) {
        if (!followChanges(m_entries, changes, m_book.store())) {
            readInBackground();
            return;
        }
        showLines();
        for (const Change& change : changes) {
            const auto row = change.kind == Kind::tasting ? m_model->rowOf(TastingId(change.record))
                                                          : std::nullopt;
            if (row) {
                m_list->setCurrentIndex(m_model->index(*row, 0));
            }
        }
        return;
    }
    m_model->countAnew();
    refreshShown();
}

/// The sitting on the right, after the book has moved: its key may have been opened or sealed
/// again meanwhile.
void TastingsPlace::refreshShown() {
    const QModelIndex current = m_list->currentIndex();
    if (isEntering() || !current.isValid()) {
        return;
    }
    const SittingLine& line = m_model->line(current.row());
    const bool sealed =
        line.tastings.size() == 1 && !line.bites && m_planned->showSitting(line.tastings.front());
    m_right->setCurrentWidget(sealed ? static_cast<QWidget*>(m_planned) : m_held);
    if (!sealed) {
        m_held->refresh();
    }
}

void TastingsPlace::readInBackground() {
    const std::int64_t position = m_book.store().position();
    if (!m_book.openReader()) {
        take(readTastings(m_book.store()), position);
        return;
    }
    m_reading = true;
    m_words->setText(tr("Reading the sittings …"));
    QThreadPool::globalInstance()->start([this, openReader = m_book.openReader(), position,
                                          alive = std::weak_ptr<bool>(m_alive)] {
        auto reader = openReader();
        auto read = std::make_shared<Result<std::vector<TastingEntry>>>(
            reader ? readTastings(**reader) : Result<std::vector<TastingEntry>>(reader.problem()));
        QMetaObject::invokeMethod(
            QCoreApplication::instance(),
            [this, alive, read, position] {
                if (const auto still = alive.lock(); still && *still) {
                    take(std::move(*read), position);
                }
            },
            Qt::QueuedConnection);
    });
}

void TastingsPlace::take(Result<std::vector<TastingEntry>> read, std::int64_t position) {
    m_reading = false;
    if (!read) {
        m_words->setText(QString::fromStdString(read.problem().sentence()));
        return;
    }
    if (position != m_book.store().position()) { // edited meanwhile
        m_missed.clear();
        readInBackground();
        return;
    }
    m_entries = std::move(*read);
    m_read = position;
    showLines();
}

void TastingsPlace::showLines() {
    const auto shown = m_shown->chosen() == QStringLiteral("row")   ? SittingsShown::inTheRow
                       : m_shown->chosen() == QStringLiteral("all") ? SittingsShown::all
                                                                    : SittingsShown::atTheTable;
    const QModelIndex current = m_list->currentIndex();
    std::optional<TastingId> before;
    if (current.isValid()) {
        before = m_model->line(current.row()).tastings.front();
    }
    m_model->setLines(linesOf(m_entries, shown, m_only));
    const int total = m_model->rowCount();
    m_words->setText(m_only ? tr("%n sitting(s) with that.", nullptr, total)
                            : tr("%n sitting(s), newest first.", nullptr, total));
    if (total > 0) {
        const auto row = before ? m_model->rowOf(*before) : std::nullopt;
        m_list->setCurrentIndex(m_model->index(row.value_or(0), 0));
    }
    if (!isEntering()) {
        showChosen();
    }
}

void TastingsPlace::showChosen() {
    const QModelIndex current = m_list->currentIndex();
    if (!current.isValid()) {
        m_right->setCurrentWidget(m_empty);
        return;
    }
    const SittingLine& line = m_model->line(current.row());
    if (line.tastings.size() == 1 && !line.bites && m_planned->showSitting(line.tastings.front())) {
        m_right->setCurrentWidget(m_planned);
        return;
    }
    m_right->setCurrentWidget(m_held);
    m_held->showSitting(line);
}

void TastingsPlace::findOnly() {
    m_delay->stop();
    const int search = ++m_search; // what is still being looked for is no longer wanted
    const std::string typed = m_filter->text().trimmed().toStdString();
    if (typed.empty()) {
        m_only.reset();
        showLines();
        return;
    }
    Titles titles;
    for (const TastingEntry& entry : m_entries) {
        if (!entry.title.empty()) {
            titles.emplace_back(entry.id.uuid, entry.title);
        }
    }
    if (!m_book.openReader()) {
        takeFound(search, foundIn(*m_book.view(), m_book.store(), titles, typed));
        return;
    }
    m_words->setText(tr("Looking for these sittings …"));
    QThreadPool::globalInstance()->start([this, search, typed, titles = std::move(titles),
                                          view = m_book.view(), openReader = m_book.openReader(),
                                          alive = std::weak_ptr<bool>(m_alive)] {
        const auto reader = openReader();
        auto found = reader ? foundIn(*view, **reader, titles, typed)
                            : Result<std::unordered_set<Uuid>>(reader.problem());
        QMetaObject::invokeMethod(
            QCoreApplication::instance(),
            [this, alive, search, found = std::move(found)] {
                if (const auto still = alive.lock(); still && *still) {
                    takeFound(search, found);
                }
            },
            Qt::QueuedConnection);
    });
}

void TastingsPlace::takeFound(int search, const Result<std::unordered_set<Uuid>>& found) {
    if (search != m_search) {
        return;
    }
    if (!found) {
        m_words->setText(QString::fromStdString(found.problem().sentence()));
        return;
    }
    m_only = *found;
    showLines();
}

} // namespace pipwright::ui
