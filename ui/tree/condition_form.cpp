#include "ui/tree/condition_form.h"

#include "core/evaluation/fairness.h"
#include "core/history/sitting_edits.h"
#include "ui/book/open_book.h"
#include "ui/book/orchard_words.h"
#include "ui/tree/condition_fields.h"
#include "ui/widgets/chip_row.h"
#include "ui/widgets/number_text.h"

#include <QVBoxLayout>

namespace pipwright::ui {

ConditionForm::ConditionForm(OpenBook& book, QWidget* parent)
    : EntryForm(book, parent),
      m_fields(new ConditionFields(ConditionFields::Asked::alsoBag, this)) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_fields);
}

void ConditionForm::setLot(const KeptLot& kept) {
    m_kept = kept;
    m_fields->setCondition(conditionOf(kept.lot));
}

QString ConditionForm::title(const QString& called) const {
    return tr("Condition of the fruit of %1 tasted on %2").arg(called, dateText(m_kept.tasted));
}

QWidget* ConditionForm::firstField() const {
    return m_fields->origin();
}

Result<ChangeSet> ConditionForm::edits(const EntryTarget& target, const EditContext& context) {
    const auto condition = m_fields->condition(m_kept.tasted);
    if (!condition) {
        return condition.problem();
    }
    ChangeSet set = conditionCorrected(
        m_kept.lot, *condition, m_kept.tasted,
        "Condition of " + target.trees.front().code + " tasted " + m_kept.tasted.iso(), context);
    if (set.empty()) {
        return missing(tr("Nothing is changed yet."),
                       tr("Choose what is to be put right, or go back with Esc."));
    }
    putCondition(*condition, m_kept.lot);
    return set;
}

QString ConditionForm::confirmation() const {
    return tr("Condition put right. As a test: %1.").arg(fairnessWords(fairnessOf(m_kept.lot)));
}

} // namespace pipwright::ui
