#pragma once

#include "core/evaluation/planned_table.h"
#include "core/orchard/typed_score.h"

#include <QWidget>

#include <optional>
#include <vector>

class QLineEdit;
class QPushButton;
class QStackedWidget;

namespace pipwright::ui {

class ChipRow;
class EntryModel;
class EntryTable;
class FlowText;
class NoticeBar;
class OpenBook;
class SittingPapers;

/// A planned sitting whose key is sealed: its papers to print, and the sheets to type in, a taster
/// after the other, each in his own order. Nothing here tells what stands behind a code.
class PlannedPage : public QWidget {
    Q_OBJECT

  public:
    explicit PlannedPage(OpenBook& book, QWidget* parent = nullptr);

    /// False when the sitting has no sealed key: it is shown elsewhere.
    bool showSitting(TastingId tasting);
    void refresh();
    /// The papers first, for a plan that was just made.
    void showPapers();
    /// To the first line that waits.
    void beginEntry();

    [[nodiscard]] ChipRow* tasterChips() const { return m_tasters; }
    [[nodiscard]] EntryTable* table() const { return m_table; }
    [[nodiscard]] EntryModel* model() const { return m_model; }
    [[nodiscard]] QLineEdit* bestLine() const { return m_best; }
    [[nodiscard]] QPushButton* openButton() const { return m_open; }
    [[nodiscard]] QLineEdit* reasonLine() const { return m_reason; }
    [[nodiscard]] QPushButton* papersButton() const { return m_toPapers; }
    [[nodiscard]] SittingPapers* papers() const { return m_papers; }
    [[nodiscard]] NoticeBar* notice() const { return m_notice; }
    [[nodiscard]] QString stateWords() const;

  Q_SIGNALS:
    /// The key was opened: the sitting can be looked at.
    void opened();
    /// Escape: to the list.
    void leftAlone();

  protected:
    void keyPressEvent(QKeyEvent* event) override;

  private:
    void build();
    [[nodiscard]] QWidget* buildEntry();
    void connectParts();
    void say();
    void showTaster(const QString& key);
    void write(int row, const TypedScore& typed);
    void writeBest();
    void goOn();
    void askToOpen();
    void open(const std::string& reason);
    [[nodiscard]] const TasterSheet* chosenSheet() const;
    [[nodiscard]] QString nameOf(PersonId taster) const;

    OpenBook& m_book;
    std::optional<TastingId> m_tasting;
    std::optional<PlannedTable> m_planned;

    FlowText* m_heading;
    FlowText* m_state;
    QStackedWidget* m_stack;
    QWidget* m_entry;
    SittingPapers* m_papers;
    QPushButton* m_toPapers;
    ChipRow* m_tasters;
    EntryModel* m_model;
    EntryTable* m_table;
    FlowText* m_hint;
    QLineEdit* m_best;
    NoticeBar* m_notice;
    QWidget* m_reasonBar;
    FlowText* m_reasonFor;
    QLineEdit* m_reason;
    QPushButton* m_open;
};

} // namespace pipwright::ui
