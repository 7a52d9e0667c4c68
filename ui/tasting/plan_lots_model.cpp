#include "ui/tasting/plan_lots_model.h"

#include "core/evaluation/sitting.h"
#include "core/evaluation/typed_tree.h"
#include "core/orchard/storage_path.h"
#include "ui/book/orchard_words.h"

#include <algorithm>

namespace pipwright::ui {

PlanLotsModel::PlanLotsModel(ViewSource view, QObject* parent)
    : SheetModel(view, parent), m_planView(std::move(view)) {}

LotRole PlanLotsModel::roleOf(int row) const {
    const auto at = static_cast<std::size_t>(row);
    return at < m_roles.size() ? m_roles[at] : LotRole::chosen;
}

void PlanLotsModel::setRole(int row, LotRole role) {
    if (role != LotRole::chosen) {
        std::replace(m_roles.begin(), m_roles.end(), role, LotRole::chosen);
    }
    if (static_cast<std::size_t>(row) >= m_roles.size()) {
        m_roles.resize(static_cast<std::size_t>(row) + 1, LotRole::chosen);
    }
    m_roles[static_cast<std::size_t>(row)] = role;
    Q_EMIT headerDataChanged(Qt::Vertical, 0, rowCount() - 1);
    Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
}

std::optional<int> PlanLotsModel::rowWith(LotRole role) const {
    for (int row = 0; row < rowCount(); ++row) {
        if (roleOf(row) == role && !rows()[static_cast<std::size_t>(row)].empty()) {
            return row;
        }
    }
    return std::nullopt;
}

void PlanLotsModel::addRow(const SheetRow& row, LotRole role) {
    std::vector<SheetRow> all = rows();
    while (!all.empty() && all.back().empty()) {
        all.pop_back();
    }
    m_roles.resize(all.size(), LotRole::chosen);
    if (role != LotRole::chosen) {
        std::replace(m_roles.begin(), m_roles.end(), role, LotRole::chosen);
    }
    m_roles.push_back(role);
    all.push_back(row);
    setRows(std::move(all));
    Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
}

void PlanLotsModel::addPlant(Index plant) {
    const auto view = m_planView();
    std::string typed = view->plantCode(plant);
    const auto meant = treeNamed(*view, typed);
    if (!meant || meant->plant != plant) {
        typed = view->placeText(plant, false);
    }
    SheetRow row;
    row.fruit = QString::fromStdString(typed);
    addRow(row, LotRole::chosen);
}

std::set<Index> PlanLotsModel::plants() const {
    const auto view = m_planView();
    std::set<Index> all;
    for (int row = 0; row < rowCount(); ++row) {
        const auto lot = lotAt(row);
        if (const auto plant = lot && lot->plant ? view->plant(*lot->plant) : std::nullopt) {
            all.insert(*plant);
        }
    }
    return all;
}

void PlanLotsModel::clear() {
    m_roles.clear();
    setRows({});
    Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
}

std::optional<LotToServe> PlanLotsModel::lotToServe(int row) const {
    if (rows()[static_cast<std::size_t>(row)].fruit.trimmed().isEmpty()) {
        return std::nullopt;
    }
    const auto served = lotAt(row);
    if (!served) {
        return std::nullopt;
    }
    LotToServe lot;
    lot.plant = served->plant;
    lot.claimedGenotype = served->claimedGenotype;
    lot.source = served->source;
    lot.hemisphere = served->hemisphere;
    lot.condition = served->condition;
    lot.role = roleOf(row);
    Lot named;
    named.plant = lot.plant;
    named.claimedGenotype = lot.claimedGenotype;
    named.source = lot.source;
    lot.name = fruitName(*m_planView(), named);
    return lot;
}

std::vector<Index> PlanLotsModel::chosenGenotypes() const {
    std::vector<Index> genotypes;
    const auto view = m_planView();
    for (int row = 0; row < rowCount(); ++row) {
        const auto fruitRead =
            fruitNamed(*view, rows()[static_cast<std::size_t>(row)].fruit.toStdString());
        if (fruitRead && fruitRead->tree.genotype && roleOf(row) == LotRole::chosen) {
            genotypes.push_back(*fruitRead->tree.genotype);
        }
    }
    return genotypes;
}

QVariant PlanLotsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation == Qt::Vertical && roleOf(section) != LotRole::chosen) {
        const bool benchmark = roleOf(section) == LotRole::benchmark;
        if (role == Qt::DisplayRole) {
            return benchmark ? tr("twice") : tr("again");
        }
        if (role == Qt::ToolTipRole) {
            return benchmark ? tr("the benchmark, hidden under two codes")
                             : tr("of an earlier sitting, for each taster's own noise");
        }
    }
    return SheetModel::headerData(section, orientation, role);
}

bool PlanLotsModel::removeRows(int row, int count, const QModelIndex& parent) {
    if (!SheetModel::removeRows(row, count, parent)) {
        return false;
    }
    const auto first = static_cast<std::size_t>(row);
    const auto last = std::min(m_roles.size(), static_cast<std::size_t>(row + count));
    if (first < last) {
        m_roles.erase(m_roles.begin() + row, m_roles.begin() + static_cast<std::ptrdiff_t>(last));
    }
    Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
    return true;
}

SheetRow sheetRowOf(const QString& fruit, const LotCondition& condition) {
    const auto word = [](auto value, QString (*wordOf)(decltype(value))) {
        return value == decltype(value)::unknown ? QString() : wordOf(value);
    };
    SheetRow row;
    row.fruit = fruit;
    row.origin = word(condition.origin, originWord);
    row.ripeness = word(condition.ripeness, ripenessWord);
    row.soundness = word(condition.soundness, soundnessWord);
    const StoredPath path{condition.storage, condition.daysOnCounter, condition.daysInFridge,
                          condition.daysInCellar, condition.storageTyped};
    row.path = QString::fromStdString(storagePathText(path));
    return row;
}

} // namespace pipwright::ui
