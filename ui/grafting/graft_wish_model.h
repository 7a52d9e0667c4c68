#pragma once

#include "core/evaluation/living_copies.h"
#include "core/orchard/grafts.h"

#include <QAbstractTableModel>

namespace pipwright::ui {

/// The graft wishes with what is alive of each clone. Number, reason and state can be changed in
/// their cells.
class GraftWishModel : public QAbstractTableModel {
    Q_OBJECT

  public:
    enum Column { clone, from, number, reason, wished, person, state, copies, columnTotal };
    static constexpr int kSortRole = Qt::UserRole;
    static constexpr int kMostGrafts = 9999; ///< of one wish

    using QAbstractTableModel::QAbstractTableModel;

    void setWishes(OrchardView::Pointer view, std::vector<GraftWish> wishes);
    [[nodiscard]] const GraftWish& wish(int row) const {
        return m_lines[static_cast<std::size_t>(row)].wish;
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
    void changed(const pipwright::GraftWish& before, const pipwright::GraftWish& after);
    void refused(const pipwright::Problem& problem);

  private:
    struct Line {
        GraftWish wish;
        LivingCopies copies;
    };
    [[nodiscard]] QString words(const Line& line, int column) const;

    OrchardView::Pointer m_view;
    std::vector<Line> m_lines;
};

} // namespace pipwright::ui
