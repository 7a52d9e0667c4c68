#include "ui/print/paper_panel.h"

#include "ui/print/misfit_list.h"
#include "ui/print/preview_pane.h"
#include "ui/print/print_buttons.h"
#include "ui/widgets/theme.h"

#include <QVBoxLayout>

namespace pipwright::ui {

PaperPanel::PaperPanel(QWidget* parent)
    : QWidget(parent), m_preview(new PreviewPane(this)), m_misfits(new MisfitList(this)),
      m_buttons(new PrintButtons(this)) {
    m_misfits->setMaximumHeight(110);
    auto* column = new QVBoxLayout(this);
    const int margin = currentTheme().margin;
    column->setContentsMargins(margin, margin, margin, margin);
    column->setSpacing(currentTheme().space);
    column->addWidget(m_preview, 1);
    column->addWidget(m_misfits);
    column->addWidget(m_buttons);
}

void PaperPanel::setMatter(PrintedMatter matter, const QString& title) {
    m_misfits->setMisfits(matter.misfits);
    m_buttons->setPages(matter.pages, title);
    m_preview->setPages(std::move(matter.pages));
}

} // namespace pipwright::ui
