#pragma once

#include "core/evaluation/planned_table.h"

#include <QWidget>

#include <optional>

namespace pipwright {
class OrchardView;
}

namespace pipwright::ui {

class ChipRow;
class OpenBook;
class PaperPanel;
class PrintButtons;

/// What is printed of a planned sitting: the sheets with a preview, and the key without one, so
/// that whoever plans may taste blind too.
class SittingPapers : public QWidget {
    Q_OBJECT

  public:
    explicit SittingPapers(OpenBook& book, QWidget* parent = nullptr);

    void showPlan(const PlannedTable& planned);

    [[nodiscard]] ChipRow* paperChips() const { return m_paper; }
    [[nodiscard]] PaperPanel* sheets() const { return m_sheets; }
    [[nodiscard]] PrintButtons* key() const { return m_key; }

  private:
    void lay();

    OpenBook& m_book;
    std::optional<PlannedTable> m_planned;
    ChipRow* m_paper;
    PaperPanel* m_sheets;
    PrintButtons* m_key;
};

} // namespace pipwright::ui
