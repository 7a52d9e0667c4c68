#include "ui/widgets/plain_table.h"

#include <QApplication>
#include <QClipboard>
#include <QEvent>
#include <QGuiApplication>
#include <QHeaderView>
#include <QKeyEvent>
#include <QPainter>

#include <algorithm>

namespace pipwright::ui {

namespace {

/// Logical pixels left and right of the words, and of a row's height beyond its lines.
constexpr int kPadding = 6;
constexpr int kRowAir = 8;
/// Rows that decide how wide a column is made.
constexpr int kRowsLookedAt = 100;

QString oneCell(const QVariant& value) {
    QString text = value.toString();
    text.replace(QLatin1Char('\t'), QLatin1Char(' '));
    text.replace(QLatin1Char('\n'), QLatin1Char(' '));
    return text;
}

} // namespace

void PaddedCells::paint(QPainter* painter, const QStyleOptionViewItem& option,
                        const QModelIndex& index) const {
    QStyleOptionViewItem cell = option;
    initStyleOption(&cell, index);
    const QWidget* widget = option.widget;
    const QStyle* style = widget != nullptr ? widget->style() : QApplication::style();
    style->drawPrimitive(QStyle::PE_PanelItemViewItem, &cell, painter, widget);
    cell.rect.adjust(kPadding, 0, -kPadding, 0);
    style->drawControl(QStyle::CE_ItemViewItem, &cell, painter, widget);
}

QSize PaddedCells::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    QStyleOptionViewItem inside = option;
    inside.rect.adjust(kPadding, 0, -kPadding, 0); // where words wrap, they do it between these
    return QStyledItemDelegate::sizeHint(inside, index) + QSize(2 * kPadding, 0);
}

PlainTable::PlainTable(const QString& name, QWidget* parent) : QTableView(parent) {
    setAccessibleName(name);
    setSelectionBehavior(QAbstractItemView::SelectRows);
    setSelectionMode(QAbstractItemView::ExtendedSelection);
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setTabKeyNavigation(false);
    setShowGrid(false);
    setItemDelegate(new PaddedCells(this));
    setWordWrap(false);
    setFrameShape(QFrame::NoFrame);
    setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    verticalHeader()->hide();
    verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    horizontalHeader()->setHighlightSections(false);
    horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    horizontalHeader()->setResizeContentsPrecision(kRowsLookedAt);
    setRowHeight();
    connect(this, &QTableView::doubleClicked, this, [this](const QModelIndex& index) {
        if (!index.flags().testFlag(Qt::ItemIsEditable)) {
            Q_EMIT wanted(index);
        }
    });
}

void PlainTable::setLinesPerRow(int lines) {
    m_lines = lines;
    setWordWrap(lines > 1);
    setRowHeight();
}

void PlainTable::setRowHeight() {
    verticalHeader()->setDefaultSectionSize(m_lines * fontMetrics().lineSpacing() + kRowAir);
}

void PlainTable::fitColumns(int widest) {
    resizeColumnsToContents();
    for (int column = 0; model() != nullptr && column < model()->columnCount(); ++column) {
        setColumnWidth(column, std::min(columnWidth(column), widest));
    }
}

QString PlainTable::asTable() const {
    if (model() == nullptr) {
        return {};
    }
    std::vector<int> rows;
    const QModelIndexList chosen = selectionModel()->selectedRows();
    for (const QModelIndex& index : chosen) {
        rows.push_back(index.row());
    }
    if (rows.size() < 2) {
        rows.clear();
        for (int row = 0; row < model()->rowCount(); ++row) {
            rows.push_back(row);
        }
    }
    std::sort(rows.begin(), rows.end());
    const int columns = model()->columnCount();
    QStringList cells;
    for (int column = 0; column < columns; ++column) {
        cells << oneCell(model()->headerData(column, Qt::Horizontal));
    }
    QStringList lines = {cells.join(QLatin1Char('\t'))};
    for (const int row : rows) {
        cells.clear();
        for (int column = 0; column < columns; ++column) {
            cells << oneCell(model()->index(row, column).data());
        }
        lines << cells.join(QLatin1Char('\t'));
    }
    return lines.join(QLatin1Char('\n')) + QLatin1Char('\n');
}

void PlainTable::copyAsTable() const {
    QGuiApplication::clipboard()->setText(asTable());
}

void PlainTable::keyPressEvent(QKeyEvent* event) {
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    const QModelIndex at = currentIndex();
    if (event->matches(QKeySequence::Copy)) {
        copyAsTable();
    } else if (enter && event->modifiers() == Qt::NoModifier && at.isValid()) {
        if (at.flags().testFlag(Qt::ItemIsEditable) && editTriggers() != NoEditTriggers) {
            edit(at);
        } else {
            Q_EMIT wanted(at);
        }
    } else if (event->key() == Qt::Key_F2 && at.isValid() &&
               !at.flags().testFlag(Qt::ItemIsEditable)) {
        Q_EMIT changeWanted(at);
    } else if (event->key() == Qt::Key_Delete && at.isValid()) {
        Q_EMIT removalWanted(at);
    } else {
        QTableView::keyPressEvent(event);
    }
}

void PlainTable::changeEvent(QEvent* event) {
    QTableView::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) {
        setRowHeight();
    }
}

} // namespace pipwright::ui
