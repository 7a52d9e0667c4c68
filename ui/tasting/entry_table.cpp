#include "ui/tasting/entry_table.h"

#include <QKeyEvent>
#include <QLineEdit>

namespace pipwright::ui {

namespace {

bool isPlainEnter(const QKeyEvent& key) {
    const bool enter = key.key() == Qt::Key_Return || key.key() == Qt::Key_Enter;
    return enter && (key.modifiers() == Qt::NoModifier || key.modifiers() == Qt::KeypadModifier);
}

} // namespace

bool EntryCells::eventFilter(QObject* watched, QEvent* event) {
    auto* line = qobject_cast<QLineEdit*>(watched);
    if (line != nullptr && event->type() == QEvent::KeyPress &&
        isPlainEnter(*static_cast<QKeyEvent*>(event))) {
        Q_EMIT commitData(line);
        Q_EMIT closeEditor(line, QAbstractItemDelegate::NoHint);
        Q_EMIT enterPressed();
        return true;
    }
    return SheetCells::eventFilter(watched, event);
}

EntryTable::EntryTable(const QString& name, QWidget* parent) : SheetTable(name, parent) {
    auto* cells = new EntryCells(this);
    setItemDelegate(cells);
    connect(cells, &EntryCells::enterPressed, this, &EntryTable::goDown);
}

void EntryTable::keyPressEvent(QKeyEvent* event) {
    if (isPlainEnter(*event) && state() != QAbstractItemView::EditingState) {
        goDown();
        return;
    }
    SheetTable::keyPressEvent(event);
}

void EntryTable::goDown() {
    const QModelIndex now = currentIndex();
    if (now.row() + 1 >= model()->rowCount()) {
        Q_EMIT bottomReached();
        return;
    }
    setCurrentIndex(model()->index(now.row() + 1, 0));
    setFocus(Qt::OtherFocusReason);
}

} // namespace pipwright::ui
