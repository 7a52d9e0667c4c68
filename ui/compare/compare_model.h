#pragma once

#include "core/evaluation/comparison.h"

#include <QAbstractTableModel>
#include <QImage>
#include <QString>

#include <optional>
#include <vector>

namespace pipwright::ui {

/// What a row of Compare shows.
enum class CompareKind { section, head, photos, words, window, liking, keeping, trait };

struct CompareRow {
    CompareKind kind = CompareKind::words;
    QString title;
    TraitId trait{}; ///< of a trait row
    double low = 0;  ///< the common scale of a trait row
    double high = 0;
    bool drawn = true; ///< a scale is drawn: not for states without order
};

struct CompareCell {
    QString words;
    QString difference; ///< from the first column, when beyond doubt
};

/// Genotypes across, what is compared down.
class CompareModel : public QAbstractTableModel {
    Q_OBJECT

  public:
    using QAbstractTableModel::QAbstractTableModel;

    /// `calendarYear` names the weeks and days of usual windows: the year worked in.
    void setComparison(OrchardView::Pointer view, Comparison comparison, int calendarYear);
    void setPhotos(int column, std::vector<QImage> photos);

    [[nodiscard]] const CompareRow& row(int row) const {
        return m_rows[static_cast<std::size_t>(row)];
    }
    [[nodiscard]] const CompareCell& cell(int row, int column) const {
        return m_cells[static_cast<std::size_t>(row)][static_cast<std::size_t>(column)];
    }
    [[nodiscard]] const ComparedGenotype& compared(int column) const {
        return m_comparison.columns[static_cast<std::size_t>(column)];
    }
    [[nodiscard]] const std::vector<QImage>& photos(int column) const {
        return m_photos[static_cast<std::size_t>(column)];
    }
    /// The common axis of the windows: days of the crop year, whole weeks.
    [[nodiscard]] int firstDay() const { return m_firstDay; }
    [[nodiscard]] int lastDay() const { return m_lastDay; }
    /// The year whose calendar names the weeks of the axis.
    [[nodiscard]] int calendarYear() const { return m_calendarYear; }
    /// The common axis of keeping: days off the tree; 0 without any kept fruit.
    [[nodiscard]] int longestDays() const { return m_longestDays; }
    /// Crop years walked of the tree walked longest.
    [[nodiscard]] int mostYears() const { return m_mostYears; }
    [[nodiscard]] std::vector<Index> genotypes() const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;

  private:
    void add(CompareRow row, std::vector<CompareCell> cells);
    template <typename Words>
    void addWords(CompareKind kind, const QString& title, Words words);
    void addSection(const QString& title);
    void addLiking();
    void addKeeping();
    void addTraits();
    void addTrait(const Trait& trait);
    void measureDays();

    OrchardView::Pointer m_view;
    Comparison m_comparison;
    std::vector<CompareRow> m_rows;
    std::vector<std::vector<CompareCell>> m_cells;
    std::vector<std::vector<QImage>> m_photos;
    int m_firstDay = 0;
    int m_lastDay = 0;
    int m_calendarYear = 0;
    int m_longestDays = 0;
    int m_mostYears = 0;
};

} // namespace pipwright::ui
