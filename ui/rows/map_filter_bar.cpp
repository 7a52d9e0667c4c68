#include "ui/rows/map_filter_bar.h"

#include "ui/rows/map_words.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/icons.h"

#include <QAction>
#include <QComboBox>
#include <QDoubleValidator>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QMenu>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>

namespace pipwright::ui {

namespace {

QLineEdit* boundField(QWidget* parent, const QString& name, const QString& hint) {
    auto* field = new QLineEdit(parent);
    field->setAccessibleName(name);
    field->setToolTip(name);
    field->setPlaceholderText(hint);
    field->setMaximumWidth(70);
    field->setEnabled(false);
    field->setValidator(new QDoubleValidator(field));
    return field;
}

std::optional<double> numberIn(const QLineEdit& field) {
    bool isNumber = false;
    const double value = QLocale().toDouble(field.text().trimmed(), &isNumber);
    return isNumber ? std::optional(value) : std::nullopt;
}

QString written(std::optional<double> number) {
    return number ? QLocale().toString(*number, 'g', 6) : QString();
}

} // namespace

MapFilterBar::MapFilterBar(QWidget* parent)
    : QWidget(parent), m_text(new QLineEdit(this)), m_stages(new QToolButton(this)),
      m_family(new QComboBox(this)), m_trait(new QComboBox(this)),
      m_low(boundField(this, tr("Lowest value of the trait"), tr("from"))),
      m_high(boundField(this, tr("Highest value of the trait"), tr("to"))),
      m_and(new QToolButton(this)), m_clear(new QToolButton(this)), m_count(new QLabel(this)),
      m_furtherLine(new QWidget(this)) {
    setAccessibleName(tr("Filter of the map"));
    m_text->setAccessibleName(tr("Words to filter by"));
    m_text->setPlaceholderText(tr("Code, family, row/place"));
    m_text->setClearButtonEnabled(true);
    m_text->setMinimumWidth(100);
    m_family->setAccessibleName(tr("Family"));
    m_family->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_family->setMinimumContentsLength(9);
    m_trait->setAccessibleName(tr("Trait with bounds"));
    m_trait->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_trait->setMinimumContentsLength(8);
    m_and->setText(tr("and"));
    m_and->setAccessibleName(tr("Another trait with bounds"));
    m_and->setToolTip(tr("Keep this bound and choose another trait"));
    m_and->setAutoRaise(true);
    m_clear->setIcon(icon(IconName::close));
    m_clear->setAccessibleName(tr("Clear the filter"));
    m_clear->setToolTip(tr("Clear the filter"));
    m_clear->setAutoRaise(true);
    m_count->setAccessibleName(tr("Trees that pass the filter"));
    makeStageMenu();

    m_furtherLine->setAccessibleName(tr("Further bounds"));
    auto* further = new FlowLayout(m_furtherLine);
    further->setContentsMargins(0, 0, 0, 0);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(4);
    auto* fields = new QWidget(this);
    auto* line = new FlowLayout(fields); // on a narrow window they go on in a second line
    line->setContentsMargins(0, 0, 0, 0);
    column->addWidget(fields);
    column->addWidget(m_furtherLine);
    m_count->setMinimumHeight(m_text->sizeHint().height()); // in line with the fields
    for (QWidget* widget :
         {static_cast<QWidget*>(m_text), static_cast<QWidget*>(m_stages),
          static_cast<QWidget*>(m_family), static_cast<QWidget*>(m_trait),
          static_cast<QWidget*>(m_low), static_cast<QWidget*>(m_high), static_cast<QWidget*>(m_and),
          static_cast<QWidget*>(m_clear), static_cast<QWidget*>(m_count)}) {
        line->addWidget(widget);
    }

    setFacts({});
    for (QLineEdit* field : {m_text, m_low, m_high}) {
        connect(field, &QLineEdit::textChanged, this, &MapFilterBar::tell);
    }
    connect(m_family, &QComboBox::currentIndexChanged, this, &MapFilterBar::tell);
    connect(m_trait, &QComboBox::currentIndexChanged, this, [this](int index) {
        m_low->setEnabled(index > 0);
        m_high->setEnabled(index > 0);
        tell();
    });
    connect(m_and, &QToolButton::clicked, this, [this] {
        if (const auto bound = boundInFields()) {
            FilterSpec wider = spec();
            wider.bounds.push_back({{}, {}, {}}); // no trait yet
            setSpec(wider);
            m_trait->setFocus(Qt::OtherFocusReason);
        }
    });
    connect(m_clear, &QToolButton::clicked, this, &MapFilterBar::clear);
    tell();
}

void MapFilterBar::makeStageMenu() {
    m_stages->setAccessibleName(tr("Stages"));
    m_stages->setPopupMode(QToolButton::InstantPopup);
    m_stages->setToolButtonStyle(Qt::ToolButtonTextOnly);
    auto* menu = new QMenu(m_stages);
    for (const Stage stage : stagesInOrder()) {
        QAction* action = menu->addAction(stageWord(stage));
        action->setCheckable(true);
        connect(action, &QAction::toggled, this, &MapFilterBar::tell);
        m_stageActions.emplace(stage, action);
    }
    m_stages->setMenu(menu);
}

void MapFilterBar::setFacts(const FilterFacts& facts) {
    FilterSpec before = spec();
    std::erase_if(before.bounds, [&facts](const TraitBound& bound) {
        return std::none_of(facts.traits.begin(), facts.traits.end(),
                            [&bound](const FilterTrait& one) { return one.key == bound.trait; });
    });
    m_filling = true;
    m_family->clear();
    m_family->addItem(tr("Every family"));
    for (const QString& family : facts.families) {
        m_family->addItem(family, family);
    }
    m_trait->clear();
    m_trait->addItem(tr("No trait"));
    for (const FilterTrait& trait : facts.traits) {
        m_trait->addItem(trait.title, trait.key);
    }
    m_filling = false;
    setSpec(before);
}

FilterSpec MapFilterBar::spec() const {
    FilterSpec spec;
    spec.text = m_text->text().trimmed();
    for (const Stage stage : stagesInOrder()) {
        if (m_stageActions.at(stage)->isChecked()) {
            spec.stages.push_back(stage);
        }
    }
    if (m_family->currentIndex() > 0) {
        spec.family = m_family->currentData().toString();
    }
    spec.bounds = m_kept;
    if (auto bound = boundInFields()) {
        spec.bounds.push_back(std::move(*bound));
    }
    return spec;
}

std::optional<TraitBound> MapFilterBar::boundInFields() const {
    const auto low = numberIn(*m_low);
    const auto high = numberIn(*m_high);
    if (m_trait->currentIndex() <= 0 || (!low && !high)) {
        return std::nullopt;
    }
    return TraitBound{m_trait->currentData().toString(), low, high};
}

QString MapFilterBar::boundWords(const TraitBound& bound) const {
    const int at = m_trait->findData(bound.trait);
    const QString trait = at < 0 ? bound.trait : m_trait->itemText(at);
    if (bound.low && bound.high) {
        return tr("%1 from %2 to %3").arg(trait, written(bound.low), written(bound.high));
    }
    return bound.low ? tr("%1 from %2 on").arg(trait, written(bound.low))
                     : tr("%1 up to %2").arg(trait, written(bound.high));
}

void MapFilterBar::showFurther() {
    for (QToolButton* button : m_further) {
        m_furtherLine->layout()->removeWidget(button);
        button->hide();
        button->deleteLater();
    }
    m_further.clear();
    for (std::size_t i = 0; i < m_kept.size(); ++i) {
        auto* button = new QToolButton;
        const QString words = boundWords(m_kept[i]);
        button->setText(words);
        button->setIcon(icon(IconName::close));
        button->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
        button->setToolTip(tr("Take this bound away"));
        button->setAccessibleName(tr("Take away: %1").arg(words));
        button->setFocusPolicy(Qt::StrongFocus);
        connect(button, &QToolButton::clicked, this, [this, i] {
            m_kept.erase(m_kept.begin() + static_cast<std::ptrdiff_t>(i));
            showFurther();
            tell();
        });
        m_furtherLine->layout()->addWidget(button);
        m_further.push_back(button);
    }
    m_furtherLine->setVisible(!m_further.empty());
}

void MapFilterBar::setSpec(const FilterSpec& spec) {
    m_filling = true;
    m_text->setText(spec.text);
    for (const auto& [stage, action] : m_stageActions) {
        action->setChecked(std::find(spec.stages.begin(), spec.stages.end(), stage) !=
                           spec.stages.end());
    }
    m_family->setCurrentIndex(spec.family ? std::max(0, m_family->findData(*spec.family)) : 0);
    const TraitBound last = spec.bounds.empty() ? TraitBound{} : spec.bounds.back();
    m_trait->setCurrentIndex(last.trait.isEmpty() ? 0 : std::max(0, m_trait->findData(last.trait)));
    m_low->setText(written(last.low));
    m_high->setText(written(last.high));
    m_kept = spec.bounds;
    if (!m_kept.empty()) {
        m_kept.pop_back();
    }
    showFurther();
    m_filling = false;
    tell();
}

void MapFilterBar::setCount(std::size_t shown, std::size_t all) {
    const QLocale locale;
    const QString total = locale.toString(static_cast<qulonglong>(all));
    if (shown != all) {
        m_count->setText(
            tr("%1 of %2 trees").arg(locale.toString(static_cast<qulonglong>(shown)), total));
    } else if (all == 1) {
        m_count->setText(tr("1 tree"));
    } else {
        m_count->setText(tr("%1 trees").arg(total));
    }
}

void MapFilterBar::tell() {
    if (m_filling) {
        return;
    }
    describeStages();
    const FilterSpec now = spec();
    m_clear->setVisible(!now.isEmpty());
    m_and->setVisible(boundInFields().has_value());
    if (!(now == m_told)) {
        m_told = now;
        Q_EMIT filterChanged(now);
    }
}

void MapFilterBar::describeStages() {
    const std::vector<Stage> stages = spec().stages;
    if (stages.empty()) {
        m_stages->setText(tr("Every stage"));
    } else if (stages.size() == 1) {
        m_stages->setText(stageWord(stages.front()));
    } else {
        m_stages->setText(tr("%n stages", nullptr, static_cast<int>(stages.size())));
    }
}

void MapFilterBar::keyPressEvent(QKeyEvent* event) {
    if (event->key() != Qt::Key_Escape) {
        QWidget::keyPressEvent(event);
        return;
    }
    if (m_text->text().isEmpty()) {
        Q_EMIT left();
    } else {
        m_text->clear();
    }
    event->accept();
}

} // namespace pipwright::ui
