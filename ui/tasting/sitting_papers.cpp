#include "ui/tasting/sitting_papers.h"

#include "core/exchange/print/sitting_papers.h"
#include "ui/book/open_book.h"
#include "ui/book/orchard_words.h"
#include "ui/print/paper_font.h"
#include "ui/print/paper_panel.h"
#include "ui/print/print_buttons.h"
#include "ui/print/print_words.h"
#include "ui/tasting/plan_words.h"
#include "ui/widgets/chip_row.h"
#include "ui/widgets/flow_text.h"
#include "ui/widgets/theme.h"

#include <QLocale>
#include <QVBoxLayout>

namespace pipwright::ui {

SittingPapers::SittingPapers(OpenBook& book, QWidget* parent) : QWidget(parent), m_book(book) {
    const Theme& theme = lightTheme();
    m_paper = new ChipRow(tr("Paper size"));
    m_paper->setChips({{QStringLiteral("a4"), tr("A4"), QStringLiteral("a"), {}},
                       {QStringLiteral("letter"), tr("Letter"), QStringLiteral("l"), {}}});
    const bool us = QLocale().measurementSystem() == QLocale::ImperialUSSystem;
    m_paper->setChosen(us ? QStringLiteral("letter") : QStringLiteral("a4"));
    m_sheets = new PaperPanel;
    m_key = new PrintButtons;
    auto* keyBox = new QWidget;
    auto* keyColumn = new QVBoxLayout(keyBox);
    keyColumn->setContentsMargins(theme.margin, 0, theme.margin, theme.space);
    keyColumn->setSpacing(theme.gap);
    keyColumn->addWidget(new FlowText(tr("Key, for whoever serves"), FlowText::Weight::strong));
    keyColumn->addWidget(new FlowText(tr("It is not shown here, so that you may taste blind."),
                                      FlowText::Weight::small));
    keyColumn->addWidget(m_key);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(theme.gap);
    column->addWidget(m_paper);
    column->addWidget(m_sheets, 1);
    column->addWidget(keyBox);
    connect(m_paper, &ChipRow::choiceMade, this, &SittingPapers::lay);
}

void SittingPapers::showPlan(const PlannedTable& planned) {
    m_planned = planned;
    lay();
}

void SittingPapers::lay() {
    if (!m_planned) {
        return;
    }
    const auto view = m_book.view();
    const PaperSize paper = m_paper->chosen() == QStringLiteral("letter") ? kLetter : kA4;
    const FontMeasure measure;
    TastingSheets sheets = tastingSheetsOf(*view, *m_planned);
    sheets.paper = paper;
    sheets.words = translatedPaperWords();
    sheets.sittingWords = translatedSittingWords();
    const QString day = QString::fromStdString(m_planned->tasting.date.iso());
    m_sheets->setMatter(layOutTastingSheets(sheets, measure), tr("Tasting sheets %1").arg(day));
    SittingKeyPaper key = sittingKeyOf(
        *view, *m_planned, [](const Lot& lot) { return conditionWords(lot).toStdString(); },
        tr("benchmark, twice").toStdString(), tr("served again").toStdString());
    key.paper = paper;
    key.words = translatedPaperWords();
    key.sittingWords = translatedSittingWords();
    m_key->setPages(layOutSittingKey(key, measure).pages, tr("Tasting key %1").arg(day));
}

} // namespace pipwright::ui
