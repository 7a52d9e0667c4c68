#pragma once

#include "core/plan/sitting_plan.h"
#include "core/units/result.h"

#include <QScrollArea>

#include <optional>

class QStandardItemModel;

namespace pipwright::ui {

class FlowText;
class PlainTable;

/// A plan as it would be served: what asks for care, the codes in each taster's order, and why it
/// was done so.
class PlanView : public QScrollArea {
    Q_OBJECT

  public:
    explicit PlanView(QWidget* parent = nullptr);

    void showPlan(const SittingPlan& plan);
    /// There is no plan yet; the problem says why, if there is one.
    void showNone(const std::optional<Problem>& problem);

    [[nodiscard]] PlainTable* orders() const { return m_orders; }
    /// Everything said about the plan.
    [[nodiscard]] QString remarks() const;

  private:
    FlowText* m_warnings;
    PlainTable* m_orders;
    QStandardItemModel* m_cells;
    FlowText* m_reasons;
};

} // namespace pipwright::ui
