#include "ui/merit/merit_place.h"

#include "ui/book/merit_settings.h"
#include "ui/book/open_book.h"
#include "ui/merit/detail_tables.h"
#include "ui/merit/ladder_panel.h"
#include "ui/merit/look_back_panel.h"
#include "ui/merit/merit_detail.h"
#include "ui/merit/merit_filter_bar.h"
#include "ui/merit/merit_paper.h"
#include "ui/merit/merit_plot.h"
#include "ui/merit/merit_table_model.h"
#include "ui/merit/threshold_panel.h"
#include "ui/merit/waterfall_view.h"
#include "ui/print/paper_font.h"
#include "ui/print/paper_panel.h"
#include "ui/widgets/empty_place.h"
#include "ui/widgets/flow_text.h"
#include "ui/widgets/icons.h"
#include "ui/widgets/notice_bar.h"
#include "ui/widgets/number_text.h"
#include "ui/widgets/theme.h"

#include <QFileInfo>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QSplitter>
#include <QStackedWidget>
#include <QTabWidget>
#include <QVBoxLayout>

#include <array>

namespace pipwright::ui {

namespace {

constexpr int kWidestMeritColumn = 300;
constexpr int kPictureWidth = 440; ///< of the waterfall, where there is room
constexpr int kLeastPicture = 260;
constexpr int kLeastWidth = 400; ///< of the whole, so that it fits a screen of 1024
enum Page { emptyPage, rankingPage, paperPage };

QScrollArea* scrolled(QWidget* inside) {
    auto* area = new QScrollArea;
    area->setWidget(inside);
    area->setWidgetResizable(true);
    area->setFrameShape(QFrame::NoFrame);
    area->setFocusPolicy(Qt::NoFocus);
    return area;
}

} // namespace

MeritPlace::MeritPlace(OpenBook& book, MeritDesk& desk, QWidget* parent)
    : QWidget(parent), m_book(book), m_desk(desk), m_ranking(new MeritTableModel(this)),
      m_order(new MeritOrder(*m_ranking, this)), m_pages(new QStackedWidget),
      m_empty(new EmptyPlace(IconName::merit, tr("No verdict yet"),
                             tr("Taste fruit and score it (B on a tree), mark benchmarks ripe (W): "
                                "then every seedling stands here against the best of its days."))),
      m_notice(new NoticeBar), m_filter(new MeritFilterBar), m_state(new ElidedText),
      m_print(new QPushButton(icon(IconName::print), tr("&Print or save PDF"))),
      m_table(new PlainTable(tr("Seedlings by merit"))), m_tabs(new QTabWidget),
      m_waterfall(new WaterfallView), m_scores(new ScoreTable), m_settle(new SettleView),
      m_ladders(new LadderPanel(book)), m_thresholds(new ThresholdPanel),
      m_lookBack(new LookBackPanel), m_paper(new PaperPanel),
      m_details(new MeritDetailReader(this)) {
    build();
    connectParts();
    tellState();
}

MeritPlace::~MeritPlace() = default;

void MeritPlace::build() {
    m_notice->hide();
    m_pages->addWidget(m_empty);
    m_pages->addWidget(buildRanking());
    m_pages->addWidget(buildPaper());
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(m_notice);
    column->addWidget(m_pages, 1);
    setFocusProxy(m_table);
}

QWidget* MeritPlace::buildRanking() {
    const Theme& theme = lightTheme();
    m_state->setSecond(true);
    m_print->setToolTip(tr("Ctrl+P"));
    m_table->setModel(m_order);
    m_table->setSortingEnabled(true);
    m_table->sortByColumn(MeritTableModel::slot, Qt::AscendingOrder);
    m_table->setItemDelegateForColumn(MeritTableModel::plot, new MeritPlotCells(m_table));
    auto* head = new QHBoxLayout;
    head->setSpacing(theme.space);
    head->addWidget(m_filter, 1);
    head->addWidget(m_print, 0, Qt::AlignTop);
    auto* below = new QHBoxLayout;
    below->addWidget(new MeritLegend);
    below->addWidget(m_state, 1);
    auto* upper = new QWidget;
    auto* column = new QVBoxLayout(upper);
    column->setContentsMargins(theme.space, theme.gap, theme.space, 0);
    column->setSpacing(theme.gap);
    column->addLayout(head);
    column->addWidget(m_table, 1);
    column->addLayout(below);
    auto* splitter = new QSplitter(Qt::Vertical);
    splitter->setChildrenCollapsible(false);
    splitter->addWidget(upper);
    splitter->addWidget(buildTabs());
    splitter->setMinimumWidth(kLeastWidth); // narrower than its widest tab would like
    splitter->setStretchFactor(0, 3);
    splitter->setStretchFactor(1, 2);
    return splitter;
}

QWidget* MeritPlace::buildTabs() {
    auto* cause = new QSplitter(Qt::Horizontal);
    cause->setChildrenCollapsible(false);
    QScrollArea* picture = scrolled(m_waterfall);
    picture->setMinimumWidth(kLeastPicture);
    cause->addWidget(picture);
    cause->addWidget(m_scores);
    cause->setSizes({3 * kPictureWidth, 2 * kPictureWidth});
    cause->setStretchFactor(0, 3);
    cause->setStretchFactor(1, 2);
    m_tabs->setDocumentMode(true);
    m_tabs->addTab(cause, tr("Where it comes from"));
    m_tabs->addTab(m_settle, tr("What would settle it"));
    m_tabs->addTab(scrolled(m_ladders), tr("Ladder of the slot"));
    m_tabs->addTab(scrolled(m_thresholds), tr("Thresholds"));
    m_tabs->addTab(m_lookBack, tr("Looking back"));
    return m_tabs;
}

QWidget* MeritPlace::buildPaper() {
    const Theme& theme = lightTheme();
    auto* back = new QPushButton(icon(IconName::merit), tr("&Back to the table"));
    back->setToolTip(tr("Esc"));
    connect(back, &QPushButton::clicked, this, &MeritPlace::showRanking);
    auto* page = new QWidget;
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(theme.margin, theme.space, theme.margin, 0);
    column->addWidget(back, 0, Qt::AlignLeft);
    column->addWidget(m_paper, 1);
    return page;
}

void MeritPlace::connectParts() {
    connect(&m_desk, &MeritDesk::reportChanged, this, &MeritPlace::want);
    connect(&m_desk, &MeritDesk::stateChanged, this, &MeritPlace::tellState);
    connect(&m_book, &OpenBook::currentTreeChanged, this, [this] {
        if (isVisible()) {
            followTree();
        }
    });
    connect(&m_book, &OpenBook::todayChanged, m_lookBack,
            [this] { m_lookBack->setToday(m_book.today()); });
    m_lookBack->setToday(m_book.today());
    m_thresholds->setChoices(keptChoices());
    connect(m_thresholds, &ThresholdPanel::changed, this, [this](const KeptChoices& choices) {
        keepChoices(choices);
        MeritQuestion question = m_desk.question();
        question.choices = choices.choices();
        m_desk.ask(question);
        if (m_own) {
            question = m_own->question();
            question.choices = choices.choices();
            m_own->ask(question);
        }
    });
    connect(m_lookBack, &LookBackPanel::dayWanted, this, &MeritPlace::askOther);
    connect(m_filter, &MeritFilterBar::filterChanged, this, &MeritPlace::applyFilter);
    connect(m_filter, &MeritFilterBar::traitChanged, this,
            [this] { askOther(desk().question().asOf); });
    connect(m_table->selectionModel(), &QItemSelectionModel::currentRowChanged, this, [this] {
        if (!m_following) {
            takeRow(true);
        }
    });
    connect(m_table, &PlainTable::wanted, this, [this] {
        if (m_genotype) {
            m_book.selectGenotype(*m_genotype);
            Q_EMIT treeActivated();
        }
    });
    connect(m_waterfall, &WaterfallView::switched, this, &MeritPlace::askDetail);
    connect(m_details, &MeritDetailReader::ready, this, &MeritPlace::takeDetail);
    connect(m_print, &QPushButton::clicked, this, &MeritPlace::showPaper);
}

void MeritPlace::askOther(std::optional<Date> asOf) {
    MeritQuestion question = m_desk.question();
    question.asOf = asOf;
    question.trait = m_filter->trait();
    if (!question.asOf && !question.trait) {
        m_own.reset();
        m_waiting = true;
        want();
        return;
    }
    if (m_own) {
        m_own->ask(question);
        return;
    }
    m_own = std::make_unique<MeritDesk>(m_book, question);
    connect(m_own.get(), &MeritDesk::reportChanged, this, &MeritPlace::want);
    connect(m_own.get(), &MeritDesk::stateChanged, this, &MeritPlace::tellState);
    tellState();
}

void MeritPlace::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (m_waiting && desk().report()) {
        takeReport();
    } else {
        followTree();
    }
}

void MeritPlace::want() {
    m_waiting = true;
    if (isVisible() && desk().report()) {
        takeReport();
    }
}

bool MeritPlace::isEmpty() const {
    return m_pages->currentIndex() == emptyPage;
}

bool MeritPlace::isPaper() const {
    return m_pages->currentIndex() == paperPage;
}

bool MeritPlace::isSettled() const {
    return desk().report() && !desk().isStale() && !m_waiting && !m_details->isWorking();
}

void MeritPlace::takeReport() {
    m_waiting = false;
    const MeritReportPointer report = desk().report();
    const int scrolledTo = m_table->horizontalScrollBar()->value();
    m_following = true; // what is chosen while the table is filled anew is nobody's choice
    m_ranking->setReport(report);
    m_filter->offer(*m_ranking);
    m_ladders->setReport(report);
    m_lookBack->setReport(report);
    m_following = false;
    dressColumns();
    m_table->horizontalScrollBar()->setValue(scrolledTo);
    if (!report->evaluation) {
        m_empty->setWords(tr("No verdict yet"),
                          QString::fromStdString(report->lack->what + " " + report->lack->remedy));
    } else if (m_ranking->rowCount() == 0) {
        m_empty->setWords(tr("No verdict yet"),
                          tr("No seedling has fruited yet. Mark the first fruit on a walk (W) or "
                             "bite into it (B)."));
    }
    const bool nothing = m_ranking->rowCount() == 0 && !report->question.asOf;
    if (report->traitLack) {
        m_notice->tell(*report->traitLack);
    } else if (report->question.asOf) {
        m_notice->say(NoticeBar::Kind::attention,
                      tr("The book is set back: this is how it stood on %1.")
                          .arg(dateText(*report->question.asOf)),
                      report->lack ? QString::fromStdString(report->lack->what)
                                   : tr("Nothing can be lost: only this place looks back."));
    } else {
        m_notice->close();
    }
    if (nothing) {
        m_pages->setCurrentIndex(emptyPage);
    } else if (!isPaper()) {
        m_pages->setCurrentIndex(rankingPage);
    }
    followTree();
    tellState();
}

void MeritPlace::dressColumns() {
    const bool trait = m_ranking->ranksTrait();
    for (const int column :
         {MeritTableModel::suggestion, MeritTableModel::aboveFloor, MeritTableModel::aboveBest,
          MeritTableModel::aboveMargin, MeritTableModel::faults, MeritTableModel::reason}) {
        m_table->setColumnHidden(column, trait);
    }
    if (!m_fitted && m_ranking->rowCount() > 0) {
        m_fitted = true;
        m_table->fitColumns(kWidestMeritColumn);
    }
}

void MeritPlace::tellState() {
    const MeritDesk& now = desk();
    QString words;
    if (!now.report()) {
        words = tr("The evaluation is being made…");
    } else if (now.isStale()) {
        words = now.isWorking() ? tr("Stale: from before the last edit; being worked out anew…")
                                : tr("Stale: from before the last edit.");
    } else {
        words = tr("Up to date, worked out in %1 s.")
                    .arg(numberText(now.report()->milliseconds / 1000.0, 2));
    }
    m_state->setText(words);
    m_state->setAccessibleName(words);
}

void MeritPlace::applyFilter() {
    m_order->setFilter(m_filter->filter());
    if (!m_following) {
        followTree();
    }
}

void MeritPlace::followTree() {
    const auto wanted = m_book.currentGenotype();
    const auto row = wanted ? m_ranking->rowOf(*wanted) : std::nullopt;
    QModelIndex at;
    if (row) {
        at = m_order->mapFromSource(m_ranking->index(*row, MeritTableModel::tree));
    }
    if (!at.isValid() && m_genotype) {
        if (const auto before = m_ranking->rowOf(*m_genotype)) {
            at = m_order->mapFromSource(m_ranking->index(*before, MeritTableModel::tree));
        }
    }
    if (!at.isValid() && m_order->rowCount() > 0) {
        at = m_order->index(0, MeritTableModel::tree);
    }
    m_following = true;
    m_table->setCurrentIndex(at);
    m_table->scrollTo(at);
    m_following = false;
    takeRow(false);
}

void MeritPlace::takeRow(bool byUser) {
    const QModelIndex current = m_order->mapToSource(m_table->currentIndex());
    if (!current.isValid()) {
        m_genotype.reset();
        m_waterfall->showNothing(tr("Choose a seedling in the table above."));
        m_scores->clear();
        m_settle->clear({});
        return;
    }
    const Index genotype = m_ranking->row(current.row()).genotype;
    if (genotype != m_genotype) {
        m_waterfall->switchAllOn();
    }
    m_genotype = genotype;
    if (byUser && m_book.currentGenotype() != genotype) {
        m_book.selectGenotype(genotype);
    }
    m_ladders->follow(genotype);
    askDetail();
}

void MeritPlace::askDetail() {
    const MeritReportPointer& report = m_ranking->report();
    if (m_genotype && report && report->evaluation) {
        m_details->ask(report, *m_genotype, m_waterfall->options());
    }
}

void MeritPlace::takeDetail(const std::shared_ptr<const MeritDetail>& detail) {
    if (detail->genotype != m_genotype) {
        return;
    }
    m_waterfall->show(detail);
    m_scores->show(*detail);
    m_settle->show(*detail);
}

void MeritPlace::showPaper() {
    if (m_order->rowCount() == 0) {
        return;
    }
    const Date day = m_ranking->report()->question.asOf.value_or(m_book.today());
    m_paper->setMatter(
        layOutTable(rankingOnPaper(*m_order, day, QFileInfo(m_book.path()).completeBaseName(),
                                   m_filter->words()),
                    FontMeasure()),
        tr("Merit %1").arg(QString::fromStdString(day.iso())));
    m_pages->setCurrentIndex(paperPage);
}

void MeritPlace::showRanking() {
    m_pages->setCurrentIndex(rankingPage);
    m_table->setFocus(Qt::OtherFocusReason);
}

void MeritPlace::keyPressEvent(QKeyEvent* event) {
    if (event->matches(QKeySequence::Print)) {
        showPaper();
    } else if (event->key() == Qt::Key_Escape && isPaper()) {
        showRanking();
    } else if (event->key() == Qt::Key_Escape && m_filter->filter() != MeritFilter{}) {
        m_filter->clear();
    } else {
        QWidget::keyPressEvent(event);
    }
}

} // namespace pipwright::ui
