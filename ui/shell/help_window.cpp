#include "ui/shell/help_window.h"

#include "ui/shell/actions.h"

#include <QDialogButtonBox>
#include <QFile>
#include <QKeySequence>
#include <QLocale>
#include <QTextBrowser>
#include <QVBoxLayout>

namespace pipwright::ui {

HelpWindow::HelpWindow(QWidget* parent) : QDialog(parent) {
    setWindowTitle(tr("Help"));
    resize(680, 620);
    m_browser = new QTextBrowser;
    m_browser->setAccessibleName(tr("Help page"));
    m_browser->setOpenLinks(false);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    auto* column = new QVBoxLayout(this);
    column->addWidget(m_browser, 1);
    column->addWidget(buttons);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::close);
    connect(m_browser, &QTextBrowser::anchorClicked, this,
            [this](const QUrl& link) { showPage(link.toString()); });
}

QString HelpWindow::pageText(const QString& name) {
    // A translated page stands beside the English one: start.de.md.
    const QString language = QLocale().name().left(2);
    for (const QString& file : {QStringLiteral(":/pipwright/help/%1.%2.md").arg(name, language),
                                QStringLiteral(":/pipwright/help/%1.md").arg(name)}) {
        QFile page(file);
        if (page.open(QIODevice::ReadOnly)) {
            return QString::fromUtf8(page.readAll());
        }
    }
    return {};
}

QString HelpWindow::keysPage() {
    QString page = pageText(QStringLiteral("keys"));
    page += QStringLiteral("\n\n|%1|%2|\n|---|---|\n").arg(tr("action"), tr("keys"));
    for (const ActionWords& words : allActionWords()) {
        if (words.keys.isEmpty()) {
            continue;
        }
        QStringList native;
        for (const QString& key : words.keys.split(QLatin1Char(','), Qt::SkipEmptyParts)) {
            native << QKeySequence::fromString(key).toString(QKeySequence::NativeText);
        }
        page += QStringLiteral("|%1|%2|\n").arg(words.title, native.join(QStringLiteral(", ")));
    }
    return page;
}

void HelpWindow::showPage(const QString& name) {
    m_browser->setMarkdown(name == QLatin1String("keys") ? keysPage() : pageText(name));
    m_browser->moveCursor(QTextCursor::Start);
}

} // namespace pipwright::ui
