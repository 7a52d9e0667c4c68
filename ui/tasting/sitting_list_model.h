#pragma once

#include "ui/tasting/sitting_list.h"

#include <QAbstractTableModel>

#include <unordered_map>

namespace pipwright::ui {

/// The sittings as a table, newest first. Lots and tasters of a line are counted when it is first
/// looked at, so a large book opens at once.
class SittingListModel : public QAbstractTableModel {
    Q_OBJECT

  public:
    enum Column { date, what, lots, tasters, sight, columnTotal };
    /// Of `what`: day and words, and below them how many lots and tasters, and how they tasted.
    static constexpr int kTitleAndCounts = Qt::UserRole;

    explicit SittingListModel(const Store& store, QObject* parent = nullptr);

    void setLines(std::vector<SittingLine> lines);
    /// Counts may have changed.
    void countAnew();
    [[nodiscard]] const SittingLine& line(int row) const {
        return m_lines[static_cast<std::size_t>(row)];
    }
    /// The row that holds the tasting; nothing when it is not shown.
    [[nodiscard]] std::optional<int> rowOf(TastingId tasting) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    QVariant headerData(int section, Qt::Orientation orientation,
                        int role = Qt::DisplayRole) const override;

  private:
    struct Counts {
        int lots = 0;
        int tasters = 0;
    };
    [[nodiscard]] Counts countsOf(const SittingLine& line) const;
    [[nodiscard]] QString words(const SittingLine& line, int column) const;
    [[nodiscard]] QString countWords(const SittingLine& line) const;

    const Store& m_store;
    std::vector<SittingLine> m_lines;
    mutable std::unordered_map<Uuid, Counts> m_counts;
};

/// "blind", "sighted".
QString sightWord(Sight sight);

} // namespace pipwright::ui
