#pragma once

#include "ui/rows/filter_spec.h"

#include <QWidget>

#include <map>
#include <optional>
#include <vector>

class QAction;
class QComboBox;
class QLabel;
class QLineEdit;
class QToolButton;

namespace pipwright::ui {

/// One line above the map: words, stages, family, bounds of a trait. Says what it means as a value.
class MapFilterBar : public QWidget {
    Q_OBJECT

  public:
    explicit MapFilterBar(QWidget* parent = nullptr);

    /// Offers these families and traits; what was chosen stays chosen where it still exists.
    void setFacts(const FilterFacts& facts);
    [[nodiscard]] FilterSpec spec() const;
    /// Shows a filter; tells it only when it differs from before. The last of its bounds stands in
    /// the fields, those before it as buttons that take them away.
    void setSpec(const FilterSpec& spec);
    void clear() { setSpec({}); }
    /// The bounds that hold beside the one in the fields.
    [[nodiscard]] const std::vector<QToolButton*>& furtherBounds() const { return m_further; }
    /// Keeps the bound in the fields and frees them for another.
    [[nodiscard]] QToolButton* andButton() const { return m_and; }
    /// "132 of 450 trees" at the end of the line.
    void setCount(std::size_t shown, std::size_t all);

  Q_SIGNALS:
    void filterChanged(const pipwright::ui::FilterSpec& spec);
    /// Escape was pressed in an empty field: the person wants back to the map.
    void left();

  protected:
    void keyPressEvent(QKeyEvent* event) override;

  private:
    void makeStageMenu();
    void tell();
    void describeStages();
    [[nodiscard]] std::optional<TraitBound> boundInFields() const;
    void showFurther();
    [[nodiscard]] QString boundWords(const TraitBound& bound) const;

    QLineEdit* m_text;
    QToolButton* m_stages;
    QComboBox* m_family;
    QComboBox* m_trait;
    QLineEdit* m_low;
    QLineEdit* m_high;
    QToolButton* m_and;
    QToolButton* m_clear;
    QLabel* m_count;
    QWidget* m_furtherLine;
    std::vector<QToolButton*> m_further;
    std::vector<TraitBound> m_kept;
    std::map<Stage, QAction*> m_stageActions;
    FilterSpec m_told;
    bool m_filling = false;
};

} // namespace pipwright::ui
