#include "ui/tasting/plan_view.h"

#include "ui/tasting/plan_words.h"
#include "ui/widgets/flow_text.h"
#include "ui/widgets/plain_table.h"
#include "ui/widgets/theme.h"

#include <QHeaderView>
#include <QStandardItemModel>
#include <QVBoxLayout>

namespace pipwright::ui {

namespace {

constexpr int kPlanViewWidth = 260;
constexpr int kWidestPerson = 168;

} // namespace

PlanView::PlanView(QWidget* parent) : QScrollArea(parent) {
    const Theme& theme = lightTheme();
    m_cells = new QStandardItemModel(this);
    m_orders = new PlainTable(tr("Codes in each taster's order"));
    m_orders->setModel(m_cells);
    m_orders->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_orders->setSizeAdjustPolicy(QAbstractScrollArea::AdjustToContents);
    m_orders->verticalHeader()->show();
    m_reasons = new FlowText({}, FlowText::Weight::second);
    m_warnings = new FlowText;
    auto* inner = new QWidget;
    auto* column = new QVBoxLayout(inner);
    column->setContentsMargins(theme.space, 0, 0, 0);
    column->setSpacing(theme.space);
    column->addWidget(new FlowText(tr("As it will be served"), FlowText::Weight::strong));
    column->addWidget(new FlowText(tastingCaution(), FlowText::Weight::small));
    column->addWidget(m_warnings);
    column->addWidget(m_orders);
    column->addWidget(m_reasons);
    column->addStretch(1);
    setWidget(inner);
    setWidgetResizable(true);
    setFrameShape(QFrame::NoFrame);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setMinimumWidth(kPlanViewWidth);
}

void PlanView::showNone(const std::optional<Problem>& problem) {
    m_cells->clear();
    m_orders->hide();
    m_warnings->hide();
    m_reasons->setText(problem ? QString::fromStdString(problem->sentence())
                               : tr("Name the lots and who tastes: codes and orders appear here."));
}

void PlanView::showPlan(const SittingPlan& plan) {
    m_cells->clear();
    m_orders->show();
    QStringList tasters;
    for (const Person& taster : plan.tasters) {
        tasters << QString::fromStdString(taster.name);
    }
    m_cells->setHorizontalHeaderLabels(tasters);
    for (int place = 0; place < plan.served(); ++place) {
        QList<QStandardItem*> items;
        for (const std::vector<int>& row : plan.orders.rows) {
            const int lot = row[static_cast<std::size_t>(place)];
            items << new QStandardItem(
                QString::fromStdString(plan.lots[static_cast<std::size_t>(lot)].code));
        }
        m_cells->appendRow(items);
    }
    m_orders->fitColumns(kWidestPerson);
    m_orders->updateGeometry();
    QStringList warnings;
    QStringList reasons;
    for (const PlanRemark& one : plan.remarks) {
        (one.isWarning() ? warnings : reasons)
            << (one.isWarning() ? QStringLiteral("⚠ ") : QString()) + planRemarkWords(one);
    }
    m_warnings->setText(warnings.join(QLatin1Char('\n')));
    m_warnings->setVisible(!warnings.isEmpty());
    m_reasons->setText(reasons.join(QLatin1Char('\n')));
}

QString PlanView::remarks() const {
    return m_warnings->text() + QLatin1Char('\n') + m_reasons->text();
}

} // namespace pipwright::ui
