#include "ui/charts/chart_panel.h"

#include "ui/charts/chart_canvas.h"
#include "ui/charts/chart_export.h"
#include "ui/charts/chart_legend.h"
#include "ui/charts/chart_table_model.h"
#include "ui/widgets/flow_text.h"
#include "ui/widgets/icons.h"
#include "ui/widgets/notice_bar.h"

#include <QClipboard>
#include <QFileDialog>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QMenu>
#include <QStackedWidget>
#include <QTableView>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>

namespace pipwright::ui {

ChartPanel::ChartPanel(QWidget* parent)
    : QWidget(parent), m_title(new FlowText({}, FlowText::Weight::strong, this)),
      m_notice(new NoticeBar(this)), m_pages(new QStackedWidget(this)),
      m_canvas(new ChartCanvas(this)), m_empty(new FlowText({}, FlowText::Weight::second, this)),
      m_table(new QTableView(this)), m_model(new ChartTableModel(this)),
      m_legend(new ChartLegend(this)), m_words(new ElidedText(this)),
      m_tableButton(new QToolButton(this)), m_exportButton(new QToolButton(this)) {
    const Theme& theme = themeOf(this);
    buildHead();
    buildPages();
    auto* head = new QHBoxLayout;
    head->setSpacing(theme.gap);
    head->addWidget(m_title, 1);
    head->addWidget(m_tableButton);
    head->addWidget(m_exportButton);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(theme.gap);
    layout->addLayout(head);
    layout->addWidget(m_notice);
    layout->addWidget(m_pages, 1);
    layout->addWidget(m_legend);
    layout->addWidget(m_words);
    connect(m_legend, &ChartLegend::shownChanged, this,
            [this] { m_canvas->setShown(m_legend->shown()); });
    connect(m_legend, &ChartLegend::highlightWanted, m_canvas, &ChartCanvas::setHighlighted);
    connect(m_canvas, &ChartCanvas::currentChanged, this,
            [this] { m_words->setText(m_canvas->currentWords()); });
    connect(m_canvas, &ChartCanvas::markActivated, this, &ChartPanel::pointActivated);
    refresh();
}

void ChartPanel::buildHead() {
    m_tableButton->setIcon(icon(IconName::table));
    m_tableButton->setCheckable(true);
    m_tableButton->setAutoRaise(true);
    m_tableButton->setAccessibleName(tr("Show as table"));
    m_tableButton->setToolTip(tr("Show as table"));
    connect(m_tableButton, &QToolButton::toggled, this, &ChartPanel::refresh);
    m_exportButton->setIcon(icon(IconName::save));
    m_exportButton->setAutoRaise(true);
    m_exportButton->setAccessibleName(tr("Write to a file"));
    m_exportButton->setToolTip(tr("Write to a file"));
    auto* menu = new QMenu(m_exportButton);
    const std::pair<QString, QString> kinds[] = {
        {tr("Picture (PNG)"), QStringLiteral("png")},
        {tr("Drawing (SVG)"), QStringLiteral("svg")},
        {tr("Numbers (CSV)"), QStringLiteral("csv")},
    };
    for (const auto& [words, ending] : kinds) {
        menu->addAction(words, this, [this, name = ending] { askAndWrite(name); });
    }
    // Opened by hand: a menu of the button's own would draw an arrow over the icon.
    connect(m_exportButton, &QToolButton::clicked, menu, [this, menu] {
        menu->popup(m_exportButton->mapToGlobal(QPoint(0, m_exportButton->height())));
    });
}

void ChartPanel::buildPages() {
    m_table->setModel(m_model);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->verticalHeader()->hide();
    m_table->setWordWrap(false);
    m_table->setTabKeyNavigation(false);
    m_table->horizontalHeader()->setStretchLastSection(true);
    m_table->installEventFilter(this);
    m_empty->setAlignment(Qt::AlignCenter);
    m_pages->addWidget(m_canvas);
    m_pages->addWidget(m_table);
    m_pages->addWidget(m_empty);
    connect(m_table, &QTableView::activated, this, [this](const QModelIndex& index) {
        if (!m_model->idOf(index.row()).isEmpty()) {
            Q_EMIT pointActivated(m_model->idOf(index.row()));
        }
    });
}

void ChartPanel::setSpec(const ChartSpec& spec) {
    if (spec == m_spec) {
        return;
    }
    m_spec = spec;
    m_canvas->setSpec(spec);
    m_model->setSpec(spec);
    m_legend->setSpec(spec);
    // Without a current cell a screen reader asks for one and Qt 6.4 answers with a crash.
    m_table->setCurrentIndex(m_model->index(0, 0));
    refresh();
}

void ChartPanel::showAsTable(bool table) {
    m_tableButton->setChecked(table);
}
bool ChartPanel::isTable() const {
    return m_tableButton->isChecked();
}

Outcome ChartPanel::writeTo(const QString& path) const {
    const QSize size = m_canvas->size().expandedTo(m_canvas->sizeHint());
    return exportChart(m_spec, m_legend->shown(), size, path);
}

QString ChartPanel::words() const {
    return m_words->text();
}

bool ChartPanel::eventFilter(QObject* watched, QEvent* event) {
    if (watched == m_table && event->type() == QEvent::KeyPress &&
        static_cast<QKeyEvent*>(event)->matches(QKeySequence::Copy)) {
        copyRows();
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

void ChartPanel::refresh() {
    const QString title = QString::fromStdString(m_spec.title);
    const bool empty = m_spec.isEmpty();
    m_title->setText(title);
    m_title->setVisible(!title.isEmpty());
    m_empty->setText(m_spec.emptyText.empty() ? tr("Nothing to draw yet.")
                                              : QString::fromStdString(m_spec.emptyText));
    m_table->setAccessibleName(tr("%1 as a table").arg(title));
    setAccessibleName(title);
    m_pages->setCurrentWidget(empty       ? static_cast<QWidget*>(m_empty)
                              : isTable() ? static_cast<QWidget*>(m_table)
                                          : m_canvas);
    if (!empty && isTable()) {
        m_table->resizeColumnsToContents();
    }
    m_legend->setVisible(!empty && !isTable() && m_spec.series.size() > 1);
    m_words->setVisible(!empty && !isTable());
    m_words->setText(m_canvas->currentWords());
    m_tableButton->setEnabled(!empty);
    m_exportButton->setEnabled(!empty);
}

void ChartPanel::askAndWrite(const QString& ending) {
    const QString name = QString::fromStdString(m_spec.title) + QLatin1Char('.') + ending;
    QString path =
        QFileDialog::getSaveFileName(this, tr("Write to a file"), name,
                                     QStringLiteral("%1 (*.%2)").arg(ending.toUpper(), ending));
    if (path.isEmpty()) {
        return;
    }
    if (!path.endsWith(QLatin1Char('.') + ending, Qt::CaseInsensitive)) {
        path += QLatin1Char('.') + ending;
    }
    const Outcome written = writeTo(path);
    if (written) {
        m_notice->say(NoticeBar::Kind::word, tr("Written to %1.").arg(path));
    } else {
        m_notice->tell(written.problem());
    }
}

void ChartPanel::copyRows() const {
    QModelIndexList rows = m_table->selectionModel()->selectedRows();
    std::sort(rows.begin(), rows.end());
    QStringList lines;
    QStringList cells;
    for (int column = 0; column < m_model->columnCount(); ++column) {
        cells << m_model->headerData(column, Qt::Horizontal, Qt::DisplayRole).toString();
    }
    lines << cells.join(QLatin1Char('\t'));
    for (const QModelIndex& row : rows) {
        cells.clear();
        for (int column = 0; column < m_model->columnCount(); ++column) {
            cells << m_model->index(row.row(), column).data().toString();
        }
        lines << cells.join(QLatin1Char('\t'));
    }
    QGuiApplication::clipboard()->setText(lines.join(QLatin1Char('\n')) + QLatin1Char('\n'));
}

} // namespace pipwright::ui
