#pragma once

#include "core/evaluation/tree_life.h"
#include "core/history/graft_edits.h"

#include <QAbstractTableModel>

namespace pipwright::ui {

/// The graft orders with what was alive at each look. A look is typed into its cell: "4 frost".
class GraftOrderModel : public QAbstractTableModel {
    Q_OBJECT

  public:
    enum Column { date, clone, method, number, onto, weeks, midsummer, leafFall, columnTotal };

    using QAbstractTableModel::QAbstractTableModel;

    void setOrders(OrchardView::Pointer view, std::vector<GraftedOrder> orders);
    [[nodiscard]] const GraftedOrder& order(int row) const {
        return m_orders[static_cast<std::size_t>(row)];
    }
    [[nodiscard]] std::string codeOf(int row) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;
    QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;
    QVariant headerData(int section, Qt::Orientation orientation,
                        int role = Qt::DisplayRole) const override;

  Q_SIGNALS:
    void checked(int row, pipwright::GraftCheckpoint checkpoint,
                 const pipwright::GraftCount& count);
    void refused(const pipwright::Problem& problem);

  private:
    [[nodiscard]] QString words(const GraftedOrder& order, int column) const;

    OrchardView::Pointer m_view;
    std::vector<GraftedOrder> m_orders;
};

/// The newest check of that name; null when nobody has looked.
const GraftCheck* checkAt(const GraftedOrder& order, GraftCheckpoint checkpoint);

} // namespace pipwright::ui
