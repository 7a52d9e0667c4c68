#include "ui/compare/compare_place.h"

#include "ui/book/open_book.h"
#include "ui/compare/compare_cells.h"
#include "ui/compare/compare_model.h"
#include "ui/compare/compare_paper.h"
#include "ui/compare/compare_photos.h"
#include "ui/compare/compare_table.h"
#include "ui/compare/compare_words.h"
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
#include <QPushButton>
#include <QStackedWidget>
#include <QTimer>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>

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
      m_what(new FlowText({}, FlowText::Weight::second)),
      m_legend(new FlowText(legendWords(), FlowText::Weight::small)), m_notice(new NoticeBar),
      m_print(new QPushButton(icon(IconName::print), tr("&Print or save PDF"))),
      m_offerRow(new QWidget), m_paper(new PaperPanel), m_soon(new QTimer(this)) {
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
    m_offerRow->setAccessibleName(tr("Add a benchmark of its weeks"));
    auto* offers = new FlowLayout(m_offerRow);
    offers->setContentsMargins(0, 0, 0, 0);
    auto* head = new QHBoxLayout;
    head->setSpacing(theme.space);
    head->addWidget(m_what, 1);
    head->addWidget(m_print, 0, Qt::AlignTop);
    auto* page = new QWidget;
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(theme.margin, theme.space, theme.margin, theme.space);
    column->setSpacing(theme.space);
    column->addLayout(head);
    column->addWidget(m_offerRow);
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
    for (const NearBenchmark& near : benchmarksNear(*m_book.view(), *tree)) {
        if (shown.size() < kProposed) {
            shown.push_back(near.genotype);
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

void ComparePlace::read() {
    m_soon->stop();
    m_stale = false;
    const std::vector<Index> wanted = shown();
    auto comparison = compare(*m_book.view(), m_book.store(), wanted);
    if (!comparison) {
        m_notice->tell(comparison.problem());
        return;
    }
    m_notice->close();
    const QPersistentModelIndex before = m_table->currentIndex();
    const int row = before.row();
    const int columnBefore = before.column();
    m_model->setComparison(m_book.view(), std::move(*comparison));
    if (wanted.empty()) {
        m_pages->setCurrentIndex(0);
        return;
    }
    m_what->setText(isProposal()
                        ? tr("%1 beside the benchmarks nearest to its weeks. C on a tree lays it "
                             "beside; Delete takes a column out.")
                              .arg(calledOf(*m_book.view(), wanted.front()))
                        : tr("%n tree(s) laid side by side. C on a tree adds it; Delete takes a "
                             "column out; Ctrl with an arrow moves it; Enter goes to the "
                             "tree.",
                             nullptr, static_cast<int>(wanted.size())));
    offerBenchmarks();
    m_table->fit();
    const int column = std::clamp(columnBefore, 0, m_model->columnCount() - 1);
    m_table->setCurrentIndex(m_model->index(std::clamp(row, 0, m_model->rowCount() - 1), column));
    readPhotos();
    if (isPaper()) {
        showPaper();
    } else {
        m_pages->setCurrentIndex(1);
    }
}

void ComparePlace::offerBenchmarks() {
    for (QToolButton* button : m_offers) {
        m_offerRow->layout()->removeWidget(button);
        button->hide();
        button->deleteLater();
    }
    m_offers.clear();
    const std::vector<Index> now = m_model->genotypes();
    if (now.size() < kMost) {
        for (const NearBenchmark& near : benchmarksNear(*m_book.view(), now.front())) {
            if (holds(now, near.genotype) || m_offers.size() >= kMostOffers) {
                continue;
            }
            auto* button = new QToolButton;
            const QString name = calledOf(*m_book.view(), near.genotype);
            const QString when = !near.weeksApart ? tr("weeks not known")
                                 : *near.weeksApart == 0
                                     ? tr("same week")
                                     : tr("%n week(s) apart", nullptr, *near.weeksApart);
            button->setText(tr("+ %1 · %2", "benchmark, how near").arg(name, when));
            button->setAccessibleName(tr("Add the benchmark %1, %2").arg(name, when));
            button->setFocusPolicy(Qt::StrongFocus);
            connect(button, &QToolButton::clicked, this, [this, genotype = near.genotype] {
                std::vector<Index> order = m_model->genotypes();
                order.push_back(genotype);
                takeOrder(order);
            });
            m_offerRow->layout()->addWidget(button);
            m_offers.push_back(button);
        }
    }
    m_offerRow->setVisible(!m_offers.empty());
}

void ComparePlace::takeOrder(const std::vector<Index>& order) {
    m_book.setLaidBeside(order);
    if (isVisible()) {
        read(); // at once, so that the keys after it find the new columns
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
