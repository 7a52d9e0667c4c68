#include "ui/shell/start_page.h"

#include "ui/widgets/flow_text.h"
#include "ui/widgets/icons.h"
#include "ui/widgets/theme.h"

#include <QFileInfo>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace pipwright::ui {

namespace {

constexpr int kWidth = 420;

} // namespace

QPushButton* StartPage::choice(const QString& word, const QString& explanation,
                               QVBoxLayout* column) {
    auto* button = new QPushButton(word);
    button->setMinimumHeight(36);
    button->setAccessibleDescription(explanation);
    auto* words = new FlowText(explanation, FlowText::Weight::second);
    column->addWidget(button);
    column->addWidget(words);
    column->addSpacing(lightTheme().margin);
    return button;
}

StartPage::StartPage(QWidget* parent) : QWidget(parent) {
    auto* middle = new QWidget;
    middle->setFixedWidth(kWidth);
    auto* column = new QVBoxLayout(middle);
    auto* heading = new QLabel(tr("Pipwright"));
    heading->setFont(lightTheme().headingFont());
    auto* job = new FlowText(tr("The book of your seedlings: what stands where, what it came from, "
                                "when it ripens, how it tastes, and what to do next."));
    column->addWidget(heading);
    column->addWidget(job);
    column->addSpacing(lightTheme().margin);
    m_sample =
        choice(tr("Look at the sample orchard"),
               tr("An invented breeder's book of fourteen years, yours to try things on."), column);
    m_sample->setIcon(icon(IconName::sample));
    m_new = choice(tr("Begin a new book"),
                   tr("One file for everything; bring in a table of your trees next."), column);
    m_new->setIcon(icon(IconName::create));
    m_open = choice(tr("Open a book"), tr("A file that ends in .orchard."), column);
    m_open->setIcon(icon(IconName::open));
    m_sample->setDefault(true);
    m_recentHeading = new QLabel(tr("Lately open"));
    m_recentHeading->setFont(lightTheme().strongFont());
    column->addWidget(m_recentHeading);
    m_recent = new QVBoxLayout;
    column->addLayout(m_recent);

    auto* whole = new QVBoxLayout(this);
    auto* across = new QHBoxLayout; // not an alignment: that would forget how high wrapped text is
    across->addStretch(1);
    across->addWidget(middle);
    across->addStretch(1);
    whole->addStretch(1);
    whole->addLayout(across);
    whole->addStretch(2);
    connect(m_sample, &QPushButton::clicked, this, &StartPage::sampleWanted);
    connect(m_new, &QPushButton::clicked, this, &StartPage::newWanted);
    connect(m_open, &QPushButton::clicked, this, &StartPage::openWanted);
    setRecent({});
}

void StartPage::setRecent(const QStringList& paths) {
    while (QLayoutItem* item = m_recent->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    m_recentHeading->setVisible(!paths.isEmpty());
    for (const QString& path : paths) {
        auto* button = new QPushButton(QFileInfo(path).completeBaseName());
        button->setFlat(true);
        button->setToolTip(path);
        button->setAccessibleDescription(path);
        button->setStyleSheet(QStringLiteral("text-align: left;"));
        connect(button, &QPushButton::clicked, this, [this, path] { Q_EMIT recentWanted(path); });
        m_recent->addWidget(button);
    }
}

} // namespace pipwright::ui
