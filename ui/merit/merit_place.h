#pragma once

#include "ui/book/merit_desk.h"

#include <QWidget>

#include <memory>
#include <optional>

class QPushButton;
class QStackedWidget;
class QTabWidget;

namespace pipwright::ui {

class ElidedText;
class EmptyPlace;
class FlowText;
class LadderPanel;
class LookBackPanel;
struct MeritDetail;
class MeritDetailReader;
class MeritFilterBar;
class MeritOrder;
class MeritTableModel;
class NoticeBar;
class OpenBook;
class PaperPanel;
class PlainTable;
class ScoreTable;
class SettleView;
class ThresholdPanel;
class WaterfallView;

/// The place "Merit": every fruited seedling against the ladder of its slot, and for one of them
/// where its merit comes from and what would settle it. Another question than the one the desk
/// keeps (a trait, a day set back) is worked out on a desk of this place's own.
class MeritPlace : public QWidget {
    Q_OBJECT

  public:
    MeritPlace(OpenBook& book, MeritDesk& desk, QWidget* parent = nullptr);
    ~MeritPlace() override;

    [[nodiscard]] MeritTableModel* ranking() const { return m_ranking; }
    [[nodiscard]] MeritOrder* order() const { return m_order; }
    [[nodiscard]] PlainTable* table() const { return m_table; }
    [[nodiscard]] MeritFilterBar* filterBar() const { return m_filter; }
    [[nodiscard]] WaterfallView* waterfall() const { return m_waterfall; }
    [[nodiscard]] ScoreTable* scores() const { return m_scores; }
    [[nodiscard]] SettleView* settle() const { return m_settle; }
    [[nodiscard]] LadderPanel* ladders() const { return m_ladders; }
    [[nodiscard]] ThresholdPanel* thresholds() const { return m_thresholds; }
    [[nodiscard]] LookBackPanel* lookBack() const { return m_lookBack; }
    [[nodiscard]] QTabWidget* tabs() const { return m_tabs; }
    [[nodiscard]] QPushButton* printButton() const { return m_print; }
    /// Says that what stands here is from before the last edit, or of a day set back.
    [[nodiscard]] ElidedText* state() const { return m_state; }
    [[nodiscard]] NoticeBar* notice() const { return m_notice; }
    [[nodiscard]] bool isEmpty() const;
    [[nodiscard]] bool isPaper() const;
    /// What is shown is what the book says now, details included.
    [[nodiscard]] bool isSettled() const;
    /// The seedling whose waterfall is shown.
    [[nodiscard]] std::optional<Index> shownGenotype() const { return m_genotype; }

  Q_SIGNALS:
    /// Enter on a tree: it is selected, its sheet is wanted.
    void treeActivated();

  protected:
    void showEvent(QShowEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

  private:
    void build();
    QWidget* buildRanking();
    QWidget* buildTabs();
    QWidget* buildPaper();
    void connectParts();
    [[nodiscard]] MeritDesk& desk() const { return m_own ? *m_own : m_desk; }
    void askOther(std::optional<Date> asOf);
    void want();
    void takeReport();
    void tellState();
    void dressColumns();
    void followTree();
    void takeRow(bool byUser);
    void askDetail();
    void takeDetail(const std::shared_ptr<const MeritDetail>& detail);
    void applyFilter();
    void showPaper();
    void showRanking();

    OpenBook& m_book;
    MeritDesk& m_desk;
    std::unique_ptr<MeritDesk> m_own; ///< for another question
    MeritTableModel* m_ranking;
    MeritOrder* m_order;
    QStackedWidget* m_pages;
    EmptyPlace* m_empty;
    NoticeBar* m_notice;
    MeritFilterBar* m_filter;
    ElidedText* m_state;
    QPushButton* m_print;
    PlainTable* m_table;
    QTabWidget* m_tabs;
    WaterfallView* m_waterfall;
    ScoreTable* m_scores;
    SettleView* m_settle;
    LadderPanel* m_ladders;
    ThresholdPanel* m_thresholds;
    LookBackPanel* m_lookBack;
    PaperPanel* m_paper;
    MeritDetailReader* m_details;
    std::optional<Index> m_genotype;
    bool m_waiting = true;    ///< a report has come that is not shown yet
    bool m_following = false; ///< the row is moved by the program
    bool m_fitted = false;
};

} // namespace pipwright::ui
