#include "ui/merit/threshold_panel.h"

#include "ui/book/merit_words.h"
#include "ui/widgets/flow_text.h"
#include "ui/widgets/theme.h"

#include <QComboBox>
#include <QDoubleSpinBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QPushButton>
#include <QSignalBlocker>
#include <QSpinBox>
#include <QVBoxLayout>

#include <cmath>

namespace pipwright::ui {

namespace {

QSpinBox* countBox(int most) {
    auto* box = new QSpinBox;
    box->setRange(0, most);
    return box;
}

} // namespace

ThresholdPanel::ThresholdPanel(QWidget* parent)
    : QWidget(parent), m_margin(new QDoubleSpinBox),
      m_chances{ChanceLine{&VerdictThresholds::watchAboveFloor, countBox(100)},
                ChanceLine{&VerdictThresholds::cullBelowFloor, countBox(100)},
                ChanceLine{&VerdictThresholds::backUpAboveBest, countBox(100)},
                ChanceLine{&VerdictThresholds::nameAboveBest, countBox(100)}},
      m_years(countBox(20)), m_lots(countBox(20)), m_purpose(new QComboBox),
      m_reset(new QPushButton(tr("Back to the proposals"))),
      m_refusal(new FlowText({}, FlowText::Weight::fault)) {
    build();
    setChoices({});
}

void ThresholdPanel::build() {
    const Theme& theme = lightTheme();
    m_margin->setRange(0, 4);
    m_margin->setSingleStep(0.1);
    m_margin->setDecimals(1);
    m_margin->setSuffix(tr(" points"));
    for (const Purpose one :
         {Purpose::dessert, Purpose::cooking, Purpose::cider, Purpose::keeper}) {
        m_purpose->addItem(purposeWord(one), static_cast<int>(one));
    }
    const std::array words = {
        tr("Watched from P(above the floor)"), tr("Culled from P(below the floor)"),
        tr("Backed up from P(above the best)"), tr("Talked of as a name from P(above the best)")};
    auto* left = new QFormLayout;
    auto* right = new QFormLayout;
    for (std::size_t at = 0; at < m_chances.size(); ++at) {
        m_chances[at].box->setSuffix(tr(" %"));
        m_chances[at].box->setAccessibleName(words[at]);
        left->addRow(words[at], m_chances[at].box);
        connect(m_chances[at].box, &QSpinBox::valueChanged, this, &ThresholdPanel::take);
    }
    m_margin->setAccessibleName(tr("Clearly better means by"));
    m_years->setAccessibleName(tr("Crop years tasted before a name"));
    m_lots->setAccessibleName(tr("Fair lots before it is judged"));
    m_purpose->setAccessibleName(tr("Faults are judged for"));
    right->addRow(tr("Clearly better means by"), m_margin);
    right->addRow(tr("Crop years tasted before a name"), m_years);
    right->addRow(tr("Fair lots before it is judged"), m_lots);
    right->addRow(tr("Faults are judged for"), m_purpose);
    connect(m_margin, &QDoubleSpinBox::valueChanged, this, &ThresholdPanel::take);
    connect(m_years, &QSpinBox::valueChanged, this, &ThresholdPanel::take);
    connect(m_lots, &QSpinBox::valueChanged, this, &ThresholdPanel::take);
    connect(m_purpose, &QComboBox::currentIndexChanged, this, &ThresholdPanel::take);
    connect(m_reset, &QPushButton::clicked, this, [this] {
        setChoices({});
        Q_EMIT changed(m_choices);
    });
    auto* across = new QHBoxLayout;
    across->setSpacing(2 * theme.margin);
    across->addLayout(left);
    across->addLayout(right);
    across->addStretch(1);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(theme.space, theme.gap, theme.space, theme.gap);
    column->setSpacing(theme.space);
    column->addWidget(new FlowText(tr("They only suggest: no stage changes by itself. They are "
                                      "yours on this computer, for all books.")));
    column->addLayout(across);
    column->addWidget(m_refusal);
    column->addWidget(m_reset, 0, Qt::AlignLeft);
    column->addStretch(1);
}

void ThresholdPanel::fill() {
    const VerdictThresholds& all = m_choices.thresholds;
    const QSignalBlocker margin(m_margin);
    const QSignalBlocker years(m_years);
    const QSignalBlocker lots(m_lots);
    const QSignalBlocker purpose(m_purpose);
    m_margin->setValue(all.margin);
    m_years->setValue(all.nameCropYears);
    m_lots->setValue(all.fairLots);
    m_purpose->setCurrentIndex(m_purpose->findData(static_cast<int>(m_choices.purpose)));
    for (const ChanceLine& line : m_chances) {
        const QSignalBlocker quiet(line.box);
        line.box->setValue(static_cast<int>(std::lround(100 * all.*line.member)));
    }
}

void ThresholdPanel::setChoices(const KeptChoices& choices) {
    m_choices = choices;
    fill();
    m_refusal->clear();
    m_refusal->hide();
}

void ThresholdPanel::take() {
    KeptChoices now;
    now.thresholds.margin = m_margin->value();
    now.thresholds.nameCropYears = m_years->value();
    now.thresholds.fairLots = m_lots->value();
    now.purpose = static_cast<Purpose>(m_purpose->currentData().toInt());
    for (const ChanceLine& line : m_chances) {
        now.thresholds.*line.member = line.box->value() / 100.0;
    }
    const Outcome checked = checkThresholds(now.thresholds);
    m_refusal->setVisible(!checked);
    if (!checked) {
        m_refusal->setText(tr("These contradict each other: one and the same seedling would be "
                              "watched and culled. Nothing has changed yet."));
        return;
    }
    m_choices = now;
    Q_EMIT changed(m_choices);
}

} // namespace pipwright::ui
