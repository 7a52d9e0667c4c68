// What the menu "Book" does: files, copies, archives, checks, the day and the person.
#include "ui/import/import_window.h"
#include "ui/rows/rows_place.h"
#include "ui/shell/main_window.h"
#include "ui/shell/today_popup.h"
#include "ui/shell/workbench.h"
#include "ui/tree/tree_sheet.h"
#include "ui/widgets/notice_bar.h"
#include "ui/widgets/status_line.h"

#include <QApplication>
#include <QFileInfo>
#include <QMenu>
#include <QMetaObject>
#include <QThreadPool>
#include <QToolButton>

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

void MainWindow::chooseTheme() {
    QMenu menu(this);
    const auto add = [&](const QString& word, ThemeChoice choice) {
        QAction* one = menu.addAction(word);
        one->setCheckable(true);
        one->setChecked(m_settings.theme() == choice);
        connect(one, &QAction::triggered, this, [this, choice] {
            m_settings.setTheme(choice);
            applyTheme(*qApp, choice);
        });
    };
    add(tr("As the desktop"), ThemeChoice::system);
    add(tr("Light"), ThemeChoice::light);
    add(tr("Dark"), ThemeChoice::dark);
    popUp(menu);
}

void MainWindow::chooseLanguage() {
    QMenu menu(this);
    const auto add = [&](const QString& word, Language language) {
        QAction* one = menu.addAction(word);
        one->setCheckable(true);
        one->setChecked(m_settings.language() == language);
        connect(one, &QAction::triggered, this, [this, language] {
            m_settings.setLanguage(language);
            m_notice->say(NoticeBar::Kind::word,
                          tr("The language changes when Pipwright is opened the next time."));
        });
    };
    add(tr("As the desktop"), Language::system);
    add(QStringLiteral("English"), Language::english);
    add(QStringLiteral("Deutsch"), Language::german);
    popUp(menu);
}

void MainWindow::chooseUnits() {
    QMenu menu(this);
    const auto add = [&](const QString& word, UnitChoice units) {
        QAction* one = menu.addAction(word);
        one->setCheckable(true);
        one->setChecked(m_settings.units() == units);
        connect(one, &QAction::triggered, this, [this, units] {
            m_settings.setUnits(units);
            if (m_workbench != nullptr) {
                m_workbench->sheet()->setUnits(units);
            }
        });
    };
    add(tr("Metric: m, mm, g, °C"), UnitChoice::metric);
    add(tr("US: ft, in, oz, °F"), UnitChoice::us);
    popUp(menu);
}

void MainWindow::popUp(QMenu& menu) {
    menu.exec(mapToGlobal(QPoint(width() / 3, height() / 4)));
}

} // namespace pipwright::ui
