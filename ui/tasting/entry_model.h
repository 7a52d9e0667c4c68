#pragma once

#include "core/evaluation/planned_table.h"
#include "core/orchard/typed_score.h"

#include <QAbstractTableModel>

namespace pipwright::ui {

/// One taster's sheet as it is typed in: his codes down in his order, liking and words across. What
/// is typed goes into the book line by line.
class EntryModel : public QAbstractTableModel {
    Q_OBJECT

  public:
    enum Column { liking, words, columnTotal };

    using QAbstractTableModel::QAbstractTableModel;

    /// The same sheet as before keeps its cells; another one begins anew.
    void setSheet(TasterSheet sheet);
    [[nodiscard]] const TasterSheet& sheet() const { return m_sheet; }
    [[nodiscard]] const SheetLine& line(int row) const {
        return m_sheet.lines[static_cast<std::size_t>(row)];
    }
    /// The first line on which nothing stands; the last when there is none.
    [[nodiscard]] int firstOpen() const;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;
    QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;
    QVariant headerData(int section, Qt::Orientation orientation,
                        int role = Qt::DisplayRole) const override;

  Q_SIGNALS:
    /// What was typed cannot be read.
    void refused(const pipwright::Problem& problem);
    /// The line shall say this.
    void written(int row, const pipwright::TypedScore& typed);

  private:
    TasterSheet m_sheet;
};

} // namespace pipwright::ui
