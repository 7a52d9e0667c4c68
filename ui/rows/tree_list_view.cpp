#include "ui/rows/tree_list_view.h"

#include <QApplication>
#include <QClipboard>
#include <QGuiApplication>
#include <QHeaderView>
#include <QKeyEvent>
#include <QStyledItemDelegate>

#include <algorithm>
#include <numeric>

namespace pipwright::ui {

namespace {

/// Rows that decide how wide a column is made.
constexpr int kRowsLookedAt = 200;
constexpr int kWidestColumn = 260;
/// Logical pixels left and right of the words.
constexpr int kPadding = 6;

/// Keeps figures and words of neighbouring columns apart.
class PaddedCells : public QStyledItemDelegate {
  public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override {
        QStyleOptionViewItem cell = option;
        initStyleOption(&cell, index);
        const QWidget* widget = option.widget;
        const QStyle* style = widget ? widget->style() : QApplication::style();
        style->drawPrimitive(QStyle::PE_PanelItemViewItem, &cell, painter, widget);
        cell.rect.adjust(kPadding, 0, -kPadding, 0);
        style->drawControl(QStyle::CE_ItemViewItem, &cell, painter, widget);
    }
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override {
        return QStyledItemDelegate::sizeHint(option, index) + QSize(2 * kPadding, 0);
    }
};

} // namespace

TreeListView::TreeListView(QWidget* parent)
    : QTableView(parent), m_model(new TreeTableModel(this)) {
    setObjectName(QStringLiteral("treeList"));
    setAccessibleName(tr("List of trees"));
    setModel(m_model);
    setSelectionBehavior(QAbstractItemView::SelectRows);
    setSelectionMode(QAbstractItemView::ExtendedSelection);
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setTabKeyNavigation(false);
    setShowGrid(false);
    setItemDelegate(new PaddedCells(this));
    setWordWrap(false);
    setAlternatingRowColors(false);
    setFrameShape(QFrame::NoFrame);
    setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    verticalHeader()->hide();
    verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    verticalHeader()->setDefaultSectionSize(fontMetrics().height() + 8);
    horizontalHeader()->setHighlightSections(false);
    horizontalHeader()->setSectionsMovable(true);
    horizontalHeader()->setResizeContentsPrecision(kRowsLookedAt);
    horizontalHeader()->setSortIndicator(-1, Qt::AscendingOrder);
    horizontalHeader()->setSortIndicatorClearable(true);
    setSortingEnabled(true);
    connect(this, &QTableView::doubleClicked, this, [this](const QModelIndex& index) {
        Q_EMIT treeActivated(m_model->scene().cells()[m_model->cellOf(index.row())].plant);
    });
}

void TreeListView::withoutTelling(const std::function<void()>& change) {
    const bool before = std::exchange(m_quiet, true);
    change();
    m_quiet = before;
}

void TreeListView::setTrees(ScenePointer scene, std::vector<TreeColumn> columns) {
    const std::optional<Uuid> current = currentTree();
    const std::vector<Uuid> selected = plantsOf(selectedCells(), m_model->scene());
    const int columnsBefore = m_model->columnCount();
    withoutTelling([&] {
        m_model->setTrees(std::move(scene), std::move(columns));
        if (current) {
            goTo(*current);
        }
        setSelection(selectionOf(selected, m_model->scene()));
    });
    if (m_model->columnCount() != columnsBefore) {
        resizeColumnsToContents();
        for (int column = 0; column < m_model->columnCount(); ++column) {
            setColumnWidth(column, std::min(columnWidth(column) + 8, kWidestColumn));
        }
    }
}

void TreeListView::setShown(const CellSet& shown) {
    const std::optional<Uuid> current = currentTree();
    const MapSelection selected = selectedCells();
    withoutTelling([&] {
        m_model->setShown(shown);
        if (current) {
            goTo(*current);
        }
        setSelection(selected);
    });
}

std::optional<Uuid> TreeListView::currentTree() const {
    if (!currentIndex().isValid()) {
        return std::nullopt;
    }
    return m_model->scene().cells()[m_model->cellOf(currentIndex().row())].plant;
}

MapSelection TreeListView::selectedCells() const {
    CellSet set(m_model->scene().cells().size(), false);
    const QItemSelection ranges = selectionModel()->selection();
    for (const QItemSelectionRange& range : ranges) {
        for (int row = range.top(); row <= range.bottom(); ++row) {
            set[m_model->cellOf(row)] = true;
        }
    }
    return MapSelection::of(set);
}

bool TreeListView::goTo(const Uuid& tree) {
    const auto cell = m_model->scene().find(tree);
    const auto row = cell ? m_model->rowOf(*cell) : std::nullopt;
    if (!row) {
        return false;
    }
    const int column = std::max(0, currentIndex().column());
    const QModelIndex index = m_model->index(*row, column);
    selectionModel()->setCurrentIndex(index, QItemSelectionModel::ClearAndSelect |
                                                 QItemSelectionModel::Rows);
    scrollTo(index);
    return true;
}

void TreeListView::setSelection(const MapSelection& selection) {
    std::vector<int> rows;
    selection.forEach([&](CellIndex cell) {
        if (const auto row = m_model->rowOf(cell)) {
            rows.push_back(*row);
        }
    });
    std::sort(rows.begin(), rows.end());
    QItemSelection ranges;
    const int last = m_model->columnCount() - 1;
    for (std::size_t i = 0; i < rows.size() && last >= 0;) {
        std::size_t end = i;
        while (end + 1 < rows.size() && rows[end + 1] == rows[end] + 1) {
            ++end;
        }
        ranges.append(
            QItemSelectionRange(m_model->index(rows[i], 0), m_model->index(rows[end], last)));
        i = end + 1;
    }
    withoutTelling([&] { selectionModel()->select(ranges, QItemSelectionModel::ClearAndSelect); });
}

void TreeListView::copyAsTable() const {
    std::vector<int> rows;
    const QModelIndexList chosen = selectionModel()->selectedRows();
    for (const QModelIndex& index : chosen) {
        rows.push_back(index.row());
    }
    if (rows.size() < 2) {
        rows.resize(static_cast<std::size_t>(m_model->rowCount()));
        std::iota(rows.begin(), rows.end(), 0);
    }
    std::sort(rows.begin(), rows.end());
    QGuiApplication::clipboard()->setText(m_model->asTable(rows));
}

void TreeListView::keyPressEvent(QKeyEvent* event) {
    const QString typed = event->text();
    if (event->matches(QKeySequence::Copy)) {
        copyAsTable();
        event->accept();
    } else if ((event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) && currentTree()) {
        Q_EMIT treeActivated(*currentTree());
        event->accept();
    } else if (typed.size() == 1 && (typed[0].isDigit() || typed[0] == QLatin1Char('/')) &&
               !event->modifiers().testFlag(Qt::ControlModifier)) {
        Q_EMIT findRequested(typed);
        event->accept();
    } else if (typed.size() == 1 && typed[0].isLetter()) {
        // Letters are actions on the current tree, not a search within the list.
        event->ignore();
    } else {
        QTableView::keyPressEvent(event);
    }
}

void TreeListView::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
    QTableView::currentChanged(current, previous);
    if (!m_quiet && current.isValid() && current.row() != previous.row()) {
        Q_EMIT currentTreeChanged(m_model->scene().cells()[m_model->cellOf(current.row())].plant);
    }
}

void TreeListView::selectionChanged(const QItemSelection& selected,
                                    const QItemSelection& deselected) {
    QTableView::selectionChanged(selected, deselected);
    if (!m_quiet) {
        Q_EMIT treeSelectionChanged();
    }
}

} // namespace pipwright::ui
