#pragma once

#include "ui/tasting/sheet_table.h"

namespace pipwright::ui {

/// Cells of a sheet that is typed down: Enter goes to the liking of the next line, Tab to the words
/// beside and on to the next line.
class EntryCells : public SheetCells {
    Q_OBJECT

  public:
    using SheetCells::SheetCells;

  Q_SIGNALS:
    void enterPressed();

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
};

class EntryTable : public SheetTable {
    Q_OBJECT

  public:
    explicit EntryTable(const QString& name, QWidget* parent = nullptr);

  Q_SIGNALS:
    /// Enter on the last line.
    void bottomReached();

  protected:
    void keyPressEvent(QKeyEvent* event) override;

  private:
    void goDown();
};

} // namespace pipwright::ui
