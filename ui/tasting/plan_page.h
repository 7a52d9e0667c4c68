#pragma once

#include "core/evaluation/orchard_view.h"
#include "core/plan/sitting_plan.h"

#include <QWidget>

#include <optional>
#include <vector>

class QLineEdit;
class QPushButton;

namespace pipwright::ui {

class ChipRow;
class FlowText;
class InexactDateEdit;
class NoticeBar;
class OpenBook;
class PlainTable;
class PlanLotsModel;
class PlanView;
class SheetTable;
class TasterRow;

/// A sitting before it is held: lots, tasters, blind or sighted on the left; on the right, live,
/// the codes in each taster's order and everything there is to say about it. What is typed stays
/// until it is kept.
class PlanPage : public QWidget {
    Q_OBJECT

  public:
    explicit PlanPage(OpenBook& book, QWidget* parent = nullptr);

    /// To the first cell that waits for something. `sittings` are those of the book, newest first.
    void begin(std::vector<Tasting> sittings);
    [[nodiscard]] bool isBegun() const;
    /// One change set for the whole plan; says what is missing otherwise.
    bool keep();
    void startAgain();
    /// The book has moved.
    void refresh();

    [[nodiscard]] SheetTable* table() const { return m_table; }
    [[nodiscard]] PlanLotsModel* model() const { return m_model; }
    [[nodiscard]] TasterRow* tasters() const { return m_tasters; }
    [[nodiscard]] InexactDateEdit* dateEdit() const { return m_date; }
    [[nodiscard]] ChipRow* sightChips() const { return m_sight; }
    [[nodiscard]] NoticeBar* notice() const { return m_notice; }
    [[nodiscard]] QPushButton* treesButton() const { return m_trees; }
    [[nodiscard]] QPushButton* benchmarkButton() const { return m_benchmark; }
    [[nodiscard]] QPushButton* repeatButton() const { return m_repeat; }
    [[nodiscard]] QPushButton* twiceButton() const { return m_twice; }
    [[nodiscard]] QPushButton* drawButton() const { return m_draw; }
    [[nodiscard]] PlainTable* orders() const;
    /// Everything said about the plan.
    [[nodiscard]] QString remarks() const;
    /// The plan as it stands; nothing while it cannot be made.
    [[nodiscard]] const std::optional<SittingPlan>& plan() const { return m_plan; }

  Q_SIGNALS:
    /// The plan is in the book.
    void kept(pipwright::TastingId tasting);
    /// Escape: to the list; nothing is lost.
    void leftAlone();
    void begunChanged();

  protected:
    void keyPressEvent(QKeyEvent* event) override;
    void showEvent(QShowEvent* event) override;

  private:
    void build();
    [[nodiscard]] QWidget* buildLeft();
    void connectParts();
    void addTrees();
    void startRow(int row);
    [[nodiscard]] std::vector<Index> treesToAdd() const;
    void takeBenchmark();
    void turnTwice();
    void takeRepeat();
    void propose();
    void look();
    void sayCell();
    [[nodiscard]] std::optional<SittingWish> wish() const;

    OpenBook& m_book;
    std::vector<Tasting> m_sittings;
    std::vector<std::string> m_usedCodes;
    std::uint64_t m_drawn = 1;
    std::optional<SittingPlan> m_plan;
    std::optional<Problem> m_problem;
    std::optional<int> m_benchmarkDays;
    std::optional<int> m_repeatDays;
    QString m_benchmarkName;
    bool m_looking = false;

    InexactDateEdit* m_date;
    QLineEdit* m_title;
    ChipRow* m_sight;
    TasterRow* m_tasters;
    PlanLotsModel* m_model;
    SheetTable* m_table;
    FlowText* m_hint;
    FlowText* m_fault;
    QPushButton* m_trees;
    QPushButton* m_benchmark;
    QPushButton* m_repeat;
    QPushButton* m_twice;
    QPushButton* m_draw;
    PlanView* m_view;
    NoticeBar* m_notice;
    QPushButton* m_keep;
    QPushButton* m_later;
    QPushButton* m_again;
};

} // namespace pipwright::ui
