#pragma once

#include "core/evaluation/orchard_view.h"

#include <QAbstractTableModel>

#include <vector>

namespace pipwright::ui {

/// A cross and what became of it, counted over its seedlings in the book.
struct CrossLine {
    Cross cross;
    std::string parents;
    std::string species;
    int seedlings = 0;
    int growing = 0; ///< seedlings with a growing plant
    int fruited = 0; ///< seedlings that ever bore
    int tasted = 0;  ///< seedlings with a fair lot
    int kept = 0;    ///< watched or further
    int culled = 0;
};

std::vector<CrossLine> crossLines(const OrchardView& view);

/// The crosses as a table, one a row; sorts itself.
class CrossTableModel : public QAbstractTableModel {
    Q_OBJECT

  public:
    using QAbstractTableModel::QAbstractTableModel;

    void setLines(std::vector<CrossLine> lines);
    [[nodiscard]] const CrossLine& line(int row) const {
        return m_lines[static_cast<std::size_t>(row)];
    }

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    QVariant headerData(int section, Qt::Orientation orientation,
                        int role = Qt::DisplayRole) const override;
    void sort(int column, Qt::SortOrder order = Qt::AscendingOrder) override;

  private:
    std::vector<CrossLine> m_lines;
};

} // namespace pipwright::ui
