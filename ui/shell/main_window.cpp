#include "ui/shell/main_window.h"

#include "ui/rows/row_map.h"
#include "ui/rows/rows_place.h"
#include "ui/shell/book_history.h"
#include "ui/shell/help_window.h"
#include "ui/shell/start_page.h"
#include "ui/shell/workbench.h"
#include "ui/tree/tree_sheet.h"
#include "ui/widgets/notice_bar.h"
#include "ui/widgets/number_text.h"
#include "ui/widgets/status_line.h"

#include <QApplication>
#include <QCloseEvent>
#include <QFileDialog>
#include <QFileInfo>
#include <QMenu>
#include <QScreen>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace pipwright::ui {

MainWindow::MainWindow(BookDoors& doors, std::optional<Date> fixedToday)
    : m_doors(doors), m_fixedToday(fixedToday) {
    m_askers.saveFile = [this](const QString& title, const QString& suggestion) {
        return QFileDialog::getSaveFileName(this, title, suggestion,
                                            tr("Orchard books (*.orchard)"));
    };
    m_askers.openFile = [this](const QString& title) {
        return QFileDialog::getOpenFileName(this, title, {}, tr("Orchard books (*.orchard)"));
    };
    m_askers.folder = [this](const QString& title) {
        return QFileDialog::getExistingDirectory(this, title);
    };
    constexpr int kTitleBar = 36; // the desktop's own, which no widget knows before it is shown
    const QRect room = screen()->availableGeometry();
    resize(std::min(1366, room.width()), std::min(768, room.height() - kTitleBar));
    build();
    makeMenus();
    restoreGeometry(m_settings.geometry());
    m_start->setRecent(m_settings.recentBooks());
}

void MainWindow::makeMenus() {
    m_actions = std::make_unique<ActionTable>(*this, handlers());
    m_actions->action(QStringLiteral("motion"))->setCheckable(true);
    m_actions->action(QStringLiteral("motion"))->setChecked(m_settings.motion());
    updateActions();
}

MainWindow::~MainWindow() {
    if (m_stop) {
        *m_stop = true;
    }
}

void MainWindow::build() {
    setWindowTitle(tr("Pipwright"));
    m_start = new StartPage;
    m_notice = new NoticeBar;
    m_notice->hide();
    m_pages = new QStackedWidget;
    m_pages->addWidget(m_start);
    auto* middle = new QWidget;
    auto* column = new QVBoxLayout(middle);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(m_notice);
    column->addWidget(m_pages, 1);
    setCentralWidget(middle);
    connect(m_start, &StartPage::sampleWanted, this, &MainWindow::openSample);
    connect(m_start, &StartPage::newWanted, this, &MainWindow::newBook);
    connect(m_start, &StartPage::openWanted, this, &MainWindow::askAndOpen);
    connect(m_start, &StartPage::recentWanted, this, &MainWindow::openBook);
    connect(m_notice, &NoticeBar::offerTaken, this, [this] {
        if (!m_readable.isEmpty()) {
            openToRead(std::exchange(m_readable, {}));
        }
    });
}

OpenBook* MainWindow::book() const {
    return m_workbench == nullptr ? nullptr : &m_workbench->book();
}

void MainWindow::putOnDesk(Result<std::unique_ptr<OpenBook>> opened, const QString& path) {
    if (!opened) {
        m_notice->tell(opened.problem());
        offerReading(opened.problem(), path);
        m_start->setRecent(m_settings.recentBooks());
        return;
    }
    m_notice->close();
    std::unique_ptr<OpenBook> newBook = std::move(*opened);
    if (m_fixedToday) {
        newBook->setToday(m_fixedToday);
    }
    m_workbench = new Workbench(std::move(newBook));
    m_pages->addWidget(m_workbench);
    m_pages->setCurrentWidget(m_workbench);
    m_workbench->restoreSplitter(m_settings.splitter());
    m_workbench->sheet()->setUnits(m_settings.units());
    m_workbench->rows()->map()->setFocus(Qt::OtherFocusReason);
    if (const auto left = m_settings.whereabouts(path); !left.place.isEmpty()) {
        m_workbench->goOnWith(left.place, left.tree);
    }
    connect(m_workbench, &Workbench::todayWanted, this, &MainWindow::askToday);
    connect(m_workbench, &Workbench::importWanted, this, &MainWindow::importTable);
    connect(m_workbench, &Workbench::commandWanted, this, &MainWindow::run);
    connect(m_workbench, &Workbench::contextMenuWanted, this,
            [this](const QPoint& at) { m_actions->menu(QStringLiteral("tree"))->popup(at); });
    connect(m_workbench->statusLine(), &StatusLine::workCancelled, this, [this] {
        if (m_stop) {
            *m_stop = true;
        }
    });
    connect(book(), &OpenBook::undoChanged, this, &MainWindow::updateActions);
    m_settings.noteRecent(path);
    const QString name = QFileInfo(path).completeBaseName();
    setWindowTitle(m_readOnly ? tr("%1 (reading only) - Pipwright").arg(name)
                              : tr("%1 - Pipwright").arg(name));
    updateActions();
    if (m_readOnly) {
        m_notice->say(NoticeBar::Kind::word, tr("Open for reading only: nothing can be entered."),
                      tr("To write, close it where it is being written and open it again."));
    } else {
        keepCopyInBackground();
    }
}

/// Somebody else is writing, or the folder may not be written: the book can be looked at.
void MainWindow::offerReading(const Problem& problem, const QString& path) {
    const bool readable =
        problem.code == ProblemCode::busy || problem.code == ProblemCode::unwritable;
    m_readable = readable && QFileInfo::exists(path) && !m_readOnly ? path : QString();
    if (!m_readable.isEmpty()) {
        m_notice->offer(tr("Open for reading only"));
    }
}

bool MainWindow::openBook(const QString& path) {
    closeBook();
    m_readOnly = false;
    putOnDesk(m_doors.open(path), path);
    return m_workbench != nullptr;
}

bool MainWindow::openToRead(const QString& path) {
    closeBook();
    m_readOnly = true;
    putOnDesk(m_doors.openToRead(path), path);
    return m_workbench != nullptr;
}

void MainWindow::openSample() {
    closeBook();
    workInBackground(tr("Making the sample orchard"), [this](const auto& progress) {
        auto path = std::make_shared<Result<QString>>(m_doors.sampleBook(progress));
        return [this, path] {
            if (*path) {
                openBook(**path);
            } else {
                m_notice->tell(path->problem());
            }
        };
    });
}

void MainWindow::closeBook() {
    if (m_workbench == nullptr) {
        return;
    }
    if (m_stop) {
        *m_stop = true;
    }
    m_settings.keepWindow(saveGeometry(), m_workbench->splitterState());
    m_settings.keepWhereabouts(book()->path(), {m_workbench->place(), m_workbench->currentTree()});
    m_pages->removeWidget(m_workbench);
    delete m_workbench;
    m_workbench = nullptr;
    m_pages->setCurrentWidget(m_start);
    m_start->setRecent(m_settings.recentBooks());
    setWindowTitle(tr("Pipwright"));
    updateActions();
}

void MainWindow::updateActions() {
    const OpenBook* open = book();
    static const QStringList always = {
        QStringLiteral("new"),      QStringLiteral("open"),   QStringLiteral("sample"),
        QStringLiteral("quit"),     QStringLiteral("theme"),  QStringLiteral("language"),
        QStringLiteral("units"),    QStringLiteral("motion"), QStringLiteral("keys"),
        QStringLiteral("handbook"), QStringLiteral("about"),  QStringLiteral("import-archive")};
    for (const ActionWords& words : allActionWords()) {
        if (QAction* one = m_actions->action(words.id)) {
            // What replaces or fills the file is not for a reader.
            const bool writes =
                words.id == QStringLiteral("restore") || words.id == QStringLiteral("import-table");
            one->setEnabled((open != nullptr && !(m_readOnly && writes)) ||
                            always.contains(words.id));
        }
    }
    const auto step = [this](const char* id, const QString& word,
                             const std::optional<QString>& sentence) {
        QAction* one = m_actions->action(QString::fromLatin1(id));
        one->setEnabled(sentence.has_value());
        one->setText(sentence ? QStringLiteral("%1: %2").arg(word, withLocalDates(*sentence))
                              : word);
    };
    step("undo", tr("Undo"), open != nullptr ? open->undoSentence() : std::nullopt);
    step("redo", tr("Redo"), open != nullptr ? open->redoSentence() : std::nullopt);
    nameChoices();
}

void MainWindow::run(const QString& id) {
    if (QAction* one = action(id); one != nullptr && one->isEnabled()) {
        one->trigger();
    }
}

void MainWindow::closeEvent(QCloseEvent* event) {
    closeBook();
    m_settings.keepWindow(saveGeometry(), m_settings.splitter());
    event->accept();
}

ActionTable::Handlers MainWindow::handlers() {
    ActionTable::Handlers all;
    addBookHandlers(all);
    addTreeHandlers(all);
    addGoHandlers(all);
    addViewHandlers(all);
    return all;
}

void MainWindow::addBookHandlers(ActionTable::Handlers& all) {
    const auto on = [&all](const char* id, std::function<void()> handler) {
        all[QString::fromLatin1(id)] = std::move(handler);
    };
    on("new", [this] { newBook(); });
    on("open", [this] { askAndOpen(); });
    on("sample", [this] { openSample(); });
    on("close", [this] { closeBook(); });
    on("import-table", [this] { importTable(); });
    on("import-archive", [this] { importArchive(); });
    on("archive", [this] { writeArchive(); });
    on("restore", [this] { restoreCopy(); });
    on("check", [this] { checkBook(); });
    on("today", [this] { askToday(); });
    on("person", [this] { choosePerson(); });
    on("quit", [this] { close(); });
    on("undo", [this] { book()->undo(); });
    on("redo", [this] { book()->redo(); });
    on("history", [this] {
        auto* history = new BookHistory(*book(), this);
        history->setAttribute(Qt::WA_DeleteOnClose);
        history->show();
    });
    on("find", [this] { m_workbench->find({}); });
    on("select-all", [this] { m_workbench->rows()->map()->selectAllShown(); });
}

void MainWindow::addTreeHandlers(ActionTable::Handlers& all) {
    const auto choose = [this] { // on the map a key is for the tree under the cursor
        if (m_workbench->rows()->isAncestorOf(QApplication::focusWidget())) {
            m_workbench->rows()->chooseAtCursor();
        }
    };
    const auto entry = [this, &all, choose](const char* id, EntryKind kind) {
        all[QString::fromLatin1(id)] = [this, kind, choose] {
            choose();
            m_workbench->foldSheet(false);
            m_workbench->sheet()->begin(kind);
        };
    };
    entry("note", EntryKind::note);
    entry("bite", EntryKind::bite);
    entry("walk", EntryKind::walkMark);
    entry("observation", EntryKind::observation);
    entry("decision", EntryKind::decision);
    entry("graft", EntryKind::graftWish);
    entry("photo", EntryKind::photo);
    entry("state", EntryKind::state);
    all[QStringLiteral("beside")] = [this, choose] {
        choose();
        m_workbench->layBeside();
    };
    all[QStringLiteral("label")] = [this, choose] {
        choose();
        m_workbench->labelSelection();
    };
    all[QStringLiteral("walking-sheet")] = [this] { m_workbench->walkingSheet(); };
}

void MainWindow::addGoHandlers(ActionTable::Handlers& all) {
    for (const char* place :
         {"rows", "tastings", "compare", "merit", "season", "crosses", "grafting", "paper"}) {
        const QString key = QString::fromLatin1(place);
        all[QStringLiteral("go-") + key] = [this, key] { m_workbench->goTo(key); };
    }
    all[QStringLiteral("go-sheet")] = [this] {
        m_workbench->foldSheet(false);
        m_workbench->sheet()->setFocus(Qt::ShortcutFocusReason);
    };
}

void MainWindow::addViewHandlers(ActionTable::Handlers& all) {
    const auto on = [&all](const char* id, std::function<void()> handler) {
        all[QString::fromLatin1(id)] = std::move(handler);
    };
    on("list", [this] {
        m_workbench->goTo(QStringLiteral("rows"));
        m_workbench->rows()->showAsList(!m_workbench->rows()->isList());
    });
    on("fold-sheet", [this] { m_workbench->foldSheet(!m_workbench->isSheetFolded()); });
    constexpr double kStep = 1.5;
    on("zoom-in", [this] { m_workbench->rows()->map()->zoomBy(kStep); });
    on("zoom-out", [this] { m_workbench->rows()->map()->zoomBy(1 / kStep); });
    on("zoom-fit", [this] { m_workbench->rows()->map()->zoomToFit(); });
    on("theme", [this] { chooseTheme(); });
    on("language", [this] { chooseLanguage(); });
    on("units", [this] { chooseUnits(); });
    on("motion", [this] {
        const bool moves = action(QStringLiteral("motion"))->isChecked();
        m_settings.setMotion(moves);
        ui::setMotion(*qApp, moves);
    });
    on("keys", [this] { showHelp(QStringLiteral("keys")); });
    on("handbook", [this] { showHelp(QStringLiteral("start")); });
    on("about", [this] { showHelp(QStringLiteral("about")); });
}

void MainWindow::showHelp(const QString& page) {
    auto* help = new HelpWindow(this);
    help->setAttribute(Qt::WA_DeleteOnClose);
    help->showPage(page);
    help->show();
}

} // namespace pipwright::ui
