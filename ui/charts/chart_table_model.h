#pragma once

#include "core/statistics/chart_spec.h"

#include <QAbstractTableModel>

namespace pipwright::ui {

/// The chart in rows, without the columns that say nothing in any row.
class ChartTableModel : public QAbstractTableModel {
    Q_OBJECT

  public:
    using QAbstractTableModel::QAbstractTableModel;

    void setSpec(const ChartSpec& spec);
    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;
    /// The id of the mark in the row; may be empty.
    [[nodiscard]] QString idOf(int row) const;

  private:
    [[nodiscard]] QStringList headings(const ChartSpec& spec) const;

    ChartTable m_table;
    QStringList m_headings;
    std::vector<std::size_t> m_columns; ///< shown columns of the table
    QStringList m_ids;
};

} // namespace pipwright::ui
