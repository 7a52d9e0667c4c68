#pragma once

#include "core/season/inexact_date.h"

#include <QString>
#include <QWidget>

#include <optional>

class QLineEdit;

namespace pipwright::ui {

class FlowText;

/// A date as people write it, with what was understood below it as they type: "late August 2026"
/// reads as the days from 21 to 31 August. What cannot be read says why and what to type.
class InexactDateEdit : public QWidget {
    Q_OBJECT

  public:
    /// `today` gives the year of dates typed without one, and the start of an empty field.
    explicit InexactDateEdit(Date today, QWidget* parent = nullptr);

    void setToday(Date today);
    /// Shows what was typed before.
    void setDate(const InexactDate& date);
    void clear();
    /// The date as understood; nothing when the field is empty or cannot be read.
    [[nodiscard]] std::optional<InexactDate> date() const;
    [[nodiscard]] bool isEmpty() const;
    /// What stands below the line.
    [[nodiscard]] QString meaning() const;
    [[nodiscard]] QLineEdit* line() const { return m_line; }

  Q_SIGNALS:
    void dateChanged();
    /// Enter on a date that can be read.
    void accepted();

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void read();
    void stepDays(int days);
    /// The day as screens write it, or as ISO date where that could not be read back.
    [[nodiscard]] QString dayWords(Date day) const;

    Date m_today;
    std::optional<InexactDate> m_date;
    QLineEdit* m_line;
    FlowText* m_meaning;
};

} // namespace pipwright::ui
