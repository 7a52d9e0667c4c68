#include "ui/merit/merit_filter.h"

#include "ui/merit/merit_table_model.h"

namespace pipwright::ui {

MeritOrder::MeritOrder(MeritTableModel& ranking, QObject* parent)
    : QSortFilterProxyModel(parent), m_ranking(ranking) {
    setSourceModel(&ranking);
    setSortRole(MeritTableModel::kSortRole);
}

void MeritOrder::setFilter(const MeritFilter& filter) {
    if (filter == m_filter) {
        return;
    }
    m_filter = filter;
    invalidate(); // the order changes with it too
}

bool MeritOrder::filterAcceptsRow(int row, const QModelIndex&) const {
    const MeritRow& line = m_ranking.row(row);
    const GenotypeEntry& entry = m_ranking.report()->view->genotypes()[line.genotype];
    return (m_filter.slot.isEmpty() || m_ranking.slotText(*line.verdict) == m_filter.slot) &&
           (m_filter.family.isEmpty() || m_ranking.familyText(line.genotype) == m_filter.family) &&
           (!m_filter.species || entry.species == m_filter.species) &&
           (!m_filter.stage || line.verdict->stage == *m_filter.stage) &&
           (!m_filter.suggestion || line.verdict->suggestion == *m_filter.suggestion) &&
           (!m_filter.neverFairOnly || line.neverFair);
}

bool MeritOrder::lessThan(const QModelIndex& left, const QModelIndex& right) const {
    const QVariant one = left.data(MeritTableModel::kSortRole);
    const QVariant other = right.data(MeritTableModel::kSortRole);
    if (one == other) {
        return left.data(MeritTableModel::kUrgencyRole).toULongLong() <
               right.data(MeritTableModel::kUrgencyRole).toULongLong();
    }
    return QSortFilterProxyModel::lessThan(left, right);
}

} // namespace pipwright::ui
