#include "ui/tree/verdict_card.h"

#include "ui/book/merit_desk.h"
#include "ui/book/merit_words.h"
#include "ui/widgets/flow_text.h"
#include "ui/widgets/icons.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

namespace pipwright::ui {

VerdictCard::VerdictCard(QWidget* parent)
    : QWidget(parent), m_verdict(new FlowText({}, FlowText::Weight::strong)),
      m_evidence(new FlowText({}, FlowText::Weight::small)),
      m_link(new QPushButton(icon(IconName::merit), tr("Merit"))) {
    setAccessibleName(tr("Verdict"));
    m_link->setAccessibleName(tr("Where the verdict comes from"));
    m_link->setToolTip(m_link->accessibleName());
    auto* words = new QVBoxLayout;
    words->setSpacing(2);
    words->addWidget(m_verdict);
    words->addWidget(m_evidence);
    auto* across = new QHBoxLayout(this);
    across->setContentsMargins(12, 0, 10, 0);
    across->addLayout(words, 1);
    across->addWidget(m_link, 0, Qt::AlignTop);
    connect(m_link, &QPushButton::clicked, this, &VerdictCard::meritWanted);
    hide();
}

void VerdictCard::setDesk(const MeritDesk* desk) {
    m_desk = desk;
    if (desk != nullptr) {
        connect(desk, &MeritDesk::reportChanged, this, &VerdictCard::present);
        connect(desk, &MeritDesk::stateChanged, this, &VerdictCard::present);
    }
    present();
}

void VerdictCard::show(std::optional<Index> genotype) {
    m_genotype = genotype;
    present();
}

QString VerdictCard::verdict() const {
    return m_verdict->text();
}

QString VerdictCard::evidence() const {
    return m_evidence->text();
}

void VerdictCard::present() {
    const MeritReportPointer report = m_desk == nullptr ? nullptr : m_desk->report();
    const SeedlingVerdict* found = report && m_genotype ? report->verdictOn(*m_genotype) : nullptr;
    setVisible(found != nullptr);
    if (found == nullptr) {
        return;
    }
    m_verdict->setText(verdictLine(*report->view, *found));
    QString rest = tr("Suggested: %1. %2.")
                       .arg(suggestionWord(found->suggestion), evidenceWords(found->evidence));
    if (m_desk->isStale()) {
        rest += QLatin1Char(' ') + tr("From before the last edit.");
    }
    m_evidence->setText(rest);
}

} // namespace pipwright::ui
