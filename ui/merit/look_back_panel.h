#pragma once

#include "ui/book/merit_desk.h"

#include <QWidget>

#include <optional>

class QDateEdit;
class QPushButton;
class QStandardItemModel;

namespace pipwright::ui {

class FlowText;
class PlainTable;

/// The date set back: chooses the day, and tells what each threshold would have culled then that
/// is among the best now.
class LookBackPanel : public QWidget {
    Q_OBJECT

  public:
    explicit LookBackPanel(QWidget* parent = nullptr);

    void setToday(Date today);
    void setReport(const MeritReportPointer& report);
    [[nodiscard]] QDateEdit* day() const { return m_day; }
    [[nodiscard]] QPushButton* backButton() const { return m_back; }
    [[nodiscard]] QPushButton* todayButton() const { return m_today; }
    [[nodiscard]] PlainTable* regrets() const { return m_table; }
    [[nodiscard]] FlowText* words() const { return m_words; }

  Q_SIGNALS:
    /// Nothing: as the book stands.
    void dayWanted(std::optional<pipwright::Date> day);

  private:
    void fill(const MeritReport& report);

    QDateEdit* m_day;
    QPushButton* m_back;
    QPushButton* m_today;
    FlowText* m_words;
    QStandardItemModel* m_model;
    PlainTable* m_table;
};

} // namespace pipwright::ui
