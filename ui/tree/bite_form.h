#pragma once

#include "core/evaluation/fairness.h"
#include "ui/tree/entry_form.h"

class QComboBox;
class QLineEdit;

namespace pipwright::ui {

class ConditionFields;
class FlowText;

/// What a line such as "7h crisp, aniseed" says.
struct BiteWords {
    std::optional<double> liking;
    QString words;
};
/// Reads a liking of 1 to 9, whole or half ("7", "7.5", "7,5", "7h"), then words; either may be
/// missing. A number off the scale is refused.
Result<BiteWords> readBite(const QString& typed);

/// One fruit eaten in the row: liking and words in one line, and how the fruit came to the mouth.
/// The condition stays for the next bite, and the form says so.
class BiteForm : public EntryForm {
    Q_OBJECT

  public:
    explicit BiteForm(OpenBook& book, QWidget* parent = nullptr);

    QString title(const QString& called) const override;
    void begin(const EntryTarget& target) override;
    QWidget* firstField() const override;
    void heedDay(const std::optional<Date>& day) override;
    Result<ChangeSet> edits(const EntryTarget& target, const EditContext& context) override;
    /// "Bite of AT17-014 kept, but not as a fair test: fallen, over-ripe."
    QString confirmation() const override;
    void saved() override;
    bool isForOne() const override { return true; }
    bool needsOneDay() const override { return false; }

    [[nodiscard]] QLineEdit* line() const { return m_line; }
    [[nodiscard]] ConditionFields* fields() const { return m_fields; }
    /// What was understood of the line, and how fair a test it would be.
    [[nodiscard]] FlowText* understood() const { return m_understood; }
    /// Says that fruit called ripe is weeks ahead of the usual day of its genotype; else hidden.
    [[nodiscard]] FlowText* early() const { return m_early; }
    /// Says that the condition is the one of the last bite; hidden while none was taken over.
    [[nodiscard]] QWidget* carried() const { return m_carried; }

  private:
    void understand();
    /// The bite whose condition was carried over is taken back: nothing is carried from it.
    void heed(const std::vector<Change>& changes);
    [[nodiscard]] Fairness fairness() const;
    [[nodiscard]] QString earlyWords() const;

    QLineEdit* m_line;
    FlowText* m_understood;
    FlowText* m_early;
    ConditionFields* m_fields;
    QComboBox* m_taster; ///< behind the condition, also for the Tab key
    QWidget* m_carried;
    FlowText* m_carriedWords;
    std::optional<Index> m_genotype; ///< of the tree the form is open for
    std::optional<Date> m_day;
    QString m_saving;              ///< the tree the bite being saved is of
    std::optional<Uuid> m_saveLot; ///< and the fruit eaten
    QString m_lastTree;            ///< the tree of the last bite that was saved
    std::optional<Uuid> m_lastLot;
};

} // namespace pipwright::ui
