#pragma once

#include "ui/tasting/sitting_list.h"

#include <QWidget>

class QStackedWidget;

namespace pipwright::ui {

class ChipRow;
class OpenBook;
class SittingPage;
class SittingResult;

/// A sitting that was held. What a blind one says stands before its scores, one click apart; other
/// sittings have only these.
class SittingView : public QWidget {
    Q_OBJECT

  public:
    explicit SittingView(OpenBook& book, QWidget* parent = nullptr);

    void showSitting(const SittingLine& line);
    /// Reads the shown sitting again.
    void refresh();
    /// The result first, where there is one.
    void showResult();
    /// To what is shown.
    void takeFocus();

    [[nodiscard]] SittingPage* page() const { return m_page; }
    [[nodiscard]] SittingResult* result() const { return m_result; }
    [[nodiscard]] ChipRow* partChips() const { return m_parts; }

  private:
    void showPart();

    SittingLine m_line;
    QWidget* m_partsBar;
    ChipRow* m_parts;
    QStackedWidget* m_stack;
    SittingResult* m_result;
    SittingPage* m_page;
};

} // namespace pipwright::ui
