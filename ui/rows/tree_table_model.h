#pragma once

#include "ui/rows/map_scene.h"

#include <QAbstractTableModel>
#include <QString>
#include <QVariant>

#include <functional>
#include <vector>

namespace pipwright::ui {

/// A column of the list of trees. The value is a number (double or int) or text; an invalid value
/// is unknown and sorts last, whichever way.
struct TreeColumn {
    QString key;
    QString title; ///< with the unit
    std::function<QVariant(CellIndex)> value;
    int decimals = -1;      ///< digits after the point of numbers; -1 for as many as needed
    bool isNumeric = false; ///< the title stands at the right, over the figures
};

/// Code, place, tape distance, stage, state, identity: what the scene itself knows.
std::vector<TreeColumn> sceneColumns(ScenePointer scene);

/// The trees of the map as a table, one row a tree. Sorts itself, and hides what a filter hides.
class TreeTableModel : public QAbstractTableModel {
    Q_OBJECT

  public:
    explicit TreeTableModel(QObject* parent = nullptr);

    void setTrees(ScenePointer scene, std::vector<TreeColumn> columns);
    /// What a filter lets through; empty shows all.
    void setShown(const CellSet& shown);

    [[nodiscard]] CellIndex cellOf(int row) const { return m_order[static_cast<std::size_t>(row)]; }
    [[nodiscard]] std::optional<int> rowOf(CellIndex cell) const;
    [[nodiscard]] const MapScene& scene() const { return *m_scene; }
    /// Header and these rows as tab-separated lines (UTF-8 text; tabs and line ends within a
    /// value become blanks).
    [[nodiscard]] QString asTable(const std::vector<int>& rows) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    QVariant headerData(int section, Qt::Orientation orientation,
                        int role = Qt::DisplayRole) const override;
    void sort(int column, Qt::SortOrder order = Qt::AscendingOrder) override;

  private:
    void collect();
    void order();
    [[nodiscard]] QString written(const QVariant& value, int decimals) const;

    ScenePointer m_scene;
    std::vector<TreeColumn> m_columns;
    CellSet m_shown;
    std::vector<CellIndex> m_order;
    std::vector<int> m_rowOf; ///< of each cell, or -1
    int m_sortColumn = -1;
    Qt::SortOrder m_sortOrder = Qt::AscendingOrder;
};

} // namespace pipwright::ui
