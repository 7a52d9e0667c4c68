#include "ui/tasting/sitting_list_model.h"

#include "ui/widgets/number_text.h"

#include <algorithm>
#include <unordered_set>

namespace pipwright::ui {

SittingListModel::SittingListModel(const Store& store, QObject* parent)
    : QAbstractTableModel(parent), m_store(store) {}

void SittingListModel::setLines(std::vector<SittingLine> lines) {
    beginResetModel();
    m_lines = std::move(lines);
    m_counts.clear();
    endResetModel();
}

void SittingListModel::countAnew() {
    m_counts.clear();
    if (!m_lines.empty()) {
        Q_EMIT dataChanged(index(0, what), index(rowCount() - 1, tasters));
    }
}

std::optional<int> SittingListModel::rowOf(TastingId tasting) const {
    for (std::size_t row = 0; row < m_lines.size(); ++row) {
        const auto& ids = m_lines[row].tastings;
        if (std::find(ids.begin(), ids.end(), tasting) != ids.end()) {
            return static_cast<int>(row);
        }
    }
    return std::nullopt;
}

int SittingListModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_lines.size());
}

int SittingListModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : columnTotal;
}

SittingListModel::Counts SittingListModel::countsOf(const SittingLine& line) const {
    const Uuid key = line.tastings.front().uuid;
    if (const auto found = m_counts.find(key); found != m_counts.end()) {
        return found->second;
    }
    Counts counts;
    std::unordered_set<Uuid> people;
    for (const TastingId tasting : line.tastings) {
        const auto fruit = m_store.where<Lot>("tasting", tasting.uuid);
        if (!fruit) {
            break;
        }
        counts.lots += static_cast<int>(fruit->size());
        for (const Lot& lot : *fruit) {
            if (const auto scores = m_store.where<Score>("lot", lot.id.uuid)) {
                for (const Score& score : *scores) {
                    if (score.voidReason.empty()) {
                        people.insert(score.taster.uuid);
                    }
                }
            }
        }
    }
    counts.tasters = static_cast<int>(people.size());
    return m_counts[key] = counts;
}

QString SittingListModel::words(const SittingLine& line, int column) const {
    switch (column) {
    case date:
        return dateText(line.date);
    case what:
        if (line.bites) {
            return tr("%n bite(s) in the row", nullptr, static_cast<int>(line.tastings.size()));
        }
        return line.title.empty() ? tr("sitting") : QString::fromStdString(line.title);
    case lots:
        return QString::number(countsOf(line).lots);
    case tasters:
        return QString::number(countsOf(line).tasters);
    case sight:
        return sightWord(line.sight);
    default:
        return {};
    }
}

QString SittingListModel::countWords(const SittingLine& line) const {
    const Counts counts = countsOf(line);
    return tr("%1, %2, %3", "lots, tasters, how tasted")
        .arg(tr("%n lot(s)", nullptr, counts.lots), tr("%n taster(s)", nullptr, counts.tasters),
             sightWord(line.sight));
}

QVariant SittingListModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) {
        return {};
    }
    const SittingLine& one = line(index.row());
    if (role == Qt::DisplayRole) {
        return words(one, index.column());
    }
    if (index.column() == what && role == kTitleAndCounts) {
        return dateText(one.date) + QStringLiteral(" · ") + words(one, what) + QLatin1Char('\n') +
               countWords(one);
    }
    if (index.column() == what && role == Qt::AccessibleTextRole) {
        return QStringLiteral("%1, %2, %3")
            .arg(dateText(one.date), words(one, what), countWords(one));
    }
    if (role == Qt::TextAlignmentRole) {
        const bool number = index.column() == lots || index.column() == tasters;
        return QVariant(Qt::AlignVCenter | (number ? Qt::AlignRight : Qt::AlignLeft));
    }
    if (role == Qt::ToolTipRole && index.column() <= what) {
        return tr("%1, %2").arg(dateWithWeekText(one.date), words(one, what));
    }
    return {};
}

QVariant SittingListModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) {
        return {};
    }
    if (role == Qt::TextAlignmentRole) {
        const bool number = section == lots || section == tasters;
        return QVariant(Qt::AlignVCenter | (number ? Qt::AlignRight : Qt::AlignLeft));
    }
    if (role != Qt::DisplayRole) {
        return {};
    }
    switch (section) {
    case date:
        return tr("date");
    case what:
        return tr("sitting");
    case lots:
        return tr("lots");
    case tasters:
        return tr("tasters");
    default:
        return tr("tasted");
    }
}

QString sightWord(Sight sight) {
    switch (sight) {
    case Sight::blind:
        return SittingListModel::tr("blind");
    case Sight::sighted:
        return SittingListModel::tr("sighted");
    case Sight::unknown:
        break;
    }
    return SittingListModel::tr("not known");
}

} // namespace pipwright::ui
