#pragma once

#include "ui/shell/actions.h"
#include "ui/shell/book_doors.h"
#include "ui/shell/shell_settings.h"

#include <QMainWindow>

#include <atomic>
#include <functional>
#include <memory>
#include <optional>

class QStackedWidget;

namespace pipwright::ui {

class NoticeBar;
class StartPage;
class Workbench;

/// The one window: the start page, or the workbench with the open book; menus and keys.
class MainWindow : public QMainWindow {
    Q_OBJECT

  public:
    MainWindow(BookDoors& doors, std::optional<Date> fixedToday);
    ~MainWindow() override;

    /// Opens a book in place of the one that is open. What keeps it from opening is said in the
    /// window, and the start page is shown.
    bool openBook(const QString& path);
    /// The same for looking only, which is offered when the book cannot be written.
    bool openToRead(const QString& path);
    [[nodiscard]] bool isReadOnly() const { return m_readOnly; }
    void openSample();
    void closeBook();

    [[nodiscard]] Workbench* workbench() const { return m_workbench; }
    [[nodiscard]] StartPage* startPage() const { return m_start; }
    [[nodiscard]] QAction* action(const QString& id) const { return m_actions->action(id); }
    [[nodiscard]] NoticeBar* notice() const { return m_notice; }

    /// Runs an action by its id, as the finder line does.
    void run(const QString& id);

    /// How the window asks for a file; tests answer instead of the desktop's dialog.
    struct Askers {
        std::function<QString(const QString& title, const QString& suggestion)> saveFile;
        std::function<QString(const QString& title)> openFile;
        std::function<QString(const QString& title)> folder;
    };
    void setAskers(Askers askers) { m_askers = std::move(askers); }

  protected:
    void closeEvent(QCloseEvent* event) override;

  private:
    using Work = std::function<std::function<void()>(const BookDoors::ShareDone&)>;

    void build();
    ActionTable::Handlers handlers();
    void addBookHandlers(ActionTable::Handlers& all);
    void addTreeHandlers(ActionTable::Handlers& all);
    void addGoHandlers(ActionTable::Handlers& all);
    void addViewHandlers(ActionTable::Handlers& all);
    void offerReading(const Problem& problem, const QString& path);
    void putOnDesk(Result<std::unique_ptr<OpenBook>> book, const QString& path);
    void updateActions();
    void newBook();
    void askAndOpen();
    void importTable();
    void importArchive();
    void writeArchive();
    void restoreCopy();
    void checkBook();
    void keepCopyInBackground();
    void askToday();
    void chooseFromMenu(const QString& id);
    void choosePerson();
    void makeMenus();
    /// What is chosen stands beside its menu entry: "Theme: Light".
    void nameChoices();
    /// Speaks another language at once: menus, start page and the open book are made anew.
    void speak(Language language);
    void chooseTheme();
    void chooseLanguage();
    void chooseUnits();
    void showHelp(const QString& page);
    /// Runs slow work off this thread with progress and cancel on the bottom line; what it gives
    /// back is called on this thread when it is done.
    void workInBackground(const QString& words, Work work);
    [[nodiscard]] OpenBook* book() const;
    void popUp(QMenu& menu);

    BookDoors& m_doors;
    std::optional<Date> m_fixedToday;
    ShellSettings m_settings;
    Askers m_askers;
    std::unique_ptr<ActionTable> m_actions;
    QStackedWidget* m_pages = nullptr;
    StartPage* m_start = nullptr;
    NoticeBar* m_notice = nullptr;
    Workbench* m_workbench = nullptr;
    std::shared_ptr<std::atomic<bool>> m_stop;
    bool m_working = false;
    bool m_readOnly = false;
    QString m_readable; ///< the book that may be opened for reading only
};

} // namespace pipwright::ui
