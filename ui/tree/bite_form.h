#pragma once

#include "ui/tree/entry_form.h"

class QComboBox;
class QLineEdit;
class QSpinBox;

namespace pipwright::ui {

class ChipRow;
class FlowText;
class NoticeBar;

/// What a line such as "7h crisp, aniseed" says.
struct BiteWords {
    std::optional<double> liking;
    QString words;
};
/// Reads a liking of 1 to 9, whole or half ("7", "7.5", "7,5", "7h"), then words; either may be
/// missing. A number off the scale is refused.
Result<BiteWords> readBite(const QString& typed);

/// One fruit eaten in the row: liking and words in one line, and how the fruit came to the mouth.
class BiteForm : public EntryForm {
    Q_OBJECT

  public:
    explicit BiteForm(OpenBook& book, QWidget* parent = nullptr);

    QString title(const QString& called) const override;
    void begin(const EntryTarget& target) override;
    QWidget* firstField() const override;
    Result<ChangeSet> edits(const EntryTarget& target, const EditContext& context) override;
    void saved() override;
    bool isForOne() const override { return true; }
    bool needsOneDay() const override { return false; }

    [[nodiscard]] QLineEdit* line() const { return m_line; }
    [[nodiscard]] ChipRow* origin() const { return m_origin; }
    [[nodiscard]] ChipRow* soundness() const { return m_soundness; }
    [[nodiscard]] ChipRow* ripeness() const { return m_ripeness; }
    [[nodiscard]] ChipRow* storage() const { return m_storage; }
    [[nodiscard]] QSpinBox* days() const { return m_days; }
    /// What is said of fallen or hurt fruit; hidden while the fruit is neither.
    [[nodiscard]] FlowText* caution() const { return m_caution; }

  private:
    void fillChips();
    void understand();
    void refreshCaution();
    [[nodiscard]] LotCondition condition(Date day) const;

    QLineEdit* m_line;
    FlowText* m_understood;
    QComboBox* m_taster;
    ChipRow* m_origin;
    ChipRow* m_soundness;
    ChipRow* m_ripeness;
    ChipRow* m_storage;
    QSpinBox* m_days;
    FlowText* m_caution;
};

} // namespace pipwright::ui
