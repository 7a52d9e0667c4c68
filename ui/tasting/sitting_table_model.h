#pragma once

#include "core/evaluation/sitting.h"
#include "core/orchard/typed_score.h"

#include <QAbstractTableModel>

namespace pipwright::ui {

/// A sitting as lots by tasters. Scores can be put right in their cells.
class SittingTableModel : public QAbstractTableModel {
    Q_OBJECT

  public:
    /// Columns before the tasters'; behind them stand mean, range and n.
    enum Column { fruit, condition, fair, firstTaster };

    using QAbstractTableModel::QAbstractTableModel;

    void setSitting(OrchardView::Pointer view, Sitting sitting);
    [[nodiscard]] const Sitting& sitting() const { return m_sitting; }
    [[nodiscard]] const TastedLot& lot(int row) const {
        return m_sitting.lots[static_cast<std::size_t>(row)];
    }
    /// The taster of a column; nothing for the other columns.
    [[nodiscard]] std::optional<PersonId> tasterAt(int column) const;
    /// The score in a cell; null when there is none.
    [[nodiscard]] const Score* scoreAt(const QModelIndex& index) const;
    /// "Score of Mara Thorne for AT17-014"
    [[nodiscard]] QString nameOfScore(const QModelIndex& index) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;
    QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;
    QVariant headerData(int section, Qt::Orientation orientation,
                        int role = Qt::DisplayRole) const override;

  Q_SIGNALS:
    /// What was typed into a cell cannot be read.
    void refused(const pipwright::Problem& problem);
    /// The cell shall hold this instead of what it holds.
    void corrected(const QModelIndex& index, const pipwright::TypedScore& typed);
    /// The cell was emptied: the score shall no longer count.
    void emptied(const QModelIndex& index);

  private:
    [[nodiscard]] int tasterTotal() const { return static_cast<int>(m_sitting.tasters.size()); }
    [[nodiscard]] QString words(const QModelIndex& index) const;
    [[nodiscard]] QString likingWords(const TastedLot& lot, int column) const;

    OrchardView::Pointer m_view;
    Sitting m_sitting;
};

} // namespace pipwright::ui
