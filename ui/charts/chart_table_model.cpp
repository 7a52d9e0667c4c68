#include "ui/charts/chart_table_model.h"

#include <algorithm>

namespace pipwright::ui {

namespace {

// The columns of ChartSpec::toTable() that hold words.
constexpr std::size_t kSeries = 0;
constexpr std::size_t kLabel = 1;
constexpr std::size_t kUncertain = 8;
constexpr std::size_t kRemark = 9;

bool holdsWords(std::size_t column) {
    return column == kSeries || column == kLabel || column >= kUncertain;
}

} // namespace

void ChartTableModel::setSpec(const ChartSpec& spec) {
    beginResetModel();
    m_table = spec.toTable();
    m_headings = headings(spec);
    m_columns.clear();
    for (std::size_t column = 0; column < m_table.header.size(); ++column) {
        const auto speaks = [column](const auto& row) { return !row[column].empty(); };
        if (std::any_of(m_table.rows.begin(), m_table.rows.end(), speaks)) {
            m_columns.push_back(column);
        }
    }
    m_ids.clear();
    for (const auto& series : spec.series) {
        for (const auto& mark : series.marks) {
            m_ids.append(QString::fromStdString(mark.id));
        }
    }
    endResetModel();
}

int ChartTableModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_table.rows.size());
}

int ChartTableModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_columns.size());
}

QVariant ChartTableModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) {
        return {};
    }
    const std::size_t column = m_columns[static_cast<std::size_t>(index.column())];
    const std::string& cell = m_table.rows[static_cast<std::size_t>(index.row())][column];
    if (role == Qt::DisplayRole) {
        return column == kUncertain && !cell.empty() ? tr("uncertain")
                                                     : QString::fromStdString(cell);
    }
    if (role == Qt::TextAlignmentRole) {
        const auto side = holdsWords(column) ? Qt::AlignLeft : Qt::AlignRight;
        return static_cast<int>(side | Qt::AlignVCenter);
    }
    return {};
}

QVariant ChartTableModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (role != Qt::DisplayRole) {
        return {};
    }
    if (orientation == Qt::Vertical) {
        return section + 1;
    }
    return m_headings.at(static_cast<qsizetype>(m_columns[static_cast<std::size_t>(section)]));
}

QString ChartTableModel::idOf(int row) const {
    return m_ids.value(row);
}

QStringList ChartTableModel::headings(const ChartSpec& spec) const {
    const auto axis = [](const ChartAxis& one) {
        const QString title = QString::fromStdString(one.title);
        return one.unit.empty()
                   ? title
                   : QStringLiteral("%1 (%2)").arg(title, QString::fromStdString(one.unit));
    };
    QStringList words{tr("series"), tr("label")};
    for (const ChartAxis* one : {&spec.xAxis, &spec.yAxis}) {
        const QString title = axis(*one);
        words << title << tr("%1 from").arg(title) << tr("%1 to").arg(title);
    }
    return words << tr("sure?") << tr("remark");
}

} // namespace pipwright::ui
