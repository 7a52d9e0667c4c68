#include "ui/rows/tree_table_model.h"

#include "ui/rows/map_words.h"

#include <QCollator>
#include <QCoreApplication>
#include <QLocale>

#include <algorithm>
#include <numeric>

namespace pipwright::ui {

namespace {

struct TreeColumns {
    Q_DECLARE_TR_FUNCTIONS(pipwright::ui::TreeColumns)
};

bool isNumber(const QVariant& value) {
    switch (value.typeId()) {
    case QMetaType::Int:
    case QMetaType::LongLong:
    case QMetaType::Double:
    case QMetaType::Float:
        return true;
    default:
        return false;
    }
}

/// What a value is sorted by: numbers before words, the unknown last.
struct SortKey {
    int kind = 2; ///< 0 number, 1 word, 2 unknown
    double number = 0;
    std::optional<QCollatorSortKey> word;
};

} // namespace

std::vector<TreeColumn> sceneColumns(ScenePointer scene) {
    std::vector<TreeColumn> columns;
    columns.push_back({QStringLiteral("code"), TreeColumns::tr("Code"),
                       [scene](CellIndex cell) { return codeOf(*scene, cell); }});
    columns.push_back({QStringLiteral("row"), TreeColumns::tr("Row"), [scene](CellIndex cell) {
                           return QString::fromStdString(scene->rows()[scene->rowOf(cell)].name);
                       }});
    columns.push_back({QStringLiteral("place"), TreeColumns::tr("Place"),
                       [scene](CellIndex cell) { return QVariant(scene->cells()[cell].ordinal); }});
    columns.push_back({QStringLiteral("tape"), TreeColumns::tr("Tape (m)"),
                       [scene](CellIndex cell) {
                           const auto& tape = scene->cells()[cell].tapeMetres;
                           return tape ? QVariant(static_cast<double>(*tape)) : QVariant();
                       },
                       2, true});
    columns.push_back({QStringLiteral("stage"), TreeColumns::tr("Stage"),
                       [scene](CellIndex cell) { return stageWord(scene->cells()[cell].stage); }});
    columns.push_back({QStringLiteral("state"), TreeColumns::tr("State"),
                       [scene](CellIndex cell) { return stateWord(scene->cells()[cell].state); }});
    columns.push_back(
        {QStringLiteral("identity"), TreeColumns::tr("Identity"),
         [scene](CellIndex cell) { return identityWord(scene->cells()[cell].identity); }});
    return columns;
}

TreeTableModel::TreeTableModel(QObject* parent)
    : QAbstractTableModel(parent), m_scene(std::make_shared<const MapScene>()) {}

void TreeTableModel::setTrees(ScenePointer scene, std::vector<TreeColumn> columns) {
    beginResetModel();
    m_scene = scene ? std::move(scene) : std::make_shared<const MapScene>();
    m_columns = std::move(columns);
    m_shown.clear();
    if (m_sortColumn >= static_cast<int>(m_columns.size())) {
        m_sortColumn = -1;
    }
    collect();
    endResetModel();
}

void TreeTableModel::setShown(const CellSet& shown) {
    if (!shown.empty() && shown.size() != m_scene->cells().size()) {
        return;
    }
    beginResetModel();
    m_shown = shown;
    collect();
    endResetModel();
}

void TreeTableModel::collect() {
    m_order.clear();
    const auto cells = m_scene->cells();
    for (CellIndex cell = 0; cell < cells.size(); ++cell) {
        if (!cells[cell].isGap() && (m_shown.empty() || m_shown[cell])) {
            m_order.push_back(cell);
        }
    }
    order();
}

void TreeTableModel::order() {
    if (m_sortColumn >= 0) {
        // Keys are made once: comparing is then cheap enough for a hundred thousand trees.
        const TreeColumn& column = m_columns[static_cast<std::size_t>(m_sortColumn)];
        // Without a language there would be no counting order.
        QCollator collator(QLocale().language() == QLocale::C ? QLocale(QLocale::English)
                                                              : QLocale());
        collator.setNumericMode(true);
        std::vector<SortKey> keys(m_order.size());
        for (std::size_t i = 0; i < m_order.size(); ++i) {
            const QVariant value = column.value(m_order[i]);
            if (isNumber(value)) {
                keys[i] = {0, value.toDouble(), std::nullopt};
            } else if (value.isValid() && !value.toString().isEmpty()) {
                keys[i] = {1, 0, collator.sortKey(value.toString())};
            }
        }
        std::vector<std::size_t> places(m_order.size());
        std::iota(places.begin(), places.end(), std::size_t{0});
        const bool descending = m_sortOrder == Qt::DescendingOrder;
        std::stable_sort(places.begin(), places.end(), [&](std::size_t one, std::size_t other) {
            const SortKey& left = keys[one];
            const SortKey& right = keys[other];
            if (left.kind != right.kind || left.kind == 2) {
                return left.kind < right.kind;
            }
            const SortKey& low = descending ? right : left;
            const SortKey& high = descending ? left : right;
            return left.kind == 0 ? low.number < high.number : low.word->compare(*high.word) < 0;
        });
        std::vector<CellIndex> sorted(m_order.size());
        std::transform(places.begin(), places.end(), sorted.begin(),
                       [this](std::size_t place) { return m_order[place]; });
        m_order = std::move(sorted);
    }
    m_rowOf.assign(m_scene->cells().size(), -1);
    for (std::size_t row = 0; row < m_order.size(); ++row) {
        m_rowOf[m_order[row]] = static_cast<int>(row);
    }
}

void TreeTableModel::sort(int column, Qt::SortOrder order) {
    if (column < 0 || column >= static_cast<int>(m_columns.size())) {
        column = -1;
    }
    Q_EMIT layoutAboutToBeChanged({}, VerticalSortHint);
    const QModelIndexList before = persistentIndexList();
    std::vector<CellIndex> cells;
    for (const QModelIndex& index : before) {
        cells.push_back(cellOf(index.row()));
    }
    m_sortColumn = column;
    m_sortOrder = order;
    collect();
    QModelIndexList after;
    for (qsizetype i = 0; i < before.size(); ++i) {
        const int row = m_rowOf[cells[static_cast<std::size_t>(i)]];
        after << (row < 0 ? QModelIndex() : index(row, before[i].column()));
    }
    changePersistentIndexList(before, after);
    Q_EMIT layoutChanged({}, VerticalSortHint);
}

std::optional<int> TreeTableModel::rowOf(CellIndex cell) const {
    if (cell >= m_rowOf.size() || m_rowOf[cell] < 0) {
        return std::nullopt;
    }
    return m_rowOf[cell];
}

QString TreeTableModel::asTable(const std::vector<int>& rows) const {
    const auto plain = [](QString text) {
        for (QChar& character : text) {
            if (character == QLatin1Char('\t') || character == QLatin1Char('\n') ||
                character == QLatin1Char('\r')) {
                character = QLatin1Char(' ');
            }
        }
        return text;
    };
    QStringList lines;
    QStringList fields;
    for (const TreeColumn& column : m_columns) {
        fields << plain(column.title);
    }
    lines << fields.join(QLatin1Char('\t'));
    for (const int row : rows) {
        fields.clear();
        for (const TreeColumn& column : m_columns) {
            fields << plain(written(column.value(cellOf(row)), column.decimals));
        }
        lines << fields.join(QLatin1Char('\t'));
    }
    return lines.join(QLatin1Char('\n')) + QLatin1Char('\n');
}

int TreeTableModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_order.size());
}

int TreeTableModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_columns.size());
}

QVariant TreeTableModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) {
        return {};
    }
    const TreeColumn& column = m_columns[static_cast<std::size_t>(index.column())];
    const QVariant value = column.value(cellOf(index.row()));
    switch (role) {
    case Qt::DisplayRole:
    case Qt::ToolTipRole:
        return written(value, column.decimals);
    case Qt::UserRole:
        return value;
    case Qt::TextAlignmentRole:
        return static_cast<int>((isNumber(value) ? Qt::AlignRight : Qt::AlignLeft) |
                                Qt::AlignVCenter);
    default:
        return {};
    }
}

QVariant TreeTableModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || section < 0 ||
        section >= static_cast<int>(m_columns.size())) {
        return QAbstractTableModel::headerData(section, orientation, role);
    }
    const TreeColumn& column = m_columns[static_cast<std::size_t>(section)];
    if (role == Qt::TextAlignmentRole) {
        return static_cast<int>((column.isNumeric ? Qt::AlignRight : Qt::AlignLeft) |
                                Qt::AlignVCenter);
    }
    return role == Qt::DisplayRole ? QVariant(column.title) : QVariant();
}

QString TreeTableModel::written(const QVariant& value, int decimals) const {
    if (!isNumber(value)) {
        return value.toString();
    }
    QLocale locale;
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    return decimals < 0 ? locale.toString(value.toDouble(), 'g', QLocale::FloatingPointShortest)
                        : locale.toString(value.toDouble(), 'f', decimals);
}

} // namespace pipwright::ui
