#include "ui/rows/row_map_accessible.h"

#include "ui/rows/map_words.h"
#include "ui/rows/row_map.h"

#include <QAccessible>
#include <QAccessibleWidget>
#include <QCoreApplication>
#include <QHash>

#include <algorithm>

namespace pipwright::ui {

namespace {

struct AccessibleMap {
    Q_DECLARE_TR_FUNCTIONS(pipwright::ui::AccessibleMap)
};

class MapTable;

/// A place of a row. It may hold no plant at all.
class MapPlace : public QAccessibleInterface, public QAccessibleTableCellInterface {
  public:
    MapPlace(MapTable* table, int row, int column, std::optional<CellIndex> cell)
        : m_table(table), m_row(row), m_column(column), m_cell(cell) {}

    [[nodiscard]] std::optional<CellIndex> cell() const { return m_cell; }

    bool isValid() const override;
    QObject* object() const override { return nullptr; }
    QAccessibleInterface* childAt(int, int) const override { return nullptr; }
    QAccessibleInterface* parent() const override;
    QAccessibleInterface* child(int) const override { return nullptr; }
    int childCount() const override { return 0; }
    int indexOfChild(const QAccessibleInterface*) const override { return -1; }
    QString text(QAccessible::Text kind) const override;
    void setText(QAccessible::Text, const QString&) override {}
    QRect rect() const override;
    QAccessible::Role role() const override { return QAccessible::Cell; }
    QAccessible::State state() const override;
    void* interface_cast(QAccessible::InterfaceType type) override {
        return type == QAccessible::TableCellInterface
                   ? static_cast<QAccessibleTableCellInterface*>(this)
                   : nullptr;
    }

    bool isSelected() const override;
    QList<QAccessibleInterface*> columnHeaderCells() const override { return {}; }
    QList<QAccessibleInterface*> rowHeaderCells() const override { return {}; }
    int columnIndex() const override { return m_column; }
    int rowIndex() const override { return m_row; }
    int columnExtent() const override { return 1; }
    int rowExtent() const override { return 1; }
    QAccessibleInterface* table() const override;

  private:
    [[nodiscard]] RowMap* map() const;

    MapTable* m_table;
    int m_row;
    int m_column;
    std::optional<CellIndex> m_cell;
};

class MapTable : public QAccessibleWidget, public QAccessibleTableInterface {
  public:
    explicit MapTable(RowMap* map) : QAccessibleWidget(map, QAccessible::Table) {}
    ~MapTable() override { forget(); }

    [[nodiscard]] RowMap* map() const { return static_cast<RowMap*>(widget()); }
    void forget();

    void* interface_cast(QAccessible::InterfaceType type) override {
        return type == QAccessible::TableInterface ? static_cast<QAccessibleTableInterface*>(this)
                                                   : QAccessibleWidget::interface_cast(type);
    }
    int childCount() const override { return rowCount() * columnCount(); }
    QAccessibleInterface* child(int index) const override;
    int indexOfChild(const QAccessibleInterface* child) const override;
    QAccessibleInterface* childAt(int x, int y) const override;
    QAccessibleInterface* focusChild() const override;

    QAccessibleInterface* caption() const override { return nullptr; }
    QAccessibleInterface* summary() const override { return nullptr; }
    QAccessibleInterface* cellAt(int row, int column) const override;
    int selectedCellCount() const override { return static_cast<int>(map()->selection().count()); }
    QList<QAccessibleInterface*> selectedCells() const override;
    QString columnDescription(int column) const override {
        return AccessibleMap::tr("place %1").arg(firstOrdinal() + column);
    }
    QString rowDescription(int row) const override {
        return AccessibleMap::tr("row %1").arg(
            QString::fromStdString(map()->scene().rows()[static_cast<std::size_t>(row)].name));
    }
    int selectedColumnCount() const override { return 0; }
    int selectedRowCount() const override { return static_cast<int>(selectedRows().size()); }
    int columnCount() const override;
    int rowCount() const override { return static_cast<int>(map()->scene().rows().size()); }
    QList<int> selectedColumns() const override { return {}; }
    QList<int> selectedRows() const override;
    bool isColumnSelected(int) const override { return false; }
    bool isRowSelected(int row) const override;
    bool selectRow(int row) override;
    bool selectColumn(int) override { return false; }
    bool unselectRow(int row) override;
    bool unselectColumn(int) override { return false; }
    void modelChange(QAccessibleTableModelChangeEvent*) override { forget(); }

    [[nodiscard]] QAccessibleInterface* ofCell(CellIndex cell) const;

  private:
    [[nodiscard]] int firstOrdinal() const;
    void findColumns() const;
    QAccessibleInterface* handOut(int row, int column, std::optional<CellIndex> cell) const;

    mutable QHash<quint64, QAccessible::Id> m_handedOut;
    mutable std::optional<std::pair<int, int>> m_ordinals; ///< least and most of the scene
};

void MapTable::forget() {
    const QHash<quint64, QAccessible::Id> old = std::exchange(m_handedOut, {});
    for (const QAccessible::Id id : old) {
        QAccessible::deleteAccessibleInterface(id);
    }
    m_ordinals.reset();
}

void MapTable::findColumns() const {
    if (m_ordinals) {
        return;
    }
    std::pair<int, int> ordinals{1, 0};
    for (const MapRow& row : map()->scene().rows()) {
        const auto cells = map()->scene().cellsOf(row);
        if (!cells.empty()) {
            ordinals.first = std::min(ordinals.first, cells.front().ordinal);
            ordinals.second = std::max(ordinals.second, cells.back().ordinal);
        }
    }
    m_ordinals = ordinals;
}

int MapTable::firstOrdinal() const {
    findColumns();
    return m_ordinals->first;
}

int MapTable::columnCount() const {
    findColumns();
    return m_ordinals->second - m_ordinals->first + 1;
}

QAccessibleInterface* MapTable::handOut(int row, int column, std::optional<CellIndex> cell) const {
    const quint64 key = cell ? *cell
                             : (quint64{1} << 63U) | static_cast<quint64>(row) << 32U |
                                   static_cast<quint64>(column);
    if (const auto known = m_handedOut.constFind(key); known != m_handedOut.constEnd()) {
        return QAccessible::accessibleInterface(*known);
    }
    auto* place = new MapPlace(const_cast<MapTable*>(this), row, column, cell);
    m_handedOut.insert(key, QAccessible::registerAccessibleInterface(place));
    return place;
}

QAccessibleInterface* MapTable::ofCell(CellIndex cell) const {
    const MapScene& scene = map()->scene();
    if (cell >= scene.cells().size()) {
        return nullptr;
    }
    return handOut(static_cast<int>(scene.rowOf(cell)),
                   scene.cells()[cell].ordinal - firstOrdinal(), cell);
}

QAccessibleInterface* MapTable::cellAt(int row, int column) const {
    if (row < 0 || row >= rowCount() || column < 0 || column >= columnCount()) {
        return nullptr;
    }
    const MapScene& scene = map()->scene();
    const MapRow& facts = scene.rows()[static_cast<std::size_t>(row)];
    const int ordinal = firstOrdinal() + column;
    const auto cells = scene.cellsOf(facts);
    const auto found =
        std::lower_bound(cells.begin(), cells.end(), ordinal,
                         [](const MapCell& cell, int wanted) { return cell.ordinal < wanted; });
    if (found == cells.end() || found->ordinal != ordinal) {
        return handOut(row, column, std::nullopt);
    }
    const CellIndex first = facts.firstCell + static_cast<CellIndex>(found - cells.begin());
    // Of plants that share the place, the current one.
    const auto current = map()->currentCell();
    const bool shares = current && *current > first &&
                        scene.rowOf(*current) == scene.rowOf(first) &&
                        scene.cells()[*current].ordinal == ordinal;
    return ofCell(shares ? *current : first);
}

QAccessibleInterface* MapTable::child(int index) const {
    const int columns = columnCount();
    return columns > 0 && index >= 0 ? cellAt(index / columns, index % columns) : nullptr;
}

int MapTable::indexOfChild(const QAccessibleInterface* child) const {
    const auto* place = dynamic_cast<const MapPlace*>(child);
    return place ? place->rowIndex() * columnCount() + place->columnIndex() : -1;
}

QAccessibleInterface* MapTable::childAt(int x, int y) const {
    const auto cell = map()->cellAt(map()->viewport()->mapFromGlobal(QPoint(x, y)));
    return cell ? ofCell(*cell) : nullptr;
}

QAccessibleInterface* MapTable::focusChild() const {
    return map()->hasFocus() && map()->currentCell() ? ofCell(*map()->currentCell()) : nullptr;
}

QList<QAccessibleInterface*> MapTable::selectedCells() const {
    QList<QAccessibleInterface*> cells;
    map()->selection().forEach([&](CellIndex cell) { cells << ofCell(cell); });
    return cells;
}

bool MapTable::isRowSelected(int row) const {
    const MapRow& facts = map()->scene().rows()[static_cast<std::size_t>(row)];
    bool any = false;
    for (std::uint32_t i = 0; i < facts.cellCount; ++i) {
        const CellIndex cell = facts.firstCell + i;
        if (map()->scene().cells()[cell].isGap()) {
            continue;
        }
        any = true;
        if (!map()->selection().contains(cell)) {
            return false;
        }
    }
    return any;
}

QList<int> MapTable::selectedRows() const {
    QList<int> rows;
    for (int row = 0; row < rowCount(); ++row) {
        if (isRowSelected(row)) {
            rows << row;
        }
    }
    return rows;
}

bool MapTable::selectRow(int row) {
    if (row < 0 || row >= rowCount()) {
        return false;
    }
    map()->selectRow(static_cast<std::uint32_t>(row));
    return true;
}

bool MapTable::unselectRow(int row) {
    if (row < 0 || row >= rowCount() || !isRowSelected(row)) {
        return false;
    }
    const MapRow& facts = map()->scene().rows()[static_cast<std::size_t>(row)];
    MapSelection rest = map()->selection();
    rest.subtract(MapSelection::run(facts.firstCell, facts.firstCell + facts.cellCount - 1));
    map()->setSelection(rest);
    return true;
}

RowMap* MapPlace::map() const {
    return m_table->map();
}

bool MapPlace::isValid() const {
    return !m_cell || *m_cell < map()->scene().cells().size();
}

QAccessibleInterface* MapPlace::parent() const {
    return m_table;
}

QAccessibleInterface* MapPlace::table() const {
    return m_table;
}

QString MapPlace::text(QAccessible::Text kind) const {
    if (kind != QAccessible::Name && kind != QAccessible::Value) {
        return {};
    }
    if (m_cell) {
        return cellWords(map()->scene(), *m_cell);
    }
    return m_table->rowDescription(m_row) + QStringLiteral(", ") +
           m_table->columnDescription(m_column) + QStringLiteral(", ") +
           AccessibleMap::tr("no place");
}

QRect MapPlace::rect() const {
    if (!m_cell) {
        return {};
    }
    const QRect box = map()->rectOf(*m_cell);
    return {map()->viewport()->mapToGlobal(box.topLeft()), box.size()};
}

QAccessible::State MapPlace::state() const {
    QAccessible::State state;
    state.focusable = true;
    state.selectable = m_cell && !map()->scene().cells()[*m_cell].isGap();
    state.selected = isSelected();
    state.focused = m_cell && map()->hasFocus() && map()->currentCell() == m_cell;
    state.offscreen = !m_cell || !map()->viewport()->rect().intersects(map()->rectOf(*m_cell));
    return state;
}

bool MapPlace::isSelected() const {
    return m_cell && map()->selection().contains(*m_cell);
}

QAccessibleInterface* makeTable(const QString& /*className*/, QObject* object) {
    auto* map = qobject_cast<RowMap*>(object);
    return map ? new MapTable(map) : nullptr;
}

MapTable* tableOf(const QWidget* map) {
    return dynamic_cast<MapTable*>(
        QAccessible::queryAccessibleInterface(const_cast<QWidget*>(map)));
}

/// Maps somebody has asked about: only they have cells to forget, and asking makes an interface.
bool isWatched(const RowMap& map) {
    return QAccessible::isActive() && map.isVisible();
}

} // namespace

void installRowMapAccessibility() {
    static const bool installed = [] {
        QAccessible::installFactory(&makeTable);
        return true;
    }();
    static_cast<void>(installed);
}

void announceCurrentCell(const RowMap& map) {
    const auto cell = map.currentCell();
    if (!cell || !isWatched(map) || !map.hasFocus()) {
        return;
    }
    if (MapTable* table = tableOf(&map)) {
        QAccessibleEvent event(const_cast<RowMap*>(&map), QAccessible::Focus);
        event.setChild(table->indexOfChild(table->ofCell(*cell)));
        QAccessible::updateAccessibility(&event);
    }
}

void forgetAccessibleCells(const QWidget* map) {
    if (MapTable* table = tableOf(map)) {
        table->forget();
    }
}

} // namespace pipwright::ui
