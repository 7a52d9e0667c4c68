#pragma once

#include "core/orchard/typed_score.h"
#include "ui/tasting/sitting_list.h"

#include <QModelIndex>
#include <QWidget>

class QLineEdit;
class QPushButton;

namespace pipwright::ui {

class FlowText;
class NoticeBar;
class OpenBook;
class PlainTable;
class SittingTableModel;

/// The chosen sitting: lots by tasters with conditions, what makes them fair or not, how far the
/// tasters were apart, and what a repeat serving shows. Scores are put right in their cells.
class SittingPage : public QWidget {
    Q_OBJECT

  public:
    explicit SittingPage(OpenBook& book, QWidget* parent = nullptr);

    void showSitting(const SittingLine& line);
    /// Reads the shown sitting again.
    void refresh();

    [[nodiscard]] PlainTable* table() const { return m_table; }
    [[nodiscard]] NoticeBar* notice() const { return m_notice; }
    [[nodiscard]] QLineEdit* reasonLine() const { return m_reason; }
    [[nodiscard]] QPushButton* voidButton() const { return m_void; }
    /// Every sentence below the table.
    [[nodiscard]] QString findings() const;

  Q_SIGNALS:
    /// The condition of this lot, tasted on that day, is to be put right.
    void conditionWanted(const pipwright::Lot& lot, const pipwright::Date& tasted);

  private:
    void take(const QModelIndex& index);
    void askCondition(const QModelIndex& index);
    void say();
    [[nodiscard]] QStringList spreadSentences() const;
    [[nodiscard]] QStringList repeatSentences() const;
    [[nodiscard]] QStringList voidedSentences() const;
    void correct(const QModelIndex& index, const TypedScore& typed);
    void askReason(const QModelIndex& index);
    void voidScore();
    void selectTree(const QModelIndex& index);

    OpenBook& m_book;
    SittingLine m_line;
    SittingTableModel* m_model;
    PlainTable* m_table;
    FlowText* m_heading;
    FlowText* m_second;
    FlowText* m_findings;
    NoticeBar* m_notice;
    QWidget* m_reasonBar;
    FlowText* m_reasonFor;
    QLineEdit* m_reason;
    QPushButton* m_void;
    QPersistentModelIndex m_toVoid;
};

} // namespace pipwright::ui
