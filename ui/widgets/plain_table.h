#pragma once

#include <QStyledItemDelegate>
#include <QTableView>

namespace pipwright::ui {

/// Keeps the words of neighbouring columns apart.
class PaddedCells : public QStyledItemDelegate {
    Q_OBJECT

  public:
    using QStyledItemDelegate::QStyledItemDelegate;
    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option,
                                 const QModelIndex& index) const override;
};

/// A table as all our places show one: no grid, rows as high as their lines, Ctrl+C copies what is
/// chosen as a table for a spreadsheet, Enter says that a row or cell is wanted.
class PlainTable : public QTableView {
    Q_OBJECT

  public:
    /// `name` for a screen reader.
    explicit PlainTable(const QString& name, QWidget* parent = nullptr);

    /// Lines of text a row has room for; 1 at first.
    void setLinesPerRow(int lines);
    /// Fits the columns to their words, none wider than `widest` logical pixels.
    void fitColumns(int widest);
    /// The chosen rows, or all when fewer than two are, with the headings; cells parted by tabs.
    [[nodiscard]] QString asTable() const;
    void copyAsTable() const;

  Q_SIGNALS:
    /// Enter or double click on a cell that cannot be edited.
    void wanted(const QModelIndex& index);
    /// F2 on a cell that cannot be edited in place.
    void changeWanted(const QModelIndex& index);
    /// Delete on a cell.
    void removalWanted(const QModelIndex& index);

  protected:
    void keyPressEvent(QKeyEvent* event) override;
    void changeEvent(QEvent* event) override;

  private:
    void setRowHeight();

    int m_lines = 1;
};

} // namespace pipwright::ui
