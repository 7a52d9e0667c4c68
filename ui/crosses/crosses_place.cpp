#include "ui/crosses/crosses_place.h"

#include "ui/book/open_book.h"
#include "ui/crosses/cross_table_model.h"
#include "ui/crosses/outlook_panel.h"
#include "ui/crosses/raising_panel.h"
#include "ui/widgets/empty_place.h"
#include "ui/widgets/flow_text.h"
#include "ui/widgets/icons.h"
#include "ui/widgets/theme.h"

#include <QBoxLayout>
#include <QHeaderView>
#include <QItemSelectionModel>
#include <QScrollArea>
#include <QSplitter>
#include <QStackedWidget>
#include <QTableView>
#include <QVBoxLayout>

namespace pipwright::ui {

namespace {

/// Two panels side by side, one below the other where there is no room for that.
class PanelScroll : public QScrollArea {
  public:
    PanelScroll(QWidget* first, QWidget* second) : m_both(new QWidget) {
        m_line = new QBoxLayout(QBoxLayout::LeftToRight, m_both);
        m_line->setContentsMargins(0, 0, 0, 0);
        m_line->setSpacing(lightTheme().space);
        m_line->addWidget(first, 3);
        m_line->addWidget(second, 2);
        setFrameShape(QFrame::NoFrame);
        setWidgetResizable(true);
        setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
        setFocusPolicy(Qt::NoFocus);
        setWidget(m_both);
    }

  protected:
    void resizeEvent(QResizeEvent* event) override {
        constexpr int kRoomForTwo = 720;
        m_line->setDirection(width() < kRoomForTwo ? QBoxLayout::TopToBottom
                                                   : QBoxLayout::LeftToRight);
        QScrollArea::resizeEvent(event);
    }

  private:
    QWidget* m_both;
    QBoxLayout* m_line = nullptr;
};

/// Where a cross stands in the table; its first row when none is meant, -1 when it is not there.
int rowOf(const CrossTableModel& model, const std::optional<CrossId>& cross) {
    for (int row = 0; row < model.rowCount(); ++row) {
        if (!cross || model.line(row).cross.id == *cross) {
            return row;
        }
    }
    return -1;
}

} // namespace

CrossesPlace::CrossesPlace(OpenBook& book, QWidget* parent) : QWidget(parent), m_book(book) {
    m_model = new CrossTableModel(this);
    m_table = new QTableView;
    m_table->setModel(m_model);
    m_table->setAccessibleName(tr("Crosses"));
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setSelectionMode(QAbstractItemView::SingleSelection);
    m_table->setSortingEnabled(true);
    m_table->horizontalHeader()->setSortIndicator(3, Qt::AscendingOrder);
    m_table->verticalHeader()->hide();
    m_table->setShowGrid(false);
    m_table->setAlternatingRowColors(true);
    m_table->setWordWrap(false);
    m_words = new FlowText(tr("Enter on a cross selects its growing trees. A dash is unknown."));
    m_words->setContentsMargins(lightTheme().space, lightTheme().gap, 0, lightTheme().gap);
    auto* upper = new QWidget;
    auto* column = new QVBoxLayout(upper);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(m_table, 1);
    column->addWidget(m_words);
    auto* filled = new QSplitter(Qt::Vertical);
    filled->setChildrenCollapsible(false);
    filled->addWidget(upper);
    filled->addWidget(buildPromise());
    filled->setStretchFactor(0, 3);
    filled->setStretchFactor(1, 2);
    m_pages = new QStackedWidget;
    m_pages->addWidget(filled);
    m_pages->addWidget(new EmptyPlace(IconName::crosses, tr("No crosses yet"),
                                      tr("Crosses come in with a table of trees that names their "
                                         "parents.")));
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(m_pages);
    setFocusProxy(m_table);
    connect(m_table, &QTableView::activated, this, &CrossesPlace::selectFamily);
    connect(m_table->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            &CrossesPlace::showCurrent);
    connect(m_outlook, &OutlookPanel::speciesChanged, this, [this] {
        m_raising->setRecord(raisingRecordOf(*m_book.view(), m_outlook->species()));
    });
    connect(&m_book, &OpenBook::viewChanged, this, [this] {
        m_stale = true;
        if (isVisible()) {
            refresh();
        }
    });
}

QWidget* CrossesPlace::buildPromise() {
    m_outlook = new OutlookPanel(m_book);
    m_raising = new RaisingPanel;
    return new PanelScroll(m_outlook, m_raising);
}

void CrossesPlace::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (m_stale) {
        refresh();
    }
}

void CrossesPlace::refresh() {
    m_stale = false;
    const int before = m_table->currentIndex().row();
    const auto current = before < 0 ? std::nullopt : std::optional{m_model->line(before).cross.id};
    m_keepsTyped = m_outlook->isTyped();
    m_model->setLines(crossLines(*m_book.view()));
    const auto* header = m_table->horizontalHeader();
    m_model->sort(header->sortIndicatorSection(), header->sortIndicatorOrder());
    m_table->resizeColumnsToContents();
    m_pages->setCurrentIndex(m_model->rowCount() == 0 ? 1 : 0);
    const int row = rowOf(*m_model, current);
    if (row >= 0) {
        m_table->setCurrentIndex(m_model->index(row, 0));
    }
    m_keepsTyped = false;
    m_outlook->refresh();
    m_raising->setRecord(raisingRecordOf(*m_book.view(), m_outlook->species()));
}

void CrossesPlace::showCurrent() {
    if (m_keepsTyped) {
        return;
    }
    const int row = m_table->currentIndex().row();
    m_outlook->showCross(row < 0 ? nullptr : &m_model->line(row));
}

void CrossesPlace::selectFamily() {
    const auto row = m_table->currentIndex().row();
    if (row < 0) {
        return;
    }
    const CrossId cross = m_model->line(row).cross.id;
    const auto view = m_book.view();
    std::vector<Index> plants;
    for (Index plant = 0; plant < view->plants().size(); ++plant) {
        const PlantEntry& entry = view->plants()[plant];
        if (entry.genotype && !entry.erased && entry.state == PlantState::growing &&
            view->genotypes()[*entry.genotype].cross == cross) {
            plants.push_back(plant);
        }
    }
    if (!plants.empty()) {
        m_book.selectPlant(plants.front());
        m_book.setSelection(std::move(plants));
    }
}

} // namespace pipwright::ui
