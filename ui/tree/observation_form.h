#pragma once

#include "core/orchard/traits.h"
#include "ui/tree/entry_form.h"

#include <optional>

class QLineEdit;

namespace pipwright::ui {

class ChipRow;
class FlowText;
class InexactDateEdit;

/// A trait, found by typing, and its value in the trait's unit or words.
class ObservationForm : public EntryForm {
    Q_OBJECT

  public:
    explicit ObservationForm(OpenBook& book, QWidget* parent = nullptr);

    QString title(const QString& called) const override;
    void begin(const EntryTarget& target) override;
    QWidget* firstField() const override;
    bool goOn(const QWidget* field) override;
    Result<ChangeSet> edits(const EntryTarget& target, const EditContext& context) override;
    void saved() override;
    bool needsOneDay() const override { return false; }

    [[nodiscard]] QLineEdit* traitLine() const { return m_traitLine; }
    [[nodiscard]] ChipRow* traitChips() const { return m_traits; }
    [[nodiscard]] QLineEdit* valueLine() const { return m_value; }
    [[nodiscard]] ChipRow* stateChips() const { return m_states; }
    [[nodiscard]] QLineEdit* instrumentLine() const { return m_instrument; }
    [[nodiscard]] FlowText* caution() const { return m_caution; }

  private:
    void match();
    void choose(const QString& traitId);
    [[nodiscard]] QWidget* valueField() const;
    Outcome readInto(Observation& what) const;

    std::optional<Trait> m_trait;
    std::optional<TraitId> m_best; ///< the best match of what is typed
    QLineEdit* m_traitLine;
    ChipRow* m_traits;
    FlowText* m_method;
    QLineEdit* m_value;
    ChipRow* m_states;
    QLineEdit* m_instrument; ///< only for readings of an instrument
    FlowText* m_caution;
    InexactDateEdit* m_day;
    QLineEdit* m_remark;
};

} // namespace pipwright::ui
