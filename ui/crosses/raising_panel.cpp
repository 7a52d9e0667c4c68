#include "ui/crosses/raising_panel.h"

#include "ui/crosses/outlook_words.h"
#include "ui/widgets/flow_text.h"
#include "ui/widgets/theme.h"

#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QSpinBox>

#include <array>

namespace pipwright::ui {

namespace {

QSpinBox* countBox(const QString& name, int least, int most, int value) {
    auto* box = new QSpinBox;
    box->setRange(least, most);
    box->setValue(value);
    box->setAccessibleName(name);
    box->setToolTip(name);
    box->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    box->setGroupSeparatorShown(true);
    return box;
}

} // namespace

RaisingPanel::RaisingPanel(QWidget* parent)
    : QWidget(parent), m_assurance(new QComboBox), m_advice(new FlowText), m_verdict(new FlowText) {
    // More can be typed than can be reckoned with: then it is said why.
    constexpr int kMostGenes = 99;
    constexpr int kMostPlants = 9999;
    constexpr int kMostCounted = 99999;
    m_oneParentOnce = countBox(tr("Genes one parent carries once"), 0, kMostGenes, 1);
    m_bothOnce = countBox(tr("Genes both carry once, one copy enough"), 0, kMostGenes, 0);
    m_bothTwice = countBox(tr("Genes both carry once, two copies needed"), 0, kMostGenes, 0);
    m_plants = countBox(tr("Plants wanted"), 1, kMostPlants, 10);
    m_seenWith = countBox(tr("Seedlings seen with it all"), 0, kMostCounted, 0);
    m_seenWithout = countBox(tr("Seedlings seen without"), 0, kMostCounted, 0);
    for (const double assurance : {0.90, 0.95, 0.99}) {
        m_assurance->addItem(tr("%1 % sure").arg(assurance * 100), assurance);
    }
    m_assurance->setCurrentIndex(1);
    m_assurance->setAccessibleName(tr("How sure to be"));
    build();
    for (const QSpinBox* box :
         {m_oneParentOnce, m_bothOnce, m_bothTwice, m_plants, m_seenWith, m_seenWithout}) {
        connect(box, &QSpinBox::valueChanged, this, &RaisingPanel::say);
    }
    connect(m_assurance, &QComboBox::currentIndexChanged, this, &RaisingPanel::say);
    say();
}

void RaisingPanel::build() {
    const Theme& theme = currentTheme();
    const auto beside = [&theme](QWidget* first, QWidget* second, const QString& between) {
        auto* line = new QHBoxLayout;
        line->setSpacing(theme.space);
        line->addWidget(first);
        if (!between.isEmpty()) {
            line->addWidget(new QLabel(between));
        }
        line->addWidget(second);
        line->addStretch(1);
        return line;
    };
    m_advice->setAccessibleName(tr("Seedlings and seeds to raise"));
    m_verdict->setAccessibleName(tr("Whether the counts fit"));
    auto* form = new QFormLayout(this);
    form->setContentsMargins(theme.space, theme.space, theme.space, theme.space);
    form->setHorizontalSpacing(theme.space);
    form->setVerticalSpacing(theme.gap);
    form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    form->addRow(tr("Genes of one parent (1 in 2)"), m_oneParentOnce);
    form->addRow(tr("Of both, one copy (3 in 4)"), m_bothOnce);
    form->addRow(tr("Of both, two copies (1 in 4)"), m_bothTwice);
    form->addRow(tr("Plants wanted"), beside(m_plants, m_assurance, QString()));
    form->addRow(m_advice);
    form->addRow(tr("Seen with it all"), beside(m_seenWith, m_seenWithout, tr("without")));
    form->addRow(m_verdict);
}

void RaisingPanel::setRecord(const RaisingRecord& record) {
    m_record = record;
    say();
}

void RaisingPanel::say() {
    const WantedGenes genes{m_oneParentOnce->value(), m_bothOnce->value(), m_bothTwice->value()};
    const auto advice =
        raisingAdvice(m_plants->value(), genes, m_record, m_assurance->currentData().toDouble());
    constexpr int kMostTogether = 8; // of a hypothesis
    const int together = genes.oneParentOnce + genes.bothOnce + genes.bothOnceTwoCopies;
    if (together > kMostTogether) {
        m_advice->setText(tr("%1 genes at once: no more than %2 can be reckoned with, and already "
                             "8 genes of which both copies are needed meet in 1 of 65,536 "
                             "seedlings. Lower the numbers above.")
                              .arg(together)
                              .arg(kMostTogether));
        m_verdict->clear();
        return;
    }
    m_advice->setText(advice ? raisingText(*advice, m_record)
                             : QString::fromStdString(advice.problem().sentence()));
    const auto classes = wantedClasses(genes);
    const std::array<std::int64_t, 2> counted{m_seenWith->value(), m_seenWithout->value()};
    m_verdict->clear();
    if (!classes || counted[0] + counted[1] == 0) {
        return;
    }
    const auto test = testSegregation(*classes, counted);
    m_verdict->setText(test ? countedText(*test, *classes)
                            : QString::fromStdString(test.problem().sentence()));
}

} // namespace pipwright::ui
