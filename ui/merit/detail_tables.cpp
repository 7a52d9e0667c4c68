#include "ui/merit/detail_tables.h"

#include "ui/book/merit_words.h"
#include "ui/book/orchard_words.h"
#include "ui/widgets/flow_text.h"
#include "ui/widgets/number_text.h"
#include "ui/widgets/plain_table.h"
#include "ui/widgets/theme.h"

#include <QHeaderView>
#include <QStandardItemModel>
#include <QVBoxLayout>

namespace pipwright::ui {

namespace {

constexpr int kWidestDetailColumn = 320;

/// A correction that does nothing is not worth a figure.
QString correctionText(double change) {
    return std::abs(change) < 0.005 ? QStringLiteral("–") : signedText(change, 2);
}

void addLine(QStandardItemModel* model, const QStringList& cells, int firstFigure) {
    QList<QStandardItem*> items;
    for (int column = 0; column < cells.size(); ++column) {
        auto* item = new QStandardItem(cells[column]);
        item->setEditable(false);
        item->setToolTip(cells[column]);
        item->setTextAlignment(Qt::AlignVCenter |
                               (column >= firstFigure ? Qt::AlignRight : Qt::AlignLeft));
        items << item;
    }
    model->appendRow(items);
}

PlainTable* tableOf(QStandardItemModel* model, const QString& name) {
    auto* table = new PlainTable(name);
    table->setModel(model);
    table->horizontalHeader()->setStretchLastSection(false);
    return table;
}

QString wordsOfRecord(const TraitRecord& record) {
    QStringList words;
    for (const ConditionAmount& amount : record.conditions) {
        words << conditionWord(amount);
    }
    return words.isEmpty() ? ScoreTable::tr("fair, prime, fresh")
                           : words.join(QStringLiteral(", "));
}

} // namespace

ScoreTable::ScoreTable(QWidget* parent)
    : QWidget(parent), m_model(new QStandardItemModel(this)),
      m_table(tableOf(m_model, tr("Its scores, raw and corrected"))) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_table);
}

void ScoreTable::clear() {
    m_model->clear();
}

void ScoreTable::show(const MeritDetail& detail) {
    m_model->clear();
    m_model->setHorizontalHeaderLabels({tr("day"), tr("taster"), tr("fruit and moment"),
                                        tr("as eaten"), tr("fruit"), tr("taster"),
                                        tr("day and year"), tr("corrected")});
    if (!detail.model) {
        return;
    }
    const TraitRecords& all = detail.model->records();
    for (const CorrectedRecord& one : detail.records) {
        const TraitRecord& record = all.records[one.record];
        const auto person =
            record.person < 0 ? std::nullopt
                              : std::optional(all.persons[static_cast<std::size_t>(record.person)]);
        addLine(m_model,
                {dateText(record.date), personWords(*detail.report->view, person),
                 wordsOfRecord(record), numberText(one.raw, 1), correctionText(one.conditions),
                 correctionText(one.taster), correctionText(one.moment),
                 numberText(one.corrected(), 1)},
                3);
    }
    m_table->fitColumns(kWidestDetailColumn);
}

SettleView::SettleView(QWidget* parent)
    : QWidget(parent), m_model(new QStandardItemModel(this)), m_advice(new FlowText),
      m_table(tableOf(m_model, tr("Tastings that could be held"))),
      m_years(new FlowText({}, FlowText::Weight::small)) {
    const Theme& theme = lightTheme();
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(theme.space, theme.gap, theme.space, theme.gap);
    column->setSpacing(theme.gap);
    column->addWidget(m_advice);
    column->addWidget(m_table, 1);
    column->addWidget(m_years);
}

QString SettleView::advice() const {
    return m_advice->text();
}

void SettleView::clear(const QString& why) {
    m_model->clear();
    m_advice->setText(why);
    m_years->clear();
}

void SettleView::show(const MeritDetail& detail) {
    if (!detail.question || detail.powers.empty()) {
        const SeedlingVerdict* verdict = detail.report->verdictOn(detail.genotype);
        const QString lack = verdict == nullptr ? QString() : lackWords(verdict->lack);
        clear(lack.isEmpty() ? tr("Nothing to settle: there is no rung of a ladder that its "
                                  "verdict hangs on.")
                             : lack);
        return;
    }
    m_model->clear();
    m_model->setHorizontalHeaderLabels({tr("tasting"), tr("scores"), tr("chance moves by"),
                                        tr("changes the verdict"), tr("error after, points"),
                                        tr("reliability after")});
    for (const SettlingPower& power : detail.powers) {
        addLine(m_model,
                {planWords(power.plan), QString::number(power.plan.scores()),
                 tr("%1 on average").arg(chanceText(power.expectedMove)),
                 chanceText(power.flipChance),
                 QStringLiteral("± ") + numberText(power.errorAfter, 2),
                 numberText(power.reliabilityAfter, 2)},
                1);
    }
    m_table->fitColumns(2 * kWidestDetailColumn);
    const OrchardView& view = *detail.report->view;
    const QString reference =
        QString::fromStdString(view.genotypes()[detail.question->reference].called());
    QString words =
        tr("Better than %1 today: %2.").arg(reference, chanceText(detail.powers.front().now));
    if (detail.next) {
        const SettlingPower& next = detail.powers[*detail.next];
        words += QLatin1Char(' ') +
                 tr("The one sitting that tells most: %1. It moves that chance by %2 on average.")
                     .arg(planWords(next.plan), chanceText(next.expectedMove));
    }
    m_advice->setText(words);
    QStringList years;
    for (const YearOutlook& year : detail.years) {
        years
            << tr("%n crop year(s): %1", nullptr, year.cropYears).arg(chanceText(year.reachChance));
    }
    m_years->setText(
        years.isEmpty()
            ? QString()
            : tr("Chance to be sure enough of standing above %1 to be named, tasted beside it by "
                 "three tasters once a crop year: %2.")
                  .arg(reference, years.join(QStringLiteral("; "))));
}

} // namespace pipwright::ui
