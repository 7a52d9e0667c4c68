#pragma once

#include "core/evaluation/merit/verdict.h"
#include "core/orchard/words.h"

#include <QSortFilterProxyModel>
#include <QString>

#include <optional>

namespace pipwright::ui {

class MeritTableModel;

/// Which seedlings of the ranking are shown. Whatever is not set lets all through.
struct MeritFilter {
    QString slot;   ///< as MeritTableModel::slotText says it
    QString family; ///< as MeritTableModel::familyText says it
    std::optional<SpeciesId> species;
    std::optional<Stage> stage;
    std::optional<Suggestion> suggestion;
    bool neverFairOnly = false;

    bool operator==(const MeritFilter&) const = default;
};

/// The ranking, filtered and sorted. Those that never had a fair test are a list of their own, the
/// most urgent first.
class MeritOrder : public QSortFilterProxyModel {
    Q_OBJECT

  public:
    explicit MeritOrder(MeritTableModel& ranking, QObject* parent = nullptr);

    [[nodiscard]] const MeritFilter& filter() const { return m_filter; }
    void setFilter(const MeritFilter& filter);

  protected:
    [[nodiscard]] bool filterAcceptsRow(int row, const QModelIndex& parent) const override;
    [[nodiscard]] bool lessThan(const QModelIndex& left, const QModelIndex& right) const override;

  private:
    MeritTableModel& m_ranking;
    MeritFilter m_filter;
};

} // namespace pipwright::ui
