#pragma once

#include "core/exchange/print/page.h"

#include <QWidget>

namespace pipwright::ui {

class MisfitList;
class PreviewPane;
class PrintButtons;

/// Any finished pages: the preview, what could not be printed in full, and the buttons.
class PaperPanel : public QWidget {
    Q_OBJECT

  public:
    explicit PaperPanel(QWidget* parent = nullptr);

    void setMatter(PrintedMatter matter, const QString& title);

    [[nodiscard]] PreviewPane* preview() const { return m_preview; }
    [[nodiscard]] PrintButtons* buttons() const { return m_buttons; }

  private:
    PreviewPane* m_preview;
    MisfitList* m_misfits;
    PrintButtons* m_buttons;
};

} // namespace pipwright::ui
