#pragma once

#include "core/evaluation/orchard_view.h"
#include "core/history/sitting_edits.h"

#include <QAbstractTableModel>

#include <functional>
#include <map>
#include <vector>

namespace pipwright::ui {

/// A row of the sheet as typed.
struct SheetRow {
    QString fruit;
    QString origin;
    QString ripeness;
    QString soundness;
    QString path;
    std::map<Uuid, QString> scores; ///< by taster

    [[nodiscard]] bool empty() const;
};

/// What a cell means, or why it means nothing.
struct CellReading {
    QString shown; ///< in the cell
    std::optional<Problem> problem;
};

/// The sheet of a sitting as it is typed: lots down, condition and tasters across. Keeps what was
/// typed, says what it means; there is always one empty row at the end.
class SheetModel : public QAbstractTableModel {
    Q_OBJECT

  public:
    enum Column { fruit, origin, ripeness, soundness, path, firstTaster };
    using ViewSource = std::function<OrchardView::Pointer()>;

    explicit SheetModel(ViewSource view, QObject* parent = nullptr);

    void setTasters(std::vector<Person> tasters);
    [[nodiscard]] const std::vector<Person>& tasters() const { return m_tasters; }
    [[nodiscard]] const std::vector<SheetRow>& rows() const { return m_rows; }
    void setRows(std::vector<SheetRow> rows);
    [[nodiscard]] bool isBlank() const;
    /// Trees may be found now that were not, or the other way round.
    void readAnew();

    /// What the letters of a column mean; a hint for the cell at hand.
    [[nodiscard]] QString help(int column) const;
    [[nodiscard]] CellReading reading(int row, int column) const;
    /// The first cell that cannot be read, from the top.
    [[nodiscard]] std::optional<std::pair<QModelIndex, Problem>> firstFault() const;
    /// The rows as lots; only when there is no fault.
    [[nodiscard]] std::vector<ServedLot> lots() const;
    /// One row as a lot; nothing while its fruit cannot be read.
    [[nodiscard]] std::optional<ServedLot> lotAt(int row) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;
    QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;
    QVariant headerData(int section, Qt::Orientation orientation,
                        int role = Qt::DisplayRole) const override;
    bool removeRows(int row, int count, const QModelIndex& parent = {}) override;

  private:
    [[nodiscard]] QString typed(int row, int column) const;
    void put(int row, int column, const QString& text);
    void keepEmptyRow();
    [[nodiscard]] CellReading readFruit(const QString& text) const;
    [[nodiscard]] CellReading readScore(const QString& text) const;

    ViewSource m_view;
    std::vector<Person> m_tasters;
    std::vector<SheetRow> m_rows;
};

} // namespace pipwright::ui
