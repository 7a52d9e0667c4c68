#pragma once

#include "core/evaluation/orchard_view.h"
#include "ui/widgets/number_text.h"

#include <QWidget>

#include <optional>

class QMenu;
class QToolButton;
class QVBoxLayout;

namespace pipwright::ui {

class ElidedText;
class FlowText;
struct TreeFacts;

/// What can be done about who a tree is.
enum class IdentityAction {
    confirm,     ///< seen at the tree today
    another,     ///< it is another genotype
    byMap,       ///< tag unreadable, the map says so
    byFruit,     ///< tag unreadable, the fruit says so
    unknown,     ///< nobody knows
    swapTags,    ///< its tag hangs on another tree
    plantBeside, ///< a second plant stands here
    moveRecords, ///< records were put down for the wrong tree
};

/// The head of the sheet: code, name, parents, stage and state, place, roots, who it is and how
/// sure, other plants of the same genotype, other names, label code.
class TreeHead : public QWidget {
    Q_OBJECT

  public:
    explicit TreeHead(QWidget* parent = nullptr);

    void show(const TreeFacts& facts, UnitChoice units);
    using QWidget::show;
    [[nodiscard]] QToolButton* identityButton() const { return m_identityButton; }
    /// All lines of the head in order.
    [[nodiscard]] QStringList lines() const;

  Q_SIGNALS:
    void genotypeWanted(pipwright::Index genotype);
    void plantWanted(pipwright::Index plant);
    void identityActionWanted(pipwright::ui::IdentityAction action);

  private:
    void fillMenu(QMenu* menu);
    void addLine(const QString& text, bool small = false);
    void addParents(const TreeFacts& facts);
    void addNeighbours(const TreeFacts& facts);
    void addPlants(const TreeFacts& facts);
    void clearLines();

    ElidedText* m_code;
    FlowText* m_name;
    QToolButton* m_identityButton;
    QVBoxLayout* m_lines;
};

} // namespace pipwright::ui
