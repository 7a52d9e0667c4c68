#pragma once

#include "ui/rows/map_selection.h"
#include "ui/rows/tree_table_model.h"

#include <QTableView>

namespace pipwright::ui {

/// The trees of the map as a list: sortable, filtered like the map, copied as a table.
class TreeListView : public QTableView {
    Q_OBJECT

  public:
    explicit TreeListView(QWidget* parent = nullptr);

    /// Columns widen to what they hold; sorting and the current tree stay.
    void setTrees(ScenePointer scene, std::vector<TreeColumn> columns);
    void setShown(const CellSet& shown);
    [[nodiscard]] const TreeTableModel& trees() const { return *m_model; }

    [[nodiscard]] std::optional<Uuid> currentTree() const;
    [[nodiscard]] MapSelection selectedCells() const;
    /// Makes the tree the current and only selected one. False when it is not in the list.
    bool goTo(const Uuid& tree);
    void setSelection(const MapSelection& selection);
    using QTableView::setSelection;

    /// The selected trees (all when fewer than two are selected) with a header, to the clipboard.
    void copyAsTable() const;

  Q_SIGNALS:
    void currentTreeChanged(const pipwright::Uuid& tree);
    void treeSelectionChanged();
    void treeActivated(const pipwright::Uuid& tree);
    void findRequested(const QString& text);

  protected:
    void keyPressEvent(QKeyEvent* event) override;
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;
    void selectionChanged(const QItemSelection& selected,
                          const QItemSelection& deselected) override;

  private:
    void withoutTelling(const std::function<void()>& change);

    TreeTableModel* m_model;
    bool m_quiet = false;
};

} // namespace pipwright::ui
