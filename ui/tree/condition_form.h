#pragma once

#include "ui/tree/entry_form.h"

namespace pipwright::ui {

class ConditionFields;

/// A lot whose condition can be put right, and the day of its sitting.
struct KeptLot {
    Lot lot;
    Date tasted;
};

/// Puts the condition of a lot right that is in the book already: one edit, with its undo.
class ConditionForm : public EntryForm {
    Q_OBJECT

  public:
    explicit ConditionForm(OpenBook& book, QWidget* parent = nullptr);
    void setLot(const KeptLot& kept);

    QString title(const QString& called) const override;
    QWidget* firstField() const override;
    Result<ChangeSet> edits(const EntryTarget& target, const EditContext& context) override;
    /// How fair a test the lot is now.
    QString confirmation() const override;
    void saved() override {}
    bool isForOne() const override { return true; }
    bool hasDay() const override { return false; }

    [[nodiscard]] ConditionFields* fields() const { return m_fields; }

  private:
    KeptLot m_kept;
    ConditionFields* m_fields;
};

} // namespace pipwright::ui
