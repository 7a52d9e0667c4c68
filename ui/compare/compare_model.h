#pragma once

#include "core/evaluation/comparison.h"

#include <QAbstractTableModel>
#include <QString>

#include <memory>
#include <vector>

namespace pipwright::ui {

/// What a row of Compare shows.
enum class CompareAspect {
    stage,
    parents,
    photos,
    window,
    allLiking,
    fairLiking,
    evidence,
    trait,
    words
};

struct CompareLine {
    CompareAspect aspect = CompareAspect::stage;
    TraitId trait; ///< of a trait line
    QString title;
};

/// Two to eight genotypes as columns, what is compared as rows. Text for reading and printing;
/// the delegate draws the lines that are better seen than read.
class CompareModel : public QAbstractTableModel {
    Q_OBJECT

  public:
    using QAbstractTableModel::QAbstractTableModel;

    void setComparison(OrchardView::Pointer view, Comparison comparison);
    [[nodiscard]] const ComparedGenotype& column(int at) const {
        return m_comparison.columns[static_cast<std::size_t>(at)];
    }
    [[nodiscard]] const CompareLine& lineAt(int row) const {
        return m_lines[static_cast<std::size_t>(row)];
    }
    [[nodiscard]] const OrchardView& view() const { return *m_view; }
    /// The trait's summary in a column; null when it was never observed there.
    [[nodiscard]] const ComparedTrait* traitIn(int column, TraitId trait) const;
    /// The common scale of a trait over all columns.
    [[nodiscard]] std::pair<double, double> scaleOf(TraitId trait) const;
    /// Whether this column differs from the first beyond doubt in that line: 1 above, -1 below, 0
    /// not.
    [[nodiscard]] int beyondDoubt(int row, int column) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    QVariant headerData(int section, Qt::Orientation orientation,
                        int role = Qt::DisplayRole) const override;

  private:
    [[nodiscard]] QString textOf(const CompareLine& line, const ComparedGenotype& column) const;
    [[nodiscard]] QString windowText(const ComparedGenotype& column) const;
    [[nodiscard]] QString evidenceText(const ComparedGenotype& column) const;
    [[nodiscard]] QString likingText(const ComparedGenotype& column) const;
    [[nodiscard]] QString traitText(const CompareLine& line, const ComparedGenotype& column) const;
    [[nodiscard]] static QString lastWords(const ComparedGenotype& column);

    OrchardView::Pointer m_view;
    Comparison m_comparison;
    std::vector<CompareLine> m_lines;
};

} // namespace pipwright::ui
