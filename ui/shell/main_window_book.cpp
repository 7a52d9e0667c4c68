// What the menu "Book" does: files, copies, archives, checks, the day and the person.
#include "ui/import/import_window.h"
#include "ui/rows/rows_place.h"
#include "ui/shell/main_window.h"
#include "ui/shell/start_page.h"
#include "ui/shell/today_popup.h"
#include "ui/shell/workbench.h"
#include "ui/tree/tree_sheet.h"
#include "ui/widgets/notice_bar.h"
#include "ui/widgets/status_line.h"

#include <QApplication>
#include <QCoreApplication>
#include <QFileInfo>
#include <QMenu>
#include <QMenuBar>
#include <QMetaObject>
#include <QThreadPool>
#include <QTimer>
#include <QToolButton>

#include <algorithm>
#include <utility>
#include <vector>

namespace pipwright::ui {

namespace {

QString withEnding(const QString& path) {
    const QString ending = QStringLiteral(".orchard");
    return path.isEmpty() || path.endsWith(ending) ? path : path + ending;
}

QString findingsOf(const QStringList& all) {
    constexpr qsizetype kMost = 5;
    QString text = all.mid(0, kMost).join(QLatin1Char('\n'));
    if (all.size() > kMost) {
        text += QStringLiteral("\n… +%1").arg(all.size() - kMost);
    }
    return text;
}

} // namespace

void MainWindow::newBook() {
    const QString path =
        withEnding(m_askers.saveFile(tr("Where to keep the new book"), tr("my.orchard")));
    if (path.isEmpty()) {
        return;
    }
    closeBook();
    m_readOnly = false;
    putOnDesk(m_doors.create(path, QFileInfo(path).completeBaseName(), {}), path);
}

void MainWindow::askAndOpen() {
    const QString path = m_askers.openFile(tr("Open a book"));
    if (!path.isEmpty()) {
        openBook(path);
    }
}

void MainWindow::importTable() {
    auto* window = new ImportWindow(*book(), this);
    window->setAttribute(Qt::WA_DeleteOnClose);
    window->show();
}

void MainWindow::importArchive() {
    const QString folder = m_askers.folder(tr("The folder of the archive"));
    const QString path = folder.isEmpty()
                             ? QString()
                             : withEnding(m_askers.saveFile(tr("Where to keep the rebuilt book"),
                                                            tr("rebuilt.orchard")));
    if (path.isEmpty()) {
        return;
    }
    workInBackground(tr("Rebuilding the book"), [this, folder, path](const auto& progress) {
        auto words = std::make_shared<Result<ArchiveWords>>(
            m_doors.readArchive(folder, path, false, progress));
        return [this, words, path] {
            if (!*words) {
                m_notice->tell(words->problem());
            } else if (!(*words)->done) {
                m_notice->say(NoticeBar::Kind::fault, (*words)->summary,
                              findingsOf((*words)->faults));
            } else {
                openBook(path);
            }
        };
    });
}

void MainWindow::writeArchive() {
    const QString folder = m_askers.folder(tr("An empty folder for the archive"));
    if (folder.isEmpty()) {
        return;
    }
    const QString path = book()->path();
    workInBackground(tr("Writing the archive"), [this, folder, path](const auto& progress) {
        auto words =
            std::make_shared<Result<ArchiveWords>>(m_doors.writeArchive(path, folder, progress));
        return [this, words] {
            if (!*words) {
                m_notice->tell(words->problem());
            } else {
                m_notice->say(NoticeBar::Kind::word, (*words)->summary,
                              findingsOf((*words)->faults));
            }
        };
    });
}

void MainWindow::restoreCopy() {
    const QString path = book()->path();
    QMenu menu(this);
    menu.setAccessibleName(tr("Dated copies"));
    for (const BookCopy& copy : m_doors.copies(path)) {
        QAction* one = menu.addAction(
            tr("Go back to %1 (%2)").arg(copy.madeAt, locale().formattedDataSize(copy.bytes)));
        connect(one, &QAction::triggered, this, [this, path, copy] {
            closeBook();
            const auto kept = m_doors.restore(path, copy.path);
            openBook(path);
            if (!kept) {
                m_notice->tell(kept.problem());
            } else {
                m_notice->say(NoticeBar::Kind::word,
                              tr("The book is as it was on %1.").arg(copy.madeAt),
                              tr("What stood there is kept as %1.").arg(*kept));
            }
        });
    }
    if (menu.isEmpty()) {
        menu.addAction(tr("There is no dated copy yet; one is made each time the book is opened "
                          "after a change."))
            ->setEnabled(false);
    }
    popUp(menu);
}

void MainWindow::checkBook() {
    const QString path = book()->path();
    workInBackground(tr("Checking the book"), [this, path](const auto& progress) {
        auto words = std::make_shared<Result<CheckWords>>(m_doors.check(path, progress));
        return [this, words] {
            if (!*words) {
                m_notice->tell(words->problem());
                return;
            }
            const bool sound = (*words)->findings.isEmpty();
            m_notice->say(sound ? NoticeBar::Kind::word : NoticeBar::Kind::fault, (*words)->summary,
                          sound && book() != nullptr ? m_doors.durabilityWords(*book())
                                                     : findingsOf((*words)->findings));
        };
    });
}

void MainWindow::keepCopyInBackground() {
    const QString path = book()->path();
    // After the first paint, and only if the journal moved: the store looks.
    QMetaObject::invokeMethod(
        this,
        [this, path] {
            QThreadPool::globalInstance()->start([this, path] {
                const Outcome outcome = m_doors.keepCopy(path);
                if (!outcome) {
                    QMetaObject::invokeMethod(
                        qApp, [this, problem = outcome.problem()] { m_notice->tell(problem); },
                        Qt::QueuedConnection);
                }
            });
        },
        Qt::QueuedConnection);
}

void MainWindow::workInBackground(const QString& words, Work work) {
    if (m_working) {
        m_notice->say(NoticeBar::Kind::attention, tr("Something else is still being done."),
                      tr("Wait for it, or stop it on the bottom line."));
        return;
    }
    m_working = true;
    m_stop = std::make_shared<std::atomic<bool>>(false);
    if (m_workbench != nullptr) {
        m_workbench->statusLine()->setWork(words, std::nullopt, true);
    }
    QThreadPool::globalInstance()->start([this, words, work = std::move(work), stop = m_stop] {
        const auto progress = [this, words, stop](double share) {
            QMetaObject::invokeMethod(
                this,
                [this, words, share] {
                    if (m_workbench != nullptr && m_working) {
                        m_workbench->statusLine()->setWork(words, share, true);
                    }
                },
                Qt::QueuedConnection);
            return !*stop;
        };
        const auto done = work(progress);
        QMetaObject::invokeMethod(
            this,
            [this, done] {
                m_working = false;
                if (m_workbench != nullptr) {
                    m_workbench->statusLine()->endWork();
                }
                done();
            },
            Qt::QueuedConnection);
    });
}

void MainWindow::askToday() {
    auto* popup = new TodayPopup(book()->today(), this);
    connect(popup, &TodayPopup::chosen, this, [this](std::optional<Date> day) {
        m_fixedToday = day;
        book()->setToday(day);
    });
    popup->showNear(m_workbench->statusLine()->todayButton());
}

void MainWindow::choosePerson() {
    QMenu menu(this);
    menu.setAccessibleName(tr("Who is at the keyboard"));
    const auto view = book()->view();
    const auto add = [&](const QString& word, std::optional<PersonId> person) {
        QAction* one = menu.addAction(word);
        one->setCheckable(true);
        one->setChecked(book()->person() == person);
        connect(one, &QAction::triggered, this, [this, person] { book()->setPerson(person); });
    };
    add(tr("Nobody in particular"), std::nullopt);
    for (const Person& person : view->persons()) {
        add(QString::fromStdString(person.name.empty() ? person.initials : person.name), person.id);
    }
    popUp(menu);
}

namespace {

struct Choices {
    Q_DECLARE_TR_FUNCTIONS(pipwright::ui::MainWindow)
};

template <typename Choice>
using Offered = std::vector<std::pair<Choice, QString>>;

Offered<ThemeChoice> offeredThemes() {
    return {{ThemeChoice::system, Choices::tr("As the desktop")},
            {ThemeChoice::light, Choices::tr("Light")},
            {ThemeChoice::dark, Choices::tr("Dark")}};
}

Offered<Language> offeredLanguages() {
    return {{Language::system, Choices::tr("As the desktop")},
            {Language::english, QStringLiteral("English")},
            {Language::german, QStringLiteral("Deutsch")}};
}

Offered<UnitChoice> offeredUnits() {
    return {{UnitChoice::metric, Choices::tr("Metric: m, mm, g, °C")},
            {UnitChoice::us, Choices::tr("US: ft, in, oz, °F")}};
}

template <typename Choice>
QString nameOf(const Offered<Choice>& offered, Choice chosen) {
    const auto found = std::find_if(offered.begin(), offered.end(),
                                    [chosen](const auto& one) { return one.first == chosen; });
    return found == offered.end() ? QString() : found->second;
}

/// Fills a menu of which one entry is chosen.
template <typename Choice, typename Take>
void offer(QMenu& menu, const Offered<Choice>& offered, Choice chosen, Take take) {
    for (const auto& [choice, words] : offered) {
        QAction* one = menu.addAction(words);
        one->setCheckable(true);
        one->setChecked(choice == chosen);
        QObject::connect(one, &QAction::triggered, &menu,
                         [take, choice = choice] { take(choice); });
    }
}

} // namespace

void MainWindow::nameChoices() {
    const auto name = [this](const char* id, const QString& title, const QString& chosen) {
        m_actions->action(QString::fromLatin1(id))
            ->setText(tr("%1: %2", "what is set, and to what").arg(title, chosen));
    };
    name("theme", tr("Theme"), nameOf(offeredThemes(), m_settings.theme()));
    name("language", tr("Language"), nameOf(offeredLanguages(), m_settings.language()));
    name("units", tr("Units"), nameOf(offeredUnits(), m_settings.units()));
}

void MainWindow::chooseTheme() {
    QMenu menu(this);
    offer(menu, offeredThemes(), m_settings.theme(), [this](ThemeChoice choice) {
        m_settings.setTheme(choice);
        applyTheme(*qApp, choice);
        nameChoices();
    });
    popUp(menu);
}

void MainWindow::chooseLanguage() {
    QMenu menu(this);
    offer(menu, offeredLanguages(), m_settings.language(), [this](Language choice) {
        m_settings.setLanguage(choice);
        // The menu that was chosen from is made anew too: first let it close.
        QTimer::singleShot(0, this, [this, choice] { speak(choice); });
    });
    popUp(menu);
}

void MainWindow::speak(Language language) {
    applyLanguage(*qApp, language);
    const OpenBook* open = book();
    const QString path = open != nullptr ? open->path() : QString();
    const auto day =
        open != nullptr && open->todayIsFixed() ? std::optional(open->today()) : std::nullopt;
    const QByteArray place = saveGeometry();
    closeBook();
    m_actions.reset();
    menuBar()->clear();
    qDeleteAll(findChildren<QAction*>(QString(), Qt::FindDirectChildrenOnly));
    qDeleteAll(menuBar()->findChildren<QMenu*>(QString(), Qt::FindDirectChildrenOnly));
    build(); // the old start page goes with its central widget
    makeMenus();
    restoreGeometry(place);
    m_start->setRecent(m_settings.recentBooks());
    const bool opened = !path.isEmpty() && (m_readOnly ? openToRead(path) : openBook(path));
    if (opened && day) {
        book()->setToday(day);
    }
}

void MainWindow::chooseUnits() {
    QMenu menu(this);
    offer(menu, offeredUnits(), m_settings.units(), [this](UnitChoice choice) {
        m_settings.setUnits(choice);
        if (m_workbench != nullptr) {
            m_workbench->sheet()->setUnits(choice);
        }
        nameChoices();
    });
    popUp(menu);
}

void MainWindow::popUp(QMenu& menu) {
    menu.exec(mapToGlobal(QPoint(width() / 3, height() / 4)));
}

} // namespace pipwright::ui
