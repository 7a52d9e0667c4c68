#pragma once

#include "ui/widgets/plain_table.h"

namespace pipwright::ui {

/// Cells that are typed one after the other: Tab and Enter keep what was typed and go on, Shift+Tab
/// goes back, Escape keeps it too and leaves the cell.
class SheetCells : public PaddedCells {
    Q_OBJECT

  public:
    using PaddedCells::PaddedCells;
    QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                          const QModelIndex& index) const override;

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
};

/// The table a sheet is typed into.
class SheetTable : public PlainTable {
    Q_OBJECT

  public:
    explicit SheetTable(const QString& name, QWidget* parent = nullptr);
    /// Keeps what stands in an open cell.
    void keepOpenCell();

  Q_SIGNALS:
    /// Escape while no cell is open.
    void leftAlone();

  protected:
    bool event(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
};

} // namespace pipwright::ui
