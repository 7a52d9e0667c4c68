#include "ui/merit/merit_table_model.h"

#include "core/units/text.h"
#include "ui/book/book_words.h"
#include "ui/book/merit_words.h"
#include "ui/book/orchard_words.h"
#include "ui/widgets/number_text.h"
#include "ui/widgets/theme.h"

#include <algorithm>
#include <cmath>

namespace pipwright::ui {

namespace {

constexpr double kNinetyFive = 1.959964; ///< standard errors each side of a normal 95 % interval
constexpr double kEighty = 1.281552;
constexpr int kNoFigure = -1000; ///< sorts below every figure

} // namespace

void MeritTableModel::setReport(MeritReportPointer report) {
    beginResetModel();
    m_report = std::move(report);
    collect();
    measureScale();
    endResetModel();
}

void MeritTableModel::collect() {
    m_rows.clear();
    m_neverFair = 0;
    if (!m_report || !m_report->evaluation) {
        return;
    }
    const auto& verdicts = m_report->evaluation->verdicts;
    for (const SeedlingVerdict& verdict : verdicts) {
        MeritRow row;
        row.genotype = verdict.genotype;
        row.verdict = &verdict;
        row.urgency = verdicts.size();
        if (ranksTrait()) {
            row.trait = m_report->traitModel->meritOf(verdict.genotype);
        }
        m_rows.push_back(row);
    }
    const EvidenceLedger ledger = evidenceLedger(verdicts);
    std::size_t place = 0;
    for (const std::size_t at : ledger.neverFair) {
        m_rows[at].neverFair = true;
        m_rows[at].urgency = place++;
    }
    m_neverFair = static_cast<int>(ledger.neverFair.size());
    for (const std::size_t at : ledger.tested) {
        m_rows[at].urgency = place++;
    }
}

void MeritTableModel::measureScale() {
    std::optional<double> low;
    std::optional<double> high;
    for (const MeritRow& row : m_rows) {
        const MeritPlot drawn = plotOf(row);
        if (drawn.value) {
            low = std::min(low.value_or(drawn.widestLow), drawn.widestLow);
            high = std::max(high.value_or(drawn.widestHigh), drawn.widestHigh);
        }
    }
    m_low = std::floor(low.value_or(1));
    m_high = std::max(m_low + 1, std::ceil(high.value_or(9)));
}

std::optional<int> MeritTableModel::rowOf(Index genotype) const {
    const auto found = std::find_if(m_rows.begin(), m_rows.end(), [genotype](const MeritRow& row) {
        return row.genotype == genotype;
    });
    return found == m_rows.end() ? std::nullopt
                                 : std::optional(static_cast<int>(found - m_rows.begin()));
}

std::optional<double> MeritTableModel::meritOf(const std::optional<RungOdds>& rung) const {
    const GenotypeMerit* known =
        rung ? m_report->evaluation->model.meritOf(rung->reference) : nullptr;
    return known == nullptr ? std::nullopt : std::optional(known->merit.value);
}

MeritPlot MeritTableModel::plotOf(const MeritRow& row) const {
    MeritPlot drawn;
    drawn.low = m_low;
    drawn.high = m_high;
    if (ranksTrait()) {
        if (row.trait != nullptr) {
            const UncertainValue& found = row.trait->merit;
            drawn.value = found.value;
            drawn.eightyLow = found.value - kEighty * found.standardError;
            drawn.eightyHigh = found.value + kEighty * found.standardError;
            drawn.widestLow = found.value - kNinetyFive * found.standardError;
            drawn.widestHigh = found.value + kNinetyFive * found.standardError;
            drawn.pale = !row.trait->seen();
        }
        return drawn;
    }
    const SeedlingVerdict& verdict = *row.verdict;
    if (verdict.basis != MeritBasis::none) {
        drawn.value = verdict.merit.value;
        drawn.eightyLow = verdict.eighty.low;
        drawn.eightyHigh = verdict.eighty.high;
        drawn.widestLow = verdict.ninetyFive.low;
        drawn.widestHigh = verdict.ninetyFive.high;
    }
    drawn.pale = !verdict.fairlyTested();
    drawn.floor = meritOf(verdict.floor);
    drawn.best = meritOf(verdict.best);
    drawn.famous = meritOf(verdict.famous);
    return drawn;
}

QString MeritTableModel::slotText(const SeedlingVerdict& verdict) const {
    if (!verdict.ladders || !verdict.slot) {
        return verdict.lack == LadderLack::unknownSeason ? tr("season not known")
               : verdict.lack == LadderLack::noLadders   ? tr("no benchmarks")
                                                         : tr("outside all slots");
    }
    const SeasonLadders& ladders = m_report->evaluation->ladders[*verdict.ladders];
    return slotWords(ladders.slots[*verdict.slot], ladders.cropYear.year);
}

QString MeritTableModel::familyText(Index genotype) const {
    return crossWords(*m_report->view, genotype);
}

std::optional<double> MeritTableModel::figure(const MeritRow& row, int column) const {
    const SeedlingVerdict& verdict = *row.verdict;
    switch (column) {
    case merit:
    case plot:
        if (ranksTrait()) {
            return row.trait == nullptr ? std::nullopt : std::optional(row.trait->merit.value);
        }
        return verdict.basis == MeritBasis::none ? std::nullopt
                                                 : std::optional(verdict.merit.value);
    case aboveFloor:
        return verdict.floor ? std::optional(verdict.floor->above) : std::nullopt;
    case aboveBest:
        return verdict.best ? std::optional(verdict.best->above) : std::nullopt;
    case aboveMargin:
        return verdict.best ? std::optional(verdict.best->aboveByMargin) : std::nullopt;
    case reliability:
        if (ranksTrait()) {
            return row.trait == nullptr ? std::nullopt : std::optional(row.trait->reliability);
        }
        return verdict.basis == MeritBasis::none ? std::nullopt
                                                 : std::optional(verdict.reliability);
    default:
        return std::nullopt;
    }
}

QString MeritTableModel::whyNoFigure(const MeritRow& row, int column) const {
    if (column == aboveFloor || column == aboveBest || column == aboveMargin) {
        const LadderLack lack = row.verdict->lack;
        return lack == LadderLack::none && row.verdict->basis == MeritBasis::none
                   ? tr("not enough yet")
               : lack == LadderLack::benchmarkUnseen || lack == LadderLack::noLadders
                   ? tr("no benchmark")
               : lack == LadderLack::unknownSeason ? tr("season not known")
               : lack == LadderLack::outsideSlots  ? tr("no slot")
                                                   : tr("nobody on this rung");
    }
    return tr("not enough yet");
}

QString MeritTableModel::words(const MeritRow& row, int column) const {
    const SeedlingVerdict& verdict = *row.verdict;
    const auto value = figure(row, column);
    switch (column) {
    case tree:
        return QString::fromStdString(m_report->view->genotypes()[row.genotype].called());
    case slot:
        return slotText(verdict);
    case merit:
        if (!value) {
            return whyNoFigure(row, column);
        }
        return ranksTrait() ? doubtText(*value, row.trait->merit.standardError, 1)
               : verdict.basis == MeritBasis::relatives
                   ? tr("%1 by family").arg(meritWords(verdict))
                   : meritWords(verdict);
    case suggestion:
        return suggestionWord(verdict.suggestion);
    case aboveFloor:
    case aboveBest:
    case aboveMargin: {
        if (!value) {
            return whyNoFigure(row, column);
        }
        const auto& rung = column == aboveFloor ? verdict.floor : verdict.best;
        // A figure against a neighbour's benchmark is marked as such.
        return rung->borrowed ? tr("%1 (next slot)").arg(chanceText(*value)) : chanceText(*value);
    }
    case reliability:
        return value ? numberText(*value, 2) : whyNoFigure(row, column);
    case evidence:
        return ranksTrait() ? (row.trait == nullptr
                                   ? tr("never measured")
                                   : tr("%n record(s), %1 crop years", nullptr, row.trait->records)
                                         .arg(row.trait->cropYears))
                            : evidenceWords(verdict.evidence);
    case faults: {
        QStringList all;
        for (const Fault& fault : verdict.faults) {
            all << faultWords(fault);
        }
        return all.join(QStringLiteral("; "));
    }
    case stage:
        return stageWord(verdict.stage);
    case family:
        return familyText(row.genotype);
    case reason:
        return reasonWords(*m_report->view, verdict, m_report->question.choices);
    default:
        return {};
    }
}

QVariant MeritTableModel::sortKey(const MeritRow& row, int column) const {
    const SeedlingVerdict& verdict = *row.verdict;
    switch (column) {
    case slot: {
        // By the day of the slot, within it the best first.
        int day = 9999;
        if (verdict.ladders && verdict.slot) {
            day = m_report->evaluation->ladders[*verdict.ladders].slots[*verdict.slot].days.first;
        }
        return day - figure(row, merit).value_or(kNoFigure) * 1e-4;
    }
    case suggestion:
        return -static_cast<int>(verdict.suggestion);
    case evidence:
        return verdict.evidence.fairLots * 1000 + verdict.evidence.lots;
    case faults:
        return static_cast<int>(verdict.faults.size());
    case stage:
        return static_cast<int>(verdict.stage);
    case tree:
    case family:
    case reason:
        return QByteArray::fromStdString(naturalSortKey(words(row, column).toStdString()));
    default:
        return figure(row, column).value_or(kNoFigure);
    }
}

int MeritTableModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

int MeritTableModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : columnTotal;
}

QVariant MeritTableModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) {
        return {};
    }
    const MeritRow& row = m_rows[static_cast<std::size_t>(index.row())];
    switch (role) {
    case kSortRole:
        return sortKey(row, index.column());
    case kUrgencyRole:
        return static_cast<qulonglong>(row.urgency);
    case MeritPlotCells::kPlotRole:
        return index.column() == plot ? QVariant::fromValue(plotOf(row)) : QVariant();
    case Qt::DisplayRole:
        return words(row, index.column());
    case Qt::AccessibleTextRole:
        return index.column() == plot ? words(row, merit) : words(row, index.column());
    case Qt::ToolTipRole:
        return index.column() == faults || index.column() == family
                   ? words(row, index.column())
                   : words(row, reason) + QLatin1Char('\n') + gateWords(row.verdict->gate);
    case Qt::TextAlignmentRole: {
        const bool isFigure = index.column() == reliability || index.column() == aboveFloor ||
                              index.column() == aboveBest || index.column() == aboveMargin;
        return QVariant(Qt::AlignVCenter |
                        (isFigure && figure(row, index.column()) ? Qt::AlignRight : Qt::AlignLeft));
    }
    case Qt::ForegroundRole:
        if (index.column() == faults) {
            return currentTheme().blood;
        }
        return row.verdict->fairlyTested() ? QVariant() : QVariant(currentTheme().secondInk);
    default:
        return {};
    }
}

QVariant MeritTableModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || (role != Qt::DisplayRole && role != Qt::ToolTipRole)) {
        return {};
    }
    const double margin = m_report ? m_report->question.choices.thresholds.margin : 0.5;
    switch (section) {
    case tree:
        return tr("tree");
    case slot:
        return tr("slot");
    case plot:
        return tr("%1 to %2").arg(numberText(m_low, 0), numberText(m_high, 0));
    case merit:
        return ranksTrait() ? tr("worth ± error") : tr("merit ± error, points");
    case suggestion:
        return tr("suggestion");
    case aboveFloor:
        return tr("P(above floor)");
    case aboveBest:
        return tr("P(above best)");
    case aboveMargin:
        return tr("P(by %1)").arg(numberText(margin, 1));
    case reliability:
        return tr("reliability");
    case evidence:
        return tr("evidence");
    case faults:
        return tr("faults");
    case stage:
        return tr("stage");
    case family:
        return tr("family");
    default:
        return tr("why");
    }
}

} // namespace pipwright::ui
