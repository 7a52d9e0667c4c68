#include "ui/merit/look_back_panel.h"

#include "ui/widgets/flow_text.h"
#include "ui/widgets/number_text.h"
#include "ui/widgets/plain_table.h"
#include "ui/widgets/theme.h"

#include <QDateEdit>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QStandardItemModel>
#include <QVBoxLayout>

namespace pipwright::ui {

namespace {

constexpr int kYearsBack = 3;
constexpr int kWidestLookBackColumn = 420;
constexpr std::size_t kMostNamed = 6;

QDate qtDate(Date date) {
    return {date.year(), static_cast<int>(date.month()), static_cast<int>(date.day())};
}

QString namesOf(const OrchardView& view, const std::vector<Index>& genotypes) {
    QStringList names;
    for (const Index one : genotypes) {
        if (static_cast<std::size_t>(names.size()) == kMostNamed) {
            names << LookBackPanel::tr("%n more", nullptr,
                                       static_cast<int>(genotypes.size() - kMostNamed));
            break;
        }
        names << QString::fromStdString(view.genotypes()[one].called());
    }
    return names.join(QStringLiteral(", "));
}

} // namespace

LookBackPanel::LookBackPanel(QWidget* parent)
    : QWidget(parent), m_day(new QDateEdit), m_back(new QPushButton(tr("&Set the book back"))),
      m_today(new QPushButton(tr("Back to &today"))), m_words(new FlowText),
      m_model(new QStandardItemModel(this)),
      m_table(new PlainTable(tr("What each threshold would have culled"))) {
    const Theme& theme = lightTheme();
    m_day->setCalendarPopup(true);
    m_day->setAccessibleName(tr("Day the book is set back to"));
    m_table->setModel(m_model);
    m_today->setEnabled(false);
    auto* word = new QLabel(tr("As the book stood on"));
    word->setBuddy(m_day);
    auto* head = new QHBoxLayout;
    head->setSpacing(theme.space);
    head->addWidget(word);
    head->addWidget(m_day);
    head->addWidget(m_back);
    head->addWidget(m_today);
    head->addStretch(1);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(theme.space, theme.gap, theme.space, theme.gap);
    column->setSpacing(theme.space);
    column->addLayout(head);
    column->addWidget(m_words);
    column->addWidget(m_table, 1);
    connect(m_back, &QPushButton::clicked, this, [this] {
        const QDate day = m_day->date();
        Q_EMIT dayWanted(Date::of(day.year(), static_cast<unsigned>(day.month()),
                                  static_cast<unsigned>(day.day())));
    });
    connect(m_today, &QPushButton::clicked, this, [this] { Q_EMIT dayWanted(std::nullopt); });
    setReport(nullptr);
}

void LookBackPanel::setToday(Date today) {
    m_day->setMaximumDate(qtDate(today));
    m_day->setDate(QDate(today.year() - kYearsBack, 12, 31));
}

void LookBackPanel::setReport(const MeritReportPointer& report) {
    const bool isBack = report && report->question.asOf;
    m_model->clear();
    m_today->setEnabled(isBack);
    m_table->setVisible(isBack && report->regrets);
    if (!isBack) {
        m_words->setText(tr("Would you have culled then what is among your best now? Set the book "
                            "back to a day: tastings, walk marks, faults, decisions and elections "
                            "count up to it; pedigree and identity stay as they are known today."));
        return;
    }
    fill(*report);
}

void LookBackPanel::fill(const MeritReport& report) {
    if (!report.regrets) {
        m_words->setText(report.lack ? QString::fromStdString(report.lack->what)
                                     : tr("There is nothing to compare with today."));
        return;
    }
    const RegretTable& regrets = *report.regrets;
    m_words->setText(tr("Judged then: %n seedling(s). Best tenth now: %1. A seedling that was "
                        "truly culled could not prove the rule wrong, so look at those tasted "
                        "since.",
                        nullptr, regrets.judgedThen)
                         .arg(namesOf(*report.view, regrets.bestTenth)));
    m_model->setHorizontalHeaderLabels({tr("rule"), tr("would have culled"), tr("tasted since"),
                                        tr("among the best now"), tr("which")});
    const auto add = [&](const QString& rule, const RegretRow& row) {
        const QStringList cells = {
            rule, QString::number(row.culled.size()), QString::number(row.culledTastedSince),
            tr("%1, tasted since %2").arg(row.regretted.size()).arg(row.regrettedTastedSince),
            namesOf(*report.view, row.regretted)};
        QList<QStandardItem*> items;
        for (const QString& cell : cells) {
            items << new QStandardItem(cell);
            items.back()->setEditable(false);
            items.back()->setToolTip(cell);
        }
        m_model->appendRow(items);
    };
    for (const RegretRow& row : regrets.rows) {
        add(tr("cull from P(below the floor) %1").arg(chanceText(row.threshold)), row);
    }
    add(tr("what you had culled"), regrets.decided);
    m_table->fitColumns(kWidestLookBackColumn);
}

} // namespace pipwright::ui
