#pragma once

#include "core/units/uuid.h"
#include "ui/tasting/sitting_list.h"

#include <QWidget>

#include <memory>
#include <optional>
#include <unordered_set>
#include <vector>

class QLineEdit;
class QPushButton;
class QStackedWidget;
class QTimer;

namespace pipwright::ui {

class ChipRow;
class EmptyPlace;
class FlowText;
class OpenBook;
class PlainTable;
class PlannedPage;
class PlanPage;
class SittingListModel;
class SittingPage;
class SittingResult;
class SittingSheet;
class SittingView;

/// The place "Tastings": every sitting of the book, newest first, the chosen one as lots by
/// tasters, the sheet of a new one, and the plan of one that is to be held. A planned one shows its
/// sheets until the key is opened, then what they say.
class TastingsPlace : public QWidget {
    Q_OBJECT

  public:
    explicit TastingsPlace(OpenBook& book, QWidget* parent = nullptr);
    ~TastingsPlace() override;

    /// Opens the sheet, as it was left.
    void newSitting();
    /// Opens the plan, as it was left.
    void planSitting();

    [[nodiscard]] PlainTable* list() const { return m_list; }
    [[nodiscard]] SittingPage* page() const { return m_page; }
    [[nodiscard]] SittingSheet* sheet() const { return m_sheet; }
    [[nodiscard]] PlanPage* planPage() const { return m_plan; }
    [[nodiscard]] PlannedPage* plannedPage() const { return m_planned; }
    [[nodiscard]] SittingResult* result() const;
    [[nodiscard]] QPushButton* planButton() const { return m_planNew; }
    [[nodiscard]] ChipRow* shownChips() const { return m_shown; }
    [[nodiscard]] QLineEdit* filterLine() const { return m_filter; }
    [[nodiscard]] QPushButton* newButton() const { return m_new; }
    [[nodiscard]] bool isEntering() const;

  Q_SIGNALS:
    /// The condition of a lot of the shown sitting is to be put right.
    void conditionWanted(const pipwright::Lot& lot, const pipwright::Date& tasted);

  protected:
    void showEvent(QShowEvent* event) override;

  private:
    void build();
    void connectParts();
    void follow(const std::vector<Change>& changes);
    void refresh();
    void readInBackground();
    void take(Result<std::vector<TastingEntry>> read, std::int64_t position);
    void showLines();
    void showChosen();
    void closeSheet();
    void findOnly();
    void takeFound(int search, const Result<std::unordered_set<Uuid>>& found);
    void nameButtons();
    void refreshShown();

    OpenBook& m_book;
    std::vector<TastingEntry> m_entries;
    std::vector<Change> m_missed; ///< changes since the list was last in step
    std::optional<std::unordered_set<Uuid>> m_only;
    std::optional<std::int64_t> m_read; ///< the journal's position the entries stand at
    int m_search = 0;                   ///< counts what was looked for; only the last is wanted
    bool m_reading = false;
    bool m_stale = true;
    std::shared_ptr<bool> m_alive = std::make_shared<bool>(true);

    QWidget* m_left;
    ChipRow* m_shown;
    QLineEdit* m_filter;
    QTimer* m_delay;
    FlowText* m_words;
    QPushButton* m_new;
    QPushButton* m_planNew;
    PlainTable* m_list;
    SittingListModel* m_model;
    QStackedWidget* m_right;
    SittingView* m_held;
    SittingPage* m_page;
    SittingSheet* m_sheet;
    PlanPage* m_plan;
    PlannedPage* m_planned;
    EmptyPlace* m_empty;
};

} // namespace pipwright::ui
