#pragma once

#include "ui/book/merit_desk.h"
#include "ui/merit/merit_plot.h"

#include <QAbstractTableModel>

#include <optional>
#include <vector>

namespace pipwright::ui {

/// One line of the ranking: a seedling and what the report says of it.
struct MeritRow {
    Index genotype = 0;
    const SeedlingVerdict* verdict = nullptr; ///< within the report
    const GenotypeMerit* trait = nullptr;     ///< within the report, when it is ranked by a trait
    bool neverFair = false;
    std::size_t urgency = 0; ///< place in the evidence ledger, 0 the most urgent
};

/// The ranking as a table. By default it is ranked within the slots of the season.
class MeritTableModel : public QAbstractTableModel {
    Q_OBJECT

  public:
    enum Column {
        tree,
        slot,
        plot,
        merit,
        suggestion,
        aboveFloor,
        aboveBest,
        aboveMargin,
        reliability,
        evidence,
        faults,
        stage,
        family,
        reason,
        columnTotal
    };
    static constexpr int kSortRole = Qt::UserRole;
    static constexpr int kUrgencyRole = Qt::UserRole + 1;

    using QAbstractTableModel::QAbstractTableModel;

    void setReport(MeritReportPointer report);
    [[nodiscard]] const MeritReportPointer& report() const { return m_report; }
    [[nodiscard]] bool ranksTrait() const { return m_report && m_report->traitModel.has_value(); }
    [[nodiscard]] const MeritRow& row(int at) const { return m_rows[static_cast<std::size_t>(at)]; }
    [[nodiscard]] std::optional<int> rowOf(Index genotype) const;
    [[nodiscard]] int neverFairCount() const { return m_neverFair; }
    [[nodiscard]] QString slotText(const SeedlingVerdict& verdict) const;
    [[nodiscard]] QString familyText(Index genotype) const;
    [[nodiscard]] MeritPlot plotOf(const MeritRow& row) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    QVariant headerData(int section, Qt::Orientation orientation,
                        int role = Qt::DisplayRole) const override;

  private:
    void collect();
    void measureScale();
    [[nodiscard]] QString words(const MeritRow& row, int column) const;
    [[nodiscard]] QVariant sortKey(const MeritRow& row, int column) const;
    [[nodiscard]] std::optional<double> figure(const MeritRow& row, int column) const;
    [[nodiscard]] QString whyNoFigure(const MeritRow& row, int column) const;
    [[nodiscard]] std::optional<double> meritOf(const std::optional<RungOdds>& rung) const;

    MeritReportPointer m_report;
    std::vector<MeritRow> m_rows;
    int m_neverFair = 0;
    double m_low = 1;
    double m_high = 9;
};

} // namespace pipwright::ui
