#pragma once

#include <QWidget>

#include <vector>

class QLineEdit;
class QPushButton;

namespace pipwright::ui {

class ChipRow;
class FlowText;
class InexactDateEdit;
class NoticeBar;
class OpenBook;
class SheetModel;
class SheetTable;
class TasterRow;
struct SheetRow;

/// A sitting written down after the event, as it was on the sheets. What is typed stays until it
/// is kept, whichever place is looked at meanwhile.
class SittingSheet : public QWidget {
    Q_OBJECT

  public:
    explicit SittingSheet(OpenBook& book, QWidget* parent = nullptr);

    /// To the first cell that waits for something.
    void begin();
    /// Whether something was typed that is not in the book yet.
    [[nodiscard]] bool isBegun() const;
    /// One change set for the whole sitting; says what is missing otherwise.
    bool keep();
    /// An empty sheet; what stood there can be brought back.
    void startAgain();
    /// The book has moved: people and trees are looked up anew.
    void refresh();

    [[nodiscard]] SheetTable* table() const { return m_table; }
    [[nodiscard]] SheetModel* model() const { return m_model; }
    [[nodiscard]] TasterRow* tasters() const { return m_tasters; }
    [[nodiscard]] InexactDateEdit* dateEdit() const { return m_date; }
    [[nodiscard]] ChipRow* sightChips() const { return m_sight; }
    [[nodiscard]] NoticeBar* notice() const { return m_notice; }
    [[nodiscard]] FlowText* healthWords() const { return m_health; }

  Q_SIGNALS:
    /// The sitting is in the book.
    void kept();
    /// Escape: to the list; nothing is lost.
    void leftAlone();
    /// isBegun may be another one now.
    void begunChanged();

  protected:
    void keyPressEvent(QKeyEvent* event) override;

  private:
    void build();
    void connectParts();
    void takeTasters();
    void sayCell();
    void sayFault();
    void clearSheet();

    OpenBook& m_book;
    InexactDateEdit* m_date;
    QLineEdit* m_title;
    ChipRow* m_sight;
    TasterRow* m_tasters;
    FlowText* m_health;
    SheetModel* m_model;
    SheetTable* m_table;
    FlowText* m_hint;
    FlowText* m_fault;
    NoticeBar* m_notice;
    QPushButton* m_keep;
    QPushButton* m_later;
    QPushButton* m_again;
    std::vector<SheetRow> m_cleared;
};

} // namespace pipwright::ui
