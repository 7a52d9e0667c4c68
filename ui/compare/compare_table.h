#pragma once

#include "ui/compare/compare_model.h"

#include <QTableView>

namespace pipwright::ui {

class CompareCells;

/// The columns of Compare. Arrows go from cell to cell, Enter to the tree, Delete takes a column
/// out, Ctrl and an arrow moves it; a head can be dragged too.
class CompareTable : public QTableView {
    Q_OBJECT

  public:
    explicit CompareTable(CompareModel& model, QWidget* parent = nullptr);

    /// Widths and heights anew, after another comparison.
    void fit();
    /// Moves sideways until the whole column can be seen.
    void showColumnWhole(int column);

  Q_SIGNALS:
    void treeWanted(pipwright::Index genotype);
    /// The columns as they should stand now.
    void orderWanted(const std::vector<pipwright::Index>& genotypes);

  protected:
    void keyPressEvent(QKeyEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

  private:
    void takeOut(int column);
    void move(int column, int by);
    void goTo(const QModelIndex& index);

    CompareModel& m_model;
    CompareCells* m_cells;
};

} // namespace pipwright::ui
