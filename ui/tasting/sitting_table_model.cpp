#include "ui/tasting/sitting_table_model.h"

#include "ui/book/orchard_words.h"
#include "ui/widgets/number_text.h"

#include <algorithm>

namespace pipwright::ui {

namespace {

TypedScore typedOf(const Score& score) {
    return {score.liking, score.verdict, score.words};
}

QString likingText(double liking) {
    return numberText(liking, liking == static_cast<int>(liking) ? 0 : 1);
}

/// "7.5 · watch it · crisp, sharp"
QString scoreWords(const Score& score) {
    QString text = score.liking ? likingText(*score.liking) : QString();
    if (score.verdict != Verdict::unknown) {
        text += (text.isEmpty() ? QString() : QStringLiteral(" · ")) + verdictWord(score.verdict);
    }
    if (!score.words.empty()) {
        text += (text.isEmpty() ? QString() : QStringLiteral(" · ")) +
                QString::fromStdString(score.words);
    }
    return text;
}

} // namespace

void SittingTableModel::setSitting(OrchardView::Pointer view, Sitting sitting) {
    beginResetModel();
    m_view = std::move(view);
    m_sitting = std::move(sitting);
    endResetModel();
}

std::optional<PersonId> SittingTableModel::tasterAt(int column) const {
    const int taster = column - firstTaster;
    if (taster < 0 || taster >= tasterTotal()) {
        return std::nullopt;
    }
    return m_sitting.tasters[static_cast<std::size_t>(taster)];
}

const Score* SittingTableModel::scoreAt(const QModelIndex& index) const {
    const auto taster = index.isValid() ? tasterAt(index.column()) : std::nullopt;
    if (!taster) {
        return nullptr;
    }
    const auto& scores = lot(index.row()).scores;
    const auto found = std::find_if(scores.begin(), scores.end(), [&taster](const Score& score) {
        return score.taster == *taster;
    });
    return found == scores.end() ? nullptr : &*found;
}

QString SittingTableModel::nameOfScore(const QModelIndex& index) const {
    const auto taster = tasterAt(index.column());
    return QStringLiteral("Score of %1 for %2")
        .arg(personWords(*m_view, taster),
             QString::fromStdString(fruitName(*m_view, lot(index.row()).lot)));
}

int SittingTableModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_sitting.lots.size());
}

int SittingTableModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() || !m_view ? 0 : firstTaster + tasterTotal() + 3;
}

Qt::ItemFlags SittingTableModel::flags(const QModelIndex& index) const {
    const Qt::ItemFlags plain = QAbstractTableModel::flags(index);
    return tasterAt(index.column()) ? plain | Qt::ItemIsEditable : plain;
}

QString SittingTableModel::likingWords(const TastedLot& lot, int column) const {
    const auto liking = likingOf(lot);
    const int which = column - firstTaster - tasterTotal();
    if (!liking) {
        return which == 2 ? QStringLiteral("0") : QStringLiteral("–");
    }
    if (which == 0) {
        return numberText(liking->mean, 1);
    }
    if (which == 1) {
        return liking->n == 1
                   ? QStringLiteral("–")
                   : tr("%1 to %2").arg(likingText(liking->low), likingText(liking->high));
    }
    return QString::number(liking->n);
}

QString SittingTableModel::words(const QModelIndex& index) const {
    const TastedLot& one = lot(index.row());
    switch (index.column()) {
    case fruit:
        return QString::fromStdString(fruitName(*m_view, one.lot));
    case condition:
        return conditionWords(one.lot);
    case fair:
        return fairnessWords(one.fairness);
    default:
        break;
    }
    if (tasterAt(index.column())) {
        const Score* score = scoreAt(index);
        return score == nullptr ? QString() : scoreWords(*score);
    }
    return likingWords(one, index.column());
}

QVariant SittingTableModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) {
        return {};
    }
    const Score* score = scoreAt(index);
    switch (role) {
    case Qt::DisplayRole:
        return words(index);
    case Qt::EditRole:
        return score == nullptr ? QString() : QString::fromStdString(typedText(typedOf(*score)));
    case Qt::ToolTipRole:
        return words(index);
    case Qt::AccessibleTextRole: {
        const QString text = words(index);
        return text.isEmpty() ? tr("nothing written") : text;
    }
    case Qt::TextAlignmentRole: {
        const bool number = index.column() >= firstTaster + tasterTotal();
        return QVariant(Qt::AlignTop | (number ? Qt::AlignRight : Qt::AlignLeft));
    }
    default:
        return {};
    }
}

bool SittingTableModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (role != Qt::EditRole || !tasterAt(index.column())) {
        return false;
    }
    const auto typed = readTypedScore(value.toString().toStdString());
    if (!typed) {
        Q_EMIT refused(typed.problem());
        return false;
    }
    if (typed->empty()) {
        if (scoreAt(index) != nullptr) {
            Q_EMIT emptied(index);
        }
        return false;
    }
    Q_EMIT corrected(index, *typed);
    return true;
}

QVariant SittingTableModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || !m_view) {
        return {};
    }
    const bool number = section >= firstTaster + tasterTotal();
    if (role == Qt::TextAlignmentRole) {
        return QVariant(Qt::AlignVCenter | (number ? Qt::AlignRight : Qt::AlignLeft));
    }
    if (role != Qt::DisplayRole) {
        return {};
    }
    switch (section) {
    case fruit:
        return tr("fruit");
    case condition:
        return tr("condition");
    case fair:
        return tr("fair test?");
    default:
        break;
    }
    if (const auto taster = tasterAt(section)) {
        return personWords(*m_view, taster);
    }
    switch (section - firstTaster - tasterTotal()) {
    case 0:
        return tr("mean of 9");
    case 1:
        return tr("range");
    default:
        return tr("n");
    }
}

} // namespace pipwright::ui
