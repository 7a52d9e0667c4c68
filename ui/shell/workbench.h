#pragma once

#include "core/units/result.h"

#include <QString>
#include <QWidget>

#include <memory>
#include <optional>

class QSplitter;
class QStackedWidget;

namespace pipwright::ui {

class ComparePlace;
class CrossesPlace;
class FinderLine;
class GraftingPlace;
class MeritDesk;
class MeritPlace;
class NavigationRail;
class NoticeBar;
class OpenBook;
class PaperPlace;
class RowsPlace;
class SeasonPlace;
class StatusLine;
class TastingsPlace;
class TreeSheet;

/// The open book on the desk: the rail of places, the place one is in, the sheet of the selected
/// tree, the finder line above and the bottom line below.
class Workbench : public QWidget {
    Q_OBJECT

  public:
    explicit Workbench(std::unique_ptr<OpenBook> book, QWidget* parent = nullptr);
    ~Workbench() override;

    [[nodiscard]] OpenBook& book() { return *m_book; }

    /// "rows", "tastings", "compare", "merit", "season", "crosses", "grafting", "paper".
    void goTo(const QString& place);
    [[nodiscard]] QString place() const;
    /// The id of the selected tree as text; empty when none is selected.
    [[nodiscard]] QString currentTree() const;
    /// Goes on where the book was left: place and tree as place() and currentTree() gave them.
    /// What is no longer there is passed over.
    void goOnWith(const QString& place, const QString& tree);

    [[nodiscard]] RowsPlace* rows() const { return m_rows; }
    [[nodiscard]] ComparePlace* comparePlace() const { return m_compare; }
    [[nodiscard]] MeritPlace* merit() const { return m_merit; }
    /// What the whole book says of merit, kept up to date.
    [[nodiscard]] MeritDesk& meritDesk() const { return *m_meritDesk; }
    [[nodiscard]] SeasonPlace* season() const { return m_season; }
    [[nodiscard]] TastingsPlace* tastings() const { return m_tastings; }
    [[nodiscard]] GraftingPlace* grafting() const { return m_grafting; }
    [[nodiscard]] PaperPlace* paper() const { return m_paper; }
    [[nodiscard]] TreeSheet* sheet() const { return m_sheet; }
    [[nodiscard]] FinderLine* finder() const { return m_finder; }
    [[nodiscard]] StatusLine* statusLine() const { return m_status; }
    [[nodiscard]] NoticeBar* notice() const { return m_notice; }
    [[nodiscard]] NavigationRail* rail() const { return m_rail; }

    void find(const QString& begin);
    void foldSheet(bool folded);
    [[nodiscard]] bool isSheetFolded() const;
    [[nodiscard]] QByteArray splitterState() const;
    void restoreSplitter(const QByteArray& state);

    /// The selected genotype lies beside the others; a second time shows them.
    void layBeside();
    /// Labels for the selected trees, on the place "Paper".
    void labelSelection();
    /// The walking sheet of what the map shows.
    void walkingSheet();

  Q_SIGNALS:
    void placeChanged(const QString& place);
    void todayWanted();
    void importWanted();
    /// A command was chosen in the finder line, by its id.
    void commandWanted(const QString& id);
    void contextMenuWanted(const QPoint& globalPosition);

  private:
    void build();
    void connectParts();
    void tellSelection();
    void tellToday();
    void tellUndo();
    void takeFound(const QString& id);
    /// What was said of the last tree laid beside has had its time.
    void passOverBeside();

    std::unique_ptr<OpenBook> m_book;
    std::unique_ptr<MeritDesk> m_meritDesk; ///< looks at the book: goes before it
    NavigationRail* m_rail = nullptr;
    QStackedWidget* m_places = nullptr;
    QSplitter* m_splitter = nullptr;
    FinderLine* m_finder = nullptr;
    NoticeBar* m_notice = nullptr;
    bool m_saysBeside = false;
    StatusLine* m_status = nullptr;
    RowsPlace* m_rows = nullptr;
    TastingsPlace* m_tastings = nullptr;
    ComparePlace* m_compare = nullptr;
    MeritPlace* m_merit = nullptr;
    SeasonPlace* m_season = nullptr;
    CrossesPlace* m_crosses = nullptr;
    GraftingPlace* m_grafting = nullptr;
    PaperPlace* m_paper = nullptr;
    TreeSheet* m_sheet = nullptr;
};

} // namespace pipwright::ui
