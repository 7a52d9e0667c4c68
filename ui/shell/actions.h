#pragma once

#include <QAction>
#include <QHash>
#include <QString>

#include <functional>
#include <vector>

class QMainWindow;

namespace pipwright::ui {

/// The words of one action: for menus, the finder line and the page of keys.
struct ActionWords {
    QString id;
    QString menu; ///< key of its menu
    QString title;
    QString keys; ///< portable key sequences, comma-separated; may be empty
};

/// Every action of the window, in the order of the menus. An id that ends in "-" is a line between.
const std::vector<ActionWords>& allActionWords();

/// The menu bar made from allActionWords(). Each action has a handler, given here by its id.
class ActionTable {
  public:
    using Handlers = QHash<QString, std::function<void()>>;

    /// Makes menus and actions on the window. Actions without a handler are left out, so a test can
    /// see that none is.
    ActionTable(QMainWindow& window, const Handlers& handlers);

    [[nodiscard]] QAction* action(const QString& id) const { return m_actions.value(id); }
    [[nodiscard]] QMenu* menu(const QString& key) const { return m_menus.value(key); }

  private:
    QHash<QString, QAction*> m_actions;
    QHash<QString, QMenu*> m_menus;
};

} // namespace pipwright::ui
