#include "ui/print/paper_panel.h"

#include "ui/print/preview_pane.h"
#include "ui/print/print_buttons.h"
#include "ui/print/print_words.h"
#include "ui/widgets/theme.h"

#include <QLabel>
#include <QVBoxLayout>

namespace pipwright::ui {

PaperPanel::PaperPanel(QWidget* parent)
    : QWidget(parent), m_preview(new PreviewPane(this)), m_misfits(new QLabel(this)),
      m_buttons(new PrintButtons(this)) {
    m_misfits->setWordWrap(true);
    m_misfits->setTextFormat(Qt::PlainText);
    m_misfits->hide();
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(currentTheme().space);
    column->addWidget(m_preview, 1);
    column->addWidget(m_misfits);
    column->addWidget(m_buttons);
}

void PaperPanel::setMatter(PrintedMatter matter, const QString& title) {
    QStringList sentences;
    for (const Misfit& misfit : matter.misfits) {
        sentences << misfitSentence(misfit);
    }
    m_misfits->setText(sentences.join(QLatin1Char('\n')));
    m_misfits->setVisible(!sentences.isEmpty());
    m_buttons->setPages(matter.pages, title);
    m_preview->setPages(std::move(matter.pages));
}

} // namespace pipwright::ui
