#include "ui/tasting/plan_page.h"

#include "core/evaluation/planned_table.h"
#include "core/history/planned_sitting_edits.h"
#include "core/plan/serving_codes.h"
#include "core/plan/sitting_proposals.h"
#include "ui/book/open_book.h"
#include "ui/tasting/plan_lots_model.h"
#include "ui/tasting/plan_view.h"
#include "ui/tasting/sheet_table.h"
#include "ui/tasting/sitting_list_model.h"
#include "ui/tasting/taster_row.h"
#include "ui/widgets/chip_row.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/flow_text.h"
#include "ui/widgets/inexact_date_edit.h"
#include "ui/widgets/notice_bar.h"
#include "ui/widgets/theme.h"

#include <QFormLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollBar>
#include <QShortcut>
#include <QSplitter>
#include <QVBoxLayout>

#include <set>

namespace pipwright::ui {

namespace {

constexpr int kPlanFruitWidth = 150;
constexpr int kPlanWordWidth = 112;
constexpr int kPlanPathWidth = 100;
constexpr int kPlanDateWidth = 260;
constexpr int kDraws = 90'000;

InexactDate plannedDay(Date day) {
    return {day.iso(), day, day};
}

} // namespace

PlanPage::PlanPage(OpenBook& book, QWidget* parent) : QWidget(parent), m_book(book) {
    build();
    setMinimumWidth(320); // fits a screen of 1024; its tables scroll
    connectParts();
    m_date->setDate(plannedDay(m_book.today()));
    refresh();
}

void PlanPage::build() {
    const Theme& theme = lightTheme();
    auto* splitter = new QSplitter(Qt::Horizontal);
    splitter->setChildrenCollapsible(false);
    splitter->addWidget(buildLeft());
    m_view = new PlanView;
    splitter->addWidget(m_view);
    splitter->setStretchFactor(0, 3);
    splitter->setStretchFactor(1, 2);
    splitter->setSizes({3 * kPlanDateWidth, 2 * kPlanDateWidth});
    m_notice = new NoticeBar;
    m_notice->hide();
    m_keep = new QPushButton(tr("Keep the plan (Ctrl+Enter)"));
    m_later = new QPushButton(tr("Later (Esc)"));
    m_draw = new QPushButton(tr("Draw anew"));
    m_draw->setToolTip(tr("Other codes and other orders, as even as these."));
    m_again = new QPushButton(tr("Empty the plan"));
    auto* buttons = new FlowLayout(nullptr, theme.space);
    for (QPushButton* button : {m_keep, m_later, m_draw, m_again}) {
        buttons->addWidget(button);
    }
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(theme.space, theme.space, theme.space, theme.space);
    column->setSpacing(theme.gap);
    column->addWidget(new FlowText(tr("Plan a sitting"), FlowText::Weight::heading));
    column->addWidget(splitter, 1);
    column->addWidget(m_notice);
    column->addLayout(buttons);
    setFocusProxy(m_table);
}

QWidget* PlanPage::buildLeft() {
    const Theme& theme = lightTheme();
    m_date = new InexactDateEdit(m_book.today());
    m_date->setMaximumWidth(kPlanDateWidth);
    m_title = new QLineEdit;
    m_title->setAccessibleName(tr("What the sitting is called"));
    m_title->setPlaceholderText(tr("may stay empty"));
    m_sight = new ChipRow(tr("Whether the tasters know what they eat"));
    m_sight->setChips({{QStringLiteral("blind"), sightWord(Sight::blind), QStringLiteral("b"),
                        tr("nobody but who serves knows which tree a piece comes from")},
                       {QStringLiteral("sighted"), sightWord(Sight::sighted), QStringLiteral("s"),
                        tr("the trees are known")}});
    m_sight->setChosen(QStringLiteral("blind"));
    m_tasters = new TasterRow;
    m_tasters->setIdMaker([this] { return PersonId(m_book.ids().make()); });
    m_model = new PlanLotsModel([this] { return m_book.view(); }, this);
    m_table = new SheetTable(tr("Lots of the planned sitting"));
    m_table->setModel(m_model);
    for (int column = 0; column < m_model->columnCount(); ++column) {
        m_table->setColumnWidth(column, column == SheetModel::fruit  ? kPlanFruitWidth
                                        : column == SheetModel::path ? kPlanPathWidth
                                                                     : kPlanWordWidth);
    }
    m_hint = new FlowText({}, FlowText::Weight::small);
    m_fault = new FlowText({}, FlowText::Weight::fault);
    m_fault->hide();
    m_trees = new QPushButton;
    m_benchmark = new QPushButton;
    m_repeat = new QPushButton;
    m_twice = new QPushButton;
    auto* form = new QFormLayout;
    form->setSpacing(theme.gap);
    form->setHorizontalSpacing(theme.space);
    form->addRow(tr("Day"), m_date);
    form->addRow(tr("Called"), m_title);
    form->addRow(tr("To taste"), m_sight);
    form->addRow(tr("Tasters"), m_tasters);
    auto* offers = new FlowLayout(nullptr, theme.space);
    for (QPushButton* button : {m_trees, m_benchmark, m_repeat, m_twice}) {
        offers->addWidget(button);
    }
    auto* left = new QWidget;
    auto* column = new QVBoxLayout(left);
    column->setContentsMargins(0, 0, theme.space, 0);
    column->setSpacing(theme.gap);
    column->addLayout(form);
    column->addWidget(m_table, 1);
    column->addWidget(m_hint);
    column->addWidget(m_fault);
    column->addLayout(offers);
    return left;
}

void PlanPage::connectParts() {
    connect(m_tasters, &TasterRow::chosenChanged, this, &PlanPage::look);
    connect(m_sight, &ChipRow::choiceMade, this, &PlanPage::look);
    connect(m_date, &InexactDateEdit::dateChanged, this, &PlanPage::look);
    connect(m_table->selectionModel(), &QItemSelectionModel::currentChanged, this,
            &PlanPage::sayCell);
    connect(m_model, &PlanLotsModel::dataChanged, this, [this] {
        look();
        Q_EMIT begunChanged();
    });
    connect(m_table, &SheetTable::leftAlone, this, &PlanPage::leftAlone);
    connect(m_table, &SheetTable::removalWanted, this, [this](const QModelIndex& cell) {
        if (cell.column() == SheetModel::fruit) { // without its fruit the line is nothing
            m_model->removeRows(cell.row(), 1);
        } else {
            m_model->setData(cell, QString(), Qt::EditRole);
        }
    });
    connect(m_trees, &QPushButton::clicked, this, &PlanPage::addTrees);
    connect(m_benchmark, &QPushButton::clicked, this, &PlanPage::takeBenchmark);
    connect(m_repeat, &QPushButton::clicked, this, &PlanPage::takeRepeat);
    connect(m_twice, &QPushButton::clicked, this, &PlanPage::turnTwice);
    auto* twice = new QShortcut(QKeySequence(Qt::CTRL | Qt::Key_B), this);
    twice->setContext(Qt::WidgetWithChildrenShortcut);
    connect(twice, &QShortcut::activated, this, &PlanPage::turnTwice);
    connect(m_draw, &QPushButton::clicked, this, [this] {
        m_drawn = m_drawn % kDraws + 1;
        look();
    });
    connect(m_keep, &QPushButton::clicked, this, &PlanPage::keep);
    connect(m_later, &QPushButton::clicked, this, &PlanPage::leftAlone);
    connect(m_again, &QPushButton::clicked, this, &PlanPage::startAgain);
    connect(&m_book, &OpenBook::selectionChanged, this, &PlanPage::propose);
    for (const auto key : {Qt::Key_Return, Qt::Key_Enter}) {
        auto* shortcut = new QShortcut(QKeySequence(Qt::CTRL | key), this);
        shortcut->setContext(Qt::WidgetWithChildrenShortcut);
        connect(shortcut, &QShortcut::activated, this, &PlanPage::keep);
    }
}

void PlanPage::begin(std::vector<Tasting> sittings) {
    m_sittings = std::move(sittings);
    if (const auto used = usedServingCodes(m_book.store(), kMostCodesRemembered)) {
        m_usedCodes = *used;
    }
    if (!isBegun()) {
        // Differs from day to day and from sitting to sitting, and yet can be drawn again.
        m_drawn = static_cast<std::uint64_t>(m_book.today().days()) * 7919 % kDraws +
                  m_usedCodes.size() + 1;
    }
    look();
    m_table->setCurrentIndex(m_model->index(m_model->rowCount() - 1, 0));
    m_table->setFocus(Qt::OtherFocusReason);
}

bool PlanPage::isBegun() const {
    return !m_model->isBlank();
}

void PlanPage::refresh() {
    m_date->setToday(m_book.today());
    if (!isBegun() && m_date->isEmpty()) {
        m_date->setDate(plannedDay(m_book.today()));
    }
    m_tasters->setKnown(m_book.view()->persons());
    m_model->readAnew();
}

/// Marked on the map and not on the list yet, as many as may be served.
std::vector<Index> PlanPage::treesToAdd() const {
    const std::set<Index> held = m_model->plants();
    std::vector<Index> trees;
    for (const Index plant : m_book.selection()) {
        if (trees.size() + held.size() < kMostLotsServed && !held.contains(plant)) {
            trees.push_back(plant);
        }
    }
    return trees;
}

void PlanPage::addTrees() {
    m_table->keepOpenCell();
    for (const Index plant : treesToAdd()) {
        m_model->addPlant(plant);
    }
    propose();
    startRow(0);
}

/// What is asked next of a line, with its fruit in sight.
void PlanPage::startRow(int row) {
    m_table->setCurrentIndex(m_model->index(row, SheetModel::origin));
    m_table->horizontalScrollBar()->setValue(0);
    m_table->setFocus(Qt::OtherFocusReason);
}

/// The line at hand is the benchmark, or no longer.
void PlanPage::turnTwice() {
    m_table->keepOpenCell();
    const int row = m_table->currentIndex().row();
    if (row < 0 || !m_model->lotToServe(row)) {
        return;
    }
    m_benchmarkName.clear(); // nothing is known of its season here
    m_benchmarkDays.reset();
    m_model->setRole(row, m_model->roleOf(row) == LotRole::benchmark ? LotRole::chosen
                                                                     : LotRole::benchmark);
    sayCell();
}

void PlanPage::takeBenchmark() {
    m_table->keepOpenCell();
    const auto view = m_book.view();
    const auto proposed = proposedBenchmark(*view, m_model->chosenGenotypes());
    if (!proposed) {
        return;
    }
    m_benchmarkDays = proposed->daysLater;
    m_benchmarkName = QString::fromStdString(view->genotypes()[proposed->genotype].called());
    SheetRow row;
    row.fruit = m_benchmarkName;
    if (!view->plantFor(proposed->genotype)) {
        row.fruit += QStringLiteral(" @ ");
    }
    m_model->addRow(row, LotRole::benchmark);
    startRow(*m_model->rowWith(LotRole::benchmark));
}

void PlanPage::takeRepeat() {
    m_table->keepOpenCell();
    const auto day = m_date->date();
    if (!day) {
        return;
    }
    const auto view = m_book.view();
    const auto proposed =
        proposedRepeat(*view, m_book.store(), day->from, m_sittings, m_model->chosenGenotypes());
    if (!proposed || !proposed->has_value()) {
        return;
    }
    const LotToServe& lot = (*proposed)->lot;
    m_repeatDays = (*proposed)->daysAgo;
    QString fruit = QString::fromStdString(lot.name);
    if (lot.claimedGenotype) {
        const auto genotype = view->genotype(*lot.claimedGenotype);
        fruit = genotype ? QString::fromStdString(view->genotypes()[*genotype].called()) : fruit;
        fruit += QStringLiteral(" @ ") + QString::fromStdString(lot.source);
    }
    m_model->addRow(sheetRowOf(fruit, lot.condition), LotRole::repeat);
    m_table->setFocus(Qt::OtherFocusReason);
}

/// The three buttons say what they would do; one that would do nothing is not shown.
void PlanPage::propose() {
    if (!isVisible()) { // thousands may be marked on the map meanwhile
        return;
    }
    const auto view = m_book.view();
    const int trees = static_cast<int>(treesToAdd().size());
    m_trees->setVisible(trees > 0);
    m_trees->setText(tr("Add %n tree(s) marked on the map", nullptr, trees));
    const auto chosen = m_model->chosenGenotypes();
    const auto benchmark =
        m_model->rowWith(LotRole::benchmark) ? std::nullopt : proposedBenchmark(*view, chosen);
    m_benchmark->setVisible(benchmark.has_value());
    if (benchmark) {
        m_benchmark->setText(
            tr("Hide %1 twice")
                .arg(QString::fromStdString(view->genotypes()[benchmark->genotype].called())));
    }
    const auto day = m_date->date();
    bool again = false;
    if (day && !chosen.empty() && !m_model->rowWith(LotRole::repeat)) {
        const auto repeat = proposedRepeat(*view, m_book.store(), day->from, m_sittings, chosen);
        again = repeat && repeat->has_value();
        if (again) {
            m_repeat->setText(tr("Serve %1 of %n day(s) ago again", nullptr, (*repeat)->daysAgo)
                                  .arg(QString::fromStdString((*repeat)->lot.name)));
        }
    }
    m_repeat->setVisible(again);
}

std::optional<SittingWish> PlanPage::wish() const {
    const auto day = m_date->date();
    if (!day) {
        return std::nullopt;
    }
    SittingWish wish;
    wish.date = day->from;
    wish.sight =
        fromKey<Sight>(m_sight->chosen().value_or(QString()).toStdString()).value_or(Sight::blind);
    wish.tasters = m_tasters->chosen();
    wish.usedCodes = m_usedCodes;
    wish.draw = m_drawn;
    for (int row = 0; row < m_model->rowCount(); ++row) {
        auto lot = m_model->lotToServe(row);
        if (!lot) {
            continue;
        }
        if (lot->role == LotRole::benchmark) {
            lot->name = calledBenchmark(*m_book.view(), *lot);
            const bool asProposed = QString::fromStdString(lot->name) == m_benchmarkName;
            wish.benchmarkDays = asProposed ? m_benchmarkDays : std::nullopt;
            wish.benchmark = std::move(*lot);
        } else if (lot->role == LotRole::repeat) {
            wish.repeatDays = m_repeatDays;
            wish.repeat = std::move(*lot);
        } else {
            wish.lots.push_back(std::move(*lot));
        }
    }
    return wish;
}

void PlanPage::look() {
    if (m_looking) {
        return;
    }
    m_looking = true;
    m_plan.reset();
    m_problem.reset();
    if (const auto wanted = wish()) {
        auto plan = planSitting(*wanted);
        if (plan) {
            m_plan = std::move(*plan);
        } else {
            m_problem = plan.problem();
        }
    }
    const auto fault = m_model->firstFault();
    m_fault->setVisible(fault.has_value());
    if (fault) {
        m_fault->setText(
            tr("Line %1, %2: %3")
                .arg(fault->first.row() + 1)
                .arg(m_model->headerData(fault->first.column(), Qt::Horizontal, Qt::DisplayRole)
                         .toString(),
                     QString::fromStdString(fault->second.sentence())));
    }
    if (m_plan) {
        m_view->showPlan(*m_plan);
    } else {
        m_view->showNone(isBegun() ? m_problem : std::nullopt);
    }
    propose();
    m_looking = false;
}

QString PlanPage::remarks() const {
    return m_view->remarks();
}

PlainTable* PlanPage::orders() const {
    return m_view->orders();
}

void PlanPage::sayCell() {
    const QModelIndex cell = m_table->currentIndex();
    const bool twice = cell.isValid() && m_model->roleOf(cell.row()) == LotRole::benchmark;
    m_twice->setText(twice ? tr("Serve this line once (Ctrl+B)")
                           : tr("Hide this line twice (Ctrl+B)"));
    m_twice->setToolTip(tr("The benchmark is served under two codes."));
    m_hint->setText(
        cell.isValid() ? tr("%1. A \" repeats what stands above.").arg(m_model->help(cell.column()))
                       : QString());
}

bool PlanPage::keep() {
    m_table->keepOpenCell();
    const auto day = m_date->date();
    if (!day) {
        m_notice->say(NoticeBar::Kind::attention, tr("The sitting has no day yet."),
                      tr("Type it as you know it: 22 Aug, week 34, late August."));
        m_date->line()->setFocus(Qt::OtherFocusReason);
        return false;
    }
    if (const auto fault = m_model->firstFault()) {
        m_notice->tell(fault->second);
        m_table->setCurrentIndex(fault->first);
        m_table->setFocus(Qt::OtherFocusReason);
        return false;
    }
    look();
    if (!m_plan) {
        if (m_problem) {
            m_notice->tell(*m_problem);
        }
        return false;
    }
    const ChangeSet set = sittingPlanned(
        plannedSitting(*m_plan, m_title->text().trimmed().toStdString(), m_tasters->newcomers()),
        m_book.context());
    std::optional<TastingId> tasting;
    for (const Change& change : set.changes) {
        if (change.kind == Kind::tasting) {
            tasting = TastingId(change.record);
        }
    }
    if (!m_book.apply(set) || !tasting) {
        return false; // the window says why; the plan stays
    }
    startAgain();
    Q_EMIT kept(*tasting);
    return true;
}

void PlanPage::startAgain() {
    m_table->keepOpenCell();
    m_tasters->forgetNewcomers();
    m_title->clear();
    m_notice->hide();
    m_model->clear();
    m_date->setDate(plannedDay(m_book.today()));
    m_benchmarkDays.reset();
    m_repeatDays.reset();
    refresh();
    Q_EMIT begunChanged();
}

void PlanPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    propose();
}

void PlanPage::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        Q_EMIT leftAlone();
        return;
    }
    QWidget::keyPressEvent(event);
}

} // namespace pipwright::ui
