#include "ui/tasting/sitting_result.h"

#include "core/evaluation/planned_table.h"
#include "ui/book/open_book.h"
#include "ui/book/orchard_words.h"
#include "ui/widgets/flow_text.h"
#include "ui/widgets/number_text.h"
#include "ui/widgets/plain_table.h"
#include "ui/widgets/score_mark.h"
#include "ui/widgets/theme.h"

#include <QHeaderView>
#include <QPainter>
#include <QVBoxLayout>

namespace pipwright::ui {

namespace {

enum RankColumn { rankedFruit, rankedDot, rankedMean, rankedBest, rankedTotal };

constexpr int kDotRole = Qt::UserRole + 1;
constexpr int kDotWidth = 170;

/// The mean with its interval on the scale from 1 to 9.
class DotCells : public PaddedCells {
  public:
    using PaddedCells::PaddedCells;
    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override {
        PaddedCells::paint(painter, option, index);
        const QVariantList dot = index.data(kDotRole).toList();
        if (dot.isEmpty()) {
            return;
        }
        IntervalDot mark;
        mark.value = dot[0].toDouble();
        if (dot.size() > 2) {
            mark.low = dot[1].toDouble();
            mark.high = dot[2].toDouble();
        }
        mark.uncertain = !mark.low;
        drawIntervalDot(*painter, QRectF(option.rect).adjusted(6, 0, -6, 0), mark,
                        themeOf(option.widget));
    }
};

QString spreadText(const PointSpread& spread) {
    return SittingResult::tr("%1 points (95 %: %2 to %3)")
        .arg(numberText(spread.deviation, 1), numberText(spread.low, 1),
             numberText(spread.high, 1));
}

QString pText(double p) {
    return p < 0.001 ? SittingResult::tr("p < %1").arg(numberText(0.001, 3))
                     : SittingResult::tr("p = %1").arg(numberText(p, 3));
}

} // namespace

SittingResult::SittingResult(OpenBook& book, QWidget* parent) : QWidget(parent), m_book(book) {
    const Theme& theme = lightTheme();
    m_heading = new FlowText({}, FlowText::Weight::heading);
    m_early = new FlowText({}, FlowText::Weight::fault);
    m_agreement = new FlowText;
    m_repeat = new FlowText;
    m_ranking = new FlowText({}, FlowText::Weight::small);
    m_cells = new QStandardItemModel(this);
    m_table = new PlainTable(tr("The lots, the best liked first"));
    m_table->setModel(m_cells);
    m_table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_table->setItemDelegate(new DotCells(m_table));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(theme.space, theme.space, theme.space, theme.space);
    column->setSpacing(theme.gap);
    column->addWidget(m_heading);
    column->addWidget(m_early);
    column->addWidget(new FlowText(tr("Do the tasters agree?"), FlowText::Weight::strong));
    column->addWidget(m_agreement);
    column->addWidget(new FlowText(tr("What is a score worth?"), FlowText::Weight::strong));
    column->addWidget(m_repeat);
    column->addWidget(new FlowText(tr("Then: the lots"), FlowText::Weight::strong));
    column->addWidget(m_table, 1);
    column->addWidget(m_ranking);
    setFocusProxy(m_table);
}

bool SittingResult::showSitting(const std::vector<TastingId>& tastings) {
    const auto planned = tastings.size() == 1
                             ? readPlannedTable(m_book.store(), tastings.front())
                             : Result<std::optional<PlannedTable>>(std::optional<PlannedTable>{});
    if (!planned || !planned->has_value() || (*planned)->isSealed()) {
        return false;
    }
    const auto sitting = readSitting(*m_book.view(), m_book.store(), tastings);
    if (!sitting) {
        return false;
    }
    const SealedKey& key = (*planned)->key;
    const Tasting& tasting = (*planned)->tasting;
    m_heading->setText(tasting.title.empty() ? dateWithWeekText(tasting.date)
                                             : tr("%1, %2", "title and day of a sitting")
                                                   .arg(QString::fromStdString(tasting.title),
                                                        dateWithWeekText(tasting.date)));
    m_early->setVisible(!key.reason.empty());
    m_early->setText(tr("The key was opened on %1 before every sheet was in: %2")
                         .arg(dateText(*key.opened), QString::fromStdString(key.reason)));
    m_agreement->setText(agreementWords(*sitting));
    m_repeat->setText(repeatWords(*sitting));
    showRanking(*sitting);
    return true;
}

QString SittingResult::agreementWords(const Sitting& sitting) const {
    const auto agreement = agreementOf(sitting);
    if (!agreement) {
        return QString::fromStdString(agreement.problem().sentence());
    }
    const double w = agreement->order.concordance;
    const bool certain = agreement->pValue() < 0.05;
    QString text = (certain ? tr("They put the lots in much the same order: Kendall's W %1 of 1, "
                                 "%2 (%3, %4).")
                            : tr("Their orders agree no better than chance may do: Kendall's W %1 "
                                 "of 1, %2 (%3, %4)."))
                       .arg(numberText(w, 2), pText(agreement->pValue()),
                            tr("%n taster(s)", nullptr, agreement->tasters),
                            tr("%n lot(s)", nullptr, agreement->lots));
    if (agreement->leftOut > 0) {
        text += QLatin1Char(' ') + tr("%n lot(s) are left out, since not all scored them.", nullptr,
                                      agreement->leftOut);
    }
    if (const auto spread = tasterSpread(sitting)) {
        QStringList levels;
        for (const TasterLevel& level : spread->levels) {
            levels << tr("%1 %2").arg(personWords(*m_book.view(), level.taster),
                                      signedText(level.offset, 1));
        }
        text += QLatin1Char(' ') + tr("Levels against the mean of the same lots: %1.")
                                       .arg(levels.join(QStringLiteral(", ")));
    }
    return text;
}

QString SittingResult::repeatWords(const Sitting& sitting) const {
    QStringList sentences;
    for (const RepeatError& error : repeatErrors(*m_book.view(), sitting)) {
        sentences
            << tr("%1 came twice: a taster's own scores of it scatter by %2 (standard deviation of "
                  "one score, %n taster(s)), %3 points apart at most. Its mean is %4 of 9.",
                  nullptr, error.tasters)
                   .arg(QString::fromStdString(error.name), spreadText(error.spread),
                        numberText(error.largestGap, 1), numberText(error.meanLiking, 1));
    }
    if (sentences.isEmpty()) {
        sentences << tr("Nothing was served twice and scored twice by the same taster, so nobody "
                        "knows.");
    }
    return sentences.join(QLatin1Char('\n'));
}

void SittingResult::showRanking(const Sitting& sitting) {
    m_cells->clear();
    const auto ranking = rankingOf(sitting);
    m_table->setVisible(ranking.ok());
    if (!ranking) {
        m_ranking->setText(QString::fromStdString(ranking.problem().sentence()));
        return;
    }
    m_cells->setColumnCount(rankedTotal);
    m_cells->setHorizontalHeaderLabels({tr("fruit"), tr("1 to 9, with its interval"),
                                        tr("mean of 9 (95 %)"), tr("among the best")});
    for (const RankedLot& lot : ranking->lots) {
        const Lot& served = sitting.lots[lot.lot].lot;
        const QString fruit = QString::fromStdString(fruitName(*m_book.view(), served));
        const QString name = served.servingCode.empty()
                                 ? fruit
                                 : tr("%1 (%2)", "fruit and its code")
                                       .arg(fruit, QString::fromStdString(served.servingCode));
        const QString mean = lot.hasInterval ? doubtText(lot.mean, (lot.high - lot.low) / 2, 1)
                                             : numberText(lot.mean, 1);
        QVariantList dot{lot.mean};
        if (lot.hasInterval) {
            dot << lot.low << lot.high;
        }
        auto* drawn = new QStandardItem;
        drawn->setData(dot, kDotRole);
        drawn->setData(mean, Qt::AccessibleTextRole);
        m_cells->appendRow(
            {new QStandardItem(name), drawn, new QStandardItem(mean),
             new QStandardItem(
                 lot.bestOnes == 0
                     ? QString()
                     : tr("named %1×, first %2×").arg(lot.bestOnes).arg(lot.firsts))});
    }
    m_table->fitColumns(2 * kDotWidth);
    m_table->setColumnWidth(rankedDot, kDotWidth);
    QString text =
        tr("As eaten, each taster drawn to the same level, not corrected for condition.");
    if (ranking->leastDifference) {
        text += QLatin1Char(' ') + tr("Two means closer than %1 points cannot be told apart.")
                                       .arg(numberText(*ranking->leastDifference, 1));
    }
    if (ranking->residual) {
        text += QLatin1Char(' ') +
                tr("Scatter of a single score: %1.").arg(spreadText(*ranking->residual));
    }
    m_ranking->setText(text);
}

QString SittingResult::agreement() const {
    return m_agreement->text();
}

QString SittingResult::repeatError() const {
    return m_repeat->text();
}

QString SittingResult::ranking() const {
    return m_ranking->text();
}

} // namespace pipwright::ui
