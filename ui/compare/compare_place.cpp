#include "ui/compare/compare_place.h"

#include "ui/book/open_book.h"
#include "ui/compare/compare_cells.h"
#include "ui/compare/compare_legend.h"
#include "ui/compare/compare_model.h"
#include "ui/compare/compare_paper.h"
#include "ui/compare/compare_photos.h"
#include "ui/compare/compare_reader.h"
#include "ui/compare/compare_table.h"
#include "ui/print/paper_font.h"
#include "ui/print/paper_panel.h"
#include "ui/widgets/empty_place.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/flow_text.h"
#include "ui/widgets/icons.h"
#include "ui/widgets/notice_bar.h"
#include "ui/widgets/theme.h"

#include <QFileInfo>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QStackedWidget>
#include <QTimer>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace pipwright::ui {

namespace {

constexpr std::size_t kFewest = 2;
constexpr std::size_t kMost = 8;
constexpr std::size_t kProposed = 4; ///< the tree and three benchmarks
constexpr std::size_t kMostOffers = 6;
constexpr int kSettleMilliseconds = 20;

bool holds(const std::vector<Index>& list, Index one) {
    return std::find(list.begin(), list.end(), one) != list.end();
}

QString calledOf(const OrchardView& view, Index genotype) {
    return QString::fromStdString(view.genotypes()[genotype].called());
}

} // namespace

ComparePlace::ComparePlace(OpenBook& book, QWidget* parent)
    : QWidget(parent), m_book(book), m_model(new CompareModel(this)),
      m_table(new CompareTable(*m_model)), m_pages(new QStackedWidget),
      m_empty(new EmptyPlace(IconName::compare, tr("Nothing to compare yet"),
                             tr("Select a tree on the map, or press C on two to eight trees, and "
                                "they stand here side by side."))),
      m_what(new FlowText({}, FlowText::Weight::second)), m_legend(new CompareLegend),
      m_notice(new NoticeBar),
      m_print(new QPushButton(icon(IconName::print), tr("&Print or save PDF"))),
      m_near{new QWidget, new QLabel}, m_far{new QWidget, new QLabel},
      m_reader(new CompareReader(book, this)), m_paper(new PaperPanel), m_soon(new QTimer(this)) {
    build();
    m_soon->setSingleShot(true);
    m_soon->setInterval(kSettleMilliseconds);
    connect(m_soon, &QTimer::timeout, this, &ComparePlace::read);
    connect(&book, &OpenBook::viewChanged, this, &ComparePlace::want);
    connect(&book, &OpenBook::laidBesideChanged, this, &ComparePlace::want);
    connect(&book, &OpenBook::currentTreeChanged, this, [this] {
        if (m_book.laidBeside().size() < kFewest) {
            want();
        }
    });
    connect(&book, &OpenBook::todayChanged, this, &ComparePlace::want);
    connect(m_reader, &CompareReader::ready, this, &ComparePlace::takeUp);
    connect(m_reader, &CompareReader::failed, m_notice,
            [this](const Problem& problem) { m_notice->tell(problem); });
    connect(m_table, &CompareTable::orderWanted, this, &ComparePlace::takeOrder);
    connect(m_table, &CompareTable::treeWanted, this, [this](Index genotype) {
        if (isProposal()) { // the proposal is kept: else it would follow the tree gone to
            m_book.setLaidBeside(m_model->genotypes());
        }
        m_book.selectGenotype(genotype);
        Q_EMIT treeActivated();
    });
    connect(m_print, &QPushButton::clicked, this, &ComparePlace::showPaper);
}

ComparePlace::~ComparePlace() {
    *m_alive = false;
}

void ComparePlace::build() {
    m_pages->addWidget(m_empty);
    m_pages->addWidget(buildTablePage());
    m_pages->addWidget(buildPaperPage());
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    m_notice->hide();
    column->addWidget(m_notice);
    column->addWidget(m_pages, 1);
    setFocusProxy(m_table);
}

QWidget* ComparePlace::buildTablePage() {
    const Theme& theme = currentTheme();
    m_print->setToolTip(tr("Ctrl+P"));
    for (const OfferLine& offers : {m_near, m_far}) {
        auto* line = new FlowLayout(offers.line);
        line->setContentsMargins(0, 0, 0, 0);
        line->addWidget(offers.words);
    }
    auto* head = new QHBoxLayout;
    head->setSpacing(theme.space);
    head->addWidget(m_what, 1);
    head->addWidget(m_print, 0, Qt::AlignTop);
    auto* page = new QWidget;
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(theme.margin, theme.space, theme.margin, theme.space);
    column->setSpacing(theme.space);
    column->addLayout(head);
    column->addWidget(m_near.line);
    column->addWidget(m_far.line);
    column->addWidget(m_table, 1);
    column->addWidget(m_legend);
    return page;
}

QWidget* ComparePlace::buildPaperPage() {
    const Theme& theme = currentTheme();
    auto* back = new QPushButton(icon(IconName::compare), tr("&Back to the table"));
    back->setToolTip(tr("Esc"));
    connect(back, &QPushButton::clicked, this, &ComparePlace::showTable);
    auto* page = new QWidget;
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(theme.margin, theme.space, theme.margin, 0);
    column->addWidget(back, 0, Qt::AlignLeft);
    column->addWidget(m_paper, 1);
    return page;
}

bool ComparePlace::isProposal() const {
    return m_book.laidBeside().size() < kFewest;
}

std::vector<Index> ComparePlace::proposed() const {
    const auto& laid = m_book.laidBeside();
    const auto tree = laid.empty() ? m_book.currentGenotype() : std::optional(laid.front());
    if (!tree) {
        return {};
    }
    std::vector<Index> shown = {*tree};
    // What ripens with it; when nothing does, or nobody knows, whatever comes nearest.
    const auto near = benchmarksNear(*m_book.view(), *tree);
    const bool anyNear = !near.empty() && near.front().isWithinFortnight();
    for (const NearBenchmark& one : near) {
        if (shown.size() < kProposed && (!anyNear || one.isWithinFortnight())) {
            shown.push_back(one.genotype);
        }
    }
    return shown;
}

std::vector<Index> ComparePlace::shown() const {
    if (isProposal()) {
        return proposed();
    }
    std::vector<Index> shown = m_book.laidBeside();
    shown.resize(std::min(shown.size(), kMost));
    return shown;
}

void ComparePlace::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (m_stale) {
        read();
    }
}

void ComparePlace::want() {
    m_stale = true;
    if (isVisible()) {
        m_soon->start();
    }
}

bool ComparePlace::isSettled() const {
    return !m_stale && !m_reader->isReading();
}

void ComparePlace::read() {
    m_soon->stop();
    m_stale = false;
    m_reader->ask(shown());
}

void ComparePlace::takeUp(const Comparison& comparison) {
    m_notice->close();
    const QPersistentModelIndex before = m_table->currentIndex();
    const int row = before.row();
    const std::vector<Index> genotypesBefore = m_model->genotypes();
    int column = std::max(0, before.column());
    m_model->setComparison(m_book.view(), comparison, m_book.today().year());
    if (comparison.columns.empty()) {
        m_pages->setCurrentIndex(0);
        return;
    }
    m_what->setText(whatIsShown());
    offerBenchmarks();
    m_table->fit();
    const std::vector<Index> genotypes = m_model->genotypes();
    const bool added = !genotypesBefore.empty() && genotypes.size() == genotypesBefore.size() + 1 &&
                       !holds(genotypesBefore, genotypes.back());
    column = added ? m_model->columnCount() - 1 : std::min(column, m_model->columnCount() - 1);
    m_table->setCurrentIndex(m_model->index(std::clamp(row, 0, m_model->rowCount() - 1), column));
    if (added) {
        m_table->showColumnWhole(column);
    }
    readPhotos();
    if (isPaper()) {
        showPaper();
    } else {
        m_pages->setCurrentIndex(1);
    }
}

QString ComparePlace::whatIsShown() const {
    const std::vector<Index> shown = m_model->genotypes();
    if (!isProposal()) {
        return tr("%n tree(s) laid side by side. C on a tree adds it; Delete takes a column out; "
                  "Ctrl with an arrow moves it; Enter goes to the tree.",
                  nullptr, static_cast<int>(shown.size()));
    }
    const QString name = calledOf(*m_book.view(), shown.front());
    const auto near = benchmarksNear(*m_book.view(), shown.front());
    const bool anyNear = !near.empty() && near.front().isWithinFortnight();
    const QString beside =
        anyNear ? tr("%1 beside the benchmarks that ripen within two weeks of it.").arg(name)
        : near.empty()
            ? tr("%1 alone: the book has no benchmark of its species.").arg(name)
            : tr("%1: no benchmark is known to ripen within two weeks of it; others stand beside.")
                  .arg(name);
    return beside + QLatin1Char(' ') + tr("C on a tree lays it beside; Delete takes a column out.");
}

std::optional<std::pair<bool, std::size_t>> ComparePlace::focusedOffer() const {
    for (const OfferLine* line : {&m_near, &m_far}) {
        for (std::size_t at = 0; at < line->buttons.size(); ++at) {
            if (line->buttons[at]->hasFocus()) {
                return std::pair(line == &m_near, at);
            }
        }
    }
    return std::nullopt;
}

void ComparePlace::focusOffer(bool near, std::size_t at) {
    const auto& line = near ? m_near.buttons : m_far.buttons;
    const auto& other = near ? m_far.buttons : m_near.buttons;
    QWidget* next = !line.empty()    ? line[std::min(at, line.size() - 1)]
                    : !other.empty() ? static_cast<QWidget*>(other.front())
                                     : m_table;
    next->setFocus(Qt::OtherFocusReason);
}

void ComparePlace::offer(OfferLine& line, Index genotype, const QString& when) {
    auto* button = new QToolButton;
    const QString name = calledOf(*m_book.view(), genotype);
    button->setText(tr("+ %1 · %2", "benchmark, how near").arg(name, when));
    button->setAccessibleName(tr("Add the benchmark %1, %2").arg(name, when));
    button->setFocusPolicy(Qt::StrongFocus);
    connect(button, &QToolButton::clicked, this, [this, genotype] {
        std::vector<Index> order = m_model->genotypes();
        order.push_back(genotype);
        takeOrder(order);
    });
    line.words->setMinimumHeight(button->sizeHint().height()); // in line with the buttons
    line.line->layout()->addWidget(button);
    button->show(); // at once: it may be given the focus
    line.buttons.push_back(button);
}

void ComparePlace::offerBenchmarks() {
    const auto focused = focusedOffer();
    std::vector<QToolButton*> old = std::exchange(m_near.buttons, {});
    old.insert(old.end(), m_far.buttons.begin(), m_far.buttons.end());
    m_far.buttons.clear();
    for (QToolButton* button : old) {
        button->parentWidget()->layout()->removeWidget(button);
    }
    const std::vector<Index> now = m_model->genotypes();
    const QString name = calledOf(*m_book.view(), now.front());
    m_near.words->setText(tr("Ripe within two weeks of %1:").arg(name));
    m_far.words->setText(tr("Further off:"));
    for (const NearBenchmark& near : benchmarksNear(*m_book.view(), now.front())) {
        OfferLine& line = near.isWithinFortnight() ? m_near : m_far;
        if (holds(now, near.genotype) || now.size() >= kMost ||
            line.buttons.size() >= kMostOffers) {
            continue;
        }
        const QString when = !near.daysLater        ? tr("weeks not known")
                             : *near.daysLater == 0 ? tr("same day")
                             : *near.daysLater > 0
                                 ? tr("%n day(s) later", nullptr, *near.daysLater)
                                 : tr("%n day(s) earlier", nullptr, -*near.daysLater);
        offer(line, near.genotype, when);
    }
    m_near.line->setAccessibleName(m_near.words->text());
    m_far.line->setAccessibleName(m_far.words->text());
    m_near.line->setVisible(!m_near.buttons.empty());
    m_far.line->setVisible(!m_far.buttons.empty());
    if (focused) {
        focusOffer(focused->first, focused->second);
    }
    for (QToolButton* button : old) { // one that has the focus must not go first
        button->hide();
        button->deleteLater();
    }
}

void ComparePlace::takeOrder(const std::vector<Index>& order) {
    m_book.setLaidBeside(order);
    if (isVisible()) {
        read(); // columns that were there are there at once: the keys after it find them
    }
}

void ComparePlace::readPhotos() {
    const int token = ++m_photoToken;
    const double scale = devicePixelRatioF();
    const int side = static_cast<int>(CompareCells::kPhotoSide * scale);
    for (int column = 0; column < m_model->columnCount(); ++column) {
        readComparedPhotos(m_book, m_model->compared(column).life.photos, side,
                           [alive = std::weak_ptr<bool>(m_alive), this, token,
                            column](std::vector<QImage> photos) {
                               const auto still = alive.lock();
                               if (still && *still && token == m_photoToken) {
                                   m_model->setPhotos(column, std::move(photos));
                               }
                           });
    }
}

bool ComparePlace::isPaper() const {
    return m_pages->currentIndex() == 2;
}

void ComparePlace::showPaper() {
    if (m_model->columnCount() == 0) {
        return;
    }
    const QString name = QFileInfo(m_book.path()).completeBaseName();
    m_paper->setMatter(layOutTable(comparedOnPaper(*m_model, m_book.today(), name), FontMeasure()),
                       tr("Comparison %1").arg(QString::fromStdString(m_book.today().iso())));
    m_pages->setCurrentIndex(2);
}

void ComparePlace::showTable() {
    m_pages->setCurrentIndex(m_model->columnCount() == 0 ? 0 : 1);
    m_table->setFocus(Qt::OtherFocusReason);
}

void ComparePlace::keyPressEvent(QKeyEvent* event) {
    if (event->matches(QKeySequence::Print)) {
        showPaper();
    } else if (event->key() == Qt::Key_Escape && isPaper()) {
        showTable();
    } else {
        QWidget::keyPressEvent(event);
    }
}

} // namespace pipwright::ui
