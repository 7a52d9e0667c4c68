#include "ui/tasting/sheet_table.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <QLineEdit>

namespace pipwright::ui {

QWidget* SheetCells::createEditor(QWidget* parent, const QStyleOptionViewItem&,
                                  const QModelIndex& index) const {
    auto* line = new QLineEdit(parent);
    line->setFrame(false);
    line->setAccessibleName(index.model()->headerData(index.column(), Qt::Horizontal).toString());
    line->setAccessibleDescription(
        index.model()->headerData(index.column(), Qt::Horizontal, Qt::ToolTipRole).toString());
    return line;
}

bool SheetCells::eventFilter(QObject* watched, QEvent* event) {
    auto* line = qobject_cast<QLineEdit*>(watched);
    if (line != nullptr && event->type() == QEvent::KeyPress) {
        const auto* key = static_cast<QKeyEvent*>(event);
        const bool enter = key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter;
        const bool plain =
            key->modifiers() == Qt::NoModifier || key->modifiers() == Qt::KeypadModifier;
        if (enter && plain) {
            Q_EMIT commitData(line);
            Q_EMIT closeEditor(line, QAbstractItemDelegate::EditNextItem);
            return true;
        }
        if (key->key() == Qt::Key_Escape) {
            Q_EMIT commitData(line);
            Q_EMIT closeEditor(line, QAbstractItemDelegate::NoHint);
            return true;
        }
        if (enter) {
            return false; // Ctrl+Enter belongs to the sheet
        }
    }
    return PaddedCells::eventFilter(watched, event);
}

SheetTable::SheetTable(const QString& name, QWidget* parent) : PlainTable(name, parent) {
    setItemDelegate(new SheetCells(this));
    setSelectionBehavior(QAbstractItemView::SelectItems);
    setSelectionMode(QAbstractItemView::SingleSelection);
    setEditTriggers(QAbstractItemView::AnyKeyPressed | QAbstractItemView::DoubleClicked |
                    QAbstractItemView::EditKeyPressed);
    setShowGrid(true);
    verticalHeader()->show();
}

void SheetTable::keepOpenCell() {
    if (QWidget* editor = indexWidget(currentIndex())) {
        QAbstractItemDelegate* cells = itemDelegate();
        Q_EMIT cells->commitData(editor);
        Q_EMIT cells->closeEditor(editor, QAbstractItemDelegate::NoHint);
    }
}

bool SheetTable::event(QEvent* event) {
    if (event->type() == QEvent::ShortcutOverride) {
        const auto* key = static_cast<QKeyEvent*>(event);
        const bool plain = (key->modifiers() & ~(Qt::ShiftModifier | Qt::KeypadModifier)) == 0;
        if (plain && !key->text().isEmpty() && key->text()[0].isPrint()) {
            event->accept(); // the first letter of a word, not the map's key of that letter
            return true;
        }
    }
    return PlainTable::event(event);
}

void SheetTable::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape && state() != QAbstractItemView::EditingState) {
        Q_EMIT leftAlone();
        return;
    }
    PlainTable::keyPressEvent(event);
}

} // namespace pipwright::ui
