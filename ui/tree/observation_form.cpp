#include "ui/tree/observation_form.h"

#include "core/orchard/fruit_traits.h"
#include "core/orchard/inexact_value.h"
#include "core/units/text.h"
#include "ui/book/book_words.h"
#include "ui/book/open_book.h"
#include "ui/tree/fruit_words.h"
#include "ui/widgets/chip_row.h"
#include "ui/widgets/flow_text.h"
#include "ui/widgets/inexact_date_edit.h"
#include "ui/widgets/number_text.h"

#include <QLineEdit>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include <algorithm>

namespace pipwright::ui {

namespace {

constexpr std::size_t kMostTraits = 6;

QString idText(const Uuid& id) {
    return QString::fromStdString(id.text());
}

} // namespace

ObservationForm::ObservationForm(OpenBook& book, QWidget* parent)
    : EntryForm(book, parent), m_traitLine(new QLineEdit(this)),
      m_traits(new ChipRow(tr("Traits that match"), this)),
      m_method(new FlowText({}, FlowText::Weight::small, this)), m_value(new QLineEdit(this)),
      m_states(new ChipRow(tr("Value"), this)), m_instrument(new QLineEdit(this)),
      m_caution(new FlowText({}, FlowText::Weight::strong, this)),
      m_day(new InexactDateEdit(book.today(), this)), m_remark(new QLineEdit(this)) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(4);
    const std::initializer_list<QWidget*> all = {m_traitLine, m_traits, m_method,
                                                 m_caution,   m_value,  m_instrument,
                                                 m_states,    m_day,    m_remark};
    for (QWidget* one : all) {
        layout->addWidget(one);
    }
    m_traitLine->setAccessibleName(tr("Trait"));
    m_traitLine->setPlaceholderText(tr("trait, as scab or mass, then Enter"));
    m_value->setAccessibleName(tr("Value"));
    m_instrument->setAccessibleName(tr("Instrument"));
    m_day->line()->setAccessibleName(tr("The day observed, as the value"));
    m_remark->setAccessibleName(tr("Remark"));
    m_remark->setPlaceholderText(tr("remark (may stay empty)"));
    connect(m_traitLine, &QLineEdit::textEdited, this, &ObservationForm::match);
    connect(m_traits, &ChipRow::choiceMade, this, &ObservationForm::choose);
    choose({});
}

QString ObservationForm::title(const QString& called) const {
    return tr("Observation on %1").arg(called);
}

void ObservationForm::begin(const EntryTarget&) {
    m_day->setToday(m_book.today());
    if (!m_trait) {
        match();
    }
}

QWidget* ObservationForm::firstField() const {
    return m_trait ? valueField() : m_traitLine;
}

void ObservationForm::match() {
    m_trait.reset();
    const std::string wanted = foldedForSearch(m_traitLine->text().toStdString());
    std::vector<std::pair<int, const Trait*>> found;
    const OrchardView::Pointer view = m_book.view();
    for (const Trait& trait : view->traits()) {
        // By its name in the window's language, and by the one it has in the book.
        const std::size_t at =
            std::min(foldedForSearch(traitName(trait).toStdString()).find(wanted),
                     foldedForSearch(trait.name).find(wanted));
        if (at != std::string::npos && trait.scale != ScaleKind::unknown) {
            found.emplace_back(at == 0 ? 0 : 1, &trait);
        }
    }
    std::stable_sort(found.begin(), found.end(),
                     [](const auto& a, const auto& b) { return a.first < b.first; });
    found.resize(std::min(found.size(), kMostTraits));
    std::vector<Chip> chips;
    chips.reserve(found.size());
    for (const auto& [rank, trait] : found) {
        chips.push_back({idText(trait->id.uuid),
                         traitName(*trait),
                         {},
                         QString::fromStdString(trait->description)});
    }
    m_best = found.empty() ? std::nullopt : std::optional(found.front().second->id);
    m_traits->setChips(chips);
    choose({});
    if (chips.empty()) {
        m_method->setText(tr("No trait of the book is called so."));
    }
}

void ObservationForm::choose(const QString& traitId) {
    const auto id = Uuid::fromText(traitId.toStdString());
    const Trait* trait = id ? m_book.view()->trait(TraitId(*id)) : nullptr;
    m_trait = trait != nullptr ? std::optional(*trait) : std::nullopt;
    const ScaleKind scale = trait != nullptr ? trait->scale : ScaleKind::unknown;
    m_traits->setVisible(trait == nullptr);
    m_value->setVisible(scale == ScaleKind::numeric || scale == ScaleKind::text);
    m_states->setVisible(scale == ScaleKind::ordinal || scale == ScaleKind::nominal);
    m_day->setVisible(scale == ScaleKind::date);
    m_remark->setVisible(trait != nullptr && scale != ScaleKind::text);
    const std::string key = trait != nullptr ? trait->key : std::string();
    const QString instrument = instrumentHint(key);
    m_instrument->setVisible(!instrument.isEmpty());
    if (!instrument.isEmpty() && instrument != m_instrument->placeholderText()) {
        m_instrument->clear(); // what was written for another trait
        m_instrument->setPlaceholderText(instrument);
    }
    m_caution->setText(measuringCaution(key));
    m_caution->setVisible(!m_caution->text().isEmpty());
    m_method->setText(trait != nullptr ? QString::fromStdString(trait->method)
                                       : tr("Enter takes the first."));
    if (trait == nullptr) {
        return;
    }
    const QSignalBlocker quiet(m_traitLine);
    m_traitLine->setText(traitName(*trait));
    m_value->setPlaceholderText(scale == ScaleKind::numeric
                                    ? tr("13, ~13, <12 or 13-14, in %1")
                                          .arg(trait->unit.empty()
                                                   ? tr("steps of the scale")
                                                   : QString::fromStdString(trait->unit))
                                    : tr("in words"));
    std::vector<Chip> chips;
    for (const TraitState* state : m_book.view()->statesOf(trait->id)) {
        // Up to nine the rank is one key; beyond that the arrows go along.
        const QString letter = state->rank < 10 ? QString::number(state->rank) : QString();
        chips.push_back({idText(state->id.uuid), traitStateName(*state), letter,
                         QString::fromStdString(state->meaning)});
    }
    m_states->setChips(chips);
    valueField()->setFocus(Qt::TabFocusReason);
}

QWidget* ObservationForm::valueField() const {
    const ScaleKind scale = m_trait ? m_trait->scale : ScaleKind::unknown;
    if (scale == ScaleKind::ordinal || scale == ScaleKind::nominal) {
        return m_states;
    }
    return scale == ScaleKind::date ? static_cast<QWidget*>(m_day) : m_value;
}

bool ObservationForm::goOn(const QWidget* field) {
    if (field != m_traitLine) {
        return false;
    }
    if (!m_trait && m_best) {
        choose(idText(m_best->uuid));
        return true;
    }
    return false;
}

Outcome ObservationForm::readInto(Observation& what) const {
    switch (m_trait->scale) {
    case ScaleKind::numeric: {
        const auto value = readValueOf(*m_trait, m_value->text().toStdString());
        if (!value) {
            return value.problem();
        }
        what.value = value->low;
        what.valueTo = value->high;
        what.qualifier = value->qualifier;
        what.typed = value->typed;
        what.unitTyped = value->unitTyped;
        return {};
    }
    case ScaleKind::ordinal:
    case ScaleKind::nominal: {
        const auto key = m_states->chosen();
        const auto id = key ? Uuid::fromText(key->toStdString()) : std::nullopt;
        if (!id) {
            return missing(tr("No value is chosen."), tr("Choose one of the words."));
        }
        what.state = TraitStateId(*id);
        what.qualifier = Qualifier::exact;
        return {};
    }
    case ScaleKind::date: {
        const auto day = m_day->date();
        if (!day) {
            return missing(tr("The value is a day, and none can be read."),
                           tr("Type it as 22 Aug or 2026-08-22."));
        }
        what.valueDate = day->from;
        what.typed = day->typed;
        what.qualifier = day->isOneDay() ? Qualifier::exact : Qualifier::about;
        return {};
    }
    case ScaleKind::text:
        if (m_value->text().trimmed().isEmpty()) {
            return missing(tr("There are no words."), tr("Type what you saw."));
        }
        what.words = m_value->text().trimmed().toStdString();
        return {};
    case ScaleKind::unknown:
        break;
    }
    return missing(tr("The trait has no scale."), tr("Choose another trait."));
}

Result<ChangeSet> ObservationForm::edits(const EntryTarget& target, const EditContext& context) {
    if (!m_trait) {
        return missing(tr("No trait is chosen."), tr("Type its name, then Enter."));
    }
    Observation what;
    what.trait = m_trait->id;
    if (auto outcome = readInto(what); !outcome) {
        return outcome.problem();
    }
    if (m_trait->scale != ScaleKind::text) {
        what.words = m_remark->text().trimmed().toStdString();
    }
    if (!instrumentHint(m_trait->key).isEmpty()) {
        what.instrument = m_instrument->text().trimmed().toStdString();
    }
    return observationOn(target.trees, what, m_trait->name, context);
}

void ObservationForm::saved() {
    // The probe stays on the penetrometer; the juice's temperature is another one each time.
    if (!m_trait || m_trait->key != trait_key::kFirmness) {
        m_instrument->clear();
    }
    m_traitLine->clear();
    m_value->clear();
    m_remark->clear();
    m_day->clear();
    m_states->setChosen(std::nullopt);
    match();
}

} // namespace pipwright::ui
