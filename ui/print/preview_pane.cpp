#include "ui/print/preview_pane.h"

#include "ui/print/page_preview.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/icons.h"
#include "ui/widgets/theme.h"

#include <QLabel>
#include <QLocale>
#include <QToolButton>
#include <QVBoxLayout>

namespace pipwright::ui {

namespace {

QToolButton* toolButton(QWidget* parent, const QString& name, const QString& key) {
    auto* button = new QToolButton(parent);
    button->setText(name);
    button->setAutoRaise(true);
    button->setToolTip(PreviewPane::tr("%1 (%2)", "what, key").arg(name, key));
    button->setAccessibleName(name);
    return button;
}

} // namespace

PreviewPane::PreviewPane(QWidget* parent)
    : QWidget(parent), m_preview(new PagePreview(this)),
      m_back(toolButton(this, tr("Page before"), tr("Page Up"))),
      m_forward(toolButton(this, tr("Next page"), tr("Page Down"))), m_where(new QLabel(this)),
      m_zoom(new QLabel(this)) {
    m_back->setArrowType(Qt::LeftArrow);
    m_forward->setArrowType(Qt::RightArrow);
    auto* less = toolButton(this, tr("Zoom out"), QStringLiteral("-"));
    less->setIcon(icon(IconName::zoomOut));
    auto* more = toolButton(this, tr("Zoom in"), QStringLiteral("+"));
    more->setIcon(icon(IconName::zoomIn));
    auto* trueSize = toolButton(this, tr("True size"), QStringLiteral("1"));
    auto* width = toolButton(this, tr("Page width"), QStringLiteral("2"));
    auto* whole = toolButton(this, tr("Whole page"), QStringLiteral("0"));

    const Theme& theme = currentTheme();
    auto* buttons = new QWidget(this);
    auto* line = new FlowLayout(buttons, theme.gap); // two lines where the place is narrow
    for (QWidget* widget : std::initializer_list<QWidget*>{m_back, m_where, m_forward, less, m_zoom,
                                                           more, trueSize, width, whole}) {
        line->addWidget(widget);
    }
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(theme.gap);
    column->addWidget(buttons);
    column->addWidget(m_preview, 1);

    connect(m_back, &QToolButton::clicked, m_preview,
            [this] { m_preview->turnTo(m_preview->currentPage() - 1); });
    connect(m_forward, &QToolButton::clicked, m_preview,
            [this] { m_preview->turnTo(m_preview->currentPage() + 1); });
    connect(less, &QToolButton::clicked, m_preview, [this] { m_preview->zoomBy(0.8); });
    connect(more, &QToolButton::clicked, m_preview, [this] { m_preview->zoomBy(1.25); });
    connect(trueSize, &QToolButton::clicked, m_preview, &PagePreview::showTrueSize);
    connect(width, &QToolButton::clicked, m_preview, &PagePreview::showPageWidth);
    connect(whole, &QToolButton::clicked, m_preview, &PagePreview::showWholePage);
    connect(m_preview, &PagePreview::changed, this, &PreviewPane::updateButtons);
    updateButtons();
}

void PreviewPane::setPages(std::vector<Page> pages) {
    m_preview->setPages(std::move(pages));
}

void PreviewPane::updateButtons() {
    const int pages = m_preview->pageCount();
    const int page = m_preview->currentPage();
    m_back->setEnabled(page > 0);
    m_forward->setEnabled(page + 1 < pages);
    m_where->setText(pages == 0 ? tr("no page") : tr("page %1 of %2").arg(page + 1).arg(pages));
    m_zoom->setText(tr("%1 %").arg(QLocale().toString(qRound(m_preview->zoomPercent()))));
}

} // namespace pipwright::ui
