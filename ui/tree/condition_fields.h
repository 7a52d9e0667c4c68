#pragma once

#include "core/history/edits.h"
#include "core/orchard/storage_path.h"

#include <QString>
#include <QWidget>

#include <vector>

class QLineEdit;
class QSpinBox;

namespace pipwright::ui {

class ChipRow;
class FlowText;

/// How fruit came to the mouth, as chips: how it left the tree, sound or hurt, ripeness, where it
/// was kept and how long, also one place after another. Every letter is there once, and works from
/// any of the rows.
class ConditionFields : public QWidget {
    Q_OBJECT

  public:
    /// What is asked beyond the four rows of a bite.
    enum class Asked { bite, alsoBag };

    explicit ConditionFields(Asked asked, QWidget* parent = nullptr);

    /// Shows a condition; what has no field here is kept and given back by condition().
    void setCondition(const LotCondition& condition);
    /// As chosen. `eaten` is the day of the bite, from which the day off the tree is counted. The
    /// Problem says what is wrong with the path of places.
    [[nodiscard]] Result<LotCondition> condition(Date eaten) const;
    /// Whether anything at all is chosen.
    [[nodiscard]] bool anyChosen() const;
    void clear();

    [[nodiscard]] ChipRow* origin() const { return m_origin; }
    [[nodiscard]] ChipRow* soundness() const { return m_soundness; }
    [[nodiscard]] ChipRow* ripeness() const { return m_ripeness; }
    [[nodiscard]] ChipRow* storage() const { return m_storage; }
    [[nodiscard]] ChipRow* bag() const { return m_bag; }
    [[nodiscard]] QSpinBox* days() const { return m_days; }
    /// Where several places are typed, as "f5 c2".
    [[nodiscard]] QLineEdit* path() const { return m_path; }
    [[nodiscard]] FlowText* pathMeaning() const { return m_pathMeaning; }
    /// What is said of fallen or hurt fruit; hidden while the fruit is neither.
    [[nodiscard]] FlowText* caution() const { return m_caution; }

  Q_SIGNALS:
    void changed();

  protected:
    void keyPressEvent(QKeyEvent* event) override;

  private:
    void fillChips();
    void layOut();
    void refresh();
    [[nodiscard]] QString cautionWords() const;
    [[nodiscard]] Result<StoredPath> typedPath() const;

    LotCondition m_kept;
    ChipRow* m_origin;
    ChipRow* m_soundness;
    ChipRow* m_ripeness;
    ChipRow* m_storage;
    ChipRow* m_bag;
    QSpinBox* m_days;
    QLineEdit* m_path;
    FlowText* m_pathMeaning;
    FlowText* m_caution;
    std::vector<ChipRow*> m_rows;
};

/// "5 days in the fridge, then 2 days on the counter": a path in the order it was typed.
QString pathWords(const StoredPath& path);

} // namespace pipwright::ui
