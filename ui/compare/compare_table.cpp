#include "ui/compare/compare_table.h"

#include "ui/compare/compare_cells.h"
#include "ui/widgets/theme.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QScrollBar>
#include <QTimer>

#include <algorithm>

namespace pipwright::ui {

namespace {

constexpr int kNarrowest = 190;
constexpr int kTitleWidth = 170;

} // namespace

CompareTable::CompareTable(CompareModel& model, QWidget* parent)
    : QTableView(parent), m_model(model), m_cells(new CompareCells(model, this)) {
    setModel(&model);
    setItemDelegate(m_cells);
    setAccessibleName(tr("Trees side by side"));
    setShowGrid(false);
    setSelectionMode(QAbstractItemView::SingleSelection);
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    setTabKeyNavigation(false);
    setCornerButtonEnabled(false);
    setStyleSheet(QStringLiteral(
        "QTableCornerButton::section { background: palette(button); border: none; }"));
    setWordWrap(true);
    horizontalHeader()->setSectionsMovable(true);
    horizontalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    horizontalHeader()->setHighlightSections(true);
    horizontalHeader()->setAccessibleName(tr("Trees: drag to reorder"));
    verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    verticalHeader()->setFixedWidth(kTitleWidth);
    verticalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    connect(this, &QAbstractItemView::doubleClicked, this, &CompareTable::goTo);
    connect(horizontalHeader(), &QHeaderView::sectionMoved, this, [this](int, int from, int to) {
        std::vector<Index> order = m_model.genotypes();
        const Index moved = order[static_cast<std::size_t>(from)];
        order.erase(order.begin() + from);
        order.insert(order.begin() + to, moved);
        // The header is still in its own drag: the columns follow when it is done.
        QTimer::singleShot(0, this, [this, order] { Q_EMIT orderWanted(order); });
    });
}

void CompareTable::fit() {
    const int columns = m_model.columnCount();
    if (columns == 0) {
        return;
    }
    const QHeaderView* header = horizontalHeader();
    for (int visual = 0; visual < columns; ++visual) { // after a drag: back to the model's order
        if (header->logicalIndex(visual) != visual) {
            const bool blocked = horizontalHeader()->blockSignals(true);
            horizontalHeader()->moveSection(header->visualIndex(visual), visual);
            horizontalHeader()->blockSignals(blocked);
        }
    }
    const int width = std::max(kNarrowest, viewport()->width() / columns);
    clearSpans();
    for (int column = 0; column < columns; ++column) {
        setColumnWidth(column, width);
    }
    for (int row = 0; row < m_model.rowCount(); ++row) {
        setRowHeight(row, m_cells->measureRow(row, width));
        if (m_model.row(row).kind == CompareKind::section && columns > 1) {
            setSpan(row, 0, 1, columns);
        }
    }
}

void CompareTable::showColumnWhole(int column) {
    const int left = columnViewportPosition(column);
    const int beyond = left + columnWidth(column) - viewport()->width();
    QScrollBar* bar = horizontalScrollBar();
    if (left < 0 || columnWidth(column) > viewport()->width()) {
        bar->setValue(bar->value() + left);
    } else if (beyond > 0) {
        bar->setValue(bar->value() + beyond);
    }
}

void CompareTable::goTo(const QModelIndex& index) {
    if (index.isValid()) {
        Q_EMIT treeWanted(m_model.compared(index.column()).genotype);
    }
}

void CompareTable::takeOut(int column) {
    std::vector<Index> order = m_model.genotypes();
    order.erase(order.begin() + column);
    Q_EMIT orderWanted(order);
}

void CompareTable::move(int column, int by) {
    std::vector<Index> order = m_model.genotypes();
    const int to = column + by;
    if (to < 0 || to >= static_cast<int>(order.size())) {
        return;
    }
    const int row = currentIndex().row();
    std::swap(order[static_cast<std::size_t>(column)], order[static_cast<std::size_t>(to)]);
    Q_EMIT orderWanted(order);
    setCurrentIndex(m_model.index(row, to));
}

void CompareTable::keyPressEvent(QKeyEvent* event) {
    const QModelIndex at = currentIndex();
    const bool moves = event->modifiers().testFlag(Qt::ControlModifier);
    if (at.isValid() && (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter)) {
        goTo(at);
    } else if (at.isValid() && event->key() == Qt::Key_Delete) {
        takeOut(at.column());
    } else if (at.isValid() && moves && event->key() == Qt::Key_Left) {
        move(at.column(), -1);
    } else if (at.isValid() && moves && event->key() == Qt::Key_Right) {
        move(at.column(), 1);
    } else {
        QTableView::keyPressEvent(event);
    }
}

void CompareTable::mouseReleaseEvent(QMouseEvent* event) {
    const QModelIndex at = indexAt(event->pos());
    QTableView::mouseReleaseEvent(event);
    if (event->button() == Qt::LeftButton && at.isValid() &&
        m_model.row(at.row()).kind == CompareKind::head &&
        CompareCells::closeArea(visualRect(at)).contains(event->pos())) {
        takeOut(at.column());
    }
}

void CompareTable::resizeEvent(QResizeEvent* event) {
    QTableView::resizeEvent(event);
    fit();
}

void CompareTable::changeEvent(QEvent* event) {
    QTableView::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) {
        fit();
    }
}

} // namespace pipwright::ui
