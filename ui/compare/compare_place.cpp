#include "ui/compare/compare_place.h"

#include "core/exchange/print/table_page.h"
#include "ui/book/open_book.h"
#include "ui/compare/compare_delegate.h"
#include "ui/compare/compare_model.h"
#include "ui/print/paper_font.h"
#include "ui/print/pdf_writer.h"
#include "ui/print/print_words.h"
#include "ui/widgets/empty_place.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/icons.h"
#include "ui/widgets/theme.h"

#include <QFileDialog>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QStackedWidget>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

namespace pipwright::ui {

namespace {

constexpr std::size_t kProposed = 3; ///< benchmarks proposed beside a single tree
constexpr std::size_t kOffered = 6;
constexpr int kNarrowest = 190;

} // namespace

ComparePlace::ComparePlace(OpenBook& book, QWidget* parent) : QWidget(parent), m_book(book) {
    build();
    connect(&m_book, &OpenBook::laidBesideChanged, this, &ComparePlace::refreshIfSeen);
    connect(&m_book, &OpenBook::currentTreeChanged, this, [this] {
        if (m_book.laidBeside().size() < 2) {
            refreshIfSeen();
        }
    });
    connect(&m_book, &OpenBook::viewChanged, this, [this] { refreshIfSeen(); });
}

void ComparePlace::build() {
    m_model = new CompareModel(this);
    m_delegate = new CompareDelegate(
        *m_model,
        [this](const std::string& hash) {
            const auto bytes = m_book.store().photoBytes(hash);
            return bytes ? *bytes : std::string{};
        },
        this);
    m_table = new QTableView;
    m_table->setModel(m_model);
    m_table->setItemDelegate(m_delegate);
    m_table->setAccessibleName(tr("Comparison"));
    m_table->setShowGrid(false);
    m_table->setSelectionMode(QAbstractItemView::SingleSelection);
    m_table->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_table->setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_table->horizontalHeader()->setHighlightSections(false);
    m_table->verticalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignTop);
    m_table->verticalHeader()->setHighlightSections(false);
    m_table->installEventFilter(this);
    m_words = new QLabel(
        tr("As eaten, not yet adjusted for taster and condition. Filled: fair lot; open: not fair; "
           "square: blind. A dot with its interval is the mean and two standard errors. Delete "
           "takes a column away, Ctrl with an arrow moves it, Enter selects its tree."));
    m_words->setWordWrap(true);
    m_words->setFont(lightTheme().smallFont());
    m_print = new QPushButton(tr("Save PDF..."));
    m_print->setIcon(icon(IconName::print));
    m_offers = new QWidget;
    m_offers->setLayout(new FlowLayout);
    auto* top = new QHBoxLayout;
    top->addWidget(m_offers, 1);
    top->addWidget(m_print);
    auto* filled = new QWidget;
    auto* column = new QVBoxLayout(filled);
    column->setContentsMargins(lightTheme().space, lightTheme().gap, lightTheme().space,
                               lightTheme().gap);
    column->addLayout(top);
    column->addWidget(m_table, 1);
    column->addWidget(m_words);
    m_pages = new QStackedWidget;
    m_pages->addWidget(filled);
    m_pages->addWidget(new EmptyPlace(
        IconName::compare, tr("Nothing lies side by side"),
        tr("Select a tree and press C to lay it here; the benchmarks of its weeks are offered "
           "beside it.")));
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(m_pages);
    setFocusProxy(m_table);
    connect(m_print, &QPushButton::clicked, this, [this] {
        const QString path = QFileDialog::getSaveFileName(this, tr("Save the comparison"),
                                                          tr("comparison.pdf"), tr("PDF (*.pdf)"));
        if (!path.isEmpty()) {
            if (const Outcome outcome = writePdfTo(path); !outcome) {
                Q_EMIT m_book.problemMet(outcome.problem());
            }
        }
    });
}

void ComparePlace::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (m_stale) {
        refresh();
    }
}

void ComparePlace::refreshIfSeen() {
    m_stale = true;
    if (isVisible()) {
        refresh();
    }
}

std::vector<Index> ComparePlace::proposed() const {
    const auto& beside = m_book.laidBeside();
    if (beside.size() >= 2) {
        return beside;
    }
    const auto first = beside.empty() ? m_book.currentGenotype() : std::optional(beside.front());
    std::vector<Index> genotypes;
    if (!first) {
        return genotypes;
    }
    genotypes.push_back(*first);
    for (const NearBenchmark& near : benchmarksNear(*m_book.view(), *first)) {
        if (genotypes.size() <= kProposed && near.weeksApart) {
            genotypes.push_back(near.genotype);
        }
    }
    return genotypes;
}

void ComparePlace::refresh() {
    m_stale = false;
    m_shown = proposed();
    m_pages->setCurrentIndex(m_shown.empty() ? 1 : 0);
    if (m_shown.empty()) {
        return;
    }
    const QModelIndex kept = m_table->currentIndex();
    auto comparison = compare(*m_book.view(), m_book.store(), m_shown);
    if (!comparison) {
        Q_EMIT m_book.problemMet(comparison.problem());
        return;
    }
    m_delegate->forgetPhotos();
    m_model->setComparison(m_book.view(), std::move(*comparison));
    fitColumns();
    m_table->resizeRowsToContents();
    m_table->setCurrentIndex(
        m_model->index(std::clamp(kept.row(), 0, m_model->rowCount() - 1),
                       std::clamp(kept.column(), 0, m_model->columnCount() - 1)));
    offerBenchmarks();
}

void ComparePlace::fitColumns() {
    const int columns = m_model->columnCount();
    const int room = m_table->viewport()->width() / std::max(1, columns);
    for (int column = 0; column < columns; ++column) {
        m_table->setColumnWidth(column, std::max(kNarrowest, room));
    }
}

void ComparePlace::offerBenchmarks() {
    while (QLayoutItem* item = m_offers->layout()->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    const auto view = m_book.view();
    std::size_t offered = 0;
    for (const NearBenchmark& near : benchmarksNear(*view, m_shown.front())) {
        const bool there =
            std::find(m_shown.begin(), m_shown.end(), near.genotype) != m_shown.end();
        if (there || offered == kOffered) {
            continue;
        }
        const QString name = QString::fromStdString(view->genotypes()[near.genotype].called());
        const QString apart = !near.weeksApart ? tr("season not known")
                              : *near.weeksApart == 0
                                  ? tr("same week")
                                  : tr("%n week(s) apart", nullptr, *near.weeksApart);
        auto* chip = new QPushButton(QStringLiteral("+ %1, %2").arg(name, apart));
        chip->setAccessibleName(tr("Lay the benchmark %1 beside, %2").arg(name, apart));
        chip->setFlat(true);
        connect(chip, &QPushButton::clicked, this, [this, genotype = near.genotype] {
            std::vector<Index> all = m_shown;
            all.push_back(genotype);
            m_book.setLaidBeside(std::move(all));
        });
        m_offers->layout()->addWidget(chip);
        ++offered;
    }
}

void ComparePlace::removeColumn(int column) {
    std::vector<Index> rest = m_shown;
    rest.erase(rest.begin() + column);
    m_book.setLaidBeside(std::move(rest));
}

void ComparePlace::moveColumn(int column, int by) {
    const int to = column + by;
    if (to < 0 || to >= static_cast<int>(m_shown.size())) {
        return;
    }
    std::vector<Index> order = m_shown;
    std::swap(order[static_cast<std::size_t>(column)], order[static_cast<std::size_t>(to)]);
    m_table->setCurrentIndex(m_model->index(m_table->currentIndex().row(), to));
    m_book.setLaidBeside(std::move(order));
}

bool ComparePlace::eventFilter(QObject* watched, QEvent* event) {
    if (watched == m_table && event->type() == QEvent::Resize) {
        fitColumns();
    }
    if (watched != m_table || event->type() != QEvent::KeyPress ||
        !m_table->currentIndex().isValid()) {
        return QWidget::eventFilter(watched, event);
    }
    const auto* key = static_cast<QKeyEvent*>(event);
    const int column = m_table->currentIndex().column();
    const bool control = key->modifiers() == Qt::ControlModifier;
    if (key->key() == Qt::Key_Delete) {
        removeColumn(column);
    } else if (control && (key->key() == Qt::Key_Left || key->key() == Qt::Key_Right)) {
        moveColumn(column, key->key() == Qt::Key_Left ? -1 : 1);
    } else if (key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter) {
        m_book.selectGenotype(m_shown[static_cast<std::size_t>(column)]);
    } else {
        return QWidget::eventFilter(watched, event);
    }
    return true;
}

Outcome ComparePlace::writePdfTo(const QString& path) const {
    PrintedTable table;
    table.title = tr("Comparison").toStdString();
    table.subtitle = (QString::fromStdString(m_book.view()->facts().title) + QStringLiteral(", ") +
                      QString::fromStdString(m_book.today().iso()))
                         .toStdString();
    table.paper = kA4.turned();
    table.words = translatedPaperWords();
    table.columns.push_back({{}, 0.8});
    for (int column = 0; column < m_model->columnCount(); ++column) {
        table.columns.push_back(
            {m_model->headerData(column, Qt::Horizontal).toString().toStdString()});
    }
    for (int row = 0; row < m_model->rowCount(); ++row) {
        PrintedRow line;
        line.cells.push_back(m_model->headerData(row, Qt::Vertical).toString().toStdString());
        for (int column = 0; column < m_model->columnCount(); ++column) {
            line.cells.push_back(m_model->index(row, column).data().toString().toStdString());
        }
        table.rows.push_back(std::move(line));
    }
    table.notes.push_back(
        tr("Liking as eaten, 1 to 9, not yet adjusted for taster and condition; mean ± standard "
           "error.")
            .toStdString());
    const FontMeasure measure;
    return writePdf(layOutTable(table, measure).pages, tr("Comparison"), path);
}

} // namespace pipwright::ui
