#pragma once

#include "core/plan/sitting_plan.h"
#include "ui/tasting/sheet_model.h"

#include <set>
#include <vector>

namespace pipwright::ui {

/// The lots of a sitting that is being planned: fruit and condition by thumb letters, and what each
/// is there for. The benchmark stands once here and is served twice.
class PlanLotsModel : public SheetModel {
    Q_OBJECT

  public:
    explicit PlanLotsModel(ViewSource view, QObject* parent = nullptr);

    [[nodiscard]] LotRole roleOf(int row) const;
    /// There is one benchmark and one repeat at most: the row that was it before is an ordinary
    /// one.
    void setRole(int row, LotRole role);
    /// The row with this role; nothing when there is none.
    [[nodiscard]] std::optional<int> rowWith(LotRole role) const;
    /// Appends a lot as if it had been typed.
    void addRow(const SheetRow& row, LotRole role);
    /// Fruit of a plant, by code, or by row and place where the code means another one.
    void addPlant(Index plant);
    /// The plants whose fruit is on the list.
    [[nodiscard]] std::set<Index> plants() const;
    void clear();

    /// What can be read so far. `fruit` names it where it may be known.
    [[nodiscard]] std::optional<LotToServe> lotToServe(int row) const;
    /// The genotypes of the rows that were chosen, for proposals.
    [[nodiscard]] std::vector<Index> chosenGenotypes() const;

    QVariant headerData(int section, Qt::Orientation orientation,
                        int role = Qt::DisplayRole) const override;
    bool removeRows(int row, int count, const QModelIndex& parent = {}) override;

  private:
    ViewSource m_planView;
    std::vector<LotRole> m_roles; ///< may be shorter than the rows: the others are chosen
};

/// A lot that was kept, as its letters would be typed.
SheetRow sheetRowOf(const QString& fruit, const LotCondition& condition);

} // namespace pipwright::ui
