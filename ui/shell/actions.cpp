#include "ui/shell/actions.h"

#include <QCoreApplication>
#include <QKeySequence>
#include <QMainWindow>
#include <QMenu>
#include <QMenuBar>

#include <utility>

namespace pipwright::ui {

namespace {

struct ActionTexts {
    Q_DECLARE_TR_FUNCTIONS(pipwright::ui::Actions)
};

std::vector<std::pair<QString, QString>> menus() {
    return {{QStringLiteral("book"), ActionTexts::tr("&Book")},
            {QStringLiteral("edit"), ActionTexts::tr("&Edit")},
            {QStringLiteral("tree"), ActionTexts::tr("&Tree")},
            {QStringLiteral("go"), ActionTexts::tr("&Go")},
            {QStringLiteral("view"), ActionTexts::tr("&View")},
            {QStringLiteral("help"), ActionTexts::tr("&Help")}};
}

ActionWords of(const char* id, const char* menu, const QString& title, const char* keys = "") {
    return {QString::fromLatin1(id), QString::fromLatin1(menu), title, QString::fromLatin1(keys)};
}

void addBook(std::vector<ActionWords>& all) {
    all.push_back(of("new", "book", ActionTexts::tr("New book..."), "Ctrl+N"));
    all.push_back(of("open", "book", ActionTexts::tr("Open book..."), "Ctrl+O"));
    all.push_back(of("sample", "book", ActionTexts::tr("Open the sample orchard")));
    all.push_back(of("close", "book", ActionTexts::tr("Close book"), "Ctrl+W"));
    all.push_back(of("book-", "book", {}));
    all.push_back(of("import-table", "book", ActionTexts::tr("Bring in a table..."), "Ctrl+I"));
    all.push_back(
        of("import-archive", "book", ActionTexts::tr("Rebuild a book from an archive...")));
    all.push_back(of("archive", "book", ActionTexts::tr("Write an archive...")));
    all.push_back(of("book2-", "book", {}));
    all.push_back(of("restore", "book", ActionTexts::tr("Restore a dated copy...")));
    all.push_back(of("check", "book", ActionTexts::tr("Check the book")));
    all.push_back(of("today", "book", ActionTexts::tr("Day taken as today..."), "Ctrl+T"));
    all.push_back(of("person", "book", ActionTexts::tr("Who is at the keyboard...")));
    all.push_back(of("book3-", "book", {}));
    all.push_back(of("quit", "book", ActionTexts::tr("Quit"), "Ctrl+Q"));
}

void addEdit(std::vector<ActionWords>& all) {
    all.push_back(of("undo", "edit", ActionTexts::tr("Undo"), "Ctrl+Z"));
    all.push_back(of("redo", "edit", ActionTexts::tr("Redo"), "Ctrl+Shift+Z,Ctrl+Y"));
    all.push_back(of("history", "edit", ActionTexts::tr("History of the book"), "Ctrl+H"));
    all.push_back(of("edit-", "edit", {}));
    all.push_back(of("find", "edit", ActionTexts::tr("Find"), "Ctrl+K,Ctrl+F"));
    all.push_back(
        of("select-all", "edit", ActionTexts::tr("Select all shown trees"), "Ctrl+Shift+A"));
}

void addTree(std::vector<ActionWords>& all) {
    all.push_back(of("note", "tree", ActionTexts::tr("Note"), "N"));
    all.push_back(of("bite", "tree", ActionTexts::tr("Bite"), "B"));
    all.push_back(of("walk", "tree", ActionTexts::tr("Walk mark"), "W"));
    all.push_back(of("observation", "tree", ActionTexts::tr("Observation"), "O"));
    all.push_back(of("decision", "tree", ActionTexts::tr("Decision"), "D"));
    all.push_back(of("graft", "tree", ActionTexts::tr("Graft wish"), "G"));
    all.push_back(of("photo", "tree", ActionTexts::tr("Photo"), "P"));
    all.push_back(of("state", "tree", ActionTexts::tr("Lost, dead or removed"), "X"));
    all.push_back(of("tree-", "tree", {}));
    all.push_back(of("beside", "tree", ActionTexts::tr("Lay beside"), "C"));
    all.push_back(of("label", "tree", ActionTexts::tr("Label"), "L"));
    all.push_back(
        of("walking-sheet", "tree", ActionTexts::tr("Walking sheet of these trees"), "Shift+W"));
}

void addGo(std::vector<ActionWords>& all) {
    all.push_back(of("go-rows", "go", ActionTexts::tr("Rows"), "Alt+1"));
    all.push_back(of("go-tastings", "go", ActionTexts::tr("Tastings"), "Alt+2"));
    all.push_back(of("go-compare", "go", ActionTexts::tr("Compare"), "Alt+3"));
    all.push_back(of("go-merit", "go", ActionTexts::tr("Merit"), "Alt+4"));
    all.push_back(of("go-season", "go", ActionTexts::tr("Season"), "Alt+5"));
    all.push_back(of("go-crosses", "go", ActionTexts::tr("Crosses"), "Alt+6"));
    all.push_back(of("go-grafting", "go", ActionTexts::tr("Grafting"), "Alt+7"));
    all.push_back(of("go-paper", "go", ActionTexts::tr("Paper"), "Alt+8"));
    all.push_back(of("go-", "go", {}));
    all.push_back(of("go-sheet", "go", ActionTexts::tr("Tree sheet"), "F6"));
}

void addViewAndHelp(std::vector<ActionWords>& all) {
    all.push_back(of("list", "view", ActionTexts::tr("Trees as a list"), "F3"));
    all.push_back(of("fold-sheet", "view", ActionTexts::tr("Fold the tree sheet"), "F4"));
    all.push_back(of("zoom-in", "view", ActionTexts::tr("Zoom in"), "Ctrl++,Ctrl+="));
    all.push_back(of("zoom-out", "view", ActionTexts::tr("Zoom out"), "Ctrl+-"));
    all.push_back(of("zoom-fit", "view", ActionTexts::tr("Whole orchard"), "Ctrl+0"));
    all.push_back(of("view-", "view", {}));
    all.push_back(of("theme", "view", ActionTexts::tr("Theme")));
    all.push_back(of("language", "view", ActionTexts::tr("Language")));
    all.push_back(of("units", "view", ActionTexts::tr("Units")));
    all.push_back(of("motion", "view", ActionTexts::tr("Let things move")));
    all.push_back(of("handbook", "help", ActionTexts::tr("What to do first"), "F1"));
    all.push_back(of("keys", "help", ActionTexts::tr("Keys"), "Shift+F1"));
    all.push_back(of("about", "help", ActionTexts::tr("About, and cautions")));
}

} // namespace

const std::vector<ActionWords>& allActionWords() {
    static QString language;
    static std::vector<ActionWords> all;
    // The words are translated when first asked for in a language.
    const QString now = ActionTexts::tr("Quit");
    if (all.empty() || language != now) {
        language = now;
        all.clear();
        addBook(all);
        addEdit(all);
        addTree(all);
        addGo(all);
        addViewAndHelp(all);
    }
    return all;
}

ActionTable::ActionTable(QMainWindow& window, const Handlers& handlers) {
    for (const auto& [key, title] : menus()) {
        m_menus[key] = window.menuBar()->addMenu(title);
    }
    for (const ActionWords& words : allActionWords()) {
        QMenu* menu = m_menus.value(words.menu);
        if (words.id.endsWith(QLatin1Char('-'))) {
            menu->addSeparator();
            continue;
        }
        const auto handler = handlers.find(words.id);
        if (handler == handlers.end()) {
            continue;
        }
        auto* action = new QAction(words.title, &window);
        action->setObjectName(words.id);
        QList<QKeySequence> keys;
        for (const QString& key : words.keys.split(QLatin1Char(','), Qt::SkipEmptyParts)) {
            keys.push_back(QKeySequence::fromString(key, QKeySequence::PortableText));
        }
        action->setShortcuts(keys);
        QObject::connect(action, &QAction::triggered, &window, *handler);
        menu->addAction(action);
        m_actions[words.id] = action;
    }
}

} // namespace pipwright::ui
