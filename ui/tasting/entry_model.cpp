#include "ui/tasting/entry_model.h"

#include "ui/book/orchard_words.h"

#include <algorithm>

namespace pipwright::ui {

namespace {

TypedScore typedOfLine(const SheetLine& line) {
    return {line.score.liking, line.score.verdict, line.score.words};
}

/// The liking with its verdict's mark, as it is typed: "7.5 +".
QString numberAndMark(const SheetLine& line) {
    TypedScore typed = typedOfLine(line);
    typed.words.clear();
    return QString::fromStdString(typedText(typed));
}

} // namespace

void EntryModel::setSheet(TasterSheet sheet) {
    const bool same =
        sheet.taster == m_sheet.taster &&
        std::equal(sheet.lines.begin(), sheet.lines.end(), m_sheet.lines.begin(),
                   m_sheet.lines.end(), [](const SheetLine& one, const SheetLine& other) {
                       return one.score.id == other.score.id;
                   });
    if (same) { // an open cell stays open
        m_sheet = std::move(sheet);
        if (rowCount() > 0) {
            Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, columnTotal - 1));
            Q_EMIT headerDataChanged(Qt::Vertical, 0, rowCount() - 1);
        }
        return;
    }
    beginResetModel();
    m_sheet = std::move(sheet);
    endResetModel();
}

int EntryModel::firstOpen() const {
    for (int row = 0; row < rowCount(); ++row) {
        if (!isWritten(line(row).score)) {
            return row;
        }
    }
    return std::max(0, rowCount() - 1);
}

int EntryModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_sheet.lines.size());
}

int EntryModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : columnTotal;
}

Qt::ItemFlags EntryModel::flags(const QModelIndex& index) const {
    return QAbstractTableModel::flags(index) | Qt::ItemIsEditable;
}

QVariant EntryModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) {
        return {};
    }
    const SheetLine& one = line(index.row());
    const QString text =
        index.column() == liking ? numberAndMark(one) : QString::fromStdString(one.score.words);
    switch (role) {
    case Qt::DisplayRole:
    case Qt::EditRole:
        return text;
    case Qt::ToolTipRole:
        return headerData(index.column(), Qt::Horizontal, Qt::ToolTipRole);
    case Qt::AccessibleTextRole:
        return text.isEmpty() ? tr("empty") : text;
    default:
        return {};
    }
}

bool EntryModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (role != Qt::EditRole || !index.isValid()) {
        return false;
    }
    TypedScore after = typedOfLine(line(index.row()));
    if (index.column() == words) {
        after.words = value.toString().trimmed().toStdString();
    } else {
        const auto typed = readTypedScore(value.toString().toStdString());
        if (!typed) {
            Q_EMIT refused(typed.problem());
            return false;
        }
        after.liking = typed->liking;
        after.verdict = typed->verdict;
        if (!typed->words.empty()) { // all in one cell: "7.5 + crisp"
            after.words = typed->words;
        }
    }
    Q_EMIT written(index.row(), after);
    return true;
}

QVariant EntryModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation == Qt::Vertical) {
        if (role != Qt::DisplayRole || section >= rowCount()) {
            return {};
        }
        const SheetLine& one = line(section);
        const QString rank = one.score.rank ? tr("  (best: %1)").arg(*one.score.rank) : QString();
        return QStringLiteral("%1   %2%3")
            .arg(section + 1)
            .arg(QString::fromStdString(one.code), rank);
    }
    if (role == Qt::ToolTipRole) {
        return section == liking
                   ? tr("liking 1 to 9 (7, 7.5 or 7h); a verdict and words may follow: 7.5 + crisp")
                   : tr("what stands on the sheet, in the taster's own words; may stay empty");
    }
    if (role != Qt::DisplayRole) {
        return {};
    }
    return section == liking ? tr("liking, 1 to 9") : tr("words");
}

} // namespace pipwright::ui
