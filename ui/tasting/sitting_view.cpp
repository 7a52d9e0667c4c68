#include "ui/tasting/sitting_view.h"

#include "ui/tasting/sitting_page.h"
#include "ui/tasting/sitting_result.h"
#include "ui/widgets/chip_row.h"
#include "ui/widgets/plain_table.h"
#include "ui/widgets/theme.h"

#include <QHBoxLayout>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace pipwright::ui {

SittingView::SittingView(OpenBook& book, QWidget* parent) : QWidget(parent) {
    const Theme& theme = lightTheme();
    m_page = new SittingPage(book);
    m_result = new SittingResult(book);
    m_parts = new ChipRow(tr("What of the sitting is shown"));
    m_parts->setChips({{QStringLiteral("result"), tr("what it says"), {}, {}},
                       {QStringLiteral("scores"), tr("scores and conditions"), {}, {}}});
    m_parts->setChosen(QStringLiteral("result"));
    m_stack = new QStackedWidget;
    m_stack->addWidget(m_result);
    m_stack->addWidget(m_page);
    m_partsBar = new QWidget;
    auto* parts = new QHBoxLayout(m_partsBar);
    parts->setContentsMargins(theme.space, theme.space, theme.space, 0);
    parts->addWidget(m_parts);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(m_partsBar);
    column->addWidget(m_stack, 1);
    connect(m_parts, &ChipRow::choiceMade, this, &SittingView::showPart);
}

void SittingView::showPart() {
    const bool says = !m_line.bites && m_result->showSitting(m_line.tastings);
    m_partsBar->setVisible(says);
    m_stack->setCurrentWidget(says && m_parts->chosen() == QStringLiteral("result")
                                  ? static_cast<QWidget*>(m_result)
                                  : m_page);
}

void SittingView::showSitting(const SittingLine& line) {
    m_line = line;
    showPart();
    m_page->showSitting(line);
}

void SittingView::refresh() {
    showPart();
    m_page->refresh();
}

void SittingView::showResult() {
    m_parts->setChosen(QStringLiteral("result"));
    showPart();
}

void SittingView::takeFocus() {
    QWidget* part = m_stack->currentWidget() == m_result ? static_cast<QWidget*>(m_result->table())
                                                         : m_page->table();
    part->setFocus(Qt::OtherFocusReason);
}

} // namespace pipwright::ui
