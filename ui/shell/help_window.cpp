#include "ui/shell/help_window.h"

#include "ui/shell/actions.h"

#include <QDialogButtonBox>
#include <QFile>
#include <QHBoxLayout>
#include <QKeySequence>
#include <QListWidget>
#include <QLocale>
#include <QSignalBlocker>
#include <QTextBrowser>
#include <QVBoxLayout>

namespace pipwright::ui {

namespace {

constexpr int kListWidth = 190;

} // namespace

HelpWindow::HelpWindow(QWidget* parent) : QDialog(parent) {
    setWindowTitle(tr("Help"));
    resize(860, 640);
    m_pages = new QListWidget;
    m_pages->setAccessibleName(tr("Pages of the help"));
    m_pages->setFixedWidth(kListWidth);
    const auto add = [this](const char* name, const QString& title) {
        auto* item = new QListWidgetItem(title, m_pages);
        item->setData(Qt::UserRole, QString::fromLatin1(name));
    };
    add("start", tr("What to do first"));
    add("keys", tr("Keys"));
    add("about", tr("About, and cautions"));
    m_browser = new QTextBrowser;
    m_browser->setAccessibleName(tr("Help page"));
    m_browser->setOpenLinks(false);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    auto* across = new QHBoxLayout;
    across->addWidget(m_pages);
    across->addWidget(m_browser, 1);
    auto* column = new QVBoxLayout(this);
    column->addLayout(across, 1);
    column->addWidget(buttons);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::close);
    connect(m_browser, &QTextBrowser::anchorClicked, this,
            [this](const QUrl& link) { showPage(link.toString()); });
    connect(m_pages, &QListWidget::currentItemChanged, this, [this](QListWidgetItem* now) {
        if (now != nullptr) {
            showPage(now->data(Qt::UserRole).toString());
        }
    });
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
    const QSignalBlocker quiet(m_pages);
    for (int row = 0; row < m_pages->count(); ++row) {
        if (m_pages->item(row)->data(Qt::UserRole) == name) {
            m_pages->setCurrentRow(row);
        }
    }
    m_browser->setMarkdown(name == QLatin1String("keys") ? keysPage() : pageText(name));
    m_browser->moveCursor(QTextCursor::Start);
}

} // namespace pipwright::ui
