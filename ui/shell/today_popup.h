#pragma once

#include "core/season/date.h"

#include <QFrame>

#include <optional>

namespace pipwright::ui {

class InexactDateEdit;

/// Asks for the day to take as today, or to follow the calendar again. Enter takes it, Escape
/// leaves.
class TodayPopup : public QFrame {
    Q_OBJECT

  public:
    explicit TodayPopup(Date today, QWidget* parent);

    void showNear(QWidget* widget);
    [[nodiscard]] InexactDateEdit* edit() const { return m_edit; }

  Q_SIGNALS:
    /// Nothing: the computer's own day.
    void chosen(std::optional<pipwright::Date> day);

  private:
    void take();

    InexactDateEdit* m_edit;
};

} // namespace pipwright::ui
