#include "ui/print/print_buttons.h"

#include "ui/print/pdf_writer.h"
#include "ui/widgets/icons.h"
#include "ui/widgets/theme.h"

#include <QDir>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QLabel>
#include <QPrintDialog>
#include <QPrinter>
#include <QPushButton>
#include <QStandardPaths>
#include <QVBoxLayout>

namespace pipwright::ui {

namespace {

QString askForPath(QWidget* parent, const QString& suggestion) {
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    QString path = QFileDialog::getSaveFileName(parent, PrintButtons::tr("Save PDF"),
                                                QDir(folder).filePath(suggestion),
                                                PrintButtons::tr("PDF (*.pdf)"));
    if (!path.isEmpty() && !path.endsWith(QStringLiteral(".pdf"), Qt::CaseInsensitive)) {
        path += QStringLiteral(".pdf");
    }
    return path;
}

} // namespace

PrintButtons::PrintButtons(QWidget* parent)
    : QWidget(parent), m_choosePath(askForPath), m_print(new QPushButton(tr("&Print…"), this)),
      m_save(new QPushButton(tr("Save P&DF…"), this)), m_word(new QLabel(this)) {
    m_print->setIcon(icon(IconName::print));
    m_print->setAccessibleName(tr("Print"));
    m_save->setIcon(icon(IconName::save));
    m_save->setAccessibleName(tr("Save PDF"));
    auto* advice = new QLabel(tr("In the printer's dialog choose actual size (100 %), not \"fit "
                                 "to page\"."),
                              this);
    advice->setWordWrap(true);
    m_word->setWordWrap(true);
    m_word->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    m_word->hide();

    const Theme& theme = currentTheme();
    auto* line = new QHBoxLayout;
    line->setSpacing(theme.space);
    line->addWidget(m_print);
    line->addWidget(m_save);
    line->addStretch(1);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(theme.gap);
    column->addWidget(advice);
    column->addLayout(line);
    column->addWidget(m_word);

    connect(m_print, &QPushButton::clicked, this, &PrintButtons::print);
    connect(m_save, &QPushButton::clicked, this, &PrintButtons::savePdf);
    setPages({}, QString());
}

void PrintButtons::setPages(std::vector<Page> pages, const QString& title) {
    m_pages = std::move(pages);
    m_title = title;
    m_print->setEnabled(!m_pages.empty());
    m_save->setEnabled(!m_pages.empty());
    say(QString(), false);
}

void PrintButtons::setPathChooser(PathChooser chooser) {
    m_choosePath = std::move(chooser);
}

QString PrintButtons::lastWord() const {
    return m_word->text();
}

void PrintButtons::say(const QString& word, bool isFault) {
    m_word->setText(word);
    m_word->setVisible(!word.isEmpty());
    QPalette colours = palette();
    if (isFault) {
        colours.setColor(QPalette::WindowText, themeOf(this).blood);
    }
    m_word->setPalette(colours);
}

void PrintButtons::savePdf() {
    const QString path = m_choosePath(this, m_title + QStringLiteral(".pdf"));
    if (path.isEmpty()) {
        return;
    }
    const Outcome outcome = writePdf(m_pages, m_title, path);
    if (!outcome) {
        say(QString::fromStdString(outcome.problem().sentence()), true);
        return;
    }
    say(tr("Saved as %1.").arg(QDir::toNativeSeparators(path)), false);
    Q_EMIT saved(path);
}

void PrintButtons::print() {
    QPrinter printer(QPrinter::HighResolution);
    printer.setDocName(m_title);
    QPrintDialog dialog(&printer, this);
    dialog.setOption(QAbstractPrintDialog::PrintPageRange, false);
    if (dialog.exec() != QDialog::Accepted) {
        return;
    }
    const Outcome outcome = printPages(m_pages, printer);
    if (!outcome) {
        say(QString::fromStdString(outcome.problem().sentence()), true);
        return;
    }
    say(tr("Sent to the printer."), false);
}

} // namespace pipwright::ui
