#pragma once

#include "ui/rows/filter_spec.h"

#include <QWidget>

#include <map>

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
    /// Shows a filter; tells it only when it differs from before. Of bounds, the first is shown.
    void setSpec(const FilterSpec& spec);
    void clear() { setSpec({}); }
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

    QLineEdit* m_text;
    QToolButton* m_stages;
    QComboBox* m_family;
    QComboBox* m_trait;
    QLineEdit* m_low;
    QLineEdit* m_high;
    QToolButton* m_clear;
    QLabel* m_count;
    std::map<Stage, QAction*> m_stageActions;
    FilterSpec m_told;
    bool m_filling = false;
};

} // namespace pipwright::ui
